// SPDX-License-Identifier: GPL-3.0-or-later
// One command from what was typed to what is printed and the exit code.
#pragma once

#include "gui/telling/drawing.hpp"

namespace gui {

// What the command line would open a window for: nothing at all, or one plan document. False for
// everything that is a command.
bool asksForWindow(int argc, const char* const* argv);
// A picture or a report.
bool asksForDrawing(int argc, const char* const* argv);

// From the command line to the exit code; nullptr where nothing can be drawn. Does not throw.
int runInTerminal(int argc, const char* const* argv, telling::Draw draw);

// Says so, without needing any; the exit code.
int withoutMemory();
// The same where nothing can be caught: the tree of a JSON document needs memory to be taken down.
void endQuietlyWithoutMemory();

}  // namespace gui
