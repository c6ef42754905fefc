// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan says about circuits, against the tables of its region.
#pragma once

#include "rigs/documents/problems.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

// Voltages, outlets and conductors that are not there. Appends errors, each with its place.
void checkCircuits(const Plan& plan, Problems& problems);

}  // namespace rigs
