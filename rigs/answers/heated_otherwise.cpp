// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/heated_otherwise.hpp"

namespace rigs {
namespace {

constexpr double kPropaneMegajoulesPerKilogram = 46.4;

}  // namespace

std::optional<EnergyUsed> usedInstead(const physics::BrewDay& day, const ReachesVessel& share) {
  if (!day.finished()) return std::nullopt;
  const physics::Energy heat = day.total.element;
  return EnergyUsed{heat / share.most, heat / share.least};
}

physics::Mass propaneFor(physics::Energy energy) {
  return physics::kilograms(1e-6 * physics::inJoules(energy) / kPropaneMegajoulesPerKilogram);
}

}  // namespace rigs
