// SPDX-License-Identifier: GPL-3.0-or-later
// What do time and heat do to the wort? Declared in words.hpp: howWortChanges().
#pragma once

#include <array>
#include <cstddef>
#include <vector>

#include "gui/telling/case.hpp"
#include "rigs/answers/wort.hpp"

namespace gui::telling {

// Null for a rig that neither mashes to the end nor has finished wort, or where nobody asked.
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

// Of the mash: where all rigs' are alike said once, else of each; "" where there is none.
bool isColdMash(const physics::MashConversion& mash);
rigs::Told mashLimitShortly(const physics::MashConversion& mash);
// How far their wort ferments: the headline of a day without a boil. Nothing where nobody knows.
std::vector<rigs::Told> mashInShort(const Case& of);
void sayMashOfAll(Answer& answer, const Case& of);
rigs::Told mashOfRigText(const Case& of, std::size_t rig);
rigs::Told mashCertaintyText(const Case& of);
void addMashRows(RigTable& table, const Case& of);
std::vector<rigs::Told> mashNotes();

}  // namespace gui::telling
