// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/circuit_check.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include "rigs/answers/circuit_answer.hpp"
#include "rigs/circuits/conductor.hpp"
#include "rigs/documents/problem_words.hpp"

namespace rigs {

using namespace physics;

namespace {

List listedVoltages(const CircuitRules& rules) {
  List all{.items = {}, .joint = Joint::Comma};
  for (const VoltageRange& range : rules.voltages) {
    const Argument one = amount(range.nominal);
    if (std::find(all.items.begin(), all.items.end(), one) == all.items.end())
      all.items.push_back(one);
  }
  return all;
}

// Ours where the rules are.
Bundled regionOf(const CircuitRules& rules) { return {"Phrases", rules.region}; }

void checkCircuit(const CircuitDetails& details, const Supply& supply, const CircuitRules& rules,
                  const std::string& supplyAt, const std::string& cableAt, Problems& problems) {
  const auto error = [&problems](std::string where, Told found, Told advice) {
    problems.push_back(
        {Severity::Error, std::move(where), advised(std::move(found), std::move(advice))});
  };
  if (rules.rangesOf(supply.nominal).empty())
    error(supplyAt + "/voltage",
          Told(TOLD("Problem", "%1 is no supply voltage of %2"), amount(supply.nominal),
               regionOf(rules)),
          Told(TOLD("Problem", "there it is %1"), listedVoltages(rules)));
  if (!details.outlet.empty() && !rules.outlet(details.outlet)) {
    List names{.items = {}, .joint = Joint::Comma};
    for (const Outlet& outlet : rules.outlets) names.items.emplace_back(inQuotes(outlet.name));
    error(supplyAt + "/outlet",
          Told(TOLD("Problem", "%1 is no outlet of %2"), Quoted{details.outlet}, regionOf(rules)),
          Told(TOLD("Problem", "write %1"), Told(TOLD("Problem", "one of %1"), std::move(names))));
  }
  if (rules.conductors.empty()) return;
  Told nearest;
  if (details.cable) {
    if (ampacity(rules, *details.cable, nearest)) return;
  } else if (details.run) {
    nearest = nearestOfAnyUse(rules, details.run->area);
    if (nearest.empty()) return;
  } else {
    return;
  }
  Told none(TOLD("Problem", "no table for %1 has this conductor at this length"), regionOf(rules));
  if (nearest.empty())
    problems.push_back({Severity::Error, cableAt + "/conductor", std::move(none)});
  else
    error(cableAt + "/conductor", std::move(none),
          Told(TOLD("Problem", "the nearest size is %1"), std::move(nearest)));
}

}  // namespace

void checkCircuits(const Plan& plan, Problems& problems) {
  for (std::size_t i = 0; i < plan.rigs.size(); ++i) {
    const RigPlan& rig = plan.rigs[i];
    const std::string at = "/rigs/" + std::to_string(i);
    const auto check = [&](std::size_t circuit, const Supply& supply, const std::string& supplyAt,
                           const std::string& cableAt) {
      if (circuit >= rig.circuits.size()) return;
      const CircuitDetails& details = rig.circuits[circuit].details;
      const auto all = rulesFor(plan, details);
      if (all.empty()) return;
      // Of several sets of rules that may apply, one that knows all of it is enough.
      Problems least;
      for (std::size_t k = 0; k < all.size(); ++k) {
        Problems one;
        checkCircuit(details, supply, *all[k], supplyAt, cableAt, one);
        if (k == 0 || one.size() < least.size()) least = one;
      }
      problems.insert(problems.end(), least.begin(), least.end());
    };
    check(0, rig.rig.supply, at + "/supply", at + "/cable");
    if (rig.rig.second)
      check(1, rig.rig.second->supply, at + "/second_supply", at + "/second_cable");
  }
}

}  // namespace rigs
