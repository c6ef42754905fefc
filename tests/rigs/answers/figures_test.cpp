// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/figures.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <utility>

#include "rigs/circuits/rules.hpp"
#include "tests/gui/terminal/plan_in_code.hpp"
#include "tests/rigs/plans/plan_edit.hpp"
#include "tests/support/within.hpp"

using namespace physics;

// By Ohm's law, computed here: 5500 W at 240 V is 10.47 ohm, which takes 4131 W at 208 V.
TEST(RatingAt, FollowsTheSquareOfTheVoltage) {
  const Element element{watts(5500.0), volts(240.0), metres(0.0)};
  EXPECT_WITHIN(rigs::ratingAt(element, volts(208.0)), watts(4131.1), watts(0.05));
}

RC_GTEST_PROP(ElementFor, DeliversWhatWasWanted, ()) {
  const double watt = *rc::gen::inRange(50, 12000);
  const double nominal = *rc::gen::inRange(100, 400);
  rigs::RigPlan rig = test_support::kettle("any", 3000.0, 230.0, nominal);
  rig.rig.supply.cableLoop = ohms(0.001 * *rc::gen::inRange(0, 300));
  const PowerAnswer wanted{.power = watts(watt), .onThisSupply = true, .stoppedBy = Limit::None};
  const auto element = rigs::elementFor(rig.rig, wanted);
  // What a cable can carry at most: V^2 / 4R.
  const double most = nominal * nominal / (4.0 * std::max(inOhms(rig.rig.supply.cableLoop), 1e-9));
  RC_ASSERT(element.has_value() == (watt < most));
  if (!element) return;
  const ElectricalLoad load = electricalLoad(*element, rig.rig.supply);
  RC_ASSERT(std::abs(inWatts(load.delivered) - watt) < 1e-6 * watt);
}

TEST(NeededPower, IsTheGreatestOfTheWishes) {
  const auto power = [](double watt) {
    return PowerAnswer{.power = watts(watt), .onThisSupply = true, .stoppedBy = Limit::None};
  };
  rigs::SizingAnswer sizing{};
  sizing.toBoilAtAll = power(1200.0);
  sizing.toBoilWithin = power(2500.0);
  sizing.forBoilOff = power(1800.0);
  EXPECT_WITHIN(*rigs::neededPower(sizing).power, watts(2500.0), watts(1e-9));
  sizing.forBoilOff = {
      .power = std::nullopt, .onThisSupply = false, .stoppedBy = Limit::BoilVigour};
  EXPECT_FALSE(rigs::neededPower(sizing).power.has_value());
  EXPECT_EQ(rigs::neededPower(sizing).stoppedBy, Limit::BoilVigour);
}

TEST(TimeOf, CountsOnlyStagesThatWereFinished) {
  const rigs::Plan plan = test_support::planInCode(true);
  const rigs::Answers answers = rigs::answer(plan, rigs::Depth::Day);
  EXPECT_TRUE(rigs::timeOf(answers.rigs[0].day, StageKind::HeatingToBoil).has_value());
  BrewDay dry = answers.rigs[0].day;
  dry.outcome = Outcome::UncoversElement;
  EXPECT_FALSE(rigs::timeOf(dry, dry.stages.back().kind).has_value());
}

// The clock of its boil begins, but not at the boil.
TEST(TimeToBoil, IsNothingForAKettleThatLevelsOffBelowIt) {
  const rigs::Plan plan = test_support::planInCode(true);
  const rigs::Answers answers = rigs::answer(plan, rigs::Depth::Day);
  const BrewDay& weak = answers.rigs[2].day;
  ASSERT_EQ(weak.outcome, Outcome::StaysFarBelow);
  ASSERT_FALSE(weak.startsBoiling());
  EXPECT_TRUE(rigs::timeOf(weak, StageKind::HeatingToBoil));
  EXPECT_FALSE(rigs::timeToBoil(weak));
  EXPECT_EQ(rigs::timeToBoil(answers.rigs[0].day),
            rigs::timeOf(answers.rigs[0].day, StageKind::HeatingToBoil));
}

