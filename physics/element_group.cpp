// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/element_group.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace physics {

Element combined(const std::vector<Element>& elements, Wiring wiring) {
  assert(!elements.empty());
  Element all = elements.front();
  if (elements.size() > 1) all.rod.reset();
  Resistance whole = resistance(all);
  for (std::size_t i = 1; i < elements.size(); ++i) {
    const Resistance next = resistance(elements[i]);
    whole = wiring == Wiring::Series ? whole + next : Resistance(whole * next / (whole + next));
    all.topHeight = std::max(all.topHeight, elements[i].topHeight);
  }
  // Each gets its share of the voltage, all of it in parallel: the weakest sets the group's limit.
  for (const Element& one : elements) {
    const double share =
        wiring == Wiring::Series ? static_cast<double>(resistance(one) / whole) : 1.0;
    const Voltage limit = one.ratedAt / share;
    all.ratedAt = &one == &elements.front() ? limit : std::min(all.ratedAt, limit);
  }
  all.rating = all.ratedAt * all.ratedAt / whole;
  return all;
}

ElectricalLoad together(const ElectricalLoad& first, const ElectricalLoad& second) {
  ElectricalLoad both = first;
  both.delivered += second.delivered;
  both.inCable += second.inCable;
  both.fromWall += second.fromWall;
  return both;
}

Power leastRating(const Element& element, const RatingTolerance& tolerance) {
  return (1.0 - tolerance.below) * element.rating;
}

Power mostRating(const Element& element, const RatingTolerance& tolerance) {
  return element.rating + std::max(tolerance.above * element.rating, tolerance.atLeast);
}

Element rated(const Element& element, Power rating) {
  Element other = element;
  other.rating = rating;
  return other;
}

LoadSpread loadSpread(const Element& element, const Supply& supply, Voltage lowest, Voltage highest,
                      const RatingTolerance& tolerance) {
  Supply low = supply;
  low.nominal = lowest;
  Supply high = supply;
  high.nominal = highest;
  return {.least = electricalLoad(rated(element, leastRating(element, tolerance)), low),
          .nominal = electricalLoad(element, supply),
          .most = electricalLoad(rated(element, mostRating(element, tolerance)), high)};
}

Resistance coldResistance(const Element& element, double hotOverCold) {
  return resistance(element) / hotOverCold;
}

Length longestCable(double share, Voltage nominal, Current current,
                    ResistancePerLength loopPerLength) {
  assert(current > amperes(0.0));
  return share * nominal / (current * loopPerLength);
}

Area leastConductor(double share, Voltage nominal, Current current, Length oneWay,
                    Resistivity resistivity) {
  assert(share > 0.0);
  return 2.0 * resistivity * oneWay * current / (share * nominal);
}

double ambientFactor(Temperature conductorLimit, Temperature tabledAmbient, Temperature ambient) {
  const double left =
      inKelvins(conductorLimit - ambient) / inKelvins(conductorLimit - tabledAmbient);
  return left <= 0.0 ? 0.0 : std::sqrt(left);
}

}  // namespace physics
