// SPDX-License-Identifier: GPL-3.0-or-later
// What the conductor of a circuit carries, and which breaker protects it.
#pragma once

#include <vector>

#include "rigs/circuits/verdict.hpp"

namespace rigs {

struct ConductorQuestion {
  const CircuitRules& rules;
  const CircuitDetails& details;
  const JudgedLoad& judged;
  physics::Current load;  // at the nominal voltage
};
// Without a cable in the plan: none.
std::vector<Finding> judgeConductor(const ConductorQuestion& question);

// Currents that agree to this share are the same: 24 A is 80 % of 30 A.
inline bool within(physics::Current load, physics::Current limit) {
  return load <= (1.0 + 1e-9) * limit;
}
// What "fits only if" hangs on where outlets are not stated.
inline constexpr std::string_view kOneOutlet = "the circuit feeds one outlet alone";
// And where a long time with the element merely enabled is no long use.
std::string enabledIsNot(const LongUse& rule);

}  // namespace rigs
