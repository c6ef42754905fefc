// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/slower.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/gui/telling/told_checks.hpp"

namespace gui::telling {
namespace {

using test_support::demoCase;
using test_support::solvedDemo;

const physics::BrewDay& dayOf(std::size_t rig) { return solvedDemo().answers.rigs[rig].day; }

double minutesOf(const std::vector<DelayPart>& parts, Delay why) {
  for (const DelayPart& part : parts)
    if (part.why == why) return physics::inMinutes(part.time);
  return std::nan("");
}

// To what the ledgers miss: a millionth.
TEST(Delay, PartsAddUpToTheDifference) {
  for (std::size_t slow = 0; slow < 4; ++slow) {
    for (std::size_t quick = 0; quick < 4; ++quick) {
      double sum = 0.0;
      for (const DelayPart& part : delayOf(dayOf(slow), dayOf(quick)))
        sum += physics::inMinutes(part.time);
      EXPECT_NEAR(sum, physics::inMinutes(heatingTime(dayOf(slow)) - heatingTime(dayOf(quick))),
                  1e-3);
    }
  }
}

// (c) is (b) with a jacket and a lid: the same element, less through the walls.
TEST(Delay, OfABareKettleBesideAJacketIsInTheWallsAndNotInThePower) {
  const auto parts = delayOf(dayOf(1), dayOf(2));
  EXPECT_GT(minutesOf(parts, Delay::Walls), 1.0);
  EXPECT_NEAR(minutesOf(parts, Delay::Power), 0.0, 0.1);
}

// (b) and (d) are the same kettle at another voltage.
TEST(Delay, OfAWeakerSupplyIsMostlyInThePower) {
  const auto parts = delayOf(dayOf(1), dayOf(3));
  const double all = physics::inMinutes(heatingTime(dayOf(1)) - heatingTime(dayOf(3)));
  EXPECT_GT(minutesOf(parts, Delay::Power), 0.8 * all);
}

TEST(SlowerText, NamesTheSlowestTheQuickestAndWhy) {
  const auto told = slowerText(demoCase());
  ASSERT_EQ(told.size(), 1U);
  const std::string text = rigs::inEnglish(told[0]);
  EXPECT_NE(text.find(" longer to heat (a) Old element, kitchen than (d) Old element, laundry: "),
            std::string::npos)
      << text;
  EXPECT_NE(text.find(" for less power, "), std::string::npos) << text;
}

TEST(SlowerText, SaysNothingOfOneRig) {
  rigs::Solution one = solvedDemo();
  one.plan.rigs.resize(1);
  one.answers.rigs.resize(1);
  EXPECT_TRUE(slowerText(test_support::caseOf(one)).empty());
}

}  // namespace
}  // namespace gui::telling
