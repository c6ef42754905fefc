// SPDX-License-Identifier: GPL-3.0-or-later
// When must it begin, so that something is ready in time? Of plans that say what is to be ready;
// of others nothing is told.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "gui/telling/case.hpp"

namespace gui::telling {

// "it rolls at 11:00": what is to be ready.
rigs::Told readyText(const Case& of, const rigs::Clock& at);
// The headline: who begins first, and who last.
std::vector<rigs::Told> beginsInShort(const Case& of);
// Of one rig: when to begin, when to be ready on 9 of 10 such days, and what the hours in which it
// could begin leave of that; or that it never comes to what is to be ready.
rigs::Told beginsText(const Case& of, std::size_t rig);
// Of a rig that never comes to it; else nothing.
rigs::Told neverReadyText(const Case& of, std::size_t rig);
// By when to begin on 9 of 10 days, where bands are known; else nothing.
std::optional<rigs::Clock> beginsBy(const Case& of, std::size_t rig);
// Rows of a table about clocks.
void addBeginsRows(RigTable& table, const Case& of);
// How that is computed, and how clocks of a day before are told.
std::vector<rigs::Told> beginsNotes(const Case& of);
// Beside prices of other hours, which are not those that were wished.
rigs::Told otherHoursNote();

}  // namespace gui::telling
