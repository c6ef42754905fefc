// SPDX-License-Identifier: GPL-3.0-or-later
// Every question's tables against the result's JSON: same figure, same digits, and no figure where
// the JSON has none.
#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <nlohmann/json.hpp>
#include <set>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/csv.hpp"
#include "rigs/results/result_json.hpp"
#include "tests/support/solved_demo.hpp"

namespace gui::telling {
namespace {

using Json = nlohmann::ordered_json;

// The unit that a key's name ends with, as our own parser knows it.
std::string unitOfKey(const std::string& pointer) {
  static const std::map<std::string, std::string> kUnits{
      {"_W", "1 W"},           {"_kWh", "1 kWh"},       {"_L", "1 L"},
      {"_s", "1 s"},           {"_C", "1 °C"},          {"_A", "1 A"},
      {"_V", "1 V"},           {"_ohm", "1 ohm"},       {"_kg", "1 kg"},
      {"_L_per_h", "1 L/h"},   {"_kg_per_h", "1 kg/h"}, {"_m", "1 m"},
      {"_W_per_m2", "1 W/m2"}, {"_L_per_s", "1 L/s"},   {"_K", "1 K"}};
  std::string best;
  for (const auto& [suffix, unit] : kUnits)
    if (pointer.ends_with(suffix) && suffix.size() > best.size()) best = suffix;
  return best.empty() ? std::string() : kUnits.at(best);
}

// What the JSON would print of this cell; nullopt for words.
std::optional<double> inUnitOfKey(const Cell& cell, const std::string& pointer) {
  const rigs::Argument& figure = *cell;
  const std::string unit = unitOfKey(pointer);
  constexpr double kPercent = 0.01;
  if (const auto* amount = std::get_if<rigs::Amount>(&figure.value)) {
    if (amount->kind == rigs::QuantityKind::FractionRate)
      return kPercent * rigs::detail::numberLike(amount->kind, amount->si, "1 %/h");
    if (unit.empty()) return amount->si;  // shares, and numbers without a unit
    return rigs::detail::numberLike(amount->kind, amount->si, unit);
  }
  if (const auto* time = std::get_if<rigs::HoursAndMinutes>(&figure.value))
    return physics::inSeconds(time->time);
  if (const auto* money = std::get_if<rigs::Money>(&figure.value)) return money->amount;
  if (const auto* number = std::get_if<rigs::Number>(&figure.value)) return number->value;
  if (const auto* count = std::get_if<rigs::Count>(&figure.value))
    return static_cast<double>(count->value);
  return std::nullopt;
}

void expectSame(const Row& row, const Json& result, const std::string& question) {
  for (std::size_t i = 0; i < row.cells.size(); ++i) {
    const Json::json_pointer at(row.result);
    const Json& rig = result["rigs"][i];
    SCOPED_TRACE(question + " " + row.result + " of rig " + std::to_string(i));
    // Of a day that stopped the result has numbers that no page calls the day's figure.
    if (!row.cells[i]) continue;
    const auto shown = inUnitOfKey(row.cells[i], row.result);
    if (!shown) continue;
    ASSERT_TRUE(rig.contains(at));
    ASSERT_TRUE(rig[at].is_number());
    const double number = rig[at].get<double>();
    EXPECT_NEAR(*shown, number, 1e-9 * std::max(1.0, std::abs(number)));
  }
}

TEST(OneTelling, HasTheFiguresOfTheResultInEveryQuestion) {
  const rigs::Solution& solution = test_support::solvedDemo();
  const Json result = Json::parse(rigs::resultJson(solution.plan, solution.answers));
  std::size_t compared = 0;
  std::set<Question> questions;
  for (const Question question : allQuestions()) {
    const Answer answer = answerTo(question, solution, {});
    for (const Table* table : answer.tables()) {
      if (!table->ofRigs) continue;
      for (const Row& row : table->rows) {
        if (row.isHeading() || row.result.empty()) continue;
        expectSame(row, result, std::string(identifierOf(question)));
        ++compared;
        questions.insert(question);
      }
    }
  }
  EXPECT_GE(compared, 40u);
  EXPECT_GE(questions.size(), 7u);
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
