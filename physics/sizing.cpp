// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/sizing.hpp"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>

namespace physics {
namespace {

// A search needs each day only to about what a person could see; a hundredth of the answer's
// tolerance is plenty and takes a third of the time.
constexpr SimulationOptions kForSearching{.curves = false, .relativeTolerance = 1e-7};

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
    return surplusOf(simulate(unlimited(rig, watts(watt)), batch, place, kForSearching));
  };
  return answer(rig, firstPassing(1.0, inWatts(kStrongestElement), surplus), otherwise);
}

// The same day with the poured water fixed, so that a search over power or lids does not also
// change the batch. The boil is left out unless asked for: it costs time and changes nothing.
Batch poured(const Rig& rig, const Batch& batch, const Place& place) {
  Batch fixed = batch;
  fixed.size = PouredWater{simulate(rig, batch, place, kForSearching).water};
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
  const BrewDay strong = simulate(unlimited(rig, kStrongestElement), fixed, place, kForSearching);
  if (!strong.leastToBoil) return answer(rig, std::nullopt, Limit::Boiling);
  // Enough for the boil may be too little for strike water under a wider opening.
  Power least = *strong.leastToBoil;
  const BrewDay weak =
      simulate(unlimited(rig, 1.0001 * least), withoutBoil(fixed), place, kForSearching);
  if (weak.levelsOff) least = std::max(least, weak.levelsOff->atWanted);
  return answer(rig, inWatts(least), Limit::Boiling);
}

PowerAnswer powerToBoilWithin(const Rig& rig, const Batch& batch, const Place& place, Time within) {
  const Batch fixed = withoutBoil(poured(rig, batch, place));
  const PowerAnswer soon =
      searchPower(rig, fixed, place, Limit::TimeAllowed, [&](const BrewDay& day) {
        const auto taken = lasted(day, StageKind::HeatingToBoil, Outcome::DoesNotBoil);
        return taken ? inMinutes(within - *taken) : -1e4 + shortfall(day);
      });
  // Soon enough under the lid may be too weak once the lid is off.
  const PowerAnswer atAll = powerToBoilAtAll(rig, batch, place);
  return soon.power && atAll.power && *atAll.power > *soon.power ? atAll : soon;
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
  // Water and grain grow together; searching on the water poured needs one day a guess.
  const Batch unit = poured(rig, batch, place);
  const auto at = [&](double factor) {
    return simulate(rig, scaled(unit, factor), place, kForSearching);
  };
  Limit binding = Limit::None;
  // Positive while everything is within its limit. Falls with size, but for batches too small to
  // cover the element, which the walk below steps over.
  const auto spareOf = [&](const BrewDay& day) {
    const double vessel = static_cast<double>((room - day.fullest) / room);
    if (day.outcome != Outcome::Done || !day.boil) {
      binding = Limit::Boiling;
      return std::min(vessel, 1e-3 * shortfall(day));
    }
    const double vigour = (day.boil->shareOfPreBoilPerHour - sharePerHour) / sharePerHour;
    binding = vessel < vigour ? Limit::Vessel : Limit::BoilVigour;
    return std::min(vessel, vigour);
  };
  const auto spare = [&](double factor) { return spareOf(at(factor)); };

  // The smallest batch that keeps the element covered, and from there up until something binds.
  const Volume whole = std::get<PouredWater>(unit.size).atTwentyDegrees;
  double low =
      std::max(0.02, static_cast<double>(crossSection(rig.vessel) * rig.element.topHeight / whole));
  BrewDay day = at(low);
  for (int i = 0; i < 20 && day.outcome == Outcome::UncoversElement; ++i) {
    low *= 1.15;
    day = at(low);
  }
  if (spareOf(day) < 0.0) {
    return {.wort = std::nullopt,
            .stoppedBy = binding == Limit::Vessel ? Limit::SmallestBatch : binding};
  }
  double high = 1.5 * low;
  for (int i = 0; i < 40 && spare(high) >= 0.0; ++i) {
    low = high;
    high *= 1.5;
  }
  std::uintmax_t steps = 40;
  const auto bracket = boost::math::tools::toms748_solve(
      spare, low, high, boost::math::tools::eps_tolerance<double>(20), steps);
  const Volume wort = at(bracket.first).resultCold;
  spare(bracket.second);  // names what binds just beyond
  return {.wort = wort, .stoppedBy = binding};
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
    return simulate(other, fixed, place, kForSearching);
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
