// SPDX-License-Identifier: GPL-3.0-or-later
// How far does it cool? Declared in words.hpp: howFarCools().
#pragma once

#include "gui/telling/case.hpp"

namespace gui::telling {

// A full mash left unplugged, with each rig's jacket and without, over hours. Lines only where the
// solution has them.
Picture coolingPicture(const Case& of);

}  // namespace gui::telling
