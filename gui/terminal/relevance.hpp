// SPDX-License-Identifier: GPL-3.0-or-later
// What a command's answer depends on, so that nobody takes an answer for a changed one.
#pragma once

#include <optional>
#include <string_view>

#include "gui/telling/question.hpp"
#include "gui/terminal/verbs.hpp"

namespace gui {

// Whether an option that supposes something ("--within") can change what the command shows;
// `question` is that of a picture. Of "--alone": with a plan that is not left unplugged by itself;
// where a plan is, its whole day depends on it.
bool dependsOn(std::string_view option, Command command,
               const std::optional<telling::Question>& question);

}  // namespace gui
