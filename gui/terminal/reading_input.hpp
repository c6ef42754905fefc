// SPDX-License-Identifier: GPL-3.0-or-later
// What was typed of a file of readings, for whoever reads it.
#pragma once

#include <cstddef>

#include "gui/terminal/commands.hpp"
#include "gui/terminal/plan_input.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/readings/layout.hpp"

namespace gui {

rigs::readings::Corrections correctionsFrom(const ReadingOptions& typed);
// Where wort boils in that place, by the plan's own day.
physics::Temperature boilingIn(const rigs::Plan& plan, std::size_t rig);

// Readings are kept from when the day began: of a plan whose days are solved backwards, with that
// beginning, on the day it was. A rig that never comes to what is to be ready has none: an error.
void beginAsSolved(PlanInput& input, std::size_t rig);

}  // namespace gui
