// SPDX-License-Identifier: GPL-3.0-or-later
// The program that draws: the same commands, and what the other one cannot do.
#include <new>

#include "gui/telling/drawing.hpp"
#include "gui/terminal/display.hpp"
#include "gui/terminal/program.hpp"

int main(int argc, char** argv) try {
  gui::endQuietlyWithoutMemory();
  if (gui::asksForWindow(argc, argv) && gui::hasScreen()) {
    gui::preferDisplayThatAnswers();
    const auto code = gui::telling::openWindow(argc, argv, argc > 1 ? argv[argc - 1] : "");
    if (code) return *code;
  }
  return gui::runInTerminal(argc, argv, gui::telling::draw);
} catch (const std::bad_alloc&) {
  return gui::withoutMemory();
}
