// SPDX-License-Identifier: GPL-3.0-or-later
// Everything the window shows for one state of the plan, computed off the interface thread.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "rigs/answers.hpp"
#include "rigs/plan.hpp"
#include "rigs/problems.hpp"
#include "rigs/sweeps.hpp"

namespace gui {

// One rig's pictures beyond its day.
struct RigSweeps {
  std::vector<rigs::PowerPoint> power;
  std::vector<rigs::JacketPoint> thickness;        // empty without a jacket to compare
  std::vector<rigs::JacketPowerPoint> jacketPower;  // likewise
  std::vector<rigs::CoolingPoint> cooling;          // likewise
};

// Immutable once made: shared between threads and views.
struct Solution {
  rigs::Plan plan;
  rigs::Answers answers;          // with curves
  std::vector<RigSweeps> sweeps;  // one a rig, plan order; empty while only the days are ready
  int edition = 0;                // of the document it belongs to; newer wins
};
using SolutionPtr = std::shared_ptr<const Solution>;

}  // namespace gui
