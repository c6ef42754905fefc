// SPDX-License-Identifier: GPL-3.0-or-later
// The bundled demo solved, once for all tests of a program.
#pragma once

#include <algorithm>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>

#include "rigs/answers/search.hpp"
#include "rigs/answers/solution.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "rigs/plans/plan_writer.hpp"

namespace test_support {

inline rigs::Plan demoPlan() {
  rigs::Problems problems;
  auto plan = rigs::readPlan(rigs::demoPlanText(), ".", problems);
  if (!plan) throw std::logic_error("the bundled demo has errors");
  return *plan;
}

// One of the other plans to start from.
inline rigs::Plan startedPlan(std::string_view name) {
  rigs::Problems problems;
  return rigs::readPlan(rigs::planStartText(std::string(name)).value(), ".", problems).value();
}

// With every answer and its curves; no figures against power or thickness.
inline rigs::Solution solved(const rigs::Plan& plan) {
  rigs::Solution solution{.plan = plan,
                          .answers = rigs::answer(plan, rigs::Depth::Everything, true),
                          .sweeps = {},
                          .done = {.sizing = true, .circuit = true, .rest = true}};
  solution.sweeps.resize(plan.rigs.size());
  return solution;
}

inline const rigs::Solution& solvedDemo() {
  static const rigs::Solution solution = [] {
    rigs::Solution all = solved(demoPlan());
    // Each change alone, which takes but a moment.
    for (std::size_t i = 0; i < all.answers.rigs.size(); ++i)
      all.answers.rigs[i].helps =
          std::make_shared<const rigs::HelpsAnswer>(rigs::helps(all.plan, i, 1));
    rigs::addHowSure(all, {}, 16);  // so few days take but a moment, too
    return all;
  }();
  return solution;
}

}  // namespace test_support
