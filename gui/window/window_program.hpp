// SPDX-License-Identifier: GPL-3.0-or-later
// The program as a desktop window. Everything else of the program runs without a screen.
#pragma once

#include <string>

namespace gui {

// Whether there is a screen to open a window on.
bool hasScreen();
// What the command line would open a window for: nothing at all, or one plan document. False for
// everything that is a command.
bool asksForWindow(int argc, const char* const* argv);

// Runs until the window is closed; the exit code. `plan` is a path, "" for the bundled example.
int runWindow(int argc, char** argv, const std::string& plan);

}  // namespace gui
