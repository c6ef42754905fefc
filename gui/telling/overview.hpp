// SPDX-License-Identifier: GPL-3.0-or-later
// All of it in short: the rigs side by side in the figures that decide, told against one of them.
// Declared in words.hpp: overview().
#pragma once

#include <cstddef>

#include "gui/telling/case.hpp"
#include "gui/telling/question.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

// Whom the others are compared with: the view's rig, or the first where a plan has fewer.
std::size_t baseOf(const Case& of);

// How one of a rig's circuits stands, in a word or two with its share of the rating: "fits, 60 %",
// "over: 136 %", "on conditions, 92 %". A state: never told as a difference.
rigs::Told circuitState(const Case& of, std::size_t rig, std::size_t circuit);
// Of the one of them that stands worst.
rigs::Told circuitState(const Case& of, std::size_t rig);
// The rig that stands worst on its circuit; that given where none stands worse.
std::size_t worstOnItsCircuit(const Case& of, std::size_t unlessWorseThan);

// Since when it rolls, by the clock, "perhaps" where nobody can say; else in a word what becomes of
// it.
Cell rollsAt(const Case& of, std::size_t rig);

}  // namespace gui::telling
