// SPDX-License-Identifier: GPL-3.0-or-later
// What every question's telling starts from: the solved plan, its reader, and how a rig is named.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "gui/telling/answer.hpp"
#include "gui/telling/letters.hpp"
#include "gui/telling/question.hpp"
#include "rigs/answers/answers.hpp"
#include "rigs/answers/solution.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/plans/rig_letters.hpp"

namespace gui::telling {

// A circuit that its name plates ask for more than it is rated for, by more than their tolerance.
bool isOverloaded(const rigs::CircuitLoad& circuit);
// "▲ overload": a word and a shape, for whoever sees no colours, or hears the page. Its space is
// one that no line breaks at.
rigs::Told overloadMark();

struct Case {
  const rigs::Solution& solution;
  const rigs::Plan& plan;
  const rigs::Reader& reader;
  QuestionView view;

  std::size_t count() const { return solution.answers.rigs.size(); }
  // A plan of one rig: it is called by its name, without a letter, and compared with nothing.
  bool isAlone() const { return count() == 1; }
  const rigs::RigAnswer& rig(std::size_t i) const { return solution.answers.rigs[i]; }
  const rigs::RigPlan& planned(std::size_t i) const { return plan.rigs[i]; }
  const rigs::RigSweeps* sweeps(std::size_t i) const {
    return i < solution.sweeps.size() ? &solution.sweeps[i] : nullptr;
  }
  bool isOverloaded(std::size_t i) const;  // any of its circuits
  // By which it is called and drawn, whatever its place in the plan; see rigs::slotsOf().
  std::vector<std::size_t> slots() const { return rigs::slotsOf(plan.rigs); }
  std::string letter(std::size_t i) const { return telling::letter(slots()[i]); }
  // As sentences name a rig: "(b) New element, kitchen", and "(b) New element, kitchen [▲
  // overload]" of one that overloads its circuit, so that no sentence about it can be read without.
  // Of a rig alone its name: "New element, kitchen".
  rigs::Argument named(std::size_t i) const;
  // The same where there is no room for more than a letter: "(b)", "(b)▲"; "", "▲" of one alone.
  std::string lettered(std::size_t i) const;
  // The same before a text: "(b) 35 min"; "35 min" of a rig alone.
  std::string lettered(std::size_t i, const std::string& text) const;
  // For programs, and for sentences that tell of the overload itself.
  std::string plainlyNamed(std::size_t i) const {
    return isAlone() ? name(i) : letter(i) + ' ' + name(i);
  }
  const std::string& name(std::size_t i) const { return rig(i).name; }
  // The rig's own clock; counted from its beginning where that has none, for it never comes to what
  // is to be ready.
  rigs::Clock clockAt(std::size_t i, physics::Time sinceTheBeginning) const {
    const auto& begins = rig(i).begins;
    if (!begins) return {.sinceMidnight = sinceTheBeginning, .counted = true};
    return {.sinceMidnight = *begins + sinceTheBeginning};
  }

  // For pictures, which are made of numbers and words as the reader has them.
  std::string text(const rigs::Told& told) const { return rigs::tell(told, reader); }
  std::string text(const rigs::Argument& argument) const { return rigs::tell(argument, reader); }
  template <class Q>
  double axis(const Q& q) const {
    return rigs::numberIn(q, reader.units);
  }
  template <class Q>
  std::string unit() const {
    return std::string(rigs::unitLabel<Q>(reader.units));
  }
  // As the tables have it.
  template <class Q>
  int decimals() const {
    return tableDecimals(rigs::kKindOf<Q>, reader.units);
  }
  // Thicknesses are in millimetres or inches, whatever lengths are.
  double thickness(physics::Length length) const;
  std::string thicknessUnit() const;
};

// Of one rig what cautions are told from: what the others come to is no matter of its day.
rigs::Solution ofThisRigAlone(const rigs::Solution& solution, std::size_t rig);

// Rigs ordered by a figure; those without one are left out.
struct Extremes {
  std::size_t least = 0, most = 0;  // meaningful where `counted` > 0
  std::size_t counted = 0;
};
Extremes extremesOf(const Case& of,
                    const std::function<std::optional<double>(std::size_t)>& figure);

// Of a row: its decimals, and what Row says of unit, result, sum and question.
struct RowOptions {
  std::optional<int> decimals = {};
  std::string unit = {};
  std::string result = {};
  bool isSum = false;
  std::optional<Question> opens = {};
};

// A table with the rigs as columns, filled row by row; the column of a rig alone has no head. `of`
// takes a rig's index and gives a cell, a quantity, words, or an optional one of these: see
// cellOf().
class RigTable {
 public:
  RigTable(std::string name, const Case& of);

  using Options = RowOptions;
  void heading(rigs::Told label) { table_.heading(std::move(label)); }
  template <class Of>
  void row(rigs::Told label, const Of& of, const Options& options = {}) {
    Row row{std::move(label), {}, options.unit, options.result, options.isSum, options.opens};
    for (std::size_t i = 0; i < count_; ++i) row.cells.push_back(cellOf(of(i)));
    add(std::move(row), options.decimals);
  }
  Table take() { return std::move(table_); }

 private:
  void add(Row row, std::optional<int> decimals);

  std::size_t count_;
  Table table_;
};

}  // namespace gui::telling
