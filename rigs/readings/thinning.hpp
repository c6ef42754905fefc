// SPDX-License-Identifier: GPL-3.0-or-later
// A logger's thousands of rows as the few dozen that a fit can weigh honestly.
#pragma once

#include <cstddef>
#include <vector>

namespace rigs::readings {

struct LoggedPoint {
  double at = 0.0;     // s
  double value = 0.0;  // any unit
};
// What some rows come to together.
struct Thinned {
  double at = 0.0, value = 0.0;
  // Standard deviation of the mean, with neighbours that go wrong together counted as fewer: n
  // readings whose neighbours correlate by r are worth n(1 - r)/(1 + r). Source: Bayley &
  // Hammersley 1946. 0 of a row alone, of which it cannot be told.
  double spread = 0.0;
  std::size_t rows = 1;
};

// In groups of neighbours, each about its own straight line, no more than `most` of them. In the
// order of time as given; 1 or more groups are asked for. Few rows stay as they are.
std::vector<Thinned> thinned(const std::vector<LoggedPoint>& log, std::size_t most);

}  // namespace rigs::readings
