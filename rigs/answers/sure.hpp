// SPDX-License-Identifier: GPL-3.0-or-later
// How sure is this? A rig's bands, what makes them wide, and its temperatures over the day.
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

#include "rigs/answers/band_causes.hpp"
#include "rigs/answers/band_course.hpp"
#include "rigs/answers/bands.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

struct SureAnswer {
  Bands bands;
  BandCauses causes;
  std::vector<BandCoursePoint> course;
};
// Some fifteen hundred days: `days`, a power of two, are those of a band; the rest takes no more
// than its usual. Empty where `stop` said so; it is asked between days, by several threads.
std::optional<SureAnswer> sure(const Plan& plan, std::size_t rig,
                               const std::function<bool()>& stop = {},
                               std::size_t days = kDaysOfABand);

}  // namespace rigs
