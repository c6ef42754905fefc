// SPDX-License-Identifier: GPL-3.0-or-later
// What plans say about chilling, and what is wrong with it.
#include "rigs/plans/chill_reader.hpp"

#include <gtest/gtest.h>

#include "tests/rigs/plans/plan_edit.hpp"
#include "tests/support/within.hpp"

namespace {

using namespace physics;
using namespace rigs;
using test_support::demoWith;
using test_support::Json;
using test_support::readChecked;
using test_support::told;

struct WrongChilling {
  test_support::Edits edits;
  const char* where;
  const char* says;
};

TEST(ChillingOfAPlan, IsRefusedWithItsPlaceWhereItIsWrong) {
  const std::initializer_list<WrongChilling> all{
      {{{"/batch/pitching_temperature", "18 C"}, {"/place/cooling_water", "17 C"}},
       "/batch/pitching_temperature",
       "wort at 18 °C is not possible with cooling water of 17 °C: it comes to about 19 °C"},
      {{{"/batch/pitching_temperature", "18 C"}, {"/place/cooling_water", "30 C"}},
       "/batch/pitching_temperature",
       "by a bath of ice round the kettle, about 1.44 kg for each 10 L of wort"},
      {{{"/place/cooling_water", "100 C"}}, "/place/cooling_water", "60"},
      {{{"/batch/hot_stand", "-5 min"}}, "/batch/hot_stand", "12 h"},
      {{{"/rigs/0/chiller", Json::parse(R"({"water_flow": "0 L/min"})")}},
       "/rigs/0/chiller/water_flow",
       "0.2"},
      {{{"/rigs/0/chiller", Json::parse(R"({"length": "120 m"})")}},
       "/rigs/0/chiller/length",
       "60 m"},
      {{{"/rigs/0/chiller", Json::parse(R"({"length": "60 m", "tube": "30 mm"})")}},
       "/rigs/0/chiller/length",
       "of the kettle: such a coil does not go in beside the wort"},
      {{{"/rigs/0/chiller", Json::parse(R"({"kind": "fridge"})")}},
       "/rigs/0/chiller/kind",
       "\"coil\", \"counterflow\", \"air\""},
      {{{"/rigs/0/chiller", "a coil"}}, "/rigs/0/chiller", "an object is needed"}};
  for (const WrongChilling& one : all) {
    const auto read = readChecked(demoWith(one.edits));
    bool found = false;
    for (const Problem& p : read.problems)
      found = found ||
              (p.where == one.where && inEnglish(p.message).find(one.says) != std::string::npos);
    EXPECT_TRUE(found) << one.where << '\n' << told(read.problems);
    EXPECT_FALSE(read.plan && !hasErrors(read.problems)) << one.where;
  }
}

TEST(ChillingOfAPlan, HasAllItsProblemsToldAtOnce) {
  const auto read = readChecked(demoWith(
      {{"/batch/pitching_temperature", "18 C"},
       {"/place/cooling_water", "22 C"},
       {"/rigs/0/chiller", Json::parse(R"({"length": "500 m", "water_flow": "0 L/min"})")}}));
  std::vector<std::string> places;
  for (const Problem& p : read.problems)
    if (p.severity == Severity::Error) places.push_back(p.where);
  EXPECT_EQ(places,
            (std::vector<std::string>{"/batch/pitching_temperature", "/rigs/0/chiller/length",
                                      "/rigs/0/chiller/water_flow"}))
      << told(read.problems);
}

// Water that nobody spoke of for chilling makes no plan wrong, however warm: that is an answer.
TEST(ChillingOfAPlan, IsNotRefusedForWaterThatIsOnlySupposed) {
  const auto read = readChecked(demoWith({{"/batch/pitching_temperature", "10 C"}}));
  ASSERT_TRUE(read.plan) << told(read.problems);
  EXPECT_EQ(read.plan->chilling.pitching, celsius(10.0));
  EXPECT_TRUE(read.plan->chilling.isStated);
  EXPECT_FALSE(readChecked(demoWith({})).plan->chilling.isStated);
  EXPECT_FALSE(readChecked(demoWith({})).plan->rigs[0].chiller.isStated);
}

TEST(ChillerOfARig, FollowsTheRigItIsFromKeyByKey) {
  const auto read = readChecked(demoWith(
      {{"/rigs/0/chiller", Json::parse(R"({"tube": "12 mm", "material": "stainless steel"})")},
       {"/rigs/1", Json::parse(R"({"name": "Stirred", "same_as": "a",
                                   "chiller": {"wort": "stirred"}})")}}));
  ASSERT_TRUE(read.plan) << told(read.problems);
  const Chiller& follower = read.plan->rigs[1].chiller;
  EXPECT_WITHIN(follower.tube, millimetres(12.0), millimetres(1e-9));
  EXPECT_TRUE(follower.stirred);
  EXPECT_LT(follower.conductivity, wattsPerMetreKelvin(20.0));
  EXPECT_FALSE(read.plan->rigs[0].chiller.stirred);
}

}  // namespace
