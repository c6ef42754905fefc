// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/begins.hpp"

#include <algorithm>

#include "rigs/answers/chilling.hpp"
#include "rigs/answers/day_figures.hpp"

namespace rigs {
namespace {

using namespace physics;

bool ofTheMash(StageKind kind) {
  return kind == StageKind::MashingIn || kind == StageKind::Ramp || kind == StageKind::Rest ||
         kind == StageKind::UnpluggedRest;
}

std::optional<Time> endOfTheMash(const BrewDay& day) {
  const auto last = std::find_if(day.stages.rbegin(), day.stages.rend(),
                                 [](const Stage& stage) { return ofTheMash(stage.kind); });
  return last != day.stages.rend() && finished(day, *last) ? std::optional(last->end)
                                                           : std::nullopt;
}

// From the end of the day on.
std::optional<Time> untilPitching(const Plan& plan, const ChillAnswer* chill) {
  const auto span = chill ? chillSpanAsBrewed(*chill) : std::nullopt;
  if (!span || chill->refused || isTooWarmToPitch(*chill)) return std::nullopt;
  return plan.chilling.hotStand + span->most;
}

}  // namespace

std::optional<Time> timeUntil(const Plan& plan, const BrewDay& day, const ChillAnswer* chill) {
  const bool rolls = day.outcome == Outcome::Done;
  switch (plan.ready->what) {
    case Milestone::StrikeWater:
      return endOf(day, StageKind::Strike);
    case Milestone::EndOfMash:
      return endOfTheMash(day);
    case Milestone::Boil:
      return rolls ? endOf(day, StageKind::HeatingToBoil) : std::nullopt;
    case Milestone::EndOfBoil:
      return rolls ? std::optional(day.duration()) : std::nullopt;
    case Milestone::Pitching: {
      const auto after = rolls ? untilPitching(plan, chill) : std::nullopt;
      return after ? std::optional(day.duration() + *after) : std::nullopt;
    }
  }
  return std::nullopt;
}

std::optional<Time> beginsAt(const Plan& plan, const BrewDay& day, const ChillAnswer* chill) {
  if (!plan.ready) return plan.startOfDay;
  const auto until = timeUntil(plan, day, chill);
  return until ? std::optional(plan.ready->at - *until) : std::nullopt;
}

Plan asBegun(const Plan& plan, std::size_t rig) {
  Plan begun = plan;
  if (!plan.ready) return begun;
  const RigPlan& one = plan.rigs[rig];
  const BrewDay day = simulate(one.rig, plan.batch, plan.place);
  const auto chill =
      plan.ready->what == Milestone::Pitching ? chillAnswer(one, plan, day, false) : nullptr;
  if (const auto begins = beginsAt(plan, day, chill.get())) {
    begun.startOfDay = *begins;
    begun.ready.reset();
  }
  return begun;
}

}  // namespace rigs
