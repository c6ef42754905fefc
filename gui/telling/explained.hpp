// SPDX-License-Identifier: GPL-3.0-or-later
// How a figure was computed: the law in words, where it is from, how sure it is. docs/physics.md
// tells the same at length.
#pragma once

#include <vector>

#include "gui/telling/answer.hpp"
#include "gui/telling/question.hpp"
#include "gui/telling/table.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

struct Explanation {
  rigs::Told formula, source, certainty;

  bool operator==(const Explanation&) const = default;
};
// Of what the question is about.
Explanation explanationOf(Question question);
// Of one row of its tables, by the figure's place in the result; else of what the row opens.
Explanation explanationOf(Question question, const Row& row);
// All three, as one text.
rigs::Told inWords(const Explanation& explanation);
// Of each of an answer's figures, some of them the same.
std::vector<Explanation> explanationsOf(Question question, const Answer& answer);
// At the end of the answer, each once.
void explain(const std::vector<Explanation>& all, Answer& answer);

}  // namespace gui::telling
