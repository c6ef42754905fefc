// SPDX-License-Identifier: GPL-3.0-or-later
// Can the circuit carry it? Verdicts on what a rig really does over its day, and the inverse: the
// largest element under each reading of the rules.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "physics/duty.hpp"
#include "rigs/circuit_verdict.hpp"
#include "rigs/plan.hpp"

namespace rigs {

// One of a rig's circuits.
struct CircuitLoad {
  physics::Element element;
  physics::Supply supply;
  physics::ElectricalLoad load;
  physics::Resistance hot, cold;         // of the element
  physics::Current mean;                 // over the day
  std::vector<CircuitVerdict> verdicts;  // one for each set of rules that may apply
};

// The largest element that a reading leaves, and the day with it on this rig.
struct ReadingDay {
  std::string region;
  Reading reading;
  physics::Element largest;  // rated at the supply's own voltage
  physics::Power delivered;
  physics::Outcome outcome = physics::Outcome::Done;
  std::optional<physics::Time> toBoil;  // heating to the boil
  physics::Time day;
  bool fits = true;  // the rig's own elements stay within
};

// The same power on two circuits like the first, half on each.
struct Split {
  physics::Power each;
  physics::Current current;
  std::vector<Fit> fits;                // in the order of the first circuit's verdicts
  physics::Power largestTogether;       // two of the largest elements under the strictest reading
  std::optional<physics::Time> toBoil;  // with those two
  physics::Time day;
};

struct CircuitAnswer {
  std::vector<CircuitLoad> circuits;
  physics::Duty duty;
  std::optional<physics::Time> addedByCable;  // to heating to the boil; inverse questions only
  std::vector<ReadingDay> readings;           // inverse questions only
  std::optional<Split> split;                 // of rigs on one circuit; inverse questions only

  Fit overall() const;  // the worst of all circuits and rules; CannotSay without rules
};

// `inverse` simulates further days.
CircuitAnswer circuitAnswer(const Plan& plan, const RigPlan& rig, const physics::BrewDay& day,
                            bool inverse);

// What a plan says about circuits against its region: voltages, outlets and conductors that are
// not there. Appends errors, each with its place.
void checkCircuits(const Plan& plan, Problems& problems);

}  // namespace rigs
