// SPDX-License-Identifier: GPL-3.0-or-later
// What plans say about circuits, elements and the room's air, and what is wrong with it.
#include <gtest/gtest.h>

#include "rigs/answers.hpp"
#include "rigs/circuit_words.hpp"
#include "tests/rigs/plan_edit.hpp"
#include "tests/support/within.hpp"

namespace {

using namespace physics;
using namespace rigs;
using test_support::demoWith;
using test_support::Json;
using test_support::readChecked;
using test_support::told;

struct Wrong {
  const char* at;
  const char* value;
  const char* where;
  const char* says;
};

TEST(CircuitPlan, NamesWhatDoesNotBelongToTheRegion) {
  for (const Wrong& c :
       {Wrong{"/place/region", R"("Atlantis")", "/place/region", "is no region"},
        Wrong{"/place/region", R"("Japan")", "/rigs/0/supply/voltage",
              "120 V is no supply voltage of Japan; there it is 100 V, 200 V"},
        Wrong{"/place/edition", R"("2017")", "/place/edition", "needs a \"region\""},
        Wrong{"/rigs/0/supply/outlet", R"("5-50")", "/rigs/0/supply/outlet", "is no outlet of"},
        Wrong{"/rigs/0/cable", R"({"length": "5 m", "conductor": "22 AWG", "use": "cord"})",
              "/rigs/0/cable/conductor", "the nearest size is 18 AWG"},
        Wrong{"/rigs/0/cable", R"({"length": "5 m", "conductor": "14 AWG", "use": "rope"})",
              "/rigs/0/cable/use", "rope"},
        Wrong{"/rigs/0/elements",
              R"([{"power": "1 kW", "rated_voltage": "120 V", "top_height": "50 mm"}])",
              "/rigs/0/wired", "missing"},
        Wrong{"/rigs/0/second_supply", R"({"from": "North America 120 V 15 A"})",
              "/rigs/0/second_supply", "no element hangs on it"},
        Wrong{"/place/air", R"({"volume": "40 m3", "airflow": "100 m3/h", "air_changes": 1})",
              "/place/air/airflow", "keep one"}}) {
    SCOPED_TRACE(std::string(c.at) + " " + c.value);
    const auto read = readChecked(demoWith({{c.at, Json::parse(c.value)}}));
    EXPECT_TRUE(hasErrors(read.problems));
    bool found = false;
    for (const Problem& p : read.problems)
      found = found || (p.where == c.where && p.message.find(c.says) != std::string::npos);
    EXPECT_TRUE(found) << told(read.problems);
  }
}

TEST(CircuitPlan, NamesTheEditionThatIsThere) {
  const auto read =
      readChecked(demoWith({{"/place/region", "United States"}, {"/place/edition", "1999"}}));
  ASSERT_TRUE(hasErrors(read.problems));
  EXPECT_EQ(read.problems.front().where, "/place/edition");
  EXPECT_NE(read.problems.front().message.find("2023"), std::string::npos);
}

Json element(const char* power) {
  return Json::parse(std::string(R"({"power": ")") + power +
                     R"(", "rated_voltage": "120 V", "top_height": "50 mm"})");
}

// E12 through a plan: two equal elements in series give a quarter of what they give in parallel.
TEST(CircuitPlan, WiresElementsTogether) {
  const Json two = Json::array({element("700 W"), element("700 W")});
  const auto parallel = readChecked(demoWith({{"/rigs/1/element", test_support::removed()},
                                              {"/rigs/1/elements", two},
                                              {"/rigs/1/wired", "parallel"}}));
  const auto series = readChecked(demoWith({{"/rigs/1/element", test_support::removed()},
                                            {"/rigs/1/elements", two},
                                            {"/rigs/1/wired", "series"}}));
  ASSERT_TRUE(parallel.plan) << told(parallel.problems);
  ASSERT_TRUE(series.plan) << told(series.problems);
  const Supply straight{.nominal = volts(120.0), .rating = amperes(15.0), .cableLoop = ohms(0.0)};
  const auto on120 = [&](const Plan& plan) {
    return electricalLoad(plan.rigs[1].rig.element, straight).delivered;
  };
  EXPECT_WITHIN(on120(*parallel.plan), watts(1400.0), watts(1e-6));
  EXPECT_WITHIN(on120(*series.plan), watts(350.0), watts(1e-6));
}

// Each of two 120 V elements in series on 240 V gets its own 120 V.
TEST(CircuitPlan, LetsElementsInSeriesShareAHigherVoltage) {
  const Json two = Json::array({element("1500 W"), element("1500 W")});
  const auto read = readChecked(demoWith({{"/rigs/1/element", test_support::removed()},
                                          {"/rigs/1/elements", two},
                                          {"/rigs/1/wired", "series"},
                                          {"/rigs/1/supply/from", "North America 240 V 20 A"}}));
  ASSERT_TRUE(read.plan) << told(read.problems);
  EXPECT_WITHIN(read.plan->rigs[1].rig.element.ratedAt, volts(240.0), volts(1e-9));
}

