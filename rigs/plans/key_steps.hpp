// SPDX-License-Identifier: GPL-3.0-or-later
// From a value to the next sensible one, as a hand on the arrow keys or on a slider wants it: in
// the unit that it is written in, within what the key accepts.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "rigs/plans/keys.hpp"

namespace rigs {

// Whether a value of the key can be stepped at all: numbers, with a unit or without one.
bool hasSteps(const Key& key);

// `steps` single steps up, or down where it is negative. A step is 1, 2 or 5 times a power of ten:
// a twentieth to a fiftieth of the value, whole degrees, shares of 1 or 5 %, times of 1 or 5
// minutes; its end is a multiple of it, so that 66.7 °C goes to 67 °C, and the same number of
// steps back leads back from there. At an end of the range it stays. Nothing where the text is no
// number in range.
std::optional<std::string> stepped(const Key& key, std::string_view text, int steps);

// What a slider goes through: steps from a little to a lot of what people have, and among them the
// value itself, with which it begins.
struct Slide {
  std::vector<std::string> values;  // in the unit of the value, ascending
  std::size_t at = 0;
};
// Nothing but for the ten values that people play with: the element's power, the batch, the boil
// and its power, how far the lid is open in it, jacket, cable, room, water and altitude.
std::optional<Slide> slideOf(const Key& key, std::string_view text);

}  // namespace rigs
