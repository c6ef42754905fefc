// SPDX-License-Identifier: GPL-3.0-or-later
// What a rig and a finished day tell without a simulation.
#include <algorithm>

#include "physics/brewday.hpp"
#include "physics/water.hpp"
#include "physics/wort.hpp"

namespace physics {

ElectricalLoad electricalLoad(const Rig& rig) {
  const ElectricalLoad first = electricalLoad(rig.element, rig.supply);
  if (!rig.second) return first;
  return together(first, electricalLoad(rig.second->element, rig.second->supply));
}

Temperature boilingPoint(double extract, Pressure pressure) {
  return saturationTemperature(pressure) + boilingPointRise(extract, pressure);
}

const Stage* BrewDay::find(StageKind kind) const {
  const auto found = std::find_if(stages.begin(), stages.end(),
                                  [&](const Stage& stage) { return stage.kind == kind; });
  return found == stages.end() ? nullptr : &*found;
}

}  // namespace physics
