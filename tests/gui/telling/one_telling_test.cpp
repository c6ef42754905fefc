// SPDX-License-Identifier: GPL-3.0-or-later
// Every question's tables against the result's JSON: same figure, same digits, and no figure where
// the JSON has none.
#include <gtest/gtest.h>

#include <map>

#include "gui/telling/answer_to.hpp"
#include "tests/gui/telling/results.hpp"
#include "tests/support/solved_demo.hpp"

namespace gui::telling {
namespace {

TEST(OneTelling, HasTheFiguresOfTheResultInEveryQuestion) {
  const rigs::Solution& solution = test_support::solvedDemo();
  int compared = 0;
  int questions = 0;
  for (const Question question : allQuestions()) {
    SCOPED_TRACE(identifierOf(question));
    const int figures =
        test_support::comparedWithResult(answerTo(question, solution, {}), solution);
    compared += figures;
    questions += figures > 0 ? 1 : 0;
  }
  // Four rigs, of which not all have every figure.
  EXPECT_GE(compared, 200);
  EXPECT_GE(questions, 7);
}

// The same figure under the same name on every page: a label and unit that two questions share
// stand for the same numbers, if they name the same place of the result.
TEST(OneTelling, GivesTheSameFigureTheSameNameEverywhere) {
  const rigs::Solution& solution = test_support::solvedDemo();
  std::map<std::string, std::string> names;
  for (const Question question : allQuestions()) {
    for (const Answer& answer : {answerTo(question, solution, {})}) {
      for (const Table* table : answer.tables()) {
        for (const Row& row : table->rows) {
          if (row.isHeading() || row.result.empty()) continue;
          const std::string label = rigs::inEnglish(row.label);
          const auto [known, fresh] = names.emplace(row.result, label);
          EXPECT_EQ(known->second, label) << row.result;
        }
      }
    }
  }
  EXPECT_GE(names.size(), 30u);
}

TEST(OneTelling, IsTheSameInEveryLanguageButForItsWords) {
  const rigs::Solution& solution = test_support::solvedDemo();
  for (const Question question : allQuestions()) {
    const Answer english = answerTo(question, solution, {});
    const Answer us = answerTo(question, solution, {.units = rigs::UnitSystem::UsCustomary});
    ASSERT_EQ(english.tables().size(), us.tables().size());
    EXPECT_EQ(english.sentences.size(), us.sentences.size());
    EXPECT_EQ(english.cautions, us.cautions);
  }
}

}  // namespace
}  // namespace gui::telling
