// SPDX-License-Identifier: GPL-3.0-or-later
// What a circuit or an outlet is rated for against what is drawn from it, and what its fuse or its
// breaker does then. Each kind by its own standard: a fuse is no breaker.
#pragma once

#include <optional>

#include "physics/units.hpp"
#include "rigs/circuits/finding.hpp"
#include "rigs/circuits/rules.hpp"

namespace rigs {

// An element whose plate says exactly what a circuit is rated for may take so much more by its own
// standard (+5 %: a North American maker's catalogue, read; IEC 60335-1, 10.1, from memory). What
// lies within that above a rating cannot be told from it by plates: it is on the edge. 3 kW at 230
// V on a fuse of 13 A are 0.3 % above it; the same element on 240 V, 4.7 %.
inline constexpr double kOnTheEdge = 0.05;

Fit againstRating(physics::Current load, physics::Current rating);

// Empty where the rules say nothing of it, and above 63 A, where breakers of IEC 60898-1 have other
// times.
std::optional<Device> deviceOf(const Breakers& breakers, physics::Current rating);
// Empty where no link of this kind is so large.
std::optional<Device> deviceOf(const Fuse& fuse, physics::Current rating);

// What protects a circuit, as far as these rules and what the plan says of it tell.
struct Guard {
  const Fuse* fuse = nullptr;    // where its kind is known here
  bool fused = false;            // a fuse, known here or not
  std::optional<Device> device;  // of that fuse, or of the usual breaker
};
Guard guardOf(const CircuitRules& rules, const CircuitDetails& details, physics::Current rating);

struct Rated {
  physics::Current load, rating;
  bool fused = false;            // a fuse protects it
  std::optional<Device> device;  // what is known of that, or of the breaker
};
// Of kind Rating, without a name and a cite.
Finding judgeRating(const Rated& rated);

// What the fuse or the breaker does, as a part of a sentence; nothing where the load is within the
// rating. Never that an overload may stand.
Told deviceText(const Finding& finding);

}  // namespace rigs
