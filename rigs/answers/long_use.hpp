// SPDX-License-Identifier: GPL-3.0-or-later
// Which rules apply to a circuit, and what they grant to use of hours.
#pragma once

#include <cstddef>
#include <vector>

#include "physics/units.hpp"
#include "rigs/circuits/rules.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

// The rules that apply: a rules file's, the stated region's, or all for the circuit's own region.
// Empty where nothing applies.
std::vector<const CircuitRules*> rulesFor(const Plan& plan, const CircuitDetails& details);

// The least share of a circuit's rating that any of them grants to long use; 1 where none says.
double shareGrantedBy(const std::vector<const CircuitRules*>& all);

// The share of a circuit's rating that the plan states for long use, or what the rules that judge
// it grant, whichever is less. `circuit` is 0, or 1 where the rig has a second.
double longUseShare(const Plan& plan, const RigPlan& rig, std::size_t circuit);
// Of all that the circuit carries: what is not the rig's takes its own current first, since nobody
// knows its times, and the share is of what that leaves.
physics::Current longUseCurrent(const Plan& plan, const RigPlan& rig, std::size_t circuit = 0);
// Carries more than that.
bool overloadsForLong(const Plan& plan, const RigPlan& rig, std::size_t circuit = 0);

}  // namespace rigs
