// SPDX-License-Identifier: GPL-3.0-or-later
// A plan document as a form sees it: what stands at each place, and what a rig has from another
// without stating it.
#pragma once

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/rig_bases.hpp"

namespace rigs {

// The rig documents that the rig at `index` builds on, nearest first. Stops where one cannot be
// read or leads out of the folder: readPlan() says why. Of a rig that follows another it is the
// rig itself in full: what it took out is not there.
std::vector<std::string> originsOf(std::string_view document, std::size_t index,
                                   const std::filesystem::path& folder);

// What a rig from these would have without a word of its own. Pointers start at the rig:
// "/element/power".
Texts inheritedTexts(const std::vector<std::string>& origins);

// The rig's own part ("lid") stated in full, copied from what it is from, so that one key of it
// can be changed. Unchanged if the rig states the part, if it merges, or if nobody has it.
std::string withPartStated(std::string_view document, std::size_t index, std::string_view part,
                           const std::vector<std::string>& origins);

}  // namespace rigs
