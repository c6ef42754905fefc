// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/table.hpp"

#include <algorithm>
#include <cmath>
#include <variant>

namespace gui::telling {
namespace {

using rigs::Amount;
using rigs::QuantityKind;
using rigs::Reader;
using rigs::UnitSystem;

constexpr std::string_view kNothing = "–";

std::string unitOf(const Cell& cell, const Reader& reader, std::string_view ofTimes) {
  if (!cell) return {};
  if (const auto* amount = std::get_if<Amount>(&cell->value)) {
    // A unit of its own stands in the label's place of the usual one.
    if (!amount->like.empty()) {
      const std::size_t space = amount->like.find(' ');
      return space == std::string::npos ? std::string() : amount->like.substr(space + 1);
    }
    return std::string(rigs::unitLabel(amount->kind, reader.units));
  }
  if (std::holds_alternative<rigs::HoursAndMinutes>(cell->value)) return std::string(ofTimes);
  if (const auto* money = std::get_if<rigs::Money>(&cell->value)) return money->currency;
  return {};
}

std::string unitOf(const Row& row, const Reader& reader, std::string_view ofTimes) {
  if (!row.unit.empty()) return row.unit;
  for (const Cell& cell : row.cells) {
    const std::string unit = unitOf(cell, reader, ofTimes);
    if (!unit.empty()) return unit;
  }
  return {};
}

bool saysNothing(const Row& row) {
  return !row.isHeading() && std::none_of(row.cells.begin(), row.cells.end(),
                                          [](const Cell& cell) { return cell.has_value(); });
}

std::vector<const Row*> speaking(const Table& table) {
  std::vector<const Row*> rows;
  for (const Row& row : table.rows) {
    if (saysNothing(row)) continue;
    if (row.isHeading() && !rows.empty() && rows.back()->isHeading()) rows.pop_back();
    rows.push_back(&row);
  }
  if (!rows.empty() && rows.back()->isHeading()) rows.pop_back();
  return rows;
}

// A sign and what follows it stay on one line.
std::string withSign(bool less, const std::string& text) {
  return (less ? "−\u00a0" : "+\u00a0") + text;
}

// The figure's own kind of cell with the distance to the base in it; nullopt for words.
Cell distanceBetween(const rigs::Argument& figure, double here, double there) {
  const double distance = std::abs(here - there);
  if (const auto* amount = std::get_if<Amount>(&figure.value)) {
    // Of temperatures too: the column's numbers were subtracted, not the temperatures.
    return rigs::Argument(rigs::Number{distance, amount->options});
  }
  if (const auto* number = std::get_if<rigs::Number>(&figure.value))
    return rigs::Argument(rigs::Number{distance, number->options});
  if (const auto* money = std::get_if<rigs::Money>(&figure.value))
    return rigs::Argument(rigs::Money{distance, money->currency});
  if (std::holds_alternative<rigs::Count>(figure.value))
    return rigs::Argument(rigs::Number{distance});
  if (std::holds_alternative<rigs::HoursAndMinutes>(figure.value))
    return rigs::Argument(rigs::HoursAndMinutes{physics::minutes(distance)});
  return std::nullopt;
}

std::optional<std::string> clockDifference(const Cell& cell, const Cell& base,
                                           const Reader& reader) {
  const auto* here = std::get_if<rigs::Clock>(&cell->value);
  const auto* there = std::get_if<rigs::Clock>(&base->value);
  if (!here || !there || here->counted || there->counted) return std::nullopt;
  const physics::Time later = here->sinceMidnight - there->sinceMidnight;
  return withSign(later < physics::seconds(0.0),
                  rigs::tell(rigs::roughly(physics::Time(abs(later))), reader));
}

}  // namespace

int tableDecimals(QuantityKind kind, UnitSystem units) {
  switch (kind) {
    case QuantityKind::Power:
    case QuantityKind::HeatFlux:
      return 0;
    case QuantityKind::Energy:
    case QuantityKind::Mass:
    case QuantityKind::MassFlow:
    case QuantityKind::Resistance:
      return 2;
    case QuantityKind::Volume:
    case QuantityKind::VolumeFlow:
      return units.isMetric(kind) ? 1 : 2;
    default:
      return 1;
  }
}

std::string numbered(std::size_t index) { return '(' + std::to_string(index + 1) + ')'; }

std::string cellText(const Cell& cell, const Reader& reader) {
  if (!cell) return std::string(kNothing);
  if (const auto* amount = std::get_if<Amount>(&cell->value)) {
    rigs::FormatOptions options = amount->options;
    if (!options.decimals) options.decimals = tableDecimals(amount->kind, reader.units);
    return rigs::withDecimalSign(rigs::formatNumber(*cellNumber(cell, reader), options),
                                 *reader.language);
  }
  if (const auto* money = std::get_if<rigs::Money>(&cell->value)) {
    return rigs::tell(
        rigs::Argument(rigs::Number{money->amount, {.significantDigits = 3, .decimals = 2}}),
        reader);
  }
  return rigs::tell(*cell, reader);
}

std::string differenceText(const Cell& cell, const Cell& base, const Reader& reader) {
  const std::string whole = cellText(cell, reader);
  if (!cell || !base || std::holds_alternative<rigs::Told>(cell->value)) return whole;
  if (whole == cellText(base, reader)) return "=";
  if (const auto clock = clockDifference(cell, base, reader)) return *clock;
  const auto here = cellNumber(cell, reader);
  const auto there = cellNumber(base, reader);
  if (!here || !there) return whole;
  Cell distance = distanceBetween(*cell, *here, *there);
  if (!distance) return whole;
  if (const auto* amount = std::get_if<Amount>(&cell->value)) {
    auto& options = std::get<rigs::Number>(distance->value).options;
    if (!options.decimals) options.decimals = tableDecimals(amount->kind, reader.units);
  }
  return withSign(*here < *there, cellText(distance, reader));
}

std::optional<double> cellNumber(const Cell& cell, const Reader& reader) {
  if (!cell) return std::nullopt;
  if (const auto* amount = std::get_if<Amount>(&cell->value)) {
    return amount->like.empty() ? rigs::detail::toColumn(amount->kind, amount->si, reader.units)
                                : rigs::detail::numberLike(amount->kind, amount->si, amount->like);
  }
  if (const auto* number = std::get_if<rigs::Number>(&cell->value)) return number->value;
  if (const auto* gap = std::get_if<rigs::Gap>(&cell->value)) return gap->share;
  if (const auto* count = std::get_if<rigs::Count>(&cell->value))
    return static_cast<double>(count->value);
  if (const auto* money = std::get_if<rigs::Money>(&cell->value)) return money->amount;
  if (const auto* time = std::get_if<rigs::HoursAndMinutes>(&cell->value))
    return physics::inMinutes(time->time);
  return std::nullopt;
}

namespace {

std::string shownCell(const Table& table, const Row& row, std::size_t at, const Reader& reader) {
  const bool compared = table.base && *table.base < row.cells.size() && *table.base != at;
  return compared ? differenceText(row.cells[at], row.cells[*table.base], reader)
                  : cellText(row.cells[at], reader);
}

}  // namespace

std::string shownUnit(const Row& row, const Reader& reader) { return unitOf(row, reader, "h:min"); }
std::string unitForNumbers(const Row& row, const Reader& reader) {
  return unitOf(row, reader, "min");
}

std::vector<ShownRow> shownRows(const Table& table, const Reader& reader) {
  const std::vector<const Row*> rows = speaking(table);
  std::vector<ShownRow> shown;
  for (std::size_t first = 0; first < rows.size();) {
    std::size_t last = first + 1;
    while (last < rows.size() && !rows[last]->isHeading()) ++last;
    std::string common;
    if (rows[first]->isHeading() && last - first > 2) {
      common = shownUnit(*rows[first + 1], reader);
      for (std::size_t i = first + 1; i < last; ++i)
        if (shownUnit(*rows[i], reader) != common) common.clear();
    }
    for (std::size_t i = first; i < last; ++i) {
      const std::string unit = rows[i]->isHeading() ? common
                               : common.empty()     ? shownUnit(*rows[i], reader)
                                                    : std::string();
      ShownRow row{rigs::tell(rows[i]->label, reader),
                   {},
                   rows[i]->isHeading(),
                   rows[i]->isSum,
                   rows[i]->opens,
                   rows[i]->result};
      if (!unit.empty()) row.label += ", " + unit;
      for (std::size_t k = 0; k < rows[i]->cells.size(); ++k)
        row.cells.push_back(shownCell(table, *rows[i], k, reader));
      shown.push_back(std::move(row));
    }
    first = last;
  }
  for (std::size_t i = 0; i < table.legend.size(); ++i)
    shown.push_back({numbered(i) + ' ' + rigs::tell(table.legend[i], reader), {}, true});
  return shown;
}

}  // namespace gui::telling
