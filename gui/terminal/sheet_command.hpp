// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet to brew by: on the terminal, or as a page for paper and phone.
#pragma once

#include "gui/terminal/commands.hpp"
#include "gui/terminal/finished.hpp"
#include "gui/terminal/plan_input.hpp"

namespace gui {

// Nobody must take a sheet for the file's: what options changed stands beside its name.
rigs::Told changedBy(const Overrides& overrides);
// Of a plan without errors, and of its one rig or of the one that was asked for. Throws
// rigs::FileError.
Finished sheetOfPlan(const Request& request, const PlanInput& read, const Audience& audience);

}  // namespace gui
