// SPDX-License-Identifier: GPL-3.0-or-later
// The wort's temperature over a day of which something was read: as it was expected before, and as
// it is with the readings.
#pragma once

#include <optional>
#include <vector>

#include "rigs/answers/band_course.hpp"
#include "rigs/answers/day_course.hpp"
#include "rigs/answers/learned.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/readings/reading.hpp"

namespace rigs {

// Times are since the plan's day began, at even steps until the middle of its days is over; where
// an event was read, both bands are counted from the last one, as the readings are. `after` is
// empty where nothing was learned.
struct ReadCourse {
  struct Stage {
    physics::Time from, until;
  };
  std::vector<BandCoursePoint> before, after;
  // Since the last event that was read until the stage that began with it is over, as expected.
  std::optional<Stage> stage = {};
  bool isSure = true;  // else `after` is the likeliest day alone, and no band
};
// `planned` are plannedCourses() of the rig. `learned`, with courses, is of these readings.
ReadCourse readCourse(const Plan& plan, const std::vector<DayCourse>& planned,
                      const std::vector<readings::Reading>& read, const Learned& learned);

// How much of the laws' own error has grown in at a moment of the clock: it takes hours from the
// last reading. 0-1; none where nothing was read, for unknowns are as wide as they get then.
double lawsGrownIn(const std::vector<readings::Reading>& read, physics::Time at);
// A wort of that day with as much of that error as the day has it.
physics::Temperature withLawsGrown(const DayCourse& day, physics::Temperature wort,
                                   const Plan& plan, const std::vector<readings::Reading>& read,
                                   physics::Time at);

}  // namespace rigs
