// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan says about circuits, against the tables of its region.
#include "rigs/answers/circuit_answer.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace rigs {

using namespace physics;

namespace {

std::string listedVoltages(const CircuitRules& rules) {
  std::string all;
  for (const VoltageRange& range : rules.voltages) {
    const std::string text = format(range.nominal, UnitSystem::SI);
    if (all.find(text) == std::string::npos) all += (all.empty() ? "" : ", ") + text;
  }
  return all;
}

void checkCircuit(const CircuitDetails& details, const Supply& supply, const CircuitRules& rules,
                  const std::string& supplyAt, const std::string& cableAt, Problems& problems) {
  if (rules.rangesOf(supply.nominal).empty())
    problems.push_back({Severity::Error, supplyAt + "/voltage",
                        format(supply.nominal, UnitSystem::SI) + " is no supply voltage of " +
                            rules.region + "; there it is " + listedVoltages(rules)});
  if (!details.outlet.empty() && !rules.outlet(details.outlet)) {
    std::string names;
    for (const Outlet& outlet : rules.outlets)
      names += (names.empty() ? "\"" : ", \"") + outlet.name + '"';
    problems.push_back({Severity::Error, supplyAt + "/outlet",
                        quotedText(details.outlet) + " is no outlet of " + rules.region +
                            "; write one of " + names});
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
  problems.push_back(
      {Severity::Error, cableAt + "/conductor",
       "no table for " + rules.region + " has this conductor at this length" +
           (nearest.empty() ? std::string() : "; the nearest size is " + inEnglish(nearest))});
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
