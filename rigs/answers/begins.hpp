// SPDX-License-Identifier: GPL-3.0-or-later
// The clock solved backwards: when a rig begins, so that what is to be ready is ready. A day's
// times depend on no clock, since room and water stay as they are stated; so the beginning is the
// wanted clock time less the time until then, exactly.
#pragma once

#include <cstddef>
#include <optional>

#include "physics/brewday.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

struct ChillAnswer;

// Until what is to be ready is, since the day began. Empty for a day that never comes to it: what
// does not roll has no boil, no end of one and no wort to pitch. Chilling counts with its slow end,
// and needs `chill`. Precondition: a plan that wants something ready.
std::optional<physics::Time> timeUntil(const Plan& plan, const physics::BrewDay& day,
                                       const ChillAnswer* chill);

// Clock time, from midnight of the day that something is to be ready on; below 0 on a day before
// it. Without such a wish when the plan's day starts. Empty for a rig that never comes to it.
std::optional<physics::Time> beginsAt(const Plan& plan, const physics::BrewDay& day,
                                      const ChillAnswer* chill);

// The plan with this rig's beginning as the start of its day, for whatever is compared with the
// rig's own day: all of that begins when the rig does. As it is where it needs no solving, or where
// the rig never comes to what is to be ready: then start() is empty.
Plan asBegun(const Plan& plan, std::size_t rig);

}  // namespace rigs
