// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/element_surface.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "physics/water.hpp"
#include "tests/support/between.hpp"

namespace physics {
namespace {

using test_support::between;

constexpr Pressure kOneAtmosphere = pascals(101325.0);
constexpr Length kElevenMillimetres = metres(0.011);

HeatFlux perSquareCentimetre(double watts) { return wattsPerSquareMetre(1e4 * watts); }
double inDegrees(Temperature t) { return inCelsius(t); }

TEST(HeatedRod, HasTheFaceOfACylinder) {
  // 5.5 kW on 1.2 m of an 11 mm rod: 13.3 W/cm2.
  const HeatedRod rod{.diameter = kElevenMillimetres, .length = metres(1.2)};
  EXPECT_NEAR(inWattsPerSquareMetre(watts(5500.0) / rod.surface()), 1.326e5, 50.0);
}

// VDI Heat Atlas by way of the open library `ht`: water at 3 bar, 20 kW/m2, critical pressure
// 22.048 MPa (ours 22.064): h = 3043.3446 W/(m2 K).
TEST(BoilingSuperheat, IsThePublishedFilm) {
  const TemperatureDifference above = boilingSuperheat(wattsPerSquareMetre(2e4), pascals(3e5));
  EXPECT_NEAR(2e4 / inKelvins(above), 3043.3446, 1e-3 * 3043.0);
}

// Worked out independently at 1 atm, from the same laws.
TEST(BoilingSuperheat, IsThatOfTheTableAtOneAtmosphere) {
  struct Row {
    double flux, boils, begins;
  };
  for (const Row& row : {Row{1, 7.5, 1.5}, Row{2, 8.8, 2.1}, Row{5, 10.9, 3.3}, Row{10, 12.9, 4.5},
                         Row{15, 14.1, 5.4}}) {
    SCOPED_TRACE(row.flux);
    const HeatFlux q = perSquareCentimetre(row.flux);
    EXPECT_NEAR(inKelvins(boilingSuperheat(q, kOneAtmosphere)), row.boils, 0.06);
    EXPECT_NEAR(inKelvins(boilingBeginsAbove(q, kOneAtmosphere)), row.begins, 0.06);
  }
}

// The same of an 11 mm rod in still water that does not boil; whole degrees.
TEST(SkinInStillWater, IsThatOfTheTable) {
  struct Row {
    double flux, at67, at20;
  };
  for (const Row& row : {Row{1, 77, 33}, Row{2, 83, 42}, Row{3, 89, 49}, Row{4, 94, 55},
                         Row{5, 99, 61}, Row{6, 103, 66}}) {
    SCOPED_TRACE(row.flux);
    const HeatFlux q = perSquareCentimetre(row.flux);
    const auto skin = [&](double bulk) {
      return inDegrees(
          skinInStillWater(q, celsius(bulk), kElevenMillimetres, kOneAtmosphere, celsius(100.0)));
    };
    EXPECT_NEAR(skin(67.0), row.at67, 1.0);
    EXPECT_NEAR(skin(20.0), row.at20, 1.0);
  }
}

TEST(SkinInStillWater, BoilsInsteadOfGettingHotter) {
  // 120 C by its warmth alone; at 10 W/cm2 boiling takes 12.9 K.
  EXPECT_NEAR(inDegrees(skinInStillWater(perSquareCentimetre(10.0), celsius(67.0),
                                         kElevenMillimetres, kOneAtmosphere, celsius(100.0))),
              112.9, 0.1);
}

// 33 K a W/cm2 by the film alone; from the second on it boils on the skin.
TEST(SkinInStillMash, IsFarHotterAndBoils) {
  const auto skin = [](double flux) {
    return inDegrees(
        skinInStillMash(perSquareCentimetre(flux), celsius(67.0), kOneAtmosphere, celsius(100.0)));
  };
  EXPECT_NEAR(skin(0.5), 67.0 + 16.7, 0.1);
  EXPECT_NEAR(skin(1.0), 67.0 + 33.3, 0.1);
  EXPECT_NEAR(skin(2.0), 108.8, 0.1);
}

// Worked out independently with Churchill & Chu and Davis & Anderson; whole degrees, and the two
// laws of onset lie within 0.2 K.
TEST(SizzlesFrom, IsTheTemperatureOfTheTable) {
  struct Row {
    double flux, from;
  };
  for (const Row& row : {Row{1, 93}, Row{2, 87}, Row{3, 82}, Row{5, 72}, Row{7, 62}, Row{10, 48}}) {
    SCOPED_TRACE(row.flux);
    EXPECT_NEAR(
        inDegrees(sizzlesFrom(perSquareCentimetre(row.flux), kElevenMillimetres, kOneAtmosphere)),
        row.from, 1.0);
  }
  EXPECT_EQ(sizzlesFrom(perSquareCentimetre(40.0), kElevenMillimetres, kOneAtmosphere),
            celsius(0.0));
}

RC_GTEST_PROP(SkinInStillWater, RisesWithWhatFlowsAndStaysBetweenBulkAndBoiling, ()) {
  const Pressure p = pascals(between(60e3, 105e3));
  const Temperature boils = saturationTemperature(p);
  const Temperature bulk = celsius(between(0.0, inCelsius(boils)));
  const Length diameter = metres(between(0.005, 0.02));
  const HeatFlux q = perSquareCentimetre(between(0.01, 30.0));
  const HeatFlux more = q * between(1.0, 3.0);
  const auto water = [&](HeatFlux of) { return skinInStillWater(of, bulk, diameter, p, boils); };
  RC_ASSERT(water(q) > bulk);
  RC_ASSERT(water(q) <= boils + boilingSuperheat(q, p));
  RC_ASSERT(water(more) >= water(q));
  RC_ASSERT(skinInStillMash(more, bulk, p, boils) >= skinInStillMash(q, bulk, p, boils));
  RC_ASSERT(skinInStillWater(wattsPerSquareMetre(0.0), bulk, diameter, p, boils) == bulk);
  // The stronger, the cooler the water in which it begins to sizzle.
  RC_ASSERT(sizzlesFrom(more, diameter, p) <= sizzlesFrom(q, diameter, p) + kelvins(1e-6));
}

}  // namespace
}  // namespace physics