TEST(CircuitPlan, FeedsTwoElementsFromTwoCircuits) {
  const auto read = readChecked(
      demoWith({{"/rigs/1/element", test_support::removed()},
                {"/rigs/1/elements", Json::array({element("1400 W"), element("1200 W")})},
                {"/rigs/1/wired", "two circuits"}}));
  ASSERT_TRUE(read.plan) << told(read.problems);
  const RigPlan& rig = read.plan->rigs[1];
  ASSERT_TRUE(rig.rig.second);
  const Answers answers = answer(*read.plan, Depth::Circuit);
  const RigAnswer& one = answers.rigs[1];
  ASSERT_EQ(one.circuit.circuits.size(), 2u);
  const Power both =
      one.circuit.circuits[0].load.delivered + one.circuit.circuits[1].load.delivered;
  EXPECT_WITHIN(one.day.electrical.delivered, both, watts(1e-6));
  // All that the wall gave is in the ledger: both elements and both cables.
  const Power wall = one.circuit.circuits[0].load.fromWall + one.circuit.circuits[1].load.fromWall;
  EXPECT_WITHIN(one.day.total.fromWall(), one.circuit.duty.current() * wall,
                1e-6 * one.day.total.fromWall());
  EXPECT_LT(one.day.total.imbalance(), 1e-6);
  EXPECT_FALSE(one.circuit.split);
  // Half of (a)'s circuits each: 12 A are left, 11.5 and 9.8 A drawn.
  for (const CircuitLoad& circuit : one.circuit.circuits)
    for (const CircuitVerdict& verdict : circuit.verdicts)
      EXPECT_EQ(verdict.overall, Fit::Fits) << verdictText(verdict);
}

TEST(CircuitAnswer, GivesTheDemosFourRigsTheirVerdicts) {
  const auto read = readChecked(demoWith({{"/place/region", "United States"}}));
  ASSERT_TRUE(read.plan) << told(read.problems);
  const Answers answers = answer(*read.plan, Depth::Circuit);
  const Fit expected[] = {Fit::Fits, Fit::OnlyIf, Fit::OnlyIf, Fit::OnlyIf};
  for (std::size_t i = 0; i < 4; ++i)
    EXPECT_EQ(answers.rigs[i].circuit.overall(), expected[i]) << i;
  // The inverse: 15 A boil, the 12 A that the strict readings leave on 120 V do not.
  const auto& readings = answers.rigs[1].circuit.readings;
  ASSERT_EQ(readings.size(), 3u);
  EXPECT_WITHIN(readings[0].reading.limit, amperes(15.0), amperes(1e-9));
  EXPECT_WITHIN(readings[2].reading.limit, amperes(12.0), amperes(1e-9));
  EXPECT_EQ(readings[0].outcome, Outcome::Done);
  EXPECT_EQ(readings[2].outcome, Outcome::DoesNotBoil);
  EXPECT_FALSE(readings[2].fits);
  ASSERT_TRUE(answers.rigs[1].circuit.addedByCable);
  EXPECT_GT(*answers.rigs[1].circuit.addedByCable, seconds(10.0));
}

TEST(CircuitAnswer, CannotSayWithoutARegion) {
  const auto read = readChecked(
      demoWith({{"/rigs/0/supply", Json::parse(R"({"voltage": "120 V", "current": "15 A"})")}}));
  ASSERT_TRUE(read.plan) << told(read.problems);
  const Answers answers = answer(*read.plan, Depth::Day);
  EXPECT_EQ(answers.rigs[0].circuit.overall(), Fit::CannotSay);
}

// Nothing that stands on memory is passed off as read.
TEST(CircuitWords, CarryTheStatusOfEveryRule) {
  for (const CircuitRules& rules : bundledRules()) {
    for (const Outlet& outlet : rules.outlets) {
      const std::string text = citeText(outlet.cite);
      EXPECT_EQ(text.find("from memory, check") != std::string::npos,
                outlet.cite.status == Status::Memory)
          << text;
    }
  }
}

TEST(RoomAnswer, FillsAnUnairedKitchenDuringTheBoil) {
  const auto read = readChecked(demoWith({{"/place/air/volume", "40 m3"},
                                          {"/place/air/outdoors", "5 C"},
                                          {"/place/air/outdoor_humidity", "80 %"},
                                          {"/place/air/window_u", "2.8 W/(m2 K)"}}));
  ASSERT_TRUE(read.plan) << told(read.problems);
  const Answers answers = answer(*read.plan, Depth::Room);
  const RoomAnswer& laundry = *answers.rigs[3].room;
  ASSERT_TRUE(laundry.day.saturatedAt);
  ASSERT_TRUE(laundry.day.windowWetAt);
  EXPECT_LE(*laundry.day.windowWetAt, *laundry.day.saturatedAt);
  EXPECT_FALSE(answers.rigs[0].room->day.saturatedAt);
  EXPECT_TRUE(answers.rigs[3].day.stages.front().curve.empty());
}

}  // namespace
