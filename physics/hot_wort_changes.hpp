// SPDX-License-Identifier: GPL-3.0-or-later
// What time and heat do to hops and to the precursor of DMS in wort, all of the first order: rates,
// how many minutes at 100 C a temperature curve is worth, and what becomes of the substances on it.
#pragma once

#include <vector>

#include "physics/units.hpp"

namespace physics {

using ReactionRate = units_detail::Per<Quantity<si::dimensionless>, Time>;
constexpr ReactionRate perMinute(double n) { return n / minutes(1.0); }
inline double inPerMinute(ReactionRate r) { return static_cast<double>(r * minutes(1.0)); }

// Alpha acids of hops to iso-alpha acids: 7.9e11 exp(-11858/T) a minute, T in K (Malowicki &
// Shellhammer, J. Agric. Food Chem. 53 (2005) 4434). Measured from 90 to 130 C at pH 5.2; colder it
// is extended. Sugar, calcium and pH from 4.8 to 6.0 did not change it (Malowicki, thesis, 2004).
ReactionRate isoFormation(Temperature t);
inline constexpr Temperature kIsoMeasuredFrom = celsius(90.0);
// Iso-alpha acids still form below it, but bitterness no longer goes with them: wort hopped at 63 C
// has half the bitterness units of a boil and few iso-alpha acids.
inline constexpr Temperature kBitternessFrom = celsius(80.0);

// S-methyl methionine of malt to dimethyl sulfide: half in 35 min at 100 C (Wilson & Booer, J.
// Inst. Brew. 1979), in twice the time 6 K cooler (Fix, Principles of Brewing Science, 1999), from
// which 131.6 kJ/mol is derived (own). 32 to 38 min were measured from pH 5.5 to 5.2 (Dickenson
// 1979).
ReactionRate sulfideFormation(Temperature t);
// So many times as much DMS is in vapour as in the wort it leaves: from the loss of 0.18/min at
// 17 %/h of evaporation (Wilson & Booer 1979; own derivation). Laboratory kettles lost less, 0.014
// to 0.044/min (Desobgo et al., J. ASBC 73 (2015) 84).
inline constexpr double kSulfideInVapour = 63.5;

// A piece of a wort's temperature curve, straight between its ends.
struct HotPiece {
  Time lasts;  // >= 0
  Temperature from, to;
  double evaporated = 0.0;  // share of the wort, 0-1, that leaves meanwhile as vapour
  double of = 1.0;          // share of all wort, 0-1, that is still in it
};
using HotCurve = std::vector<HotPiece>;

// What a curve is worth as minutes at 100 C, by either rate: they add up over its pieces.
struct HotMinutes {
  Time iso = seconds(0.0);         // of iso-alpha acids formed
  Time sulfide = seconds(0.0);     // of S-methyl methionine turned to DMS
  Time isoTooCold = seconds(0.0);  // what of `iso` is below kBitternessFrom

  HotMinutes& operator+=(const HotMinutes& other);
};
// By Gauss quadrature over parts of no more than 2 K: within 1e-6.
HotMinutes atHundred(const HotCurve& curve);

// Shares of the S-methyl methionine that was there at first; DMS in molecules.
struct Sulfide {
  double precursor = 1.0, dms = 0.0;
};
Sulfide after(Sulfide sulfide, const HotCurve& curve);

}  // namespace physics
