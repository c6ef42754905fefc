// SPDX-License-Identifier: GPL-3.0-or-later
// Liquid water near atmospheric pressure, and water on its saturation line.
#pragma once

#include "physics/estimate.hpp"
#include "physics/units.hpp"

namespace physics {

// Liquid water at 0.1 MPa. Within kettle pressures (50-110 kPa) the difference
// is below 3e-5 in density and below the digits shown elsewhere.
//
// Source: IAPWS SR6-08(2011), eqs 1-8 and table 8.
// Range: 253.15-383.15 K (conductivity from 273.15 K); asserted.
MassDensity waterDensity(Temperature t);
SpecificHeat waterSpecificHeat(Temperature t);
// Relative to the reference state of the release (liquid at the triple point).
SpecificEnergy waterEnthalpy(Temperature t);
ThermalExpansion waterExpansion(Temperature t);  // negative below 4 C
DynamicViscosity waterViscosity(Temperature t);
ThermalConductivity waterConductivity(Temperature t);

// All a film correlation asks for, at the price of its one fractional power.
struct WaterProperties {
  MassDensity density;
  SpecificHeat specificHeat;
  ThermalExpansion expansion;
  DynamicViscosity viscosity;
  ThermalConductivity conductivity;
};
WaterProperties waterProperties(Temperature t);

// Saturation line of water.
//
// Source: IAPWS SR1-86(1992), Wagner & Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783.
// Range: 273.16-647.096 K. Below 273.16 K down to 250 K (asserted) the same formula is continued
// over supercooled liquid, for cold rooms: 0.11 % above Murphy & Koop 2005 at 250 K.
Pressure saturationPressure(Temperature t);
PressurePerTemperature saturationPressureSlope(Temperature t);  // dp/dT
struct SlopedPressure {
  Pressure pressure;
  PressurePerTemperature slope;
};
SlopedPressure slopedSaturationPressure(Temperature t);  // both, hardly dearer than one
MassDensity saturatedLiquidDensity(Temperature t);
MassDensity saturatedVapourDensity(Temperature t);

// Heat taken up by evaporation at t, by the Clapeyron equation from the three above.
SpecificEnergy latentHeat(Temperature t);
// The same from a table of it, for inner loops: within 1e-10 from -20 to 110 C, asserted.
// By images, for the inner loop: within 1e-11 of the formulas from -20 to 110 C.
SpecificEnergy latentHeatByImage(Temperature t);
SlopedPressure saturationPressureByImage(Temperature t);
Temperature saturationTemperatureByImage(Pressure p);  // 103 Pa to 143 kPa

// The inverse of saturationPressure, to 1e-10 K. Range: 103 Pa to 1 MPa; asserted.
Temperature saturationTemperature(Pressure p);

}  // namespace physics
