// SPDX-License-Identifier: GPL-3.0-or-later
// Printed answers of textbooks and trade rules, and some worked out by hand (own), that a simulated
// stage must give.
#include <gtest/gtest.h>

#include <cmath>
#include <utility>

#include "physics/brewday.hpp"
#include "physics/water.hpp"
#include "physics/wort.hpp"
#include "tests/support/measured.hpp"
#include "tests/support/within.hpp"

namespace physics {
namespace {

using test_support::constantLoss;
using test_support::cooled;
using test_support::Curve;
using test_support::heatingCurve;
using test_support::kHour;
using test_support::nearlyLossless;
using test_support::record;
using test_support::rigOf;
using test_support::roomAt;
using test_support::steelKettle;

constexpr double kKilowattHour = 3.6e6;  // J

// Litres of cold water that hold so many J/K at a temperature.
double litresHolding(double joulePerKelvin, double at) {
  const double c = inJoulesPerKilogramKelvin(waterSpecificHeat(celsius(at)));
  return joulePerKelvin / c / inKilogramsPerCubicMetre(waterDensity(celsius(20.0))) * 1e3;
}

// Coulson & Richardson vol. 1, example 9.25: a tank of 4e6 J/K that loses 60 W/K (6 m2 at
// 10 W/(m2 K)) to 293 K cools from 353 K. Printed: 346.9 K after 7200 s. Its heating by a coil is
// no element's; water's specific heat changes by 0.1 % on the way.
TEST(UnpluggedRest, CoolsAsTheTextbooksTank) {
  const double litre = litresHolding(4e6, 77.0);
  const Curve tank =
      cooled(constantLoss(litre, 1e5, 60.0), litre, 353.0 - 273.15, 293.0 - 273.15, hours(3.0));
  EXPECT_NEAR(tank.at(7200.0) + 273.15, 346.9, 0.05 + 0.01);
}

// A mash left alone by a single time constant, worked out by hand (own): from 67 C in 20 C.
// Half a digit, and 0.2 % of the fall by which water's specific heat is not constant.
TEST(UnpluggedRest, CoolsByTheTableOfTimeConstants) {
  struct Row {
    double tau, afterTenHours, firstHour, to60, to50;
    double digit50;  // of the last column, h
  };
  const double litre = litresHolding(80e3, 45.0);
  for (const Row& row :
       {Row{6.46, 30.0, 6.7, 1.0, 2.9, 0.05}, Row{10.0, 37.3, 4.5, 1.6, 4.5, 0.05},
        Row{20.0, 48.5, 2.3, 3.2, 9.0, 0.05}, Row{40.0, 56.6, 1.2, 6.5, 18.0, 0.5}}) {
    SCOPED_TRACE(row.tau);
    const Rig rig = constantLoss(litre, 3000.0, 80e3 / (row.tau * kHour));
    const Curve mash = cooled(rig, litre, 67.0, 20.0, hours(19.0));
    EXPECT_NEAR(mash.at(10.0 * kHour), row.afterTenHours, 0.05 + 0.04);
    EXPECT_NEAR(67.0 - mash.at(kHour), row.firstHour, 0.05 + 0.02);
    EXPECT_NEAR(mash.reaching(60.0) / kHour, row.to60, 0.05 + 0.01);
    EXPECT_NEAR(mash.reaching(50.0) / kHour, row.to50, row.digit50 + 0.02);
  }
}

// Cooling by a film that goes with the quarter power of the excess has a closed form (Handbook of
// Heat Transfer, Bejan & Kraus, eqs 3.283-3.288): [1 + n h0 A t/(m c)]^(-1/n), n = 1/4. Only the
// base loses here, to air, without radiation. Air's properties change on the way: the form with
// the film of the start and that of the end must enclose ours. A single time constant does not.
TEST(UnpluggedRest, FollowsTheQuarterPowerLawsClosedForm) {
  Vessel v = nearlyLossless(steelKettle());
  v.mass = kilograms(1e-6);
  v.base = {.insulation = {}, .emissivity = 0.0};
  v.support = {};
  const Rig rig = rigOf(v, 3000.0);
  const double litre = 2.0;
  const double heat = 4180.0 * litre * 0.9982;
  const Surroundings room{.air = moistAir(celsius(20.0), 0.5, pascals(101325.0)), .draught = {}};
  const Length fill = litres(litre) / crossSection(v);
  HeatLossModel model(v, rig.hose, room, fill, 0.0);
  const auto lossAt = [&](double t) { return inWatts(model.flows(celsius(t), fill).lost.total()); };

  const Curve curve = cooled(rig, litre, 70.0, 20.0, hours(12.0));
  for (const double hour : {2.0, 5.0, 10.0}) {
    SCOPED_TRACE(hour);
    const double end = curve.at(hour * kHour);
    const auto closed = [&](double startLoss) {
      const double x = startLoss * hour * kHour / (heat * 50.0);
      return 20.0 + 50.0 * std::pow(1.0 + 0.25 * x, -4.0);
    };
    const double fromStart = closed(lossAt(70.0));
    const double fromEnd = closed(lossAt(end) * std::pow(50.0 / (end - 20.0), 1.25));
    record("start_" + std::to_string(hour), end - fromStart);
    record("end_" + std::to_string(hour), end - fromEnd);
    const double hair = 0.002 * (70.0 - end);  // water's specific heat, 4180 to 4190
    EXPECT_LT(end, std::max(fromStart, fromEnd) + hair);
    EXPECT_GT(end, std::min(fromStart, fromEnd) - hair);
    const double exponential = 20.0 + 50.0 * std::exp(-lossAt(70.0) * hour * kHour / (heat * 50.0));
    EXPECT_GT(end, exponential + 0.3);
  }
}

// Trade rule of heater makers: kW = litres x kelvin/(790 x hours), where bare water takes 860. 50 L
// by 75 K at 3 kW in 1.58 h; so a lidded vessel takes no longer, and longer than without loss.
TEST(HeatingToBoil, TakesNoLongerThanTheTradeRuleAllows) {
  Vessel v = steelKettle();
  v.innerDiameter = metres(0.40);
  v.height = metres(0.45);
  v.open = test_support::openAt(0.0);
  const double seconds = heatingCurve(rigOf(v, 3000.0), 50.0, 20.0, 20.0).between(20.0, 95.0);
  record("rule_s", seconds);
  const double rule = 50.0 * 75.0 / (790.0 * 3.0) * kHour;
  EXPECT_LT(seconds, rule);
  EXPECT_GT(seconds, rule * 790.0 / 860.0);
}

// 1 K a minute takes 6.97 kW for 100 kg of water (own); 75 K, 0.2 % for its specific
// heat.
TEST(HeatingToBoil, RisesAKelvinAMinuteAtSevenKilowattsPerHectolitre) {
  const double litre = 100.0 / 0.99820;
  const Curve curve = heatingCurve(constantLoss(litre, 6970.0, 1e-9), litre, 20.0, 20.0);
  EXPECT_NEAR(curve.between(20.0, 95.0) / 60.0, 75.0, 0.25);
}

// An ideal batch worked out by hand (own), in kWh: 27 kg of water from 12 to 72 C 1.88; mash of
// 5 kg of malt in it from 67 to 78 C 0.37; 24 kg of wort from 76 to 100 C 0.64; 2.4 kg boiled off
// 1.50; together 4.40. And per hectolitre, with the wort of 4.0 kJ/(kg K) of an engineering
// symposium's example (J. Hancock, IBD 2014), from 75 to 100 C 10.0 MJ, 5 % of it boiled off
// 11.3 MJ. Half a digit, and that wort's specific heat to 1 %.
TEST(Brewday, TakesTheIdealBatchsEnergy) {
  Vessel v = nearlyLossless(steelKettle());
  v.mass = kilograms(1e-6);
  const Rig rig = rigOf(v, 3000.0);
  Batch batch = test_support::mashOf(27.0 / 0.99820, 5.0, 20.0);
  batch.mash = HeldMash{{{celsius(67.0), minutes(1.0)}, {celsius(78.0), minutes(1.0)}}};
  Place place = roomAt(20.0);
  const BrewDay day = simulate(rig, batch, place);
  ASSERT_EQ(day.outcome, Outcome::Done);
  const auto spent = [&](StageKind kind) { return inJoules(day.find(kind)->ledger.element); };

  const double strike = spent(StageKind::Strike) / (inCelsius(day.strike) - 12.0) * 60.0;
  EXPECT_NEAR(strike / kKilowattHour, 1.88, 0.005);
  double ramp = 0.0;  // the last; the first makes up for what mashing in lost
  for (const Stage& stage : day.stages) {
    if (stage.kind == StageKind::Ramp) ramp = inJoules(stage.ledger.element);
  }
  EXPECT_NEAR(ramp / kKilowattHour, 0.37, 0.005);

  const double wort =
      inKilograms(day.preBoilCold * wortDensity(0.12, celsius(20.0)));  // some 12 % of extract
  const double perKelvin =
      spent(StageKind::HeatingToBoil) / wort / (inCelsius(day.boilingPoint) - 78.0);
  record("wort_J_per_kgK", perKelvin);
  const double heating = 24.0 * 24.0 * perKelvin;
  EXPECT_NEAR(heating / kKilowattHour, 0.64, 0.005 + 0.0064);
  EXPECT_NEAR(100.0 * 25.0 * perKelvin / 1e6, 10.0, 0.05 + 0.1);

  const double perKilogram =
      spent(StageKind::Boil) / inKilograms(day.find(StageKind::Boil)->evaporated);
  EXPECT_NEAR(2.4 * perKilogram / kKilowattHour, 1.50, 0.005);
  EXPECT_NEAR(5.0 * perKilogram / 1e6, 11.3, 0.05);
  EXPECT_NEAR((strike + ramp + heating + 2.4 * perKilogram) / kKilowattHour, 4.40, 0.02);
}

// A boil worked out by hand (own): 25 L at 2.5 kW with 0.3 kW of losses boil off 3.51 L/h, 14.0
// %/h, with a litre to the kilogram and a pre-boil volume that is hot: ours counts both at 20 C
// (0.2 %).
TEST(Boil, LosesTheLitresAnHourOfItsNetPower) {
  const BrewDay day = simulate(constantLoss(25.0, 2500.0, 300.0 / 79.97),
                               test_support::waterOnly(25.0, minutes(60.0)), roomAt(20.0));
  ASSERT_TRUE(day.boil);
  EXPECT_NEAR(inWatts(day.boil->net), 2200.0, 1.0);
  EXPECT_NEAR(inLitresPerHour(day.boil->coldBoilOff), 3.51, 0.005 + 0.007);
  EXPECT_NEAR(100.0 * day.boil->shareOfPreBoilPerHour, 14.0, 0.05 + 0.03);
}

// The same (own), net of surface losses, per hectolitre (100 kg): 5, 8, 10 and 15 % an hour
// take 3.13, 5.02, 6.27 and 9.40 kW, from 2257 kJ/kg.
TEST(Boil, TakesThreeKilowattsPerHectolitreForFivePercent) {
  const double litre = 100.0 / 0.99820;
  for (const auto& [percent, kilowatt] :
       {std::pair{5.0, 3.13}, {8.0, 5.02}, {10.0, 6.27}, {15.0, 9.40}}) {
    const BrewDay day = simulate(constantLoss(litre, 1e3 * kilowatt, 1e-9),
                                 test_support::waterOnly(litre, minutes(60.0)), roomAt(20.0));
    ASSERT_TRUE(day.boil);
    EXPECT_NEAR(100.0 * day.boil->shareOfPreBoilPerHour, percent,
                0.005 / kilowatt * percent + 0.01);
  }
}

}  // namespace
}  // namespace physics
