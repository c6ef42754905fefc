// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/table_lines.hpp"

#include <algorithm>
#include <sstream>

#include "gui/terminal/text_layout.hpp"

namespace gui {
namespace {

using telling::ShownRow;

constexpr std::size_t kGap = 2;    // between columns
constexpr std::size_t kInset = 2;  // of labels under headings
constexpr std::size_t kWidestLabel = 36;
constexpr std::size_t kNarrowestCell = 6;

// Narrower than this, labels and words break too often to be read.
constexpr std::size_t kNarrowestLabel = 24;

struct Layout {
  std::size_t label = 0, cell = 0;
  std::size_t together = 1;  // columns that stand beside each other
};

std::size_t longestWord(const std::string& text) {
  std::size_t longest = 0;
  std::istringstream words(text);
  for (std::string word; std::getline(words, word, ' ');)
    longest = std::max(longest, displayWidth(word));
  return longest;
}

std::size_t widthOf(const std::vector<std::string>& head) {
  std::size_t width = 0;
  for (const std::string& line : head) width = std::max(width, displayWidth(line));
  return width;
}

// All columns beside each other where that takes no more than words going on under themselves.
bool standsTogetherNarrow(const std::vector<std::vector<std::string>>& heads,
                          const std::vector<ShownRow>& rows, std::size_t width, Layout& layout) {
  std::size_t needed = kNarrowestCell;
  for (const auto& head : heads) needed = std::max(needed, widthOf(head));
  for (const ShownRow& row : rows)
    for (const std::string& cell : row.cells) needed = std::max(needed, longestWord(cell));
  const auto eachBeside = [&](std::size_t label) {
    return (width - std::min(width, label)) / heads.size();
  };
  // Rather a word of a cell under another than a label over two lines.
  std::size_t label = layout.label;
  if (eachBeside(label) < needed + kGap) label = std::min(layout.label, kNarrowestLabel);
  const std::size_t each = eachBeside(label);
  if (each < needed + kGap) return false;
  layout.cell = std::min(layout.cell, each - kGap);
  layout.label = std::min(layout.label, width - heads.size() * (layout.cell + kGap));
  layout.together = heads.size();
  return true;
}

// "(c)" above "▲ overload": as narrow as it can be.
std::vector<std::vector<std::string>> headsOf(const telling::Table& table,
                                              const rigs::Reader& reader,
                                              const std::vector<rigs::Told>& rigMarks) {
  std::vector<std::vector<std::string>> heads;
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    heads.push_back({rigs::tell(table.columns[i], reader)});
    if (table.ofRigs && i < rigMarks.size() && !rigMarks[i].empty())
      heads.back().push_back(rigs::tell(rigMarks[i], reader));
  }
  return heads;
}

// Of other columns than rigs words break, where they stand beside each other only so.
std::vector<std::vector<std::string>> broken(const std::vector<std::vector<std::string>>& heads) {
  std::size_t width = kNarrowestCell;
  for (const auto& head : heads) width = std::max(width, longestWord(head.front()));
  std::vector<std::vector<std::string>> all;
  for (const auto& head : heads) all.push_back(wrapped(head.front(), width));
  return all;
}

Layout layoutOf(const std::vector<std::vector<std::string>>& heads,
                const std::vector<ShownRow>& rows, std::size_t width) {
  const std::size_t widestLabel = std::min(kWidestLabel, std::max<std::size_t>(width / 2, 12));
  Layout layout;
  for (const auto& head : heads) layout.cell = std::max(layout.cell, widthOf(head));
  for (const ShownRow& row : rows) {
    if (!row.isHeading) layout.label = std::max(layout.label, kInset + displayWidth(row.label));
    for (const std::string& cell : row.cells)
      layout.cell = std::max(layout.cell, displayWidth(cell));
  }
  layout.label = std::min(layout.label, widestLabel);
  layout.cell =
      std::min(layout.cell, std::max(width - std::min(width, layout.label + kGap), kNarrowestCell));
  if (standsTogetherNarrow(heads, rows, width, layout)) return layout;
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

// Over no more lines than it takes, and none of them much shorter than the others.
std::vector<std::string> evenlyWrapped(const std::string& text, std::size_t width) {
  std::vector<std::string> lines = wrapped(text, width);
  for (std::size_t narrow = width; lines.size() > 1 && narrow-- > longestWord(text);) {
    std::vector<std::string> narrower = wrapped(text, narrow);
    if (narrower.size() > lines.size()) break;
    lines = std::move(narrower);
  }
  return lines;
}

// A long label continues under itself; long words in a cell do the same.
void addRow(const ShownRow& row, std::size_t first, std::size_t last, const Layout& layout,
            std::vector<std::string>& lines) {
  const std::vector<std::string> labels = wrapped(row.label, layout.label - kInset);
  std::vector<std::vector<std::string>> cells;
  std::size_t height = labels.size();
  for (std::size_t i = first; i < last; ++i) {
    cells.push_back(evenlyWrapped(i < row.cells.size() ? row.cells[i] : "", layout.cell));
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

void addHeads(const std::vector<std::vector<std::string>>& heads, std::size_t first,
              std::size_t last, const Layout& layout, std::vector<std::string>& lines) {
  std::size_t height = 1;
  for (std::size_t i = first; i < last; ++i) height = std::max(height, heads[i].size());
  for (std::size_t one = 0; one < height; ++one) {
    std::string line(layout.label, ' ');
    for (std::size_t i = first; i < last; ++i)
      line += std::string(kGap, ' ') + paddedInFront(lineOf(heads[i], one), layout.cell);
    line = withoutTrailingSpaces(std::move(line));
    if (!line.empty()) lines.push_back(std::move(line));  // a rig alone has no head
  }
  lines.push_back(rule(layout.label + (last - first) * (layout.cell + kGap)));
}

}  // namespace

std::vector<std::string> tableLines(const telling::Table& table, const rigs::Reader& reader,
                                    std::size_t width, const std::vector<rigs::Told>& rigMarks) {
  const std::vector<ShownRow> rows = telling::shownRows(table, reader);
  auto heads = headsOf(table, reader, rigMarks);
  if (rows.empty() || heads.empty()) return {};
  Layout layout = layoutOf(heads, rows, width);
  if (!table.ofRigs && layout.together < heads.size()) {
    auto narrow = broken(heads);
    const Layout beside = layoutOf(narrow, rows, width);
    if (beside.together == heads.size()) {
      heads = std::move(narrow);
      layout = beside;
    }
  }
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
