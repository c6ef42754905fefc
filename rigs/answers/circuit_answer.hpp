// SPDX-License-Identifier: GPL-3.0-or-later
// Can the circuit carry it? Verdicts on what a rig really does over its day, and the inverse: the
// largest element under each reading of the rules.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "physics/duty.hpp"
#include "rigs/circuits/readings.hpp"
#include "rigs/circuits/verdict.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

// One of a rig's circuits.
struct CircuitLoad {
  physics::Element element;
  physics::Supply supply;
  physics::ElectricalLoad load;
  physics::Current branch;                  // at the nominal voltage, as codes count
  physics::Resistance hot, cold;            // of the element
  physics::Current mean;                    // over the day
  Finding nameplate;                        // its load against its rating, whatever rules apply
  std::optional<physics::Current> granted;  // to long use, where the plan grants less than rules
  std::vector<CircuitVerdict> verdicts;     // one for each set of rules that may apply
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

// The shortest day that a reading leaves: the largest element on each circuit.
struct ShortestDay {
  std::string region;
  Told reading;
  std::vector<physics::Current> limits;    // of the circuits
  std::vector<physics::Element> elements;  // one, or two on two circuits
  bool imagined = false;  // the second circuit is like the first, which the rig does not have
  physics::Power delivered;
  physics::Outcome outcome = physics::Outcome::Done;
  std::optional<physics::Time> toBoil;
  physics::Time day;
};

// The rig's power on two circuits: its own two, each by what it may carry, or two like its one.
struct SplitPart {
  physics::Element element;  // rated at the supply's own voltage
  physics::Current current;
  std::vector<CircuitVerdict> verdicts;
};
struct Split {
  std::vector<SplitPart> parts;  // two
  bool imagined = false;
  Fit overall() const;
};

struct CircuitAnswer {
  std::vector<CircuitLoad> circuits;
  physics::Duty duty;
  std::optional<physics::Time> addedByCable;  // to heating to the boil; inverse questions only
  std::vector<ReadingDay> readings;           // inverse questions only
  std::vector<ShortestDay> shortest;          // inverse questions only
  std::optional<Split> split;                 // inverse questions only

  Fit overall() const;  // the worst of all circuits and rules, as of worstOf()
};

// The worst of all rules; without any, CannotSay, or that it does not fit by its name plates.
Fit worstOf(const CircuitLoad& circuit);

// `inverse` simulates further days.
CircuitAnswer circuitAnswer(const Plan& plan, const RigPlan& rig, const physics::BrewDay& day,
                            bool inverse);

}  // namespace rigs
