// SPDX-License-Identifier: GPL-3.0-or-later
// What do time and heat do to the wort? Declared in words.hpp: howWortChanges().
#pragma once

#include <array>
#include <cstddef>

#include "gui/telling/case.hpp"
#include "rigs/answers/wort.hpp"

namespace gui::telling {

// Null for a rig whose day has no finished wort, or where nobody asked.
const rigs::WortAnswer* wortOf(const Case& of, std::size_t rig);

// A part of the day from the mash's end on, in the order in which they come.
struct WortPart {
  rigs::Told name;
  rigs::HotStage rigs::BoiledWort::*stage;
  const char* result;  // where the result has it
};
std::array<WortPart, 4> wortParts();
// For hops, and for DMS.
Picture wortHopsPicture(const Case& of);
Picture wortSulfidePicture(const Case& of);
Table wortTable(const Case& of);

}  // namespace gui::telling
