// SPDX-License-Identifier: GPL-3.0-or-later
// What the conductor of a circuit carries, and which breaker protects it.
#pragma once

#include <vector>

#include "rigs/circuits/finding.hpp"

namespace rigs {

struct ConductorQuestion {
  const CircuitRules& rules;
  const CircuitDetails& details;
  const JudgedLoad& judged;
  physics::Current load;  // at the nominal voltage
};
// Without a cable in the plan: none.
std::vector<Finding> judgeConductor(const ConductorQuestion& question);

}  // namespace rigs
