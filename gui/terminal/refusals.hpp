// SPDX-License-Identifier: GPL-3.0-or-later
// What is said of typed words that a command cannot use.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "gui/terminal/verbs.hpp"
#include "rigs/words/told.hpp"

namespace gui {

// As it was typed, without what would move a cursor.
rigs::Verbatim word(std::string_view text);
std::vector<rigs::Told> asTold(const std::vector<std::string>& words);

// Where that command is helped with; without one, where all commands are.
rigs::Told tryHelp(const Verb* verb);
// "--over: "x" was given; thickness or power is accepted."
rigs::Told onlyAccepted(std::string_view option, const std::string& given,
                        std::vector<rigs::Told> accepted);

}  // namespace gui
