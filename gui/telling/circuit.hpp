// SPDX-License-Identifier: GPL-3.0-or-later
// Can the circuit carry it? Declared in words.hpp: circuitCarries().
#pragma once

#include "gui/telling/case.hpp"

namespace gui::telling {

// The current of every rig in percent of its circuit's rating, as means of the parts of a day.
Picture currentPicture(const Case& of);
// How the element works: what decides whether a load counts as a long one.
Picture dutyPicture(const Case& of);
// Load, duty, every code's verdict, what its readings leave, and the power on two circuits.
Table circuitTable(const Case& of);

}  // namespace gui::telling
