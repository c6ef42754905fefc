// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/rinse.hpp"

#include <algorithm>
#include <cassert>

#include "physics/water.hpp"
#include "physics/wort.hpp"

namespace physics {
namespace {

constexpr Temperature kMeasuredAt = celsius(20.0);

Mass massOf(const Rinse& rinse) { return rinse.atTwentyDegrees * waterDensity(kMeasuredAt); }

}  // namespace

Volume coldVolume(const WortMasses& wort) {
  if (wort.total() <= kilograms(0.0)) return litres(0.0);
  const double strength = static_cast<double>(wort.extract / wort.total());
  return wort.total() / wortDensity(strength, kMeasuredAt);
}

RinsedGrain rinsedGrain(const WortMasses& held, Mass rinse, double reached) {
  assert(0.0 <= reached && reached <= 1.0);
  const WortMasses mixed{reached * held.water + rinse, reached * held.extract};
  const Volume all = coldVolume(mixed);
  if (all <= litres(0.0)) return {.runsOff = {}, .held = held};
  const double runs = std::max(0.0, 1.0 - static_cast<double>(reached * coldVolume(held) / all));
  const WortMasses runsOff{runs * mixed.water, runs * mixed.extract};
  return {.runsOff = runsOff,
          .held = {held.water + rinse - runsOff.water, held.extract - runsOff.extract}};
}

Energy heatOfRinse(const Rinse& rinse, Temperature drawn) {
  if (drawn >= rinse.temperature) return joules(0.0);
  return massOf(rinse) * (waterEnthalpy(rinse.temperature) - waterEnthalpy(drawn));
}

std::optional<Energy> fromWallForRinse(const Rinse& rinse, Temperature drawn) {
  if (!rinse.electric) return std::nullopt;
  return heatOfRinse(rinse, drawn) / rinse.electric->efficiency;
}

std::optional<Time> timeToHeatRinse(const Rinse& rinse, Temperature drawn) {
  if (!rinse.electric || !rinse.electric->power) return std::nullopt;
  return *fromWallForRinse(rinse, drawn) / *rinse.electric->power;
}

}  // namespace physics
