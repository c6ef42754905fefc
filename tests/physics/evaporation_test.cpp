// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/evaporation.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "physics/water.hpp"
#include "tests/support/between.hpp"
#include "tests/support/printed_units.hpp"
#include "tests/support/within.hpp"

namespace physics {
namespace {

using test_support::between;
using test_support::kAtmosphere;

MoistAir room(double celsiusDegrees, double relativeHumidity) {
  return moistAir(celsius(celsiusDegrees), relativeHumidity, kAtmosphere);
}

// kg/(m2 h), the unit of every table here.
double hourly(double water, const MoistAir& air) {
  return inKilogramsPerSquareMetreHour(openSurfaceEvaporation(celsius(water), air));
}

// Shah's published look-up values: water and air in C, 50 % humidity, sea level.
struct LookUp {
  double water, air, evaporation, densityDifference;
};
constexpr LookUp kShah[] = {{28, 28, 0.1360, 0.0219}, {28, 30, 0.0968, 0.0116},
                            {29, 28, 0.1651, 0.0282}, {29, 30, 0.1268, 0.0180},
                            {30, 28, 0.1959, 0.0347}, {30, 30, 0.1575, 0.0244}};

TEST(OpenSurfaceEvaporation, ReproducesShahsLookUpValues) {
  for (const LookUp& row : kShah) {
    SCOPED_TRACE(row.water + 0.01 * row.air);
    const MoistAir air = room(row.air, 0.5);
    EXPECT_NEAR(hourly(row.water, air), row.evaporation, 0.002 * row.evaporation);
    const MoistAir surface = saturatedAir(celsius(row.water), kAtmosphere);
    EXPECT_WITHIN(air.dryAirDensity - surface.dryAirDensity,
                  kilogramsPerCubicMetre(row.densityDifference), kilogramsPerCubicMetre(6e-5));
  }
}

// The law's densities are those of the dry air alone. With moist air's the answer would be 18 % to
// 100 % low.
TEST(OpenSurfaceEvaporation, IsNotShahsLawWithMoistAirDensities) {
  for (const LookUp& row : kShah) {
    SCOPED_TRACE(row.water + 0.01 * row.air);
    const MoistAir air = room(row.air, 0.5);
    const MoistAir surface = saturatedAir(celsius(row.water), kAtmosphere);
    const double lift = inKilogramsPerCubicMetre(air.density - surface.density);
    const double wrong = 35.0 * inKilogramsPerCubicMetre(surface.density) *
                         std::cbrt(std::max(0.0, lift)) *
                         (surface.humidityRatio - air.humidityRatio);
    EXPECT_LT(wrong, 0.83 * hourly(row.water, air));
  }
}

// Computed here from the law as printed, into 20 C and 50 % humidity.
TEST(OpenSurfaceEvaporation, IsAsWorkedOutForHotWater) {
  const MoistAir air = room(20.0, 0.5);
  const auto works = [&](double water, double expected, double tolerance) {
    EXPECT_NEAR(hourly(water, air), expected, tolerance) << water;
  };
  works(65.0, 4.005, 0.002);
  works(80.0, 8.740, 0.004);
  for (const auto& [water, expected] : {std::pair{30.0, 0.33},
                                        {40.0, 0.80},
                                        {50.0, 1.63},
                                        {60.0, 3.02},
                                        {70.0, 5.25},
                                        {75.0, 6.81},
                                        {85.0, 11.12},
                                        {90.0, 14.03},
                                        {95.0, 17.57},
                                        {98.0, 20.04}}) {
    works(water, expected, 0.007);
  }
}

// Latent heat it carries, worked out from the law for the same air, in kW/m2 to the digits given.
TEST(OpenSurfaceEvaporation, CarriesTheLatentHeatWorkedOut) {
  const MoistAir air = room(20.0, 0.5);
  for (const auto& [water, kilowatts] :
       {std::pair{60.0, 1.98}, {70.0, 3.40}, {80.0, 5.60}, {90.0, 8.90}}) {
    const HeatFlux flux = openSurfaceEvaporation(celsius(water), air) * latentHeat(celsius(water));
    EXPECT_NEAR(1e-3 * inWattsPerSquareMetre(flux), kilowatts, 0.006) << water;
  }
}

// L. Kirman's fit for unventilated, unagitated process tanks, exp(-(7.2 - 0.03236 F)) US gal/(ft2
// h) (finishing.com, letters 149/24 and 174/85).
TEST(OpenSurfaceEvaporation, AgreesWithAPractitionersFit) {
  const MoistAir air = room(22.0, 0.5);
  for (const double fahrenheit : {120.0, 140.0, 160.0, 180.0, 200.0}) {
    SCOPED_TRACE(fahrenheit);
    const Temperature water = kelvin((fahrenheit + 459.67) / 1.8);
    const double gallons = std::exp(-(7.2 - 0.03236 * fahrenheit));
    const double fit =
        gallons * 3.785411784e-3 / 0.09290304 * inKilogramsPerCubicMetre(waterDensity(water));
    EXPECT_NEAR(hourly(inCelsius(water), air), fit, 0.182 * fit);
  }
}

// Humidity ratio runs to infinity at boiling; the vapour's own density does not.
TEST(OpenSurfaceEvaporation, IsBoundedAtBoiling) {
  const MoistAir air = room(20.0, 0.5);
  const double boiling = hourly(inCelsius(saturationTemperature(kAtmosphere)), air);
  EXPECT_NEAR(boiling, 21.9, 0.3);  // 35 times 0.597 kg/m3 of vapour times cbrt(1.190)
  EXPECT_NEAR(hourly(99.97, air), boiling, 0.01);
  EXPECT_NEAR(hourly(105.0, air), boiling, 1e-9);
}

// Computed here: humidity 0 to 100 % changes it by -9 % at 65 C and -1.4 % at 95 C, air from 10 C
// to 30 C by -12 % and -3 %, 1500 m of altitude by -2 % at 65 C.
TEST(OpenSurfaceEvaporation, DependsLittleOnTheRoom) {
  const auto change = [](double from, double to) { return 100.0 * (to / from - 1.0); };
  EXPECT_NEAR(change(hourly(65, room(20, 0.0)), hourly(65, room(20, 1.0))), -9.0, 0.5);
  EXPECT_NEAR(change(hourly(95, room(20, 0.0)), hourly(95, room(20, 1.0))), -1.4, 0.1);
  EXPECT_NEAR(change(hourly(65, room(10, 0.5)), hourly(65, room(30, 0.5))), -12.0, 0.5);
  EXPECT_NEAR(change(hourly(95, room(10, 0.5)), hourly(95, room(30, 0.5))), -3.0, 0.5);
  const Pressure high = standardAtmosphere(metres(1500.0)).pressure;
  EXPECT_NEAR(change(hourly(65, room(20, 0.5)), hourly(65, moistAir(celsius(20.0), 0.5, high))),
              -2.0, 0.5);
}

TEST(OpenSurfaceEvaporation, TakesTheForcedFormUnderWarmAir) {
  const MoistAir hot = room(50.0, 0.0);
  const Pressure excess = saturationPressure(celsius(20.0));
  EXPECT_NEAR(hourly(20.0, hot), 5e-5 * inPascals(excess), 1e-12);
}

TEST(OpenSurfaceEvaporation, IsZeroIntoWetterAir) {
  EXPECT_EQ(hourly(20.0, room(30.0, 0.9)), 0.0);
  EXPECT_EQ(hourly(20.0, room(20.0, 1.0)), 0.0);
  EXPECT_EQ(hourly(100.0, saturatedAir(celsius(105.0), kAtmosphere)), 0.0);  // a room of steam
}

RC_GTEST_PROP(OpenSurfaceEvaporation, RisesWithWaterTemperature, ()) {
  const MoistAir air = room(between(5.0, 35.0), between(0.0, 1.0));
  const double water = between(5.0, 110.0);
  const double further = std::min(water + between(0.01, 10.0), 110.0);
  RC_ASSERT(hourly(water, air) >= 0.0);
  RC_ASSERT(hourly(further, air) >= hourly(water, air) - 1e-9);  // level above boiling
  RC_ASSERT(further > 99.9 || hourly(water, air) == 0.0 ||
            hourly(further, air) > hourly(water, air));
}

RC_GTEST_PROP(OpenSurfaceEvaporation, FallsWithTheRoomsHumidity, ()) {
  const double air = between(5.0, 35.0);
  const double water = between(air + 5.0, 105.0);
  const double humidity = between(0.0, 0.99);
  RC_ASSERT(hourly(water, room(air, humidity + 0.01)) < hourly(water, room(air, humidity)));
}

RC_GTEST_PROP(OpenSurfaceEvaporation, NeverJumps, ()) {
  const MoistAir air = room(between(5.0, 35.0), between(0.0, 1.0));
  const double water = between(5.0, 105.0);
  RC_ASSERT(std::abs(hourly(water + 1e-7, air) - hourly(water, air)) < 1e-4);
}

// Carrier 1918, as in ASHRAE: q = (0.089 + 0.0782 V)(p_w - p_a) kW/m2 per kPa. At 28 C into 28 C
// and 50 % humidity that is 0.2489 kg/(m2 h) in still air; only its rise with V is used here.
TEST(DraughtyEvaporation, RisesWithTheDraughtAsCarrierFound) {
  const MoistAir air = room(28.0, 0.5);
  const Temperature water = celsius(28.0);
  const auto at = [&](double v) {
    return inKilogramsPerSquareMetreHour(draughtyEvaporation(water, air, metresPerSecond(v)));
  };
  const double excess = inPascals(saturationPressure(water) - air.vapourPressure);
  EXPECT_NEAR(at(1.0), 5e-5 * excess * (0.089 + 0.0782) / 0.089, 1e-9);
  EXPECT_NEAR((at(3.0) - at(2.0)) / (at(2.0) - at(1.0)), 1.0, 1e-9);
}

RC_GTEST_PROP(DraughtyEvaporation, IsNeverLessThanInStillAir, ()) {
  const MoistAir air = room(between(5.0, 35.0), between(0.0, 1.0));
  const Temperature water = celsius(between(5.0, 105.0));
  const double v = between(0.0, 3.0);
  const MassFlux still = openSurfaceEvaporation(water, air);
  const MassFlux moving = draughtyEvaporation(water, air, metresPerSecond(v));
  RC_ASSERT(draughtyEvaporation(water, air, metresPerSecond(0.0)) == still);
  RC_ASSERT(moving >= still);
  RC_ASSERT(draughtyEvaporation(water, air, metresPerSecond(v + 0.5)) >= moving);
}

// No published check is known: the law's natural form into air saturated at the lid.
TEST(HeadspaceCondensation, IsTheNaturalFormIntoAirSaturatedAtTheLid) {
  const auto flux = inKilogramsPerSquareMetreHour(
      headspaceCondensation(celsius(80.0), celsius(60.0), kAtmosphere));
  EXPECT_NEAR(flux, hourly(80.0, saturatedAir(celsius(60.0), kAtmosphere)), 1e-9);
}

TEST(HeadspaceCondensation, IsZeroUnderAHotterOrBoilingLid) {
  const MassFlux none = kilogramsPerSquareMetreSecond(0.0);
  EXPECT_EQ(headspaceCondensation(celsius(60.0), celsius(60.0), kAtmosphere), none);
  EXPECT_EQ(headspaceCondensation(celsius(60.0), celsius(61.0), kAtmosphere), none);
  EXPECT_EQ(headspaceCondensation(celsius(104.0), celsius(102.0), kAtmosphere), none);
}

RC_GTEST_PROP(HeadspaceCondensation, RisesWithWaterAndFallsWithTheLidsTemperature, ()) {
  const double lid = between(5.0, 98.0);
  const double water = lid + between(0.01, 99.9 - lid);
  const auto flux = [](double w, double l) {
    return headspaceCondensation(celsius(w), celsius(l), kAtmosphere);
  };
  RC_ASSERT(flux(water, lid) > kilogramsPerSquareMetreSecond(0.0));
  RC_ASSERT(flux(water + 0.01, lid) > flux(water, lid));
  RC_ASSERT(flux(water, lid - 0.01) > flux(water, lid));
}

// Newton's steps go by this slope.
RC_GTEST_PROP(HeadspaceCondensation, KnowsItsSlope, ()) {
  const double lid = between(5.0, 98.0);
  const SurfaceAir water = surfaceAir(celsius(lid + between(0.5, 99.9 - lid)), kAtmosphere);
  const auto flux = [&](double l) { return headspaceCondensation(water, celsius(l), kAtmosphere); };
  const double step = 1e-4;
  const double change =
      inKilogramsPerSecond((flux(lid + step).flux - flux(lid - step).flux) * squareMetres(1.0)) /
      (2.0 * step);
  RC_ASSERT(std::abs(change / flux(lid).perKelvinOfLid - 1.0) < 1e-4);
}

// The air's density falls nearly evenly over a kelvin.
TEST(HeadspaceCondensation, KnowsWhereAirRisesNoMore) {
  const SurfaceAir water = surfaceAir(celsius(80.0), kAtmosphere);
  const auto rises = [&](double lid) {
    return inKelvins(headspaceCondensation(water, celsius(lid), kAtmosphere).rises);
  };
  EXPECT_NEAR(rises(79.9), 0.1, 1e-3);
  EXPECT_NEAR(rises(79.0), 1.0, 0.05);
  EXPECT_TRUE(std::isinf(rises(80.5)));
}

// A lid's balance is solved by bracketing, which must not meet a step where the two meet.
TEST(HeadspaceCondensation, FadesAsTheLidWarmsUp) {
  const auto flux = [](double lid) {
    return inKilogramsPerSquareMetreHour(
        headspaceCondensation(celsius(80.0), celsius(lid), kAtmosphere));
  };
  EXPECT_LT(flux(79.999), 1e-3 * flux(70.0));
}

}  // namespace
}  // namespace physics
