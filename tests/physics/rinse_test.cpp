// SPDX-License-Identifier: GPL-3.0-or-later
// Water over the lifted grain, and grain left to drain: masses, heat, and what comes of the day.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "physics/brewday.hpp"
#include "physics/rinse.hpp"
#include "physics/vessel.hpp"
#include "physics/wort.hpp"
#include "tests/support/kettles.hpp"
#include "tests/support/random_rigs.hpp"
#include "tests/support/within.hpp"

namespace physics {
namespace {

using test_support::between;
using test_support::Case;
using test_support::mashOf;
using test_support::roomAt;
using test_support::someCase;
using test_support::steelRig;

Rinse rinseOf(double litre, double at) {
  return {.atTwentyDegrees = litres(litre), .temperature = celsius(at)};
}

BrewDay rinsedDay(std::optional<Rinse> rinse, std::optional<Draining> drain = {},
                  const Rig& rig = steelRig()) {
  Batch batch = mashOf(24.0, 5.0);
  batch.rinse = rinse;
  batch.drain = drain;
  return simulate(rig, batch, roomAt(18.0));
}

// 4 L of wort at 15 degrees Plato: by the ASBC table gravity 1.0611, so 4.2385 kg with 0.6358 kg of
// extract.
WortMasses held() { return {kilograms(4.2385 - 0.63578), kilograms(0.63578)}; }

// By hand (own), with the ASBC table. All of it mixed with 4 kg of water: 8.2385 kg at 7.717 %,
// gravity 1.0308, of which 4 L, 4.1158 kg, stay with 0.3176 kg of extract: 0.3182 kg run off.
// Half of it: 6.1193 kg at 5.195 %, gravity 1.0205; 2 L of that stay with 0.1058 kg: 0.2121 kg run
// off.
TEST(RinsedGrain, GivesWhatOneContactGivesByHand) {
  const auto gained = [](double reached) {
    return inKilograms(rinsedGrain(held(), kilograms(4.0), reached).runsOff.extract);
  };
  EXPECT_NEAR(gained(1.0), 0.3182, 0.0005);
  EXPECT_NEAR(gained(0.5), 0.2121, 0.0005);
  EXPECT_EQ(gained(0.0), 0.0);
}

RC_GTEST_PROP(RinsedGrain, LosesNothingAndGivesNoMoreThanItHeld, ()) {
  const WortMasses before{kilograms(between(0.0, 20.0)), kilograms(between(0.0, 5.0))};
  const Mass water = kilograms(between(0.0, 50.0));
  const double reached = between(0.0, 1.0);
  const RinsedGrain after = rinsedGrain(before, water, reached);
  const double all = inKilograms(before.total() + water);
  RC_ASSERT(std::abs(inKilograms(after.runsOff.total() + after.held.total()) - all) < 1e-9);
  RC_ASSERT(after.runsOff.extract <= before.extract);
  RC_ASSERT(after.runsOff.extract >= kilograms(0.0));
  RC_ASSERT(rinsedGrain(before, water, 1.0).runsOff.extract >=
            after.runsOff.extract - kilograms(1e-12));
}

// By hand (own) from the steam table, liquid at 0.1 MPa, kJ/kg: 80 C 335.0, 12 C 50.5. 5 L at 20 C
// are 4.991 kg: 1420 kJ, 0.3944 kWh; at 85 % of the heat in the water 0.464 kWh from the wall,
// which 2 kW take 13 min 55 s to give.
TEST(Rinse, TakesWhatTheSteamTableSays) {
  Rinse rinse = rinseOf(5.0, 80.0);
  EXPECT_FALSE(fromWallForRinse(rinse, celsius(12.0)));
  rinse.electric = {.onSameCircuit = true, .efficiency = 0.85, .power = watts(2000.0)};
  EXPECT_NEAR(inKilowattHours(heatOfRinse(rinse, celsius(12.0))), 0.3944, 0.0004);
  EXPECT_NEAR(inKilowattHours(*fromWallForRinse(rinse, celsius(12.0))), 0.4640, 0.0005);
  EXPECT_NEAR(inMinutes(*timeToHeatRinse(rinse, celsius(12.0))), 13.92, 0.02);
}

// 24 L of water, 5 kg of grain that holds 4 L. Rinsing with 4 L gives 4 L more, less what
// contracts, and a thinner wort with more extract in it than before.
TEST(Rinse, AddsItsVolumeAndSomeExtract) {
  const BrewDay without = rinsedDay(std::nullopt);
  const BrewDay with = rinsedDay(rinseOf(4.0, 78.0));
  ASSERT_TRUE(with.rinsed);
  EXPECT_FALSE(without.rinsed);
  EXPECT_WITHIN(with.liftedCold, without.liftedCold, litres(1e-4));
  EXPECT_NEAR(inLitres(with.rinsed->cold - with.liftedCold), 4.0, 0.02);
  EXPECT_LT(with.rinsed->gravity, with.liftedGravity);
  EXPECT_LT(with.rinsed->gravityIfNone, with.rinsed->gravity);
  EXPECT_GT(with.rinsed->gravityIfAll, with.rinsed->gravity);
  EXPECT_GT(with.rinsed->gained, kilograms(0.0));
  EXPECT_GT(with.rinsed->left, kilograms(0.0));
  EXPECT_GT(with.resultCold, without.resultCold + litres(3.9));
}

// What runs off is between water and mash, and so is the wort with it.
TEST(Rinse, MeetsTheGrainInTheMiddle) {
  const BrewDay cold = rinsedDay(rinseOf(4.0, 12.0));
  EXPECT_LT(cold.rinsed->mixed, cold.rinsed->before);
  EXPECT_GT(cold.rinsed->runsOff, celsius(12.0));
  EXPECT_LT(cold.rinsed->runsOff, cold.rinsed->mixed);
  const BrewDay hot = rinsedDay(rinseOf(4.0, 95.0));
  EXPECT_GT(hot.rinsed->mixed, hot.rinsed->before);
  EXPECT_LT(hot.rinsed->runsOff, celsius(95.0));
}

TEST(Rinse, IsInTheLedgerAndItsHeatingApart) {
  Rinse rinse = rinseOf(4.0, 78.0);
  const BrewDay gas = rinsedDay(rinse);
  rinse.electric = {.onSameCircuit = false, .efficiency = 0.8, .power = {}};
  const BrewDay electric = rinsedDay(rinse);
  EXPECT_LT(electric.total.imbalance(), 1e-6);
  EXPECT_WITHIN(electric.total.rinsed, electric.rinsed->heat, 1e-9 * electric.rinsed->heat);
  EXPECT_EQ(inJoules(gas.total.apart), 0.0);
  EXPECT_WITHIN(electric.total.apart, electric.rinsed->heat / 0.8, joules(1.0));
  EXPECT_WITHIN(electric.total.fromWall() - gas.total.fromWall(), electric.total.apart,
                joules(1.0));
  EXPECT_WITHIN(electric.total.element, gas.total.element, joules(1e-6));
}

// Left to drain with the element off the wort is cooler afterwards, and the day longer; with it on
// no time is lost but what the open mouth costs.
TEST(Draining, CoolsWithTheElementOffAndHeatsWithItOn) {
  const Draining off{.duration = minutes(20.0)};
  const Draining on{.duration = minutes(20.0), .elementOn = true};
  const BrewDay none = rinsedDay(std::nullopt);
  const BrewDay cooled = rinsedDay(std::nullopt, off);
  const BrewDay heated = rinsedDay(std::nullopt, on);
  const Stage& hung = *cooled.find(StageKind::Draining);
  EXPECT_WITHIN(hung.end - hung.begin, minutes(20.0), seconds(1e-6));
  EXPECT_LT(hung.last, hung.first - kelvins(0.5));
  EXPECT_EQ(inJoules(hung.ledger.element), 0.0);
  EXPECT_GT(heated.find(StageKind::Draining)->last, hung.first + kelvins(5.0));
  EXPECT_GT(cooled.duration(), none.duration() + minutes(20.0));
  EXPECT_GE(heated.duration(), none.duration());
  EXPECT_LT(heated.duration(), none.duration() + minutes(5.0));
  for (const BrewDay* day : {&cooled, &heated}) EXPECT_LT(day->total.imbalance(), 1e-6);
}

// A strong element would be at the boil long before: it is held just below.
TEST(Draining, NeverBoilsBelowTheGrain) {
  const BrewDay day = rinsedDay(std::nullopt, Draining{minutes(90.0), true});
  const Stage& hung = *day.find(StageKind::Draining);
  EXPECT_LT(hung.last, day.boilingPoint);
  EXPECT_WITHIN(hung.end - hung.begin, minutes(90.0), seconds(1e-6));
}

// The element stands above the wort until the rinsing water is in.
TEST(Draining, DoesNotUncoverAnElementLeftOn) {
  Rig rig = steelRig();
  const BrewDay plain = rinsedDay(rinseOf(8.0, 78.0), {}, rig);
  rig.element.topHeight = 1.02 * plain.liftedHot / crossSection(rig.vessel);
  EXPECT_EQ(rinsedDay(rinseOf(8.0, 78.0), Draining{minutes(10.0), true}, rig).outcome,
            Outcome::UncoversElement);
  EXPECT_TRUE(rinsedDay(rinseOf(8.0, 78.0), Draining{minutes(10.0), false}, rig).finished());
}

// Of the water a wanted wort needs, the rinse is a part.
TEST(Rinse, IsPartOfTheWaterForAWantedWort) {
  Batch batch = mashOf(24.0, 5.0);
  batch.size = WantedWort{litres(20.0)};
  const BrewDay without = simulate(steelRig(), batch, roomAt(18.0));
  batch.rinse = rinseOf(4.0, 78.0);
  const BrewDay with = simulate(steelRig(), batch, roomAt(18.0));
  EXPECT_NEAR(inLitres(with.resultCold), 20.0, 0.01);
  EXPECT_NEAR(inLitres(without.water - with.water), 4.0, 0.1);
}

RC_GTEST_PROP(Rinse, NeverMakesLessWortAndClosesTheLedger, ()) {
  Case c = someCase();
  RC_PRE(c.batch.mashes());
  const BrewDay without = simulate(c.rig, c.batch, c.place);
  c.batch.rinse = rinseOf(between(0.1, 10.0), between(inCelsius(c.place.water), 95.0));
  c.batch.rinse->reached = between(0.0, 1.0);
  const BrewDay with = simulate(c.rig, c.batch, c.place);
  RC_PRE(without.finished() && with.finished() && with.rinsed);
  RC_ASSERT(with.rinsed->cold > with.liftedCold);
  if (std::holds_alternative<PouredWater>(c.batch.size))
    RC_ASSERT(with.resultCold > without.resultCold);
  RC_ASSERT(with.total.imbalance() < 1e-6);
  // All the extract there is came from the malt.
  const double malt = inKilograms(c.batch.grain.mass) * c.batch.extractYield;
  const double wort =
      inKilograms(with.rinsed->cold * wortDensity(with.rinsed->extract, celsius(20.0))) *
      with.rinsed->extract;
  RC_ASSERT(std::abs(wort + inKilograms(with.rinsed->left) - malt) < 1e-6 * malt);
  RC_ASSERT(wort <= malt);
}

RC_GTEST_PROP(Rinse, NeverBoilsLaterIfHotter, ()) {
  Rinse rinse = rinseOf(between(0.5, 8.0), between(12.0, 90.0));
  rinse.reached = between(0.0, 1.0);
  const auto boilsAt = [&] { return rinsedDay(rinse).find(StageKind::HeatingToBoil)->end; };
  const Time before = boilsAt();
  rinse.temperature = celsius(between(inCelsius(rinse.temperature), 95.0));
  RC_ASSERT(boilsAt() <= before + seconds(1e-3));
}

}  // namespace
}  // namespace physics
