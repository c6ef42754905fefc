// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/brewday.hpp"

#include <algorithm>

#include "physics/day_course.hpp"
#include "physics/wanted_wort.hpp"
#include "physics/water.hpp"

namespace physics {
namespace {

BrewDay simulateWith(Mass water, const Rig& rig, const Batch& batch, const Place& place,
                     const SimulationOptions& options) {
  return Day(rig, batch, place, options).run(water);
}

// Without curves until the water is found. As near as the integrator's own noise allows.
BrewDay simulateFor(Volume wanted, const Rig& rig, const Batch& batch, const Place& place,
                    const SimulationOptions& options) {
  SimulationOptions quiet = options;
  quiet.curves = quiet.leastForAnyPower = false;
  const Volume rinses = batch.rinse ? batch.rinse->atTwentyDegrees : litres(0.0);
  const Volume poured = wanted + batch.grain.mass * batch.absorption - rinses;
  const Mass guess =
      options.waterGuess > kilograms(0.0) ? options.waterGuess : poured * waterDensity(kColdWort);
  const Volume near = litres(500.0 * options.relativeTolerance);
  BrewDay day = dayThatLeaves(wanted, batch, guess, near, [&](Mass water) {
    return simulateWith(water, rig, batch, place, quiet);
  });
  if (!options.curves && !options.leastForAnyPower) return day;
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
