// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/cooling.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/gui/telling/told_checks.hpp"

namespace gui::telling {
namespace {

using test_support::cell;
using test_support::demoCase;
using test_support::inShort;
using test_support::solvedDemo;

std::string degrees(physics::Temperature t) {
  return rigs::formatNumber(physics::inCelsius(t), {.significantDigits = 3, .decimals = 1});
}

TEST(HowFarCools, TellsBothDaysAfterThePlannedTime) {
  const Answer answer = howFarCools(demoCase());
  const Table& table = *answer.tables().at(0);
  const physics::JacketEffect& effect = *solvedDemo().answers.rigs[2].jacket;
  EXPECT_EQ(cell(table, "with jacket", 2), degrees(effect.jacketedAfter));
  EXPECT_EQ(cell(table, "without jacket", 2), degrees(effect.bareAfter));
  EXPECT_NE(inShort(answer).find("is what a full mash in "), std::string::npos);
  test_support::expectFiguresOfTheResult(answer, solvedDemo(), 2);
}

// The longer it is left alone, the colder; and always warmer with the jacket.
TEST(HowFarCools, CoolsHourByHour) {
  const Answer answer = howFarCools(demoCase());
  const Table& table = *answer.tables().at(0);
  double last = 100.0;
  for (const char* heading : {"Unplugged for 1 h", "Unplugged for 2 h", "Unplugged for 4 h"}) {
    SCOPED_TRACE(heading);
    const Row* bare = test_support::rowOf(table, "without jacket", heading);
    const Row* jacketed = test_support::rowOf(table, "with jacket", heading);
    ASSERT_TRUE(bare && jacketed);
    ASSERT_TRUE(bare->cells[1] && jacketed->cells[1]);
    EXPECT_LT(*cellNumber(bare->cells[1], {}), last);
    EXPECT_GT(*cellNumber(jacketed->cells[1], {}), *cellNumber(bare->cells[1], {}));
    last = *cellNumber(bare->cells[1], {});
  }
}

// The points of the simulation itself stand in the table where the curve has them.
TEST(HowFarCools, MeetsTheCurveAtThePlannedTime) {
  const Picture picture = coolingPicture(demoCase());
  ASSERT_EQ(picture.lines.size(), 8U);
  ASSERT_EQ(picture.limits.size(), 1U);
  ASSERT_EQ(picture.marks.size(), 8U);
  for (std::size_t i = 0; i < picture.lines.size(); ++i) {
    const PictureMark& mark = picture.marks[i];
    EXPECT_EQ(picture.lines[i].faint, i % 2 == 1);
    double nearest = 1e9;
    double y = 0.0;
    for (const PicturePoint& p : picture.lines[i].points) {
      if (std::abs(p.x - mark.at.x) >= nearest) continue;
      nearest = std::abs(p.x - mark.at.x);
      y = p.y;
    }
    EXPECT_NEAR(y, mark.at.y, 0.2);
  }
}

TEST(HowFarCools, SaysThatThereIsNothingToCompare) {
  rigs::Solution bare = solvedDemo();
  for (rigs::RigAnswer& rig : bare.answers.rigs) rig.jacket.reset();
  bare.sweeps.clear();
  const Answer answer = howFarCools(test_support::caseOf(bare));
  EXPECT_EQ(inShort(answer), "No rig of this plan has a jacket to compare.");
  EXPECT_TRUE(answer.pictures[0].lines.empty());
  for (const Row& row : answer.tables().at(0)->rows)
    for (const Cell& one : row.cells) EXPECT_FALSE(one);
}

}  // namespace
}  // namespace gui::telling
