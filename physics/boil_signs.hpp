// SPDX-License-Identifier: GPL-3.0-or-later
// What a brewer sees on the way to the boil. A time noted by hand may mean the first bubbles or the
// roll: minutes lie between them, and all of the boil where the power is short. Every time to the
// boil that this program tells means the roll, when all of it boils and the temperature stands.
#pragma once

#include "physics/units.hpp"

namespace physics {

// Vapour at the element breaks the surface here and there when the bulk is still so much below its
// boiling point, 95 to 97 C at sea level: the element's own surface boils by then, 10 to 15 K
// hotter than the bulk at 5 W/cm2. Range 3 to 5 K, earlier over a strong element in little wort;
// dissolved air, which leaves from 60 C on, is not meant. Common practice, no source.
inline constexpr TemperatureDifference kFirstBubblesBelow = kelvins(4.0);
inline constexpr TemperatureDifference kFirstBubblesBelowAtLeast = kelvins(3.0);
inline constexpr TemperatureDifference kFirstBubblesBelowAtMost = kelvins(5.0);

constexpr Temperature firstBubbles(Temperature boils) { return boils - kFirstBubblesBelow; }

}  // namespace physics
