// SPDX-License-Identifier: GPL-3.0-or-later
// Element, circuit and the cable between them. Each reports all problems of its part and returns
// nullopt if any of them is an error.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "physics/element_group.hpp"
#include "rigs/circuits/verdict.hpp"
#include "rigs/plans/layers.hpp"

namespace rigs {

struct SupplyRead {
  physics::Supply supply;
  std::string circuit;
  double continuousShare = 1.0;
  CircuitDetails details;
};
// `rig` holds both keys, or the first alone.
std::optional<SupplyRead> readSupply(const Layers& rig, std::string_view supply = "supply",
                                     std::string_view cable = "cable");

struct ElementsRead {
  std::vector<physics::Element> elements;
  physics::Wiring wiring = physics::Wiring::Parallel;
  bool onTwoCircuits = false;  // then there are two elements
};
// `rig` holds "element", or "elements" and "wired".
std::optional<ElementsRead> readElements(const Layers& rig);

}  // namespace rigs
