// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/level_off.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace physics {
namespace {

// 5 W/K over a room of 20 C.
Power fiveWattsPerKelvin(Temperature t) { return watts(5.0 * (inCelsius(t) - 20.0)); }

TEST(LevelOff, IsWhereSupplyEqualsLoss) {
  const auto at = [](double watt, double wanted) {
    return levelOff(fiveWattsPerKelvin, watts(watt), celsius(-20.0), celsius(wanted));
  };
  ASSERT_TRUE(at(300.0, 95.0));
  EXPECT_NEAR(inCelsius(*at(300.0, 95.0)), 80.0, 1e-8);
  EXPECT_FALSE(at(376.0, 95.0));
  EXPECT_NEAR(inCelsius(*at(375.0, 95.0)), 95.0, 1e-8);
  EXPECT_NEAR(inCelsius(*at(-1000.0, 95.0)), -20.0, 1e-8);
}

TEST(BoilBegins, SlidesFromTheLevelToTheBoil) {
  const auto at = [](double watt) {
    return inCelsius(
        boilBegins(fiveWattsPerKelvin, watts(watt), celsius(-20.0), celsius(95.0), celsius(95.0)));
  };
  EXPECT_NEAR(at(300.0), 79.75, 1e-8);
  EXPECT_NEAR(at(375.0), 94.75, 1e-8);
  EXPECT_NEAR(at(375.0 + 1.25 / 2.0), 94.875, 1e-8);
  EXPECT_NEAR(at(375.0 + 1.25), 95.0, 1e-8);
  EXPECT_NEAR(at(500.0), 95.0, 1e-9);
}

// Above 95 C, where water would boil, losses stand still up to 95.2 C, where the wort does.
TEST(BoilBegins, DoesNotFollowALossThatStandsStill) {
  const LossAt loss = [](Temperature t) { return fiveWattsPerKelvin(std::min(t, celsius(95.0))); };
  const auto at = [&](double watt) {
    return inCelsius(boilBegins(loss, watts(watt), celsius(-20.0), celsius(95.0), celsius(95.2)));
  };
  EXPECT_NEAR(at(374.999), 94.75, 1e-3);
  EXPECT_NEAR(at(375.001), 94.75, 1e-3);
  EXPECT_NEAR(at(376.25), 95.0, 1e-8);
  EXPECT_NEAR(at(377.249), 95.2, 1e-3);
  EXPECT_NEAR(at(377.251), 95.2, 1e-9);
}

}  // namespace
}  // namespace physics
