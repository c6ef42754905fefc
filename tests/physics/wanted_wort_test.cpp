// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/wanted_wort.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/support/kettles.hpp"
#include "tests/support/within.hpp"

namespace physics {
namespace {

using test_support::mashOf;
using test_support::roomAt;
using test_support::steelRig;
using test_support::waterOnly;

Batch wanting(Batch batch, double litre) {
  batch.size = WantedWort{litres(litre)};
  return batch;
}

TEST(WantedWort, IsMetAtAnyPower) {
  for (double watt = 900.0; watt < 9000.0; watt *= 1.07) {
    const BrewDay day = simulate(steelRig(watt), wanting(mashOf(0.0, 5.5), 20.8), roomAt(18.0));
    SCOPED_TRACE(watt);
    EXPECT_TRUE(day.finished());
    EXPECT_FALSE(day.unmet);
    EXPECT_WITHIN(day.resultCold, litres(20.8), litres(1e-6));
  }
}

// A batch far too large for its kettle overflows, and is told so elsewhere; the wort is what it is.
TEST(WantedWort, IsMetInABrimfulKettle) {
  const BrewDay day = simulate(steelRig(9000.0), wanting(mashOf(0.0, 5.5), 45.0), roomAt(18.0));
  EXPECT_FALSE(day.unmet);
  EXPECT_WITHIN(day.resultCold, litres(45.0), litres(1e-6));
}

// The element stands under 5.9 L: less cannot be left.
TEST(WantedWort, IsNotLessThanWhatCoversTheElement) {
  Rig rig = steelRig();
  rig.element.topHeight = metres(0.06);
  const BrewDay day = simulate(rig, wanting(waterOnly(0.0), 4.0), roomAt(15.0));
  ASSERT_TRUE(day.unmet);
  EXPECT_EQ(day.unmet->because, Outcome::UncoversElement);
  EXPECT_FALSE(simulate(rig, wanting(waterOnly(0.0), 6.0), roomAt(15.0)).unmet);
}

TEST(WantedWort, SaysThatStrikeIsNotReached) {
  Rig rig = steelRig(300.0);
  rig.vessel.open.strike = 1.0;
  const BrewDay day = simulate(rig, wanting(mashOf(0.0, 5.0), 20.0), roomAt(15.0));
  EXPECT_EQ(day.outcome, Outcome::DoesNotReachStrike);
  ASSERT_TRUE(day.unmet);
  EXPECT_EQ(day.unmet->because, Outcome::DoesNotReachStrike);
}

TEST(WantedWort, SaysThatTheMashIsTooThick) {
  Batch batch = wanting(mashOf(0.0, 8.0), 1.0);
  batch.mash = HeldMash{{{celsius(76.0), minutes(10.0)}}};
  const BrewDay day = simulate(steelRig(), batch, roomAt(15.0));
  ASSERT_TRUE(day.unmet);
  EXPECT_EQ(day.unmet->because, Outcome::StrikeTooHot);
}

// Days made up here: `left` of it stays, and above 20 kg the element does not get them to strike.
BrewDay madeUp(Mass water, double left, bool stalls) {
  BrewDay day;
  const double kg = inKilograms(water);
  Stage heating{};
  heating.kind = StageKind::HeatingToBoil;
  if (stalls && kg > 20.0) {
    day.outcome = Outcome::DoesNotReachStrike;
  } else {
    day.stages.push_back(heating);
  }
  day.water = litres(kg);
  day.resultCold = litres(kg > 20.0 && stalls ? kg : left * kg);
  return day;
}

TEST(WantedWort, TakesFewDays) {
  int days = 0;
  const auto bent = [&](Mass water) {
    ++days;
    const double kg = inKilograms(water);
    return madeUp(water, 0.7 + 0.002 * kg, false);
  };
  const BrewDay day =
      dayThatLeaves(litres(20.0), waterOnly(0.0), kilograms(20.0), litres(1e-6), bent);
  EXPECT_NEAR(inLitres(day.resultCold), 20.0, 1e-6);
  EXPECT_LE(days, 6);
}

// A drop more, and the day stops a stage earlier with a litre more in the kettle: just above the
// leap it has nearly what is wanted.
TEST(WantedWort, IsFoundBesideALeapInFewDays) {
  int days = 0;
  const auto leaping = [&](Mass water) {
    ++days;
    BrewDay day;
    const double kg = inKilograms(water);
    const bool stops = kg > 19.99970;
    day.outcome = Outcome::DoesNotReachRest;
    day.water = litres(kg);
    day.stages.resize(stops ? 3 : 5);
    day.stages[2].kind = StageKind::HeatingToBoil;  // lifted, so that the grain keeps nothing
    day.resultCold = litres(stops ? kg + 0.0006 : kg - 1.16);
    return day;
  };
  const BrewDay day =
      dayThatLeaves(litres(20.0), waterOnly(0.0), kilograms(21.0), litres(5e-5), leaping);
  EXPECT_NEAR(inLitres(day.resultCold), 20.0, 0.01);
  EXPECT_FALSE(day.unmet && day.finished());
  EXPECT_LE(days, 25);
}

// 17 L would take 21.25 kg: more than gets to strike. The most that does is the best there is.
TEST(WantedWort, NamesWhatIsBesideTheBestThereIs) {
  int days = 0;
  const BrewDay day =
      dayThatLeaves(litres(17.0), waterOnly(0.0), kilograms(17.0), litres(1e-6), [&](Mass water) {
        ++days;
        return madeUp(water, 0.8, true);
      });
  EXPECT_EQ(day.outcome, Outcome::Done);
  EXPECT_NEAR(inLitres(day.resultCold), 16.0, 1e-4);
  ASSERT_TRUE(day.unmet);
  EXPECT_EQ(day.unmet->because, Outcome::DoesNotReachStrike);
  EXPECT_NEAR(inLitres(day.unmet->missing), 1.0, 1e-4);
  EXPECT_LT(days, 60);
}

}  // namespace
}  // namespace physics
