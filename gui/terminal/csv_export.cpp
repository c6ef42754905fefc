// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/csv_export.hpp"

#include <cmath>
#include <vector>

#include "gui/terminal/text_layout.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace gui {
namespace {

std::string field(const std::string& text) {
  std::string safe = plainText(text);
  if (!safe.empty() && std::string_view("=+-@").find(safe.front()) != std::string_view::npos) {
    safe.insert(safe.begin(), '\'');
  }
  if (safe.find_first_of(",\"") == std::string::npos) return safe;
  std::string quoted = "\"";
  for (const char c : safe) {
    if (c == '"') quoted += '"';
    quoted += c;
  }
  return quoted + '"';
}

std::string field(const Cell& cell) {
  if (cell.number && std::isfinite(*cell.number)) {
    return rigs::formatNumber(*cell.number, {.significantDigits = 15, .decimals = {}});
  }
  return cell.text == noFigure().text ? "" : field(cell.text);
}

std::string joined(const std::vector<std::string>& fields) {
  std::string line;
  for (const std::string& f : fields) line += (line.empty() ? "" : ",") + f;
  return line + '\n';
}

}  // namespace

std::string pageCsv(const Page& page) {
  std::string csv;
  std::vector<std::string> heads;
  for (const Block& block : page.blocks) {
    const auto* table = std::get_if<Table>(&block);
    if (!table) continue;
    std::vector<std::string> columns{"table", "group", "figure", "unit"};
    for (const std::string& column : table->columns) {
      // Letters are explained on the page; a spreadsheet gets the names.
      std::size_t rig = 0;
      while (rig < page.rigNames.size() && letter(rig) != column) ++rig;
      columns.push_back(
          field(rig < page.rigNames.size() ? column + ' ' + page.rigNames[rig] : column));
    }
    if (columns != heads) csv += joined(columns);
    heads = columns;
    std::string group;
    for (const Row& row : table->rows) {
      if (row.isHeading()) {
        group = row.label;
        continue;
      }
      std::vector<std::string> fields{field(table->name), field(group), field(row.label),
                                      field(row.unit)};
      // A first empty field would vanish in a joined line; the table's name never is empty.
      for (const Cell& cell : row.cells) fields.push_back(field(cell));
      csv += joined(fields);
    }
  }
  for (const std::string& caution : page.cautions) {
    std::vector<std::string> fields{"caution", "", field(caution)};
    while (fields.size() < heads.size()) fields.emplace_back();
    csv += joined(fields);
  }
  return csv;
}

}  // namespace gui
