// SPDX-License-Identifier: GPL-3.0-or-later
// The half of the program that draws; see gui/terminal/desktop.hpp.
#include "gui/terminal/desktop.hpp"
#include "gui/terminal/program.hpp"
#include "gui/window/drawing.hpp"
#include "gui/window/window_program.hpp"

int main(int argc, char** argv) {
  if (gui::asksForWindow(argc, argv) && gui::hasScreen())
    return gui::runWindow(argc, argv, argc > 1 ? argv[1] : "");
  return gui::runInTerminal(argc, argv, gui::draw);
}
