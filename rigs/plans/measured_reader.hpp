// SPDX-License-Identifier: GPL-3.0-or-later
// What a rig's own readings said of it, as the plan keeps it.
#pragma once

#include <optional>

#include "rigs/plans/layers.hpp"
#include "rigs/plans/rig_plan.hpp"

namespace rigs {

struct MeasuredRead {
  double lossFactor = 1.0, evaporationFactor = 1.0;
  std::optional<Measured> measured;
};
// Nullopt where any of it is wrong, which is told.
std::optional<MeasuredRead> readMeasured(const Layers& rig);

// So many standard deviations are as far as 8 in 10 lie to either side: "within 8 %".
double spreadOfWithin(double share);
double withinOfSpread(double spread);

}  // namespace rigs
