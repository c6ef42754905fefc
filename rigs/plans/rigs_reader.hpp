// SPDX-License-Identifier: GPL-3.0-or-later
// All rigs of a plan, those that follow another with what they have from it.
#pragma once

#include <filesystem>
#include <vector>

#include "rigs/documents/json_cursor.hpp"
#include "rigs/plans/jacket_reader.hpp"
#include "rigs/plans/rig_plan.hpp"

namespace rigs {

// Those that can be read, in order; `compared` is the jacket for rigs that have none, or nullptr.
// A problem is told where the value is written, once, however many rigs have it from there.
std::vector<RigPlan> readRigs(std::vector<JsonCursor> entries, const std::filesystem::path& folder,
                              const Jacket* compared, Problems& problems);

}  // namespace rigs
