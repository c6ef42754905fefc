// SPDX-License-Identifier: GPL-3.0-or-later
// How a figure was computed: the law in words, where it is from, how sure it is. docs/physics.md
// tells the same at length.
#pragma once

#include "gui/telling/answer.hpp"
#include "gui/telling/question.hpp"
#include "gui/telling/table.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

struct Explanation {
  rigs::Told formula, source, certainty;
};
// Of what the question is about.
Explanation explanationOf(Question question);
// Of one row of its tables, by the figure's place in the result; else of what the row opens.
Explanation explanationOf(Question question, const Row& row);
// All three, as one text.
rigs::Told inWords(const Explanation& explanation);
// At the end of the answer, each law that its tables' figures come of once.
void explain(Question question, Answer& answer);

}  // namespace gui::telling
