// SPDX-License-Identifier: GPL-3.0-or-later
// What a day says to whoever reads in it: volumes and gravity on both sides of what goes in.
#include "rigs/answers/read_day.hpp"

#include <gtest/gtest.h>

#include "tests/gui/terminal/plan_in_code.hpp"
#include "tests/support/within.hpp"

namespace {

using namespace physics;
using namespace rigs;

BrewDay sugaredDay() {
  Plan plan = test_support::planInCode();
  plan.batch.additions = {{.what = "sugar",
                           .mass = kilograms(2.0),
                           .extract = 1.0,
                           .temperature = celsius(20.0),
                           .beforeEnd = 0.5 * plan.batch.boil}};
  return simulate(plan.rigs[0].rig, plan.batch, plan.place, {.curves = true});
}

TEST(ReadDay, JumpsWithWhatGoesIn) {
  const BrewDay day = sugaredDay();
  ASSERT_EQ(day.additions.size(), 1U);
  const Added& sugar = day.additions.front();
  const ReadDay read(day);
  const Time moment = seconds(1.0);
  EXPECT_WITHIN(*read.hot(sugar.at - moment), sugar.hotBefore, litres(0.01));
  EXPECT_WITHIN(*read.hot(sugar.at + moment), sugar.hot, litres(0.01));
  EXPECT_WITHIN(*read.cold(sugar.at - moment), sugar.coldBefore, litres(0.01));
  EXPECT_WITHIN(*read.cold(sugar.at + moment), sugar.cold, litres(0.01));
  EXPECT_NEAR(*read.gravity(sugar.at - moment), sugar.gravityBefore, 1e-4);
  EXPECT_NEAR(*read.gravity(sugar.at + moment), sugar.gravity, 1e-4);
  EXPECT_GT(sugar.gravity, sugar.gravityBefore + 0.01);
  EXPECT_WITHIN(*read.cold(day.duration() - moment), day.resultCold, litres(0.01));
  EXPECT_NEAR(*read.gravity(day.duration() - moment), day.resultGravity, 1e-4);
  const Stage& boil = *day.find(StageKind::Boil);
  EXPECT_WITHIN(*read.cold(boil.begin + moment), day.preBoilCold, litres(0.01));
}

TEST(ReadDay, SaysNoTemperatureAroundWhatGoesIn) {
  const BrewDay day = sugaredDay();
  const Added& sugar = day.additions.front();
  ASSERT_TRUE(sugar.backIn);
  const ReadDay read(day);
  EXPECT_TRUE(read.wort(sugar.at - minutes(11.0)));
  EXPECT_FALSE(read.wort(sugar.at - minutes(9.0)));
  EXPECT_FALSE(read.wort(sugar.at + *sugar.backIn + minutes(9.0)));
  EXPECT_TRUE(read.wort(sugar.at + *sugar.backIn + minutes(11.0)));
}

// Nobody pours to the minute; and a hydrometer reads the rinsed wort from then on.
TEST(ReadDay, ReadsTheRinsedWortAndNoTemperatureAroundTheRinse) {
  Plan plan = test_support::planInCode();
  plan.batch.rinse = Rinse{.atTwentyDegrees = litres(3.0), .temperature = celsius(40.0)};
  const BrewDay day = simulate(plan.rigs[0].rig, plan.batch, plan.place, {.curves = true});
  ASSERT_TRUE(day.rinsed);
  const ReadDay read(day);
  EXPECT_TRUE(read.wort(day.rinsed->at - minutes(11.0)));
  EXPECT_FALSE(read.wort(day.rinsed->at - minutes(9.0)));
  EXPECT_FALSE(read.wort(day.rinsed->at + minutes(9.0)));
  EXPECT_TRUE(read.wort(day.rinsed->at + minutes(11.0)));
  EXPECT_NEAR(*read.gravity(day.rinsed->at + seconds(1.0)), day.rinsed->gravity, 1e-4);
  EXPECT_LT(day.rinsed->gravity, day.liftedGravity - 0.001);
  EXPECT_WITHIN(*read.hot(day.rinsed->at + seconds(1.0)), day.rinsed->hot, litres(0.01));
}

}  // namespace
