// SPDX-License-Identifier: GPL-3.0-or-later
// How long does it take? Declared in words.hpp: howLong().
#pragma once

#include <cstddef>

#include "gui/telling/case.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

// "4 h 25 min from 09:00 to 13:25."; of a day that stops, with what stops it in a word.
rigs::Told dayText(const Case& of, std::size_t rig);
// The wort of every rig over its day, with the day's events.
Picture temperaturePicture(const Case& of);
// Every rig's stages one after another.
Picture stagePicture(const Case& of);

}  // namespace gui::telling
