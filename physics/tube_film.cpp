// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/tube_film.hpp"

#include <array>
#include <cmath>
#include <numbers>

#include "physics/walls.hpp"

namespace physics {
namespace {

constexpr double kLaminarEndsInTube = 2300.0;
constexpr double kTurbulentInTube = 4000.0;
constexpr double kLaminarNusselt = 3.66;

double gnielinski(double reynolds, double prandtl) {
  const double root = 0.79 * std::log(reynolds) - 1.64;
  const double eighth = 1.0 / (8.0 * root * root);  // f/8
  return eighth * (reynolds - 1000.0) * prandtl /
         (1.0 + 12.7 * std::sqrt(eighth) * (std::pow(prandtl, 2.0 / 3.0) - 1.0));
}

double tubeNusselt(double reynolds, double prandtl) {
  if (reynolds <= kLaminarEndsInTube) return kLaminarNusselt;
  if (reynolds >= kTurbulentInTube) return gnielinski(reynolds, prandtl);
  const double way = (reynolds - kLaminarEndsInTube) / (kTurbulentInTube - kLaminarEndsInTube);
  return (1.0 - way) * kLaminarNusselt + way * gnielinski(kTurbulentInTube, prandtl);
}

}  // namespace

HeatTransferCoefficient tubeFilm(MassFlow flow, Length bore, Length coilDiameter,
                                 const WaterProperties& water) {
  const double reynolds = 4.0 * flow / (std::numbers::pi * bore * water.viscosity);
  const double prandtl = water.viscosity * water.specificHeat / water.conductivity;
  const double bend = bore / coilDiameter;
  return tubeNusselt(reynolds, prandtl) * (1.0 + 3.5 * bend) * water.conductivity / bore;
}

ThermalConductance tubeWall(Length outer, Length bore, Length length, ThermalConductivity k) {
  const std::array wall{layerOf(0.5 * (outer - bore), k)};
  return std::numbers::pi * bore * length / cylindricalInsulance(0.5 * bore, wall);
}

}  // namespace physics
