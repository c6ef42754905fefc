// SPDX-License-Identifier: GPL-3.0-or-later
// The bundled demo with everything computed, once for all tests of a program.
#pragma once

#include <stdexcept>

#include "gui/window/questions/solver.hpp"
#include "rigs/plans/plan_writer.hpp"

namespace test_support {

inline const gui::SolutionPtr& solvedDemo() {
  static const gui::SolutionPtr solution = [] {
    rigs::Problems problems;
    const auto plan = rigs::readPlan(rigs::demoPlanText(), ".", problems);
    if (!plan) throw std::logic_error("the bundled demo has errors");
    return gui::solveAtOnce(*plan);
  }();
  return solution;
}

}  // namespace test_support
