// SPDX-License-Identifier: GPL-3.0-or-later
// Fields of insulation, which stand in more than one place of a plan.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "gui/window/forms/plan_field.hpp"

namespace gui {

// Two fields a layer: material, and thickness or R.
void addLayers(FieldSection& section, const std::string& list, std::size_t count);
PlanField outsideField(const std::string& jacket);

// For choices: what is made of it, by the catalogue.
std::vector<std::string> layerMaterials(std::string_view);

}  // namespace gui