TEST(FromWall, AddsUpToTheDay) {
  const rigs::Plan plan = test_support::planInCode();
  for (const rigs::RigAnswer& rig : rigs::answer(plan, rigs::Depth::Day).rigs) {
    Energy sum = joules(0.0);
    for (const StageKind kind : {StageKind::Strike, StageKind::MashingIn, StageKind::Ramp,
                                 StageKind::Rest, StageKind::HeatingToBoil, StageKind::Boil}) {
      sum += rigs::fromWall(rig.day, kind).value_or(joules(0.0));
    }
    EXPECT_WITHIN(sum, rig.day.total.fromWall(), joules(1e-3));
  }
}

TEST(CostPer, TimesTheVolumeIsTheCost) {
  const rigs::Plan plan = test_support::planInCode();
  for (const rigs::RigAnswer& rig : rigs::answer(plan, rigs::Depth::Day).rigs) {
    EXPECT_NEAR(*rigs::costPer(rig, rig.day.resultCold), *rig.cost, 1e-12);
  }
}

TEST(CostPer, IsNothingForADayThatStops) {
  const rigs::Plan plan = test_support::planInCode(true);
  rigs::RigAnswer rig = rigs::answer(plan, rigs::Depth::Day).rigs[2];
  ASSERT_EQ(rig.day.outcome, Outcome::StaysFarBelow);
  EXPECT_TRUE(rigs::costPer(rig, litres(1.0))) << "it makes wort, if not by boiling";
  rig.day.outcome = Outcome::UncoversElement;
  EXPECT_TRUE(rig.cost);
  EXPECT_FALSE(rigs::costPer(rig, litres(1.0)));
}

TEST(OverloadsForLong, KnowsTheRulesShare) {
  rigs::RigPlan rig = test_support::kettle("any", 3000.0, 230.0, 230.0);  // 13.0 A less the cable
  EXPECT_FALSE(rigs::overloads(rig.rig.element, rig.rig.supply));
  EXPECT_FALSE(rigs::overloadsForLong({}, rig));
  rig.continuousShare = 0.8;  // of 16 A: 12.8 A
  EXPECT_TRUE(rigs::overloadsForLong({}, rig));
}

// The region stated, the rules of one's own or those of the circuit's region decide, and a share
// that the plan states where it is stricter.
TEST(LongUseCurrent, FollowsTheRulesThatJudgeTheCircuit) {
  const auto of = [](test_support::Edits edits,
                     const std::shared_ptr<const rigs::CircuitRules>& own = {}) {
    auto read = test_support::readChecked(test_support::demoWith(edits));
    EXPECT_TRUE(read.plan);
    read.plan->ownRules = own;
    return inAmperes(rigs::longUseCurrent(*read.plan, read.plan->rigs[1]));
  };
  EXPECT_NEAR(of({}), 12.0, 1e-9);  // 80 % of 15 A: both codes of North America
  EXPECT_NEAR(of({{"/place/region", "Canada"}}), 12.0, 1e-9);
  // A circuit of nobody's region: all of it, until a region is stated.
  const test_support::Json plain = {{"voltage", "120 V"}, {"current", "15 A"}};
  EXPECT_NEAR(of({{"/rigs/1/supply", plain}}), 15.0, 1e-9);
  EXPECT_NEAR(of({{"/rigs/1/supply", plain}, {"/place/region", "United States"}}), 12.0, 1e-9);
  const test_support::Json stated = {
      {"voltage", "120 V"}, {"current", "15 A"}, {"continuous", "60 %"}};
  EXPECT_NEAR(of({{"/rigs/1/supply", stated}, {"/place/region", "United States"}}), 9.0, 1e-9);
  // An island's 90 % in place of North America's 80 %.
  auto island = std::make_shared<rigs::CircuitRules>(*rigs::rulesOf("United States"));
  island->longUse.front().share = 0.9;
  EXPECT_NEAR(of({}, island), 13.5, 1e-9);
}

