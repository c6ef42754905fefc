// SPDX-License-Identifier: GPL-3.0-or-later
// A table with the rigs as columns, filled row by row.
#pragma once

#include <optional>
#include <string>
#include <type_traits>
#include <utility>

#include "gui/terminal/page.hpp"
#include "gui/terminal/table.hpp"
#include "gui/terminal/wording.hpp"
#include "rigs/answers/answers.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace gui {

// Decimals in tables, so that a column's points stand under each other.
int tableDecimals(rigs::QuantityKind kind, UnitSystem units);

// A quantity in its column unit: see rigs::unitLabel.
template <rigs::Writable Q>
Cell quantityCell(const Q& q, UnitSystem units, std::optional<int> decimals = {}) {
  // Exactly nothing is not worth a row of noughts.
  if constexpr (std::is_same_v<Q, physics::Energy>) {
    if (q == physics::joules(0.0)) return {noFigure().text, 0.0};
  }
  const int places = decimals ? *decimals : tableDecimals(rigs::kKindOf<Q>, units);
  return {rigs::formatValue(q, units, {.significantDigits = 3, .decimals = places}),
          rigs::numberIn(q, units)};
}
template <rigs::Writable Q>
Cell quantityCell(const std::optional<Q>& q, UnitSystem units, std::optional<int> decimals = {}) {
  return q ? quantityCell(*q, units, decimals) : noFigure();
}
// Hours and minutes, "2:05"; spreadsheets get minutes.
inline Cell timeCell(const std::optional<physics::Time>& time) {
  if (!time) return noFigure();
  return {hoursAndMinutes(*time), physics::inMinutes(*time)};
}
inline Cell numberCell(const std::optional<double>& number, int decimals) {
  if (!number) return noFigure();
  return {rigs::formatNumber(*number, {.significantDigits = 3, .decimals = decimals}), number};
}

template <class T>
struct WithoutOptional {
  using type = T;
};
template <class T>
struct WithoutOptional<std::optional<T>> {
  using type = T;
};

class RigTable {
 public:
  RigTable(std::string name, const rigs::Plan& plan, const rigs::Answers& answers, UnitSystem units)
      : plan_(plan), answers_(answers), units_(units) {
    table_.name = std::move(name);
    for (std::size_t i = 0; i < answers.rigs.size(); ++i) table_.columns.push_back(letter(i));
  }

  void heading(std::string label) { table_.heading(std::move(label)); }

  // `of` takes a RigPlan and its RigAnswer, and gives a quantity or an optional one.
  template <class Of>
  void quantity(std::string label, const Of& of, std::optional<int> decimals = {}) {
    using Given = std::decay_t<decltype(of(plan_.rigs[0], answers_.rigs[0]))>;
    using Q = typename WithoutOptional<Given>::type;
    Row row{std::move(label), std::string(rigs::unitLabel<Q>(units_)), {}, {}};
    each(row, [&](const auto& plan, const auto& rig) {
      return quantityCell(of(plan, rig), units_, decimals);
    });
  }
  template <class Of>
  void time(std::string label, const Of& of) {
    Row row{std::move(label), "min", {}, "h:min"};
    each(row, [&](const auto& plan, const auto& rig) { return timeCell(of(plan, rig)); });
  }
  template <class Of>
  void number(std::string label, std::string unit, int decimals, const Of& of) {
    Row row{std::move(label), std::move(unit), {}, {}};
    each(row,
         [&](const auto& plan, const auto& rig) { return numberCell(of(plan, rig), decimals); });
  }
  // `of` gives text, or "" where there is nothing to say.
  template <class Of>
  void words(std::string label, const Of& of) {
    Row row{std::move(label), {}, {}, {}};
    each(row, [&](const auto& plan, const auto& rig) {
      const std::string text = of(plan, rig);
      return text.empty() ? noFigure() : Cell{text, std::nullopt};
    });
  }

  Table take() { return std::move(table_); }

 private:
  template <class CellOf>
  void each(Row& row, const CellOf& cellOf) {
    for (std::size_t i = 0; i < answers_.rigs.size(); ++i) {
      row.cells.push_back(cellOf(plan_.rigs[i], answers_.rigs[i]));
    }
    table_.rows.push_back(std::move(row));
  }

  const rigs::Plan& plan_;
  const rigs::Answers& answers_;
  UnitSystem units_;
  Table table_;
};

}  // namespace gui
