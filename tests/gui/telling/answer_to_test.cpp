// SPDX-License-Identifier: GPL-3.0-or-later
// Every question has its title, its cautions and what it needs.
#include "gui/telling/answer_to.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "rigs/results/cautions.hpp"
#include "rigs/results/circuit_words.hpp"
#include "tests/gui/telling/told_checks.hpp"

namespace gui::telling {
namespace {

using rigs::Searches;
using test_support::siReader;
using test_support::solvedDemo;
using ::testing::Contains;
using ::testing::Not;

std::vector<std::string> inWords(const std::vector<rigs::Told>& all) {
  std::vector<std::string> words;
  for (const rigs::Told& one : all) words.push_back(rigs::inEnglish(one));
  return words;
}

TEST(AnswerTo, HasATitleAHeadlineAndCautionsForEveryQuestion) {
  for (const Question question : allQuestions()) {
    SCOPED_TRACE(identifierOf(question));
    const Answer answer = answerTo(question, solvedDemo(), siReader());
    EXPECT_EQ(answer.title, titleOf(question));
    EXPECT_FALSE(answer.sentences.empty());
    EXPECT_FALSE(answer.tables().empty());
    EXPECT_FALSE(answer.pictures.empty());
    const auto inSight = inWords(answer.cautions);
    ASSERT_FALSE(inSight.empty());
    EXPECT_TRUE(inSight.front().starts_with("Mains current kills."));
    EXPECT_THAT(inSight, Contains(testing::HasSubstr("or shut the lid on a boil")));
    // Nobody is told the same twice.
    auto all = inWords(answer.allCautions());
    std::sort(all.begin(), all.end());
    EXPECT_EQ(std::adjacent_find(all.begin(), all.end()), all.end());
  }
}

TEST(AnswerTo, EndsWithTheElectricianWhereItHoldsAVerdict) {
  const std::string deferral = rigs::inEnglish(rigs::electricianText());
  for (const Question question : allQuestions()) {
    SCOPED_TRACE(identifierOf(question));
    const auto all = inWords(answerTo(question, solvedDemo(), siReader()).allCautions());
    if (question == Question::Overview || question == Question::Circuit ||
        question == Question::WhichElement || question == Question::HelpsMost) {
      EXPECT_EQ(all.back(), deferral);
    } else {
      EXPECT_THAT(all, Not(Contains(deferral)));
    }
  }
}

TEST(AnswerTo, KeepsThePlansOwnCautionsApartFromThoseInSight) {
  const Answer answer = answerTo(Question::Circuit, solvedDemo(), siReader());
  EXPECT_GE(answer.furtherCautions.size(), 3u);
  EXPECT_THAT(inWords(answer.furtherCautions), Contains(testing::HasSubstr("must be earthed")));
  EXPECT_THAT(inWords(answer.dayCautions), Contains(testing::HasSubstr("Dry firing")));
  EXPECT_THAT(inWords(answer.allCautions()), Contains(testing::HasSubstr("Dry firing")));
  EXPECT_THAT(inWords(answer.cautions), Not(Contains(testing::HasSubstr("Dry firing"))));
  const Answer room = answerTo(Question::Room, solvedDemo(), siReader());
  EXPECT_THAT(inWords(room.furtherCautions), Contains(testing::HasSubstr("water vapour")));
}

// What a question leaves unsaid until a search is done, it needs.
TEST(NeededBy, CoversWhatAnAnswerShowsBeyondTheDays) {
  EXPECT_EQ(neededBy(Question::HowLong), Searches{});
  EXPECT_EQ(neededBy(Question::Circuit), Searches{.circuit = true});
  EXPECT_EQ(neededBy(Question::HowFarCools), Searches{});
  EXPECT_EQ(neededBy(Question::HelpsMost), Searches{.helps = true});
  EXPECT_EQ(neededBy(Question::HowSure), (Searches{.bands = true, .sure = true}));
  EXPECT_EQ(neededBy(Question::WorthJacket), Searches{.thickness = true});
  EXPECT_EQ(neededBy(Question::WorthJacket, {.overThickness = false}),
            Searches{.jacketPower = true});
  rigs::Solution bare = solvedDemo();
  for (rigs::RigAnswer& rig : bare.answers.rigs) {
    rig.sizing.reset();
    rig.whatWouldBoil.reset();
    rig.circuit.readings.clear();
    rig.circuit.shortest.clear();
    rig.circuit.split.reset();
    rig.circuit.addedByCable.reset();
    rig.helps.reset();
  }
  bare.sweeps.clear();
  for (const Question question : allQuestions()) {
    SCOPED_TRACE(identifierOf(question));
    const auto told = [&](const rigs::Solution& solution) {
      std::string all;
      for (const Block& block : answerTo(question, solution, siReader()).blocks) {
        if (const auto* one = std::get_if<Sentence>(&block)) all += rigs::inEnglish(one->text);
        const auto* table = std::get_if<Table>(&block);
        for (const Row& row : table ? table->rows : std::vector<Row>{}) {
          all += rigs::inEnglish(row.label);
          for (const Cell& cell : row.cells) all += cellText(cell, siReader());
        }
      }
      return all;
    };
    if (told(bare) != told(solvedDemo())) {
      EXPECT_NE(neededBy(question), Searches{});
    }
  }
}

}  // namespace
}  // namespace gui::telling
