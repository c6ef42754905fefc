// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/figures.hpp"

#include <algorithm>

namespace rigs {
namespace {

// Heat from the largest elements that take no more than these shares of each circuit, what else
// runs on it included.
physics::Power mostAt(const RigPlan& plan, double first, double second) {
  const physics::Rig& rig = plan.rig;
  const auto most = [&](physics::Supply supply, std::size_t circuit, double share) {
    supply.rating = share * supply.rating;
    if (circuit < plan.circuits.size())
      supply.rating -= plan.circuits[circuit].details.beside() / supply.nominal;
    if (supply.rating <= physics::amperes(0.0)) return physics::watts(0.0);
    return physics::electricalLoad(physics::largestElementOn(supply, rig.element.topHeight), supply)
        .delivered;
  };
  physics::Power sum = most(rig.supply, 0, first);
  if (rig.second) sum += most(rig.second->supply, 1, second);
  return sum;
}

}  // namespace

Carries carries(const Plan& plan, const RigPlan& rig, const physics::PowerAnswer& wanted) {
  if (!wanted.power || *wanted.power > mostAt(rig, 1.0, 1.0)) return Carries::No;
  return *wanted.power <= mostAt(rig, longUseShare(plan, rig, 0), longUseShare(plan, rig, 1))
             ? Carries::Yes
             : Carries::ForShortUseOnly;
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
