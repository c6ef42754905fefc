// SPDX-License-Identifier: GPL-3.0-or-later
// What a recirculation pump and its controller do to a day.
#include <gtest/gtest.h>

#include "physics/brewday.hpp"
#include "tests/support/kettles.hpp"
#include "tests/support/within.hpp"

namespace physics {
namespace {

using test_support::mashOf;
using test_support::roomAt;
using test_support::steelRig;

Rig pumped() {
  Rig rig = steelRig();
  rig.hose.length = metres(1.2);
  return rig;
}

// A pump's heat is a source: the ledger closes with it, and a controller gives so much less.
TEST(Pump, GivesItsHeatToTheWortWhileItRuns) {
  Rig rig = pumped();
  const BrewDay without = simulate(rig, mashOf(25.0, 5.0), roomAt(20.0));
  rig.hose.pumpHeat = watts(25.0);
  const BrewDay with = simulate(rig, mashOf(25.0, 5.0), roomAt(20.0));
  for (std::size_t i = 0; i < with.stages.size(); ++i) {
    const Stage& stage = with.stages[i];
    EXPECT_LT(stage.ledger.imbalance(), 1e-6);
    const bool runs = stage.kind == StageKind::Rest || stage.kind == StageKind::Ramp;
    EXPECT_NEAR(inJoules(stage.ledger.pump), runs ? 25.0 * inSeconds(stage.end - stage.begin) : 0.0,
                1e-6);
  }
  EXPECT_LT(with.total.imbalance(), 1e-6);
  const Stage* rest = with.find(StageKind::Rest);
  const Stage* before = without.find(StageKind::Rest);
  ASSERT_TRUE(rest && before);
  EXPECT_NEAR(inJoules(before->ledger.element - rest->ledger.element), inJoules(rest->ledger.pump),
              0.02 * inJoules(rest->ledger.pump));
  rig.hose.length = metres(0.0);
  EXPECT_EQ(inJoules(simulate(rig, mashOf(25.0, 5.0), roomAt(20.0)).total.pump), 0.0);
}

// Volume over flow, 7 min for 28 L at 4 L/min, once for each ramp and before its rest.
TEST(Pump, NeedsItsTimeToBringARampIntoTheBed) {
  Rig rig = pumped();
  EXPECT_EQ(bedLag(rig.hose, litres(28.0)), seconds(0.0));
  const BrewDay atOnce = simulate(rig, mashOf(25.0, 5.0), roomAt(20.0));
  rig.hose.flow = litres(4.0) / minutes(1.0);
  EXPECT_NEAR(inSeconds(bedLag(rig.hose, litres(28.0))), 420.0, 1e-9);
  const BrewDay slow = simulate(rig, mashOf(25.0, 5.0), roomAt(20.0));
  const auto lasts = [](const BrewDay& day) {
    const Stage* ramp = day.find(StageKind::Ramp);
    return inSeconds(ramp->end - ramp->begin);
  };
  EXPECT_NEAR(lasts(slow) - lasts(atOnce), 25.0 / 4.0 * 60.0, 20.0);
  EXPECT_EQ(slow.find(StageKind::Ramp)->last, *slow.find(StageKind::Ramp)->goal);
  EXPECT_LT(slow.total.imbalance(), 1e-6);
  // A flow without end is no delay, nearly so.
  rig.hose.flow = litres(1e6) / minutes(1.0);
  EXPECT_NEAR(lasts(simulate(rig, mashOf(25.0, 5.0), roomAt(20.0))), lasts(atOnce), 0.01);
}

// The mean of a rest lies half a dead band low, and a hair of a band changes a hair.
TEST(DeadBand, LowersTheMeanOfARest) {
  Rig rig = pumped();
  const auto endOfRest = [&](double kelvin) {
    rig.deadBand = kelvins(kelvin);
    const BrewDay day = simulate(rig, mashOf(25.0, 5.0), roomAt(20.0));
    EXPECT_LT(day.total.imbalance(), 1e-6);
    return inCelsius(day.find(StageKind::Rest)->last);
  };
  EXPECT_NEAR(endOfRest(1.0), 65.5, 1e-6);
  EXPECT_NEAR(endOfRest(1e-6), endOfRest(0.0), 1e-6);
}

// A controller that may let a rest fall does not heat for the next one at the same temperature.
TEST(DeadBand, IsNoReasonForARampBetweenEqualRests) {
  Rig rig = pumped();
  rig.deadBand = kelvins(1.0);
  rig.hose.flow = litres(4.0) / minutes(1.0);
  Batch batch = mashOf(25.0, 5.0);
  batch.mashingIn = seconds(0.0);
  batch.mash = HeldMash{{{celsius(66.0), minutes(30.0)}, {celsius(66.0), minutes(30.0)}}};
  const BrewDay day = simulate(rig, batch, roomAt(20.0));
  ASSERT_TRUE(day.finished());
  EXPECT_EQ(day.find(StageKind::Ramp), nullptr);
  EXPECT_EQ(day.find(StageKind::Rest)->last, celsius(65.5));
}

}  // namespace
}  // namespace physics
