// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/mash.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "physics/brewday.hpp"
#include "physics/contents.hpp"
#include "tests/support/between.hpp"
#include "tests/support/kettles.hpp"
#include "tests/support/within.hpp"

namespace physics {
namespace {

using test_support::between;
using test_support::mashOf;
using test_support::roomAt;
using test_support::steelRig;

constexpr double kWaterHeat = 4186.0;  // J/(kg K), the calorie of the old tables

// Water of a mash as thick as `litres` (kg) per kg of grain.
HeatCapacity liquor(double kilogram) { return joulesPerKelvin(kWaterHeat * kilogram); }
Grain grain(double kilogram, double celsiusGrain, double shareOfWater, double slaking) {
  return {.mass = kilograms(kilogram),
          .temperature = celsius(celsiusGrain),
          .specificHeat = joulesPerKilogramKelvin(kWaterHeat * shareOfWater),
          .slakingHeat = joulesPerKilogram(slaking)};
}

// The old tables' water of one heat capacity at all temperatures: a vessel's metal has that, too.
Contents of(HeatCapacity hotSide, const Grain& malt) {
  Batch batch = mashOf(1.0, 1.0);
  batch.grain = malt;
  return Contents(batch, roomAt(18.0), hotSide);
}
Temperature mashTemperature(HeatCapacity hotSide, Temperature water, const Grain& malt) {
  return of(hotSide, malt).settled(water, malt);
}
Temperature strikeTemperature(HeatCapacity hotSide, Temperature mash, const Grain& malt) {
  return of(hotSide, malt).strikeFor(mash, malt);
}

// A maltster's brewing-room handbook (1984/85), specific heat relative to water by moisture.
TEST(MaltSpecificHeat, ReproducesTheMaltstersTable) {
  for (const auto& [moisture, share] : {std::pair{0.00, 0.38},
                                        {0.01, 0.38},
                                        {0.02, 0.39},
                                        {0.03, 0.40},
                                        {0.04, 0.40},
                                        {0.06, 0.41},
                                        {0.08, 0.42}}) {
    SCOPED_TRACE(moisture);
    EXPECT_NEAR(inJoulesPerKilogramKelvin(maltSpecificHeat(moisture)) / kWaterHeat, share, 0.0101);
  }
}

// From the temperature rises of the same table at 2.68 kg/kg, computed here: 38, 19 and 13 kJ/kg.
TEST(MaltSlakingHeat, FollowsTheTablesRises) {
  for (const auto& [moisture, kilojoule] :
       {std::pair{0.00, 38.0}, {0.04, 19.0}, {0.08, 13.0}, {0.12, 13.0}}) {
    SCOPED_TRACE(moisture);
    EXPECT_NEAR(inJoulesPerKilogram(maltSlakingHeat(moisture)), 1e3 * kilojoule, 600.0);
  }
}

// Worked example of that handbook: malt of 2 % moisture at 27 C, liquor 69 C, 2.68 hL per 100 kg.
// Mixing 63.66 C plus a rise of 2.3 C: 66.0 C (computed from its own tables; the printed answer
// could not be read).
TEST(MashTemperature, ReproducesTheHandbooksExample) {
  const Grain malt{.mass = kilograms(100.0),
                   .temperature = celsius(27.0),
                   .specificHeat = maltSpecificHeat(0.02),
                   .slakingHeat = maltSlakingHeat(0.02)};
  EXPECT_NEAR(inCelsius(mashTemperature(liquor(268.0), celsius(69.0), malt)), 66.0, 0.1);
  Grain dead = malt;
  dead.slakingHeat = joulesPerKilogram(0.0);
  EXPECT_NEAR(inCelsius(mashTemperature(liquor(268.0), celsius(69.0), dead)), 63.66, 0.05);
}

// Two mixing problems of a German textbook of the 19th century, in degrees Reaumur (1 R = 1.25 C),
// malt of 0.42 of water's heat and no slaking: 350 parts of water at 66 R with 33.3 and with 100
// of malt at 10 R. Printed 63.8 R (exactly 63.85) and 60 R.
TEST(MashTemperature, SolvesTheMixingProblemsOfTheNineteenthCentury) {
  const auto reaumur = [](double degrees) { return 1.25 * degrees; };
  const auto mixed = [&](double malt) {
    return inCelsius(mashTemperature(liquor(350.0), celsius(reaumur(66.0)),
                                     grain(malt, reaumur(10.0), 0.42, 0.0))) /
           1.25;
  };
  EXPECT_NEAR(mixed(33.333), 63.85, 0.005);
  EXPECT_NEAR(mixed(100.0), 60.0, 0.005);
}

// Computed here from the textbook balance: 3 kg/kg, S 0.40, grain 20 C, 19.3 kJ/kg, mash 67 C.
TEST(StrikeTemperature, GainsOneAndAHalfKelvinFromSlaking) {
  EXPECT_NEAR(inCelsius(strikeTemperature(liquor(3.0), celsius(67.0), grain(1, 20, 0.40, 19.3e3))),
              71.73, 0.006);
  EXPECT_NEAR(inCelsius(strikeTemperature(liquor(3.0), celsius(67.0), grain(1, 20, 0.40, 0.0))),
              73.27, 0.006);
}

// Brewers' experience (common practice, no printed source): strike water of 70 C settles at 66.7 C
// once the grain is in. Pale malt of 4.5 % moisture gives that at ordinary thicknesses: 30 L on
// 6.5 kg (4.6 L/kg) from a cellar at 18 C, 5 L/kg from one at 15 C, 4 L/kg in a warm kitchen. At
// 3 L/kg the grain would have to be at 31 C: so thick a mash needs hotter strike water.
TEST(StrikeTemperature, LosesThreeDegreesAtAnOrdinaryThickness) {
  struct Row {
    double waterPerGrain, grainAt;
  };
  for (const Row& row : {Row{30.0 / 6.5, 18.0}, Row{5.0, 15.0}, Row{4.0, 23.5}, Row{3.0, 31.5}}) {
    SCOPED_TRACE(row.waterPerGrain);
    const Grain malt{.mass = kilograms(1.0),
                     .temperature = celsius(row.grainAt),
                     .specificHeat = maltSpecificHeat(0.045),
                     .slakingHeat = maltSlakingHeat(0.045)};
    EXPECT_NEAR(inCelsius(strikeTemperature(liquor(row.waterPerGrain), celsius(66.7), malt)), 70.0,
                0.15);
  }
}

// The same within a day, whose kettle shares the strike water's heat.
TEST(StrikeTemperature, IsReachedInTheKettleToo) {
  Batch batch = mashOf(30.0, 6.5, 18.0);
  batch.mash = HeldMash{{{celsius(66.7), minutes(1.0)}}};
  batch.mashingIn = seconds(0.0);
  const BrewDay day = simulate(steelRig(), batch, roomAt(18.0));
  ASSERT_EQ(day.outcome, Outcome::Done);
  EXPECT_NEAR(inCelsius(day.strike), 70.0, 0.2);
  const Stage* mixing = day.find(StageKind::MashingIn);
  ASSERT_NE(mixing, nullptr);
  EXPECT_WITHIN(mixing->first - day.strike, kelvins(0.0), kelvins(1e-6));
  EXPECT_NEAR(inCelsius(mixing->mixed), 66.7, 1e-6);
}

RC_GTEST_PROP(StrikeTemperature, IsTheInverseOfMixing, ()) {
  const double water = between(1.0, 120.0);
  const HeatCapacity hot = liquor(water);
  // Down to 2 kg/kg, where the strike water of a hot mash all but boils.
  const Grain malt =
      grain(between(0.0, 0.5 * water), between(-5.0, 35.0), between(0.3, 0.5), between(0.0, 40e3));
  const Temperature goal = celsius(between(35.0, 80.0));
  const Temperature strike = strikeTemperature(hot, goal, malt);
  RC_ASSERT(abs(mashTemperature(hot, strike, malt) - goal) < kelvins(1e-9));
}

RC_GTEST_PROP(MashTemperature, KeepsTheHeatItWasGiven, ()) {
  const HeatCapacity hot = joulesPerKelvin(between(1e4, 5e5));
  const Grain malt =
      grain(between(0.1, 20.0), between(-5.0, 35.0), between(0.3, 0.5), between(0.0, 40e3));
  const Temperature water = celsius(between(40.0, 90.0));
  const Temperature mash = mashTemperature(hot, water, malt);
  const Energy given = hot * (water - mash) + malt.mass * malt.slakingHeat;
  const Energy taken = malt.mass * malt.specificHeat * (mash - malt.temperature);
  RC_ASSERT(abs(given - taken) < joules(1e-3));
}

TEST(MashTemperature, IsTheWatersWithoutGrain) {
  EXPECT_NEAR(inCelsius(mashTemperature(liquor(20.0), celsius(70.0), grain(0, 10, 0.4, 2e4))), 70.0,
              1e-12);
}

}  // namespace
}  // namespace physics
