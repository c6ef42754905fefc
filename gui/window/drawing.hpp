// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures and reports without a window or a display.
#pragma once

#include <string>

#include "gui/terminal/program.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace gui {

// The plan is free of errors. Throws rigs::FileError.
Finished draw(const Request& request, const rigs::Plan& plan, const PlanText& text,
              rigs::UnitSystem units);

}  // namespace gui
