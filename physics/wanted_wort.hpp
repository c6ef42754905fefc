// SPDX-License-Identifier: GPL-3.0-or-later
// How much water a wanted volume of wort takes.
#pragma once

#include <functional>

#include "physics/day.hpp"
#include "physics/units.hpp"

namespace physics {

// The whole day with this much water.
using DayWith = std::function<BrewDay(Mass water)>;

// The day that leaves `wanted` of cold wort, to within `near`, found from a first guess of the
// water: steps along the chord until one day leaves too little and another too much, then TOMS 748,
// or halves where one of the two stops in an earlier stage. Usually three or four days. Where no
// water does, the nearest day that gets to its end, or else the nearest, with BrewDay::unmet saying
// what is in the way.
BrewDay dayThatLeaves(Volume wanted, const Batch& batch, Mass guess, Volume near,
                      const DayWith& dayWith);

}  // namespace physics