TEST(LongUseCurrent, IsEachCircuitsOwn) {
  const auto read = test_support::readChecked(test_support::demoWith(
      {{"/rigs/3/elements",
        test_support::Json::parse(
            R"([{"power": "3 kW", "rated_voltage": "230 V", "top_height": "60 mm"},
                {"power": "5 kW", "rated_voltage": "230 V", "top_height": "60 mm"}])")},
       {"/rigs/3/wired", "two circuits"},
       {"/rigs/3/second_supply", test_support::Json{{"voltage", "208 V"}, {"current", "20 A"}}}}));
  ASSERT_TRUE(read.plan) << test_support::told(read.problems);
  const rigs::RigPlan& rig = read.plan->rigs[3];
  EXPECT_NEAR(inAmperes(rigs::longUseCurrent(*read.plan, rig, 0)), 24.0, 1e-9);
  EXPECT_NEAR(inAmperes(rigs::longUseCurrent(*read.plan, rig, 1)), 20.0, 1e-9);
  EXPECT_FALSE(rigs::overloadsAny(rig.rig));  // 19.7 A of 20 A
  EXPECT_FALSE(rigs::overloadsForLong(*read.plan, rig, 1));
  rigs::RigPlan more = rig;
  more.rig.second->element.rating = watts(6000.0);
  EXPECT_TRUE(rigs::overloadsAny(more.rig));
  EXPECT_FALSE(rigs::overloads(more.rig.element, more.rig.supply));
}

TEST(Vigour, IsNamedByTheShareBoiledOffInAnHour) {
  const auto wordAt = [](double share) {
    BoilFigures boil{};
    boil.shareOfPreBoilPerHour = share;
    return rigs::vigourWord(rigs::vigourOf(boil));
  };
  EXPECT_EQ(wordAt(0.0499), "simmer");
  EXPECT_EQ(wordAt(0.05), "gentle");
  EXPECT_EQ(wordAt(0.08), "steady");
  EXPECT_EQ(wordAt(0.10), "strong");
  EXPECT_EQ(wordAt(0.1499), "strong");
  EXPECT_EQ(wordAt(0.15), "fierce");
  BoilFigures boil{};
  boil.shareOfPreBoilPerHour = 0.09;
  EXPECT_NEAR(3600.0 * static_cast<double>(rigs::boilOffRate(boil) * seconds(1.0)), 0.09, 1e-12);
}

TEST(NetPer, IsTheNetHeatOfTheBoilOverItsVolume) {
  BrewDay day;
  day.preBoilCold = litres(30.0);
  EXPECT_FALSE(rigs::netPer(day, litres(100.0)).has_value());
  day.boil = BoilFigures{};
  day.boil->net = watts(1500.0);
  EXPECT_WITHIN(*rigs::netPer(day, litres(100.0)), watts(5000.0), watts(1e-9));
  day.preBoilCold = litres(0.0);
  EXPECT_FALSE(rigs::netPer(day, litres(100.0)).has_value());
}

// 3 kW at 230 V, 17.633 ohm, on 115 V: a quarter; and 6.172 A through a cable of 1 ohm: 671.6 W.
TEST(ShareOfRating, IsAQuarterOnHalfTheVoltageAndLessBehindACable) {
  const Element element{watts(3000.0), volts(230.0), metres(0.0)};
  Supply half{.nominal = volts(115.0), .rating = amperes(16.0), .cableLoop = ohms(0.0)};
  EXPECT_NEAR(rigs::shareOfRating(element, electricalLoad(element, half)), 0.25, 1e-12);
  half.cableLoop = ohms(1.0);
  EXPECT_NEAR(rigs::shareOfRating(element, electricalLoad(element, half)), 0.2239, 5e-5);
}

// 16 A at 230 V are 3680 W, 80 % of it 2944 W; two such circuits carry twice that.
// 230 V and 16 A carry 3680 W alone, and 2680 W beside a kilowatt of something else.
TEST(Carries, LeavesRoomForWhatElseRunsOnTheCircuit) {
  rigs::RigPlan rig = test_support::planInCode().rigs.front();
  rig.rig.supply = {.nominal = volts(230.0), .rating = amperes(16.0), .cableLoop = ohms(0.0)};
  rig.rig.second.reset();
  rig.circuits.assign(1, {});
  const auto carried = [&](double watt) {
    return rigs::carriesWord(
        rigs::carries({}, rig, {.power = watts(watt), .stoppedBy = physics::Limit::None}));
  };
  rig.continuousShare = 1.0;
  EXPECT_EQ(carried(3670.0), "yes");
  rig.circuits[0].details.otherLoad = watts(1000.0);
  EXPECT_EQ(carried(3670.0), "no");
  EXPECT_EQ(carried(2690.0), "no");
  EXPECT_EQ(carried(2670.0), "yes");
  rig.circuits[0].details.otherLoad = watts(4000.0);
  EXPECT_EQ(carried(1.0), "no");
}

