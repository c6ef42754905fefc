// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/jacket.hpp"

#include <gtest/gtest.h>

#include "physics/sizing.hpp"
#include "tests/support/kettles.hpp"
#include "tests/support/within.hpp"

namespace physics {
namespace {

using test_support::layer;
using test_support::mashOf;
using test_support::roomAt;
using test_support::steelRig;

Rig jacketed(Rig rig, double millimetre, double emissivity = 0.9) {
  rig.vessel.side = {{layer(millimetre, 0.04)}, emissivity};
  return rig;
}
JacketEffect effectOf(const Rig& bare, const Rig& wrapped) {
  return compareJacket(bare, wrapped, mashOf(28.0, 6.0), roomAt(15.0), hours(8.0));
}

TEST(Jacket, IsNoneWhenItIsTheSameKettle) {
  const JacketEffect effect = effectOf(steelRig(), steelRig());
  EXPECT_EQ(effect.verdict, JacketVerdict::NotWorthIt);
  EXPECT_EQ(effect.atBoil.saved(), watts(0.0));
  EXPECT_EQ(effect.savedFromWall, std::optional(joules(0.0)));
  ASSERT_TRUE(effect.savedToBoil && effect.savedToStrike);
  EXPECT_EQ(*effect.savedToBoil, seconds(0.0));
  EXPECT_EQ(effect.bareAfter, effect.jacketedAfter);
}

TEST(Jacket, SavesTimeEnergyAndWarmth) {
  const JacketEffect effect = effectOf(steelRig(), jacketed(steelRig(), 20.0));
  EXPECT_GT(effect.atMash.saved(), watts(0.0));
  EXPECT_GT(effect.atBoil.saved(), effect.atMash.saved());
  ASSERT_TRUE(effect.savedFromWall);
  EXPECT_GT(*effect.savedFromWall, joules(0.0));
  EXPECT_GT(*effect.savedToStrike, seconds(0.0));
  EXPECT_GT(*effect.savedToBoil, seconds(0.0));
  EXPECT_GT(effect.jacketedAfter, effect.bareAfter + kelvins(3.0));
  EXPECT_NE(effect.verdict, JacketVerdict::NotWorthIt);
  EXPECT_FALSE(effect.reasons.skinRadiatesMore);
}

// Each rig brews the wanted wort: the planned one's day is its own, whichever of the two it is.
TEST(Jacket, ComparesDaysThatEachBrewTheBatch) {
  Batch batch = mashOf(28.0, 6.0);
  batch.size = WantedWort{litres(22.0)};
  const Rig bare = steelRig();
  const Rig wrapped = jacketed(bare, 20.0);
  for (const AsPlanned planned : {AsPlanned::Bare, AsPlanned::Jacketed}) {
    const JacketEffect effect =
        compareJacket(bare, wrapped, batch, roomAt(15.0), hours(8.0), planned);
    const bool isBare = planned == AsPlanned::Bare;
    const BrewDay own = simulate(isBare ? bare : wrapped, batch, roomAt(15.0));
    const BrewDay& told = isBare ? effect.bare : effect.jacketed;
    EXPECT_EQ(told.total.fromWall(), own.total.fromWall());
    EXPECT_EQ(told.water, own.water);
    EXPECT_WITHIN(effect.bare.resultCold, litres(22.0), litres(1e-5));
    EXPECT_WITHIN(effect.jacketed.resultCold, litres(22.0), litres(1e-5));
    EXPECT_GT(effect.jacketed.water, effect.bare.water);  // it boils harder
  }
}

// A day that stops has no water for the wanted wort; there the planned rig's is poured.
TEST(Jacket, PoursThePlannedRigsWaterWhereADayStops) {
  Batch batch = mashOf(28.0, 6.0);
  batch.size = WantedWort{litres(22.0)};
  const Rig bare = steelRig(1000.0);
  const JacketEffect effect =
      compareJacket(bare, jacketed(bare, 20.0), batch, roomAt(15.0), hours(8.0));
  ASSERT_NE(effect.bare.outcome, Outcome::Done);
  EXPECT_EQ(effect.jacketed.water, effect.bare.water);
}

// The night of a batch that is itself left alone is the day's own, to the last digit.
TEST(Jacket, LeavesAloneWhatTheBatchLeavesAlone) {
  Batch batch = mashOf(28.0, 6.0);
  batch.mash = UnpluggedMash{celsius(67.0), hours(10.0)};
  const JacketEffect effect = compareJacket(steelRig(), jacketed(steelRig(), 20.0), batch,
                                            roomAt(15.0), hours(10.0), AsPlanned::Jacketed);
  EXPECT_EQ(effect.bareAfter, effect.bare.find(StageKind::UnpluggedRest)->last);
  EXPECT_EQ(effect.jacketedAfter, effect.jacketed.find(StageKind::UnpluggedRest)->last);
}

// The same heat, counted twice: steady losses times time against the ledger of the boil.
TEST(Jacket, SavesInTheBoilWhatItSavesInItsSteadyLosses) {
  const JacketEffect effect = effectOf(steelRig(), jacketed(steelRig(), 20.0));
  const auto sideOf = [](const BrewDay& day) {
    const Ledger& l = day.find(StageKind::Boil)->ledger;
    return (l.lost[Path::Side] + l.lost[Path::DryWall]) / minutes(60.0);
  };
  EXPECT_WITHIN(sideOf(effect.bare) - sideOf(effect.jacketed),
                effect.atBoil.bareSide - effect.atBoil.jacketedSide,
                0.1 * (effect.atBoil.bareSide - effect.atBoil.jacketedSide));
}

// 1 mm of black rubber over polished steel: the skin radiates what the rubber holds back.
TEST(Jacket, SaysWhenAThinDarkSkinUndoesIt) {
  Rig bright = steelRig();
  bright.vessel.side.emissivity = 0.1;
  const JacketEffect effect = effectOf(bright, jacketed(bright, 1.0, 0.95));
  EXPECT_LT(effect.atBoil.sideShareSaved(), 0.0);
  EXPECT_TRUE(effect.reasons.skinRadiatesMore);
  EXPECT_EQ(effect.verdict, JacketVerdict::NotWorthIt);
}

TEST(Jacket, SaysThatAStrongElementHidesTheLosses) {
  EXPECT_TRUE(effectOf(steelRig(9000.0), jacketed(steelRig(9000.0), 20.0))
                  .reasons.strongElementHidesLosses);
  EXPECT_FALSE(effectOf(steelRig(1500.0), jacketed(steelRig(1500.0), 20.0))
                   .reasons.strongElementHidesLosses);
  EXPECT_TRUE(effectOf(steelRig(), jacketed(steelRig(), 20.0)).reasons.surfaceDominates);
}

// Power between what the jacketed and what the bare kettle needs.
TEST(Jacket, MayBeWhatMakesItBoil) {
  const Batch batch = mashOf(28.0, 6.0);
  const Rig bare = steelRig();
  const PowerAnswer bareNeeds = powerToBoilAtAll(bare, batch, roomAt(15.0));
  const PowerAnswer wrappedNeeds = powerToBoilAtAll(jacketed(bare, 20.0), batch, roomAt(15.0));
  ASSERT_TRUE(bareNeeds.power && wrappedNeeds.power);
  const double watt = 0.5 * inWatts(*bareNeeds.power + *wrappedNeeds.power);
  const JacketEffect effect = effectOf(steelRig(watt), jacketed(steelRig(watt), 20.0));
  EXPECT_EQ(effect.bare.outcome, Outcome::Steams);
  EXPECT_EQ(effect.jacketed.outcome, Outcome::Done);
  EXPECT_EQ(effect.verdict, JacketVerdict::MakesItBoil);
  EXPECT_FALSE(effect.savedToBoil);
  EXPECT_FALSE(effect.savedFromWall);
}

// A boil that dies once the lid is off was still reached sooner: the time counts, the energy of a
// day that stops there does not.
TEST(Jacket, SavesTimeToABoilThatDoesNotLast) {
  Rig bare = steelRig(1100.0);
  bare.vessel.open = test_support::openAt(0.0);
  bare.vessel.open.boil = 1.0;
  const JacketEffect effect = effectOf(bare, jacketed(bare, 10.0));
  ASSERT_EQ(effect.bare.outcome, Outcome::StaysFarBelow);
  ASSERT_EQ(effect.jacketed.outcome, Outcome::StaysFarBelow);
  ASSERT_TRUE(effect.bare.find(StageKind::Boil) && effect.jacketed.find(StageKind::Boil));
  ASSERT_TRUE(effect.savedToBoil);
  EXPECT_GT(*effect.savedToBoil, minutes(1.0));
  EXPECT_FALSE(effect.savedFromWall);
}

// A bare kettle that stalls on the way to strike is not one that boils either.
TEST(Jacket, MayBeWhatReachesStrike) {
  Rig bare = steelRig(150.0);
  bare.vessel.open = test_support::openAt(0.0);
  bare.vessel.lid = bare.vessel.base = {{layer(40.0, 0.04)}, 0.9};
  const JacketEffect effect = effectOf(bare, jacketed(bare, 60.0));
  ASSERT_EQ(effect.bare.outcome, Outcome::DoesNotReachStrike);
  ASSERT_EQ(effect.jacketed.outcome, Outcome::Done);
  EXPECT_EQ(effect.verdict, JacketVerdict::MakesItBoil);
}

// 150 W hold less than strike under a bare steel lid; 10 mm around side and lid reach it in
// many hours, and then not the boil. More energy over a longer way is no reason against it.
TEST(Jacket, MayGetFurtherWithoutBoiling) {
  Rig bare = steelRig(150.0);
  bare.vessel.open = test_support::openAt(0.0);
  Rig wrapped = jacketed(bare, 10.0);
  wrapped.vessel.lid = wrapped.vessel.side;
  const JacketEffect effect = effectOf(bare, wrapped);
  ASSERT_EQ(effect.bare.outcome, Outcome::DoesNotReachStrike);
  ASSERT_TRUE(effect.jacketed.levelsOff);
  ASSERT_NE(effect.jacketed.outcome, Outcome::DoesNotReachStrike);
  EXPECT_EQ(effect.verdict, JacketVerdict::GetsFurther);
  EXPECT_FALSE(effect.savedFromWall);
  EXPECT_GT(effect.jacketed.levelsOff->at, effect.bare.levelsOff->at);
}

TEST(LeftAlone, TendsToTheRoom) {
  const Batch batch = mashOf(28.0, 6.0);
  Temperature before = celsius(66.0);
  for (const double hour : {1.0, 4.0, 12.0, 40.0}) {
    const Temperature t = leftAlone(steelRig(), batch, roomAt(15.0), hours(hour));
    EXPECT_LT(t, before);
    EXPECT_GT(t, celsius(15.0));
    before = t;
  }
  EXPECT_LT(before, celsius(20.0));
}

}  // namespace
}  // namespace physics
