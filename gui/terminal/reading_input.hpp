// SPDX-License-Identifier: GPL-3.0-or-later
// What was typed of a file of readings, for whoever reads it.
#pragma once

#include <cstddef>
#include <string>

#include "gui/terminal/commands.hpp"
#include "gui/terminal/finished.hpp"
#include "gui/terminal/plan_input.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/readings/layout.hpp"

namespace gui {

rigs::readings::Corrections correctionsFrom(const ReadingOptions& typed);
// "night.csv"; "-" of standard input.
std::string nameOfReadings(const Request& request);
// The whole file, or all of standard input. Throws rigs::FileError.
std::string textOfReadings(const Request& request);
// See rigs::begunToBeRead().
void beginAsSolved(PlanInput& input, std::size_t rig);

// What is wrong with options, plan and readings: exit code 2, in the form that was asked for. Where
// nothing is, the remarks alone, as the complaint.
Finished judge(const Request& request, const Audience& audience, const PlanInput& input,
               const rigs::Problems& ofReadings);

}  // namespace gui
