// SPDX-License-Identifier: GPL-3.0-or-later
// Wort that is left in its kettle to cool by itself after the boil. A plan says nothing of cooling,
// so this is an estimate beside the day, not a part of it.
#pragma once

#include <optional>

#include "physics/brewday.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

struct NoChill {
  // Of Newton's cooling, from the kettle's heat and its losses at 39 C, half way from 57 to 21 C,
  // element off and the lid as in the mash. Hotter wort loses more per kelvin and colder less, so
  // one constant is an estimate: the way down to 57 C is quicker, the end slower.
  physics::Time timeConstant;
  // From the boil to 57 C; 0 where what goes in as it ends has left the wort colder than that.
  std::optional<physics::Time> toHotHolding;
  // Food service (FDA Food Code 3-501.14(A)): from 57 to 21 C within 2 h, to 5 C within 6 h. Empty
  // where the room is too warm for it.
  std::optional<physics::Time> toTwentyOne, toFive;
};
// Empty for a day without finished wort and in rooms as warm as 39 C.
std::optional<NoChill> noChill(const physics::Rig& rig, const physics::BrewDay& day,
                               const physics::Place& place);

}  // namespace rigs
