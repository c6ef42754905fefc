// SPDX-License-Identifier: GPL-3.0-or-later
// Scripts by which shells complete commands, options and their values. Made from the same tables
// as help, when the program is built; the package installs them.
#pragma once

#include <string>

namespace gui {

enum class Shell { Bash, Zsh, Fish };

// The whole script, in English as commands and options are.
std::string completionsFor(Shell shell);

}  // namespace gui
