// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/csv.hpp"

#include <cmath>
#include <string_view>

#include "gui/telling/case.hpp"

namespace gui::telling {
namespace {

using rigs::Told;

std::string field(const Cell& cell, const rigs::Reader& reader) {
  if (!cell) return {};
  const auto number = cellNumber(cell, reader);
  if (number && std::isfinite(*number))
    return rigs::formatNumber(*number, {.significantDigits = 15, .decimals = {}});
  return number ? std::string() : csvField(rigs::tell(*cell, reader));
}

std::string line(const std::vector<std::string>& fields) {
  std::string all;
  for (std::size_t i = 0; i < fields.size(); ++i) all += (i > 0 ? "," : "") + fields[i];
  return all + '\n';
}

std::vector<std::string> heads(const Table& table, const std::vector<std::string>& rigNames,
                               const rigs::Reader& reader) {
  std::vector<std::string> all{"table", "group", "figure", "unit"};
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    std::string head = rigs::tell(table.columns[i], reader);
    if (table.ofRigs && i < rigNames.size()) head += (head.empty() ? "" : " ") + rigNames[i];
    all.push_back(csvField(head));
  }
  return all;
}

// Names stay names for whoever looks them up: that a rig overloads its circuit is a line of its
// own.
std::string stateLine(const Answer& answer, const Table& table, const rigs::Reader& reader) {
  std::vector<std::string> fields{csvField(table.name), "",
                                  csvField(rigs::tell(Told(TOLD("Answer", "state")), reader)), ""};
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    const bool marked = !answer.markOf(i).empty();
    fields.push_back(marked ? csvField(rigs::tell(Told(TOLD("Answer", "overload")), reader))
                            : std::string());
  }
  return line(fields);
}

}  // namespace

std::string csvField(const std::string& text) {
  std::string safe;
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    safe += byte < 0x20 || byte == 0x7f ? ' ' : c;
  }
  if (!safe.empty() && std::string_view("=+-@").find(safe.front()) != std::string_view::npos)
    safe.insert(safe.begin(), '\'');
  if (safe.find_first_of(",\"") == std::string::npos) return safe;
  std::string quoted = "\"";
  for (const char c : safe) {
    if (c == '"') quoted += '"';
    quoted += c;
  }
  return quoted + '"';
}

std::string csvOf(const Answer& answer, const std::vector<std::string>& rigNames,
                  const rigs::Reader& reader) {
  std::string csv;
  std::vector<std::string> last;
  for (const Table* table : answer.tables()) {
    const std::vector<std::string> columns = heads(*table, rigNames, reader);
    if (columns != last) csv += line(columns);
    last = columns;
    if (table->ofRigs && !answer.rigMarks.empty()) csv += stateLine(answer, *table, reader);
    std::string group;
    for (const Row& row : table->rows) {
      if (row.isHeading()) {
        group = rigs::tell(row.label, reader);
        continue;
      }
      std::vector<std::string> fields{csvField(table->name), csvField(group),
                                      csvField(rigs::tell(row.label, reader)),
                                      csvField(unitForNumbers(row, reader))};
      for (const Cell& cell : row.cells) fields.push_back(field(cell, reader));
      csv += line(fields);
    }
  }
  for (const Table* table : answer.tables()) {
    for (std::size_t i = 0; i < table->legend.size(); ++i) {
      std::vector<std::string> fields{
          csvField(table->name), "",
          csvField(numbered(i) + ' ' + rigs::tell(table->legend[i], reader))};
      while (fields.size() < last.size()) fields.emplace_back();
      csv += line(fields);
    }
  }
  for (const rigs::Told& caution : answer.allCautions()) {
    std::vector<std::string> fields{"caution", "", csvField(rigs::tell(caution, reader))};
    while (fields.size() < last.size()) fields.emplace_back();
    csv += line(fields);
  }
  return csv;
}

}  // namespace gui::telling
