// SPDX-License-Identifier: GPL-3.0-or-later
// The wort's temperature over a day of which something was read: as it was expected before, and as
// it is with the readings.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "rigs/answers/band_course.hpp"
#include "rigs/answers/day_course.hpp"
#include "rigs/answers/learned.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/readings/readings_reader.hpp"

namespace rigs {

// What lines of readings are read against: the plan's clock, and where wort boils in its place.
readings::Setting settingOf(const Plan& plan, std::size_t rig, std::string name);

// Times are since the plan's day began, at even steps until the middle of its days is over; where
// an event was read, both bands are counted from the last one, as the readings are. `after` is
// empty where nothing was learned, and one line where only the likeliest day is known.
struct ReadCourse {
  std::vector<BandCoursePoint> before, after;
};
// `planned` are plannedCourses() of the rig. `learned`, with courses, is of these readings.
ReadCourse readCourse(const Plan& plan, const std::vector<DayCourse>& planned,
                      const std::vector<readings::Reading>& read, const Learned& learned);

// How much of the laws' own error has grown in at a moment of the clock: it takes hours from the
// last reading, and all of it counts where nothing was read. 0-1.
double lawsGrownIn(const std::vector<readings::Reading>& read, physics::Time at);

}  // namespace rigs
