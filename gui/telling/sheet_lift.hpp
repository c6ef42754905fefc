// SPDX-License-Identifier: GPL-3.0-or-later
// Lines of the sheet for grain that is rinsed, or hangs to drain.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "gui/telling/case.hpp"

namespace gui::telling {

// What it says, and at which time of the day; the sheet's list makes a line of it.
struct LiftLine {
  physics::Time at;
  rigs::Told action, more = {};
  std::vector<rigs::Told> expected = {}, toWrite = {};
};

bool isRinsedOrDrained(const Case& of, std::size_t rig);
// From lifting the grain until it is taken away, which is the heating's own line.
std::vector<LiftLine> liftLines(const Case& of, std::size_t rig);
// Heating the rinsing water, where that begins in this stage: over the half hour before the lift
// where nothing says how long it takes.
std::optional<LiftLine> rinseHeatingLine(const Case& of, std::size_t rig,
                                         const physics::Stage& stage);

}  // namespace gui::telling
