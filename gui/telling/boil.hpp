// SPDX-License-Identifier: GPL-3.0-or-later
// Does it boil hard enough? Declared in words.hpp: boilsEnough().
#pragma once

#include <cstddef>

#include "gui/telling/case.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

// What boils off, and how hard that is; or why nothing does.
rigs::Told boilText(const Case& of, std::size_t rig);
// The same where its verdict stands above, and with it whether it is on the edge.
rigs::Told boilInBrief(const Case& of, std::size_t rig);

}  // namespace gui::telling
