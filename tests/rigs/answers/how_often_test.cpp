// SPDX-License-Identifier: GPL-3.0-or-later
// Bands hold as often as they say, of brews of which all is as it is believed to be. With thousands
// of brews: tests/how_often.
#include <gtest/gtest.h>

#include "tests/support/drawn_brews.hpp"
#include "tests/support/solved_demo.hpp"

namespace {

using test_support::demoPlan;
using test_support::Held;
using test_support::startedPlan;

// At three standard deviations of as many throws; χ² at one in ten thousand.
void expectHeld(const Held& held) {
  SCOPED_TRACE(held.figure);
  const double told = static_cast<double>(held.told());
  ASSERT_GT(told, 10.0 * static_cast<double>(held.untold));
  EXPECT_NEAR(held.within(), 0.8, 3.0 * std::sqrt(0.8 * 0.2 / told));
  EXPECT_LT(held.chiSquared(), 21.1);
}

TEST(HowOften, BandsBeforeAnyReadingHold) {
  for (const Held& held : test_support::heldBefore({demoPlan(), 2, 1}, 2, 1000))
    if (held.figure != "morning") expectHeld(held);  // the demo has no night
  expectHeld(test_support::heldBefore({startedPlan("night-unplugged"), 0, 2}, 0, 1000).back());
}

TEST(HowOften, TheMorningHoldsWithReadings) {
  expectHeld(test_support::heldInTheMorning({startedPlan("night-unplugged"), 0, 3}, 24));
}

}  // namespace
