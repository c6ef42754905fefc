// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/element.hpp"

#include <cassert>
#include <cmath>
#include <numbers>

namespace physics {

Area HeatedRod::surface() const { return std::numbers::pi * diameter * length; }

Resistance resistance(const Element& element) {
  assert(element.rating > watts(0.0) && element.ratedAt > volts(0.0));
  return element.ratedAt * element.ratedAt / element.rating;
}

Resistance copperLoop(Length oneWay, Area crossSection, Temperature conductor) {
  assert(crossSection > squareMetres(0.0));
  // IEC 60028: 1/58 ohm mm2/m at 20 C.
  const auto resistivity = ohms(1.0 / 58.0 * 1e-6) * metres(1.0);
  const double warmth = (230.0 + inCelsius(conductor)) / 250.0;
  return 2.0 * warmth * resistivity * oneWay / crossSection;
}

Area wireGaugeArea(double gauge) {
  const Length diameter = millimetres(0.127 * std::pow(92.0, (36.0 - gauge) / 39.0));
  return 0.25 * std::numbers::pi * diameter * diameter;
}

ElectricalLoad electricalLoad(const Element& element, const Supply& supply) {
  const Resistance heater = resistance(element);
  const Current current = supply.nominal / (heater + supply.cableLoop);
  return {.current = current,
          .atTerminals = current * heater,
          .delivered = current * current * heater,
          .inCable = current * current * supply.cableLoop,
          .fromWall = current * supply.nominal};
}

Element elementDelivering(Power delivered, const Supply& supply, Length topHeight) {
  // P = V^2 R/(R + r)^2 is a quadratic in the element's resistance R; the larger root is the
  // one that heats the vessel rather than the cable.
  const Resistance r = supply.cableLoop;
  const Resistance open = supply.nominal * supply.nominal / delivered;  // R + 2r + r^2/R
  const Resistance half = 0.5 * (open - 2.0 * r);
  const auto discriminant = half * half - r * r;
  assert(half > ohms(0.0) && discriminant >= ohms(0.0) * ohms(1.0));
  const Resistance heater = half + sqrt(discriminant);
  return {.rating = supply.nominal * supply.nominal / heater,
          .ratedAt = supply.nominal,
          .topHeight = topHeight};
}

Current branchCurrent(const Element& element, const Supply& supply) {
  return supply.nominal / resistance(element);
}

Element largestElementOn(const Supply& supply, Length topHeight) {
  assert(supply.rating > amperes(0.0));
  return {
      .rating = supply.nominal * supply.rating, .ratedAt = supply.nominal, .topHeight = topHeight};
}

}  // namespace physics
