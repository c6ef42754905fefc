// SPDX-License-Identifier: GPL-3.0-or-later
// Wort as a sugar solution: density, heat, boiling point, and the gravity scales.
// Sucrose stands in for wort extract throughout. Extract is a mass fraction 0-1.
#pragma once

#include "physics/units.hpp"

namespace physics {

// Source: ICUMSA polynomial, Bubnik et al., Sugar Technologists Manual (1995) p. 164,
// on Kell's water density (within 2e-5 of waterDensity). Range: extract 0-0.7, 0-100 C (above 85 C
// a mild extrapolation).
MassDensity wortDensity(double extract, Temperature t);

// Apparent specific heat of the dissolved extract, c(t) = 1673 + 7.5 t/C J/(kg K), such that
// water and extract add up to the ICUMSA specific heat of a pure sucrose solution
// 4184 - 2971 x + 460 x + 7.5 x t (Bubnik et al. 1995, as used by Llano 2005).
// Range: extract 0-0.4, 0-105 C. Other published fits lie 3-6 % lower.
SpecificHeat extractSpecificHeat(Temperature t);
SpecificEnergy extractEnthalpy(Temperature t);  // its integral, 0 at 0 C
// Mass-weighted: (1 - x) water + x extract.
SpecificHeat wortSpecificHeat(double extract, Temperature t);

// How much hotter than water a solution boils at the same pressure, by water activity
// (Starzak & Peacock 1997 constants). Range: extract 0-0.7, 50-110 kPa. Measurements of boiling
// sucrose (Brown 1912) lie 0.2-0.35 K above up to 0.5, most of it their own offset, and 1.5 K
// above at 0.7. A wort rich in small sugars may add 0.3 K.
TemperatureDifference boilingPointRise(double extract, Pressure p);
// Where a wort of this extract (mass fraction) boils.
Temperature boilingPoint(double extract, Pressure p);

// Specific gravity 20/20 against extract in percent by mass (degrees Plato).
// Source: the ASBC-table polynomial; clamped to 0 at gravity 1.
// Range: gravity 1.000-1.150 / 0-34 percent; asserted.
double platoFromGravity(double specificGravity);
double gravityFromPlato(double plato);  // 1.00001 at 0, where the polynomial has its root
// The same of an extract as mass fraction, and beyond 0.34 by the density of wort, as far as
// wortDensity() goes.
double gravityOf(double extract);

}  // namespace physics
