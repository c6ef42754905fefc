// SPDX-License-Identifier: GPL-3.0-or-later
// The program people type: everything but drawing.
#include <algorithm>
#include <string_view>

#include "gui/terminal/desktop.hpp"
#include "gui/terminal/program.hpp"

namespace {

bool asksForDrawing(int argc, const char* const* argv) {
  const bool maybe = std::any_of(argv, argv + argc, [](std::string_view word) {
    return word == "picture" || word == "report";
  });
  if (!maybe) return false;  // nothing is read twice without need
  constexpr std::size_t kAnyWidth = 80;
  const gui::CommandLine line = gui::readCommandLine(argc, argv, kAnyWidth);
  return line.request && gui::isDrawn(line.request->command);
}

}  // namespace

int main(int argc, char** argv) {
  // Without a screen, no arguments mean that somebody wants to know what there is.
  const bool window = gui::asksForWindow(argc, argv) && gui::hasScreen();
  if (window || asksForDrawing(argc, argv)) gui::becomeDesktop(argv);
  return gui::runInTerminal(argc, argv, nullptr);
}
