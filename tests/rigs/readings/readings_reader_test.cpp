// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/readings/readings_reader.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace rigs::readings {
namespace {

using physics::celsius;
using physics::hours;
using physics::inCelsius;
using physics::inMinutes;

struct Outcome {
  ReadLines read;
  rigs::Problems problems;

  std::string said() const {
    std::string all;
    for (const rigs::Problem& one : problems)
      all += one.where + " " + rigs::inEnglish(one.message) + "\n";
    return all;
  }
  double celsiusAt(std::size_t i) const {
    return inCelsius(std::get<physics::Temperature>(read.readings.at(i).value));
  }
  double minutesAt(std::size_t i) const { return inMinutes(read.readings.at(i).at); }
};

// A day that begins at 20:00 where wort boils at 100 °C.
Outcome read(std::string_view text, const Corrections& corrections = {}) {
  Outcome outcome;
  outcome.read =
      readLines(text, {.name = "night.csv", .startOfDay = hours(20.0), .boiling = celsius(100)},
                corrections, outcome.problems);
  return outcome;
}

void expectNight(const Outcome& found) {
  ASSERT_EQ(found.said(), "");
  ASSERT_EQ(found.read.readings.size(), 3u);
  const double minutes[] = {1260.0, 1275.0, 1860.0};
  const double degrees[] = {66.3, 65.1, 41.5};
  for (std::size_t i = 0; i < 3; ++i) {
    EXPECT_NEAR(found.minutesAt(i), minutes[i], 1e-6);
    EXPECT_NEAR(found.celsiusAt(i), degrees[i], 1e-9);
    EXPECT_NEAR(found.read.readings[i].step, 0.1, 1e-9);
  }
}

TEST(ReadLines, OfAnySeparatorAndDecimalSignSayTheSame) {
  expectNight(read("21:00 66.3\n21:15 65.1\n7:00 41.5\n"));
  expectNight(read("21:00 66,3 °C\r\n21:15 65,1 °C\r\n07:00 41,5 °C"));
  expectNight(read("time,temperature\n21:00,66.3\n21:15,65.1\n07:00,41.5\n"));
  expectNight(read("Uhrzeit;Würze (°C)\n21:00;66,3\n21:15;65,1\n07:00;41,5\n"));
  expectNight(
      read("\xEF\xBB\xBF\"time\"\t\"room\"\t\"wort [°C]\"\n21:00\t18\t66.3\n"
           "21:15\t18\t65.1\n07:00\t17\t41.5\n"));
  expectNight(read("# by hand\n\n9:00 pm, 66.3 C\n9:15 pm, 65.1 C\n7:00 am, 41.5 C\n"));
}

TEST(ReadLines, OfAnyClockSayTheSame) {
  expectNight(read("2026-02-06T21:00:00,66.3\n2026-02-06T21:15:00,65.1\n2026-02-07T07:00:00,41.5"));
  expectNight(read("2026-02-06 21:00 66.3\n2026-02-06 21:15 65.1\n2026-02-07 07:00 41.5"));
  expectNight(read("6.2.2026 21:00;66,3\n6.2.2026 21:15;65,1\n7.2.2026 07:00;41,5"));
  expectNight(
      read("date,time,temp\n2026-02-06,21:00:00,66.3\n2026-02-06,21:15:00,65.1\n"
           "2026-02-07,07:00:00,41.5"));
  expectNight(read("elapsed (s);temp\n3600;66,3\n4500;65,1\n39600;41,5"));
  expectNight(read("elapsed (min),temp\n60,66.3\n75,65.1\n660,41.5"));
  expectNight(read("hours since start (h),temp (°C)\n1,66.3\n1.25,65.1\n11,41.5"));
}

TEST(ReadLines, WithOffsetsSurviveAChangeOfClock) {
  // In the night of 25 October 2026 the hour from two to three comes twice.
  const auto found = read(
      "2026-10-24T23:30+02:00,60.0\n2026-10-25T02:30+02:00,50.0\n"
      "2026-10-25T02:10+01:00,48.0\n");
  EXPECT_EQ(found.said(), "");
  ASSERT_EQ(found.read.readings.size(), 3u);
  EXPECT_NEAR(found.minutesAt(1) - found.minutesAt(0), 180.0, 1e-6);
  EXPECT_NEAR(found.minutesAt(2) - found.minutesAt(1), 40.0, 1e-6);
  const auto without =
      read("2026-10-24T23:30,60.0\n2026-10-25T02:30,50.0\n2026-10-25T02:10,48.0\n");
  EXPECT_EQ(without.said(),
            "night.csv:3 \"2026-10-25T02:10\" comes after +1 d 02:30 in the line before; if the "
            "clock was put back, write times with their offset, e.g. 2026-10-25T02:10+01:00\n");
}

TEST(ReadLines, HoldWhatElseWasRead) {
  const auto found = read(
      "20:00 plugged in\n20:02 0.12 kWh\n21:30 28.5 L hot\n21:40 boil\n"
      "21:45 1.048 SG\n22:40 1.056 SG\n22:45 12.0 °P\n22:50 150 °F\n");
  // The gravity falls at 22:45, and one temperature tells little.
  ASSERT_EQ(found.problems.size(), 2u) << found.said();
  EXPECT_EQ(found.problems[0].where, "night.csv:7");
  const auto& all = found.read.readings;
  ASSERT_EQ(all.size(), 7u);
  EXPECT_EQ(std::get<Event>(all[0].value), Event::PluggedIn);
  EXPECT_NEAR(physics::inJoules(std::get<physics::Energy>(all[1].value)), 0.12 * 3.6e6, 1e-6);
  EXPECT_EQ(std::get<ReadVolume>(all[2].value).hot, true);
  EXPECT_NEAR(physics::inLitres(std::get<ReadVolume>(all[2].value).volume), 28.5, 1e-9);
  EXPECT_EQ(std::get<ReadGravity>(all[4].value).gravity, 1.048);
  EXPECT_NEAR(inCelsius(std::get<physics::Temperature>(all[6].value)), 65.5556, 5e-5);
  EXPECT_NEAR(all[6].step, 1.0 / 1.8, 1e-9);
}

TEST(ReadLines, MayBeginWithAnEvent) {
  const auto found = read("20:48 unplugged\n21:00 66.3\n21:15 65.1\n07:00 41.5\n");
  EXPECT_EQ(found.said(), "");
  ASSERT_EQ(found.read.readings.size(), 4u);
  EXPECT_EQ(std::get<Event>(found.read.readings[0].value), Event::Unplugged);
  EXPECT_NEAR(found.celsiusAt(3), 41.5, 1e-9);
}

TEST(ReadLines, MayBeginBeforeThePlanWhereAnEventSaysSo) {
  const Outcome early = read("19:20 plugged in\n19:30 14.5\n21:00 66.0\n");
  EXPECT_EQ(early.said(), "");
  EXPECT_NEAR(early.minutesAt(0), 1160.0, 1e-6);
  for (const char* text : {"19:30 14.5\n21:00 66.0\n", "19:30 lid on\n21:00 66.0\n22:00 65.0\n"})
    EXPECT_NE(read(text).said().find("night.csv:1 \"19:30\" is before the plan's day begins"),
              std::string::npos)
        << read(text).said();
}

TEST(ReadLines, KnowTheMidnightOfTheirDates) {
  const Outcome dated = read("2026-03-01T21:00 66.3\n2026-03-02T00:30 65.0\n");
  EXPECT_EQ(dated.read.midnight, 86400.0 * 20513);
  EXPECT_FALSE(dated.read.isUniversal);
  EXPECT_FALSE(read("21:00 66.3\n21:15 65.1\n").read.midnight);
}

TEST(ReadLines, OfNumbersAboveAllBoilingAreFahrenheitAndThatIsTold) {
  const auto found = read("21:00 151\n21:15 149\n");
  EXPECT_NEAR(found.celsiusAt(0), 66.1111, 5e-5);
  EXPECT_EQ(rigs::inEnglish(layoutTold(found.read.layout)),
            "time: column 1, by the clock; temperature of the wort: column 2, in °F, by their "
            "size");
  const auto corrected = read("21:00 51\n21:15 49\n", {.temperatureUnit = unitFrom("°F")});
  EXPECT_NEAR(corrected.celsiusAt(0), 10.5556, 5e-5);
}

TEST(ReadLines, AreCorrectedByColumn) {
  const std::string text = "a;b;c\n21:00;18.1;66.3\n21:15;18.2;65.1\n07:00;17.0;41.5\n";
  expectNight(read(text, {.temperature = "c"}));
  expectNight(read(text, {.temperature = "3"}));
  EXPECT_EQ(read(text, {.temperature = "d"}).said(),
            "night.csv there is no column \"d\"; a head or a number from 1 to 3 is accepted\n");
}

TEST(ReadLines, NameEveryBadRowWithItsLine) {
  const std::string text =
      "21:00 66.3\nyesterday 65\n21:10 warm\n21:20 nan\n21:05\n19:00 66\n21:30 66.1\n21:25 66.0\n"
      "21:40 108\n21:41 -20\n21:50 65 furlongs\n22:00 2.5 kWh\n22:10 2.1 kWh\n22:20 1.8 SG\n";
  const auto found = read(text);
  EXPECT_TRUE(rigs::hasErrors(found.problems));
  std::string lines;
  for (const rigs::Problem& one : found.problems) lines += one.where.substr(9) + " ";
  EXPECT_EQ(lines, ":2 :3 :4 :5 :6 :8 :9 :10 :11 :13 :14 ");
  EXPECT_EQ(rigs::inEnglish(found.problems[0].message),
            "\"yesterday\" is no time of a clock; write 21:05, 9:05 pm or 2026-03-01T21:05");
  EXPECT_EQ(rigs::inEnglish(found.problems[6].message),
            "108 °C is hotter than wort can be there, which boils at 100 °C");
  EXPECT_EQ(rigs::inEnglish(found.problems[9].message),
            "the meter runs backwards, from 2.5 kWh to 2.1 kWh");

  const auto without = read(text, {.leaveOutBadRows = true});
  EXPECT_FALSE(rigs::hasErrors(without.problems)) << without.said();
  EXPECT_EQ(without.problems.size(), 11u);
  EXPECT_EQ(without.read.leftOut, 11u);
  EXPECT_EQ(without.read.rows, 14u);
  EXPECT_EQ(without.read.readings.size(), 3u);
}

TEST(ReadLines, ThatTellLittleAreNoMistake) {
  EXPECT_FALSE(rigs::hasErrors(read("21:00 66.3\n").problems));
  EXPECT_EQ(read("21:00 66.3\n").problems.size(), 1u);
  EXPECT_EQ(read("21:00 66.3\n21:10 66.3\n21:20 66.3\n").said(),
            "night.csv all temperatures are the same; does the thermometer hang?\n");
}

TEST(ReadLines, OfNothingAreAMistake) {
  for (const char* text : {"", "\n\n# nothing yet\n", "time;temperature\n"}) {
    const auto found = read(text);
    EXPECT_TRUE(rigs::hasErrors(found.problems)) << text;
    EXPECT_EQ(found.problems.size(), 1u) << found.said();
  }
}

TEST(ReadLines, OfAMillionRowsAreReadAndAThousandBadOnesSummedUp) {
  std::string text = "elapsed (s),temp (°C)\n";
  for (int i = 0; i < 1'000'000; ++i)
    text += std::to_string(i / 20) + (i % 1000 == 7 ? ",none\n" : ",66.25\n");
  const auto found = read(text, {.leaveOutBadRows = true});
  EXPECT_EQ(found.read.rows, 1'000'000u);
  EXPECT_EQ(found.read.leftOut, 1000u);
  ASSERT_EQ(found.problems.size(), kMostNamed + 2);  // all are alike, too
  EXPECT_EQ(rigs::inEnglish(found.problems[kMostNamed].message),
            "900 more lines are wrong, of which this is the last");
  EXPECT_EQ(found.problems[kMostNamed].where, "night.csv:999009");
}

TEST(Gravity, FromPlatoAsTablesHaveIt) {
  // 12.0 °P is 1.0484, 20.0 °P 1.0830 (tables of Plato, from memory).
  const auto found = read("21:00 12.0 °P\n21:10 20.0 °P\n");
  EXPECT_NEAR(std::get<ReadGravity>(found.read.readings[0].value).gravity, 1.0484, 2e-4);
  EXPECT_NEAR(std::get<ReadGravity>(found.read.readings[1].value).gravity, 1.0830, 2e-4);
}

TEST(Gravity, BeyondAnyWortIsTold) {
  const auto found = read("21:00 41 °P\n21:10 -2 °P\n21:20 34 °P\n");
  EXPECT_EQ(
      found.said(),
      "night.csv:1 \"41 °P\": wort is 0 to 34 °P\nnight.csv:2 \"-2 °P\": wort is 0 to 34 °P\n");
  EXPECT_EQ(found.read.readings.size(), 1u);
}

}  // namespace
}  // namespace rigs::readings
