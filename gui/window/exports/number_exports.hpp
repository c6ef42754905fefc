// SPDX-License-Identifier: GPL-3.0-or-later
// The exports that programs read.
#pragma once

#include <QByteArray>

#include "gui/telling/answer.hpp"
#include "gui/telling/question.hpp"
#include "gui/window/questions/shown_answer.hpp"
#include "rigs/answers/solution.hpp"

namespace gui {

// An answer, whose it is, and who reads it.
struct SeenAnswer {
  telling::Question question;
  telling::QuestionView view;
  telling::Answer answer;
  rigs::SolutionPtr solution;
  rigs::Reader reader;
};
ShownAnswer shown(const SeenAnswer& seen);

// Tables and cautions: the bytes that the terminal writes of the same question for this reader.
QByteArray answerCsv(const SeenAnswer& seen);
// "seen": title, sentence, pictures with all their points and tables, in the reader's units and
// language; "result": everything in SI, as the terminal's --json writes it.
QByteArray answerJson(const SeenAnswer& seen);

}  // namespace gui
