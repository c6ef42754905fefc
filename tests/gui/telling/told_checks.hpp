// SPDX-License-Identifier: GPL-3.0-or-later
// What tests of answers ask of their tables and sentences.
#pragma once

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <string>
#include <string_view>

#include "gui/telling/words.hpp"
#include "rigs/results/result_json.hpp"
#include "tests/support/solved_demo.hpp"

namespace test_support {

inline gui::telling::Case caseOf(const rigs::Solution& solution,
                                 gui::telling::QuestionView view = {}) {
  static const rigs::Reader kSi{};
  return {solution, solution.plan, kSi, view};
}
inline gui::telling::Case demoCase(gui::telling::QuestionView view = {}) {
  return caseOf(solvedDemo(), view);
}

inline std::string headline(const gui::telling::Answer& answer) {
  return rigs::inEnglish(rigs::sentences(answer.sentences));
}

// The first row of that name, after the heading if one is given; nullptr if there is none.
inline const gui::telling::Row* rowOf(const gui::telling::Table& table, std::string_view label,
                                      std::string_view heading = {}) {
  bool found = heading.empty();
  for (const gui::telling::Row& row : table.rows) {
    const std::string text = rigs::inEnglish(row.label);
    if (!found) {
      found = row.isHeading() && text.starts_with(heading);
    } else if (!row.isHeading() && text == label) {
      return &row;
    }
  }
  return nullptr;
}
inline std::string cell(const gui::telling::Table& table, std::string_view label,
                        std::size_t column, std::string_view heading = {}) {
  const gui::telling::Row* row = rowOf(table, label, heading);
  return row ? gui::telling::cellText(row->cells.at(column), {}) : "no such row";
}

// All sentences of the blocks about this rig, joined.
inline std::string saidOf(const gui::telling::Answer& answer, std::size_t rig) {
  std::string all;
  for (const gui::telling::Block& block : answer.blocks) {
    const auto* sentence = std::get_if<gui::telling::Sentence>(&block);
    if (!sentence || sentence->rig != rig) continue;
    all += (all.empty() ? "" : " ") + rigs::inEnglish(sentence->text);
  }
  return all;
}

// In the unit that the end of a key of the result's JSON names.
inline double inUnitOf(std::string_view pointer, const rigs::Argument& cell) {
  if (const auto* amount = std::get_if<rigs::Amount>(&cell.value)) {
    if (pointer.ends_with("_kWh")) return amount->si / 3.6e6;
    if (pointer.ends_with("_C")) return amount->si - 273.15;
    if (pointer.ends_with("_L")) return amount->si * 1e3;
    if (pointer.ends_with("_L_per_h")) return amount->si * 3.6e6;
    if (pointer.ends_with("_kg_per_h")) return amount->si * 3600.0;
    if (amount->kind == rigs::QuantityKind::FractionRate) return amount->si * 3600.0;
    return amount->si;
  }
  if (const auto* time = std::get_if<rigs::HoursAndMinutes>(&cell.value))
    return physics::inSeconds(time->time);
  return gui::telling::cellNumber(cell, {}).value();
}

// Every number in a row that says where a program finds it is the number found there.
inline void expectTheResultsNumbers(const gui::telling::Answer& answer,
                                    const rigs::Solution& solution) {
  const auto json = nlohmann::json::parse(rigs::resultJson(solution.plan, solution.answers));
  int compared = 0;
  for (const gui::telling::Table* table : answer.tables()) {
    for (const gui::telling::Row& row : table->rows) {
      if (row.result.empty()) continue;
      ASSERT_TRUE(table->ofRigs);
      bool anywhere = false;
      for (std::size_t i = 0; i < row.cells.size(); ++i) {
        const nlohmann::json::json_pointer at(row.result);
        const nlohmann::json& rig = json.at("rigs").at(i);
        anywhere = anywhere || rig.contains(at);
        if (!row.cells[i] || !rig.contains(at) || !rig.at(at).is_number()) continue;
        if (std::holds_alternative<rigs::Told>(row.cells[i]->value)) continue;
        const double expected = rig.at(at).get<double>();
        EXPECT_NEAR(inUnitOf(row.result, *row.cells[i]), expected,
                    1e-9 * std::max(1.0, std::abs(expected)))
            << row.result << " of rig " << i;
        ++compared;
      }
      EXPECT_TRUE(anywhere) << row.result << " is nowhere in the result";
    }
  }
  EXPECT_GT(compared, 0);
}

}  // namespace test_support
