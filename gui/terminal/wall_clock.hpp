// SPDX-License-Identifier: GPL-3.0-or-later
// What the clock on the wall shows, asked anew each time: it goes on while a machine sleeps, and
// people set it.
#pragma once

#include <chrono>
#include <optional>
#include <string>

#include "rigs/readings/typed_line.hpp"

namespace gui {

rigs::readings::WallClock wallClock();
// What somebody types in place of it: "21:30", or with its date. Must be a moment of a clock.
rigs::readings::WallClock wallClockFrom(const std::string& typed);

// Tells a clock that went on, or back, while nothing ran here.
class ClockJumps {
 public:
  struct Jump {
    double from, to;  // seconds of the day, as the clock on the wall showed them
  };
  // Two minutes or more that the wall's clock went otherwise than one that nobody can set, since
  // the last call.
  std::optional<Jump> look(const rigs::readings::WallClock& wall,
                           std::chrono::steady_clock::time_point steady);

 private:
  std::optional<rigs::readings::WallClock> before_;
  std::chrono::steady_clock::time_point steadyBefore_;
};

}  // namespace gui
