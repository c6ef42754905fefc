// SPDX-License-Identifier: GPL-3.0-or-later
// The program as a desktop window.
#pragma once

#include <string>

namespace gui {

// Whether Qt has the part that draws on the displays that QT_QPA_PLATFORM names. Without it an
// application object ends the program.
bool hasPlatform();

// Whether a window on `plan` is somebody's first: none was closed before, and no plan is asked for.
// It then begins with the ways in which a plan may start. Needs the application object.
bool isFirstRun(const std::string& plan);

// Runs until the window is closed; the exit code. `plan` is a path, "" for the bundled example.
int runWindow(int argc, char** argv, const std::string& plan);

}  // namespace gui
