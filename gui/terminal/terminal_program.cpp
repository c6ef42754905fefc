// SPDX-License-Identifier: GPL-3.0-or-later
// What the terminal is, what it is told, and what a shell learns of it.
#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <csignal>
#include <cstdlib>
#include <string_view>
#include <system_error>

#include "gui/terminal/commands.hpp"
#include "gui/terminal/problem_text.hpp"
#include "gui/terminal/program.hpp"
#include "rigs/documents/files.hpp"

namespace gui {
namespace {

TextStyle terminalStyle() {
  TextStyle style;
  // COLUMNS is a person's wish, for pipes too; a terminal knows better how wide it is.
  if (const char* columns = std::getenv("COLUMNS")) {
    if (const auto width = columnsFrom(columns)) style.width = *width;
  }
  if (::isatty(STDOUT_FILENO) == 0) return style;
  winsize size{};
  if (::ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) == 0 && size.ws_col > 0) {
    style.width = std::max<std::size_t>(size.ws_col, kNarrowest);
  }
  const char* noColor = std::getenv("NO_COLOR");
  const char* term = std::getenv("TERM");
  style.bold = (!noColor || *noColor == '\0') && term && std::string_view(term) != "dumb";
  return style;
}

}  // namespace

int runInTerminal(int argc, const char* const* argv, Drawing draw) {
  // A reader who leaves early is told about by write(), not by a signal.
  std::signal(SIGPIPE, SIG_IGN);
  const TextStyle terminal = terminalStyle();
  const CommandLine line = readCommandLine(argc, argv, terminal.width);
  Finished finished{line.output, line.complaint, line.exitCode};
  if (line.request) finished = carryOut(*line.request, terminal, draw);
  if (!finished.complaint.empty() && finished.complaint.back() != '\n') finished.complaint += '\n';
  if (!rigs::writeAll(STDOUT_FILENO, finished.output)) {
    finished.complaint += complaintText(
        "the answer could not be written: " + std::generic_category().message(errno) + ".",
        terminal.width);
    finished.exitCode = 1;
  }
  if (!rigs::writeAll(STDERR_FILENO, finished.complaint) && finished.exitCode == 0) return 1;
  return finished.exitCode;
}

}  // namespace gui
