// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/band_course.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "physics/brewday.hpp"
#include "rigs/answers/drawn_days.hpp"
#include "tests/support/solved_demo.hpp"

namespace {

using namespace rigs;
using namespace physics;
using test_support::demoPlan;
using test_support::startedPlan;

TEST(BandCourse, BeginsInTheRoomAndEndsAtTheBoil) {
  const auto course = bandCourse(demoPlan(), 2, {}, 32).value();
  // As cold as the water, to about its degree.
  EXPECT_NEAR(inCelsius(*course.front().wort.middle), 12.0, 0.5);
  EXPECT_NEAR(inKelvins(*course.front().wort.high - *course.front().wort.low), 2.56, 0.5);
  // All boil.
  EXPECT_NEAR(inKelvins(*course.back().wort.high - *course.back().wort.low), 0.0, 0.05);
  for (const BandCoursePoint& point : course) {
    EXPECT_LE(*point.wort.low, *point.wort.middle);
    EXPECT_LE(*point.wort.middle, *point.wort.high);
  }
}

// Where all days cool, a tenth has passed a temperature when the line of the coolest tenth passes.
TEST(BandCourse, IsTheBandOfTheMorningInTheMorning) {
  const Plan plan = startedPlan("night-unplugged");
  const auto course = bandCourse(plan, 0, {}, 256).value();
  const auto morning = bandsOf(plan, 0).value().morning;
  const BrewDay day = physics::simulate(plan.rigs[0].rig, plan.batch, plan.place);
  const Stage* night = day.find(StageKind::UnpluggedRest);
  ASSERT_NE(night, nullptr);
  // Days reach their morning at other times by a quarter of an hour: within the last hours the wort
  // cools by 1 or 2 K an hour.
  const BandCoursePoint* last = nullptr;
  for (const BandCoursePoint& point : course)
    if (point.time < night->end - minutes(20.0)) last = &point;
  ASSERT_NE(last, nullptr);
  EXPECT_NEAR(inCelsius(*last->wort.middle), inCelsius(*morning.middle), 1.5);
  EXPECT_NEAR(inKelvins(*last->wort.high - *last->wort.low),
              inKelvins(*morning.high - *morning.low), 0.5);
}

TEST(BandCourse, LeavesADayThatStopsAsItStopped) {
  Plan plan = demoPlan();
  plan.rigs[0].rig.element.rating = watts(150.0);
  const auto course = bandCourse(plan, 0, {}, 8).value();
  EXPECT_TRUE(course.back().wort.low);
  EXPECT_FALSE(bandCourse(plan, 0, [] { return true; }));
}

}  // namespace
