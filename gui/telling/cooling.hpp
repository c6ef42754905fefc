// SPDX-License-Identifier: GPL-3.0-or-later
// How far does it cool? Declared in words.hpp: howFarCools().
#pragma once

#include <cstddef>

#include "gui/telling/case.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

// Its night, and the heat-up that follows on a day's own: nothing for a rig that has none.
rigs::Told nightText(const Case& of, std::size_t rig);
// Readings, hot holding and what follows: one table, by the name of "night" in spreadsheets.
Table nightTable(const Case& of);
// The mash of each rig while it is left alone. What is only supposed is drawn where it is asked
// for, thin and under its own name.
Picture coolingPicture(const Case& of);

}  // namespace gui::telling
