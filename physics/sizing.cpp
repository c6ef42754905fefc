// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/sizing.hpp"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>

#include "physics/water.hpp"

namespace physics {
namespace {

// A search needs each day only to about what a person could see; a hundredth of the answer's
// tolerance is plenty and takes a third of the time.
// By this share more than the threshold, a day is done in hours and not in days.
constexpr double kJustEnough = 1e-6;
constexpr SimulationOptions kForSearching{.curves = false,
                                          .relativeTolerance = 1e-7,
                                          .waterGuess = kilograms(0.0),
                                          .leastForAnyPower = false};

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
  rig.second.reset();
  rig.element = elementDelivering(delivered, rig.supply, rig.element.topHeight);
  return rig;
}

Power mostOnSupply(const Rig& rig) {
  const Length top = rig.element.topHeight;
  Power most = electricalLoad(largestElementOn(rig.supply, top), rig.supply).delivered;
  if (rig.second) {
    const Supply& other = rig.second->supply;
    most += electricalLoad(largestElementOn(other, top), other).delivered;
  }
  return most;
}

PowerAnswer answer(const Rig& rig, std::optional<double> watt, Limit otherwise) {
  if (!watt) return {.power = std::nullopt, .onThisSupply = false, .stoppedBy = otherwise};
  const Power power = watts(*watt);
  const bool carried = power <= mostOnSupply(rig);
  return {
      .power = power, .onThisSupply = carried, .stoppedBy = carried ? Limit::None : Limit::Circuit};
}

// Days of one rig and batch with other elements. Where a finished volume is wanted, the water
// poured follows what boils off; the last day's water is the next one's first guess.
class Days {
 public:
  Days(const Rig& rig, const Batch& batch, const Place& place)
      : rig_(rig), batch_(batch), place_(place) {}

  BrewDay with(Power delivered) { return with(delivered, kForSearching.relativeTolerance); }
  // As it is told: what an answer promises, this day must keep.
  BrewDay told(Power delivered) { return with(delivered, SimulationOptions{}.relativeTolerance); }

 private:
  BrewDay with(Power delivered, double tolerance) {
    options_.relativeTolerance = tolerance;
    BrewDay day = simulate(unlimited(rig_, delivered), batch_, place_, options_);
    if (day.finished()) options_.waterGuess = day.water * waterDensity(celsius(20.0));
    return day;
  }

