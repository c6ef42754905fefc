// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/exchanger.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>

#include "physics/tube_film.hpp"
#include "physics/water.hpp"

namespace physics {
namespace {

// The heat of fusion at 0 C (IAPWS; 333.4 to 333.6 as printed elsewhere).
constexpr SpecificEnergy kMelting = joulesPerKilogram(334e3);

Temperature withinTheFilms(Temperature t) { return std::clamp(t, celsius(0.0), celsius(105.0)); }

}  // namespace

double mixedEffectiveness(double ntu) { return -std::expm1(-ntu); }

double counterflowEffectiveness(double ntu, double ratio) {
  assert(ntu >= 0.0 && 0.0 <= ratio && ratio <= 1.0);
  // Near equal streams the form below is 0/0; its limit is within 1e-9 there.
  if (1.0 - ratio < 1e-9) return ntu / (1.0 + ntu);
  const double fall = std::expm1(-ntu * (1.0 - ratio));  // e^-x - 1
  return -fall / (1.0 - ratio * (1.0 + fall));
}

Time mixedChillTime(HeatCapacity pot, ThermalConductance conductance, ThermalConductance stream,
                    Temperature inlet, Temperature from, Temperature to) {
  assert(to > inlet && from >= to);
  const double effectiveness = mixedEffectiveness(static_cast<double>(conductance / stream));
  const double fall = (from - inlet) / (to - inlet);
  return pot / (effectiveness * stream) * std::log(fall);
}

Mass iceFor(Energy heat, Temperature end) {
  const SpecificEnergy warmed = waterEnthalpy(end) - waterEnthalpy(celsius(0.0));
  return heat / (kMelting + warmed);
}

OnePass counterflowPass(ThermalConductance conductance, const HotStream& hot,
                        const ColdStream& cold) {
  assert(hot.inlet > cold.inlet);
  const ThermalConductance wort = hot.flow * hot.specificHeat;
  const ThermalConductance water = cold.flow * waterSpecificHeat(cold.inlet);
  const ThermalConductance least = std::min(wort, water);
  assert(least > wattsPerKelvin(0.0));
  const double ntu = conductance / least;
  const double ratio = least / std::max(wort, water);
  const double effectiveness = counterflowEffectiveness(ntu, ratio);
  const Power passed = effectiveness * least * (hot.inlet - cold.inlet);
  return {.conductance = conductance,
          .effectiveness = effectiveness,
          .passed = passed,
          .hotOut = hot.inlet - passed / wort,
          .coldOut = cold.inlet + passed / water};
}

OnePass counterflowPass(const TubeInHose& exchanger, const HotStream& hot, const ColdStream& cold) {
  const Length bore = exchanger.outerDiameter - 2.0 * exchanger.wallThickness;
  const Length ring = exchanger.hoseBore - exchanger.outerDiameter;
  assert(bore > metres(0.0) && ring > metres(0.0));
  const Area inner = std::numbers::pi * bore * exchanger.length;
  const Area outer = std::numbers::pi * exchanger.outerDiameter * exchanger.length;
  const ThermalConductance wall =
      tubeWall(exchanger.outerDiameter, bore, exchanger.length, exchanger.conductivity);
  // Re = 4 m/(pi (D + d) mu) in a ring of hydraulic diameter D - d: as in a tube of that diameter
  // with this share of the flow.
  const double share = ring / (exchanger.hoseBore + exchanger.outerDiameter);
  OnePass pass{.conductance = wall,
               .effectiveness = 0.5,
               .passed = watts(0.0),
               .hotOut = midpoint(hot.inlet, cold.inlet),
               .coldOut = midpoint(hot.inlet, cold.inlet)};
  // Only the streams' properties follow the outlets: a few rounds reach the last digits.
  for (int round = 0; round < 20; ++round) {
    const auto wort = waterProperties(withinTheFilms(midpoint(hot.inlet, pass.hotOut)));
    const auto water = waterProperties(withinTheFilms(midpoint(cold.inlet, pass.coldOut)));
    const auto inside = tubeFilm(hot.flow, bore, exchanger.coilDiameter, wort) * inner;
    const auto outside = tubeFilm(share * cold.flow, ring, exchanger.coilDiameter, water) * outer;
    const ThermalConductance conductance = 1.0 / (1.0 / inside + 1.0 / wall + 1.0 / outside);
    const Temperature before = pass.hotOut;
    pass = counterflowPass(conductance, hot, cold);
    if (abs(pass.hotOut - before) < kelvins(1e-9)) break;
  }
  return pass;
}

}  // namespace physics
