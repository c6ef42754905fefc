// SPDX-License-Identifier: GPL-3.0-or-later
// What one rule of a region says of one circuit, and what a plan says about a circuit that rules
// look at.
#pragma once

#include <optional>
#include <string>

#include "physics/duty.hpp"
#include "physics/element_group.hpp"
#include "physics/units.hpp"
#include "rigs/circuits/rules.hpp"
#include "rigs/words/told.hpp"

namespace rigs {

// From good to bad; a verdict of several is the worst of them.
enum class Fit { Fits, OnlyIf, OnTheEdge, CannotSay, DoesNotFit };
Told fitWords(Fit fit);  // "fits", "fits only if", "on the edge", "cannot say", "does not fit"

// Supply standards let a voltage rise to 110 % of its nominal: 253 V on 230 V (EN 50160 and the
// United Kingdom's supply regulations, read as quoted; IEC 60038 from memory), and an element is
// made for the range about its own rated voltage. No range here goes further but Japan's 222 V on
// 200 V, 111 %. A supply whose nominal voltage is above this is over-voltage at any moment.
inline constexpr double kMostOverRated = 1.10;

enum class Feeds { NotStated, OneOutlet, SeveralOutlets };

struct CableRun {
  physics::Area area;
  physics::Length length;

  bool operator==(const CableRun&) const = default;
};

// What a plan says about a circuit beyond volts and amperes. All of it may be left out; what then
// cannot be judged is said so.
struct CircuitDetails {
  std::string circuitRegion;  // of its catalogue entry: "North America"; "" if it has none
  std::string fuse;           // of that entry: "BS 1362"; "" for a breaker and what is not known
  std::string outlet;         // a name of the region's outlets: "14-30"
  Feeds feeds = Feeds::NotStated;
  std::optional<physics::Power> pump;       // running beside the element on the same circuit
  physics::Voltage pumpAt;                  // meaningful with a pump
  std::optional<physics::Power> otherLoad;  // of other people's appliances, at the nominal voltage
  // Of the rinsing water, where it is heated on this circuit while the element is in use.
  bool heatsRinse = false;
  std::optional<physics::Power> rinseHeater;  // nothing: none, or its power is not known
  std::optional<CableAsked> cable;            // where its use is stated
  std::optional<CableRun> run;                // where length and size are stated

  // What runs on the circuit beside the rig, as far as it is known.
  physics::Current beside(physics::Voltage nominal) const {
    const physics::Power none = physics::watts(0.0);
    return (otherLoad.value_or(none) + rinseHeater.value_or(none)) / nominal;
  }
  bool operator==(const CircuitDetails&) const = default;
};

enum class RuleKind {
  Voltage,
  OverVoltage,
  Rating,
  RinseHeater,
  LongUse,
  SharedCircuit,
  OutletLoad,
  OutletOnCircuit,
  OutletRating,
  OutletContacts,
  SocketPair,
  HouseholdSocket,
  LargestProtection,
  Subdivide,
  Conductor,
  ConductorLongUse,
  BreakerForConductor,
  VoltageDrop,
  GroundFault,
};

// What a fuse or a breaker of a size does: it carries so much for at least a time, and from so much
// on it acts within one. Between the two it may do either.
struct Device {
  bool isFuse = false;
  physics::Current carries;
  physics::Time carriesFor;
  physics::Current acts;
  physics::Time actsWithin;
};

// One rule applied. What its arithmetic needs is filled in; circuit_words puts it into a sentence.
struct Finding {
  RuleKind kind;
  Fit fit = Fit::Fits;
  bool binding = true;  // otherwise advice
  Told name;            // "continuous load"
  std::optional<physics::Current> load, rating, limit;
  std::optional<double> share;       // of the rating, or of the voltage
  std::optional<double> foundShare;  // the voltage's, in the cable; on the edge: above the rating
  std::optional<physics::Voltage> voltage;  // of the element or the outlet
  std::optional<physics::Time> full, enabled, needed, within;
  std::optional<physics::Area> least;      // the conductor that would keep the drop
  std::optional<physics::Length> longest;  // how far the plan's own cable keeps it
  bool fused = false;                      // of a rating: a fuse stands for it
  std::optional<Device> device;            // of a rating: what that fuse or breaker does
  Told condition;                          // what OnlyIf hangs on; what CannotSay lacks
  Cite cite;
};

struct JudgedLoad {
  physics::Element element;
  physics::Supply supply;
  physics::Duty duty;
};

// Currents that agree to this share are the same: 24 A is 80 % of 30 A.
inline bool within(physics::Current load, physics::Current limit) {
  return load <= (1.0 + 1e-9) * limit;
}
// What "fits only if" hangs on where outlets are not stated.
Told feedsOneOutletAlone();
// And where a long time with the element merely enabled is no long use.
Told enabledIsNot(const LongUse& rule);

}  // namespace rigs
