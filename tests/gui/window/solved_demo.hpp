// SPDX-License-Identifier: GPL-3.0-or-later
// The bundled demo with everything computed, once for all tests of a program.
#pragma once

#include <memory>
#include <stdexcept>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/case.hpp"
#include "gui/window/questions/shown_answer.hpp"
#include "gui/window/questions/solver.hpp"
#include "gui/window/words/reader.hpp"
#include "rigs/answers/search.hpp"
#include "rigs/plans/plan_writer.hpp"

namespace test_support {

// How sure it is, of so few days that it takes but a moment.
inline gui::SolutionPtr withFewDays(const gui::SolutionPtr& solution) {
  rigs::Solution more = *solution;
  rigs::addHowSure(more, {}, 16);
  return std::make_shared<const rigs::Solution>(std::move(more));
}

inline const gui::SolutionPtr& solvedDemo() {
  static const gui::SolutionPtr solution = [] {
    rigs::Problems problems;
    const auto plan = rigs::readPlan(rigs::demoPlanText(), ".", problems);
    if (!plan) throw std::logic_error("the bundled demo has errors");
    return withFewDays(gui::withWhatHelps(gui::solveAtOnce(*plan), 1));
  }();
  return solution;
}

// What the demo answers, as this reader is told; and as text.
inline gui::telling::Answer askDemo(gui::telling::Question question,
                                    const gui::telling::QuestionView& view = {},
                                    rigs::UnitSystem units = rigs::UnitSystem::SI) {
  return gui::telling::answerTo(question, *solvedDemo(), gui::readerOf(units), view);
}
inline gui::ShownAnswer shownDemo(gui::telling::Question question,
                                  const gui::telling::QuestionView& view = {},
                                  rigs::UnitSystem units = rigs::UnitSystem::SI) {
  return gui::shown(askDemo(question, view, units), gui::rigNamesOf(*solvedDemo()),
                    gui::readerOf(units));
}

}  // namespace test_support
