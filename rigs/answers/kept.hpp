// SPDX-License-Identifier: GPL-3.0-or-later
// What readings said of a kettle, written into its plan for every later day.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "rigs/answers/learned.hpp"
#include "rigs/documents/problems.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

// Where readings are from: a file's name, how many count, and the text itself, by whose mark they
// are known again.
struct ReadingsKept {
  std::string name;
  std::size_t lines = 0;
  std::string day = {};  // on which they are kept, for readers
  std::string_view text;
};
// "1f0c33ab": FNV-1a, 32 bits. Source: Fowler, Noll and Vo, draft-eastlake-fnv.
std::string markOf(std::string_view text);

// Whether the rig's factors have them already.
bool isKeptIn(const RigPlan& rig, std::string_view text);
// A warning where they do: what is learned from them once more has them twice.
void tellWhereCountedTwice(const Plan& plan, std::size_t rig, std::string_view text,
                           const std::string& name, Problems& problems);

struct Kept {
  std::string document;  // as it was where nothing is kept
  bool losses = false, surface = false;
};
// The plan's document with the rig's factors and how sure they are, of what was learned of losses
// and open surface; anything else is the day's, or what its plate says. Rigs that follow this one
// have them too. What the rig has from readings before is in the new factors: brews add up.
//
// Problems, and nothing, where the readings are in it already, do not go together, or would be
// understood far better in another unit or half a day later. `document` is the plan's.
std::optional<Kept> withLearned(const std::string& document, const Plan& plan, std::size_t rig,
                                const Learned& learned, const ReadingsKept& readings,
                                Problems& problems);

}  // namespace rigs
