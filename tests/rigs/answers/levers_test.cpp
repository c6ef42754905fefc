// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/levers.hpp"

#include <gtest/gtest.h>

#include <set>

#include "rigs/answers/circuit_answer.hpp"
#include "rigs/answers/day_figures.hpp"
#include "rigs/answers/long_use.hpp"
#include "tests/support/solved_demo.hpp"

namespace rigs {
namespace {

using namespace physics;
using test_support::demoPlan;
using test_support::startedPlan;

std::vector<Change> changesIn(const Plan& plan, std::size_t rig) {
  return changesOf(plan, rig, simulate(plan.rigs[rig].rig, plan.batch, plan.place));
}

const Change* find(const std::vector<Change>& all, std::string_view id) {
  for (const Change& one : all)
    if (one.id == id) return &one;
  return nullptr;
}

std::size_t countOf(const std::vector<Change>& all, Lever lever) {
  std::size_t count = 0;
  for (const Change& one : all) count += one.lever == lever ? 1 : 0;
  return count;
}

TEST(Levers, ChangeSomethingOfTheirRigAndNothingOfOthers) {
  const Plan plan = demoPlan();
  for (std::size_t rig = 0; rig < plan.rigs.size(); ++rig) {
    std::set<std::string> ids;
    for (const Change& one : changesIn(plan, rig)) {
      SCOPED_TRACE(one.id);
      EXPECT_TRUE(ids.insert(one.id).second) << "told twice";
      EXPECT_FALSE(inEnglish(one.words).empty());
      Plan then = changed(plan, rig, {&one});
      EXPECT_FALSE(then == plan);
      then.rigs[rig] = plan.rigs[rig];
      EXPECT_EQ(then.rigs, plan.rigs);
    }
  }
}

TEST(Levers, AreInTheirOrderAndOneGroupHoldsAllThatTouchTheCircuit) {
  const auto all = changesIn(demoPlan(), 1);
  for (std::size_t i = 1; i < all.size(); ++i) EXPECT_LE(all[i - 1].lever, all[i].lever);
  for (const Change& one : all) {
    EXPECT_LT(groupOf(one.lever), kLeverGroups);
    EXPECT_EQ(touchesCircuit(one.lever), groupOf(one.lever) == groupOf(Lever::Element));
  }
  EXPECT_EQ(groupOf(Lever::SecondElement), groupOf(Lever::Circuit));
  EXPECT_NE(groupOf(Lever::Start), groupOf(Lever::Element));
}

TEST(Levers, NeverShutTheLidOnABoil) {
  for (const std::size_t rig : {0u, 1u, 2u, 3u})
    for (const Change& one : changesIn(demoPlan(), rig)) {
      const double before = demoPlan().rigs[rig].rig.vessel.open.boil;
      const double open = changed(demoPlan(), rig, {&one}).rigs[rig].rig.vessel.open.boil;
      EXPECT_GE(open, std::min(before, 0.25)) << one.id;
    }
}

TEST(Levers, ALidWhileHeatingIsNoneWhereOneIsOn) {
  Plan plan = demoPlan();
  EXPECT_EQ(countOf(changesIn(plan, 1), Lever::LidWhileHeating), 0u);
  plan.rigs[1].rig.vessel.open.mash = 1.0;
  const auto all = changesIn(plan, 1);
  ASSERT_EQ(countOf(all, Lever::LidWhileHeating), 1u);
  const Plan then = changed(plan, 1, {find(all, "lid-while-heating")});
  EXPECT_EQ(then.rigs[1].rig.vessel.open.mash, kRimGap);
  EXPECT_EQ(then.rigs[1].rig.vessel.open.boil, 1.0);
}

TEST(Levers, AJacketIsOfTheMaterialThatThePlanCompares) {
  Plan plan = startedPlan("one-kettle");
  const Change side = *find(changesIn(plan, 0), "side-jacket-25");
  EXPECT_EQ(inEnglish(side.words), "25 mm of closed-cell rubber foam around the side");
  EXPECT_EQ(side.outlay, Outlay::NotKnown);
  EXPECT_FALSE(side.price.has_value()) << "nobody has stated one: never 0";
  const Covering on = changed(plan, 0, {&side}).rigs[0].rig.vessel.side;
  ASSERT_EQ(on.insulation.size(), 1u);
  EXPECT_EQ(on.insulation.front().thickness, millimetres(25.0));
  EXPECT_EQ(on.emissivity, 0.94);

  plan.rigs[0].jacket.faces.front().layers.front().material = "cork";
  plan.tariff.jacketPrice = 40.0;
  const Change cork = *find(changesIn(plan, 0), "side-jacket-25");
  EXPECT_EQ(inEnglish(cork.words), "25 mm of cork around the side");
  EXPECT_EQ(cork.outlay, Outlay::Priced);
  EXPECT_EQ(cork.price, 40.0);
}

TEST(Levers, WhatWearsAJacketGetsMoreOfIt) {
  const auto all = changesIn(demoPlan(), 2);
  const Change& more = *find(all, "side-jacket-10");
  EXPECT_EQ(inEnglish(more.words), "10 mm more around the side, of closed-cell rubber foam");
  EXPECT_EQ(changed(demoPlan(), 2, {&more}).rigs[2].rig.vessel.side.insulation.size(), 2u);
  EXPECT_EQ(find(all, "finish-bright"), nullptr) << "nobody sees the metal";
}

TEST(Levers, NoLidMeansNothingOnIt) {
  Plan plan = demoPlan();
  plan.rigs[1].hasLid = false;
  plan.rigs[1].rig.vessel.open = {};
  const auto all = changesIn(plan, 1);
  EXPECT_EQ(countOf(all, Lever::LidJacket), 0u);
  ASSERT_EQ(countOf(all, Lever::LidInBoil), 3u);
  EXPECT_EQ(find(all, "lid-in-boil-50")->outlay, Outlay::NotKnown) << "a lid is to be bought";
  EXPECT_EQ(find(changesIn(demoPlan(), 1), "lid-in-boil-50")->outlay, Outlay::Nothing);
}

// 1650 W on 120 V are 13.75 A; 15 A carry 1800 W by name plates, and a long use 12 A, 1440 W.
TEST(Levers, ElementsAreTheNextThatTheCircuitIsRatedForAndTheFirstBeyondIsForbidden) {
  const Plan plan = demoPlan();
  const auto all = changesIn(plan, 1);
  EXPECT_NE(find(all, "element-1400"), nullptr);
  ASSERT_NE(find(all, "element-1800"), nullptr);
  EXPECT_TRUE(find(all, "element-1800")->forbidden.empty());
  ASSERT_NE(find(all, "element-2000"), nullptr);
  EXPECT_EQ(inEnglish(find(all, "element-2000")->forbidden),
            "it would draw 16.7 A from a circuit of 15 A");
  const RigPlan then = changed(plan, 1, {find(all, "element-1800")}).rigs[1];
  EXPECT_EQ(then.rig.element.rating, watts(1800.0));
  EXPECT_EQ(then.circuits.front().elements, std::vector{then.rig.element});
}

TEST(Levers, OtherCircuitsAreOfTheRegionAndTheirElementsWithinTheStrictestReading) {
  const Plan plan = demoPlan();
  std::size_t others = 0;
  for (const Change& one : changesIn(plan, 1)) {
    if (one.lever != Lever::Circuit) continue;
    SCOPED_TRACE(one.id);
    ++others;
    const Plan then = changed(plan, 1, {&one});
    const RigPlan& rig = then.rigs[1];
    EXPECT_EQ(rig.circuits.front().details.circuitRegion, "North America");
    EXPECT_TRUE(one.forbidden.empty());
    EXPECT_FALSE(overloadsForLong(then, rig));
    EXPECT_LE(rig.rig.supply.cableLoop, plan.rigs[1].rig.supply.cableLoop);
  }
  EXPECT_EQ(others, 7u);
}

TEST(Levers, ASecondElementHangsOnASecondCircuit) {
  const Plan plan = startedPlan("one-kettle");
  const auto all = changesIn(plan, 0);
  const Plan then = changed(plan, 0, {find(all, "second")});
  ASSERT_TRUE(then.rigs[0].rig.second.has_value());
  EXPECT_EQ(then.rigs[0].rig.second->element, plan.rigs[0].rig.element);
  EXPECT_EQ(then.rigs[0].circuits.size(), 2u);
  EXPECT_EQ(
      circuitAnswer(then, then.rigs[0], simulate(then.rigs[0].rig, then.batch, then.place), false)
          .circuits.size(),
      2u);
  EXPECT_EQ(changesIn(then, 0).size(),
            static_cast<std::size_t>(std::count_if(all.begin(), all.end(), [](const Change& one) {
              return !touchesCircuit(one.lever);
            })));
}

TEST(Levers, WaterIsWarmerThanItIsAndCoolerThanItsStrike) {
  Plan plan = demoPlan();
  EXPECT_EQ(countOf(changesIn(plan, 1), Lever::Water), 2u);
  plan.place.water = celsius(38.0);
  EXPECT_EQ(countOf(changesIn(plan, 1), Lever::Water), 1u);
  plan.place.water = celsius(52.0);
  EXPECT_EQ(countOf(changesIn(plan, 1), Lever::Water), 0u);
}

TEST(Levers, AStartIsOneWhereTheHourDecidesThePrice) {
  Plan plan = demoPlan();
  EXPECT_EQ(countOf(changesIn(plan, 1), Lever::Start), 0u);
  plan.tariff.weekday = {{hours(0.0), hours(7.0), 0.08}, {hours(7.0), hours(24.0), 0.20}};
  plan.tariff.weekend = plan.tariff.weekday;
  const auto all = changesIn(plan, 1);
  ASSERT_EQ(countOf(all, Lever::Start), 1u);
  EXPECT_LT(changed(plan, 1, {&all.back()}).startOfDay, hours(7.0));
}

}  // namespace
}  // namespace rigs
