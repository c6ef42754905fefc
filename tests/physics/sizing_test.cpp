// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/sizing.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

#include "tests/support/kettles.hpp"
#include "tests/support/within.hpp"

namespace physics {
namespace {

using test_support::layer;
using test_support::mashOf;
using test_support::openAt;
using test_support::roomAt;
using test_support::steelKettle;
using test_support::steelRig;
using test_support::waterOnly;

// The same rig fed straight, which is what "delivered" means.
Rig fedStraight(Rig rig, Power power) {
  rig.element.rating = power;
  rig.element.ratedAt = rig.supply.nominal;
  rig.supply.cableLoop = ohms(0.0);
  return rig;
}

Time lengthOf(const BrewDay& day, StageKind kind) {
  const Stage* stage = day.find(kind);
  return stage ? stage->end - stage->begin : seconds(-1.0);
}

struct Wish {
  Rig rig;
  Batch batch;
  Place place;
};
// A mash in a steel kettle, water alone in a lidded one, a wish for wort on a mountain.
std::vector<Wish> wishes() {
  Wish mash{steelRig(), mashOf(28.0, 6.0), roomAt(15.0)};
  Wish lidded{steelRig(), waterOnly(25.0), roomAt(20.0)};
  lidded.rig.vessel.open = openAt(0.2);
  Wish mountain{steelRig(5000.0), mashOf(25.0, 5.0), roomAt(10.0)};
  mountain.batch.size = WantedWort{litres(18.0)};
  mountain.place.pressure = pascals(70e3);
  mountain.rig.supply.cableLoop = ohms(0.3);
  mountain.rig.boilPower = 0.8;
  return {mash, lidded, mountain};
}

TEST(PowerToBoilAtAll, BoilsJustAboveAndNotJustBelow) {
  for (const Wish& w : wishes()) {
    const PowerAnswer answer = powerToBoilAtAll(w.rig, w.batch, w.place);
    ASSERT_TRUE(answer.power);
    SCOPED_TRACE(inWatts(*answer.power));
    EXPECT_EQ(simulate(fedStraight(w.rig, *answer.power), w.batch, w.place).outcome, Outcome::Done);
    const BrewDay less =
        simulate(fedStraight(w.rig, (1.0 - 1e-5) * *answer.power), w.batch, w.place);
    EXPECT_EQ(less.outcome, Outcome::Steams);
    ASSERT_TRUE(less.leastToBoil && less.levelsOff);
    EXPECT_WITHIN(*less.leastToBoil, *answer.power, 3e-6 * *answer.power);
    EXPECT_EQ(less.levelsOff->atWanted, *less.leastToBoil);
  }
}

TEST(PowerToBoilWithin, TakesThatLong) {
  for (const Wish& w : wishes()) {
    for (const double wanted : {20.0, 45.0}) {
      SCOPED_TRACE(wanted);
      const PowerAnswer answer = powerToBoilWithin(w.rig, w.batch, w.place, minutes(wanted));
      ASSERT_TRUE(answer.power);
      const BrewDay day = simulate(fedStraight(w.rig, *answer.power), w.batch, w.place);
      const Time taken = lengthOf(day, StageKind::HeatingToBoil);
      EXPECT_LE(taken, minutes(wanted) + seconds(1.0));
      // Sooner only where less could not keep it boiling.
      if (*answer.power > *powerToBoilAtAll(w.rig, w.batch, w.place).power) {
        EXPECT_GE(taken, minutes(wanted) - seconds(1.0));
      }
    }
  }
}

TEST(PowerToStrikeWithin, TakesThatLong) {
  for (const Wish& w : wishes()) {
    const PowerAnswer answer = powerToStrikeWithin(w.rig, w.batch, w.place, minutes(40.0));
    if (w.batch.grain.mass <= kilograms(0.0)) {
      EXPECT_FALSE(answer.power);
      continue;
    }
    ASSERT_TRUE(answer.power);
    const BrewDay day = simulate(fedStraight(w.rig, *answer.power), w.batch, w.place);
    EXPECT_WITHIN(lengthOf(day, StageKind::Strike), minutes(40.0), seconds(1.0));
  }
}

// The day that is told is as long as asked, as near as days themselves are known.
TEST(PowerSearch, IsJustEnoughForTheDayThatIsTold) {
  for (const Wish& w : wishes()) {
    const PowerAnswer atAll = powerToBoilAtAll(w.rig, w.batch, w.place);
    const auto check = [&](const PowerAnswer& answer, StageKind stage, Time within) {
      ASSERT_TRUE(answer.power);
      if (*answer.power == *atAll.power) return;
      const BrewDay day = simulate(fedStraight(w.rig, *answer.power), w.batch, w.place);
      EXPECT_LE(lengthOf(day, stage), (1.0 + 1e-8) * within);
      EXPECT_GE(lengthOf(day, stage), (1.0 - 2e-8) * within);
    };
    for (const double wanted : {15.0, 33.0}) {
      SCOPED_TRACE(wanted);
      const Time within = minutes(wanted);
      check(powerToBoilWithin(w.rig, w.batch, w.place, within, &atAll), StageKind::HeatingToBoil,
            within);
      if (w.batch.grain.mass <= kilograms(0.0)) continue;
      check(powerToStrikeWithin(w.rig, w.batch, w.place, within, &atAll), StageKind::Strike,
            within);
    }
  }
}

// Less than what an open kettle gives off at the threshold of boiling cannot be had: the answer is
// then the threshold.
TEST(PowerForBoilOff, BoilsThatShareOff) {
  for (const Wish& w : wishes()) {
    for (const double share : {0.06, 0.12}) {
      SCOPED_TRACE(share);
      const PowerAnswer answer = powerForBoilOff(w.rig, w.batch, w.place, share);
      ASSERT_TRUE(answer.power);
      const double threshold = inWatts(*powerToBoilAtAll(w.rig, w.batch, w.place).power);
      EXPECT_GE(inWatts(*answer.power), threshold);
      const bool atThreshold = inWatts(*answer.power) == threshold;
      const BrewDay day = simulate(fedStraight(w.rig, *answer.power), w.batch, w.place);
      ASSERT_TRUE(day.boil);
      if (atThreshold) {
        EXPECT_GT(day.boil->shareOfPreBoilPerHour, share);
        continue;
      }
      EXPECT_NEAR(day.boil->shareOfPreBoilPerHour, share, 2e-6);
    }
  }
}

TEST(PowerAnswer, SaysWhetherTheSupplyCanCarryIt) {
  Rig rig = steelRig();
  rig.supply.rating = amperes(10.0);
  const Batch batch = waterOnly(30.0);
  const PowerAnswer slow = powerToBoilWithin(rig, batch, roomAt(15.0), hours(3.0));
  const PowerAnswer fast = powerToBoilWithin(rig, batch, roomAt(15.0), minutes(30.0));
  ASSERT_TRUE(slow.power && fast.power);
  EXPECT_LE(*slow.power, watts(2300.0));
  EXPECT_TRUE(slow.onThisSupply);
  EXPECT_EQ(slow.stoppedBy, Limit::None);
  EXPECT_GT(*fast.power, watts(2300.0));
  EXPECT_FALSE(fast.onThisSupply);
  EXPECT_EQ(fast.stoppedBy, Limit::Circuit);
}

TEST(PowerAnswer, NamesWhatNoPowerCanDo) {
  const PowerAnswer now =
      powerToBoilWithin(steelRig(), waterOnly(30.0), roomAt(15.0), minutes(1.0));
  EXPECT_FALSE(now.power);
  EXPECT_EQ(now.stoppedBy, Limit::TimeAllowed);
  const PowerAnswer storm = powerForBoilOff(steelRig(), waterOnly(30.0), roomAt(15.0), 5.0);
  EXPECT_FALSE(storm.power);
  EXPECT_EQ(storm.stoppedBy, Limit::BoilVigour);
}

// An element that would stand dry is not "at the boil in no time".
TEST(PowerToBoilWithin, IsNotFooledByAnElementLeftDry) {
  Rig rig = steelRig();
  rig.element.topHeight = metres(0.12);  // 11.9 L
  Batch batch = mashOf(14.0, 4.0);
  batch.absorption = litresPerKilogram(1.5);
  const PowerAnswer answer = powerToBoilWithin(rig, batch, roomAt(15.0), minutes(30.0));
  EXPECT_FALSE(answer.power);
}

// A batch of the same proportions that fills the kettle to the wanted head-space.
BrewDay filledTo(const Rig& rig, const Batch& batch, const Place& place, double headspace) {
  double low = 0.2;
  double high = 5.0;
  for (int i = 0; i < 40; ++i) {
    const double middle = 0.5 * (low + high);
    const BrewDay day = simulate(rig, scaled(batch, middle), place);
    (day.fullest < (1.0 - headspace) * capacity(rig.vessel) ? low : high) = middle;
  }
  return simulate(rig, scaled(batch, low), place);
}

// A strong element fills the vessel, and is turned down to the boil-off asked for.
TEST(LargestBatch, FillsTheVesselWhenPowerIsPlentiful) {
  const Batch batch = mashOf(20.0, 4.0);
  const BatchAnswer answer = largestBatch(steelRig(9000.0), batch, roomAt(15.0), 0.08, 0.1);
  ASSERT_TRUE(answer.wort);
  EXPECT_EQ(answer.stoppedBy, Limit::Vessel);
  const BrewDay full = filledTo(steelRig(9000.0), batch, roomAt(15.0), 0.1);
  ASSERT_TRUE(full.boil);
  const double spared = (full.boil->shareOfPreBoilPerHour - 0.08) * inHours(batch.boil);
  EXPECT_WITHIN(*answer.wort, full.resultCold + spared * full.preBoilCold, litres(0.01));
}

// A modest one is stopped by the boil-off: just there, and not with 1 % more.
TEST(LargestBatch, StopsWhereTheBoilGetsTooWeak) {
  const Rig rig = steelRig(2600.0);
  const Batch batch = mashOf(20.0, 4.0);
  const Place place = roomAt(15.0);
  const BatchAnswer answer = largestBatch(rig, batch, place, 0.14, 0.1);
  ASSERT_TRUE(answer.wort);
  EXPECT_EQ(answer.stoppedBy, Limit::BoilVigour);
  double low = 0.5;
  double high = 3.0;
  for (int i = 0; i < 40; ++i) {
    const double middle = 0.5 * (low + high);
    (simulate(rig, scaled(batch, middle), place).resultCold < *answer.wort ? low : high) = middle;
  }
  const BrewDay at = simulate(rig, scaled(batch, high), place);
  ASSERT_TRUE(at.boil);
  EXPECT_NEAR(at.boil->shareOfPreBoilPerHour, 0.14, 1e-4);
  EXPECT_LT(simulate(rig, scaled(batch, 1.01 * high), place).boil->shareOfPreBoilPerHour, 0.14);
  EXPECT_LT(at.fullest, 0.9 * capacity(rig.vessel));
}

// Whatever size is asked about: much too small, its own, or more than the vessel holds.
TEST(LargestBatch, IsTheSameFromEverySizeOfThatProportion) {
  for (const double power : {2600.0, 9000.0}) {
    const Rig rig = steelRig(power);
    Batch batch = mashOf(20.0, 4.0);
    batch.size = PouredWater{litres(22.0)};
    const BatchAnswer answer = largestBatch(rig, batch, roomAt(15.0), 0.13, 0.1);
    ASSERT_TRUE(answer.wort);
    for (const double factor : {0.05, 0.3, 1.6, 2.4, 9.0}) {
      SCOPED_TRACE(factor);
      const BatchAnswer other = largestBatch(rig, scaled(batch, factor), roomAt(15.0), 0.13, 0.1);
      ASSERT_TRUE(other.wort);
      EXPECT_WITHIN(*other.wort, *answer.wort, 1e-5 * *answer.wort);
      EXPECT_EQ(other.stoppedBy, answer.stoppedBy);
    }
  }
}

TEST(LargestBatch, NamesABoilThatNoSizeReaches) {
  const BatchAnswer none =
      largestBatch(steelRig(500.0), mashOf(20.0, 4.0), roomAt(15.0), 0.08, 0.1);
  EXPECT_FALSE(none.wort);
  EXPECT_EQ(none.stoppedBy, Limit::Boiling);
}

TEST(WhatWouldBoil, BoilsWhenDoneAndNotJustShortOfIt) {
  const Rig weak = steelRig(1000.0);
  const Batch batch = mashOf(25.0, 5.0);
  const Place place = roomAt(12.0);
  ASSERT_EQ(simulate(weak, batch, place).outcome, Outcome::StaysFarBelow);
  const WhatWouldBoil what = whatWouldBoil(weak, nullptr, batch, place);
  ASSERT_TRUE(what.power);
  const auto with = [&](double watt, double open) {
    Rig rig = steelRig(watt);
    rig.vessel.open.heating = rig.vessel.open.boil = open;
    return simulate(rig, batch, place).outcome;
  };
  EXPECT_EQ(with(1.005 * inWatts(*what.power), 1.0), Outcome::Done);
  EXPECT_EQ(with(0.995 * inWatts(*what.power), 1.0), Outcome::Steams);
  ASSERT_TRUE(what.openFraction);
  EXPECT_GT(*what.openFraction, 0.0);
  EXPECT_LT(*what.openFraction, 1.0);
  EXPECT_EQ(with(1000.0, 0.99 * *what.openFraction), Outcome::Done);
  EXPECT_EQ(with(1000.0, 1.01 * *what.openFraction), Outcome::Steams);
  EXPECT_FALSE(what.levelWithLid);
}

// Strike with the mouth open and the way to the boil under a lid: the strike is what stalls, and a
// lid that would do for the boil alone does not do for it.
TEST(WhatWouldBoil, GetsAKettleThroughStrikeToo) {
  Rig weak = steelRig(500.0);
  weak.vessel.open = {.strike = 1.0, .mash = 1.0, .heating = 0.0, .boil = 0.0};
  const Batch batch = mashOf(25.0, 5.0);
  const Place place = roomAt(12.0);
  ASSERT_EQ(simulate(weak, batch, place).outcome, Outcome::DoesNotReachStrike);
  Rig wrapped = weak;
  wrapped.vessel.side = {{layer(40.0, 0.04)}, 0.9};
  const WhatWouldBoil what = whatWouldBoil(weak, &wrapped, batch, place);
  ASSERT_TRUE(what.power);
  EXPECT_GT(*what.power, watts(500.0));
  ASSERT_TRUE(what.openFraction);
  EXPECT_LT(*what.openFraction, 1.0);
  const auto with = [&](double open) {
    Rig rig = weak;
    rig.vessel.open.strike = rig.vessel.open.mash = open;
    return simulate(rig, batch, place).outcome;
  };
  EXPECT_EQ(with(0.99 * *what.openFraction), Outcome::Done);
  EXPECT_NE(with(1.01 * *what.openFraction), Outcome::Done);
  EXPECT_FALSE(what.jacketBoils);
  ASSERT_TRUE(what.levelWithJacket);
  EXPECT_GT(*what.levelWithJacket, simulate(weak, batch, place).levelsOff->at);
}

// Both circuits of a kettle heat it.
TEST(WhatWouldBoil, CountsTheSecondCircuit) {
  Rig weak = steelRig(600.0);
  weak.second = Feed{.element = test_support::fedWith(600.0), .supply = test_support::socket()};
  const Batch batch = waterOnly(25.0);
  ASSERT_EQ(simulate(weak, batch, roomAt(12.0)).outcome, Outcome::StaysFarBelow);
  const WhatWouldBoil one = whatWouldBoil(steelRig(1200.0), nullptr, batch, roomAt(12.0));
  const WhatWouldBoil two = whatWouldBoil(weak, nullptr, batch, roomAt(12.0));
  ASSERT_TRUE(one.openFraction && two.openFraction);
  EXPECT_NEAR(*two.openFraction, *one.openFraction, 1e-6);
}

TEST(WhatWouldBoil, SaysHowFarALidGetsAVeryWeakElement) {
  const Rig weak = steelRig(200.0);
  const Batch batch = waterOnly(25.0);
  const WhatWouldBoil what = whatWouldBoil(weak, nullptr, batch, roomAt(12.0));
  EXPECT_TRUE(what.power);
  EXPECT_FALSE(what.openFraction);
  ASSERT_TRUE(what.levelWithLid);
  Rig lidded = weak;
  lidded.vessel.open = openAt(0.0);
  const BrewDay day = simulate(lidded, batch, roomAt(12.0));
  ASSERT_TRUE(day.levelsOff);
  EXPECT_WITHIN(*what.levelWithLid, day.levelsOff->at, kelvins(0.01));
}

}  // namespace
}  // namespace physics
