// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/figures.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>

#include "rigs/circuit_rules.hpp"
#include "tests/gui/plan_in_code.hpp"
#include "tests/rigs/plan_edit.hpp"
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
  const BrewDay& weak = answers.rigs[2].day;
  ASSERT_EQ(weak.outcome, Outcome::DoesNotBoil);
  EXPECT_FALSE(rigs::timeOf(weak, weak.stages.back().kind).has_value());
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

TEST(CostPer, IsNothingForADayThatStalls) {
  const rigs::Plan plan = test_support::planInCode(true);
  const rigs::RigAnswer stalled = rigs::answer(plan, rigs::Depth::Day).rigs[2];
  ASSERT_EQ(stalled.day.outcome, Outcome::DoesNotBoil);
  EXPECT_TRUE(stalled.cost);
  EXPECT_FALSE(rigs::costPer(stalled, litres(1.0)));
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
