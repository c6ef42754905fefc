// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/key_steps.hpp"

#include <gtest/gtest.h>

#include "tests/rigs/plans/key_values.hpp"

namespace {

using rigs::Key;
using rigs::keyAt;
using rigs::stepped;

std::string after(const char* place, const char* text, int steps) {
  const Key* key = keyAt(place);
  return key ? stepped(*key, text, steps).value_or("-") : "?";
}

TEST(AStep, GoesByTheSizeOfTheValueInTheUnitThatIsWritten) {
  EXPECT_EQ(after("/rigs/*/element/power", "2200 W", 1), "2300 W");
  EXPECT_EQ(after("/rigs/*/element/power", "2.2 kW", 1), "2.3 kW");
  EXPECT_EQ(after("/rigs/*/element/power", "5500 W", -1), "5400 W");
  EXPECT_EQ(after("/batch/water", "27 L", 1), "28 L");
  EXPECT_EQ(after("/batch/water", "7.1 gal", 1), "7.2 gal");
  EXPECT_EQ(after("/batch/water", "7,1 gal", 1), "7,2 gal");
  EXPECT_EQ(after("/rigs/*/vessel/inner_diameter", "355mm", 1), "360mm");
  EXPECT_EQ(after("/tariff/price", "0.28 EUR/kWh", 1), "0.29 EUR/kWh");
  EXPECT_EQ(after("/tariff/price", "$0.17/kWh", 1), "$0.175/kWh");
  EXPECT_EQ(after("/rigs/*/evaporation_factor", "0.9", 1), "0.95");
}

TEST(AStep, IsAWholeDegreeFiveMinutesFivePercentAndOneAmpere) {
  EXPECT_EQ(after("/batch/mash/rests/*/temperature", "66.7 °C", 1), "67 °C");
  EXPECT_EQ(after("/batch/mash/rests/*/temperature", "66.7 C", -1), "66 C");
  EXPECT_EQ(after("/batch/mash/rests/*/temperature", "152 °F", 1), "153 °F");
  EXPECT_EQ(after("/batch/boil", "60 min", 1), "65 min");
  EXPECT_EQ(after("/batch/boil", "1 h 30 min", 1), "1 h 35 min");
  EXPECT_EQ(after("/rigs/*/boil_power", "70 %", 1), "75 %");
  EXPECT_EQ(after("/rigs/*/boil_power", "0.7", 1), "0.75");
  EXPECT_EQ(after("/rigs/*/lid/open/boil", "5 %", -1), "4 %");
  EXPECT_EQ(after("/rigs/*/supply/current", "16 A", 1), "17 A");
}

TEST(AStep, OfAWireIsTheNextSizeThatIsMade) {
  EXPECT_EQ(after("/rigs/*/cable/conductor", "2.5 mm2", 1), "4 mm2");
  EXPECT_EQ(after("/rigs/*/cable/conductor", "2.5 mm2", -1), "1.5 mm2");
  EXPECT_EQ(after("/rigs/*/cable/conductor", "14 AWG", 1), "12 AWG");
}

TEST(AStep, StartsFromNothingAndEndsWhereTheRangeDoes) {
  EXPECT_EQ(after("/place/altitude", "0 m", 1), "5 m");
  EXPECT_EQ(after("/place/altitude", "5 m", -1), "0 m");
  EXPECT_EQ(after("/rigs/*/boil_power", "98 %", 1), "100 %");
  EXPECT_EQ(after("/rigs/*/boil_power", "100 %", 1), "100 %");
  EXPECT_EQ(after("/rigs/*/boil_power", "5 %", -1), "5 %");
  EXPECT_EQ(after("/rigs/*/vessel/inner_diameter", "3.2 in", -10), "3.1497 in");
}

TEST(AStep, IsNoneForWhatIsNoNumberInRange) {
  EXPECT_EQ(after("/rigs/*/lid/open/boil", "closed", 1), "-");
  EXPECT_EQ(after("/rigs/*/element/power", "much", 1), "-");
  EXPECT_EQ(after("/rigs/*/boil_power", "120 %", 1), "-");
  EXPECT_EQ(after("/rigs/*/vessel/inner_diameter", "14 1/2 in", 1), "-");
  EXPECT_EQ(after("/day_starts", "09:00", 1), "-");
}

TEST(ASlide, GoesThroughWhatPeopleHaveAndTheValueItself) {
  const auto water = rigs::slideOf(*keyAt("/batch/water"), "27.3 L");
  ASSERT_TRUE(water);
  EXPECT_EQ(water->values.front(), "5 L");
  EXPECT_EQ(water->values.back(), "200 L");
  EXPECT_EQ(water->values[water->at], "27.3 L");
  EXPECT_EQ(water->values[water->at - 1], "27 L");
  EXPECT_EQ(water->values[water->at + 1], "28 L");
}

TEST(ASlide, IsInTheUnitOfTheValueAndReachesIt) {
  const auto room = rigs::slideOf(*keyAt("/place/room"), "70 °F");
  EXPECT_EQ(room->values.front(), "32 °F");
  EXPECT_EQ(room->values.back(), "104 °F");
  EXPECT_EQ(room->values[room->at], "70 °F");
  const auto strong = rigs::slideOf(*keyAt("/rigs/*/element/power"), "18 kW");
  EXPECT_EQ(strong->values.back(), "18 kW");
  EXPECT_EQ(strong->at + 1, strong->values.size());
}

TEST(ASlide, IsNoneForOtherKeysAndBeginsAtAWord) {
  EXPECT_FALSE(rigs::slideOf(*keyAt("/place/draught"), "0.1 m/s"));
  EXPECT_EQ(rigs::slideOf(*keyAt("/rigs/*/lid/open/boil"), "closed")->values.front(), "0 %");
}

// Every key that has steps, from its example: accepted wherever it ends, and back again by as many.
TEST(AStep, OfAnyKeyStaysInTheRangeAndLeadsBack) {
  int seen = 0;
  for (const Key& key : rigs::planKeys()) {
    const auto start = stepped(key, key.example, 1);  // on a multiple
    if (!start) continue;
    ++seen;
    for (int steps = -60; steps <= 60; steps += 3) {
      SCOPED_TRACE(key.place + ": " + *start + " by " + std::to_string(steps));
      const auto end = stepped(key, *start, steps);
      ASSERT_TRUE(end);
      if (test_support::isAmount(key)) {
        const auto si = rigs::detail::read(key.quantity, *end).si;
        ASSERT_TRUE(si) << *end;
        EXPECT_GE(*si, *rigs::detail::read(key.quantity, key.least).si - 1e-12);
        EXPECT_LE(*si, *rigs::detail::read(key.quantity, key.most).si * (1.0 + 1e-12));
      }
      const bool atEnd = steps != 0 && stepped(key, *end, steps > 0 ? 1 : -1) == end;
      if (!atEnd) {
        EXPECT_EQ(stepped(key, *end, -steps), start) << *end;
      }
    }
  }
  EXPECT_GT(seen, 60);
}

}  // namespace
