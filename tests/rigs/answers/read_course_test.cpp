// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/read_course.hpp"

#include <gtest/gtest.h>

#include "tests/support/solved_demo.hpp"

namespace {

using namespace physics;
using rigs::readings::Event;

// Four looks in the first half hour, one in the morning, colder than planned; invented.
std::vector<rigs::readings::Reading> night() {
  const auto at = [](double hour, double minute) { return hours(hour) + minutes(minute); };
  return {{1, at(20, 48), Event::Unplugged, 0.0}, {2, at(20, 49), celsius(66.6), 0.1},
          {3, at(21, 0), celsius(66.2), 0.1},     {4, at(21, 10), celsius(65.8), 0.1},
          {5, at(21, 19), celsius(65.5), 0.1},    {6, at(30, 30), celsius(49.4), 0.1}};
}

TEST(ReadCourse, IsNarrowerWithReadingsAndPassesThem) {
  const rigs::Plan plan = test_support::startedPlan("night-unplugged");
  const auto planned = rigs::plannedCourses(plan, 1).value();
  const auto read = night();
  const auto learned =
      rigs::learnedFrom(plan, 1, read, {}, {}, {.before = false, .next = false, .courses = true})
          .value();
  const rigs::ReadCourse course = rigs::readCourse(plan, planned, read, learned);
  ASSERT_FALSE(course.before.empty());
  ASSERT_EQ(course.before.size(), course.after.size());
  const auto width = [](const rigs::BandCoursePoint& point) {
    return inKelvins(*point.wort.high - *point.wort.low);
  };
  ASSERT_TRUE(course.stage);  // ten hours from when it was unplugged
  EXPECT_DOUBLE_EQ(inSeconds(course.stage->from), inSeconds(read.front().at - plan.startOfDay));
  EXPECT_NEAR(inSeconds(course.stage->until - course.stage->from), 36000.0, 1.0);
  const Time morning = read.back().at - plan.startOfDay;
  for (std::size_t i = 0; i + 1 < course.after.size(); ++i) {
    if (course.after[i].time > morning || course.after[i + 1].time < morning) continue;
    EXPECT_LT(width(course.after[i]), 0.5 * width(course.before[i]));
    EXPECT_LT(*course.after[i + 1].wort.low, celsius(49.4));
    EXPECT_GT(*course.after[i].wort.high, celsius(49.4));
    EXPECT_LT(*course.after[i].wort.middle, *course.before[i].wort.middle);
  }
}

TEST(ReadCourse, IsNoBandWhereOnlyTheLikeliestDayIsKnown) {
  const rigs::Plan plan = test_support::startedPlan("night-unplugged");
  const auto planned = rigs::plannedCourses(plan, 1).value();
  rigs::Learned learned;
  EXPECT_TRUE(rigs::readCourse(plan, planned, {}, learned).after.empty());
  learned.courses = {planned.front()};
  const rigs::ReadCourse course = rigs::readCourse(plan, planned, {}, learned);
  EXPECT_FALSE(course.isSure);
  EXPECT_FALSE(course.after.empty());
}

TEST(ReadCourse, LetsTheLawsOwnErrorGrowInOverHours) {
  const auto read = night();
  const Time last = read.back().at;
  EXPECT_EQ(rigs::lawsGrownIn({}, last), 0.0);
  EXPECT_EQ(rigs::lawsGrownIn(read, last), 0.0);
  EXPECT_DOUBLE_EQ(rigs::lawsGrownIn(read, last + minutes(90.0)), 0.5);
  EXPECT_EQ(rigs::lawsGrownIn(read, last + hours(9.0)), 1.0);
}

}  // namespace
