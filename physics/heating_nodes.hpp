// SPDX-License-Identifier: GPL-3.0-or-later
// A heating by the nodes at which it was followed: what it would have been with another power. What
// a vessel loses at a temperature does not ask how fast the wort came there.
#pragma once

#include <optional>
#include <vector>

#include "physics/units.hpp"

namespace physics {

class HeatingNodes {
 public:
  // `power` is what the wort was given all the way.
  explicit HeatingNodes(Power power) : power_(power) {}

  // What evaporated while the wort was at a node, by its weight, and what it lost there, less what
  // a pump made good.
  struct Node {
    Mass evaporated;
    Power lost;
  };
  void take(std::vector<Node> nodes) { nodes_ = std::move(nodes); }

  // What evaporates on the same way with `power`, as if that left no more and no less water behind:
  // the error is about the product of what goes either way and how much more or less that is, as
  // shares of the water. Nothing where nothing was noted, or where so little of the power would be
  // spare at the end that the nodes do not tell how slowly it went there.
  std::optional<Mass> evaporatedWith(Power power) const;
  Mass evaporated() const;

 private:
  Power power_;
  std::vector<Node> nodes_;
};

}  // namespace physics
