// SPDX-License-Identifier: GPL-3.0-or-later
// Every question's answer in a few words about one rig: what stands below the questions where they
// are listed. Nothing is searched for here: what is not known yet is not told.
#pragma once

#include <cstddef>

#include "gui/telling/case.hpp"
#include "gui/telling/question.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

struct Shortest {
  rigs::Told text;  // without a full stop; "" where nothing is known
  // Some rig of the plan, not only this one, asks more of its circuit than that is rated for.
  bool danger = false;
};
Shortest shortestOf(Question question, const Case& of, std::size_t rig);

}  // namespace gui::telling
