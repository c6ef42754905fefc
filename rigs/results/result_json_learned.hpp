// SPDX-License-Identifier: GPL-3.0-or-later
// What readings say of a rig, for programs. Always in SI: every key names its unit.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "rigs/answers/learned.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/results/cautions.hpp"

namespace rigs {

// Of the format; in its first key.
inline constexpr int kLearnedVersion = 1;

// The same plan and readings give the same bytes. Ranges that are not known are left out.
std::string learnedJson(const Plan& plan, std::size_t rig,
                        const std::vector<readings::Reading>& read, const Learned& learned,
                        const std::vector<Caution>& cautions);

}  // namespace rigs
