// SPDX-License-Identifier: GPL-3.0-or-later
// What "heatledger help" says.
#pragma once

#include <cstddef>
#include <string>

#include "gui/terminal/commands.hpp"
#include "rigs/words/language.hpp"

namespace gui {

// Of all commands, or of one with its options and examples; `width` in columns.
std::string helpText(const HelpAsked& asked, std::size_t width, const rigs::Reader& reader);

}  // namespace gui
