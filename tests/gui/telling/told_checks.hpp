// SPDX-License-Identifier: GPL-3.0-or-later
// The demo as a case, and one table's rows and cells by name.
#pragma once

#include <string>
#include <string_view>

#include "gui/telling/words.hpp"
#include "tests/gui/telling/asked.hpp"
#include "tests/support/solved_demo.hpp"

namespace test_support {

inline gui::telling::Case caseOf(const rigs::Solution& solution,
                                 gui::telling::QuestionView view = {}) {
  return {solution, solution.plan, siReader(), view};
}
inline gui::telling::Case demoCase(gui::telling::QuestionView view = {}) {
  return caseOf(solvedDemo(), view);
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

}  // namespace test_support
