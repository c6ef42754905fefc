// SPDX-License-Identifier: GPL-3.0-or-later
// What does it cost? Declared in words.hpp: whatCost().
#pragma once

#include "gui/telling/case.hpp"

namespace gui::telling {

// What a batch costs with every rig, stage by stage; its energy where the plan gives no price.
Picture costPicture(const Case& of);
// What a batch costs by the hour it begins. Precondition: a tariff by the hour.
Picture startPicture(const Case& of);

}  // namespace gui::telling
