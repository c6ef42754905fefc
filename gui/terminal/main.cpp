// SPDX-License-Identifier: GPL-3.0-or-later
// The program people type: everything but drawing.
#include <new>

#include "gui/terminal/desktop.hpp"
#include "gui/terminal/display.hpp"
#include "gui/terminal/program.hpp"

int main(int argc, char** argv) try {
  gui::endQuietlyWithoutMemory();
  // Without a screen, no arguments mean that somebody wants to know what there is.
  const bool window = gui::asksForWindow(argc, argv) && gui::hasScreen();
  if (window || gui::asksForDrawing(argc, argv)) gui::becomeDesktop(argv);
  return gui::runInTerminal(argc, argv, nullptr);
} catch (const std::bad_alloc&) {
  return gui::withoutMemory();
}
