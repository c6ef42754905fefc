// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/circuits/rules.hpp"

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

const Fuse* CircuitRules::fuse(std::string_view name) const {
  const auto at = std::find_if(fuses.begin(), fuses.end(),
                               [name](const Fuse& one) { return one.name == name; });
  return at == fuses.end() ? nullptr : &*at;
}

std::vector<const VoltageRange*> CircuitRules::rangesOf(Voltage nominal) const {
  std::vector<const VoltageRange*> found;
  for (const VoltageRange& range : voltages) {
    const double times = static_cast<double>(nominal / range.nominal);
    if (std::abs(times - 1.0) <= kSameVoltage) found.push_back(&range);
  }
  return found;
}

std::optional<Voltage> CircuitRules::nominalOf(Voltage measured) const {
  std::optional<Voltage> nearest;
  for (const VoltageRange& range : voltages) {
    if (measured < range.lowest || measured > range.highest) continue;
    if (!nearest || abs(measured - range.nominal) < abs(measured - *nearest))
      nearest = range.nominal;
  }
  return nearest;
}

std::optional<Current> CircuitRules::nextBreaker(Current atLeast) const {
  // A hair of slack, so that 24 A / 0.8 needs 30 A and not the next.
  for (const Current& size : breakers.sizes) {
    if (size >= (1.0 - 1e-9) * atLeast) return size;
  }
  return std::nullopt;
}

bool sameRegion(std::string_view one, std::string_view other) {
  const auto small = [](char c) { return 'A' <= c && c <= 'Z' ? static_cast<char>(c + 32) : c; };
  return std::equal(one.begin(), one.end(), other.begin(), other.end(),
                    [&](char a, char b) { return small(a) == small(b); });
}

