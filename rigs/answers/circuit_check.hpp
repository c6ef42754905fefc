// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan says about circuits, against the tables of its region.
#pragma once

#include "rigs/documents/problems.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

// Outlets that are not there: a warning each, with its place. Nothing else of a circuit stops a
// plan: what no table knows is in its verdict.
void checkCircuits(const Plan& plan, Problems& problems);

}  // namespace rigs