  const Rig& rig_;
  const Batch& batch_;
  const Place& place_;
  SimulationOptions options_ = kForSearching;
};

// The same day with the poured water fixed, so that a search over lids or sizes needs one
// simulation a guess.
Batch poured(const Rig& rig, const Batch& batch, const Place& place) {
  Batch fixed = batch;
  fixed.size = PouredWater{simulate(rig, batch, place, kForSearching).water};
  return fixed;
}

// How long a stage took; nothing if the day ended in it or before it.
std::optional<Time> lasted(const BrewDay& day, StageKind kind) {
  const Stage* stage = day.find(kind);
  if (!stage) return std::nullopt;
  if (!day.finished() && stage == &day.stages.back()) return std::nullopt;
  return stage->end - stage->begin;
}

// By how much this day's heat is more than the least that gets past where it stopped or, had it
// not, rolls; nothing where heat is not what it lacks.
std::optional<Power> spareOf(const BrewDay& day) {
  const Power heat = day.electrical.delivered;
  if (day.finished()) return heat - *day.leastToBoil;
  if (day.levelsOff) return heat - day.levelsOff->atWanted;
  return std::nullopt;
}

bool rolls(Days& days, Power p) { return days.told(p).outcome == Outcome::Done; }

// Between a power whose day does not roll and one whose day does.
Power leastBetween(Days& days, Power low, Power high) {
  while (high - low > kJustEnough * high) {
    const Power middle = 0.5 * (low + high);
    (rolls(days, middle) ? high : low) = middle;
  }
  return high;
}

// Upwards from a power whose day does not roll to the least that does: the rest of a search that
// heat alone does not decide, as where a weak element takes so long that it stands dry.
std::optional<Power> leastByTrying(Days& days, Power tooLittle) {
  Power low = tooLittle;
  Power high = low;
  do {
    if (high >= kStrongestElement) return std::nullopt;
    low = high;
    high = std::min(1.05 * high, kStrongestElement);
  } while (!rolls(days, high));
  return leastBetween(days, low, high);
}

// Least power that gets through every stage and rolls. With it another amount of water may be
// poured, and another share of it be left when the boil begins: a few days settle it.
std::optional<Power> leastForTheDay(const Rig& rig, const Batch& batch, const Place& place) {
  // A very strong element shows the threshold without coming near it; it would boil the batch dry,
  // so not for long.
  Batch brief = poured(rig, batch, place);
  brief.boil = std::min(brief.boil, seconds(1.0));
  brief.additions.clear();  // they come after what is asked
  const BrewDay strong = simulate(unlimited(rig, kStrongestElement), brief, place, kForSearching);
  if (!strong.leastToBoil) return std::nullopt;
  Days days(rig, batch, place);
  Power power = *strong.leastToBoil;
  Power beforeTheBoil = watts(0.0);  // what strike and rests take, where that is more
  Power stopped = watts(0.0);        // the most that still stops there
  for (int i = 0; i < 8; ++i) {
    const BrewDay day = days.with((1.0 + kJustEnough) * power);
    const auto spare = spareOf(day);
    if (!spare) break;
    const Power least = day.electrical.delivered - *spare;
    if (!day.finished()) {
      beforeTheBoil = std::max(beforeTheBoil, least);
      stopped = std::max(stopped, day.electrical.delivered);
    }
    const Power before = power;
    power = std::max(least, beforeTheBoil);
    if (abs(power - before) < 0.1 * kJustEnough * power) break;
  }
  const bool boils = power > beforeTheBoil;
  power *= 1.0 + kJustEnough;
  if (!rolls(days, power)) return leastByTrying(days, power);
  // What strike takes was read off days with another amount of water: it is a bound, no fixed
  // point.
  return boils ? power : leastBetween(days, stopped, power);
}

// The least power whose day is not short of what is asked; every answer also gets through the day.
template <class SurplusOf>
PowerAnswer searchPower(const Rig& rig, const Batch& batch, const Place& place, Limit otherwise,
                        const PowerAnswer* atAll, const SurplusOf& surplusOf) {
  const auto least = atAll ? atAll->power : leastForTheDay(rig, batch, place);
  if (!least) return answer(rig, std::nullopt, Limit::Boiling);
  Days days(rig, batch, place);
  const auto surplus = [&](double watt) { return surplusOf(days.with(watts(watt))); };
  // Upwards in steps, for the strongest of elements would boil the batch dry.
  double low = inWatts(*least);
  double atLow = surplus(low);
  if (atLow >= 0.0) return answer(rig, low, otherwise);
  const double strongest = inWatts(kStrongestElement);
  while (low < strongest) {
    const double high = std::min(1.5 * low, strongest);
    const double atHigh = surplus(high);
    if (atHigh >= 0.0) {
      std::uintmax_t steps = 60;
      const auto bracket = boost::math::tools::toms748_solve(
          surplus, low, high, atLow, atHigh, boost::math::tools::eps_tolerance<double>(28), steps);
      // The day that is told is followed more closely than those of the search.
      double enough = bracket.second;
      for (double more = 1e-9; surplusOf(days.told(watts(enough))) < 0.0 && more < 1e-5;) {
        enough *= 1.0 + more;
        more *= 4.0;
      }
      return answer(rig, enough, otherwise);
    }
    low = high;
    atLow = atHigh;
  }
  return answer(rig, std::nullopt, otherwise);
}

}  // namespace

Rig withDelivered(const Rig& rig, Power power) {
  Rig other = rig;
  other.second.reset();
  other.element = elementDelivering(power, rig.supply, rig.element.topHeight);
  return other;
}

Batch scaled(const Batch& batch, double factor) {
  Batch other = batch;
  other.grain.mass = factor * batch.grain.mass;
  for (Addition& addition : other.additions) addition.mass *= factor;
  if (other.rinse) other.rinse->atTwentyDegrees *= factor;
  if (auto* water = std::get_if<PouredWater>(&other.size)) {
    water->atTwentyDegrees *= factor;
  } else {
    std::get<WantedWort>(other.size).atTwentyDegrees *= factor;
  }
  return other;
}

PowerAnswer powerToBoilAtAll(const Rig& rig, const Batch& batch, const Place& place) {
  const auto least = leastForTheDay(rig, batch, place);
  return answer(rig, least ? std::optional(inWatts(*least)) : std::nullopt, Limit::Boiling);
}

std::optional<EdgeOfTheBoil> edgeOfTheBoil(const Rig& rig, const Batch& batch, const Place& place,
                                           const PowerAnswer* atAll) {
  const auto leastAt = [&](double factor) {
    Rig other = rig;
    other.evaporationFactor *= factor;
    return leastForTheDay(other, batch, place);
  };
  const auto least = atAll ? atAll->power : leastForTheDay(rig, batch, place);
  const auto less = leastAt(1.0 - kEvaporationScatter);
  const auto more = leastAt(1.0 + kEvaporationScatter);
  if (!least || !less || !more) return std::nullopt;
  return EdgeOfTheBoil{.least = *least, .ifLessEvaporates = *less, .ifMoreEvaporates = *more};
}

PowerAnswer powerToBoilWithin(const Rig& rig, const Batch& batch, const Place& place, Time within,
                              const PowerAnswer* atAll) {
  return searchPower(rig, batch, place, Limit::TimeAllowed, atAll, [&](const BrewDay& day) {
    const auto taken = lasted(day, StageKind::HeatingToBoil);
    return taken ? inMinutes(within - *taken) : -1e4;
  });
}

