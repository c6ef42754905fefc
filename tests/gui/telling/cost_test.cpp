// SPDX-License-Identifier: GPL-3.0-or-later
// What does it cost? Prices by the hour and by the month's use, starts, paybacks, carbon dioxide.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>

#include "gui/telling/words.hpp"
#include "rigs/answers/figures.hpp"
#include "rigs/answers/money.hpp"
#include "tests/gui/telling/results.hpp"
#include "tests/gui/telling/solved.hpp"
#include "tests/support/readers.hpp"

namespace gui::telling {
namespace {

using test_support::caseOf;
using test_support::cellBelow;
using test_support::demoDays;
using test_support::demoWith;
using test_support::figureBelow;
using test_support::joined;
using test_support::kSi;
using test_support::kUs;
using test_support::rowBelow;
using test_support::spokenBlocks;
using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::StartsWith;

// Cheap nights and mornings; the brew begins at nine.
constexpr const char* kHours =
    R"({"times": {"weekday": [{"from": "00:00", "to": "07:00", "price": "0.08 CAD/kWh"},
                              {"from": "07:00", "to": "19:00", "price": "0.16 CAD/kWh"},
                              {"from": "19:00", "to": "24:00", "price": "0.10 CAD/kWh"}]},
        "brews_per_year": 20, "jacket_price": 40, "element_price": 60, "brew_from": "06:00",
        "brew_until": "22:00", "co2_per_kWh": "0.1 kg", "co2_source": "an example"})";
const rigs::Solution& byTheHour() {
  static const rigs::Solution solution = demoWith({{"/tariff", kHours}});
  return solution;
}
Answer hourly() { return whatCost(caseOf(byTheHour(), kSi)); }

double sumOf(const PictureStack& stack) {
  return std::accumulate(stack.parts.begin(), stack.parts.end(), 0.0);
}

TEST(WhatCost, ByTheHourIsPricedStageByStage) {
  const Answer answer = hourly();
  for (std::size_t i = 0; i < 4; ++i) {
    const rigs::RigAnswer& rig = byTheHour().answers.rigs[i];
    const double sum = sumOf(answer.pictures[0].stacks[i]);
    ASSERT_TRUE(rig.cost);
    EXPECT_GT(sum, 0.1);
    EXPECT_NEAR(sum, *rig.cost, 1e-9);
    // All of the day lies between seven and nineteen.
    EXPECT_NEAR(sum, 0.16 * physics::inKilowattHours(rig.day.total.fromWall()), 1e-9);
    if (i == 0) continue;
    EXPECT_NEAR(figureBelow(answer, "Cost", "boiling", i).value(),
                *rigs::costOf(rig, physics::StageKind::Boil), 1e-12);
  }
}

TEST(WhatCost, ByUseGoesUpFromTierToTier) {
  const auto solution = demoWith({{"/tariff", R"({"tiers": [
      {"up_to": "600 kWh", "price": "0.10 CAD/kWh"}, {"price": "0.20 CAD/kWh"}],
      "used_this_month": "598 kWh"})"}});
  const Answer answer = whatCost(caseOf(solution, kSi));
  for (std::size_t i = 0; i < 4; ++i) {
    const rigs::RigAnswer& rig = solution.answers.rigs[i];
    const double used = physics::inKilowattHours(rig.day.total.fromWall());
    const double sum = sumOf(answer.pictures[0].stacks[i]);
    EXPECT_NEAR(sum, 0.2 * used - 0.2, 1e-6);  // the first two kilowatt-hours at half the price
    EXPECT_NEAR(sum, *rig.cost, 1e-9);
  }
  EXPECT_EQ(answer.pictures.size(), 1u);  // the hour decides nothing
}

// Of a day that stops where its boil should begin.
TEST(WhatCost, OfABoilThatNeverBeganIsNoFigure) {
  rigs::Solution stopped = demoDays();
  physics::BrewDay& day = stopped.answers.rigs[0].day;
  ASSERT_EQ(day.stages.back().kind, physics::StageKind::Boil);
  day.stages.back().end = day.stages.back().begin;
  day.outcome = physics::Outcome::UncoversElement;
  const Answer answer = whatCost(caseOf(stopped, kSi));
  for (const char* heading : {"Energy from the wall", "Cost"}) {
    EXPECT_FALSE(figureBelow(answer, heading, "boiling", 0));
    EXPECT_EQ(cellBelow(answer, heading, "boiling", 0), "–");
    EXPECT_GT(figureBelow(answer, heading, "boiling", 1).value(), 0.0);
  }
  EXPECT_GT(figureBelow(answer, "Energy from the wall", "from the wall", 0).value(), 0.0);
  EXPECT_GT(figureBelow(answer, "Cost", "a batch", 0).value(), 0.0);
  EXPECT_FALSE(figureBelow(answer, "Cost", "a L of wort in the end", 0));
}

