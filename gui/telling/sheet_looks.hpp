// SPDX-License-Identifier: GPL-3.0-or-later
// When a mash that is left alone is read.
#pragma once

#include <functional>
#include <vector>

#include "rigs/answers/night.hpp"

namespace gui::telling {

// Of the times at which the night is told anyway: after half an hour, when it has settled; the
// last hour before bed, and the first after it where one is left. A later look tells more of a
// mash that cools: what it loses by then is more against what the thermometer may be off by.
struct Look {
  rigs::NightPoint point;
  bool isLastBeforeBed = false;
};
// `isAwake` is asked by how long it has been alone.
std::vector<Look> looksAt(const rigs::Night& night,
                          const std::function<bool(physics::Time)>& isAwake);

}  // namespace gui::telling
