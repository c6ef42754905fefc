// SPDX-License-Identifier: GPL-3.0-or-later
// What problems are made of, in English, for the translator: "%1 is missing".
#pragma once

#include <span>

namespace gui {

// In the order in which they are to be tried.
std::span<const char* const> problemPhrases();

}  // namespace gui
