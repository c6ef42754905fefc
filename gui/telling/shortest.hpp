// SPDX-License-Identifier: GPL-3.0-or-later
// Every question's answer in a few words about one rig: what stands below the questions where they
// are listed. Nothing is searched for here: what is not known yet is not told.
#pragma once

#include <cstddef>

#include "gui/telling/case.hpp"
#include "gui/telling/question.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

// Without a full stop; "" where nothing is known.
rigs::Told shortestOf(Question question, const Case& of, std::size_t rig);

}  // namespace gui::telling
