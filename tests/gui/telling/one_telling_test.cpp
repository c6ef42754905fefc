// SPDX-License-Identifier: GPL-3.0-or-later
// Every question's tables against the result's JSON: same figure, same digits, and no figure where
// the JSON has none.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <compare>
#include <map>
#include <string>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/summary.hpp"
#include "rigs/answers/money.hpp"
#include "tests/gui/telling/asked.hpp"
#include "tests/gui/telling/results.hpp"
#include "tests/support/overnight.hpp"
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

// A figure and the day that it must be of.
struct Figure {
  std::string place;  // in the result
  std::size_t rig;
  auto operator<=>(const Figure&) const = default;
};
// What is told of a rig as it is, in a comparison that supposes another, is what its own day has.
std::string own(const std::string& place, bool hasJacket) {
  const std::string side = hasJacket ? "/jacket/jacketed/" : "/jacket/bare/";
  return place.starts_with(side) ? "/day/" + place.substr(side.size()) : place;
}

// Whichever page it stands on: every question in every view, and the page of all side by side.
TEST(OneTelling, GivesOneRigsFigureTheSameValueOnEveryPage) {
  // The last has one rig alone.
  rigs::Plan alone = test_support::overnightPlan();
  alone.rigs.pop_back();
  const rigs::Solution single = test_support::swept(alone);
  for (const rigs::Solution* solution :
       {&test_support::sweptDemo(), &test_support::overnight(), &single}) {
    std::map<Figure, double> known;
    int again = 0;
    const auto walk = [&](const Answer& answer) {
      for (const Table* table : answer.tables()) {
        for (const Row& row : table->rows) {
          if (row.result.empty()) continue;
          for (std::size_t i = 0; i < row.cells.size(); ++i) {
            const auto value = cellNumber(row.cells[i], {});
            if (!value) continue;
            const bool hasJacket = solution->plan.rigs[i].hasJacket;
            const auto [at, fresh] = known.emplace(Figure{own(row.result, hasJacket), i}, *value);
            if (!fresh) ++again;
            EXPECT_NEAR(at->second, *value, 1e-9 * std::max(1.0, std::abs(*value)))
                << at->first.place << " of rig " << i;
          }
        }
      }
    };
    for (const Question question : allQuestions()) {
      for (const bool other : {false, true}) {
        walk(answerTo(question, *solution, {},
                      {.overThickness = other,
                       .savings = other,
                       .asBars = other,
                       .supposed = other,
                       .everyRule = other}));
      }
    }
    walk(summary({*solution, solution->plan, test_support::siReader(), {}}));
    EXPECT_GE(again, solution->plan.rigs.size() > 1 ? 150 : 100);
  }
}

// The jacketed kettle's day is the bare one's as if it had that jacket, on every page: the same
// vessel, element and circuit.
TEST(OneTelling, SupposesOfABareKettleWhatTheJacketedOneIs) {
  const rigs::Solution& solution = test_support::overnight();
  const physics::JacketEffect& bare = *solution.answers.rigs[0].jacket;
  const physics::BrewDay& jacketed = solution.answers.rigs[1].day;
  EXPECT_NEAR(physics::inKilowattHours(bare.jacketed.total.fromWall()),
              physics::inKilowattHours(jacketed.total.fromWall()), 1e-6);
  EXPECT_NEAR(physics::inLitres(bare.jacketed.water), physics::inLitres(jacketed.water), 1e-5);
  EXPECT_NEAR(physics::inCelsius(bare.jacketedAfter),
              physics::inCelsius(solution.answers.rigs[1].night->asItIs.morning), 1e-5);
  // What a jacket saves in a year lies between the years of both.
  const auto payback = rigs::jacketPayback(solution.answers.rigs[0], solution.plan);
  ASSERT_TRUE(payback);
  EXPECT_NEAR(payback->perYear,
              *rigs::costOfAYear(solution.answers.rigs[0], solution.plan.tariff) -
                  *rigs::costOfAYear(solution.answers.rigs[1], solution.plan.tariff),
              1e-5);
}

// The same element on the same circuit takes the same time on the pages of both.
TEST(OneTelling, TakesTheSameTimeWithTheCircuitsStrongestElement) {
  const rigs::Solution& solution = test_support::overnight();
  const Answer size = answerTo(Question::WhichElement, solution, {});
  const auto most =
      test_support::number(size, "Most its circuit carries", "from mash to boil with that", 0);
  ASSERT_TRUE(most);
  const auto& readings = solution.answers.rigs[0].circuit.readings;
  ASSERT_FALSE(readings.empty());
  ASSERT_TRUE(readings.front().toBoil);
  EXPECT_NEAR(*most, physics::inMinutes(*readings.front().toBoil), 0.01);
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
