// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/explained.hpp"

#include <gtest/gtest.h>

#include <set>

namespace {

using gui::telling::Answer;
using gui::telling::explanationOf;
using gui::telling::Question;
using gui::telling::Row;

std::string formulaOf(Question question, const std::string& result) {
  return rigs::inEnglish(
      explanationOf(question, Row{.label = {}, .cells = {}, .result = result}).formula);
}

TEST(Explanations, AreOfTheFigureAndNotOfItsPage) {
  EXPECT_TRUE(formulaOf(Question::Overview, "/day/to_strike_s").starts_with("Time is heat"));
  EXPECT_TRUE(formulaOf(Question::Overview, "/day/boil/vigour").starts_with("A word for"));
  EXPECT_TRUE(formulaOf(Question::Overview, "/cost").starts_with("Energy from the wall times"));
  EXPECT_TRUE(formulaOf(Question::Circuit, "/circuit/circuits/0/current_A").starts_with("I = V"));
  EXPECT_TRUE(formulaOf(Question::Circuit, "/circuit/verdict").starts_with("Each rule"));
  EXPECT_TRUE(
      formulaOf(Question::Circuit, "/circuit/duty/longest_enabled_s").starts_with("A controller"));
}

TEST(Explanations, OfAFigureWithoutAPlaceAreOfWhatItOpensOrOfThePage) {
  Row row{.label = {}, .cells = {}};
  row.opens = Question::WhatCost;
  EXPECT_EQ(explanationOf(Question::Overview, row).formula,
            explanationOf(Question::WhatCost).formula);
  row.opens = {};
  EXPECT_EQ(explanationOf(Question::Room, row).formula, explanationOf(Question::Room).formula);
}

TEST(Explanations, StateLawSourceAndCertaintyOfEveryQuestion) {
  std::set<std::string> different;
  for (const Question question : gui::telling::allQuestions()) {
    const auto explanation = explanationOf(question);
    EXPECT_FALSE(explanation.formula.empty());
    EXPECT_FALSE(explanation.source.empty());
    EXPECT_FALSE(explanation.certainty.empty());
    different.insert(rigs::inEnglish(explanation.formula));
  }
  EXPECT_GE(different.size(), gui::telling::allQuestions().size() - 1);  // the overview's are times
}

TEST(Explanations, StandAtTheEndEachOnce) {
  Answer answer;
  gui::telling::Table table;
  const auto add = [&](const char* result) {
    table.rows.push_back(
        {.label = {}, .cells = {rigs::Argument(rigs::Count{1})}, .result = result});
  };
  add("/day/to_strike_s");
  add("/cost");
  add("/day/duration_s");
  answer.show(table);
  auto all = gui::telling::explanationsOf(Question::Overview, answer);
  EXPECT_EQ(all.size(), 3u);
  gui::telling::explain(all, answer);
  int sentences = 0;
  for (const auto& block : answer.blocks)
    sentences += std::holds_alternative<gui::telling::Sentence>(block) ? 1 : 0;
  EXPECT_EQ(sentences, 2);
}

}  // namespace
