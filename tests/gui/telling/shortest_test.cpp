// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/shortest.hpp"

#include <gtest/gtest.h>

#include <string>

#include "gui/telling/translations.hpp"
#include "tests/gui/telling/asked.hpp"
#include "tests/gui/terminal/plan_in_code.hpp"
#include "tests/support/overnight.hpp"
#include "tests/support/solved_demo.hpp"

namespace gui::telling {
namespace {

using test_support::siReader;
using test_support::solvedDemo;

std::string shortestIn(const rigs::Solution& solution, Question question, std::size_t rig,
                       const rigs::Reader& reader = {}) {
  return rigs::tell(shortestOf(question, {solution, solution.plan, reader, {}}, rig), reader);
}

TEST(Shortest, TellsEveryQuestionInAFewWords) {
  const rigs::Solution& solution = solvedDemo();
  for (const char* language : {"en", "de"}) {
    const rigs::Reader reader{.language = &languageOf(language)};
    for (std::size_t rig = 0; rig < solution.answers.rigs.size(); ++rig) {
      for (const Question question : allQuestions()) {
        SCOPED_TRACE(identifierOf(question));
        const std::string text = shortestIn(solution, question, rig, reader);
        EXPECT_LE(text.size(), 48u) << text;
        EXPECT_FALSE(text.ends_with('.')) << text;
        EXPECT_EQ(text.find('\n'), std::string::npos);
      }
    }
  }
}

// What the questions' own pages and tables have of this rig.
TEST(Shortest, HasTheFiguresOfTheAnswers) {
  const rigs::Solution& solution = solvedDemo();
  const auto of = [&](Question question) { return shortestIn(solution, question, 2); };
  EXPECT_EQ(of(Question::Overview), "rolls at 12:08, 0.85 USD");
  EXPECT_EQ(of(Question::HowLong), "4 h 18 min, rolls at 12:08");
  EXPECT_EQ(of(Question::BoilsEnough), "steady, 8.75 %/h");
  EXPECT_EQ(of(Question::Circuit), "too much for long use, 92 %");
  EXPECT_EQ(of(Question::WhatCost), "0.85 USD, 5 kWh");
  EXPECT_EQ(shortestIn(solution, Question::HowLong, 0), "6 h 49 min, no boil");
  EXPECT_EQ(shortestIn(solution, Question::HowLong, 1), "4 h 24 min, may not roll");
  EXPECT_EQ(shortestIn(solution, Question::BoilsEnough, 0), "no boil");
  // (a) itself fits, but nobody who reads only the list may think that all do.
  EXPECT_EQ(shortestIn(solution, Question::Circuit, 0), "(b) too much for long use, 92 %");
}

// The shares of the day's ledger: its two numbers, of which the second is the greatest loss.
TEST(Shortest, NamesTheGreatestLossBesideSteam) {
  const rigs::Solution& solution = solvedDemo();
  const physics::Ledger& total = solution.answers.rigs[3].day.total;
  const double wall = physics::inKilowattHours(total.fromWall());
  const double steam =
      physics::inKilowattHours(total.lost[physics::Path::Evaporation] + total.steam);
  const std::string text = shortestIn(solution, Question::WhereHeat, 3);
  EXPECT_TRUE(text.starts_with(
      rigs::tell(
          rigs::Argument(rigs::amount(steam / wall, {.significantDigits = 2, .decimals = {}})),
          siReader()) +
      " into steam, "))
      << text;
  for (const physics::Path path : {physics::Path::Base, physics::Path::Lid, physics::Path::Hose})
    EXPECT_GE(total.lost[physics::Path::Side], total.lost[path]);
}

// Nobody waits for a search to read the list.
TEST(Shortest, SaysNothingOfWhatIsNotSearchedForYet) {
  rigs::Solution bare = solvedDemo();
  for (rigs::RigAnswer& rig : bare.answers.rigs) {
    rig.sizing.reset();
    rig.helps.reset();
    rig.room.reset();
  }
  for (const Question question : {Question::WhichElement, Question::HelpsMost, Question::Room})
    EXPECT_EQ(shortestIn(bare, question, 1), "") << identifierOf(question);
  EXPECT_NE(shortestIn(solvedDemo(), Question::WhichElement, 1), "");
  EXPECT_EQ(shortestIn(bare, Question::HowLong, 9), "") << "no such rig";
}

TEST(Shortest, WarnsAtEveryQuestionOfAnyRig) {
  rigs::Plan plan = test_support::planInCode();
  plan.rigs.resize(1);
  plan.rigs.push_back(plan.rigs[0]);
  for (physics::Rig* rig : {&plan.rigs[1].rig, &plan.rigs[1].bare, &plan.rigs[1].jacketed}) {
    rig->element = {physics::watts(5000.0), physics::volts(230.0), physics::metres(0.05)};
    rig->supply = {.nominal = physics::volts(230.0),
                   .rating = physics::amperes(16.0),
                   .cableLoop = physics::ohms(0.0)};
  }
  const test_support::OwnCase own(plan, rigs::Depth::Day);
  EXPECT_EQ(rigs::inEnglish(shortestOf(Question::Circuit, own.get(), 1)), "▲\u00a0overload, 136 %");
  // Nor is it passed over where another rig is compared with.
  EXPECT_EQ(rigs::inEnglish(shortestOf(Question::Circuit, own.get(), 0)),
            "(b)▲ ▲\u00a0overload, 136 %");
}

TEST(Shortest, TellsTheMorningOfAMashThatIsLeftAlone) {
  const rigs::Solution& solution = test_support::overnight();
  const std::string text = shortestIn(solution, Question::HowFarCools, 0);
  EXPECT_NE(text.find(" °C after "), std::string::npos) << text;
}

}  // namespace
}  // namespace gui::telling
