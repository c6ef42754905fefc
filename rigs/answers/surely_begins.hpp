// SPDX-License-Identifier: GPL-3.0-or-later
// When a rig must begin, so that what is to be ready nearly always is.
#pragma once

#include <optional>

#include "physics/brewday.hpp"
#include "rigs/answers/bands.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

struct ChillAnswer;

// When to begin, so that it is ready on 9 of 10 such days. Empty where nothing is to be ready,
// where more than 1 day in 10 never comes to it, and for the end of a mash of several rests: no
// band is of that. What chilling may take longer than told is not among it.
std::optional<physics::Time> beginsForNineOfTen(const Plan& plan, const physics::BrewDay& day,
                                                const ChillAnswer* chill, const Bands& bands);

}  // namespace rigs
