// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/summary.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "rigs/results/cautions.hpp"
#include "tests/gui/telling/told_checks.hpp"
#include "tests/support/caution_texts.hpp"

namespace gui::telling {
namespace {

using test_support::cell;
using test_support::demoCase;
using test_support::saidOf;
using test_support::solvedDemo;

TEST(Summary, FindsItsNumbersInTheResult) {
  test_support::expectFiguresOfTheResult(summary(demoCase()), solvedDemo(), 12);
  const Case of = demoCase();
  const QuestionView all{.allFigures = true};
  test_support::expectFiguresOfTheResult(summary({of.solution, of.plan, of.reader, all}),
                                         solvedDemo(), 28);
}

TEST(Summary, AnswersTheThreeQuestionsForEveryRig) {
  const Answer answer = summary(demoCase());
  EXPECT_EQ(rigs::inEnglish(answer.title), "Altbier after the move");
  std::vector<std::string> headings;
  for (const Block& block : answer.blocks)
    if (const auto* heading = std::get_if<Heading>(&block))
      headings.push_back(rigs::inEnglish(heading->text));
  EXPECT_EQ(headings,
            (std::vector<std::string>{
                "Which element does the supply need?", "Does insulation shorten the heat-up?",
                "How much boils off, and what does a batch cost?", "Side by side"}));
  const std::string kitchen = saidOf(answer, 1);
  for (const char* part :
       {"1572 W reach the vessel from an element of 1650 W on 120 V.", "Worth it: 12 % of ",
        "boils off, 7.43 %/h: a gentle boil.", "0.91 USD for 5.32 kWh."})
    EXPECT_NE(kitchen.find(part), std::string::npos) << part << "\n" << kitchen;
  // A rig that does not roll is told why, and what would make it.
  const std::string old = saidOf(answer, 0);
  EXPECT_NE(old.find("without rolling. It comes to the boil, but falls back towards 79.2 °C."),
            std::string::npos)
      << old;
  EXPECT_NE(
      old.find("It would roll with 1566 W or 35 % of the mouth open at most, but never shut."),
      std::string::npos)
      << old;
}

// It judges circuits, so that the electrician has the last word.
TEST(Summary, EndsWithItsCautions) {
  std::vector<std::string> told;
  for (const rigs::Told& one : summary(demoCase()).allCautions())
    told.push_back(rigs::inEnglish(one));
  EXPECT_THAT(told, testing::UnorderedElementsAreArray(
                        test_support::cautionTexts(rigs::About::Answer, solvedDemo().plan,
                                                   solvedDemo().answers, rigs::UnitSystem::SI)));
  ASSERT_FALSE(told.empty());
  EXPECT_NE(told.back().find("licensed electrician"), std::string::npos) << told.back();
}

TEST(Summary, HasNoFigureWhereADayStops) {
  rigs::Solution stopped = solvedDemo();
  stopped.answers.rigs[0].day.outcome = physics::Outcome::DoesNotReachRest;
  const Case of = test_support::caseOf(stopped);
  const Answer answer = summary({of.solution, of.plan, of.reader, {.allFigures = true}});
  const Table& table = *answer.tables().at(0);
  EXPECT_EQ(cell(table, "whole day", 0, "Time"), "–");
  EXPECT_EQ(cell(table, "whole day", 1, "Time"), "4:24");
  EXPECT_EQ(cell(table, "over at, begun 09:00", 1), "13:24");
  EXPECT_EQ(cell(table, "vigour", 0), "no rest");
  EXPECT_EQ(cell(table, "vigour", 1), "gentle, on the edge");
  EXPECT_EQ(cell(table, "cost of the wort", 0), "–");
}

TEST(Summary, ShowsASecondCircuitWhereThereIsOne) {
  rigs::Solution solution = solvedDemo();
  EXPECT_EQ(test_support::rowOf(*summary(demoCase()).tables().at(0), "second element, rated"),
            nullptr);
  solution.plan.rigs[1].rig.second = physics::Feed{
      .element = {physics::watts(1200.0), physics::volts(120.0), physics::metres(0.05)},
      .supply = {.nominal = physics::volts(120.0),
                 .rating = physics::amperes(15.0),
                 .cableLoop = physics::ohms(0.0)}};
  const Answer answer = summary(test_support::caseOf(solution));
  const Table& table = *answer.tables().at(0);
  EXPECT_EQ(cell(table, "second element, rated", 0), "–");
  EXPECT_EQ(cell(table, "second element, rated", 1), "1200");
  EXPECT_EQ(cell(table, "its current", 1), "10.0");
}

TEST(Summary, TellsOfRigsWithoutAJacket) {
  rigs::Solution bare = solvedDemo();
  for (rigs::RigAnswer& rig : bare.answers.rigs) rig.jacket.reset();
  const Answer answer = summary(test_support::caseOf(bare));
  EXPECT_NE(saidOf(answer, 1).find("No jacket to compare."), std::string::npos);
}

}  // namespace
}  // namespace gui::telling
