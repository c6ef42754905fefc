// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/table.hpp"

#include <algorithm>

#include "gui/terminal/text_layout.hpp"

namespace gui {
namespace {

constexpr std::size_t kGap = 2;    // between columns
constexpr std::size_t kInset = 2;  // of labels under headings
constexpr std::size_t kWidestLabel = 36;
constexpr std::string_view kNothing = "–";

std::string unitOf(const Row& row) { return row.shownUnit.value_or(row.unit); }

std::string labelOf(const Row& row) {
  const std::string unit = unitOf(row);
  return unit.empty() ? row.label : row.label + ", " + unit;
}

bool saysNothing(const Row& row) {
  return !row.isHeading() && std::all_of(row.cells.begin(), row.cells.end(),
                                         [](const Cell& cell) { return cell.text == kNothing; });
}

// Without silent rows, and without headings that have no rows left.
std::vector<Row> speakingRows(const Table& table) {
  std::vector<Row> rows;
  for (const Row& row : table.rows) {
    if (saysNothing(row)) continue;
    if (row.isHeading() && !rows.empty() && rows.back().isHeading()) rows.pop_back();
    rows.push_back(row);
  }
  if (!rows.empty() && rows.back().isHeading()) rows.pop_back();
  return rows;
}

void moveUnitsUp(std::vector<Row>& rows) {
  for (std::size_t first = 0; first < rows.size();) {
    std::size_t last = first + 1;
    while (last < rows.size() && !rows[last].isHeading()) ++last;
    const bool shared =
        rows[first].isHeading() && last - first > 2 && !unitOf(rows[first + 1]).empty() &&
        std::all_of(rows.begin() + static_cast<std::ptrdiff_t>(first) + 1,
                    rows.begin() + static_cast<std::ptrdiff_t>(last),
                    [&](const Row& row) { return unitOf(row) == unitOf(rows[first + 1]); });
    if (shared) {
      rows[first].label += ", " + unitOf(rows[first + 1]);
      for (std::size_t i = first + 1; i < last; ++i) rows[i].shownUnit = "";
    }
    first = last;
  }
}

std::string rule(std::size_t width) {
  std::string line;
  for (std::size_t i = 0; i < width; ++i) line += "─";
  return line;
}

std::string withoutTrailingSpaces(std::string line) {
  line.erase(line.find_last_not_of(' ') + 1);
  return line;
}

}  // namespace

Cell noFigure() { return {std::string(kNothing), std::nullopt}; }

std::vector<std::string> tableLines(const Table& table, std::size_t width) {
  std::vector<Row> rows = speakingRows(table);
  moveUnitsUp(rows);
  if (rows.empty() || table.columns.empty()) return {};
  const std::size_t widestLabel = std::min(kWidestLabel, std::max<std::size_t>(width / 2, 12));
  std::size_t label = 0;
  std::size_t cell = 0;
  for (const std::string& column : table.columns) cell = std::max(cell, displayWidth(column));
  for (const Row& row : rows) {
    if (!row.isHeading()) label = std::max(label, kInset + displayWidth(labelOf(row)));
    for (const Cell& c : row.cells) cell = std::max(cell, displayWidth(c.text));
  }
  label = std::min(label, widestLabel);
  cell = std::min(cell, std::max<std::size_t>(width - std::min(width, label + kGap), 6));
  const std::size_t most =
      std::max<std::size_t>((width - std::min(width, label)) / (cell + kGap), 1);
  // Groups of like size: nine columns of which five fit are five and four.
  const std::size_t groups = (table.columns.size() + most - 1) / most;
  const std::size_t fitting = (table.columns.size() + groups - 1) / groups;

  std::vector<std::string> lines;
  for (std::size_t first = 0; first < table.columns.size(); first += fitting) {
    const std::size_t last = std::min(first + fitting, table.columns.size());
    if (first > 0) lines.emplace_back();
    std::string head(label, ' ');
    for (std::size_t i = first; i < last; ++i) {
      head += std::string(kGap, ' ') + paddedInFront(table.columns[i], cell);
    }
    lines.push_back(withoutTrailingSpaces(head));
    lines.push_back(rule(label + (last - first) * (cell + kGap)));
    for (const Row& row : rows) {
      if (row.isHeading()) {
        for (std::string& part : wrapped(row.label, width)) lines.push_back(std::move(part));
        continue;
      }
      // A long label continues under itself; long words in a cell do the same.
      const std::vector<std::string> labels = wrapped(labelOf(row), label - kInset);
      std::vector<std::vector<std::string>> cells;
      std::size_t height = labels.size();
      for (std::size_t i = first; i < last; ++i) {
        cells.push_back(i < row.cells.size() ? wrapped(row.cells[i].text, cell)
                                             : std::vector<std::string>{""});
        height = std::max(height, cells.back().size());
      }
      for (std::size_t line = 0; line < height; ++line) {
        std::string text = std::string(kInset, ' ') +
                           padded(line < labels.size() ? labels[line] : "", label - kInset);
        for (const auto& words : cells) {
          text +=
              std::string(kGap, ' ') + paddedInFront(line < words.size() ? words[line] : "", cell);
        }
        lines.push_back(withoutTrailingSpaces(std::move(text)));
      }
    }
  }
  return lines;
}

}  // namespace gui
