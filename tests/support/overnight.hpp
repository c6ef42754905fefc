// SPDX-License-Identifier: GPL-3.0-or-later
// One bare and one jacketed kettle whose mash is left unplugged for 10 h, solved with every answer.
#pragma once

#include <stdexcept>

#include "rigs/documents/json_edit.hpp"
#include "tests/support/swept_plan.hpp"

namespace test_support {

inline rigs::Plan overnightPlan() {
  const std::string document =
      rigs::withValue(std::string(rigs::demoPlanText()), "/batch/mash",
                      R"({"unplugged": {"temperature": "67 C", "time": "10 h"}})");
  rigs::Problems problems;
  auto plan = rigs::readPlan(document, ".", problems);
  if (!plan) throw std::logic_error("the overnight plan has errors");
  // Strong enough to boil, and the same but for the jacket.
  rigs::RigPlan bare = plan->rigs[3];
  rigs::RigPlan jacketed = bare;
  bare.name = bare.rig.name = "Bare kettle";
  jacketed.name = jacketed.rig.name = "Jacketed kettle";
  jacketed.rig = jacketed.jacketed;
  jacketed.hasJacket = true;
  plan->rigs = {bare, jacketed};
  plan->tariff.jacketPrice = 25.0;
  return *plan;
}

inline const rigs::Solution& overnight() {
  static const rigs::Solution solution = swept(overnightPlan());
  return solution;
}

}  // namespace test_support
