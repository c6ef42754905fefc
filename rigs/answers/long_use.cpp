// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/long_use.hpp"

#include <algorithm>

#include "rigs/answers/day_figures.hpp"

namespace rigs {

std::vector<const CircuitRules*> rulesFor(const Plan& plan, const CircuitDetails& details) {
  if (plan.ownRules) return {plan.ownRules.get()};
  if (plan.region.empty()) return rulesForCircuitsOf(details.circuitRegion);
  const CircuitRules* stated = rulesOf(plan.region);
  return stated ? std::vector<const CircuitRules*>{stated} : std::vector<const CircuitRules*>{};
}

double shareGrantedBy(const std::vector<const CircuitRules*>& all) {
  double share = 1.0;
  for (const CircuitRules* rules : all)
    for (const LongUse& rule : rules->longUse) share = std::min(share, rule.share);
  return share;
}

double longUseShare(const Plan& plan, const RigPlan& rig, std::size_t circuit) {
  const CircuitPlan* own = circuit < rig.circuits.size() ? &rig.circuits[circuit] : nullptr;
  const double stated = circuit == 0 ? rig.continuousShare : own ? own->continuousShare : 1.0;
  return std::min(stated, shareGrantedBy(rulesFor(plan, detailsOf(rig, circuit))));
}

physics::Current longUseCurrent(const Plan& plan, const RigPlan& rig, std::size_t circuit) {
  const physics::Supply supply = feedsOf(rig.rig).at(circuit).supply;
  const physics::Current beside = detailsOf(rig, circuit).beside(supply.nominal);
  return beside + longUseShare(plan, rig, circuit) * (supply.rating - beside);
}

bool overloadsForLong(const Plan& plan, const RigPlan& rig, std::size_t circuit) {
  return carried(rig, circuit) > (1.0 + 1e-9) * longUseCurrent(plan, rig, circuit);
}

}  // namespace rigs
