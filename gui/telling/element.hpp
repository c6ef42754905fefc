// SPDX-License-Identifier: GPL-3.0-or-later
// What element do I need? What an element delivers, what it is enough for, and what its circuit
// says to that. Declared in words.hpp: whichElement().
#pragma once

#include <cstddef>
#include <vector>

#include "gui/telling/case.hpp"
#include "physics/sizing.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

// What reaches the vessel from the rig's element, or its two, on its supply.
rigs::Told elementText(const Case& of, std::size_t rig);
// Whether the rig's circuits bear it; nothing where there is nothing to warn about.
rigs::Told circuitText(const Case& of, std::size_t rig);
// Such a text with what is to be said about the circuit: in front of it, where one is overloaded.
rigs::Told besideCircuit(const Case& of, std::size_t rig, rigs::Told text);
// Which of the plan's goals the element is enough for, and which element would be for all of them.
// Never begins with "Enough" where the element overloads its circuit. Needs the rig's sizing.
rigs::Told enoughText(const Case& of, std::size_t rig);
// The same in a line or two, for pages about several questions: only what it is too little for.
rigs::Told enoughInShort(const Case& of, std::size_t rig);
// Whether the rig's circuits carry a power found by a search, and for how long.
rigs::Told carriesText(const Case& of, std::size_t rig, const physics::PowerAnswer& wanted);
// The largest batch and what stopped it there; nothing before it is searched for.
rigs::Told largestText(const Case& of, std::size_t rig);
// For a rig that does not boil: what would change it, one sentence each; and all in one.
std::vector<rigs::Told> whatWouldBoilTexts(const Case& of, std::size_t rig);
rigs::Told whatWouldBoilInShort(const Case& of, std::size_t rig);

// The largest element that the rig's first circuit carries, as rated at its supply's voltage.
physics::Power mostOnCircuit(const Case& of, std::size_t rig);
// By the name of "size" in spreadsheets.
Table elementTable(const Case& of);
// Time from mash to boil against element power, and what each circuit carries; and the same to
// strike where that takes a rig longer than wanted.
std::vector<Picture> elementPictures(const Case& of);

}  // namespace gui::telling