const CircuitRules* rulesOf(std::string_view region) {
  for (const CircuitRules& rules : bundledRules()) {
    if (sameRegion(rules.region, region)) return &rules;
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

std::optional<double> ambientFactorOf(const ConductorTable& table, Temperature ambient,
                                      std::optional<Temperature> insulation) {
  // Bands include their upper end; a rounding in the last digits is not the next band.
  for (const AmbientRow& row : table.ambientFactors) {
    if (ambient <= row.upTo + kelvins(1e-6)) return row.factor;
  }
  if (!table.ambientFactors.empty()) return 0.0;
  if (table.insulation) insulation = table.insulation;
  if (insulation) return ambientFactor(*insulation, table.ambient, ambient);
  if (ambient <= table.ambient + kelvins(1e-6)) return 1.0;
  return std::nullopt;
}

namespace {

bool sameSize(Area a, Area b) { return std::abs(static_cast<double>(a / b) - 1.0) < 0.015; }

bool serves(const ConductorTable& table, const CableAsked& cable) {
  if (table.use != cable.use) return false;
  if (cable.insulation && table.insulation &&
      std::abs(inKelvins(*cable.insulation - *table.insulation)) > 0.5)
    return false;
  if (!cable.method.empty() && !table.method.empty() && table.method != cable.method) return false;
  return table.use != CableUse::Cord || table.loaded >= std::min(cable.loaded, 3);
}

// Which of two tables speaks of this cable. A cable whose insulation or method is not stated gets
// the first building-wire table's figure, as that is the usual one, and the least of the cords'. A
// table for more loaded conductors serves fewer, if none is made for them.
bool isNearer(const CableAsked& cable, const Ampacity& one, const Ampacity& than) {
  if (cable.insulation && one.table->insulation.has_value() != than.table->insulation.has_value())
    return one.table->insulation.has_value();
  const auto ofMethod = [&](const Ampacity& any) { return any.table->method == cable.method; };
  if (ofMethod(one) != ofMethod(than)) return ofMethod(one);
  if (one.table == than.table) return one.row->upTo.has_value();
  if (one.table->loaded != than.table->loaded) return one.table->loaded < than.table->loaded;
  return cable.use == CableUse::Cord && one.allowed < than.allowed;
}

// What is taken off for heat, for a drum and for many conductors; what no table knows is named.
void derate(const CircuitRules& rules, const CableAsked& cable, Ampacity& found) {
  if (cable.ambient) {
    // A listed set has its label and nothing else.
    const auto insulation =
        found.table->use == CableUse::Cord ? cable.insulation : std::optional<Temperature>();
    const auto factor = ambientFactorOf(*found.table, *cable.ambient, insulation);
    found.ambientFactor = factor.value_or(1.0);
    if (!factor)
      found.lacks = Told(TOLD("Phrases", "its table is for up to %1 and has no factor for %2"),
                         amount(found.table->ambient), amount(*cable.ambient));
  }
  if (cable.layersOnDrum > 0) {
    const auto layers = static_cast<std::size_t>(cable.layersOnDrum);
    const bool known = rules.drum && !rules.drum->layers.empty();
    // Nothing published is nothing granted.
    found.drumFactor =
        known ? rules.drum->layers[std::min(layers, rules.drum->layers.size()) - 1] : 0.0;
  }
  if (cable.loaded > 3) {
    const auto row = std::find_if(
        rules.adjustments.begin(), rules.adjustments.end(),
        [&](const Adjustment& a) { return cable.loaded >= a.from && cable.loaded <= a.upTo; });
    if (row == rules.adjustments.end()) {
      found.lacks = Told(TOLD("Phrases", "no factor for %1 loaded conductors is at hand"),
                         Count{cable.loaded});
    } else {
      found.manyFactor = row->factor;
    }
  }
  found.allowed = found.factor() * found.row->ampacity;
}

// Rows that a cable of this length may be compared with, the nearest first in mind.
class Nearest {
 public:
  explicit Nearest(const CableAsked& cable) : cable_(cable) {}
  void see(const ConductorRow& row) {
    if (row.upTo && cable_.length > *row.upTo) {
      if (sameSize(row.area, cable_.area))
        shorter_ = Told(TOLD("Phrases", "%1 up to %2"), Verbatim{row.size}, Verbatim{row.upToText});
      return;
    }
    const double apart = std::abs(std::log(static_cast<double>(row.area / cable_.area)));
    if (apart < closest_) {
      closest_ = apart;
      size_ = Told::just(Verbatim{row.size});
    }
    if (row.area > cable_.area && apart < closestThicker_) {
      closestThicker_ = apart;
      thicker_ = Told::just(Verbatim{row.size});
    }
  }
  // A size that was refused for its length gets a thicker one named, or a shorter run.
  Told text() const {
    if (shorter_.empty()) return size_;
    return thicker_.empty() ? shorter_ : Told(TOLD("Phrases", "%1, or %2"), thicker_, shorter_);
  }

 private:
  const CableAsked& cable_;
  double closest_ = 1e9, closestThicker_ = 1e9;
  Told size_, thicker_, shorter_;
};

}  // namespace

std::optional<Ampacity> ampacity(const CircuitRules& rules, const CableAsked& cable,
                                 Told& nearest) {
  std::optional<Ampacity> best;
  Nearest near(cable);
  for (const ConductorTable& table : rules.conductors) {
    if (!serves(table, cable)) continue;
    for (const ConductorRow& row : table.rows) {
      near.see(row);
      if (!sameSize(row.area, cable.area)) continue;
      if (row.upTo && cable.length > *row.upTo) continue;
      Ampacity found{.table = &table, .row = &row, .allowed = row.ampacity};
      derate(rules, cable, found);
      if (!best || isNearer(cable, found, *best)) best = found;
    }
  }
  nearest = near.text();
  return best;
}

Told statusWords(Status status) {
  switch (status) {
    case Status::Seen:
      return Told(TOLD("Phrases", "read"));
    case Status::Computed:
      return Told(TOLD("Phrases", "computed"));
    case Status::Memory:
      return Told(TOLD("Phrases", "from memory, check"));
  }
  return {};
}

}  // namespace rigs
