// SPDX-License-Identifier: GPL-3.0-or-later
// Chilling as a person asks for it: the page, spreadsheets, JSON, German, and what is refused.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <string>

#include "tests/program/run_program.hpp"

using test_support::Folder;
using test_support::Ran;
using test_support::runProgram;
using testing::HasSubstr;
using testing::Not;

namespace {

constexpr const char* kChilled = R"({
  "format": {"name": "heat-ledger-plan", "version": 1},
  "batch": {"wort": "22 L", "boil": "60 min", "pitching_temperature": "20 C"},
  "place": {"room": "21 C", "water": "14 C", "altitude": "0 m", "cooling_water": "15 C"},
  "rigs": [
    {"name": "Coil", "from": "40 L steel kettle", "supply": {"from": "Europe 230 V 16 A"},
     "chiller": {"wort": "stirred"}},
    {"name": "Air", "from": "40 L steel kettle", "supply": {"from": "Europe 230 V 16 A"},
     "chiller": {"kind": "air"}}]})";

TEST(Chill, IsAPageASpreadsheetAndJson) {
  const Folder folder;
  const std::string plan = folder.write("chilled.json", kChilled);
  const Ran page = runProgram({"chill", plan, "--width", "200"});
  EXPECT_EQ(page.exitCode, 0) << page.complaint;
  EXPECT_THAT(page.output, HasSubstr("How long does it take to chill?"));
  EXPECT_THAT(page.output, HasSubstr("stirred all the time."));
  EXPECT_THAT(page.output, HasSubstr("it scalds"));
  EXPECT_THAT(page.output, HasSubstr("Never close a hot vessel"));
  EXPECT_THAT(page.output, HasSubstr("within 2 h"));
  const Ran csv = runProgram({"chill", plan, "--csv"});
  EXPECT_THAT(csv.output, HasSubstr("chill,\"With a coil, stirred all the time\","));
  const auto result = nlohmann::json::parse(runProgram({"chill", plan, "--json"}).output);
  EXPECT_GT(result["rigs"][0]["chilling"]["stirred"]["to_goal_s"].get<double>(), 60.0);
  EXPECT_FALSE(result["rigs"][1]["chilling"].contains("stirred"));
  const Ran german = runProgram({"chill", plan, "--language", "de", "--width", "200"});
  EXPECT_THAT(german.output, HasSubstr("Wie lange dauert das Kühlen?"));
  EXPECT_THAT(german.output, HasSubstr("Es verbrüht"));
}

TEST(Chill, IsSweptAndAskedOfTheExample) {
  const Ran sweep = runProgram({"sweep", "--vary", "rigs/a/chiller/water_flow=4 L/min, 8 L/min",
                                "--figures", "chilling/stirred/to_goal_s", "--rig", "b"});
  EXPECT_EQ(sweep.exitCode, 0) << sweep.complaint;
  EXPECT_EQ(runProgram({"chill"}).exitCode, 0);
  EXPECT_EQ(runProgram({"chill", "--units", "US"}).exitCode, 0);
  // Plans that say nothing of it have nothing of it.
  EXPECT_THAT(runProgram({"answer", "--json"}).output, Not(HasSubstr("\"chilling\"")));
}

TEST(Chill, IsRefusedWithAllThatIsWrong) {
  const Folder folder;
  std::string wrong = kChilled;
  wrong.replace(wrong.find("\"15 C\""), 6, "\"22 C\"");
  wrong.replace(wrong.find("\"wort\": \"stirred\""), 17, "\"length\": \"500 m\"");
  const Ran ran = runProgram({"chill", folder.write("wrong.json", wrong)});
  EXPECT_EQ(ran.exitCode, 2);
  EXPECT_THAT(ran.complaint, HasSubstr("/batch/pitching_temperature"));
  EXPECT_THAT(ran.complaint, HasSubstr("/rigs/0/chiller/length"));
  EXPECT_THAT(ran.complaint, HasSubstr("ice"));
}

}  // namespace
