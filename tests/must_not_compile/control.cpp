// SPDX-License-Identifier: GPL-3.0-or-later
// The right way of everything the other files get wrong.
#include "physics/units.hpp"

using namespace physics;

Power heat(Energy e, Time t) { return e / t; }
TemperatureDifference warmer(Temperature a, Temperature b) { return a - b; }
Temperature warmed(Temperature t, TemperatureDifference by) { return t + by; }
Energy drawn(Power p, Time t) { return p * t; }
Power some() { return watts(3.0); }
