// SPDX-License-Identifier: GPL-3.0-or-later
// What the fields of a form are called, and what they mean: as the table of the plan's keys has it.
#pragma once

#include <string>
#include <vector>

#include "gui/window/forms/plan_field.hpp"

namespace gui {

// The sections with label, meaning and usual text of each field, in the reader's language. The
// fields' places begin at `root`: "" for the plan, "/rigs/*" for a rig.
std::vector<FieldSection> inWords(std::vector<FieldSection> sections, const std::string& root);

// What a form calls the value at a place of a plan ("/rigs/0/element/power"); "" where none shows
// it.
QString labelAt(const std::string& place);

}  // namespace gui
