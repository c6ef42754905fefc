// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/overrides.hpp"

#include <gtest/gtest.h>

#include "physics/air.hpp"
#include "tests/gui/terminal/plan_in_code.hpp"
#include "tests/support/within.hpp"

using namespace gui;
using namespace physics;

TEST(Overrides, ChangeEveryRigInAllItsForms) {
  rigs::Plan plan = test_support::planInCode();
  rigs::Problems problems;
  applyOverrides({{"--supply-voltage", "208 V"}, {"--circuit", "30 A"}}, plan, problems);
  EXPECT_TRUE(problems.empty());
  for (const rigs::RigPlan& rig : plan.rigs) {
    for (const Rig* one : {&rig.rig, &rig.bare, &rig.jacketed}) {
      EXPECT_WITHIN(one->supply.nominal, volts(208.0), volts(1e-9));
      EXPECT_WITHIN(one->supply.rating, amperes(30.0), amperes(1e-9));
    }
  }
}

// What a plan leaves alone itself is what is left alone.
TEST(Overrides, ChangeThePlansOwnNight) {
  rigs::Plan plan = test_support::planInCode();
  rigs::Problems problems;
  applyOverrides({{"--alone", "10 h"}}, plan, problems);
  EXPECT_EQ(rigs::timeAlone(plan), hours(10.0));
  EXPECT_FALSE(rigs::hasOwnNight(plan));
  plan.batch.mash = UnpluggedMash{celsius(67.0), hours(12.0)};
  EXPECT_EQ(rigs::timeAlone(plan), hours(12.0));
  applyOverrides({{"--alone", "9 h"}}, plan, problems);
  EXPECT_TRUE(problems.empty());
  EXPECT_EQ(rigs::timeAlone(plan), hours(9.0));
  EXPECT_EQ(std::get<UnpluggedMash>(plan.batch.mash).duration, hours(9.0));
}

// Twice the rated voltage is four times the power: an element does not live through that, whether
// a document or an option says it.
TEST(Overrides, RefuseAVoltageThatBurnsAnElementOut) {
  rigs::Plan plan = test_support::planInCode();
  for (rigs::RigPlan& rig : plan.rigs) rig.rig.element.ratedAt = volts(120.0);
  rigs::Problems problems;
  applyOverrides({{"--supply-voltage", "240 V"}}, plan, problems);
  ASSERT_EQ(problems.size(), plan.rigs.size());
  EXPECT_EQ(problems[0].severity, rigs::Severity::Error);
  EXPECT_EQ(problems[0].where, "--supply-voltage");
  EXPECT_NE(inEnglish(problems[0].message)
                .find("an element of 120 V on 240 V would give 4 times its rated "
                      "power and surface load"),
            std::string::npos)
      << inEnglish(problems[0].message);
  problems.clear();
  applyOverrides({{"--supply-voltage", "130 V"}}, plan, problems);
  ASSERT_EQ(problems.size(), plan.rigs.size());
  EXPECT_EQ(problems[0].severity, rigs::Severity::Warning);
}

// What a rule grants one circuit says nothing of another.
TEST(Overrides, ForgetTheRuleOfTheCircuitTheyReplace) {
  rigs::Plan plan = test_support::planInCode();
  plan.rigs[0].circuit = "somewhere 120 V 15 A";
  plan.rigs[0].continuousShare = 0.8;
  rigs::Problems problems;
  applyOverrides({{"--supply-voltage", "115 V"}}, plan, problems);
  EXPECT_EQ(plan.rigs[0].circuit, "");
  EXPECT_EQ(plan.rigs[0].continuousShare, 1.0);
}

TEST(Overrides, LetGrainFollowTheRoomItStoodIn) {
  rigs::Plan plan = test_support::planInCode();
  rigs::Problems problems;
  applyOverrides({{"--room", "60 °F"}}, plan, problems);
  EXPECT_NEAR(inCelsius(plan.place.room), 15.5556, 1e-4);
  EXPECT_EQ(plan.batch.grain.temperature, plan.place.room);
  plan.batch.grain.temperature = celsius(5.0);
  applyOverrides({{"--room", "20 °C"}}, plan, problems);
  EXPECT_NEAR(inCelsius(plan.batch.grain.temperature), 5.0, 1e-9);
}

TEST(Overrides, SetThePressureOfTheAltitude) {
  rigs::Plan plan = test_support::planInCode();
  rigs::Problems problems;
  applyOverrides({{"--altitude", "1600 m"}}, plan, problems);
  EXPECT_WITHIN(plan.place.pressure, standardAtmosphere(metres(1600.0)).pressure, pascals(1e-6));
}

TEST(Overrides, ReportEveryProblemByItsOption) {
  rigs::Plan plan = test_support::planInCode();
  rigs::Problems problems;
  applyOverrides({{"--room", "warm"}, {"--within", "45"}, {"--circuit", "0 A"}}, plan, problems);
  ASSERT_EQ(problems.size(), 3u);
  EXPECT_EQ(problems[0].where, "--room");
  EXPECT_EQ(problems[1].where, "--within");
  EXPECT_EQ(problems[2].where, "--circuit");
  EXPECT_EQ(inEnglish(problems[2].message),
            "\"0 A\" was given; 1 A to 400 A is accepted, for example \"16 A\"");
}

// The help's own examples must be accepted; a file of rules is read by the built program's tests.
TEST(Overrides, AcceptTheExamplesOfTheHelp) {
  for (const OverrideKind& kind : overrideKinds()) {
    if (kind.value == "FILE") continue;
    rigs::Plan plan = test_support::planInCode();
    rigs::Problems problems;
    applyOverrides({{std::string(kind.option), std::string(kind.example)}}, plan, problems);
    EXPECT_TRUE(problems.empty()) << kind.option << ": " << inEnglish(problems[0].message);
  }
}
