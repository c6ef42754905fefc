// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/results/alarms.hpp"

#include <gtest/gtest.h>

#include <set>
#include <string>

namespace {

using namespace physics;
using rigs::Alarm;
using rigs::AlarmOf;

TEST(Alarms, HaveEachACodeAndASentenceOfTheirOwn) {
  std::set<std::string> codes, texts;
  const int last = static_cast<int>(AlarmOf::FromTheFuture);
  for (int i = 0; i <= last; ++i) {
    const auto what = static_cast<AlarmOf>(i);
    codes.emplace(rigs::alarmCode(what));
    for (const bool isNow : {false, true}) {
      const std::string text = rigs::inEnglish(
          rigs::alarmText({.what = what, .isNow = isNow, .by = minutes(9.0)}, hours(21.0)));
      EXPECT_TRUE(text.ends_with('.') || text.ends_with('?')) << text;
      texts.insert(text);
    }
  }
  EXPECT_EQ(codes.size(), static_cast<std::size_t>(last) + 1);
  EXPECT_GE(texts.size(), codes.size());
}

// What can hurt is said with what to do, however much of it is known.
TEST(Alarms, OfTheBoilSayToStayAndToOpenTheLid) {
  const rigs::Band<Time> at{hours(14.5), hours(14.6), hours(14.7)};
  for (const Alarm& alarm : {Alarm{.what = AlarmOf::NearBoil, .isNow = true, .at = at},
                             Alarm{.what = AlarmOf::NearBoil, .isNow = false, .at = at},
                             Alarm{.what = AlarmOf::NearBoil, .isNow = false, .at = {}}}) {
    const std::string text = rigs::inEnglish(rigs::alarmText(alarm, hours(14.0)));
    for (const char* part : {"lid", "power down", "Foam rises fast"})
      EXPECT_NE(text.find(part), std::string::npos) << text;
  }
}

TEST(Clocks, AreThoseOfTheDayOnWhichSomebodyLooks) {
  const auto seen = [](double now, double moment) {
    return rigs::inEnglish(rigs::Told::just(rigs::clockSeenAt(hours(now), hours(moment))));
  };
  EXPECT_EQ(seen(21.0, 30.5), "+1 d 06:30");
  EXPECT_EQ(seen(30.0, 30.5), "06:30");
  EXPECT_EQ(seen(30.0, 21.25), "21:15");  // last evening
  EXPECT_EQ(seen(23.9999, 24.0), "00:00");
  EXPECT_EQ(seen(24.0, 23.9999), "00:00");
}

}  // namespace
