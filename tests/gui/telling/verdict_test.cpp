// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/verdict.hpp"

#include <gtest/gtest.h>

#include "tests/gui/telling/asked.hpp"
#include "tests/gui/telling/told_checks.hpp"
#include "tests/gui/terminal/plan_in_code.hpp"
#include "tests/support/solved_demo.hpp"

namespace gui::telling {
namespace {

using namespace physics;
using test_support::holds;

std::string verdictOf(const Case& of, std::size_t rig) {
  return rigs::inEnglish(verdictText(of, rig));
}

TEST(Verdict, TellsOfTheDemoWhatItsOwnerAsks) {
  const Case of = test_support::demoCase();
  EXPECT_EQ(verdictOf(of, 0),
            "never rolls: 0.80 kW of the 1.57 kW it needs; 6.81 A fits its 15 A circuit");
  EXPECT_EQ(verdictOf(of, 1),
            "on the edge of rolling with 1.57 kW, as 1.33 kW to 1.81 kW may be needed, over at "
            "13:24, 0.91 USD; 13.8 A is too much for long use of its 15 A circuit");
  EXPECT_EQ(verdictOf(of, 2),
            "rolls steadily from 12:08, over at 13:18, 0.85 USD; 13.8 A is too much for long use "
            "of its 15 A circuit");
  EXPECT_EQ(verdictOf(of, 3),
            "rolls strongly from 11:34, over at 12:44, 1.07 USD; 11.8 A fits its 30 A circuit on "
            "conditions: see \"circuit\"");
}

rigs::Plan planOnCircuit(double watt, double ampere) {
  rigs::Plan plan = test_support::planInCode();
  plan.rigs.resize(1);
  for (Rig* rig : {&plan.rigs[0].rig, &plan.rigs[0].bare, &plan.rigs[0].jacketed}) {
    rig->element = {watts(watt), volts(230.0), metres(0.05)};
    rig->supply = {.nominal = volts(230.0), .rating = amperes(ampere), .cableLoop = ohms(0.0)};
  }
  return plan;
}

// 5000 W at 230 V draw 21.7 A, 3000 W 13.04 A (I = P/U).
TEST(Verdict, NeverCallsACircuitFitThatIsNot) {
  const test_support::OwnCase large(planOnCircuit(5000.0, 16.0), rigs::Depth::Day);
  EXPECT_TRUE(verdictOf(large.get(), 0).ends_with("; 21.7 A is too much for its 16 A circuit"))
      << verdictOf(large.get(), 0);
  const test_support::OwnCase edge(planOnCircuit(3000.0, 13.0), rigs::Depth::Day);
  EXPECT_TRUE(verdictOf(edge.get(), 0).ends_with("; 13.04 A is on the edge of its 13 A circuit"))
      << verdictOf(edge.get(), 0);
}

// Where no rules apply nobody has said that it fits.
TEST(Verdict, SaysWhereItGoesByNamePlatesAlone) {
  test_support::OwnCase own(planOnCircuit(3000.0, 16.0), rigs::Depth::Day);
  own.rig().circuit.circuits[0].verdicts.clear();
  EXPECT_TRUE(holds(verdictOf(own.get(), 0), "A is within its 16 A circuit, by name plates alone"))
      << verdictOf(own.get(), 0);
}

TEST(Verdict, TellsOfEachOfTwoCircuits) {
  rigs::Plan plan = planOnCircuit(3000.0, 16.0);
  rigs::RigPlan& rig = plan.rigs[0];
  for (Rig* one : {&rig.rig, &rig.bare, &rig.jacketed})
    one->second =
        Feed{.element = {watts(5000.0), volts(230.0), metres(0.05)}, .supply = rig.rig.supply};
  rig.circuits.resize(2);
  const test_support::OwnCase own(plan, rigs::Depth::Day);
  const std::string text = verdictOf(own.get(), 0);
  EXPECT_TRUE(holds(text, "13 A ")) << text;
  EXPECT_TRUE(text.ends_with("; 21.7 A is too much for its 16 A circuit")) << text;
}

// Of a day that stops there is no end by the clock, and no price of a batch.
TEST(Verdict, TellsWhereADayStops) {
  test_support::OwnCase own(planOnCircuit(3000.0, 16.0), rigs::Depth::Day);
  BrewDay& day = own.rig().day;
  own.rig().edge.reset();
  day.levelsOff = LevelsOff{.at = celsius(61.0), .wanted = celsius(70.0), .atWanted = watts(900.0)};
  day.lowest = litres(5.0);
  day.strike = celsius(104.0);
  const auto text = [&](Outcome outcome) {
    day.outcome = outcome;
    std::string all = verdictOf(own.get(), 0);
    EXPECT_FALSE(holds(all, "over at")) << all;
    return all.substr(0, all.find(';'));
  };
  EXPECT_EQ(text(Outcome::DoesNotReachStrike),
            "never gets warm enough to strike: it levels off at 61 °C");
  EXPECT_EQ(text(Outcome::DoesNotReachRest), "never reaches its next rest: it levels off at 61 °C");
  EXPECT_EQ(text(Outcome::UncoversElement),
            "uncovers its element, which would burn out: 5 L is left");
  EXPECT_EQ(text(Outcome::StrikeTooHot), "cannot strike: the water would have to be 104 °C");
  day.leastToBoil = watts(3100.0);
  EXPECT_EQ(text(Outcome::Steams),
            "steams without rolling: 3.00 kW of the 3.10 kW that rolling takes");
  day.leastToBoil.reset();
  EXPECT_EQ(text(Outcome::StaysFarBelow), "never rolls, with no element at all");
}

// Who comes back in the morning wants to know that first; of a plan without a price, energy.
TEST(Verdict, BeginsWithTheMorningOfAPlanThatIsLeftAlone) {
  rigs::Plan plan = planOnCircuit(3000.0, 16.0);
  plan.batch.mash = UnpluggedMash{celsius(67.0), hours(10.0)};
  plan.tariff = {};
  const test_support::OwnCase own(plan, rigs::Depth::Everything);
  const std::string text = verdictOf(own.get(), 0);
  EXPECT_TRUE(text.starts_with(
      rigs::inEnglish(rigs::Told::just(rigs::amount(own.get().rig(0).night->asItIs.morning))) +
      " after 10 h unplugged, "))
      << text;
  EXPECT_TRUE(holds(text, " kWh; ")) << text;
}

}  // namespace
}  // namespace gui::telling
