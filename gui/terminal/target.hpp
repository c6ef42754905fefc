// SPDX-License-Identifier: GPL-3.0-or-later
// Where a command writes a file for others.
#pragma once

#include "gui/terminal/commands.hpp"
#include "rigs/words/told.hpp"

namespace gui {

// Why --to FILE is not written; nothing where it may be. Throws rigs::FileError where the file that
// is there cannot be looked at.
rigs::Told whyNotWritten(const Request& request);

}  // namespace gui
