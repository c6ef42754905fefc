// SPDX-License-Identifier: GPL-3.0-or-later
// What helps most: what is typed, and what comes back.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "tests/program/run_program.hpp"

using nlohmann::json;
using test_support::Ran;
using test_support::runProgram;
using testing::HasSubstr;
using testing::Not;

namespace {

std::string said(const std::vector<std::string>& words) {
  const Ran ran = runProgram(words);
  EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
  EXPECT_EQ(ran.complaint, "") << "no progress where nobody sees it";
  return test_support::squeezed(ran.output);
}

TEST(HelpsCommand, TellsEveryRigInShortAndOneWithItsTable) {
  const std::string all = said({"helps", "--together", "1"});
  for (const char* name : {"(a)Oldelement,kitchen", "(b)Newelement,kitchen", "(d)Oldelement,laun"})
    EXPECT_THAT(all, HasSubstr("helps" + std::string(name)));
  EXPECT_THAT(all, Not(HasSubstr("nothingchanged")));
  const std::string one = said({"helps", "--together", "1", "--rig", "b"});
  EXPECT_THAT(one, HasSubstr("nothingchanged"));
  EXPECT_THAT(one, HasSubstr("helps(b)Newelement,kitchenmoretorollintheboil."));
  EXPECT_THAT(one, Not(HasSubstr("(d)Oldelement")));
  EXPECT_THAT(one, HasSubstr("Havealicensedelectriciancheck"));
}

TEST(HelpsCommand, HasEveryChangeInItsSheetAndForPrograms) {
  const json helps = json::parse(runProgram({"helps", "--together", "1", "--json"}).output);
  const auto& changes = helps["rigs"][1]["helps"]["changes"];
  ASSERT_GT(changes.size(), 20U);
  const std::string sheet = test_support::squeezed(
      runProgram({"helps", "--together", "1", "--csv", "--rig", "b"}).output);
  for (const auto& change : changes)
    EXPECT_THAT(sheet, HasSubstr(test_support::squeezed(change["text"])));
  EXPECT_EQ(helps["rigs"][1]["helps"]["ways"], helps["rigs"][1]["helps"]["ways_tried"]);
}

TEST(HelpsCommand, RanksByTheWish) {
  const std::string sooner = said({"helps", "--together", "1", "--rig", "d", "--wish", "sooner"});
  EXPECT_THAT(sooner, HasSubstr("moretobereadysooner."));
  EXPECT_THAT(said({"helps", "--together", "1", "--rig", "d", "--wish", "warmer"}),
              HasSubstr("Thisplanleavesnomashunplugged"));
}

// A goal that is typed is one of those to be met.
TEST(HelpsCommand, HeedsTheGoalsThatAreTyped) {
  const auto fewest = [](const char* within) {
    const json helps =
        json::parse(runProgram({"helps", "--together", "2", "--json", "--within", within}).output);
    return helps["rigs"][3]["helps"]["wishes"]["sooner"];
  };
  EXPECT_FALSE(fewest("1 min").contains("all_goals"));
  EXPECT_TRUE(fewest("40 min").contains("all_goals"));
}

// Ctrl-C, a moment after the search has begun: what was found stays.
TEST(HelpsCommand, KeepsWhatWasFoundWhenItIsInterrupted) {
  // Under sanitizers nothing is found yet after two seconds.
  std::string output;
  for (const char* seconds : {"2", "10", "50"}) {
    const Ran ran = runProgram({"--signal=INT", seconds, test_support::testedProgram(), "helps",
                                "--rig", "b", "--together", "all"},
                               {.program = "/usr/bin/timeout"});
    output = test_support::squeezed(ran.output);
    if (output.find("helps(b)") != std::string::npos) break;
  }
  EXPECT_THAT(output, HasSubstr("Thisisapart:"));
  EXPECT_THAT(output, HasSubstr("helps(b)Newelement,kitchenmoretorollintheboil."));
  EXPECT_THAT(output, HasSubstr("Havealicensedelectriciancheck"));
}

}  // namespace
