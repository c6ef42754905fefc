// SPDX-License-Identifier: GPL-3.0-or-later
// What was typed of a file of readings, for whoever reads it.
#pragma once

#include <cstddef>

#include "gui/terminal/commands.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/readings/layout.hpp"

namespace gui {

rigs::readings::Corrections correctionsFrom(const ReadingOptions& typed);
// Where wort boils in that place, by the plan's own day.
physics::Temperature boilingIn(const rigs::Plan& plan, std::size_t rig);

}  // namespace gui
