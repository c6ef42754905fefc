// SPDX-License-Identifier: GPL-3.0-or-later
// How long does it take to chill? Declared in words.hpp: howLongChills().
#pragma once

#include <cstddef>
#include <optional>

#include "gui/telling/case.hpp"
#include "rigs/answers/chilling.hpp"

namespace gui::telling {

// Null for a rig whose day has no finished wort, or where nobody asked.
const rigs::ChillAnswer* chillOf(const Case& of, std::size_t rig);

using rigs::chillSpan;
using rigs::ChillSpan;
// "9 min"; "22 to 45 min".
rigs::Told chillSpanText(const ChillSpan& span);
// What it is chilled to: in one pass about what it leaves at.
rigs::Amount chilledToText(const rigs::ChillAnswer& chill);

Table chillTable(const Case& of);
// Wort over time of each rig as it is planned; of a coil the other way thin, and for still wort the
// band's slow end.
Picture chillPicture(const Case& of);

}  // namespace gui::telling
