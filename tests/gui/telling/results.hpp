// SPDX-License-Identifier: GPL-3.0-or-later
// Whether an answer's figures are those of the result's JSON, at the places that they name.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <variant>

#include "gui/telling/answer.hpp"
#include "rigs/answers/chilling.hpp"
#include "rigs/answers/wort.hpp"
#include "rigs/results/result_json.hpp"

namespace test_support {

// The unit that a key's name ends with, as our own parser knows it; "" for shares and plain
// numbers.
inline std::string unitOfKey(const std::string& pointer) {
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

// What the JSON would print of this cell; nullopt for words and where there is no figure.
inline std::optional<double> inUnitOfKey(const gui::telling::Cell& cell,
                                         const std::string& pointer) {
  if (!cell) return std::nullopt;
  constexpr double kPercent = 0.01;
  const std::string unit = unitOfKey(pointer);
  if (const auto* amount = std::get_if<rigs::Amount>(&cell->value)) {
    if (amount->kind == rigs::QuantityKind::FractionRate)
      return kPercent * rigs::detail::numberLike(amount->kind, amount->si, "1 %/h");
    return unit.empty() ? amount->si : rigs::detail::numberLike(amount->kind, amount->si, unit);
  }
  if (const auto* time = std::get_if<rigs::HoursAndMinutes>(&cell->value))
    return physics::inSeconds(time->time);
  return gui::telling::cellNumber(cell, {});
}

// The number of figures found to be the same. Cells without a number are passed over: of a day that
// stopped the result has numbers that no page calls the day's figure.
inline int comparedWithResult(const gui::telling::Answer& answer, const rigs::Solution& solution) {
  rigs::Answers answers = solution.answers;
  // As whoever asks how long it chills gets it: else it is no part of the result.
  for (rigs::RigAnswer& rig : answers.rigs) {
    if (!rig.chill) continue;
    rigs::ChillAnswer chill = *rig.chill;
    chill.asked = true;
    rig.chill = std::make_shared<const rigs::ChillAnswer>(std::move(chill));
  }
  for (rigs::RigAnswer& rig : answers.rigs) {
    if (!rig.wort) continue;
    rigs::WortAnswer wort = *rig.wort;
    wort.asked = true;
    rig.wort = std::make_shared<const rigs::WortAnswer>(wort);
  }
  const auto result = nlohmann::json::parse(rigs::resultJson(solution.plan, answers));
  int compared = 0;
  for (const gui::telling::Table* table : answer.tables()) {
    for (const gui::telling::Row& row : table->rows) {
      if (row.result.empty()) continue;
      SCOPED_TRACE(row.result);
      const nlohmann::json::json_pointer at(row.result);
      bool anywhere = false;
      bool anyNumber = false;  // or words in its place, such as "never"
      for (std::size_t i = 0; i < row.cells.size(); ++i) {
        const auto& rig = result["rigs"][i];
        anywhere = anywhere || rig.contains(at);
        const auto shown = inUnitOfKey(row.cells[i], row.result);
        if (!shown) continue;
        anyNumber = true;
        EXPECT_TRUE(rig.contains(at) && rig.at(at).is_number()) << "of rig " << i;
        if (!rig.contains(at) || !rig.at(at).is_number()) continue;
        const double there = rig.at(at).template get<double>();
        EXPECT_NEAR(*shown, there, 1e-9 * std::max(1.0, std::abs(there))) << "of rig " << i;
        ++compared;
      }
      EXPECT_TRUE(anywhere || !anyNumber) << "no rig has it";
    }
  }
  return compared;
}

// The same, and that so many rows at least name their place.
inline void expectFiguresOfTheResult(const gui::telling::Answer& answer,
                                     const rigs::Solution& solution, int atLeast) {
  comparedWithResult(answer, solution);
  int rows = 0;
  for (const gui::telling::Table* table : answer.tables())
    rows += static_cast<int>(
        std::count_if(table->rows.begin(), table->rows.end(),
                      [](const gui::telling::Row& row) { return !row.result.empty(); }));
  EXPECT_GE(rows, atLeast);
}

}  // namespace test_support
