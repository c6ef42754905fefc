// SPDX-License-Identifier: GPL-3.0-or-later
// What a circuit is rated for against what hangs on it, by their name plates alone: with or without
// rules. No clause is claimed.
#pragma once

#include <cstddef>

#include "rigs/circuits/finding.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

// Of kind Rating, called "by name plates alone": all that its circuit then carries at the
// nominal voltage, the cable left out, and what the fuse or breaker does where the plan's rules
// know it. `circuit` is 0, or 1 where the rig has a second; the pump hangs on the first.
Finding nameplate(const Plan& plan, const RigPlan& rig, std::size_t circuit = 0);
// The worst of the rig's circuits.
Fit worstNameplate(const Plan& plan, const RigPlan& rig);

}  // namespace rigs
