// SPDX-License-Identifier: GPL-3.0-or-later
// What to heed at once on a day that goes on; see day_ahead.hpp.
#pragma once

#include <functional>
#include <vector>

#include "rigs/answers/course_clock.hpp"
#include "rigs/answers/day_ahead.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/readings/reading.hpp"

namespace rigs {

// Of a day's wort at a moment of the clock: with what the laws are off by in that day.
using LawsGrown =
    std::function<physics::Temperature(const DayCourse&, physics::Temperature, physics::Time)>;

struct FollowedSoFar {
  const Plan& plan;
  const std::vector<readings::Reading>& read;
  const Learned* learned;
  const CourseClock& clock;
  const Followed& found;  // without its alarms
  LawsGrown lawsGrown;
};

// What can hurt somebody first.
std::vector<Alarm> alarmsOf(const FollowedSoFar& from);

}  // namespace rigs
