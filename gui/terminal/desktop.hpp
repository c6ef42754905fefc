// SPDX-License-Identifier: GPL-3.0-or-later
// The half of the program that draws: window, pictures, report. It is a program of its own beside
// this one, which becomes it when somebody asks for it, because loading Qt takes twenty times as
// long as everything else of a start: 12.3 of 12.9 ms of processor time for --version (measured).
#pragma once

namespace gui {

// Goes on as the other half with the same words; returns only if that is not there.
void becomeDesktop(char** argv);

}  // namespace gui
