// SPDX-License-Identifier: GPL-3.0-or-later
// What was learned, and from what, in rows.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "gui/telling/table.hpp"
#include "rigs/answers/learned.hpp"
#include "rigs/readings/layout.hpp"

namespace gui::telling {

// What was read, and what came of it.
struct ReadAndLearned {
  const std::vector<rigs::readings::Reading>& read;
  const rigs::readings::Layout& layout;
  const rigs::Learned& learned;
};

// What was read, as a cell; nothing of an event. And an SI number of its kind, likewise.
Cell readCell(const rigs::readings::Value& value);
Cell cellLike(const rigs::readings::Value& value, double si);

// "the closed kettle's losses"; of nothing: "the thermometer".
rigs::Told unknownWords(const std::optional<rigs::Unknown>& what);

// Before and after: "0.9 to 1.2", against the plan's own.
Table unknownsTable(std::size_t rig, const rigs::Learned& learned);
// Each reading that counted: what was read, what was expected before it, and what a kettle as
// learned would have shown.
Table readingsTable(std::size_t rig, const ReadAndLearned& from);

}  // namespace gui::telling
