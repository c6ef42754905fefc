// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/case.hpp"

#include <algorithm>
#include <utility>
#include <variant>

namespace gui::telling {
namespace {

constexpr double kMillimetresPerInch = 25.4;

}  // namespace

bool isOverloaded(const rigs::CircuitLoad& circuit) {
  return circuit.nameplate.fit == rigs::Fit::DoesNotFit && circuit.nameplate.load.has_value();
}

rigs::Told overloadMark() { return rigs::Told(TOLD("Answer", "▲ overload")); }

bool Case::isOverloaded(std::size_t i) const {
  const auto& circuits = rig(i).circuit.circuits;
  return std::any_of(circuits.begin(), circuits.end(), telling::isOverloaded);
}

rigs::Argument Case::named(std::size_t i) const {
  const rigs::Verbatim plain{plainlyNamed(i)};
  if (!isOverloaded(i)) return plain;
  return rigs::Told(TOLD("Answer", "%1 [%2]"), plain, overloadMark());
}

std::string Case::lettered(std::size_t i) const {
  const std::string own = isAlone() ? std::string() : letter(i);
  return isOverloaded(i) ? own + std::string(kMarkShape) : own;
}

std::string Case::lettered(std::size_t i, const std::string& text) const {
  const std::string own = lettered(i);
  return own.empty() ? text : own + ' ' + text;
}

double Case::thickness(physics::Length length) const {
  const double millimetres = physics::inMillimetres(length);
  return reader.units.isMetric(rigs::QuantityKind::Length) ? millimetres
                                                           : millimetres / kMillimetresPerInch;
}

std::string Case::thicknessUnit() const {
  return reader.units.isMetric(rigs::QuantityKind::Length) ? "mm" : "in";
}

rigs::Solution ofThisRigAlone(const rigs::Solution& solution, std::size_t rig) {
  return {.plan = rigs::onlyRig(solution.plan, rig),
          .answers = {{solution.answers.rigs[rig]}, solution.answers.ownRules},
          .sweeps = {},
          .done = {}};
}

Extremes extremesOf(const Case& of,
                    const std::function<std::optional<double>(std::size_t)>& figure) {
  Extremes extremes;
  double least = 0.0;
  double most = 0.0;
  for (std::size_t i = 0; i < of.count(); ++i) {
    const auto value = figure(i);
    if (!value) continue;
    if (extremes.counted == 0 || *value < least) {
      least = *value;
      extremes.least = i;
    }
    if (extremes.counted == 0 || *value > most) {
      most = *value;
      extremes.most = i;
    }
    ++extremes.counted;
  }
  return extremes;
}

RigTable::RigTable(std::string name, const Case& of) : count_(of.count()) {
  table_.name = std::move(name);
  for (std::size_t i = 0; i < count_; ++i)
    table_.columns.push_back(rigs::Told::just(rigs::Verbatim{of.isAlone() ? "" : of.letter(i)}));
}

void RigTable::add(Row row, std::optional<int> decimals) {
  if (decimals) {
    for (Cell& cell : row.cells) {
      if (!cell) continue;
      if (auto* amount = std::get_if<rigs::Amount>(&cell->value))
        amount->options.decimals = *decimals;
    }
  }
  table_.rows.push_back(std::move(row));
}

}  // namespace gui::telling
