// SPDX-License-Identifier: GPL-3.0-or-later
// Rows of a checked-in table of numbers: comma separated, `#` comments, one line of names.
#pragma once

#include <gtest/gtest.h>

#include <cstddef>
#include <fstream>
#include <locale>
#include <sstream>
#include <string>
#include <vector>

namespace second_opinions {

// Empty when the file is missing or a row does not have `columns` numbers, so that a test which
// counts the rows fails.
inline std::vector<std::vector<double>> readTable(const std::string& name, std::size_t columns) {
  std::ifstream file(std::string(HEATLEDGER_SOURCE_DIR) + "/tests/second_opinions/" + name);
  std::vector<std::vector<double>> rows;
  bool namesSeen = false;
  for (std::string line; std::getline(file, line);) {
    if (line.starts_with('#')) continue;
    if (!namesSeen) {
      namesSeen = true;
      continue;
    }
    std::istringstream cells(line);
    cells.imbue(std::locale::classic());
    std::vector<double> row;
    for (double cell = 0.0; cells >> cell; cells.ignore(1)) row.push_back(cell);
    if (row.size() != columns) {
      ADD_FAILURE() << name << ": not " << columns << " numbers: " << line;
      return {};
    }
    rows.push_back(row);
  }
  return rows;
}

}  // namespace second_opinions
