// SPDX-License-Identifier: GPL-3.0-or-later
// Reads what is to be ready when: "ready" of a plan.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "physics/batch.hpp"
#include "rigs/documents/json_cursor.hpp"
#include "rigs/plans/ready.hpp"
#include "rigs/plans/rig_plan.hpp"

namespace rigs {

// `at` is the plan. Nothing where it states none, or after a problem.
std::optional<Ready> readReady(const JsonCursor& at);

// Why a plan's days never come to that moment whatever their power: no mash, no chiller. What was
// found and what to add; empty where nothing is in the way.
Told neverComes(Milestone what, const physics::Batch& batch, const std::vector<RigPlan>& rigs);

}  // namespace rigs
