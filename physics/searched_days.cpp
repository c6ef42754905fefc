// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/searched_days.hpp"

#include <cmath>
#include <variant>

#include "physics/water.hpp"

namespace physics {

Rig unlimited(Rig rig, Power delivered) {
  rig.supply.cableLoop = ohms(0.0);
  rig.second.reset();
  rig.element = elementDelivering(delivered, rig.supply, rig.element.topHeight);
  return rig;
}

Mass massOf(const Batch& poured) {
  return std::get<PouredWater>(poured.size).atTwentyDegrees * waterDensity(celsius(20.0));
}

Batch poured(const Rig& rig, const Batch& batch, const Place& place) {
  Batch fixed = batch;
  fixed.size = PouredWater{simulate(rig, batch, place, kForSearching).water};
  return fixed;
}

std::optional<Power> spareOf(const BrewDay& day) {
  const Power heat = day.electrical.delivered;
  if (day.finished()) return heat - *day.leastToBoil;
  if (day.levelsOff) return heat - day.levelsOff->atWanted;
  return std::nullopt;
}

Days::Days(const Rig& rig, const Batch& batch, const Place& place, Mass water)
    : rig_(rig), batch_(batch), place_(place), last_{.water = inKilograms(water)} {}

BrewDay Days::with(Power delivered, double tolerance) {
  options_.relativeTolerance = tolerance;
  options_.waterGuess = guess(inWatts(delivered));
  const Rig rig = unlimited(rig_, delivered);
  BrewDay day = simulate(rig, batch_, place_, options_);
  // Near a strike that hardly comes the wish may be met by less water only: that a day stops is not
  // to hang on where the search for its water began.
  if (!day.finished() && options_.waterGuess > kilograms(0.0)) {
    options_.waterGuess = kilograms(0.0);
    day = simulate(rig, batch_, place_, options_);
  }
  if (day.finished()) {
    before_ = last_;
    last_ = {inWatts(delivered), inKilograms(day.water * waterDensity(celsius(20.0)))};
  }
  return day;
}

// More power boils off more, about in proportion. 0 before the first day.
Mass Days::guess(double power) const {
  const bool line = before_.power > 0.0 && before_.power != last_.power;
  const double perWatt = line ? (last_.water - before_.water) / (last_.power - before_.power) : 0.0;
  const double water = last_.water + perWatt * (power - last_.power);
  const bool near = std::abs(water - last_.water) < 0.5 * last_.water;
  return kilograms(near ? water : last_.water);
}

}  // namespace physics
