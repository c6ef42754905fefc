// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/brewday.hpp"

#include <algorithm>
#include <vector>

#include "physics/day_course.hpp"
#include "physics/wanted_wort.hpp"
#include "physics/water.hpp"

namespace physics {
namespace {

BrewDay simulateWith(Mass water, const Rig& rig, const Batch& batch, const Place& place,
                     const SimulationOptions& options) {
  return Day(rig, batch, place, options).run(water);
}

// The first days only lead to the water: without what is asked besides. The one that meets the wish
// is hardly ever among them, and is not followed twice.
BrewDay simulateFor(Volume wanted, const Rig& rig, const Batch& batch, const Place& place,
                    const SimulationOptions& options) {
  SimulationOptions quiet = options;
  quiet.curves = quiet.leastForAnyPower = false;
  const Volume rinses = batch.rinse ? batch.rinse->atTwentyDegrees : litres(0.0);
  const Volume poured = wanted + batch.grain.mass * batch.absorption - rinses;
  const bool guessed = options.waterGuess > kilograms(0.0);
  const Mass guess = guessed ? options.waterGuess : poured * waterDensity(kColdWort);
  const Volume near = litres(500.0 * options.relativeTolerance);
  std::vector<Volume> followed;  // with all that is asked
  int leading = guessed ? 1 : 2;
  BrewDay day = dayThatLeaves(wanted, batch, guess, near, [&](Mass water) {
    if (leading-- > 0) return simulateWith(water, rig, batch, place, quiet);
    BrewDay one = simulateWith(water, rig, batch, place, options);
    followed.push_back(one.water);
    return one;
  });
  if (!options.curves && !options.leastForAnyPower) return day;
  if (std::find(followed.begin(), followed.end(), day.water) != followed.end()) return day;
  const auto unmet = day.unmet;
  day = simulateWith(day.water * waterDensity(kColdWort), rig, batch, place, options);
  day.unmet = unmet;
  return day;
}

}  // namespace

BrewDay simulate(const Rig& rig, const Batch& batch, const Place& place,
                 const SimulationOptions& options) {
  if (const auto* poured = std::get_if<PouredWater>(&batch.size)) {
    const Mass water = poured->atTwentyDegrees * waterDensity(kColdWort);
    return simulateWith(water, rig, batch, place, options);
  }
  return simulateFor(std::get<WantedWort>(batch.size).atTwentyDegrees, rig, batch, place, options);
}

}  // namespace physics
