// SPDX-License-Identifier: GPL-3.0-or-later
// The result for programs. The same plan gives the same bytes.
#pragma once

#include <string>

#include "rigs/answers/answers.hpp"
#include "rigs/documents/problems.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

// Of the result's format, described by result.schema.json. Version 2: a rig's `circuit.split` lists
// the parts on two circuits with their verdicts; 1 had the power of each and the day with both.
inline constexpr int kResultVersion = 3;

// Every key names its unit ("delivered_W", "volume_L", "share": of 1). What an answer does not
// contain is left out, never null; curves are written when the stages have them.
// Throws std::domain_error if a number is not finite, naming its key.
std::string resultJson(const Plan& plan, const Answers& answers);

// What is wrong with a document: its name, and each problem with severity ("error", "remark"),
// place and sentence in English.
std::string problemsJson(const Problems& problems, const std::string& file,
                         UnitSystem units = UnitSystem::SI);

}  // namespace rigs
