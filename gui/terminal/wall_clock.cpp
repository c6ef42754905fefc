// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/wall_clock.hpp"

#include <cassert>
#include <cmath>
#include <ctime>

#include "rigs/readings/cells.hpp"

namespace gui {
namespace {

using rigs::readings::WallClock;

constexpr double kJumps = 120.0;  // s

// By the clock of that place.
WallClock localClock(std::time_t moment, double sinceEpoch) {
  std::tm local{};
  ::localtime_r(&moment, &local);
  std::tm asUniversal = local;
  const double shown = static_cast<double>(::timegm(&asUniversal));
  const double day = std::floor(shown / rigs::readings::kDay);
  return {.secondsOfDay = shown - day * rigs::readings::kDay,
          .day = static_cast<std::int64_t>(day),
          .sinceEpoch = sinceEpoch};
}

}  // namespace

WallClock wallClock() {
  const std::time_t now = std::time(nullptr);
  return localClock(now, static_cast<double>(now));
}

WallClock wallClockFrom(const std::string& typed) {
  const auto moment = rigs::readings::momentFrom(typed);
  assert(moment && moment->secondsOfDay);
  if (!moment->day) return {.secondsOfDay = *moment->secondsOfDay, .day = {}, .sinceEpoch = {}};
  const double shown =
      rigs::readings::kDay * static_cast<double>(*moment->day) + *moment->secondsOfDay;
  if (moment->universal) return localClock(static_cast<std::time_t>(shown), shown);
  const auto asUniversal = static_cast<std::time_t>(shown);
  std::tm local{};
  ::gmtime_r(&asUniversal, &local);
  local.tm_isdst = -1;
  return {.secondsOfDay = *moment->secondsOfDay,
          .day = moment->day,
          .sinceEpoch = static_cast<double>(std::mktime(&local))};
}

std::optional<ClockJumps::Jump> ClockJumps::look(const WallClock& wall,
                                                 std::chrono::steady_clock::time_point steady) {
  std::optional<Jump> jump;
  if (before_ && before_->sinceEpoch && wall.sinceEpoch) {
    const double ran = std::chrono::duration<double>(steady - steadyBefore_).count();
    if (std::abs(*wall.sinceEpoch - *before_->sinceEpoch - ran) >= kJumps)
      jump = Jump{before_->secondsOfDay, wall.secondsOfDay};
  }
  before_ = wall;
  steadyBefore_ = steady;
  return jump;
}

}  // namespace gui
