// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/overview.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <string>
#include <vector>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/csv.hpp"
#include "gui/telling/translations.hpp"
#include "gui/telling/verdict.hpp"
#include "tests/gui/telling/asked.hpp"
#include "tests/gui/telling/results.hpp"
#include "tests/support/overnight.hpp"
#include "tests/support/solved_demo.hpp"

namespace gui::telling {
namespace {

using test_support::siReader;
using test_support::solvedDemo;

Answer overviewOf(const rigs::Solution& solution, const QuestionView& view = {},
                  const rigs::Reader& reader = {}) {
  return answerTo(Question::Overview, solution, reader, view);
}

// What people read in the row whose label begins so.
std::vector<std::string> shownRow(const Answer& answer, const std::string& label,
                                  const rigs::Reader& reader = {}) {
  for (const ShownRow& row : shownRows(*answer.tables().at(0), reader))
    if (row.label.starts_with(label)) return row.cells;
  ADD_FAILURE() << "no row " << label;
  return {};
}

TEST(Overview, BeginsWithTheVerdictOnTheFirstRig) {
  const rigs::Solution& solution = solvedDemo();
  const Case of{solution, solution.plan, siReader(), {}};
  const Answer answer = overviewOf(solution);
  const std::string expected =
      "(a) " + of.name(0) + ": " + rigs::inEnglish(verdictText(of, 0)) + '.';
  EXPECT_EQ(rigs::inEnglish(answer.sentences.back()), expected);
  // Each of the others is told of once.
  const auto sentences =
      std::count_if(answer.blocks.begin(), answer.blocks.end(),
                    [](const Block& one) { return std::holds_alternative<Sentence>(one); });
  EXPECT_EQ(sentences, static_cast<std::ptrdiff_t>(of.count()) - 1);
}

TEST(Overview, TellsOfOthersByHowMuchTheyDiffer) {
  const Answer answer = overviewOf(solvedDemo());
  const auto over = shownRow(answer, "over");
  EXPECT_EQ(over[0], "15:49");
  EXPECT_EQ(over[1], "−\u00a02 h 24 min");
  const auto energy = shownRow(answer, "from the wall");
  EXPECT_EQ(energy[0], "4.73");
  EXPECT_TRUE(energy[1].starts_with("+\u00a0")) << energy[1];
  // Words are states, and what has nothing to be compared with stands as it is.
  EXPECT_EQ(shownRow(answer, "rolls")[0], "no boil");
  EXPECT_EQ(shownRow(answer, "rolls")[1], "perhaps 12:14");  // within the law's scatter
  EXPECT_EQ(shownRow(answer, "rolls")[2], "12:08");
  EXPECT_EQ(shownRow(answer, "circuit")[1], shownRow(answer, "circuit")[2]);
  EXPECT_EQ(shownRow(answer, "circuit")[1], "too much for long use, 92 %");
}

TEST(Overview, ComparesWithWhomeverIsChosen) {
  const rigs::Solution& solution = solvedDemo();
  const Answer answer = overviewOf(solution, {.rig = 2});
  const auto over = shownRow(answer, "over");
  EXPECT_EQ(over[2], "13:18");
  EXPECT_EQ(over[0], "+\u00a02 h 30 min");
  EXPECT_TRUE(rigs::inEnglish(answer.sentences.back()).starts_with("(c) "));
  // One that the plan does not have any more.
  EXPECT_EQ(shownRow(overviewOf(solution, {.rig = 9}), "over")[0], "15:49");
}

TEST(Overview, SaysThatFiguresAreTheSame) {
  rigs::Solution twice = solvedDemo();
  twice.plan.rigs.resize(2);
  twice.plan.rigs[1] = twice.plan.rigs[0];
  twice.answers.rigs.resize(2);
  twice.answers.rigs[1] = twice.answers.rigs[0];
  const Answer answer = overviewOf(twice);
  for (const char* label : {"strike water", "over", "boil-off", "from the wall", "a batch"})
    EXPECT_EQ(shownRow(answer, label)[1], "=") << label;
  EXPECT_EQ(shownRow(answer, "circuit")[1], shownRow(answer, "circuit")[0]);
}

TEST(Overview, ComparesNothingWhereOneRigIsReadAlone) {
  const Answer answer = overviewOf(solvedDemo(), {.rig = 1, .only = 1});
  const auto over = shownRow(answer, "over");
  ASSERT_EQ(over.size(), 1u);
  EXPECT_EQ(over[0], "13:24");
}

// Whatever people read, programs get the figures.
TEST(Overview, GivesSpreadsheetsTheFigures) {
  const rigs::Solution& solution = solvedDemo();
  const std::string csv = csvOf(overviewOf(solution), {"w", "x", "y", "z"}, {});
  EXPECT_NE(csv.find("overview,,over,,15:49,13:24,13:18,12:44\n"), std::string::npos) << csv;
  EXPECT_EQ(csv.find(",=,"), std::string::npos);
  test_support::expectFiguresOfTheResult(overviewOf(solution), solution, 4);
}

TEST(Overview, TellsOfTheMorningOfAMashThatIsLeftAlone) {
  const rigs::Solution& solution = test_support::overnight();
  const Answer answer = overviewOf(solution);
  test_support::expectFiguresOfTheResult(answer, solution, 5);
  const auto morning = shownRow(answer, "in the end, after");
  EXPECT_TRUE(morning[1].starts_with("+\u00a0")) << morning[1];
}

TEST(Overview, NamesTheQuestionOfEachRow) {
  std::map<std::string, Question> opens;
  for (const ShownRow& row : shownRows(*overviewOf(test_support::overnight()).tables().at(0), {})) {
    if (row.isHeading) continue;
    ASSERT_TRUE(row.opens) << row.label;
    opens.emplace(row.label.substr(0, row.label.find(',')), *row.opens);
  }
  EXPECT_GE(opens.size(), 8u);
  EXPECT_EQ(opens.at("rolls"), Question::HowLong);
  EXPECT_EQ(opens.at("boil-off"), Question::BoilsEnough);
  EXPECT_EQ(opens.at("circuit"), Question::Circuit);
  EXPECT_EQ(opens.at("from the wall"), Question::WhatCost);
  EXPECT_EQ(opens.at("in the end"), Question::HowFarCools);
}

// Of every question; figures and sentences stay.
TEST(Undrawn, AreLeftOutOfEveryPicture) {
  const rigs::Solution& solution = solvedDemo();
  const std::string left = solution.plan.rigs[1].name;
  int fewer = 0;
  for (const Question question : allQuestions()) {
    SCOPED_TRACE(identifierOf(question));
    const Answer all = answerTo(question, solution, {}, {.asBars = true});
    const Answer some = answerTo(question, solution, {}, {.asBars = true, .undrawn = {left}});
    EXPECT_EQ(csvOf(all, {"w", "x", "y", "z"}, {}), csvOf(some, {"w", "x", "y", "z"}, {}));
    ASSERT_EQ(all.pictures.size(), some.pictures.size());
    for (std::size_t i = 0; i < some.pictures.size(); ++i) {
      const auto isOf1 = [](const auto& one) { return one.rig == 1; };
      const Picture& picture = some.pictures[i];
      EXPECT_TRUE(std::none_of(picture.lines.begin(), picture.lines.end(), isOf1));
      EXPECT_TRUE(std::none_of(picture.marks.begin(), picture.marks.end(), isOf1));
      EXPECT_TRUE(std::none_of(picture.stacks.begin(), picture.stacks.end(), isOf1));
      if (picture.lines.size() < all.pictures[i].lines.size() ||
          picture.stacks.size() < all.pictures[i].stacks.size())
        ++fewer;
    }
  }
  EXPECT_GE(fewer, 7);
}

// A picture of nothing tells nobody anything.
TEST(Undrawn, AreDrawnAllTheSameWhereNothingElseIs) {
  const rigs::Solution& solution = solvedDemo();
  QuestionView view;
  for (const rigs::RigPlan& rig : solution.plan.rigs) view.undrawn.push_back(rig.name);
  const Answer answer = answerTo(Question::HowLong, solution, {}, view);
  EXPECT_EQ(answer.pictures.at(0).lines.size(), solution.plan.rigs.size());
}

TEST(Overview, IsToldInGerman) {
  const rigs::Reader german{.language = &languageOf("de")};
  const Answer answer = overviewOf(solvedDemo(), {}, german);
  EXPECT_EQ(rigs::tell(answer.title, german), "Überblick");
  EXPECT_EQ(shownRow(answer, "Ende", german)[1], "−\u00a02 h 24 min");
  EXPECT_EQ(shownRow(answer, "aus der Steckdose", german)[0], "4,73");
}

// A difference has the digits of its column, of temperatures the degrees between them.
TEST(Difference, HasTheDigitsOfItsColumn) {
  const auto cell = [](double celsius) { return cellOf(physics::celsius(celsius)); };
  EXPECT_EQ(differenceText(cell(26.3), cell(38.0), {}), "−\u00a011.7");
  EXPECT_EQ(differenceText(cell(26.31), cell(26.33), {}), "=");
  EXPECT_EQ(differenceText(cell(26.3), cell(38.0), {.units = rigs::UnitSystem::UsCustomary}),
            "−\u00a021.1");
  EXPECT_EQ(differenceText(cell(26.3), std::nullopt, {}), "26.3");
  EXPECT_EQ(differenceText(std::nullopt, cell(26.3), {}), "–");
  const auto clock = [](double minutes) { return Cell(rigs::Clock{physics::minutes(minutes)}); };
  EXPECT_EQ(differenceText(clock(600.0), clock(604.0), {}), "−\u00a04 min");
  EXPECT_EQ(differenceText(clock(604.0), clock(604.2), {}), "=");
  const auto money = [](double sum) { return Cell(rigs::Money{sum, "EUR"}); };
  EXPECT_EQ(differenceText(money(1.30), money(1.15), {}), "+\u00a00.15");
}

}  // namespace
}  // namespace gui::telling
