// SPDX-License-Identifier: GPL-3.0-or-later
// The languages there are texts for. Needs no Qt: the terminal and the window read one table.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "rigs/words/language.hpp"

namespace gui::telling {

// "en" first.
std::vector<std::string> languageCodes();
// English for a code there are no texts for.
const rigs::Language& languageOf(std::string_view code);

// The language of messages as POSIX finds it (IEEE Std 1003.1, 8.2): the first of LC_ALL,
// LC_MESSAGES and LANG that is set and not empty decides, "de_AT.UTF-8" for "de". "en" where that
// says nothing or a language there are no texts for. `variable` gives nullptr for what is not set.
std::string languageFromEnvironment(const std::function<const char*(const char*)>& variable);
std::string languageFromEnvironment();

}  // namespace gui::telling
