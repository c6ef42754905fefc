// SPDX-License-Identifier: GPL-3.0-or-later
// One rig, from the plan, the catalogue and other files.
#pragma once

#include <filesystem>
#include <optional>

#include "rigs/documents/json_cursor.hpp"
#include "rigs/plans/jacket_reader.hpp"
#include "rigs/plans/json_whole_rig.hpp"
#include "rigs/plans/rig_plan.hpp"

namespace rigs {

// Reports all problems of a rig that follows none and returns nullopt if any of them is an error.
// `compared` is the jacket for rigs that have none, or nullptr.
std::optional<RigPlan> readRig(const JsonCursor& at, const std::filesystem::path& folder,
                               const Jacket* compared, Problems& problems);

// The same of a rig with all that it has from others, which stands in no document: places count
// from the rig on.
std::optional<RigPlan> readWholeRig(const nlohmann::ordered_json& rig, const Jacket* compared,
                                    Problems& problems);

// What the rig that was read takes from its document beside its parts: how it is written, and
// whether anybody stated how it looks.
void rememberWriting(RigPlan& plan, const WholeRig& whole);

}  // namespace rigs
