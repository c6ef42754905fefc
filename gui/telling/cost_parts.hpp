// SPDX-License-Identifier: GPL-3.0-or-later
// What a day's energy and money are made of: its stages, and what is heated beside them.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "gui/telling/case.hpp"

namespace gui::telling {

struct CostPart {
  rigs::Told name;
  // Of a rig. A stage that the day never came to is no figure, which is not the same as 0.
  std::function<std::optional<physics::Energy>(std::size_t)> energy;
  // At the hour and after the use it falls into.
  std::function<std::optional<double>(std::size_t)> cost;
  // Where a program finds them; empty where rigs do not all have it once and at the same place,
  // since rows of all rests are sums.
  std::string energyResult, costResult;
};

// Those that draw anything with any rig, in the order of the day. Valid as long as `of` is.
std::vector<CostPart> costParts(const Case& of);

}  // namespace gui::telling
