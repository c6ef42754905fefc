// SPDX-License-Identifier: GPL-3.0-or-later
// A circuit that cannot carry its kettle, told wherever that kettle's figures are: nobody must plan
// by a boil that trips the breaker, or worse.
#pragma once

#include <vector>

#include "gui/telling/case.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

struct Overload {
  std::size_t rig;
  std::size_t circuit;  // of the rig's: 0, or 1 of two
  rigs::Told text;      // a sentence that names the rig
};
// One for each circuit that its name plates overload, by more than their tolerance; none where all
// carry what hangs on them.
std::vector<Overload> overloads(const Case& of);
// To an answer that is otherwise whole: those sentences in front of all others, and a mark for
// whatever shows one of these rigs.
void addOverloads(Answer& answer, const Case& of);

}  // namespace gui::telling
