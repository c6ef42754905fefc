// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/cooling.hpp"

#include <algorithm>

#include "physics/heat_loss.hpp"
#include "physics/wort.hpp"
#include "rigs/answers/safety.hpp"

namespace rigs {

using namespace physics;

std::optional<NoChill> noChill(const Rig& rig, const BrewDay& day, const Place& place) {
  const Temperature half = celsius(39.0);
  if (!day.finished() || !day.boil || day.resultCold <= litres(0.0) || place.room >= half)
    return std::nullopt;
  const double extract = day.resultExtract;
  const Mass wort = day.resultCold * wortDensity(extract, celsius(20.0));
  const HeatCapacity stored =
      wort * wortSpecificHeat(extract, half) + rig.vessel.mass * rig.vessel.specificHeat;
  const Surroundings room{.air = moistAir(place.room, place.relativeHumidity, place.pressure),
                          .draught = place.draught};
  const Length fill =
      std::min(Length(day.resultCold / crossSection(rig.vessel)), rig.vessel.height);
  const Power lost = HeatLossModel(rig.vessel, Hose{}, room, fill, rig.vessel.open.mash,
                                   rig.evaporationFactor, rig.lossFactor)
                         .flows(half, fill)
                         .lost.total();
  if (lost <= watts(0.0)) return std::nullopt;
  const Time constant = stored * (half - place.room) / lost;
  const auto cools = [&](Temperature from, Temperature to) {
    return coolingTime(constant, from, to, place.room);
  };
  return NoChill{.timeConstant = constant,
                 .toHotHolding = cools(day.stages.back().last, celsius(57.0)),
                 .toTwentyOne = cools(celsius(57.0), celsius(21.0)),
                 .toFive = cools(celsius(57.0), celsius(5.0))};
}

}  // namespace rigs
