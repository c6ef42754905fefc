// SPDX-License-Identifier: GPL-3.0-or-later
// How a rig's letter is written wherever people read it.
#pragma once

#include <cstddef>
#include <string>

namespace gui::telling {

// "(a)" of slot 0, "(b)", ... "(z)", "(aa)".
std::string letter(std::size_t slot);

}  // namespace gui::telling
