// SPDX-License-Identifier: GPL-3.0-or-later
// What a person wants to know of a rig before anything else, in one line: what its day comes to, by
// the clock and in money, and whether its circuit can carry it.
#pragma once

#include <cstddef>

#include "gui/telling/case.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

// "rolls steadily from 12:08, over at 13:18, 0.85 USD; 13.8 A is too much for long use of its 15 A
// circuit". To stand behind the rig's name: without a full stop. Where nobody can say whether it
// rolls, or on what its circuit's verdict hangs in full, that much is said.
rigs::Told verdictText(const Case& of, std::size_t rig);
// Of one of its circuits alone: "9.57 A fits its 16 A circuit".
rigs::Told circuitVerdict(const Case& of, std::size_t rig, std::size_t circuit);

}  // namespace gui::telling
