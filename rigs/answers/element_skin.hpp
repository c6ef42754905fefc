// SPDX-License-Identifier: GPL-3.0-or-later
// How hot the skin of a rig's element gets, where the element's size is stated.
#pragma once

#include <optional>

#include "physics/element_surface.hpp"
#include "rigs/answers/answers.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

// Of the element with most heat through its skin, where a rig has several.
struct ElementSkin {
  physics::HeatFlux flux;             // what really reaches the vessel, through its surface
  physics::HeatFlux mostInPractice;   // in the mash where it heats that, else in boiling wort
  physics::Temperature sizzlesFrom;   // still water this warm, and warmer
  physics::Temperature mash;          // as the plan first has it; boiling without grain
  physics::Temperature inStillWater;  // as warm as the mash
  physics::Temperature inStillMash;   // or where grain rests on it
  bool boilsInStillMash = false;      // the liquid at the skin
  bool heatsTheMash = false;          // with grain in: a mash that is held

  bool keepsToPractice() const { return flux <= mostInPractice; }
};
// Empty where no element's size is stated.
std::optional<ElementSkin> elementSkin(const Plan& plan, const RigPlan& rig,
                                       const RigAnswer& answer);

}  // namespace rigs
