// SPDX-License-Identifier: GPL-3.0-or-later
// One command from what was typed to the printed answer.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "gui/terminal/commands.hpp"
#include "gui/terminal/page.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace gui {

// What a command prints and how it ends: 0 done, 1 it could not be done, 2 the document or the
// options are wrong.
struct Finished {
  std::string output;     // for standard output
  std::string complaint;  // for standard error
  int exitCode = 0;
};

struct PlanText {
  std::string name;      // of the file, for people
  std::string document;  // as it stands
};
// Pictures and reports; only the half of the program that knows Qt has it.
using Drawing = Finished (*)(const Request& request, const rigs::Plan& plan, const PlanText& text,
                             rigs::UnitSystem units);

// `terminal` is what the output stands on when the request does not say otherwise. Does not throw.
Finished carryOut(const Request& request, const TextStyle& terminal, Drawing draw);

// From the command line to the exit code.
int runInTerminal(int argc, const char* const* argv, Drawing draw);

// Columns as somebody writes them; empty unless it is a whole number that a page can have.
std::optional<std::size_t> columnsFrom(std::string_view text);

}  // namespace gui
