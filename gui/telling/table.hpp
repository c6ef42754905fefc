// SPDX-License-Identifier: GPL-3.0-or-later
// Tables of typed cells: the terminal, the window, the report and the spreadsheets show the same.
#pragma once

#include <optional>
#include <string>
#include <type_traits>
#include <vector>

#include "gui/telling/question.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

// A figure or words; nullopt: there is no such figure, which is never the same as 0.
using Cell = std::optional<rigs::Argument>;

struct Row {
  rigs::Told label;
  std::vector<Cell> cells;  // none: the row is a heading of those below
  // Of the numbers, where the cells do not tell it: "EUR/L".
  std::string unit = {};
  // Where a program finds the same figure: a pointer within the rig's part of the result's JSON,
  // "/day/total/from_wall_kwh". Empty where there is none.
  std::string result = {};
  bool isSum = false;                  // what the account comes to: ruled off, in heavier letters
  std::optional<Question> opens = {};  // which question tells more of it

  bool isHeading() const { return cells.empty(); }
};

struct Table {
  std::string name;                 // for spreadsheets: where the rows come from; not translated
  std::vector<rigs::Told> columns;  // heads; of a table of rigs, their letters
  std::vector<Row> rows;
  bool ofRigs = true;  // a column a rig, in the order of the plan
  // What cells refer to by number, "(1)" the first: conditions that no cell has room for. Shown
  // with the table wherever it is.
  std::vector<rigs::Told> legend = {};
  std::optional<std::size_t> rig = {};  // whom all of it is about
  // Of a table of rigs: the one that the others are compared with. People read by how much each
  // figure of theirs differs from its own; spreadsheets get the figures themselves.
  std::optional<std::size_t> base = {};

  void heading(rigs::Told label) { rows.push_back({.label = std::move(label), .cells = {}}); }
};

// Figures become cells as they are; a duration in hours and minutes is asked for by name.
inline Cell cellOf(rigs::Argument argument) { return argument; }
template <rigs::Writable Q>
Cell cellOf(const Q& q) {
  return rigs::Argument(rigs::amount(q));
}
template <class T>
Cell cellOf(const std::optional<T>& given) {
  return given ? cellOf(*given) : std::nullopt;
}
inline Cell hoursAndMinutes(const std::optional<physics::Time>& time) {
  return time ? Cell(rigs::HoursAndMinutes{*time}) : std::nullopt;
}
inline Cell numberCell(const std::optional<double>& number, int decimals) {
  if (!number) return std::nullopt;
  return rigs::Argument(rigs::Number{*number, {.significantDigits = 3, .decimals = decimals}});
}

// "(1)" of the first of a table's legend.
std::string numbered(std::size_t index);

// How many a table has of such a figure, so that a column's points stand under each other.
int tableDecimals(rigs::QuantityKind kind, rigs::UnitSystem units);

// "–" for no figure. Amounts without decimals of their own get those that make a column's points
// stand under each other. Without the unit, which stands in the row's label.
std::string cellText(const Cell& cell, const rigs::Reader& reader);
// How a figure differs from that of the base, in the same unit and digits: "+ 0.2", "− 4 min" of a
// clock; "=" where both read the same. Words, which are states, and a figure that has nothing to be
// compared with stand as they are.
std::string differenceText(const Cell& cell, const Cell& base, const rigs::Reader& reader);
// With all digits, in the unit of unitForNumbers(); nullopt for words and for no figure.
std::optional<double> cellNumber(const Cell& cell, const rigs::Reader& reader);
// "h:min" of what people read; "min" of what spreadsheets get. Empty for words and pure numbers.
std::string shownUnit(const Row& row, const rigs::Reader& reader);
std::string unitForNumbers(const Row& row, const rigs::Reader& reader);

// As people read it: no rows that say nothing in any column, no headings without rows, and a unit
// that all rows under a heading share moved up to it.
struct ShownRow {
  std::string label;
  std::vector<std::string> cells;
  bool isHeading = false;
  bool isSum = false;
  std::optional<Question> opens = {};
  std::string result = {};  // as its row's
};
std::vector<ShownRow> shownRows(const Table& table, const rigs::Reader& reader);

}  // namespace gui::telling
