// SPDX-License-Identifier: GPL-3.0-or-later
// Does it match what I measured? What readings of a day say about one rig of a plan.
#pragma once

#include <cstddef>

#include "gui/telling/case.hpp"
#include "gui/telling/learned_tables.hpp"

namespace gui::telling {

// With title and cautions. First where the day ends, before and with the readings; then what they
// tell of the kettle and what they do not; what does not go together; which reading would help
// next; two tables, by the names of "unknowns" and "readings" in spreadsheets.
Answer whatWasLearned(const Case& of, std::size_t rig, const ReadAndLearned& from);
// Why there is nothing to tell.
rigs::Told nothingText(rigs::NothingLearned why);

}  // namespace gui::telling
