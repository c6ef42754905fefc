// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a circuit carries a rig, rule by rule, with the arithmetic and the clause. For planning:
// nothing here says what to install.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "physics/element_group.hpp"
#include "physics/units.hpp"
#include "rigs/circuits/finding.hpp"
#include "rigs/circuits/rules.hpp"

namespace rigs {

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
  std::optional<physics::Current> largestFuse;  // of its kind, where a fuse protects the circuit
  // For information: the standard sizes that would carry it, never a proposal to install them.
  std::optional<physics::Current> nextBreaker;            // as a load that does not count as long
  std::optional<physics::Current> nextBreakerContinuous;  // as one that does
  std::string conductorForNext, conductorForContinuous;   // "10 AWG"; "" where none is tabled
  std::optional<physics::Current> leakage;                // what a standard allows the element
  bool leakageMayTrip = false;                            // within the band of the device
};

CircuitVerdict judge(const CircuitRules& rules, const CircuitDetails& details,
                     const JudgedLoad& load);

}  // namespace rigs
