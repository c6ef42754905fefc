// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/cooling.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "rigs/answers/answers.hpp"
#include "tests/gui/terminal/plan_in_code.hpp"
#include "tests/support/within.hpp"

namespace {

using namespace physics;
using namespace rigs;

class NoChillOf : public ::testing::Test {
 protected:
  Plan plan_ = test_support::planInCode(true);
  BrewDay dayOf(std::size_t rig) const {
    return simulate(plan_.rigs[rig].rig, plan_.batch, plan_.place);
  }
};

// Newton's law from its own time constant: tau ln((57 - T)/(21 - T)).
TEST_F(NoChillOf, CoolsByOneTimeConstant) {
  const auto cool = noChill(plan_.rigs[0].rig, dayOf(0), plan_.place);
  ASSERT_TRUE(cool && cool->toTwentyOne && cool->toHotHolding);
  const double room = inCelsius(plan_.place.room);
  EXPECT_WITHIN(*cool->toTwentyOne, cool->timeConstant * std::log((57.0 - room) / (21.0 - room)),
                seconds(1.0));
  EXPECT_FALSE(cool->toFive) << "no room of 18 C cools to 5 C";
  EXPECT_LT(*cool->toHotHolding, *cool->toTwentyOne);
}

// The whole day simulated the other way: a mash left alone loses what the constant says, within the
// tenth or so that a mash differs from wort and its losses grow with temperature.
TEST_F(NoChillOf, IsNearWhatAKettleLeftAloneDoes) {
  const Rig& rig = plan_.rigs[0].rig;
  const auto cool = noChill(rig, dayOf(0), plan_.place);
  Batch left = plan_.batch;
  left.mash = UnpluggedMash{celsius(57.0), hours(10.0)};
  left.boil = seconds(0.0);
  const BrewDay night = simulate(rig, left, plan_.place);
  const Stage* rest = night.find(StageKind::UnpluggedRest);
  ASSERT_TRUE(rest);
  const double room = inCelsius(plan_.place.room);
  const Time constant =
      hours(10.0) *
      (1.0 / std::log((inCelsius(rest->first) - room) / (inCelsius(rest->last) - room)));
  EXPECT_WITHIN(cool->timeConstant, constant, 0.35 * constant);
}

// Cold water as the boil ends may leave the wort anywhere down to its own temperature.
TEST_F(NoChillOf, CountsFromWhatGoesInLast) {
  for (const double litres : {0.0, 5.0, 20.0, 80.0, 400.0}) {
    plan_.batch.additions = {{.what = "water",
                              .mass = kilograms(litres),
                              .temperature = celsius(2.0),
                              .beforeEnd = seconds(0.0)}};
    const auto cool = noChill(plan_.rigs[0].rig, dayOf(0), plan_.place);
    if (!cool) continue;
    ASSERT_TRUE(cool->toHotHolding);
    EXPECT_GE(*cool->toHotHolding, seconds(0.0)) << litres;
    EXPECT_EQ(*cool->toHotHolding == seconds(0.0), litres > 15.0) << litres;
  }
}

TEST_F(NoChillOf, TakesLongerUnderAJacketAndNeverInAWarmRoom) {
  const BrewDay day = dayOf(0);
  const auto bare = noChill(plan_.rigs[0].bare, day, plan_.place);
  const auto jacketed = noChill(plan_.rigs[0].jacketed, day, plan_.place);
  EXPECT_GT(jacketed->timeConstant, bare->timeConstant);
  Place warm = plan_.place;
  warm.room = celsius(25.0);
  EXPECT_FALSE(noChill(plan_.rigs[0].rig, day, warm)->toTwentyOne);
  warm.room = celsius(45.0);
  EXPECT_FALSE(noChill(plan_.rigs[0].rig, day, warm));
}

TEST_F(NoChillOf, SaysNothingOfADayWithoutABoil) {
  BrewDay day = dayOf(0);
  day.boil.reset();
  EXPECT_FALSE(noChill(plan_.rigs[0].rig, day, plan_.place));
  day = dayOf(0);
  day.outcome = Outcome::UncoversElement;
  EXPECT_FALSE(noChill(plan_.rigs[0].rig, day, plan_.place));
}

// Wort that only steamed is hot, too, and has to be cooled.
TEST_F(NoChillOf, KnowsADayThatDoesNotRoll) {
  ASSERT_EQ(dayOf(2).outcome, Outcome::StaysFarBelow);
  EXPECT_TRUE(noChill(plan_.rigs[2].rig, dayOf(2), plan_.place));
}

}  // namespace
