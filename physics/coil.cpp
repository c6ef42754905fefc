// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/coil.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>

#include "physics/convection.hpp"
#include "physics/exchanger.hpp"
#include "physics/tube_film.hpp"
#include "physics/water_film.hpp"

namespace physics {
namespace {

HeatTransferCoefficient outerFilm(Temperature wort, Temperature tube, Length diameter,
                                  Stirring stirring) {
  return stirring == Stirring::Still ? stillCoilFilm(wort, tube, diameter)
                                     : stirredCoilFilm(wort, tube, diameter);
}

CoilState stateOf(ThermalConductance conductance, const Coil& coil, MassFlow water,
                  Temperature inlet, Temperature wort) {
  const ThermalConductance stream = water * waterSpecificHeat(inlet);
  const double effectiveness = mixedEffectiveness(static_cast<double>(conductance / stream));
  return {.overall = conductance / coil.outerFace(),
          .conductance = conductance,
          .effectiveness = effectiveness,
          .taken = effectiveness * stream * (wort - inlet),
          .outlet = inlet + effectiveness * (wort - inlet)};
}

}  // namespace

Area Coil::outerFace() const { return std::numbers::pi * outerDiameter * length; }

ThermalConductance Coil::wall() const {
  return tubeWall(outerDiameter, bore(), length, conductivity);
}

HeatTransferCoefficient stillCoilFilm(Temperature wort, Temperature tube, Length diameter) {
  const WaterFilm water = waterFilm(wort, tube);
  return 0.290 * std::pow(water.rayleigh(diameter), 0.293) * water.properties.conductivity /
         diameter;
}

HeatTransferCoefficient crossFlowFilm(Temperature stream, Temperature tube, Length diameter,
                                      Velocity speed) {
  const WaterFilm film = waterFilm(stream, tube);
  const WaterProperties& water = film.properties;
  const double reynolds = water.density * speed * diameter / water.viscosity;
  const double prandtl = film.prandtl();
  const double nusselt = 0.3 + 0.62 * std::sqrt(reynolds) * std::cbrt(prandtl) /
                                   std::pow(1.0 + std::pow(0.4 / prandtl, 2.0 / 3.0), 0.25) *
                                   std::pow(1.0 + std::pow(reynolds / 282000.0, 0.625), 0.8);
  return nusselt * water.conductivity / diameter;
}

HeatTransferCoefficient stirredCoilFilm(Temperature wort, Temperature tube, Length diameter) {
  return std::max(crossFlowFilm(wort, tube, diameter, kStirredSpeed),
                  stillCoilFilm(wort, tube, diameter));
}

CoilState coilAt(const Coil& coil, MassFlow water, Temperature inlet, Temperature wort,
                 Stirring stirring) {
  assert(inlet >= celsius(0.0) && wort > inlet);
  assert(water > kilogramsPerSecond(0.0));
  const Area outer = coil.outerFace();
  const Area inner = std::numbers::pi * coil.bore() * coil.length;
  // The outer film follows the tube's skin, and that the film, by a power below a third: each round
  // leaves less than a third of the error.
  constexpr int kMostRounds = 40;
  const TemperatureDifference settled = kelvins(1e-8);
  Temperature skin = midpoint(wort, inlet);
  Temperature outlet = midpoint(wort, inlet);
  CoilState state{};
  for (int round = 0; round < kMostRounds; ++round) {
    const auto inside =
        tubeFilm(water, coil.bore(), coil.coilDiameter, waterProperties(midpoint(inlet, outlet)));
    const ThermalConductance film = outerFilm(wort, skin, coil.outerDiameter, stirring) * outer;
    const ThermalConductance conductance =
        1.0 / (1.0 / (inside * inner) + 1.0 / coil.wall() + 1.0 / film);
    state = stateOf(conductance, coil, water, inlet, wort);
    const Temperature next = wort - state.taken / film;
    const bool done = abs(next - skin) < settled && abs(state.outlet - outlet) < settled;
    skin = next;
    outlet = state.outlet;
    if (done) break;
  }
  return state;
}

CoilState coilAtMost(const CoilState& byTheLaw, const Coil& coil, MassFlow water, Temperature inlet,
                     Temperature wort, HeatTransferCoefficient most) {
  if (byTheLaw.overall <= most) return byTheLaw;
  return stateOf(most * coil.outerFace(), coil, water, inlet, wort);
}

}  // namespace physics
