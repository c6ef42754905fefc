// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/figures.hpp"

#include <algorithm>

namespace rigs {
namespace {

// Heat from the largest element that a circuit carries in so much current, beside what else runs.
physics::Power mostOn(const RigPlan& rig, std::size_t circuit, physics::Current granted) {
  physics::Supply supply = feedsOf(rig.rig).at(circuit).supply;
  supply.rating = granted - alongside(rig, circuit);
  if (supply.rating <= physics::amperes(0.0)) return physics::watts(0.0);
  const auto largest = physics::largestElementOn(supply, rig.rig.element.topHeight);
  return physics::electricalLoad(largest, supply).delivered;
}

}  // namespace

Carries carries(const Plan& plan, const RigPlan& rig, const physics::PowerAnswer& wanted) {
  physics::Power most = physics::watts(0.0);
  physics::Power mostForLong = most;
  for (std::size_t k = 0; k < feedsOf(rig.rig).size(); ++k) {
    most += mostOn(rig, k, feedsOf(rig.rig)[k].supply.rating);
    mostForLong += mostOn(rig, k, longUseCurrent(plan, rig, k));
  }
  if (!wanted.power || *wanted.power > most) return Carries::No;
  return *wanted.power <= mostForLong ? Carries::Yes : Carries::ForShortUseOnly;
}

std::string_view carriesWord(Carries carries) {
  switch (carries) {
    case Carries::Yes:
      return "yes";
    case Carries::ForShortUseOnly:
      return "for short use only";
    case Carries::No:
      return "no";
  }
  return "";
}

physics::PowerAnswer neededPower(const SizingAnswer& sizing) {
  physics::PowerAnswer needed = sizing.toBoilAtAll;
  for (const physics::PowerAnswer& wish :
       {sizing.toStrikeWithin, sizing.toBoilWithin, sizing.forBoilOff}) {
    if (!needed.power) return needed;
    if (!wish.power && wish.stoppedBy == physics::Limit::None) continue;  // nothing was asked
    if (!wish.power || *wish.power > *needed.power) needed = wish;
  }
  return needed;
}

std::optional<double> costOf(const RigAnswer& rig, physics::StageKind kind) {
  std::optional<double> sum;
  for (std::size_t i = 0; i < rig.stageCosts.size(); ++i) {
    if (rig.day.stages[i].kind == kind) sum = sum.value_or(0.0) + rig.stageCosts[i];
  }
  return sum;
}

std::optional<double> costPer(const RigAnswer& rig, physics::Volume wort) {
  // What is left of a day that stalls is no finished wort.
  if (!rig.cost || !rig.day.finished() || rig.day.resultCold <= physics::litres(0.0))
    return std::nullopt;
  return *rig.cost * static_cast<double>(wort / rig.day.resultCold);
}

}  // namespace rigs
