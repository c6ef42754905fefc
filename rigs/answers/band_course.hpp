// SPDX-License-Identifier: GPL-3.0-or-later
// The wort's temperature over the day, with its band.
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

#include "rigs/answers/bands.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

struct BandCoursePoint {
  physics::Time time;  // since the day began
  Band<physics::Temperature> wort;
};
inline constexpr std::size_t kDaysOfACourse = 128;  // a picture shows no more
// At even times until the plan's own day is over; a day that is over before that stays as it ended,
// and so does one that stops. Point by point: none of its lines need be any day's. Empty where
// `stop` said so.
std::optional<std::vector<BandCoursePoint>> bandCourse(const Plan& plan, std::size_t rig,
                                                       const std::function<bool()>& stop = {},
                                                       std::size_t days = kDaysOfACourse);

}  // namespace rigs
