// SPDX-License-Identifier: GPL-3.0-or-later
// What each reading of the rules leaves a rig's circuits, and the day with it. Codes that leave
// the same are named together.
#pragma once

#include "gui/telling/case.hpp"
#include "gui/telling/circuit_rules.hpp"

namespace gui::telling {

// Rig by rig: the largest element under each reading; the shortest day with one and with two of
// them; the rig's own power over two circuits.
void sayReadings(Answer& answer, const Case& of);
// The same figures, as groups of rows.
void addReadings(RigTable& table, const Case& of, Conditions& conditions);

}  // namespace gui::telling
