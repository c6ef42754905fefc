// SPDX-License-Identifier: GPL-3.0-or-later
// What somebody types at the kettle, as a line of the file that it goes into; and the clock on the
// wall, as that file counts its time.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "physics/units.hpp"
#include "rigs/readings/readings_reader.hpp"

namespace rigs::readings {

struct WallClock {
  double secondsOfDay = 0.0;              // by the clock of that place
  std::optional<std::int64_t> day = {};   // from 1970-01-01, there; empty where nobody says
  std::optional<double> sinceEpoch = {};  // s, by universal time
};

// From the midnight before the plan's day. Without dates it is the moment that the clock shows
// from 6 h before what was read last to 18 h after it; of nothing read yet, from 6 h before the
// day begins on.
physics::Time momentOf(const WallClock& clock, const ReadLines& read, physics::Time startOfDay);

// With that clock in front where it says no time itself, with its values in the file's own columns.
// A note, which begins with #, stays as it is. Without a line feed. Whether it can be read, the
// reader says.
std::string lineOf(std::string_view typed, const WallClock& clock, const ReadLines& read,
                   physics::Time startOfDay);

}  // namespace rigs::readings
