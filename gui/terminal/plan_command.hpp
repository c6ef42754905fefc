// SPDX-License-Identifier: GPL-3.0-or-later
// Commands about a plan: it is read, changed by options, checked, and its questions are answered.
#pragma once

#include "gui/telling/drawing.hpp"
#include "gui/terminal/commands.hpp"
#include "gui/terminal/finished.hpp"
#include "rigs/documents/problems.hpp"

namespace gui {

// `ofOptions` holds what is wrong with options already; all problems are told at once. `draw` is
// nullptr in the program that cannot. Throws rigs::FileError.
Finished askAboutPlan(const Request& request, const Audience& audience, rigs::Problems ofOptions,
                      telling::Draw draw);

}  // namespace gui
