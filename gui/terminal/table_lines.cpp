// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/table_lines.hpp"

#include <algorithm>

#include "gui/terminal/text_layout.hpp"

namespace gui {
namespace {

using telling::ShownRow;

constexpr std::size_t kGap = 2;    // between columns
constexpr std::size_t kInset = 2;  // of labels under headings
constexpr std::size_t kWidestLabel = 36;
constexpr std::size_t kNarrowestCell = 6;

struct Layout {
  std::size_t label = 0, cell = 0;
  std::size_t together = 1;  // columns that stand beside each other
};

Layout layoutOf(const std::vector<std::string>& heads, const std::vector<ShownRow>& rows,
                std::size_t width) {
  const std::size_t widestLabel = std::min(kWidestLabel, std::max<std::size_t>(width / 2, 12));
  Layout layout;
  for (const std::string& head : heads) layout.cell = std::max(layout.cell, displayWidth(head));
  for (const ShownRow& row : rows) {
    if (!row.isHeading) layout.label = std::max(layout.label, kInset + displayWidth(row.label));
    for (const std::string& cell : row.cells)
      layout.cell = std::max(layout.cell, displayWidth(cell));
  }
  layout.label = std::min(layout.label, widestLabel);
  layout.cell =
      std::min(layout.cell, std::max(width - std::min(width, layout.label + kGap), kNarrowestCell));
  const std::size_t most =
      std::max<std::size_t>((width - std::min(width, layout.label)) / (layout.cell + kGap), 1);
  // Groups of like size: nine columns of which five fit are five and four.
  const std::size_t groups = (heads.size() + most - 1) / most;
  layout.together = (heads.size() + groups - 1) / groups;
  return layout;
}

std::string withoutTrailingSpaces(std::string line) {
  line.erase(line.find_last_not_of(' ') + 1);
  return line;
}

std::string rule(std::size_t width) {
  std::string line;
  for (std::size_t i = 0; i < width; ++i) line += "─";
  return line;
}

// What one line has of a label or a cell that goes on over several.
std::string_view lineOf(const std::vector<std::string>& lines, std::size_t line) {
  return line < lines.size() ? std::string_view(lines[line]) : std::string_view();
}

// A long label continues under itself; long words in a cell do the same.
void addRow(const ShownRow& row, std::size_t first, std::size_t last, const Layout& layout,
            std::vector<std::string>& lines) {
  const std::vector<std::string> labels = wrapped(row.label, layout.label - kInset);
  std::vector<std::vector<std::string>> cells;
  std::size_t height = labels.size();
  for (std::size_t i = first; i < last; ++i) {
    cells.push_back(wrapped(i < row.cells.size() ? row.cells[i] : "", layout.cell));
    height = std::max(height, cells.back().size());
  }
  for (std::size_t line = 0; line < height; ++line) {
    std::string text =
        std::string(kInset, ' ') + padded(lineOf(labels, line), layout.label - kInset);
    for (const auto& words : cells)
      text += std::string(kGap, ' ') + paddedInFront(lineOf(words, line), layout.cell);
    lines.push_back(withoutTrailingSpaces(std::move(text)));
  }
}

void addHeads(const std::vector<std::string>& heads, std::size_t first, std::size_t last,
              const Layout& layout, std::vector<std::string>& lines) {
  std::string line(layout.label, ' ');
  for (std::size_t i = first; i < last; ++i)
    line += std::string(kGap, ' ') + paddedInFront(heads[i], layout.cell);
  lines.push_back(withoutTrailingSpaces(std::move(line)));
  lines.push_back(rule(layout.label + (last - first) * (layout.cell + kGap)));
}

}  // namespace

std::vector<std::string> tableLines(const telling::Table& table, const rigs::Reader& reader,
                                    std::size_t width) {
  const std::vector<ShownRow> rows = telling::shownRows(table, reader);
  std::vector<std::string> heads;
  for (const rigs::Told& head : table.columns) heads.push_back(rigs::tell(head, reader));
  if (rows.empty() || heads.empty()) return {};
  const Layout layout = layoutOf(heads, rows, width);
  std::vector<std::string> lines;
  for (std::size_t first = 0; first < heads.size(); first += layout.together) {
    const std::size_t last = std::min(first + layout.together, heads.size());
    if (first > 0) lines.emplace_back();
    addHeads(heads, first, last, layout, lines);
    for (const ShownRow& row : rows) {
      if (!row.isHeading) {
        addRow(row, first, last, layout, lines);
        continue;
      }
      for (std::string& part : wrapped(row.label, width)) lines.push_back(std::move(part));
    }
  }
  return lines;
}

}  // namespace gui
