// SPDX-License-Identifier: GPL-3.0-or-later
// A brew day while it goes on: whether what was read last was to be expected, what comes next and
// when, and what to heed at once. From days that go with the readings, by the clock on the wall.
#pragma once

#include <vector>

#include "physics/units.hpp"
#include "rigs/answers/day_ahead.hpp"
#include "rigs/answers/day_course.hpp"
#include "rigs/answers/learned.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/readings/reading.hpp"

namespace rigs {

// A plan whose mash was left alone for as long as it was, where both ends of that were written
// down: what is read afterwards is then of that day. Else the plan as it is.
Plan withTheNightThatWas(Plan plan, const std::vector<readings::Reading>& read);

// `planned` are plannedCourses() of the rig. `learned`, with courses, is of these readings; nullptr
// where there are none that tell anything yet; it may be of withTheNightThatWas(). Takes no time to
// speak of.
Followed followed(const Plan& plan, const std::vector<DayCourse>& planned,
                  const std::vector<readings::Reading>& read, const Learned* learned,
                  physics::Time now);

}  // namespace rigs
