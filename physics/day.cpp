// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/day.hpp"

#include <algorithm>

namespace physics {

bool BrewDay::startsBoiling() const {
  const Stage* heating = find(StageKind::HeatingToBoil);
  return heating && heating->last >= boilingPoint;
}

const Stage* BrewDay::find(StageKind kind) const {
  const auto found = std::find_if(stages.begin(), stages.end(),
                                  [&](const Stage& stage) { return stage.kind == kind; });
  return found == stages.end() ? nullptr : &*found;
}

}  // namespace physics
