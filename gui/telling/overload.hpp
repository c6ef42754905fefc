// SPDX-License-Identifier: GPL-3.0-or-later
// A circuit that cannot carry its kettle, told wherever that kettle's figures are: nobody must plan
// by a boil that trips the breaker, or worse.
#pragma once

#include <vector>

#include "gui/telling/case.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

// One sentence for each circuit that its name plates overload, by more than their tolerance; none
// where all carry what hangs on them.
std::vector<rigs::Told> overloads(const Case& of);

}  // namespace gui::telling