TEST(WhatCost, TellsTheCheapestStart) {
  const Answer answer = hourly();
  const rigs::RigAnswer& rig = byTheHour().answers.rigs[3];
  const auto choice = rigs::cheapestStart(rig.day, byTheHour().plan.tariff, physics::hours(6.0),
                                          physics::hours(22.0));
  ASSERT_TRUE(choice);
  EXPECT_LT(choice->cheapest.cost, *rig.cost);
  EXPECT_NEAR(figureBelow(answer, "When to begin", "a batch begun then", 3).value(),
              choice->cheapest.cost, 1e-12);
  EXPECT_EQ(cellBelow(answer, "When to begin", "cheapest start, by the clock", 3),
            rigs::tell(rigs::Argument(rigs::Clock{choice->cheapest.at}), kSi));
  EXPECT_THAT(joined(answer.sentences), HasSubstr("Begun at "));
  EXPECT_THAT(spokenBlocks(answer), HasSubstr("Begun at 09:00 it costs"));
  EXPECT_THAT(spokenBlocks(answer), HasSubstr("from 06:00 to 22:00 cheapest at "));
  ASSERT_EQ(answer.pictures.size(), 2u);
  // The picture's lowest point within the window is the table's.
  double least = 1e9;
  for (const PicturePoint& p : answer.pictures[1].lines[3].points)
    if (p.x >= 360.0 && p.x <= 1320.0) least = std::min(least, p.y);
  EXPECT_NEAR(least, choice->cheapest.cost, 1e-9);
}

TEST(WhatCost, CountsThePlansYear) {
  const Answer answer = hourly();
  const double cost = *byTheHour().answers.rigs[1].cost;
  EXPECT_NEAR(figureBelow(answer, "Cost", "a year of 20 batches", 1).value(), 20.0 * cost, 1e-9);
  EXPECT_NEAR(figureBelow(answer, "Cost", "a year of 20 batches", 0).value(),
              20.0 * *byTheHour().answers.rigs[0].cost, 1e-9);
  EXPECT_THAT(joined(answer.sentences), HasSubstr("a year of 20 batches"));
  EXPECT_THAT(joined(answer.notes), Not(HasSubstr("A brew a month is assumed")));
  // A plan that does not say brews once a month.
  const Answer monthly = whatCost(caseOf(demoDays(), kSi));
  EXPECT_THAT(joined(monthly.sentences), HasSubstr("a year of 12 batches"));
  EXPECT_THAT(joined(monthly.notes), HasSubstr("A brew a month is assumed"));
}

TEST(WhatCost, TellsPaybacksAndCarbonDioxide) {
  const Answer answer = hourly();
  const rigs::RigAnswer& rig = byTheHour().answers.rigs[1];
  ASSERT_TRUE(rig.jacket);
  const double saved = 20.0 * *rigs::moneySaved(rig.jacket->bare, rig.jacket->jacketed,
                                                byTheHour().plan.tariff, rig.begins);
  const std::string jacket =
      "A jacket for 40.00 CAD: 13 mm closed-cell rubber foam on side and lid";
  EXPECT_NEAR(figureBelow(answer, jacket, "saves in a year", 1).value(), saved, 1e-9);
  EXPECT_NEAR(figureBelow(answer, jacket, "paid back after, years", 1).value(), 40.0 / saved, 1e-9);
  EXPECT_FALSE(figureBelow(answer, jacket, "paid back after, years", 0));
  EXPECT_NEAR(figureBelow(answer, "An element for 60.00 CAD", "for each batch of its first year", 1)
                  .value(),
              3.0, 1e-9);
  const double kilowattHours = physics::inKilowattHours(rig.day.total.fromWall());
  EXPECT_NEAR(figureBelow(answer, "Carbon dioxide", "a batch", 1).value(), 0.1 * kilowattHours,
              1e-9);
  EXPECT_NEAR(figureBelow(answer, "Carbon dioxide", "a year of 20 batches", 1).value(),
              2.0 * kilowattHours, 1e-9);
  EXPECT_THAT(joined(answer.notes), HasSubstr("of carbon dioxide a kWh: an example."));
  EXPECT_THAT(
      spokenBlocks(answer),
      AllOf(HasSubstr("(13 mm closed-cell rubber foam on side and lid) for 40.00 CAD saves "),
            HasSubstr("Its element in place of (b)'s"), HasSubstr("Its energy makes ")));
}

