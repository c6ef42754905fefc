// SPDX-License-Identifier: GPL-3.0-or-later
// Any question's answer, with its title and its cautions.
#pragma once

#include "gui/telling/answer.hpp"
#include "gui/telling/question.hpp"
#include "rigs/answers/answers.hpp"
#include "rigs/answers/solution.hpp"
#include "rigs/words/language.hpp"

namespace gui::telling {

// Pure: the same solution, reader and view give the same answer. Numbers come from the solution,
// which covers what neededBy() says.
Answer answerTo(Question question, const rigs::Solution& solution, const rigs::Reader& reader,
                const QuestionView& view = {});
// How deep the answers are that it is told from.
rigs::Depth depthOf(Question question);
// What takes longer than the days and this answer shows, in its pictures, tables or sentences.
rigs::Searches neededBy(Question question, const QuestionView& view = {});

}  // namespace gui::telling
