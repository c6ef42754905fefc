// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/wall_clock.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <ctime>

namespace {

using gui::ClockJumps;
using rigs::readings::WallClock;
using Steady = std::chrono::steady_clock;

WallClock wallAt(double seconds) {
  return {.secondsOfDay = std::fmod(seconds, 86400.0),
          .day = static_cast<std::int64_t>(seconds / 86400.0),
          .sinceEpoch = seconds};
}

TEST(TheWallsClock, IsThatOfThisMachineInItsOwnPlace) {
  const WallClock now = gui::wallClock();
  const auto moment = static_cast<std::time_t>(*now.sinceEpoch);
  std::tm local{};
  ::localtime_r(&moment, &local);
  EXPECT_NEAR(now.secondsOfDay, 3600.0 * local.tm_hour + 60.0 * local.tm_min + local.tm_sec, 1e-6);
  EXPECT_LE(std::abs(std::difftime(std::time(nullptr), moment)), 2.0);
}

TEST(TheWallsClock, MayBeTyped) {
  EXPECT_EQ(gui::wallClockFrom("21:30").secondsOfDay, 77400.0);
  EXPECT_FALSE(gui::wallClockFrom("21:30").day);
  const WallClock dated = gui::wallClockFrom("2026-03-01T21:30");
  EXPECT_EQ(dated.day, 20513);
  ASSERT_TRUE(dated.sinceEpoch);
  EXPECT_EQ(*gui::wallClockFrom("2026-03-01T21:30Z").sinceEpoch, 86400.0 * 20513 + 77400.0);
}

TEST(ClockJumps, AreToldOnceForwardAndBackAndNotForWhatTimeDoes) {
  ClockJumps jumps;
  const Steady::time_point begin{};
  const double evening = 86400.0 * 20513 + 3600.0 * 21 + 300.0;
  EXPECT_FALSE(jumps.look(wallAt(evening), begin));
  EXPECT_FALSE(jumps.look(wallAt(evening + 600.0), begin + std::chrono::seconds(600)));
  EXPECT_FALSE(jumps.look(wallAt(evening + 719.0), begin + std::chrono::seconds(600)));
  // A machine that slept, whose steady clock stood still.
  const auto slept = jumps.look(wallAt(evening + 9300.0), begin + std::chrono::seconds(601));
  ASSERT_TRUE(slept);
  EXPECT_NEAR(slept->from, 3600.0 * 21 + 300.0 + 719.0, 1e-6);
  EXPECT_NEAR(slept->to, 3600.0 * 23 + 2400.0, 1e-6);
  EXPECT_FALSE(jumps.look(wallAt(evening + 9301.0), begin + std::chrono::seconds(602)));
  EXPECT_TRUE(jumps.look(wallAt(evening + 5700.0), begin + std::chrono::seconds(603)));
}

}  // namespace
