// SPDX-License-Identifier: GPL-3.0-or-later
// One command from request to printed answer.
#pragma once

#include <cstddef>
#include <string>

#include "gui/commands.hpp"
#include "gui/page.hpp"

namespace gui {

// What a command prints and how it ends: 0 done, 1 it could not be done, 2 the document or the
// options are wrong.
struct Finished {
  std::string output;     // for standard output
  std::string complaint;  // for standard error
  int exitCode = 0;
};

// `terminal` is what the output stands on when the request does not say otherwise. Does not throw.
Finished carryOut(const Request& request, const TextStyle& terminal);

}  // namespace gui
