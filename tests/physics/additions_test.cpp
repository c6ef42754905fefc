// SPDX-License-Identifier: GPL-3.0-or-later
// What goes into the boiling wort: the dip, the way back, and what there is afterwards.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "physics/brewday.hpp"
#include "physics/wort.hpp"
#include "tests/support/kettles.hpp"
#include "tests/support/random_rigs.hpp"
#include "tests/support/within.hpp"

namespace physics {
namespace {

using test_support::between;
using test_support::Case;
using test_support::mashOf;
using test_support::nearlyLossless;
using test_support::rigOf;
using test_support::roomAt;
using test_support::someCase;
using test_support::steelKettle;
using test_support::steelRig;
using test_support::waterOnly;

Addition added(double kilogram, double extract, double at, double minutesBeforeEnd) {
  return {.what = "an addition",
          .mass = kilograms(kilogram),
          .extract = extract,
          .temperature = celsius(at),
          .beforeEnd = minutes(minutesBeforeEnd)};
}

// 20 kg of boiling water in next to no metal, losing next to nothing.
BrewDay boilingWaterWith(const Addition& addition, double watt = 3000.0) {
  Vessel vessel = nearlyLossless(steelKettle());
  vessel.mass = kilograms(1e-6);
  Batch batch = waterOnly(20.0 / 0.9982);
  batch.additions = {addition};
  return simulate(rigOf(vessel, watt), batch, roomAt(20.0));
}

// By hand (own) from the steam table, saturated liquid, kJ/kg: 20 C 83.9, 90 C 377.0, 95 C 398.1,
// 100 C 419.1. 20 kg at the boil and 2 kg at 20 C: (20 * 419.1 + 2 * 83.9)/22 = 388.6 kJ/kg, which
// is 92.8 C; 22 * (419.1 - 388.6) = 671 kJ more bring it back.
TEST(ColdWater, DipsAndComesBackAsTheSteamTableHasIt) {
  const BrewDay day = boilingWaterWith(added(2.0, 0.0, 20.0, 60.0));
  ASSERT_EQ(day.additions.size(), 1u);
  const Added& water = day.additions.front();
  EXPECT_NEAR(inCelsius(water.mixed), 92.75, 0.1);
  ASSERT_TRUE(water.backIn);
  EXPECT_NEAR(inSeconds(*water.backIn), 671e3 / 3000.0, 3.0);
  EXPECT_NEAR(inJoules(water.took), 2.0 * (388.6 - 83.9) * 1e3, 1e3);
}

// By hand (own), the sugar's share of a solution's heat from another fit than ours: Lydh &
// Stjernberg, master's thesis 2018, c = (2.4176e-4 + 6.3187e-5 s) t + 4.1814 - 0.02471 s kJ/(kg K),
// at 10 % and 60 C: 2.10 kJ/(kg K). 1 * 2.10 * 80/(20 * 4.216 + 2.10) = 1.94 K. Fits differ by 6 %.
TEST(Sugar, DipsAsTheHeatOfItsSolutionHasIt) {
  const BrewDay day = boilingWaterWith(added(1.0, 1.0, 20.0, 60.0));
  ASSERT_EQ(day.additions.size(), 1u);
  const Added& sugar = day.additions.front();
  EXPECT_NEAR(inKelvins(sugar.before - sugar.mixed), 1.94, 0.06 * 1.94);
  // 1 kg of sugar in 21 kg, 4.76 degrees Plato, by the ASBC table 1.0188.
  EXPECT_NEAR(sugar.gravity, 1.0188, 0.0002);
}

TEST(Additions, NeverRollAgainWithTooLittleTimeOrPower) {
  EXPECT_FALSE(boilingWaterWith(added(2.0, 0.0, 20.0, 2.0)).additions.front().backIn);
  EXPECT_TRUE(boilingWaterWith(added(2.0, 0.0, 20.0, 5.0)).additions.front().backIn);
}

TEST(Additions, AreNoBoilOff) {
  Batch batch = mashOf(28.0, 5.0);
  const BrewDay without = simulate(steelRig(), batch, roomAt(18.0));
  batch.additions = {added(1.0, 0.0, 99.0, 30.0)};
  const BrewDay with = simulate(steelRig(), batch, roomAt(18.0));
  EXPECT_WITHIN(with.boil->coldBoilOff, without.boil->coldBoilOff,
                0.02 * without.boil->coldBoilOff);
  EXPECT_NEAR(inLitres(with.resultCold - without.resultCold), 1.0, 0.03);
  EXPECT_LT(with.boil->rolled, without.boil->rolled);
}

// Sugar beyond what dissolves would burn.
TEST(Additions, StopTheDayWhereTheyMakeASyrup) {
  Batch batch = mashOf(20.0, 4.0);
  batch.additions = {added(60.0, 1.0, 20.0, 10.0)};
  const BrewDay day = simulate(steelRig(), batch, roomAt(18.0));
  EXPECT_EQ(day.outcome, Outcome::UncoversElement);
  EXPECT_LT(day.total.imbalance(), 1e-6);
}

TEST(Additions, AreCountedInTheWortThatIsWanted) {
  Batch batch = mashOf(28.0, 4.0);
  batch.size = WantedWort{litres(20.0)};
  batch.additions = {added(3.0, 0.7, 20.0, 15.0), added(2.0, 0.0, 10.0, 0.0)};
  const BrewDay day = simulate(steelRig(), batch, roomAt(18.0));
  EXPECT_FALSE(day.unmet);
  EXPECT_NEAR(inLitres(day.resultCold), 20.0, 1e-4);
  EXPECT_EQ(day.additions.size(), 2u);
}

Case caseWithAdditions() {
  Case c = someCase();
  c.batch.boil = minutes(between(20.0, 90.0));
  for (int i = 0; i < 2; ++i) {
    c.batch.additions.push_back(added(between(0.01, 3.0), between(0.0, 1.0), between(1.0, 80.0),
                                      between(0.0, inMinutes(c.batch.boil))));
  }
  return c;
}

BrewDay brew(const Case& c, const SimulationOptions& options = {}) {
  return simulate(c.rig, c.batch, c.place, options);
}

RC_GTEST_PROP(AnyAddition, AccountsForEveryJouleAndKeepsTheExtract, ()) {
  const Case c = caseWithAdditions();
  const BrewDay day = brew(c, {.curves = true});
  RC_ASSERT(day.total.imbalance() < 1e-7);
  for (const Stage& stage : day.stages) {
    const bool alone = stage.ledger.supplied() <= joules(0.0);
    const bool closes = alone ? abs(stage.ledger.residual()) < 1e-6 * day.total.supplied()
                              : stage.ledger.imbalance() < 1e-6;
    RC_ASSERT(closes);
    for (std::size_t i = 1; i < stage.curve.size(); ++i)
      RC_ASSERT(stage.curve[i].time >= stage.curve[i - 1].time);
  }
  if (!day.finished() || day.resultGravity > 1.12) return;
  const auto extractIn = [](Volume cold, double gravity) {
    return 0.9982 * inLitres(cold) * gravity * platoFromGravity(gravity) / 100.0;
  };
  double brought = 0.0;
  for (const Addition& one : c.batch.additions) brought += inKilograms(one.mass) * one.extract;
  const double before = extractIn(day.preBoilCold, day.preBoilGravity);
  RC_ASSERT(std::abs(extractIn(day.resultCold, day.resultGravity) - before - brought) <
            0.01 * (before + brought) + 0.01);
}

RC_GTEST_PROP(AnyAddition, IsTheSameFollowedInStepsOfTime, ()) {
  const Case c = caseWithAdditions();
  const BrewDay day = brew(c);
  const BrewDay steps = brew(c, {.relativeTolerance = 1e-13, .method = Method::StepsInTime});
  RC_ASSERT(day.outcome == steps.outcome);
  RC_ASSERT(day.additions.size() == steps.additions.size());
  RC_ASSERT(abs(day.total.element - steps.total.element) <= 3e-8 * steps.total.supplied());
  for (std::size_t i = 0; i < day.additions.size(); ++i)
    RC_ASSERT(abs(day.additions[i].mixed - steps.additions[i].mixed) < kelvins(1e-4));
}

// As late as it may roll: not before the boil ends.
Time backIn(const Case& c, const Addition& addition) {
  Case with = c;
  with.batch.additions = {addition};
  const BrewDay day = brew(with);
  if (day.additions.empty() || !day.additions.front().backIn) return hours(48.0);
  return *day.additions.front().backIn;
}

RC_GTEST_PROP(AnyAddition, RollsNoLaterHotterAndNoSoonerHeavier, ()) {
  const Case c = caseWithAdditions();
  const Addition one = c.batch.additions.front();
  Addition hotter = one;
  hotter.temperature += kelvins(between(0.0, 5.0));
  Addition heavier = one;
  heavier.mass = between(1.0, 1.5) * one.mass;
  const Time asItIs = backIn(c, one);
  RC_ASSERT(backIn(c, hotter) <= asItIs + seconds(0.01));
  RC_ASSERT(backIn(c, heavier) >= asItIs - seconds(0.01));
}

RC_GTEST_PROP(AnyAddition, IsTheSameInTwoParts, ()) {
  Case c = caseWithAdditions();
  Addition half = c.batch.additions.front();
  c.batch.additions = {half};
  const BrewDay whole = brew(c);
  half.mass = 0.5 * half.mass;
  c.batch.additions = {half, half};
  const BrewDay parts = brew(c);
  RC_ASSERT(whole.outcome == parts.outcome);
  RC_ASSERT(abs(whole.resultCold - parts.resultCold) <= 1e-7 * whole.resultCold);
  RC_ASSERT(abs(whole.total.element - parts.total.element) <= 1e-7 * whole.total.element);
  if (whole.additions.empty()) return;
  RC_ASSERT(abs(whole.additions.back().mixed - parts.additions.back().mixed) < kelvins(1e-6));
}

}  // namespace
}  // namespace physics
