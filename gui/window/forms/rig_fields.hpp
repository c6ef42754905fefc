// SPDX-License-Identifier: GPL-3.0-or-later
// Fields of a rig: element, circuit, kettle, lid, jacket, stand, hose.
#pragma once

#include <cstddef>
#include <vector>

#include "gui/window/forms/plan_field.hpp"

namespace gui {

// How many layers the forms offer in each of a rig's lists.
struct RigLists {
  std::size_t side = 1, base = 1, lid = 1, hose = 1;

  bool operator==(const RigLists&) const = default;
};
std::vector<FieldSection> rigSections(const RigLists& lengths);

}  // namespace gui
