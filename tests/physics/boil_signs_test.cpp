// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/boil_signs.hpp"

#include <gtest/gtest.h>

#include "physics/brewday.hpp"
#include "physics/wort.hpp"
#include "tests/support/measured.hpp"

namespace physics {
namespace {

// 95 to 97 C at sea level; at 1600 m, where water boils at 94.65 C, so much lower.
TEST(BoilSign, OfFirstBubblesShowsBelowTheRoll) {
  const Temperature sea = boilingPoint(0.0, pascals(101325.0));
  const Temperature bubbles = firstBubbles(sea);
  EXPECT_GE(bubbles, celsius(95.0));
  EXPECT_LE(bubbles, celsius(97.0));
  EXPECT_GE(sea - kFirstBubblesBelowAtMost, celsius(94.9));
  EXPECT_LE(sea - kFirstBubblesBelowAtLeast, celsius(97.0));
  const Temperature high = boilingPoint(0.0, pascals(83437.0));
  EXPECT_NEAR(inCelsius(firstBubbles(high)), 90.65, 0.05);
}

// A time to the boil of the simulation means the roll: first bubbles come minutes before.
TEST(BoilSign, OfASimulatedHeatingIsTheRoll) {
  const BrewDay day = simulate(test_support::steelRig(), test_support::waterOnly(25.0),
                               test_support::roomAt(18.0), {.curves = true});
  const auto curve = test_support::curveOf(day, StageKind::HeatingToBoil);
  EXPECT_NEAR(curve.points.back().second, inCelsius(day.boilingPoint), 1e-6);
  const double bubbles = curve.reaching(inCelsius(firstBubbles(day.boilingPoint)));
  const double before = (curve.points.back().first - bubbles) / 60.0;
  EXPECT_GT(before, 3.0);
  EXPECT_LT(before, 8.0);
}

}  // namespace
}  // namespace physics
