// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a region's rules: told where they are wrong; what is accepted judges circuits.
#include "rigs/answers/circuit_answer.hpp"
#include "rigs/circuits/rules_file.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "tests/fuzz/fuzzed.hpp"

namespace {

struct Brewed {
  rigs::Plan plan;
  std::vector<physics::BrewDay> days;
};

// Once: the day does not depend on rules.
Brewed& brewed() {
  static Brewed one = [] {
    rigs::Problems none;
    Brewed made{.plan = *rigs::readPlan(*rigs::planStartText("two-circuits"), ".", none),
                .days = {}};
    for (const rigs::RigPlan& rig : made.plan.rigs)
      made.days.push_back(physics::simulate(rig.rig, made.plan.batch, made.plan.place));
    return made;
  }();
  return one;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  rigs::Problems problems;
  auto rules = rigs::rulesIn(fuzz::textOf(data, size), "mine.json", "/place/rules", problems);
  fuzz::requireTold(rules != nullptr, problems);
  if (!rules) return 0;
  Brewed& one = brewed();
  one.plan.ownRules = rules;
  for (std::size_t i = 0; i < one.plan.rigs.size(); ++i) {
    const rigs::CircuitAnswer answer =
        rigs::circuitAnswer(one.plan, one.plan.rigs[i], one.days[i], /*inverse=*/false);
    fuzz::require(!answer.circuits.empty());
    static_cast<void>(answer.overall());
  }
  return 0;
}
