// SPDX-License-Identifier: GPL-3.0-or-later
// What a screen reader is told of a choice. Qt on X and Wayland gives the chosen value as its name
// and leaves the label to a relation that not every reader follows.
#pragma once

namespace gui {

// From now on a PlanComboBox is called by its label, and what is chosen is its value. Once is
// enough; more does nothing.
void nameChoicesByTheirLabels();

}  // namespace gui
