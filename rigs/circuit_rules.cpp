// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/circuit_rules.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace rigs {

using namespace physics;

const Outlet* CircuitRules::outlet(std::string_view name) const {
  const auto at = std::find_if(outlets.begin(), outlets.end(),
                               [name](const Outlet& one) { return one.name == name; });
  return at == outlets.end() ? nullptr : &*at;
}

std::vector<const VoltageRange*> CircuitRules::rangesOf(Voltage nominal) const {
  std::vector<const VoltageRange*> found;
  for (const VoltageRange& range : voltages) {
    const double times = static_cast<double>(nominal / range.nominal);
    if (std::abs(times - 1.0) <= 0.02) found.push_back(&range);
  }
  return found;
}

std::optional<Current> CircuitRules::nextBreaker(Current atLeast) const {
  // A hair of slack, so that 24 A / 0.8 needs 30 A and not the next.
  for (const Current& size : breakers.sizes) {
    if (size >= (1.0 - 1e-9) * atLeast) return size;
  }
  return std::nullopt;
}

const CircuitRules* rulesOf(std::string_view region) {
  for (const CircuitRules& rules : bundledRules()) {
    if (rules.region == region) return &rules;
  }
  return nullptr;
}

std::vector<const CircuitRules*> rulesForCircuitsOf(std::string_view circuitRegion) {
  std::vector<const CircuitRules*> found;
  for (const CircuitRules& rules : bundledRules()) {
    const auto& all = rules.circuitsOf;
    if (std::find(all.begin(), all.end(), circuitRegion) != all.end()) found.push_back(&rules);
  }
  return found;
}

double ambientFactorOf(const ConductorTable& table, Temperature ambient) {
  // Bands include their upper end; a rounding in the last digits is not the next band.
  for (const AmbientRow& row : table.ambientFactors) {
    if (ambient <= row.upTo + kelvins(1e-6)) return row.factor;
  }
  if (!table.ambientFactors.empty()) return 0.0;
  if (!table.insulation) return 1.0;
  return ambientFactor(*table.insulation, table.ambient, ambient);
}

namespace {

bool sameSize(Area a, Area b) { return std::abs(static_cast<double>(a / b) - 1.0) < 0.015; }

bool serves(const ConductorTable& table, const CableAsked& cable) {
  if (table.use != cable.use) return false;
  if (cable.insulation && table.insulation &&
      std::abs(inKelvins(*cable.insulation - *table.insulation)) > 0.5)
    return false;
  if (!cable.method.empty() && !table.method.empty() && table.method != cable.method) return false;
  return table.use != CableUse::Cord || table.loaded >= cable.loaded;
}

// Which of two tables speaks of this cable. A cable whose insulation or method is not stated gets
// the first building-wire table's figure, as that is the usual one, and the least of the cords'. A
// table for more loaded conductors serves fewer, if none is made for them.
bool isNearer(const CableAsked& cable, const Ampacity& one, const Ampacity& than) {
  if (cable.insulation && one.table->insulation.has_value() != than.table->insulation.has_value())
    return one.table->insulation.has_value();
  if (one.table == than.table) return one.row->upTo.has_value();
  if (one.table->loaded != than.table->loaded) return one.table->loaded < than.table->loaded;
  return cable.use == CableUse::Cord && one.allowed < than.allowed;
}

}  // namespace

std::optional<Ampacity> ampacity(const CircuitRules& rules, const CableAsked& cable,
                                 std::string& nearest) {
  std::optional<Ampacity> best;
  double closest = 1e9;
  nearest.clear();
  for (const ConductorTable& table : rules.conductors) {
    if (!serves(table, cable)) continue;
    for (const ConductorRow& row : table.rows) {
      const double apart = std::abs(std::log(static_cast<double>(row.area / cable.area)));
      if (apart < closest) {
        closest = apart;
        nearest = row.size;
      }
      if (!sameSize(row.area, cable.area)) continue;
      if (row.upTo && cable.length > *row.upTo) continue;
      Ampacity found{.table = &table, .row = &row, .allowed = row.ampacity};
      if (cable.ambient) found.ambientFactor = ambientFactorOf(table, *cable.ambient);
      if (cable.layersOnDrum > 0) {
        const auto layers = static_cast<std::size_t>(cable.layersOnDrum);
        const bool known = rules.drum && !rules.drum->layers.empty();
        // Nothing published is nothing granted.
        found.drumFactor =
            known ? rules.drum->layers[std::min(layers, rules.drum->layers.size()) - 1] : 0.0;
      }
      found.allowed = found.ambientFactor * found.drumFactor * row.ampacity;
      if (!best || isNearer(cable, found, *best)) best = found;
    }
  }
  return best;
}

std::string_view statusWords(Status status) {
  switch (status) {
    case Status::Seen:
      return "read";
    case Status::Computed:
      return "computed";
    case Status::Memory:
      return "from memory, check";
  }
  return "";
}

}  // namespace rigs
