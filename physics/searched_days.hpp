// SPDX-License-Identifier: GPL-3.0-or-later
// Days simulated by the dozen while something is searched for.
#pragma once

#include <optional>

#include "physics/brewday.hpp"
#include "physics/units.hpp"

namespace physics {

// A search needs each day only to about what a person could see; a hundredth of the answer's
// tolerance is plenty and takes a third of the time.
inline constexpr SimulationOptions kForSearching{.curves = false,
                                                 .relativeTolerance = 1e-7,
                                                 .waterGuess = kilograms(0.0),
                                                 .leastForAnyPower = false};

// No supply binds a search for power: the element is fed straight, so that "delivered" means it.
Rig unlimited(Rig rig, Power delivered);

// The same batch with the water fixed that is poured for it, so that a search over lids or sizes
// needs one simulation a guess; and that water.
Batch poured(const Rig& rig, const Batch& batch, const Place& place);
Mass massOf(const Batch& poured);

// By how much this day's heat is more than the least that gets past where it stopped or, had it
// not, rolls; nothing where heat is not what it lacks.
std::optional<Power> spareOf(const BrewDay& day);

// Days of one rig and batch with other elements; all three outlive it. Where a finished volume is
// wanted, the water poured follows what boils off: a line through the last two days is the next
// one's first guess.
class Days {
 public:
  // `water` is about what is poured; 0 where that is not known.
  Days(const Rig& rig, const Batch& batch, const Place& place, Mass water);

  BrewDay with(Power delivered) { return with(delivered, kForSearching.relativeTolerance); }
  // As it is told: what an answer promises, this day must keep.
  BrewDay told(Power delivered) { return with(delivered, SimulationOptions{}.relativeTolerance); }
  // Poured in the last day that got through.
  Mass water() const { return kilograms(last_.water); }

 private:
  BrewDay with(Power delivered, double tolerance);
  Mass guess(double power) const;

  struct Poured {
    double power = 0.0;  // W
    double water = 0.0;  // kg
  };
  const Rig& rig_;
  const Batch& batch_;
  const Place& place_;
  SimulationOptions options_ = kForSearching;
  Poured last_, before_;  // of days that got through
};

}  // namespace physics