// 10 A on 20 A, of which 80 % are granted to long use. Beside 8 A of others 0.8 * 12 A = 9.6 A are
// left, less than it draws, beside 6 A 11.2 A; and a pump is the rig's own.
TEST(OverloadsForLong, CountsWhatElseRunsOnTheCircuit) {
  rigs::RigPlan rig = test_support::kettle("any", 1200.0, 120.0, 120.0);
  rig.rig.supply = {.nominal = volts(120.0), .rating = amperes(20.0), .cableLoop = ohms(0.0)};
  rig.continuousShare = 0.8;
  rig.circuits.assign(1, {});
  rigs::CircuitDetails& details = rig.circuits[0].details;
  const auto overloads = [&] { return rigs::overloadsForLong({}, rig); };
  EXPECT_FALSE(overloads());
  EXPECT_WITHIN(rigs::longUseCurrent({}, rig), amperes(16.0), amperes(1e-9));
  details.otherLoad = watts(6.0 * 120.0);
  EXPECT_FALSE(overloads());
  EXPECT_WITHIN(rigs::longUseCurrent({}, rig), amperes(17.2), amperes(1e-9));
  details.otherLoad = watts(8.0 * 120.0);
  EXPECT_TRUE(overloads());
  details.otherLoad.reset();
  details.pump = watts(6.5 * 120.0);
  details.pumpAt = volts(120.0);
  EXPECT_TRUE(overloads());
}

TEST(Carries, AsksTheRatingAndTheShareForLongUse) {
  rigs::RigPlan rig = test_support::kettle("any", 3000.0, 230.0, 230.0);
  rig.rig.supply.cableLoop = ohms(0.0);
  rig.continuousShare = 0.8;
  const auto carried = [&](double watt) {
    return rigs::carriesWord(rigs::carries(
        {}, rig, {.power = watts(watt), .onThisSupply = true, .stoppedBy = Limit::None}));
  };
  EXPECT_EQ(carried(2943.0), "yes");
  EXPECT_EQ(carried(2945.0), "for short use only");
  EXPECT_EQ(carried(3679.0), "for short use only");
  EXPECT_EQ(carried(3681.0), "no");
  EXPECT_EQ(rigs::carries({}, rig, {}), rigs::Carries::No);  // no power at all does it
  EXPECT_WITHIN(rigs::longUseCurrent({}, rig), amperes(12.8), amperes(1e-9));
  rig.rig.second = Feed{.element = rig.rig.element, .supply = rig.rig.supply};
  EXPECT_EQ(carried(5887.0), "yes");
  EXPECT_EQ(carried(7361.0), "no");
}

TEST(OtherVoltage, BeginsBeyondAHundredth) {
  EXPECT_FALSE(rigs::otherVoltage(test_support::kettle("any", 3000.0, 230.0, 232.0).rig));
  EXPECT_TRUE(rigs::otherVoltage(test_support::kettle("any", 3000.0, 230.0, 233.0).rig));
}

// 0.25 and 0.5 for two rests; 1.75 for 20 L are 0.0875 a litre.
TEST(CostOf, AddsStagesOfAKind) {
  rigs::RigAnswer rig;
  rig.day.stages.resize(3);
  rig.day.stages[0].kind = rig.day.stages[2].kind = StageKind::Rest;
  rig.day.stages[1].kind = StageKind::Ramp;
  EXPECT_FALSE(rigs::costOf(rig, StageKind::Rest).has_value());  // no price, no costs
  rig.stageCosts = {0.25, 1.0, 0.5};
  EXPECT_NEAR(*rigs::costOf(rig, StageKind::Rest), 0.75, 1e-12);
  EXPECT_NEAR(*rigs::costOf(rig, StageKind::Ramp), 1.0, 1e-12);
  EXPECT_FALSE(rigs::costOf(rig, StageKind::Boil).has_value());
  EXPECT_FALSE(rigs::costPer(rig, litres(1.0)).has_value());
  rig.cost = 1.75;
  EXPECT_FALSE(rigs::costPer(rig, litres(1.0)).has_value());  // nothing came of it
  rig.day.resultCold = litres(20.0);
  EXPECT_NEAR(*rigs::costPer(rig, litres(1.0)), 0.0875, 1e-12);
}

