// SPDX-License-Identifier: GPL-3.0-or-later
// A plan solved with its figures against power and thickness too, for tests of the pictures.
#pragma once

#include <algorithm>
#include <stdexcept>

#include "rigs/answers/solution.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/plans/plan_writer.hpp"

namespace test_support {

// Curves from 500 W to 8 kW, which no circuit of the demo carries, and to 50 mm.
inline rigs::Solution swept(const rigs::Plan& plan) {
  using namespace physics;
  rigs::Solution solution{.plan = plan,
                          .answers = rigs::answer(plan, rigs::Depth::Everything, true),
                          .sweeps = {},
                          .done = rigs::kEverySearch};
  for (const rigs::RigPlan& rig : plan.rigs) {
    const Power most = largestElementOn(rig.rig.supply, rig.rig.element.topHeight).rating;
    rigs::RigSweeps sweeps;
    sweeps.power = rigs::againstPower(rig, plan, watts(500.0), watts(8000.0), 33, most);
    if (rig.jacketIsCompared) {
      sweeps.thickness = rigs::againstThickness(rig, plan, millimetres(50.0), 17);
      sweeps.jacketPower = rigs::jacketAgainstPower(rig, plan, watts(500.0), watts(8000.0), 17);
    }
    solution.sweeps.push_back(std::move(sweeps));
  }
  return solution;
}

// The bundled demo, once for all tests of a program.
inline const rigs::Solution& sweptDemo() {
  static const rigs::Solution solution = [] {
    rigs::Problems problems;
    const auto plan = rigs::readPlan(rigs::demoPlanText(), ".", problems);
    if (!plan) throw std::logic_error("the bundled demo has errors");
    return swept(*plan);
  }();
  return solution;
}

}  // namespace test_support
