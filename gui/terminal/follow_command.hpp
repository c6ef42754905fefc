// SPDX-License-Identifier: GPL-3.0-or-later
// A brew day while it goes on: how it stands, anew with whatever is read.
#pragma once

#include "gui/terminal/commands.hpp"
#include "gui/terminal/finished.hpp"
#include "rigs/documents/problems.hpp"

namespace gui {

// Watches the file of readings and standard input, and writes to standard output as it goes, until
// a signal to end (SIGINT, SIGTERM) ends it with 128 and the signal; or, asked for it once, tells
// how the day stands. 2 where plan, options or readings are wrong at the beginning, with all that
// is wrong at once. What is typed is on the disk before anything is computed from it. Throws
// rigs::FileError where the plan, or at the beginning the readings, cannot be read.
Finished followADay(const Request& request, const Audience& audience, rigs::Problems ofOptions);

}  // namespace gui
