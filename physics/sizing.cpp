// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/sizing.hpp"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>

#include "physics/searched_days.hpp"

namespace physics {
namespace {

// By this share more than the threshold, a day is done in hours and not in days.
constexpr double kJustEnough = 1e-6;

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

Power mostOnSupply(const Rig& rig) {
  const Length top = rig.element.topHeight;
  Power most = electricalLoad(largestElementOn(rig.supply, top), rig.supply).delivered;
  if (rig.second) {
    const Supply& other = rig.second->supply;
    most += electricalLoad(largestElementOn(other, top), other).delivered;
  }
  return most;
}

PowerAnswer noPower(Limit because) { return {.power = std::nullopt, .stoppedBy = because}; }

PowerAnswer answer(const Rig& rig, Power power, Mass water) {
  const bool carried = power <= mostOnSupply(rig);
  return {.power = power,
          .onThisSupply = carried,
          .stoppedBy = carried ? Limit::None : Limit::Circuit,
          .water = water};
}

// By how much faster it went than it must, as a share, which goes about in proportion to the power.
double swifter(std::optional<Time> taken, Time within) {
  return taken ? static_cast<double>((within - *taken) / *taken) : -1.0;
}

// How long a stage took; nothing if the day ended in it or before it.
std::optional<Time> lasted(const BrewDay& day, StageKind kind) {
  const Stage* stage = day.find(kind);
  if (!stage) return std::nullopt;
  if (!day.finished() && stage == &day.stages.back()) return std::nullopt;
  return stage->end - stage->begin;
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

// A power, and what is poured with it.
struct Least {
  Power power;
  Mass water;
};

// Least power that gets through every stage and rolls. With it another amount of water may be
// poured, and another share of it be left when the boil begins: a few days settle it.
std::optional<Least> leastForTheDay(const Rig& rig, const Batch& batch, const Place& place) {
  // A very strong element shows the threshold without coming near it; it would boil the batch dry,
  // so not for long.
  Batch brief = poured(rig, batch, place);
  brief.boil = std::min(brief.boil, seconds(1.0));
  brief.additions.clear();  // they come after what is asked
  const BrewDay strong = simulate(unlimited(rig, kStrongestElement), brief, place, kForSearching);
  if (!strong.leastToBoil) return std::nullopt;
  Days days(rig, batch, place, massOf(brief));
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
  if (!rolls(days, power)) {
    const auto found = leastByTrying(days, power);
    return found ? std::optional(Least{*found, days.water()}) : std::nullopt;
  }
  // What strike takes was read off days with another amount of water: it is a bound, no fixed
  // point.
  if (!boils) power = leastBetween(days, stopped, power);
  return Least{power, days.water()};
}

// The least power whose day is not short of what is asked, for one wish.
template <class SurplusOf>
class PowerSearch {
 public:
  PowerSearch(Days& days, const SurplusOf& surplusOf) : days_(days), surplusOf_(surplusOf) {}

  // From a power that gets through the day.
  std::optional<Power> from(double least) {
    Tried low{least, surplus(least)};
    if (low.surplus >= 0.0) return watts(least);
    // Upwards in steps, for the strongest of elements would boil the batch dry.
    const double strongest = inWatts(kStrongestElement);
    while (low.power < strongest) {
      const double power = std::min(1.5 * low.power, strongest);
      const Tried high{power, surplus(power)};
      if (high.surplus >= 0.0) return between(low, high);
      low = high;
    }
    return std::nullopt;
  }

 private:
  struct Tried {
    double power, surplus;
    double slopeTo(const Tried& other) const {
      return (other.surplus - surplus) / (other.power - power);
    }
  };
  double surplus(double watt) { return surplusOf_(days_.with(watts(watt))); }
  double told(double watt) { return surplusOf_(days_.told(watts(watt))); }

  // Nearer than days followed as roughly as a search does can tell; then by those that are told.
  Power between(Tried low, Tried high) {
    constexpr double kRoughly = 2e-6;
    std::uintmax_t steps = 60;
    const auto [under, over] = boost::math::tools::toms748_solve(
        [&](double watt) {
          const Tried tried{watt, surplus(watt)};
          (tried.surplus < 0.0 ? low : high) = tried;
          return tried.surplus;
        },
        low.power, high.power, low.surplus, high.surplus,
        [](double a, double b) { return std::abs(b - a) <= kRoughly * std::abs(b); }, steps);
    return watts(kept(over, low.slopeTo(high)));
  }

  // What the told day keeps, and hardly more: chords from where the search ended. Where they do not
  // close in, steps that grow.
  double kept(double power, double slope) {
    constexpr double kNear = 1e-9;  // as a share
    Tried here{power, told(power)};
    for (int i = 0; i < 6 && slope > 0.0; ++i) {
      const double missing = -here.surplus / slope;
      if (missing <= 0.0 && -missing <= 2.0 * kNear * here.power) return here.power;
      const double next = here.power + missing + kNear * here.power;
      if (std::abs(next - power) > 1e-4 * power) break;
      const Tried there{next, told(next)};
      if (std::abs(missing) > 10.0 * kNear * here.power) slope = here.slopeTo(there);
      here = there;
    }
    double enough = std::max(power, here.power);
    for (double more = kNear; told(enough) < 0.0 && more < 1e-5; more *= 4.0) enough *= 1.0 + more;
    return enough;
  }

  Days& days_;
  const SurplusOf& surplusOf_;
};

// Every answer also gets through the day.
template <class SurplusOf>
PowerAnswer searchPower(const Rig& rig, const Batch& batch, const Place& place, Limit otherwise,
                        const PowerAnswer* atAll, const SurplusOf& surplusOf) {
  std::optional<Least> least;
  if (!atAll) {
    least = leastForTheDay(rig, batch, place);
  } else if (atAll->power) {
    least = Least{*atAll->power, atAll->water};
  }
  if (!least) return noPower(Limit::Boiling);
  Days days(rig, batch, place, least->water);
  const auto power = PowerSearch(days, surplusOf).from(inWatts(least->power));
  return power ? answer(rig, *power, days.water()) : noPower(otherwise);
}

}  // namespace

Rig withDelivered(const Rig& rig, Power power) {
  Rig other = rig;
  other.second.reset();
  other.element = elementDelivering(power, rig.supply, rig.element.topHeight);
  return other;
}

PowerAnswer powerToBoilAtAll(const Rig& rig, const Batch& batch, const Place& place) {
  const auto least = leastForTheDay(rig, batch, place);
  return least ? answer(rig, least->power, least->water) : noPower(Limit::Boiling);
}

std::optional<EdgeOfTheBoil> edgeOfTheBoil(const Rig& rig, const Batch& batch, const Place& place,
                                           const PowerAnswer* atAll) {
  const auto leastAt = [&](double factor) {
    Rig other = rig;
    other.evaporationFactor *= factor;
    return powerToBoilAtAll(other, batch, place);
  };
  const PowerAnswer asIs = atAll ? *atAll : powerToBoilAtAll(rig, batch, place);
  const PowerAnswer less = leastAt(1.0 - kEvaporationScatter);
  const PowerAnswer more = leastAt(1.0 + kEvaporationScatter);
  if (!asIs.power || !less.power || !more.power) return std::nullopt;
  return EdgeOfTheBoil{
      .least = *asIs.power, .ifLessEvaporates = *less.power, .ifMoreEvaporates = *more.power};
}

PowerAnswer powerToBoilWithin(const Rig& rig, const Batch& batch, const Place& place, Time within,
                              const PowerAnswer* atAll) {
  return searchPower(rig, batch, place, Limit::TimeAllowed, atAll, [&](const BrewDay& day) {
    return swifter(lasted(day, StageKind::HeatingToBoil), within);
  });
}

PowerAnswer powerToStrikeWithin(const Rig& rig, const Batch& batch, const Place& place, Time within,
                                const PowerAnswer* atAll) {
  if (batch.grain.mass <= kilograms(0.0)) return {};
  return searchPower(rig, batch, place, Limit::TimeAllowed, atAll, [&](const BrewDay& day) {
    return swifter(lasted(day, StageKind::Strike), within);
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
