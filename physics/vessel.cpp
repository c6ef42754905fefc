// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/vessel.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>

namespace physics {

using std::numbers::pi;

Support onTable(Length vesselDiameter, Length thickness, ThermalConductivity k) {
  const HeatTransferCoefficient below = 1.0 / squareMetreKelvinsPerWatt(0.17);
  const HeatTransferCoefficient above = 1.0 / squareMetreKelvinsPerWatt(0.10);
  const Area base = 0.25 * pi * vesselDiameter * vesselDiameter;
  const ThermalInsulance down = thickness / k + 1.0 / below;
  const double foot = static_cast<double>((0.5 * thickness / k + 1.0 / below) / down);
  const Length radius = 0.5 * vesselDiameter;
  const auto along = k * thickness;  // W/K per metre of girth and per (K/m)
  const double reach = static_cast<double>(radius * sqrt((above + below) / along));
  const double bessel = std::cyl_bessel_k(1.0, reach) / std::cyl_bessel_k(0.0, reach);
  const ThermalConductance sideways = 2.0 * pi * radius * sqrt((above + below) * along) * bessel;
  return {.onLegs = false, .solid = base / (base / down + foot * sideways)};
}

Support onThickFloor(Length vesselDiameter, ThermalConductivity k) {
  // q A = 2 D k dT over an area pi D^2/4.
  return {.onLegs = false, .solid = pi / 8.0 * vesselDiameter / k};
}

Area crossSection(const Vessel& vessel) {
  return 0.25 * pi * vessel.innerDiameter * vessel.innerDiameter;
}

Volume capacity(const Vessel& vessel) { return crossSection(vessel) * vessel.height; }

HeatCapacity wettedHeatCapacity(const Vessel& vessel, Length fill) {
  const Length wet = std::clamp(fill, metres(0.0), vessel.height);
  const Area base = crossSection(vessel);
  const Length girth = pi * vessel.innerDiameter;
  const double share = (base + girth * wet) / (base + girth * vessel.height);
  return share * (vessel.mass * vessel.specificHeat);
}

}  // namespace physics
