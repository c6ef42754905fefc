// SPDX-License-Identifier: GPL-3.0-or-later
// One rig, from the plan, the catalogue and other files.
#pragma once

#include <filesystem>
#include <optional>

#include "rigs/documents/json_cursor.hpp"
#include "rigs/plans/jacket_reader.hpp"
#include "rigs/plans/rig_plan.hpp"

namespace rigs {

// Reports all problems of the rig and returns nullopt if any of them is an error. `compared` is
// the jacket for rigs that have none, or nullptr.
std::optional<RigPlan> readRig(const JsonCursor& at, const std::filesystem::path& folder,
                               const Jacket* compared, Problems& problems);

}  // namespace rigs
