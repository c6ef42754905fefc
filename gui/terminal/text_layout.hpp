// SPDX-License-Identifier: GPL-3.0-or-later
// Text in columns of a terminal: how wide it is, where it may be broken, how it is padded.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "gui/telling/plain_text.hpp"

namespace gui {

// Columns that UTF-8 text takes: nothing for combining marks, two for East Asian wide characters
// and pictographs (Unicode Standard Annex 11, by block).
std::size_t displayWidth(std::string_view text);

std::string padded(std::string_view text, std::size_t width);         // spaces after
std::string paddedInFront(std::string_view text, std::size_t width);  // spaces before

// Lines of at most `width` columns (at least 1), broken at spaces, but never between a number and
// its unit. A word wider than a line is broken anywhere.
std::vector<std::string> wrapped(std::string_view text, std::size_t width);

// For whatever a person wrote: no control character of it reaches a terminal.
using telling::plainText;

}  // namespace gui
