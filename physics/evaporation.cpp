// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/evaporation.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "physics/water.hpp"

namespace physics {
namespace {

// Of ideal gases, as in ASHRAE Handbook - Fundamentals 2017, ch. 1.
constexpr double kDryAirGasConstant = 287.042;  // J/(kg K)
constexpr double kVapourGasConstant = 287.042 / 0.621945;

}  // namespace

SurfaceAir surfaceAir(Temperature t, Pressure p) {
  const Pressure unbounded = saturationPressure(t);
  const bool boils = unbounded >= p;
  const Pressure pw = boils ? p : unbounded;
  const double kelvin = inKelvin(boils ? saturationTemperature(p) : t);
  return {.dryAir = inPascals(p - pw) / (kDryAirGasConstant * kelvin),
          .vapour = inPascals(pw) / (kVapourGasConstant * kelvin),
          .vapourPressure = inPascals(pw)};
}

namespace {

SurfaceAir roomAir(const MoistAir& room) {
  const double pw = inPascals(room.vapourPressure);
  return {.dryAir = inKilogramsPerCubicMetre(room.dryAirDensity),
          .vapour = pw / (kVapourGasConstant * inKelvin(room.temperature)),
          .vapourPressure = pw};
}

// Both forms give kg/(m2 h). Air that is not the lighter at the surface does not rise: 0, also with
// steam alone on both sides. Air moister than the surface is such a case, and the forced form is
// negative there, so that the larger of the two is 0.
double naturalForm(const SurfaceAir& surface, const SurfaceAir& room) {
  const double lift = room.dryAir - surface.dryAir;
  if (lift <= 0.0) return 0.0;
  // rho_w (W_w - W_r)
  const double excess = surface.vapour - surface.dryAir * (room.vapour / room.dryAir);
  return 35.0 * std::cbrt(lift) * excess;
}
double forcedForm(const SurfaceAir& surface, const SurfaceAir& room) {
  return 5e-5 * (surface.vapourPressure - room.vapourPressure);
}

}  // namespace

MassFlux openSurfaceEvaporation(Temperature water, const MoistAir& room) {
  return draughtyEvaporation(water, room, metresPerSecond(0.0));
}

MassFlux draughtyEvaporation(Temperature water, const MoistAir& room, Velocity draught) {
  assert(draught >= metresPerSecond(0.0));
  const SurfaceAir surface = surfaceAir(water, room.pressure);
  const SurfaceAir far = roomAir(room);
  const double raised = (0.089 + 0.0782 * inMetresPerSecond(draught)) / 0.089;
  const double perHour = std::max(naturalForm(surface, far), raised * forcedForm(surface, far));
  return kilogramsPerSquareMetreSecond(perHour / 3600.0);
}

MassFlux headspaceCondensation(Temperature water, Temperature lid, Pressure p) {
  return headspaceCondensation(surfaceAir(water, p), surfaceAir(lid, p));
}

MassFlux headspaceCondensation(const SurfaceAir& water, const SurfaceAir& lid) {
  const double perHour = naturalForm(water, lid);
  return kilogramsPerSquareMetreSecond(perHour / 3600.0);
}

}  // namespace physics
