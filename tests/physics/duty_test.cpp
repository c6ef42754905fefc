// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/duty.hpp"

#include <gtest/gtest.h>

#include "tests/support/kettles.hpp"
#include "tests/support/within.hpp"

namespace {

using namespace physics;

DutySpan span(double from, double to, double share, bool enabled = true) {
  return {.begin = minutes(from), .end = minutes(to), .share = share, .enabled = enabled};
}

TEST(Duty, CountsTimeWithCurrentByItsShare) {
  const Duty duty{{span(0, 60, 1.0), span(60, 120, 0.1), span(120, 240, 0.5)}};
  EXPECT_WITHIN(duty.current(), minutes(126.0), seconds(1e-6));
  EXPECT_NEAR(duty.mean(), 126.0 / 240.0, 1e-12);
}

TEST(Duty, JoinsNeighboursIntoOneRun) {
  const Duty duty{{span(0, 30, 1.0), span(30, 90, 0.2), span(90, 130, 1.0), span(130, 200, 1.0)}};
  EXPECT_WITHIN(duty.longestFull(), minutes(110.0), seconds(1e-6));
  EXPECT_WITHIN(duty.longestEnabled(), minutes(200.0), seconds(1e-6));
}

TEST(Duty, EndsASessionWhenTheKettleIsUnplugged) {
  const Duty duty{{span(0, 50, 1.0), span(50, 500, 0.0, false), span(500, 620, 1.0)}};
  EXPECT_WITHIN(duty.longestEnabled(), minutes(120.0), seconds(1e-6));
}

TEST(Duty, FindsTheWorstStretch) {
  const Duty duty{{span(0, 40, 1.0), span(40, 100, 0.1), span(100, 150, 1.0)}};
  // 120 min ending with the day: 10 min of the first, 60 at a tenth, all 50 of the last.
  EXPECT_WITHIN(duty.mostCurrentWithin(minutes(120.0)), minutes(66.0), seconds(1e-6));
  EXPECT_WITHIN(duty.mostEnabledWithin(minutes(120.0)), minutes(120.0), seconds(1e-6));
  EXPECT_WITHIN(duty.mostCurrentWithin(minutes(50.0)), minutes(50.0), seconds(1e-6));
  EXPECT_WITHIN(duty.mostCurrentWithin(hours(10.0)), duty.current(), seconds(1e-6));
}

TEST(DutyOf, HoldsAMashAtASmallShareAndBoilsAtFull) {
  const BrewDay day = simulate(test_support::steelRig(), test_support::mashOf(28.0, 5.0),
                               test_support::roomAt(20.0));
  const Duty duty = dutyOf(day);
  ASSERT_EQ(duty.spans.size(), day.stages.size());
  for (std::size_t i = 0; i < day.stages.size(); ++i) {
    const StageKind kind = day.stages[i].kind;
    if (kind == StageKind::Rest) {
      EXPECT_LT(duty.spans[i].share, 0.3);
    } else if (kind == StageKind::MashingIn) {
      EXPECT_EQ(duty.spans[i].share, 0.0);
    } else {
      EXPECT_GT(duty.spans[i].share, kUnbroken);
    }
  }
  // Heating to the boil and the boil itself are one run of full current.
  const Stage* heating = day.find(StageKind::HeatingToBoil);
  ASSERT_TRUE(heating);
  EXPECT_WITHIN(duty.longestFull(), day.stages.back().end - heating->begin, seconds(1.0));
  // Mean current times full voltage times the day is the energy that the ledger has.
  const Energy byDuty = duty.current() * day.electrical.delivered;
  EXPECT_WITHIN(byDuty, day.total.element, 1e-6 * day.total.element);
}

TEST(DutyOf, TurnsABoilAtPartPowerIntoSwitching) {
  Rig rig = test_support::steelRig(4000.0);
  rig.boilPower = 0.7;
  const BrewDay day = simulate(rig, test_support::waterOnly(28.0), test_support::roomAt(20.0));
  const Duty duty = dutyOf(day);
  EXPECT_NEAR(duty.spans.back().share, 0.7, 1e-6);
  EXPECT_LT(duty.longestFull(), day.stages.back().begin + seconds(1.0));
}

}  // namespace
