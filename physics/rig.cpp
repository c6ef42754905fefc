// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/rig.hpp"

namespace physics {

ElectricalLoad electricalLoad(const Rig& rig) {
  const ElectricalLoad first = electricalLoad(rig.element, rig.supply);
  if (!rig.second) return first;
  return together(first, electricalLoad(rig.second->element, rig.second->supply));
}

}  // namespace physics
