// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/night.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <variant>

#include "physics/growth.hpp"
#include "rigs/answers/answers.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "tests/support/within.hpp"

namespace rigs {
namespace {

using namespace physics;

Plan demo() {
  Problems problems;
  return *readPlan(demoPlanText(), ".", problems);
}
// Rig (b) bare with a jacket to compare, rig (c) with its own; left alone from 67 °C.
Plan overnight(Time alone) {
  Plan plan = demo();
  plan.rigs = {plan.rigs[1], plan.rigs[2]};
  plan.batch.mash = UnpluggedMash{celsius(67.0), alone};
  return plan;
}

TEST(TimeAlone, IsThePlansOwnNightAndElseItsGoal) {
  Plan plan = demo();
  EXPECT_FALSE(hasOwnNight(plan));
  EXPECT_EQ(timeAlone(plan), plan.goals.unplugged);
  plan.batch.mash = UnpluggedMash{celsius(67.0), hours(10.0)};
  EXPECT_TRUE(hasOwnNight(plan));
  EXPECT_EQ(timeAlone(plan), hours(10.0));
  plan.batch.mash = UnpluggedMash{celsius(67.0), seconds(0.0)};
  EXPECT_FALSE(hasOwnNight(plan));
  EXPECT_EQ(timeAlone(plan), plan.goals.unplugged);
}

TEST(Night, IsTheDaysOwnRestToTheLastDigit) {
  const Plan plan = overnight(hours(10.0));
  const Answers answers = answer(plan, Depth::Everything);
  for (const RigAnswer& rig : answers.rigs) {
    SCOPED_TRACE(rig.name);
    ASSERT_TRUE(rig.night);
    EXPECT_TRUE(rig.night->own);
    const Stage* rest = rig.day.find(StageKind::UnpluggedRest);
    ASSERT_TRUE(rest);
    EXPECT_EQ(rig.night->asItIs.alone, hours(10.0));
    EXPECT_EQ(rig.night->asItIs.morning, rest->last);
    EXPECT_WITHIN(rig.night->asItIs.first, rest->first, kelvins(1e-6));
    // The same night stands in the comparison of jackets.
    ASSERT_TRUE(rig.jacket);
    EXPECT_EQ(rig.jacket->alone, hours(10.0));
  }
  EXPECT_WITHIN(answers.rigs[0].jacket->bareAfter, answers.rigs[0].night->asItIs.morning,
                kelvins(1e-9));
  EXPECT_WITHIN(answers.rigs[1].jacket->jacketedAfter, answers.rigs[1].night->asItIs.morning,
                kelvins(1e-9));
}

TEST(Night, IsReadAtTenTwentyAndThirtyMinutesAndEveryHour) {
  const auto night = *answer(overnight(hours(3.5)), Depth::Night).rigs[0].night;
  std::vector<double> at;
  for (const NightPoint& reading : night.asItIs.readings) at.push_back(inMinutes(reading.alone));
  ASSERT_EQ(at.size(), 7U);
  const std::vector<double> wanted{10.0, 20.0, 30.0, 60.0, 120.0, 180.0, 210.0};
  for (std::size_t i = 0; i < at.size(); ++i) EXPECT_NEAR(at[i], wanted[i], 1e-9);
  EXPECT_EQ(night.asItIs.readings.back().wort, night.asItIs.morning);
  // Each is what a night of that length ends with.
  const NightPoint& hour = night.asItIs.readings[3];
  const auto shorter = *answer(overnight(hours(1.0)), Depth::Night).rigs[0].night;
  EXPECT_WITHIN(hour.wort, shorter.asItIs.morning, kelvins(0.01));
}

TEST(Night, TellsWhenHotHoldingEndsAndForHowLong) {
  const auto night = *answer(overnight(hours(10.0)), Depth::Night).rigs[0].night;
  ASSERT_TRUE(night.asItIs.passesAfter);
  EXPECT_WITHIN(*night.asItIs.passesAfter + night.asItIs.below, hours(10.0), seconds(1.0));
  EXPECT_WITHIN(night.asItIs.warm, night.asItIs.below, seconds(1.0));
  // A night that ends there ends at that temperature.
  const auto until = *answer(overnight(*night.asItIs.passesAfter), Depth::Night).rigs[0].night;
  EXPECT_WITHIN(until.asItIs.morning, kWarmUpTo, kelvins(0.01));
  const auto brief = *answer(overnight(minutes(20.0)), Depth::Night).rigs[0].night;
  EXPECT_FALSE(brief.asItIs.passesAfter);
  EXPECT_EQ(brief.asItIs.below, seconds(0.0));
}

// Worst case of a whole night; a mash that is left for minutes is too hot for all of it.
TEST(Night, TellsWhatGrowsInItAtWorst) {
  const auto night = answer(overnight(hours(12.0)), Depth::Night).rigs[0].night->asItIs;
  EXPECT_GT(night.doublings, kMostDoublings);
  ASSERT_TRUE(night.tooManyAfter);
  EXPECT_GT(*night.tooManyAfter, *night.passesAfter);
  // A night that ends then has just those doublings.
  const auto until = answer(overnight(*night.tooManyAfter), Depth::Night).rigs[0].night->asItIs;
  EXPECT_NEAR(until.doublings, kMostDoublings, 0.02);
  EXPECT_LT(until.souring, night.souring);
  const auto brief = answer(overnight(minutes(20.0)), Depth::Night).rigs[0].night->asItIs;
  EXPECT_EQ(brief.doublings, 0.0);
  EXPECT_FALSE(brief.tooManyAfter);
  // The jacketed kettle of the same night stays hot for longer: fewer double in it.
  const auto jacketed = answer(overnight(hours(12.0)), Depth::Night).rigs[1].night->asItIs;
  EXPECT_LT(jacketed.doublings, night.doublings);
}

TEST(Night, SupposesAJacketForABareRigAndNoneForOneThatHasIt) {
  const Answers answers = answer(overnight(hours(10.0)), Depth::Night);
  const auto& bare = *answers.rigs[0].night;
  const auto& jacketed = *answers.rigs[1].night;
  ASSERT_TRUE(bare.supposed && jacketed.supposed);
  EXPECT_GT(bare.supposed->morning, bare.asItIs.morning);
  EXPECT_LT(jacketed.supposed->morning, jacketed.asItIs.morning);
  EXPECT_EQ(bare.asItIs.curve.front().alone, seconds(0.0));
  EXPECT_GT(bare.asItIs.curve.size(), 20U);
  // Without a jacket to compare nothing is supposed, and the night is there all the same.
  Plan none = overnight(hours(10.0));
  for (RigPlan& rig : none.rigs) rig.jacketIsCompared = false;
  const Answers alone = answer(none, Depth::Night);
  ASSERT_TRUE(alone.rigs[0].night);
  EXPECT_FALSE(alone.rigs[0].night->supposed);
  EXPECT_EQ(alone.rigs[0].night->asItIs.morning, bare.asItIs.morning);
}

TEST(Night, IsOnlySupposedWhereThePlanHoldsItsRests) {
  const Plan plan = demo();
  const Answers answers = answer(plan, Depth::Night);
  for (const RigAnswer& rig : answers.rigs) {
    ASSERT_TRUE(rig.night);
    EXPECT_FALSE(rig.night->own);
    EXPECT_EQ(rig.night->asItIs.alone, plan.goals.unplugged);
  }
  Plan water = plan;
  water.batch.grain.mass = kilograms(0.0);
  EXPECT_FALSE(answer(water, Depth::Night).rigs[1].night);
  EXPECT_FALSE(answer(plan, Depth::Day).rigs[1].night);
}

}  // namespace
}  // namespace rigs
