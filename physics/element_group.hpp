// SPDX-License-Identifier: GPL-3.0-or-later
// Several elements in one vessel, the spread of what one element really gives, and the cable.
#pragma once

#include <vector>

#include "physics/element.hpp"
#include "physics/units.hpp"

namespace physics {

enum class Wiring { Parallel, Series };

// One element that draws what all of them draw on one supply: resistances in parallel or in
// series, stated at the highest voltage that puts none of them above its own rating, as high as the
// highest. Two equal elements in series give a quarter each: half the voltage. At least one;
// asserted.
Element combined(const std::vector<Element>& elements, Wiring wiring);

// An element with the supply that feeds it: one of two circuits.
struct Feed {
  Element element;
  Supply supply;

  bool operator==(const Feed&) const = default;
};

// What two circuits together give the vessel and take from the wall. `current` and `atTerminals`
// stay the first one's: currents of different circuits do not add anywhere.
ElectricalLoad together(const ElectricalLoad& first, const ElectricalLoad& second);

// By how much an element's real power may differ from its name plate, as shares of it; `atLeast`
// is the margin upwards that small elements are granted in any case.
struct RatingTolerance {
  double below = 0.0;  // 0.10 for -10 %
  double above = 0.0;
  Power atLeast = watts(0.0);
};
Power leastRating(const Element& element, const RatingTolerance& tolerance);
Power mostRating(const Element& element, const RatingTolerance& tolerance);

// The same element with another rating at the same voltage.
Element rated(const Element& element, Power rating);
// Power and current from the weakest element on the lowest voltage to the strongest on the
// highest.
struct LoadSpread {
  ElectricalLoad least, nominal, most;
};
LoadSpread loadSpread(const Element& element, const Supply& supply, Voltage lowest, Voltage highest,
                      const RatingTolerance& tolerance);

// What an ohm-meter shows on the cold element. Nichrome 80/20 rises by 1.2 % up to 200 C and by
// 2.6 % up to 500 C (alloy data sheets); a sheathed element under water runs at a few hundred.
inline constexpr double kHotOverCold = 1.012;
Resistance coldResistance(const Element& element, double hotOverCold = kHotOverCold);

// How far a cable may run, one way, until the textbook's voltage drop, for a current that does not
// notice the cable, is this share of the voltage. `loopPerLength` counts there and back.
Length longestCable(double share, Voltage nominal, Current current,
                    ResistancePerLength loopPerLength);
// The least cross-section that keeps that drop. NFPA 70's constant K is such a resistivity: 12.9
// ohm circular mil per foot.
using Resistivity = decltype(ohms(1.0) * metres(1.0));
Area leastConductor(double share, Voltage nominal, Current current, Length oneWay,
                    Resistivity resistivity);

// Ampacity at another ambient temperature: the root of what is left of the temperature rise
// (NFPA 70 310.15(B), equation; IEC 60364-5-52 agrees). 0 where nothing is left.
double ambientFactor(Temperature conductorLimit, Temperature tabledAmbient, Temperature ambient);

}  // namespace physics
