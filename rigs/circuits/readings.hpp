// SPDX-License-Identifier: GPL-3.0-or-later
// What readings of the rules leave of a circuit, and the figures of protection.
#pragma once

#include <vector>

#include "physics/duty.hpp"
#include "physics/element_group.hpp"
#include "physics/units.hpp"
#include "rigs/circuits/finding.hpp"
#include "rigs/circuits/rules.hpp"
#include "rigs/words/told.hpp"

namespace rigs {

// What the readings of a region's rules leave of a circuit's current.
struct Reading {
  Told name;  // "on a circuit of its own, not counted as continuous"
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
