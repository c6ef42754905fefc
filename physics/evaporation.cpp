// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/evaporation.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>

#include "physics/constants.hpp"
#include "physics/roots.hpp"
#include "physics/water.hpp"

namespace physics {
namespace {

// Of ideal gases, as in ASHRAE Handbook - Fundamentals 2017, ch. 1.
constexpr double kVapourGasConstant = kDryAirGasConstant / 0.621945;
constexpr double kAirSpecificHeat = 1006.0;  // J/(kg K)

// Between a wall and air a few kelvins warmer: natural convection gives 3 to 5 at kettle size.
constexpr HeatTransferCoefficient kWellFilm = HeatTransferCoefficient::from_value(4.0);

// With the slopes of both densities against temperature. Above boiling nothing changes any more.
struct SlopedSurfaceAir {
  SurfaceAir air;
  double dryAirSlope;  // kg/(m3 K)
  double vapourSlope;
};

SlopedSurfaceAir slopedSurfaceAir(Temperature t, Pressure p) {
  const SlopedPressure saturated = saturationPressureByImage(t);
  const bool boils = saturated.pressure >= p;
  const double kelvin = inKelvin(boils ? saturationTemperatureByImage(p) : t);
  const double pw = inPascals(boils ? p : saturated.pressure);
  const double dryAir = (inPascals(p) - pw) / (kDryAirGasConstant * kelvin);
  const double vapour = pw / (kVapourGasConstant * kelvin);
  const double slope = inPascals(saturated.slope * kelvins(1.0));
  return {.air = {.dryAir = dryAir, .vapour = vapour, .vapourPressure = pw},
          .dryAirSlope = boils ? 0.0 : -(slope / kDryAirGasConstant + dryAir) / kelvin,
          .vapourSlope = boils ? 0.0 : (slope / kVapourGasConstant - vapour) / kelvin};
}

SurfaceAir roomAir(const MoistAir& room) {
  const double pw = inPascals(room.vapourPressure);
  return {.dryAir = inKilogramsPerCubicMetre(room.dryAirDensity),
          .vapour = pw / (kVapourGasConstant * inKelvin(room.temperature)),
          .vapourPressure = pw};
}

// kg/(m2 h), and its slope against the temperature of `far`; K until no air rises any more.
struct NaturalForm {
  double flux;
  double slope;
  double rises;
};

// Air that is not the lighter at the surface does not rise: 0, also with steam alone on both
// sides. Air moister than the surface is such a case.
NaturalForm naturalForm(const SurfaceAir& surface, const SlopedSurfaceAir& far) {
  const double lift = far.air.dryAir - surface.dryAir;
  if (lift <= 0.0) return {0.0, 0.0, std::numeric_limits<double>::infinity()};
  // rho_w (W_w - W_r)
  const double ratio = far.air.vapour / far.air.dryAir;
  const double excess = surface.vapour - surface.dryAir * ratio;
  const double root = cubeRoot(lift);
  const double excessSlope =
      -surface.dryAir * (far.vapourSlope - ratio * far.dryAirSlope) / far.air.dryAir;
  return {35.0 * root * excess,
          35.0 * root * (excessSlope + excess * far.dryAirSlope / (3.0 * lift)),
          -lift / far.dryAirSlope};
}

// kg/(m2 h); negative in air moister than the surface, so that the larger form is the natural's 0.
double forcedForm(const SurfaceAir& surface, const SurfaceAir& room) {
  return 5e-5 * (surface.vapourPressure - room.vapourPressure);
}

}  // namespace

SurfaceAir surfaceAir(Temperature t, Pressure p) { return slopedSurfaceAir(t, p).air; }

MassFlux openSurfaceEvaporation(Temperature water, const MoistAir& room) {
  return draughtyEvaporation(water, room, metresPerSecond(0.0));
}

MassFlux draughtyEvaporation(Temperature water, const MoistAir& room, Velocity draught) {
  return draughtyEvaporation(surfaceAir(water, room.pressure), room, draught);
}

MassFlux draughtyEvaporation(const SurfaceAir& water, const MoistAir& room, Velocity draught) {
  return shahsForms(water, room, draught).larger();
}

MassFlux ShahsForms::larger() const {
  return kilogramsPerSquareMetreSecond(std::max(natural, forced) / 3600.0);
}

ShahsForms shahsForms(const SurfaceAir& water, const MoistAir& room, Velocity draught) {
  assert(draught >= metresPerSecond(0.0));
  const SurfaceAir far = roomAir(room);
  const double natural =
      naturalForm(water, {.air = far, .dryAirSlope = 0.0, .vapourSlope = 0.0}).flux;
  const double raised = (0.089 + 0.0782 * inMetresPerSecond(draught)) / 0.089;
  return {natural, raised * forcedForm(water, far)};
}

// With p_v the vapour's share of the pressure p, dp_v/dT by Clausius and Clapeyron.
WellAir wellAir(const SurfaceAir& wort, Pressure saturatedInRoom, SpecificEnergy latent,
                Pressure p) {
  const double vapour = 0.5 * (wort.vapourPressure + inPascals(saturatedInRoom));
  const Temperature well = saturationTemperatureByImage(pascals(vapour));
  const double t = inKelvin(well);
  const double heat = inJoulesPerKilogram(latent);
  const double latentPerSensible =
      heat / kAirSpecificHeat * (kDryAirGasConstant / kVapourGasConstant) *
      (vapour / inPascals(p)) * (heat / (kVapourGasConstant * t) - 1.0) / t;
  return {well, (1.0 + latentPerSensible) * kWellFilm};
}

MassFlux headspaceCondensation(Temperature water, Temperature lid, Pressure p) {
  return headspaceCondensation(surfaceAir(water, p), lid, p).flux;
}

SlopedMassFlux headspaceCondensation(const SurfaceAir& water, Temperature lid, Pressure p) {
  const NaturalForm perHour = naturalForm(water, slopedSurfaceAir(lid, p));
  return {kilogramsPerSquareMetreSecond(perHour.flux / 3600.0), perHour.slope / 3600.0,
          kelvins(perHour.rises)};
}

}  // namespace physics
