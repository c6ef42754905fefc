// SPDX-License-Identifier: GPL-3.0-or-later
// Room air, dry and moist, and the atmosphere that sets the boiling point.
#pragma once

#include "physics/units.hpp"

namespace physics {

// What convection laws ask of air at a film temperature.
struct AirProperties {
  TemperatureDifference expansionScale;  // 1/beta of an ideal gas: the absolute film temperature
  Diffusivity momentum;                  // kinematic viscosity
  Diffusivity heat;                      // thermal diffusivity
  ThermalConductivity conductivity;
};

// Dry air as a dilute gas at pressure p.
//
// Sources: viscosity and conductivity US Standard Atmosphere 1976 (Sutherland and the
// standard's conductivity formula, 0.35 % below Lemmon & Jacobsen 2004 at 300 K); density of an
// ideal gas; specific heat a quadratic through 1006.14, 1008.02 and 1011.23 J/(kg K) at 20, 60
// and 100 C, computed from the equation of state of Lemmon et al. 2000 at 1 atm.
// Range: 220-420 K, over which viscosity is 0.2-1.0 % low, and conductivity 1.8 % low at the
// cold end, right at 330 K and 0.8 % high at the hot end.
AirProperties dryAir(Temperature film, Pressure p);

// Of water to dry air, ASHRAE Handbook - Fundamentals 2017, ch. 1.
inline constexpr double kMolarMassRatio = 0.621945;

// Moist air by the ideal-gas psychrometric relations of
// ASHRAE Handbook - Fundamentals 2017, ch. 1 (no enhancement factor: saturated humidity
// ratios are 0.4-0.6 % low up to 50 C and about 1.2 % low at 85 C).
struct MoistAir {
  Temperature temperature;
  Pressure pressure;
  Pressure vapourPressure;
  double humidityRatio;       // kg water per kg dry air; infinite when p_w reaches p
  MassDensity dryAirDensity;  // kg of dry air per m3 of moist air
  MassDensity density;        // kg of moist air per m3
  SpecificEnergy enthalpy;    // per kg of dry air, 0 for dry air at 0 C
};

// Relative humidity 0-1 (asserted), over liquid water at all temperatures, as weather services
// state it; ASHRAE counts from ice below 0 C. Vapour pressure is bounded by p. Range: -20 to 100 C.
MoistAir moistAir(Temperature t, double relativeHumidity, Pressure p);
MoistAir saturatedAir(Temperature t, Pressure p);

// The temperature at which this air's vapour begins to condense, as liquid: below 0 C the frost
// point is higher, by 2 K at the cold end. Range: vapour pressures of 103 Pa (-22 C) to 1 MPa;
// asserted, so air of zero humidity must not ask.
Temperature dewPoint(Pressure vapourPressure);

// The standard atmosphere, geopotential altitude -5000 to 11000 m; asserted.
// Source: ICAO / ASHRAE Handbook - Fundamentals 2017, ch. 1 eqs 3-4.
struct StandardAtmosphere {
  Pressure pressure;
  Temperature temperature;
};
StandardAtmosphere standardAtmosphere(Length altitude);

}  // namespace physics
