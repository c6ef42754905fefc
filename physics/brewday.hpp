// SPDX-License-Identifier: GPL-3.0-or-later
// One rig's brew day: strike, mash, heating, boil, stage by stage.
#pragma once

#include "physics/batch.hpp"
#include "physics/day.hpp"
#include "physics/rig.hpp"
#include "physics/units.hpp"

namespace physics {

// Preconditions (asserted where cheap): the rig's quantities positive, fractions 0-1, rests
// between the ice point and boiling, at most 48 h a stage. A result that is not finished() ends
// with the stage that could not be.
BrewDay simulate(const Rig& rig, const Batch& batch, const Place& place,
                 const SimulationOptions& options = {});

}  // namespace physics
