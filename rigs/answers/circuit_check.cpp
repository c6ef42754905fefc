// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/circuit_check.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include "rigs/answers/long_use.hpp"
#include "rigs/documents/json_cursor.hpp"
#include "rigs/documents/problem_words.hpp"

namespace rigs {
namespace {

// What no table knows is a verdict, "cannot say"; a name that is none of the region's outlets is
// most often mistyped, so the plan's check tells it too.
void checkOutlet(const CircuitDetails& details, const CircuitRules& rules,
                 const std::string& supplyAt, Problems& problems) {
  if (details.outlet.empty() || rules.outlets.empty() || rules.outlet(details.outlet)) return;
  List names{.items = {}, .joint = Joint::Comma};
  std::vector<std::string_view> known;
  for (const Outlet& outlet : rules.outlets) {
    names.items.emplace_back(inQuotes(outlet.name));
    known.push_back(outlet.name);
  }
  problems.push_back(
      {Severity::Warning, supplyAt + "/outlet",
       perhapsMeant(advised(Told(TOLD("Problem", "%1 is no outlet of %2"), Quoted{details.outlet},
                                 Bundled{"Phrases", rules.region}),
                            Told(TOLD("Problem", "the outlet cannot be judged; there is %1"),
                                 std::move(names))),
                    nearestWord(details.outlet, known))});
}

}  // namespace

void checkCircuits(const Plan& plan, Problems& problems) {
  for (std::size_t i = 0; i < plan.rigs.size(); ++i) {
    const RigPlan& rig = plan.rigs[i];
    const std::string at = "/rigs/" + std::to_string(i);
    const auto check = [&](std::size_t circuit, const std::string& supplyAt) {
      if (circuit >= rig.circuits.size()) return;
      const CircuitDetails& details = rig.circuits[circuit].details;
      const auto all = rulesFor(plan, details);
      if (all.empty()) return;
      // Of several sets of rules that may apply, one that knows all of it is enough.
      Problems least;
      for (std::size_t k = 0; k < all.size(); ++k) {
        Problems one;
        checkOutlet(details, *all[k], supplyAt, one);
        if (k == 0 || one.size() < least.size()) least = one;
      }
      problems.insert(problems.end(), least.begin(), least.end());
    };
    check(0, at + "/supply");
    if (rig.rig.second) check(1, at + "/second_supply");
  }
}

}  // namespace rigs