TEST(WhatCost, SaysNeverWhereNothingIsSaved) {
  const Answer answer = hourly();
  const std::string element = "An element for 60.00 CAD";
  const std::string label = "paid back after, years, against the first rig that finishes";
  const auto back = rigs::elementPayback(byTheHour().plan, byTheHour().answers, 3);
  ASSERT_TRUE(back);
  ASSERT_FALSE(back->payback.years);  // the laundry's element boils off more
  EXPECT_EQ(cellBelow(answer, element, label, 3), "never");
  EXPECT_THAT(spokenBlocks(answer), HasSubstr("saves nothing and is never paid back."));
}

TEST(WhatCost, IsEnergyWithoutAPrice) {
  rigs::Solution solution = demoDays();
  solution.plan.tariff = {};
  for (rigs::RigAnswer& rig : solution.answers.rigs) {
    rig.cost.reset();
    rig.stageCosts.clear();
  }
  const Answer answer = whatCost(caseOf(solution, kSi));
  EXPECT_THAT(joined(answer.sentences), HasSubstr("the least; the plan gives no price."));
  EXPECT_THAT(spokenBlocks(answer), HasSubstr("from the wall; no price was given."));
  EXPECT_THAT(joined(answer.notes), StartsWith("Price of energy: no price stated. What if it"));
  EXPECT_THROW(rowBelow(answer, "Cost", "a batch"), std::out_of_range);
  EXPECT_NEAR(sumOf(answer.pictures[0].stacks[1]),
              physics::inKilowattHours(solution.answers.rigs[1].day.total.fromWall()), 1e-9);
}

// By induction 84 to 85 % of what is used, on a flame 32 to 60 %; with a flame's caution.
TEST(WhatCost, TellsWhatTheSameHeatWouldTakeOtherwise) {
  const char* heading = "What if: the same heat otherwise";
  rigs::Solution solution = demoDays();
  solution.answers.rigs[1].day.total.element = physics::kilowattHours(4.4);
  solution.answers.rigs[2].day.outcome = physics::Outcome::DoesNotReachRest;
  const Answer answer = whatCost(caseOf(solution, kSi));
  const std::string induction = "by induction, 84 % to 85 % of it in the vessel";
  EXPECT_EQ(cellBelow(answer, heading, induction, 1), "5.2");
  EXPECT_EQ(cellBelow(answer, heading, "on a hot plate, 74 % to 80 %", 1), "5.5–5.9");
  EXPECT_EQ(cellBelow(answer, heading, "on a gas flame, 32 % to 60 %", 1), "7.3–13.8");
  EXPECT_EQ(cellBelow(answer, heading, "that flame's propane", 1), "0.6–1.1");
  EXPECT_EQ(cellBelow(answer, heading, induction, 2), "–");
  EXPECT_THAT(joined(answer.notes), HasSubstr("can fill it with carbon monoxide"));
}

TEST(WhatCost, PricesTheReadersOwnVolume) {
  const Answer answer = whatCost(caseOf(demoDays(), kUs));
  EXPECT_NEAR(figureBelow(answer, "Cost", "a US gal of wort in the end", 1).value(),
              3.785411784 * *rigs::costPer(demoDays().answers.rigs[1], physics::litres(1.0)), 1e-9);
}

TEST(WhatCost, TellsEachRigOnce) {
  const std::string text = spokenBlocks(whatCost(caseOf(demoDays(), kSi)));
  EXPECT_THAT(text,
              AllOf(HasSubstr("(a) no boil: 0.80 USD for 4.73 kWh from the wall, 0.035 USD/L.\n"),
                    HasSubstr("(b) 0.91 USD for 5.32 kWh from the wall, 0.039 USD/L.\n"),
                    HasSubstr("(d) 1.07 USD for 6.27 kWh from the wall, 0.046 USD/L.\n")));
}

TEST(WhatCost, PointsToTheSameFiguresOfTheResult) {
  EXPECT_GE(test_support::comparedWithResult(whatCost(caseOf(demoDays(), kSi)), demoDays()), 20);
  EXPECT_GE(test_support::comparedWithResult(hourly(), byTheHour()), 30);
}

}  // namespace
}  // namespace gui::telling
