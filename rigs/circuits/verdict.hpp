// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a circuit carries a rig, rule by rule, with the arithmetic and the clause. For planning:
// nothing here says what to install.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "physics/duty.hpp"
#include "physics/element_group.hpp"
#include "physics/units.hpp"
#include "rigs/circuits/rules.hpp"

namespace rigs {

// From good to bad; a verdict of several is the worst of them.
enum class Fit { Fits, OnlyIf, CannotSay, DoesNotFit };
std::string_view fitWords(Fit fit);  // "fits", "fits only if", "cannot say", "does not fit"

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
  std::string outlet;         // a name of the region's outlets: "14-30"
  Feeds feeds = Feeds::NotStated;
  std::optional<physics::Power> pump;       // running beside the element on the same circuit
  physics::Voltage pumpAt;                  // meaningful with a pump
  std::optional<physics::Power> otherLoad;  // of other people's appliances, at the nominal voltage
  std::optional<CableAsked> cable;          // where its use is stated
  std::optional<CableRun> run;              // where length and size are stated

  bool operator==(const CircuitDetails&) const = default;
};

enum class RuleKind {
  Voltage,
  OverVoltage,
  Rating,
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

// One rule applied. What its arithmetic needs is filled in; circuit_words puts it into a sentence.
struct Finding {
  RuleKind kind;
  Fit fit = Fit::Fits;
  bool binding = true;  // otherwise advice
  std::string name;     // "continuous load"
  std::optional<physics::Current> load, rating, limit;
  std::optional<double> share;              // of the rating, or of the voltage
  std::optional<double> foundShare;         // the voltage's, in the cable
  std::optional<physics::Voltage> voltage;  // of the element or the outlet
  std::optional<physics::Time> full, enabled, needed, within;
  std::optional<physics::Area> least;      // the conductor that would keep the drop
  std::optional<physics::Length> longest;  // how far the plan's own cable keeps it
  std::string condition;                   // what OnlyIf hangs on; what CannotSay lacks
  Cite cite;
};

struct SpreadInRange {
  const VoltageRange* range;
  physics::LoadSpread spread;
};

struct CircuitVerdict {
  const CircuitRules* rules;
  Fit overall;                    // of the binding findings
  std::vector<Finding> findings;  // the binding first, in the order of RuleKind
  // Of the element and what runs beside it, at the nominal voltage and without the cable.
  physics::Current load;
  physics::Current neutral;     // 0 without a load at another voltage
  physics::Time full, enabled;  // longest time of full current; with the element enabled
  double meanShare = 0.0;       // of the day, with current
  std::vector<SpreadInRange> spreads;
  // For information: the standard sizes that would carry it, never a proposal to install them.
  std::optional<physics::Current> nextBreaker;            // as a load that does not count as long
  std::optional<physics::Current> nextBreakerContinuous;  // as one that does
  std::string conductorForNext, conductorForContinuous;   // "10 AWG"; "" where none is tabled
  std::optional<physics::Current> leakage;                // what a standard allows the element
  bool leakageMayTrip = false;                            // within the band of the device
};

struct JudgedLoad {
  physics::Element element;
  physics::Supply supply;
  physics::Duty duty;
};
CircuitVerdict judge(const CircuitRules& rules, const CircuitDetails& details,
                     const JudgedLoad& load);

// What the readings of a region's rules leave of a circuit's current.
struct Reading {
  std::string name;  // "on a circuit of its own, not counted as continuous"
  physics::Current limit;
  Cite cite;
};
// The widest first, for the element and its pump: what others take of the circuit is taken off.
std::vector<Reading> readingsOf(const CircuitRules& rules, const CircuitDetails& details,
                                const physics::Supply& supply);

// What an element of this power may leak to earth by the standard.
physics::Current allowedLeakage(const Leakage& leakage, physics::Power power);

// Whether a day makes a load a long one: surely, by its current; perhaps, by the time in which the
// element is merely enabled; or not.
enum class Counts { No, Perhaps, Yes };
Counts countsAsLong(const LongUse& rule, const physics::Duty& duty);

}  // namespace rigs
