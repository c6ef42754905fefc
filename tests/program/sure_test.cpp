// SPDX-License-Identifier: GPL-3.0-or-later
// How sure it is, asked of the built program.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "tests/program/run_program.hpp"

using nlohmann::json;
using test_support::contents;
using test_support::Folder;
using test_support::Ran;
using test_support::runProgram;
using testing::HasSubstr;

namespace {

std::string saidSurely(const std::vector<std::string>& words) {
  const Ran ran = runProgram(words);
  EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
  return ran.output;
}

TEST(SureCommand, TellsOfEveryRigAndOfOneWhatItsWidthHangsOn) {
  const std::string all = saidSurely({"sure"});
  EXPECT_THAT(all, HasSubstr("How sure is this?"));
  EXPECT_THAT(all, HasSubstr("0 of 20 such days roll with (a) Old element, kitchen."));
  EXPECT_THAT(all, HasSubstr("of 20 such days"));
  EXPECT_THAT(all, testing::Not(HasSubstr("How much of the width")));
  const std::string one = saidSurely({"sure", "--rig", "c"});
  EXPECT_THAT(one, HasSubstr("How much of the width hangs on it, %"));
  EXPECT_THAT(saidSurely({"sure", "--language", "de"}), HasSubstr("Wie sicher ist das?"));
}

TEST(SureCommand, IsTheSameForProgramsOnEveryRun) {
  const std::string first = saidSurely({"sure", "--json"});
  EXPECT_EQ(first, saidSurely({"sure", "--json"}));
  const json bands = json::parse(first)["rigs"][2]["bands"];
  EXPECT_EQ(bands["days"], 256);
  EXPECT_EQ(bands["rolls_share"], 1.0);
  EXPECT_LT(bands["boil_begins"]["low_s"], bands["boil_begins"]["middle_s"]);
  EXPECT_LT(bands["boil_begins"]["middle_s"], bands["boil_begins"]["high_s"]);
  EXPECT_GT(bands["causes"]["boil_begins"]["power"], 0.3);
  EXPECT_FALSE(json::parse(first)["rigs"][1]["bands"]["boil_begins"].contains("high_s"));
}

TEST(SureCommand, LeavesWhatOtherCommandsTellAsItWas) {
  for (const char* command : {"answer", "overview", "day"})
    EXPECT_FALSE(json::parse(saidSurely({command, "--json"}))["rigs"][2].contains("bands"));
}

// The same question of the same reader has one spreadsheet, whoever writes it.
TEST(SureCommand, HasTheSpreadsheetOfItsPicture) {
  const Folder folder;
  const std::string file = folder.file("sure.csv");
  saidSurely({"picture", "how-sure", "--rig", "c", "--to", file, "--units", "SI"});
  EXPECT_EQ(contents(file), saidSurely({"sure", "--rig", "c", "--csv", "--units", "SI"}));
}

}  // namespace
