// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/heating_nodes.hpp"

namespace physics {
namespace {

// What must be spare at every node, as a share of the power. Own choice.
constexpr double kLeastSpare = 0.2;

}  // namespace

std::optional<Mass> HeatingNodes::evaporatedWith(Power power) const {
  if (nodes_.empty()) return std::nullopt;
  Mass sum = kilograms(0.0);
  for (const Node& node : nodes_) {
    const Power spare = power - node.lost;
    if (spare < kLeastSpare * power) return std::nullopt;
    sum += static_cast<double>((power_ - node.lost) / spare) * node.evaporated;
  }
  return sum;
}

Mass HeatingNodes::evaporated() const {
  Mass sum = kilograms(0.0);
  for (const Node& node : nodes_) sum += node.evaporated;
  return sum;
}

}  // namespace physics