// 2 kWh and 1.5 kWh at 0.30.
TEST(MoneySaved, ComparesWholeDaysOnly) {
  const auto dayOf = [](double kWh) {
    BrewDay day;
    Stage stage{};
    stage.end = hours(1.0);
    stage.ledger.element = kilowattHours(kWh);
    day.stages = {stage};
    day.total = stage.ledger;
    return day;
  };
  rigs::Plan plan = test_support::planInCode();
  BrewDay bare = dayOf(2.0);
  const BrewDay jacketed = dayOf(1.5);
  EXPECT_NEAR(*rigs::moneySaved(bare, jacketed, plan.tariff, plan.start()), 0.15, 1e-9);
  EXPECT_NEAR(*rigs::moneySaved(jacketed, bare, plan.tariff, plan.start()), -0.15, 1e-9);
  const rigs::Tariff stated = std::exchange(plan.tariff, rigs::Tariff{});
  EXPECT_FALSE(rigs::moneySaved(bare, jacketed, plan.tariff, plan.start()).has_value());
  plan.tariff = stated;
  bare.outcome = Outcome::StaysFarBelow;
  EXPECT_FALSE(rigs::moneySaved(bare, jacketed, plan.tariff, plan.start()).has_value());
}

// 6 of 40 minutes.
TEST(ShareOfHeatingSaved, IsOfTheBareRigsHeating) {
  JacketEffect effect{};
  EXPECT_FALSE(rigs::shareOfHeatingSaved(effect).has_value());
  effect.bare.stages.resize(1);
  effect.bare.stages[0].kind = StageKind::HeatingToBoil;
  effect.bare.stages[0].begin = minutes(10.0);
  effect.bare.stages[0].end = minutes(50.0);
  EXPECT_FALSE(rigs::shareOfHeatingSaved(effect).has_value());
  effect.savedToBoil = minutes(6.0);
  EXPECT_NEAR(*rigs::shareOfHeatingSaved(effect), 0.15, 1e-12);
}

// Saved minutes of 100 from mash to boil, or to strike: a twentieth is the rule, and what is saved
// is known to a fifth of itself.
TEST(IsOnTheEdge, WhereAFifthTurnsTheVerdictAround) {
  const auto effectOf = [](StageKind kind, double saved) {
    JacketEffect effect{};
    effect.verdict = saved > 5.0 ? JacketVerdict::Worthwhile : JacketVerdict::NotWorthIt;
    effect.bare.stages.resize(1);
    effect.bare.stages[0].kind = kind;
    effect.bare.stages[0].end = minutes(100.0);
    (kind == StageKind::Strike ? effect.savedToStrike : effect.savedToBoil) = minutes(saved);
    return effect;
  };
  for (const StageKind kind : {StageKind::Strike, StageKind::HeatingToBoil}) {
    for (const double far : {-5.0, 0.0, 2.0, 4.1, 6.1, 20.0})
      EXPECT_FALSE(rigs::isOnTheEdge(effectOf(kind, far))) << far;
    for (const double near : {4.2, 5.0, 5.9}) EXPECT_TRUE(rigs::isOnTheEdge(effectOf(kind, near)));
  }
  JacketEffect both = effectOf(StageKind::HeatingToBoil, 5.0);
  both.bare.stages.push_back(both.bare.stages[0]);
  both.bare.stages[1].kind = StageKind::Strike;
  both.savedToStrike = minutes(20.0);
  EXPECT_FALSE(rigs::isOnTheEdge(both)) << "worth it for the time to strike, whatever else";
  both.savedToStrike.reset();
  EXPECT_TRUE(rigs::isOnTheEdge(both));
  both.verdict = JacketVerdict::MakesItBoil;
  EXPECT_FALSE(rigs::isOnTheEdge(both));
}

TEST(WorstImbalance, IsTheWorstStagesOrTheDays) {
  const auto gap = [](double kWh) {  // of 1 kWh supplied, all but this stored
    Ledger ledger{};
    ledger.element = kilowattHours(1.0);
    ledger.wort = kilowattHours(1.0 - kWh);
    return ledger;
  };
  BrewDay day;
  day.total = gap(0.01);
  EXPECT_NEAR(rigs::worstImbalance(day), day.total.imbalance(), 1e-15);
  day.stages.resize(2);
  day.stages[0].ledger = gap(0.03);
  day.stages[1].ledger = gap(0.02);
  EXPECT_NEAR(rigs::worstImbalance(day), day.stages[0].ledger.imbalance(), 1e-15);
  EXPECT_GT(rigs::worstImbalance(day), 0.02);
}
