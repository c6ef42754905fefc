// SPDX-License-Identifier: GPL-3.0-or-later
// Fields of what feeds a rig: circuit, outlet, cable, a second element, a pump.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "gui/window/forms/plan_field.hpp"

namespace gui {

FieldSection supplySection();
FieldSection cableUseSection();
FieldSection secondElementSection();

// For choices: regions with rules, and the edition that is bundled for one ("": of all).
std::vector<std::string> regions(std::string_view);
std::vector<std::string> editionsOf(std::string_view region);

}  // namespace gui
