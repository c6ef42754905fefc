// SPDX-License-Identifier: GPL-3.0-or-later
// A resistive element, the cable that feeds it, and the circuit it hangs on.
#pragma once

#include <optional>

#include "physics/units.hpp"

namespace physics {

// The heated part of a rod element, straight or bent.
struct HeatedRod {
  Length diameter;  // of its sheath, > 0
  Length length;    // that gives off heat, > 0

  Area surface() const;
  bool operator==(const HeatedRod&) const = default;
};

// A heating element by its name plate. Its resistance is taken as constant: the wire's own
// rises by 1-2.6 % between cold and hot, and ratings are stated hot.
struct Element {
  Power rating;      // > 0
  Voltage ratedAt;   // > 0
  Length topHeight;  // highest heated point above the inside of the base; 0 for an outside heater
  std::optional<HeatedRod> rod = {};  // where its size is stated; nothing but its skin asks for it

  bool operator==(const Element&) const = default;
};

// R = V^2 / P.
Resistance resistance(const Element& element);

// The circuit as planned: nominal voltage, the current its breaker or fuse is rated for, and
// the loop resistance (there and back) of everything between the panel and the element.
struct Supply {
  Voltage nominal;
  Current rating;
  Resistance cableLoop;  // 0 for none stated

  bool operator==(const Supply&) const = default;
};

// Copper at a conductor temperature: 0.0172 ohm mm2/m at 20 C (annealed copper, IEC 60028:
// 1/58), times (230 + t)/250 (IEC 60228). Length is one way; the loop counts twice.
// Area > 0; asserted.
Resistance copperLoop(Length oneWay, Area crossSection, Temperature conductor);
// American wire gauge n: diameter 0.127 mm x 92^((36 - n)/39) (ASTM B258). n from 0 to 40.
Area wireGaugeArea(double gauge);

// What an element draws from a supply. The cable's resistance acts back on the current, so this
// drops a little less than the constant-current rule of thumb; the dropped share does not
// depend on the supply voltage.
struct ElectricalLoad {
  Current current;
  Voltage atTerminals;
  Power delivered;  // heat from the element
  Power inCable;    // heat along the cable, lost to the room
  Power fromWall;   // what the meter counts
};
ElectricalLoad electricalLoad(const Element& element, const Supply& supply);

// The same heat from a rating chosen so that `delivered` reaches the vessel on this supply, for
// sizing: an element rated at the supply's own nominal voltage. The most a cable can deliver is
// V^2/(4 R): asserted.
Element elementDelivering(Power delivered, const Supply& supply, Length topHeight);
// What codes take for an element's current: its resistance straight on the nominal voltage (NEC
// 220.5(A), from memory; CEC 8-100, quoted in trade publications). A cable lowers the current that
// really flows, and must never lower this one.
Current branchCurrent(const Element& element, const Supply& supply);
// The largest element, rated at the supply's own voltage, whose branch current stays within the
// circuit's rating. Its cable then delivers a little less.
Element largestElementOn(const Supply& supply, Length topHeight);

}  // namespace physics
