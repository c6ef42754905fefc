// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/plan.hpp"

#include <variant>

namespace rigs {
namespace {

const physics::UnpluggedMash* ownNight(const Plan& plan) {
  const auto* left = std::get_if<physics::UnpluggedMash>(&plan.batch.mash);
  return left && left->duration > physics::seconds(0.0) ? left : nullptr;
}

}  // namespace

bool hasOwnNight(const Plan& plan) { return ownNight(plan) != nullptr; }

physics::Time timeAlone(const Plan& plan) {
  const physics::UnpluggedMash* own = ownNight(plan);
  return own ? own->duration : plan.goals.unplugged;
}

Plan onlyRig(const Plan& plan, std::size_t index) {
  Plan one = plan;
  one.rigs = {plan.rigs[index]};
  one.rigs.front().sameAs.reset();  // whom it follows is not there
  return one;
}

}  // namespace rigs
