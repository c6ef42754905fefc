// SPDX-License-Identifier: GPL-3.0-or-later
// Tables as the reader sees them and as a spreadsheet gets them: the same cells carry both.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace gui {

struct Cell {
  std::string text;              // as shown; "–" where there is nothing to say
  std::optional<double> number;  // all digits, in the row's unit; empty for words
};
// "–": this rig has no such figure.
Cell noFigure();

struct Row {
  std::string label;
  std::string unit;  // of the numbers; "" for words and pure numbers
  std::vector<Cell> cells;
  std::optional<std::string> shownUnit = {};  // in place of `unit` where text differs: "h:min"

  bool isHeading() const { return cells.empty(); }
};

struct Table {
  std::string name;  // for spreadsheets: where the rows come from
  std::vector<std::string> columns;
  std::vector<Row> rows;

  void heading(std::string label) { rows.push_back({std::move(label), {}, {}, {}}); }
};

// Lines of at most `width` columns: labels to the left, cells aligned to the right, a thin rule
// under the column heads. Columns that do not fit beside each other follow in further groups,
// each with all labels. Rows that say nothing in any column are left out, and a unit that all rows
// under a heading share moves up to it.
std::vector<std::string> tableLines(const Table& table, std::size_t width);

}  // namespace gui
