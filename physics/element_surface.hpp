// SPDX-License-Identifier: GPL-3.0-or-later
// How hot the skin of an immersed element gets: by what flows through it, in water and in a mash.
#pragma once

#include "physics/element.hpp"
#include "physics/units.hpp"

namespace physics {

// Round a horizontal rod in still water, as long as it does not boil there.
//
// Source: Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975) 1049, Ra <= 1e12, with water at the
// midpoint of skin and bulk, from 10 to 105 C (outside as at that end). Water stands in for wort,
// whose viscosity is 1.3-2 times water's: that lowers h by up to a fifth.
HeatTransferCoefficient stillRodFilm(Temperature skin, Temperature bulk, Length diameter);

// How far above the boiling point a surface stands in water that boils on it.
//
// Source: Gorenflo (VDI Heat Atlas), water: h = 5600 F (q/20 kW/m2)^n with n = 0.9 - 0.3 p_r^0.15
// and F = 1.73 p_r^0.27 + (6.1 + 0.68/(1 - p_r)) p_r^2. q > 0, p_r up to 0.9; asserted. Laws of
// boiling differ by a factor of two in this superheat: Rohsenow's and Cooper's are 4-5 K lower at
// 10 W/cm2.
TemperatureDifference boilingSuperheat(HeatFlux q, Pressure p);

// How far above the boiling point a skin is when the first bubbles form on it.
//
// Source: Bergles & Rohsenow, J. Heat Transfer 86 (1964) 365, water:
// q = 1082 p^1.156 (1.8 dT)^(2.16/p^0.0234), p in bar. +-30 %, and more on smooth new surfaces.
TemperatureDifference boilingBeginsAbove(HeatFlux q, Pressure p);

// Of a rod from which q flows into still water: the cooler of what carries it away by its warmth
// alone and of what boils. `boils`: of the liquid. q >= 0, bulk no hotter than `boils`; asserted.
Temperature skinInStillWater(HeatFlux q, Temperature bulk, Length diameter, Pressure p,
                             Temperature boils);
// Where grain rests on it or a mash does not move: no law is printed. A film of
// kStillMashFilm, an assumption, and never more than boiling takes.
Temperature skinInStillMash(HeatFlux q, Temperature bulk, Pressure p, Temperature boils);
// A tenth to a fifth of water's: own assumption, no source.
inline constexpr HeatTransferCoefficient kStillMashFilm = perSquareMetreKelvin(300.0);

// As warm as still water must be for the first bubbles to form on a rod from which q flows: from
// there it sizzles. q > 0, asserted. As low as 0 C where it does so at any temperature.
Temperature sizzlesFrom(HeatFlux q, Length diameter, Pressure p);

// No published limit for mash or wort was found. Common practice, no source: no more than this
// where grain reaches an element, and no more than that in boiling wort.
inline constexpr HeatFlux kMashFluxInPractice = wattsPerSquareMetre(50e3);
inline constexpr HeatFlux kBoilFluxInPractice = wattsPerSquareMetre(80e3);

}  // namespace physics
