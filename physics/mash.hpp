// SPDX-License-Identifier: GPL-3.0-or-later
// Mashing in: the heat balance of hot water and cool grain.
#pragma once

#include "physics/units.hpp"

namespace physics {

// Grain as it is weighed.
struct Grain {
  Mass mass;  // >= 0
  Temperature temperature;
  SpecificHeat specificHeat;
  SpecificEnergy slakingHeat;  // given off when it is wetted, per kg as weighed

  bool operator==(const Grain&) const = default;
};

// Specific heat of malt at a moisture fraction 0-0.2: dry 0.38 of water's 4186 J/(kg K), plus its
// moisture. Reproduces a maltster's handbook table (1984/85) to 0.01. Published cereal values
// lie within +-12 %.
SpecificHeat maltSpecificHeat(double moisture);
// Heat given off on wetting, from the same table's temperature rise at 2.68 kg of water per kg:
// 38 kJ/kg bone dry, 19 at 4 %, 13 at 8 %; linear between its rows. Range 0-0.08; held beyond.
SpecificEnergy maltSlakingHeat(double moisture);

}  // namespace physics
