// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/sizing.hpp"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>

namespace physics {
namespace {

// Where an increasing `surplus` turns positive between low and high, to a few parts in 1e9;
// nothing if it never does. The smallest argument that passes is returned.
template <class Surplus>
std::optional<double> firstPassing(double low, double high, const Surplus& surplus) {
  const double atHigh = surplus(high);
  if (!(atHigh >= 0.0)) return std::nullopt;
  const double atLow = surplus(low);
  if (atLow >= 0.0) return low;
  std::uintmax_t steps = 80;
  const auto bracket = boost::math::tools::toms748_solve(
      surplus, low, high, atLow, atHigh, boost::math::tools::eps_tolerance<double>(30), steps);
  return bracket.second;
}

// No supply binds a search for power: the element is fed straight, so that "delivered" means it.
Rig unlimited(Rig rig, Power delivered) {
  rig.supply.cableLoop = ohms(0.0);
  rig.element = elementDelivering(delivered, rig.supply, rig.element.topHeight);
  return rig;
}

Power mostOnSupply(const Rig& rig) {
  return electricalLoad(largestElementOn(rig.supply, rig.element.topHeight), rig.supply).delivered;
}

PowerAnswer answer(const Rig& rig, std::optional<double> watt, Limit otherwise) {
  if (!watt) return {.power = std::nullopt, .onThisSupply = false, .stoppedBy = otherwise};
  const Power power = watts(*watt);
  const bool carried = power <= mostOnSupply(rig);
  return {
      .power = power, .onThisSupply = carried, .stoppedBy = carried ? Limit::None : Limit::Circuit};
}

std::optional<Time> lasted(const BrewDay& day, StageKind kind, Outcome failed) {
  if (day.outcome == failed) return std::nullopt;
  const Stage* stage = day.find(kind);
  if (!stage) return std::nullopt;
  return stage->end - stage->begin;
}

// Search over delivered power; `surplus` is negative for a day that falls short.
template <class OfDay>
PowerAnswer searchPower(const Rig& rig, const Batch& batch, const Place& place, Limit otherwise,
                        const OfDay& surplusOf) {
  const auto surplus = [&](double watt) {
    return surplusOf(simulate(unlimited(rig, watts(watt)), batch, place));
  };
  return answer(rig, firstPassing(1.0, inWatts(kStrongestElement), surplus), otherwise);
}

// The same day with the poured water fixed, so that a search over power or lids does not also
// change the batch. The boil is left out unless asked for: it costs time and changes nothing.
Batch poured(const Rig& rig, const Batch& batch, const Place& place) {
  Batch fixed = batch;
  fixed.size = PouredWater{simulate(rig, batch, place).water};
  return fixed;
}

Batch withoutBoil(Batch batch) {
  batch.boil = seconds(0.0);
  return batch;
}

// Something negative and increasing with power for a day that stalls, so that a bracketed search
// sees which way to go: the level-off temperature's distance to its goal, in kelvins.
double shortfall(const BrewDay& day) {
  if (!day.levelsOff) return -1e3;
  return -1.0 - std::abs(inKelvins(day.levelsOff->wanted - day.levelsOff->at));
}

}  // namespace

Rig withDelivered(const Rig& rig, Power power) {
  Rig other = rig;
  other.element = elementDelivering(power, rig.supply, rig.element.topHeight);
  return other;
}

Batch scaled(const Batch& batch, double factor) {
  Batch other = batch;
  other.grain.mass = factor * batch.grain.mass;
  if (auto* water = std::get_if<PouredWater>(&other.size)) {
    water->atTwentyDegrees *= factor;
  } else {
    std::get<WantedWort>(other.size).atTwentyDegrees *= factor;
  }
  return other;
}

PowerAnswer powerToBoilAtAll(const Rig& rig, const Batch& batch, const Place& place) {
  const Batch fixed = poured(rig, batch, place);
  const BrewDay strong = simulate(unlimited(rig, kStrongestElement), fixed, place);
  if (!strong.leastToBoil) return answer(rig, std::nullopt, Limit::Boiling);
  // Enough for the boil may be too little for strike water under a wider opening.
  Power least = *strong.leastToBoil;
  const BrewDay weak = simulate(unlimited(rig, 1.0001 * least), withoutBoil(fixed), place);
  if (weak.levelsOff) least = std::max(least, weak.levelsOff->atWanted);
  return answer(rig, inWatts(least), Limit::Boiling);
}

PowerAnswer powerToBoilWithin(const Rig& rig, const Batch& batch, const Place& place, Time within) {
  const Batch fixed = withoutBoil(poured(rig, batch, place));
  return searchPower(rig, fixed, place, Limit::TimeAllowed, [&](const BrewDay& day) {
    const auto taken = lasted(day, StageKind::HeatingToBoil, Outcome::DoesNotBoil);
    return taken ? inMinutes(within - *taken) : -1e4 + shortfall(day);
  });
}

PowerAnswer powerToStrikeWithin(const Rig& rig, const Batch& batch, const Place& place,
                                Time within) {
  if (batch.grain.mass <= kilograms(0.0)) return {};
  const Batch fixed = withoutBoil(poured(rig, batch, place));
  return searchPower(rig, fixed, place, Limit::TimeAllowed, [&](const BrewDay& day) {
    const auto taken = lasted(day, StageKind::Strike, Outcome::DoesNotReachStrike);
    return taken ? inMinutes(within - *taken) : -1e4 + shortfall(day);
  });
}

PowerAnswer powerForBoilOff(const Rig& rig, const Batch& batch, const Place& place,
                            double sharePerHour) {
  Batch fixed = poured(rig, batch, place);
  fixed.boil = minutes(5.0);  // the rate at the start of the boil
  return searchPower(rig, fixed, place, Limit::BoilVigour, [&](const BrewDay& day) {
    if (!day.boil || day.outcome == Outcome::DoesNotBoil) return shortfall(day);
    return day.boil->shareOfPreBoilPerHour - sharePerHour;
  });
}

BatchAnswer largestBatch(const Rig& rig, const Batch& batch, const Place& place,
                         double sharePerHour, double headspace) {
  const Volume room = (1.0 - headspace) * capacity(rig.vessel);
  const auto at = [&](double factor) { return simulate(rig, scaled(batch, factor), place); };
  // Positive while everything is still within its limit; falls with size.
  Limit binding = Limit::None;
  const auto spare = [&](double factor) {
    const BrewDay day = at(factor);
    if (day.outcome == Outcome::UncoversElement) {
      // Too small a batch fails too, but at the other end; see below.
      binding = Limit::SmallestBatch;
      return 1.0;
    }
    const double vessel = static_cast<double>((room - day.fullest) / room);
    if (day.outcome != Outcome::Done || !day.boil) {
      binding = Limit::Boiling;
      return std::min(vessel, 1e-3 * shortfall(day));
    }
    const double vigour = (day.boil->shareOfPreBoilPerHour - sharePerHour) / sharePerHour;
    binding = vessel < vigour ? Limit::Vessel : Limit::BoilVigour;
    return std::min(vessel, vigour);
  };
  // From the smallest batch that works upwards in steps until something binds.
  double low = 0.05;
  while (low < 4.0) {
    const BrewDay day = at(low);
    if (day.outcome != Outcome::UncoversElement) break;
    low *= 1.1;
  }
  if (spare(low) < 0.0) {
    return {.wort = std::nullopt,
            .stoppedBy = binding == Limit::Vessel ? Limit::SmallestBatch : binding};
  }
  double high = low;
  while (spare(high) >= 0.0) {
    low = high;
    high *= 1.3;
    if (high > 1e3) break;
  }
  std::uintmax_t steps = 60;
  const auto bracket = boost::math::tools::toms748_solve(
      spare, low, high, boost::math::tools::eps_tolerance<double>(24), steps);
  const BrewDay day = at(bracket.first);
  spare(bracket.second);  // what binds just beyond
  return {.wort = day.resultCold, .stoppedBy = binding};
}

WhatWouldBoil whatWouldBoil(const Rig& rig, const Batch& batch, const Place& place) {
  WhatWouldBoil what;
  what.power = powerToBoilAtAll(rig, batch, place).power;
  const Batch fixed = [&] {
    Batch brief = poured(rig, batch, place);
    brief.boil = minutes(1.0);
    return brief;
  }();
  const auto closedBy = [&](double closed) {
    Rig other = rig;
    other.vessel.open.heating = std::min(rig.vessel.open.heating, 1.0 - closed);
    other.vessel.open.boil = std::min(rig.vessel.open.boil, 1.0 - closed);
    return simulate(other, fixed, place);
  };
  const auto boils = [&](double closed) {
    const BrewDay day = closedBy(closed);
    return day.outcome == Outcome::Done || day.outcome == Outcome::UncoversElement ? 1.0
                                                                                   : shortfall(day);
  };
  if (const auto closed = firstPassing(0.0, 1.0, boils)) {
    what.openFraction = 1.0 - *closed;
  } else {
    const BrewDay day = closedBy(1.0);
    if (day.levelsOff) what.levelWithLid = day.levelsOff->at;
  }
  return what;
}

}  // namespace physics
