// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/nameplate.hpp"

#include <algorithm>

#include "rigs/answers/day_figures.hpp"
#include "rigs/answers/long_use.hpp"
#include "rigs/circuits/rating.hpp"

namespace rigs {

Finding nameplate(const Plan& plan, const RigPlan& rig, std::size_t circuit) {
  const CircuitDetails& details = detailsOf(rig, circuit);
  Rated rated{.load = carried(rig, circuit),
              .rating = feedsOf(rig.rig).at(circuit).supply.rating,
              .fused = !details.fuse.empty(),
              .device = std::nullopt};
  // Where several sets of rules may apply, what any of them knows of the device stands.
  for (const CircuitRules* rules : rulesFor(plan, details)) {
    const Guard guard = guardOf(*rules, details, rated.rating);
    rated.fused = guard.fused;
    rated.device = guard.device;
    if (rated.device) break;
  }
  Finding found = judgeRating(rated);
  found.name = Told(TOLD("Phrases", "by name plates alone"));
  return found;
}

Fit worstNameplate(const Plan& plan, const RigPlan& rig) {
  Fit worst = Fit::Fits;
  for (std::size_t k = 0; k < feedsOf(rig.rig).size(); ++k)
    worst = std::max(worst, nameplate(plan, rig, k).fit);
  return worst;
}

}  // namespace rigs
