// SPDX-License-Identifier: GPL-3.0-or-later
// Where does the heat go? Declared in words.hpp: whereHeat(). Here is one rig's day stage by stage:
// when, how warm, how full, and where every kilowatt-hour went.
#pragma once

#include <cstddef>

#include "gui/telling/case.hpp"
#include "physics/brewday.hpp"

namespace gui::telling {

// Stages are its columns, and the day the last; by the rig's letter and name in spreadsheets.
Table stageTable(const Case& of, std::size_t rig);
// Whether the day's ledger closes, and by how little it does not.
rigs::Told ledgerText(const physics::BrewDay& day);

}  // namespace gui::telling
