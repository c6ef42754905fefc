// SPDX-License-Identifier: GPL-3.0-or-later
// Whether an answer's rows point to the same figures of the result's JSON.
#pragma once

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <string>

#include "gui/telling/answer.hpp"
#include "rigs/results/result_json.hpp"

namespace test_support {

// What a cell's number in its column's unit times this is in the pointer's.
inline double toResult(const std::string& pointer, const gui::telling::Row& row) {
  const auto endsWith = [&](const std::string& end) {
    return pointer.size() >= end.size() &&
           pointer.compare(pointer.size() - end.size(), end.size(), end) == 0;
  };
  const std::string unit = gui::telling::unitForNumbers(row, {});
  if (endsWith("_s") && unit == "min") return 60.0;
  if (endsWith("_L_per_h") && unit == "m³/h") return 1e3;
  if (endsWith("_L") && unit == "m³") return 1e3;
  return unit == "%" ? 0.01 : 1.0;
}

// The number of figures found to be the same. Cells without a number are passed over: a figure
// that has none may stand in the result as nought, or be words here.
inline int comparedWithResult(const gui::telling::Answer& answer, const rigs::Solution& solution) {
  const auto result = nlohmann::json::parse(rigs::resultJson(solution.plan, solution.answers));
  int compared = 0;
  for (const gui::telling::Table* table : answer.tables()) {
    for (const gui::telling::Row& row : table->rows) {
      if (row.result.empty()) continue;
      SCOPED_TRACE(row.result);
      const nlohmann::json::json_pointer pointer(row.result);
      for (std::size_t i = 0; i < row.cells.size(); ++i) {
        const auto number = gui::telling::cellNumber(row.cells[i], {});
        if (!number) continue;
        const auto& rig = result["rigs"][i];
        EXPECT_TRUE(rig.contains(pointer));
        if (!rig.contains(pointer)) continue;
        const double there = rig[pointer].get<double>();
        EXPECT_NEAR(*number * toResult(row.result, row), there, 1e-9 * (1.0 + std::abs(there)));
        ++compared;
      }
    }
  }
  return compared;
}

}  // namespace test_support
