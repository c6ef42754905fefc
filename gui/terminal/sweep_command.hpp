// SPDX-License-Identifier: GPL-3.0-or-later
// Every combination of what is varied, a row for each rig, written as they are found.
#pragma once

#include "gui/terminal/commands.hpp"
#include "gui/terminal/finished.hpp"
#include "rigs/documents/problems.hpp"

namespace gui {

// Writes to standard output itself; `output` stays empty. A signal to end (SIGINT, SIGTERM) ends it
// behind a whole row, with 128 and the signal as exit code. 2 also where no combination is a plan.
// Throws rigs::FileError where the plan cannot be read.
Finished sweepPlan(const Request& request, const Audience& audience, rigs::Problems ofOptions);

}  // namespace gui
