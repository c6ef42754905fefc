// SPDX-License-Identifier: GPL-3.0-or-later
// What grows in wort that stands warm: how fast at a temperature, and how much along a curve.
#pragma once

#include <optional>
#include <vector>

#include "physics/units.hpp"

namespace physics {

using GrowthRate = units_detail::Per<Quantity<si::dimensionless>, Time>;
inline GrowthRate perHour(double n) { return n / hours(1.0); }
inline double inPerHour(GrowthRate r) { return static_cast<double>(r * hours(1.0)); }

// Doublings a time of the fastest food pathogen at each temperature, without any lag: the envelope
// that Snyder (HITM, 2001) tables from 30 to 125 F in steps, by the square-root form of Ratkowsky
// fitted to that table within 0.8 %. 0 below -2.92 C and from 52.55 C up.
GrowthRate fastestPathogen(Temperature t);
// So many doublings are the limit that the same table sets for food.
inline constexpr double kMostDoublings = 10.0;
inline constexpr Temperature kNoPathogenFrom = celsius(52.55);

// The cardinal model with inflection (Rosso, 1993): how fast at any temperature what grows from
// `least` to `most` and fastest, at `fastest`, at `best`.
struct CardinalGrowth {
  Temperature least, best, most;  // rising
  GrowthRate fastest;             // of the natural logarithm
};
// 0 at and beyond the ends.
GrowthRate growthAt(const CardinalGrowth& what, Temperature t);

// Lactic bacteria whose spores a mash leaves alive: Bacillus coagulans in nutrient broth, 12.1,
// 53.8 and 62.9 C, 1.0 with the unit not printed and taken for 1/h (GroPIN model 376). They sour
// sweet wort most at 55 C, and hops stop them (McMurrough & Palmer, J. Inst. Brew. 1979).
inline const CardinalGrowth kSporeFormingLactic{celsius(12.1), celsius(53.8), celsius(62.9),
                                                perHour(1.0)};
// Lactic bacteria of the air and the grain, which a mash at 65 C kills but which fall in later:
// Weissella cibaria, 9.0, 36.3 and 47.8 C, 0.93/h (Food Microbiol. 2009, from the abstract).
inline const CardinalGrowth kLacticFromOutside{celsius(9.0), celsius(36.3), celsius(47.8),
                                               perHour(0.93)};

// A stretch of a curve on which the distance to `room` falls by a constant share a time, or, where
// an end is not above the room, on a straight line.
struct WarmPiece {
  Time lasts;  // >= 0
  Temperature from, to, room;
};
// Doublings along it of what grows fastest at every moment, and powers of ten of one kind.
double doublingsOfPathogens(const WarmPiece& piece);
double tenfolds(const CardinalGrowth& what, const WarmPiece& piece);
// Since when on a curve the doublings so far are `doublings`, > 0; empty where they stay fewer.
std::optional<Time> whenDoubled(const std::vector<WarmPiece>& curve, double doublings);

}  // namespace physics
