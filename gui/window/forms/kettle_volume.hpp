// SPDX-License-Identifier: GPL-3.0-or-later
// The volume of a kettle as a way to state its size: a plan says diameter and height.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "gui/window/forms/plan_edits.hpp"
#include "gui/window/forms/plan_field.hpp"
#include "physics/units.hpp"

namespace gui {

// Of the rig's cylinder, as far as the plan or what the rig is from says both its sizes.
std::optional<physics::Volume> kettleVolume(const rigs::Texts& texts, std::size_t rig,
                                            const rigs::Texts& inherited);

// The document with a kettle of that volume. It keeps the shape it had, as high for its width, and
// is as high as it is wide where none was known; in inches where its width is, else
// in millimetres. Nothing where that is no kettle's volume, which is told.
std::optional<std::string> withKettleVolume(const std::string& document, const FieldOwner& owner,
                                            std::string_view typed, rigs::Problems& problems);

// Between diameter, height and wall.
PlanField kettleVolumeField();

}  // namespace gui
