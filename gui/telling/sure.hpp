// SPDX-License-Identifier: GPL-3.0-or-later
// How sure is this? What eight of ten such days come to, and what makes that wide. Declared in
// words.hpp: howSure().
#pragma once

#include <cstddef>

#include "gui/telling/case.hpp"
#include "gui/telling/table.hpp"
#include "rigs/answers/bands.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

// "rolls on 17 of 20 such days".
rigs::Told rollsOnText(double share);

// "14:31–14:37" and the like of one rig, where 8 of 10 such days lie: nothing where its bands are
// not known, or where more than 1 in 10 never gets there.
Cell clockBand(const Case& of, std::size_t rig, rigs::Band<physics::Time> rigs::Bands::*band);
Cell boilOffBand(const Case& of, std::size_t rig);
Cell morningBand(const Case& of, std::size_t rig);
Cell fromWallBand(const Case& of, std::size_t rig);

// A column a rig: what 1 day in 10 is below, the middle, and what 1 in 10 is above.
Table sureTable(const Case& of);
// What makes the bands of one rig wide: a row for each unknown, in percent.
Table causesTable(const Case& of, std::size_t rig);
// The wort of one rig over the day, with the edges of its band.
Picture surePicture(const Case& of, std::size_t rig);

// "the heat that the element delivers".
rigs::Told unknownName(rigs::Unknown what);

}  // namespace gui::telling
