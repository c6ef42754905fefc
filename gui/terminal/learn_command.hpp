// SPDX-License-Identifier: GPL-3.0-or-later
// What a brewer's own readings say of a rig of a plan.
#pragma once

#include "gui/terminal/commands.hpp"
#include "gui/terminal/finished.hpp"
#include "rigs/documents/problems.hpp"

namespace gui {

// 2 where plan, options or readings are wrong, with all that is wrong at once; readings that tell
// nothing are an answer. A signal to end (SIGINT, SIGTERM) ends it with 128 and the signal. Throws
// rigs::FileError where a file cannot be read.
Finished learnFromReadings(const Request& request, const Audience& audience,
                           rigs::Problems ofOptions);

}  // namespace gui
