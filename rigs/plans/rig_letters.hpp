// SPDX-License-Identifier: GPL-3.0-or-later
// By which letter a rig is called, and with it which look it has in pictures. Both belong to the
// rig for life: others come and go without changing them.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/rig_plan.hpp"

namespace rigs {

// 0 for "a" to 25 for "z"; nothing for any other text.
std::optional<std::size_t> slotOfLetter(std::string_view letter);
// "a" for 0 to "z" for 25. Beyond there is no plan: it has at most twelve rigs.
std::string letterOfSlot(std::size_t slot);

// Of every rig in order: as stated, else the first in order that no rig states and none before it
// got. What is stated twice counts for the first.
using StatedSlots = std::vector<std::optional<std::size_t>>;
std::vector<std::size_t> slotsOf(StatedSlots stated);
std::vector<std::size_t> slotsOf(const std::vector<RigPlan>& rigs);
// Of the first `rigs` of a document, whatever else is wrong with it.
std::vector<std::size_t> slotsIn(const Texts& document, std::size_t rigs);
// What one more rig would get.
std::size_t nextSlot(const std::vector<std::size_t>& taken);

// The document with its rigs having these, one for each: stated by as few of them as it takes, so
// that those whose letter is right anyway stay as they are.
std::string withSlots(std::string document, const std::vector<std::size_t>& wanted);

}  // namespace rigs
