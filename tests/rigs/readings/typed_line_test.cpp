// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/readings/typed_line.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <string>

namespace {

using namespace physics;
using namespace rigs::readings;

constexpr Time kStart = hours(20.0);

ReadLines linesOf(const std::string& text) {
  rigs::Problems problems;
  return readLines(text, {.name = "log", .startOfDay = kStart, .boiling = celsius(100.0)}, {},
                   problems);
}

WallClock clockAt(double hour, double minute = 0.0, double second = 0.0) {
  return {.secondsOfDay = 3600.0 * hour + 60.0 * minute + second,
          .day = 20513,  // 2026-03-01
          .sinceEpoch = 86400.0 * 20513 + 3600.0 * (hour - 1.0) + 60.0 * minute + second};
}

double hoursAt(const WallClock& clock, const std::string& text) {
  return inHours(momentOf(clock, text.empty() ? ReadLines{} : linesOf(text), kStart));
}

TEST(TheMomentOfAClock, IsTheOneNearestToWhatWasRead) {
  EXPECT_NEAR(hoursAt(clockAt(19.0), ""), 19.0, 1e-9);
  EXPECT_NEAR(hoursAt(clockAt(2.0), ""), 26.0, 1e-9);
  EXPECT_NEAR(hoursAt(clockAt(21.0), "20:48 unplugged\n20:49 66.6\n"), 21.0, 1e-9);
  EXPECT_NEAR(hoursAt(clockAt(6.5), "20:48 unplugged\n20:49 66.6\n"), 30.5, 1e-9);
  // Half a day later and more.
  EXPECT_NEAR(hoursAt(clockAt(9.0, 30.0), "20:48 unplugged\n20:49 66.6\n"), 33.5, 1e-9);
  // A reading of the future leaves it where it is.
  EXPECT_NEAR(hoursAt(clockAt(23.0, 50.0), "23:40 66.6\n00:10 66.2\n"), 23.0 + 50.0 / 60.0, 1e-9);
}

TEST(TheMomentOfAClock, IsByItsDateWhereDatesStand) {
  const std::string dated = "2026-02-28T20:49 66.6\n2026-02-28T21:00 66.2\n";
  EXPECT_NEAR(hoursAt(clockAt(8.0), dated), 32.0, 1e-9);
  EXPECT_NEAR(hoursAt(clockAt(23.0), dated), 47.0, 1e-9);
  // By universal time, whatever the clock on the wall.
  const std::string universal = "2026-03-01T20:49:00+01:00 66.6\n2026-03-01T21:00:00+01:00 66.2\n";
  const ReadLines read = linesOf(universal);
  EXPECT_TRUE(read.isUniversal);
  EXPECT_NEAR(inMinutes(momentOf(clockAt(21.0, 5.0), read, kStart) - read.readings.back().at), 5.0,
              1e-6);
}

std::string typedInto(const std::string& text, const std::string& typed, WallClock clock) {
  const ReadLines read = text.empty() ? ReadLines{} : linesOf(text);
  return lineOf(typed, clock, read, kStart);
}

TEST(ATypedLine, GetsTheClockWhereItHasNone) {
  const std::string text = "20:48 unplugged\n20:49 66.6\n";
  EXPECT_EQ(typedInto(text, "66.3", clockAt(21.0, 5.0)), "21:05 66.3");
  EXPECT_EQ(typedInto(text, " 66,3 °C ", clockAt(21.0, 5.0, 7.0)), "21:05:07 66,3 °C");
  EXPECT_EQ(typedInto(text, "lid on", clockAt(21.0, 5.0)), "21:05 lid on");
  EXPECT_EQ(typedInto(text, "21:02 66.3", clockAt(21.0, 5.0)), "21:02 66.3");
  EXPECT_EQ(typedInto(text, "9:02 pm 66.3", clockAt(21.0, 5.0)), "9:02 pm 66.3");
  EXPECT_EQ(typedInto(text, "# stirred", clockAt(21.0, 5.0)), "# stirred");
  EXPECT_EQ(typedInto("", "plugged in", clockAt(20.0)), "20:00 plugged in");
  EXPECT_EQ(typedInto(text, "49.4", clockAt(9.0, 30.0)), "2026-03-01T09:30 49.4");
}

TEST(ATypedLine, GoesIntoTheColumnsThereAre) {
  const std::string log = "Time;Probe;Temp °C;Event\n20:49;3;66,6;\n20:59;3;66,2;\n";
  EXPECT_EQ(typedInto(log, "66,3", clockAt(21.0, 5.0)), "21:05;;66,3;");
  EXPECT_EQ(typedInto(log, "unplugged", clockAt(21.0, 5.0)), "21:05;;;unplugged");
  EXPECT_EQ(typedInto("20:49,66.6\n20:59,66.2\n", "66,3", clockAt(21.0, 5.0)), "21:05,66.3");
  EXPECT_EQ(typedInto("20:49,66.6\n20:59,66.2\n", "boil", clockAt(21.0, 5.0)), "21:05,,boil");
  EXPECT_EQ(typedInto("2026-03-01T20:49;66.6\n2026-03-01T20:59;66.2\n", "66.3", clockAt(21, 5)),
            "2026-03-01T21:05;66.3");
}

TEST(ATypedLine, IsReadAsWhatItWasInEveryKindOfFile) {
  for (const std::string& text :
       {std::string("20:48 unplugged\n20:49 66.6\n"), std::string("20:49,66.6\n20:59,66.2\n"),
        std::string("Time;Probe;Temp °C;Event\n20:49;3;66,6;\n20:59;3;66,2;\n"),
        std::string("2026-03-01T20:49:00Z;66.6\n2026-03-01T20:50:00Z;66.2\n"),
        std::string("2026-03-01T20:49 66.6\n2026-03-01T20:59 66.2\n"),
        std::string("seconds,temp\n0,66.6\n60,66.5\n120,66.4\n")}) {
    SCOPED_TRACE(text);
    const ReadLines before = linesOf(text);
    const WallClock clock = clockAt(23.0, 5.0);
    const std::string line = lineOf("65.8", clock, before, kStart);
    const ReadLines after = linesOf(text + line + '\n');
    ASSERT_EQ(after.readings.size(), before.readings.size() + 1) << line;
    EXPECT_NEAR(inCelsius(std::get<Temperature>(after.readings.back().value)), 65.8, 1e-9);
    EXPECT_NEAR(inSeconds(after.readings.back().at), inSeconds(momentOf(clock, before, kStart)),
                1.0);
  }
}

}  // namespace
