// SPDX-License-Identifier: GPL-3.0-or-later
// What a command is asked by and what comes of it.
#pragma once

#include <string>

#include "gui/terminal/screen.hpp"
#include "rigs/words/language.hpp"

namespace gui {

// Who asks: what is read, and what it is read on.
struct Audience {
  rigs::Reader reader;
  TextStyle style;
};

// What a command prints and how it ends: 0 done, 1 it could not be done, 2 the document or the
// options are wrong.
struct Finished {
  std::string output;     // for standard output
  std::string complaint;  // for standard error
  int exitCode = 0;
};

}  // namespace gui
