// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/surely_begins.hpp"

#include <algorithm>
#include <cstddef>

#include "rigs/answers/begins.hpp"
#include "rigs/answers/day_figures.hpp"

namespace rigs {

using namespace physics;

namespace {

// The first makes up for what mashing in cost: some minutes, whose own scatter is none to tell.
std::ptrdiff_t ramps(const BrewDay& day) {
  return std::count_if(day.stages.begin(), day.stages.end(),
                       [](const Stage& stage) { return stage.kind == StageKind::Ramp; });
}

}  // namespace

std::optional<Time> beginsForNineOfTen(const Plan& plan, const BrewDay& day,
                                       const ChillAnswer* chill, const Bands& bands) {
  const auto until = plan.ready ? timeUntil(plan, day, chill) : std::nullopt;
  if (!until) return std::nullopt;
  // What comes after a moment that has a band lasts as long as it was stated.
  const auto after = [&](const Band<Time>& band,
                         const std::optional<Time>& moment) -> std::optional<Time> {
    if (!band.high || !moment) return std::nullopt;
    return plan.ready->at - (*band.high + (*until - *moment));
  };
  switch (plan.ready->what) {
    case Milestone::EndOfMash:
      if (ramps(day) > 1) return std::nullopt;
      [[fallthrough]];
    case Milestone::StrikeWater:
      return after(bands.waterReady, endOf(day, StageKind::Strike));
    case Milestone::Boil:
      return after(bands.boilBegins, *until);
    case Milestone::EndOfBoil:
    case Milestone::Pitching:
      // Days that do not roll end too, and are none of these.
      if (!bands.boilBegins.high) return std::nullopt;
      return after(bands.boilBegins, endOf(day, StageKind::HeatingToBoil));
  }
  return std::nullopt;
}

}  // namespace rigs
