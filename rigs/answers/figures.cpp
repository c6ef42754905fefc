// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/figures.hpp"

#include <algorithm>

#include "rigs/answers/circuit_answer.hpp"

namespace rigs {
namespace {

// What the plan states for a circuit, or what the rules that judge it grant, whichever is less.
double longUseShare(const Plan& plan, const RigPlan& rig, std::size_t circuit) {
  static const CircuitDetails kNone;
  const CircuitPlan* own = circuit < rig.circuits.size() ? &rig.circuits[circuit] : nullptr;
  double share = circuit == 0 ? rig.continuousShare : own ? own->continuousShare : 1.0;
  for (const CircuitRules* rules : rulesFor(plan, own ? own->details : kNone)) {
    for (const LongUse& rule : rules->longUse) share = std::min(share, rule.share);
  }
  return share;
}

// Heat from the largest elements that take no more than these shares of each circuit.
physics::Power mostAt(const physics::Rig& rig, double first, double second) {
  const auto most = [&](physics::Supply supply, double share) {
    supply.rating = share * supply.rating;
    return physics::electricalLoad(physics::largestElementOn(supply, rig.element.topHeight), supply)
        .delivered;
  };
  physics::Power sum = most(rig.supply, first);
  if (rig.second) sum += most(rig.second->supply, second);
  return sum;
}

}  // namespace

physics::Current longUseCurrent(const Plan& plan, const RigPlan& rig, std::size_t circuit) {
  return longUseShare(plan, rig, circuit) * feedsOf(rig.rig).at(circuit).supply.rating;
}

Carries carries(const Plan& plan, const RigPlan& rig, const physics::PowerAnswer& wanted) {
  if (!wanted.power || *wanted.power > mostAt(rig.rig, 1.0, 1.0)) return Carries::No;
  return *wanted.power <= mostAt(rig.rig, longUseShare(plan, rig, 0), longUseShare(plan, rig, 1))
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

bool overloadsForLong(const Plan& plan, const RigPlan& rig, std::size_t circuit) {
  const physics::Feed feed = feedsOf(rig.rig).at(circuit);
  return physics::branchCurrent(feed.element, feed.supply) >
         (1.0 + 1e-9) * longUseCurrent(plan, rig, circuit);
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
