// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/money.hpp"

#include <gtest/gtest.h>

#include "rigs/answers/figures.hpp"
#include "rigs/answers/sweeps.hpp"
#include "tests/gui/terminal/plan_in_code.hpp"

namespace {

using namespace physics;
using namespace rigs;

// Day and night at different prices, so that no energy has one price.
void byTheHour(Plan& plan) {
  plan.tariff.weekday = {{hours(0.0), hours(10.0), 0.1}, {hours(10.0), hours(24.0), 0.4}};
  plan.tariff.weekend = plan.tariff.weekday;
}

TEST(MoneySaved, IsTheDifferenceOfTwoDaysWhereTheHourDecides) {
  Plan plan = test_support::planInCode();
  byTheHour(plan);
  const Answers answers = answer(plan, Depth::DayAndJacket);
  const JacketEffect& effect = *answers.rigs[0].jacket;
  const auto saved = moneySaved(effect.bare, effect.jacketed, plan.tariff, plan.start());
  ASSERT_TRUE(saved);
  // All of it is drawn at one of the two prices, and a shorter day begins its boil earlier.
  EXPECT_GT(*saved, 0.1 * inKilowattHours(*effect.savedFromWall));
  EXPECT_DOUBLE_EQ(*saved, *dayCost(effect.bare, plan.tariff, plan.startOfDay) -
                               *dayCost(effect.jacketed, plan.tariff, plan.startOfDay));
  for (const JacketPoint& point : againstThickness(plan.rigs[0], plan, millimetres(20.0), 2))
    EXPECT_TRUE(point.savedMoney);
  for (const auto& point : jacketAgainstPower(plan.rigs[0], plan, watts(2500.0), watts(3500.0), 2))
    EXPECT_TRUE(point.savedMoney);
}

TEST(MoneySaved, IsNothingToTellWithoutAPrice) {
  Plan plan = test_support::planInCode();
  plan.tariff = Tariff{};
  const BrewDay day = answer(plan, Depth::Day).rigs[0].day;
  EXPECT_FALSE(moneySaved(day, day, plan.tariff, plan.start()));
}

TEST(ElementPayback, ComparesTheYearWithTheFirstRigThatComesToItsEnd) {
  Plan plan = test_support::planInCode(true);
  plan.tariff.elementPrice = 40.0;
  plan.tariff.brewsPerYear = 10.0;
  Answers answers = answer(plan, Depth::Day);
  answers.rigs[0].cost = 2.0;
  answers.rigs[1].cost = 1.6;
  const auto second = elementPayback(plan, answers, 1);
  ASSERT_TRUE(second);
  EXPECT_EQ(second->against, 0u);
  EXPECT_NEAR(second->payback.perYear, 4.0, 1e-12);
  EXPECT_NEAR(second->payback.years.value(), 10.0, 1e-9);
  EXPECT_FALSE(elementPayback(plan, answers, 0)) << "a rig is no replacement of itself";
  EXPECT_FALSE(elementPayback(plan, answers, 2)) << "this one never boils";
  answers.rigs[1].cost = 2.4;
  EXPECT_FALSE(elementPayback(plan, answers, 1)->payback.years) << "it costs more, not less";
  plan.rigs[1].rig.element = plan.rigs[0].rig.element;
  EXPECT_FALSE(elementPayback(plan, answers, 1)) << "the same element";
}

TEST(JacketPayback, NeedsAPriceAndAJacket) {
  Plan plan = test_support::planInCode();
  const Answers answers = answer(plan, Depth::DayAndJacket);
  EXPECT_FALSE(jacketPayback(answers.rigs[0], plan));
  plan.tariff.jacketPrice = 30.0;
  const auto back = jacketPayback(answers.rigs[0], plan);
  ASSERT_TRUE(back);
  const JacketEffect& effect = *answers.rigs[0].jacket;
  EXPECT_NEAR(back->perYear, 12.0 * 0.30 * inKilowattHours(*effect.savedFromWall), 1e-9);
}

TEST(CostOfAYear, CountsADozenBrewsWhereThePlanDoesNot) {
  Plan plan = test_support::planInCode();
  RigAnswer rig;
  EXPECT_FALSE(costOfAYear(rig, plan.tariff));
  rig.cost = 1.5;
  EXPECT_DOUBLE_EQ(*costOfAYear(rig, plan.tariff), 18.0);
  plan.tariff.brewsPerYear = 20.0;
  EXPECT_DOUBLE_EQ(*costOfAYear(rig, plan.tariff), 30.0);
}

}  // namespace