PowerAnswer powerToStrikeWithin(const Rig& rig, const Batch& batch, const Place& place, Time within,
                                const PowerAnswer* atAll) {
  if (batch.grain.mass <= kilograms(0.0)) return {};
  return searchPower(rig, batch, place, Limit::TimeAllowed, atAll, [&](const BrewDay& day) {
    const auto taken = lasted(day, StageKind::Strike);
    return taken ? inMinutes(within - *taken) : -1e4;
  });
}

PowerAnswer powerForBoilOff(const Rig& rig, const Batch& batch, const Place& place,
                            double sharePerHour, const PowerAnswer* atAll) {
  Batch boiling = batch;
  if (boiling.boil <= seconds(0.0)) {
    boiling.boil = minutes(60.0);
    atAll = nullptr;  // of another batch
  }
  return searchPower(rig, boiling, place, Limit::BoilVigour, atAll, [&](const BrewDay& day) {
    return day.boil ? day.boil->shareOfPreBoilPerHour - sharePerHour : -1.0;
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
  const auto roomLeft = [&](const BrewDay& day) {
    const double vessel = static_cast<double>((room - day.fullest) / room);
    if (!day.finished() || !day.boil) {
      binding = day.outcome == Outcome::UncoversElement ? Limit::SmallestBatch : Limit::Boiling;
      const double missing =
          day.levelsOff ? inKelvins(day.levelsOff->wanted - day.levelsOff->at) : 1000.0;
      return std::min(vessel, -1e-3 * (1.0 + std::abs(missing)));
    }
    const double vigour = (day.boil->shareOfPreBoilPerHour - sharePerHour) / sharePerHour;
    const double rolls = static_cast<double>(*spareOf(day) / day.electrical.delivered);
    const double least = std::min({vessel, vigour, rolls});
    binding = day.outcome != Outcome::Done || least == rolls ? Limit::Boiling
              : least == vessel                              ? Limit::Vessel
                                                             : Limit::BoilVigour;
    return day.outcome == Outcome::Done ? least : std::min(least, -1e-9);
  };
  const auto spare = [&](double factor) { return roomLeft(at(factor)); };

  // The smallest batch that keeps the element covered, and from there up until something binds.
  const Volume whole = std::get<PouredWater>(unit.size).atTwentyDegrees;
  double low =
      std::max(0.02, static_cast<double>(crossSection(rig.vessel) * rig.element.topHeight / whole));
  BrewDay day = at(low);
  // A strong element boils small batches dry: they only get through nearer the vessel's size.
  while (day.outcome == Outcome::UncoversElement && day.fullest < room) {
    low *= 1.15;
    day = at(low);
  }
  if (roomLeft(day) < 0.0) {
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
  const BrewDay largest = at(bracket.first);
  spare(bracket.second);  // names what binds just beyond
  // An element that boils harder than wanted can be turned down: less wort is lost.
  const double spared =
      largest.boil ? (largest.boil->shareOfPreBoilPerHour - sharePerHour) * inHours(batch.boil)
                   : 0.0;
  const Volume turnedDown = largest.resultCold + spared * largest.preBoilCold;
  return {.wort = std::max(largest.resultCold, turnedDown), .stoppedBy = binding};
}

WhatWouldBoil whatWouldBoil(const Rig& rig, const Rig* jacketed, const Batch& batch,
                            const Place& place) {
  WhatWouldBoil what;
  what.power = powerToBoilAtAll(rig, batch, place).power;
  const Batch whole = poured(rig, batch, place);
  const auto withLid = [&](double closed) {
    Rig other = rig;
    for (double* open : {&other.vessel.open.strike, &other.vessel.open.mash,
                         &other.vessel.open.heating, &other.vessel.open.boil}) {
      *open = std::min(*open, 1.0 - closed);
    }
    return other;
  };
  const auto spare = [&](double closed) {
    const BrewDay day = simulate(withLid(closed), whole, place, kForSearching);
    const auto watt = spareOf(day);
    if (!watt) return -1e6;
    // Heat enough, and yet it takes for ever.
    if (day.outcome != Outcome::Done) return std::min(inWatts(*watt), -1e-9);
    return inWatts(*watt);
  };
  if (const auto closed = firstPassing(0.0, 1.0, spare)) {
    what.openFraction = 1.0 - *closed;
  } else {
    const BrewDay day = simulate(withLid(1.0), whole, place, kForSearching);
    if (day.levelsOff) what.levelWithLid = day.levelsOff->at;
  }
  if (jacketed) {
    const BrewDay day = simulate(*jacketed, whole, place, kForSearching);
    what.jacketBoils = day.outcome == Outcome::Done;
    if (day.levelsOff) what.levelWithJacket = day.levelsOff->at;
  }
  return what;
}

}  // namespace physics
