// SPDX-License-Identifier: GPL-3.0-or-later
// A search that may take a while, with whoever waits at the terminal: how far it is, and Ctrl-C to
// be content with what was found.
#pragma once

#include <cstddef>
#include <optional>

#include "rigs/answers/solution.hpp"
#include "rigs/words/language.hpp"

namespace gui {

// Adds what helps most, of one rig or of all, with at most so many changes at once. Beyond a second
// its progress stands on standard error, where that is a terminal, with the number of ways that are
// to be tried; a longer search says that number before it begins.
void addWhatHelps(rigs::Solution& solution, std::optional<std::size_t> rig, std::size_t together,
                  const rigs::Reader& reader);

}  // namespace gui
