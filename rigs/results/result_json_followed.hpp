// SPDX-License-Identifier: GPL-3.0-or-later
// How a day goes on, for programs: one line. Always in SI: every key names its unit.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "rigs/answers/day_ahead.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/readings/reading.hpp"
#include "rigs/results/cautions.hpp"
#include "rigs/words/told.hpp"

namespace rigs {

// Of the format; in its first key.
inline constexpr int kFollowedVersion = 1;

// `actions` are what is done at each that comes, in its order. Ends with a line feed, and has none
// within. Figures that are not known are left out.
std::string followedJson(const Plan& plan, std::size_t rig,
                         const std::vector<readings::Reading>& read, const Followed& followed,
                         const std::vector<Told>& actions, const std::vector<Caution>& cautions);

}  // namespace rigs
