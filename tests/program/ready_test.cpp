// SPDX-License-Identifier: GPL-3.0-or-later
// When to begin, so that something is ready in time, from the built program.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <string>

#include "tests/program/run_program.hpp"

namespace {

using test_support::Folder;
using test_support::Ran;
using test_support::runProgram;
using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::Not;
using Json = nlohmann::json;

// Two kettles that mash and boil; `more` goes into the document's top level.
std::string mashingPlan(const Json& more) {
  Json plan = Json::parse(R"({
    "format": {"name": "heat-ledger-plan", "version": 1},
    "batch": {"wort": "23 L", "grain": {"mass": "5 kg"}, "boil": "60 min",
              "mash": {"rests": [{"temperature": "66 C", "time": "60 min"}]}},
    "place": {"altitude": "120 m", "room": "20 C", "water": "12 C"},
    "rigs": [{"name": "One", "from": "40 L steel kettle"},
             {"name": "Two", "from": "40 L steel kettle", "element": {"power": "3400 W"}}]
  })");
  plan.merge_patch(more);
  return plan.dump();
}

std::string onOneLine(std::string text) {
  std::string line;
  for (const char c : text) {
    const char one = c == '\n' ? ' ' : c;
    if (one != ' ' || line.empty() || line.back() != ' ') line += one;
  }
  return line;
}

TEST(Ready, IsTheSameAsAKeyAndAsAnOption) {
  const Folder folder;
  const std::string asKey =
      folder.write("key.json", mashingPlan({{"ready", {{"what", "boil"}, {"at", "11:00"}}}}));
  const std::string asOption = folder.write("option.json", mashingPlan(Json::object()));
  const Ran key = runProgram({"day", asKey, "--json"});
  ASSERT_EQ(key.exitCode, 0) << key.complaint;
  EXPECT_EQ(runProgram({"day", asOption, "--ready", "boil 11:00", "--json"}).output, key.output);
  const Json json = Json::parse(key.output);
  EXPECT_EQ(json["ready"], Json::parse(R"({"what": "boil", "at_s": 39600.0})"));
  EXPECT_FALSE(json.contains("start_of_day_s"));
  for (const Json& rig : json["rigs"]) {
    const double until = rig["day"]["to_strike_s"].get<double>();
    EXPECT_LT(rig["begins_s"].get<double>() + until, 39600.0);
    EXPECT_LT(rig["begins_for_9_of_10_s"], rig["begins_s"]);
  }
  EXPECT_LT(json["rigs"][0]["begins_s"], json["rigs"][1]["begins_s"]);
}

TEST(Ready, IsToldAsAPersonReadsIt) {
  const Folder folder;
  const std::string plan = folder.write("plan.json", mashingPlan(Json::object()));
  const Ran ran = runProgram({"day", plan, "--ready", "end of boil 07:00"});
  EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
  EXPECT_THAT(onOneLine(ran.output),
              AllOf(HasSubstr("is when to begin with (a) One, the earliest: then its boil is over "
                              "at 07:00."),
                    HasSubstr("To be ready by 07:00 on 9 of 10 such days, begin by"),
                    HasSubstr("Never leave an element to switch on by itself")));
  EXPECT_THAT(onOneLine(runProgram({"answer", plan, "--ready", "boil 11:00"}).output),
              AllOf(HasSubstr("begin at 0"), HasSubstr("Never leave an element to switch on")));
  EXPECT_THAT(runProgram({"day", plan, "--ready", "boil 11:00", "--language", "de"}).output,
              HasSubstr("es wallt um 11:00"));
  const Ran sheet = runProgram({"sheet", plan, "--rig", "a", "--ready", "boil 11:00"});
  EXPECT_THAT(onOneLine(sheet.output), HasSubstr("Begin, and stay with it"));
}

TEST(Ready, RefusesWhatItCannotReadAndSaysWhatItTakes) {
  const Folder folder;
  const std::string plan = folder.write("plan.json", mashingPlan(Json::object()));
  for (const char* wrong : {"11:00", "boil", "boil 25:00", "rolling 11:00", ""}) {
    const Ran ran = runProgram({"day", plan, "--ready", wrong});
    EXPECT_EQ(ran.exitCode, 2) << wrong;
    EXPECT_THAT(onOneLine(ran.complaint), AllOf(HasSubstr("--ready"), HasSubstr("boil 11:00")));
  }
  const Ran pitching = runProgram({"day", plan, "--ready", "pitching 19:00"});
  EXPECT_EQ(pitching.exitCode, 2);
  EXPECT_THAT(onOneLine(pitching.complaint), HasSubstr("\"chiller\": {\"kind\": \"coil\"}"));
  const std::string both = folder.write(
      "both.json",
      mashingPlan({{"day_starts", "09:00"}, {"ready", {{"what", "boil"}, {"at", "11:00"}}}}));
  const Ran two = runProgram({"check", both});
  EXPECT_EQ(two.exitCode, 2);
  EXPECT_THAT(onOneLine(two.complaint + two.output),
              AllOf(HasSubstr("day_starts"), HasSubstr("write one of")));
}

TEST(Ready, IsSweptLikeAnyOtherKey) {
  const Folder folder;
  const std::string plan =
      folder.write("plan.json", mashingPlan({{"ready", {{"what", "boil"}, {"at", "11:00"}}}}));
  const Ran ran = runProgram({"sweep", plan, "--vary", "ready/at=09:00..11:00 by 1 h", "--rig", "a",
                              "--figures", "begins_s"});
  EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
  EXPECT_THAT(ran.output, AllOf(HasSubstr("begins_s"), HasSubstr("Never leave an element to")));
}

// Readings have clocks: those of the beginning that was solved, on the evening it was.
TEST(Ready, IsWhenAReadDayBegan) {
  const Folder folder;
  const Json night{{"unplugged", {{"temperature", "67 C"}, {"time", "8 h"}}}, {"rests", nullptr}};
  const std::string plan = folder.write(
      "plan.json", mashingPlan({{"batch", {{"mash", night}}},
                                {"ready", {{"what", "end of mash"}, {"at", "07:00"}}}}));
  const std::string log =
      folder.write("night.csv", "22:30 unplugged\n23:00 66.2 °C\n01:00 63.0 °C\n06:00 57.5 °C\n");
  const Ran ran = runProgram({"learn", plan, "--rig", "a", "--readings", log});
  EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
  EXPECT_THAT(onOneLine(ran.output), Not(HasSubstr("before the plan's day begins")));
  const std::string weak =
      folder.write("weak.json", mashingPlan({{"ready", {{"what", "boil"}, {"at", "11:00"}}},
                                             {"rigs",
                                              {{{"name", "Weak"},
                                                {"from", "40 L steel kettle"},
                                                {"element", {{"power", "700 W"}}}}}}}));
  const Ran none = runProgram({"learn", weak, "--readings", log});
  EXPECT_EQ(none.exitCode, 2);
  EXPECT_THAT(onOneLine(none.complaint), HasSubstr("state when it began in its place"));
}

}  // namespace
