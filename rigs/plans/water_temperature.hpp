// SPDX-License-Identifier: GPL-3.0-or-later
// How hot something liquid may be that goes into an open vessel.
#pragma once

#include "physics/brewday.hpp"
#include "rigs/documents/json_cursor.hpp"
#include "rigs/words/told.hpp"

namespace rigs {

// Water boils at 99.97 C where its words say 100 C: what is as hot by its words may go in, as hot
// as that; and so for water as cold as it is drawn.
inline constexpr physics::TemperatureDifference kSameInWords = physics::kelvins(0.1);

// Whether it is no hotter than water boils at that place; otherwise a problem of "temperature" in
// the words of `notPossible` (what was stated, and where water boils), with that example.
bool isNoHotterThanBoiling(const JsonCursor& at, physics::Temperature stated,
                           const physics::Place& place, const Template<2>& notPossible,
                           Verbatim example);

}  // namespace rigs
