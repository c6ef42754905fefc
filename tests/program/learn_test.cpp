// SPDX-License-Identifier: GPL-3.0-or-later
// What was read: what is typed, and what comes back.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "tests/program/run_program.hpp"

using nlohmann::json;
using test_support::Folder;
using test_support::Ran;
using test_support::runProgram;
using test_support::squeezed;
using testing::HasSubstr;

namespace {

// A plan of a night, and a file of readings beside it.
struct NightRead {
  Folder folder;
  std::string plan = folder.file("night.json");
  std::string readings;

  explicit NightRead(const std::string& text) : readings(folder.write("night.csv", text)) {
    EXPECT_EQ(runProgram({"new", plan, "--like", "night-unplugged"}).exitCode, 0);
  }
  Ran learn(std::vector<std::string> more = {}) const {
    std::vector<std::string> words{"learn", plan, "--readings", readings};
    words.insert(words.end(), more.begin(), more.end());
    return runProgram(words);
  }
};

const std::string kHalfHour = "20:48 unplugged\n20:49 66.6\n21:00 66.2\n21:10 65.9\n21:19 65.6\n";

TEST(LearnCommand, TellsTheMorningBeforeAndWithReadingsAndTheCautions) {
  const NightRead night(kHalfHour);
  const Ran ran = night.learn({"--rig", "b"});
  EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
  const std::string said = squeezed(ran.output);
  EXPECT_THAT(said, HasSubstr("Beforeanyreading:inthemorningabout"));
  EXPECT_THAT(said, HasSubstr("Withyourreadings:inthemorningabout"));
  EXPECT_THAT(said, HasSubstr("Nottoldbythesereadings:"));
  EXPECT_THAT(said, HasSubstr("Onemorelookat"));
  EXPECT_THAT(said, HasSubstr("time:column1,bytheclock"));
  EXPECT_THAT(said, HasSubstr("Takecare"));
}

TEST(LearnCommand, HasTheSameForProgramsAndSpreadsheets) {
  const NightRead night(kHalfHour + "06:30 49.4\n");
  const Ran ran = night.learn({"--rig", "b", "--json"});
  ASSERT_EQ(ran.exitCode, 0) << ran.complaint;
  const json learned = json::parse(ran.output);
  EXPECT_EQ(learned["format"]["name"], "heat-ledger-learned");
  EXPECT_EQ(learned["rig"], "b");
  EXPECT_EQ(learned["readings"].size(), 5u);
  EXPECT_EQ(learned["readings"][0]["line"], 2);
  EXPECT_GT(learned["unknowns"]["closed_losses"]["after"]["low"], 1.0);
  EXPECT_EQ(learned["unknowns"]["closed_losses"]["learned"], true);
  EXPECT_EQ(learned["unknowns"]["power"]["learned"], false);
  const auto width = [&](const char* day) {
    const json& morning = learned[day]["morning"];
    return morning["high_C"].get<double>() - morning["low_C"].get<double>();
  };
  EXPECT_LT(width("day_after"), 0.5 * width("day_before"));
  EXPECT_FALSE(learned["cautions"].empty());
  EXPECT_THAT(night.learn({"--rig", "b", "--csv"}).output, HasSubstr("readings"));
}

TEST(LearnCommand, NamesAllThatIsWrongAtOnce) {
  const NightRead night("20:49 66.6\nlater 66.2\n21:10 106.5\n21:05 65.6\n");
  const Ran ran = night.learn();
  EXPECT_EQ(ran.exitCode, 2);
  EXPECT_EQ(ran.output, "");
  const std::string said = squeezed(ran.complaint);
  EXPECT_THAT(said, HasSubstr("--rigthesereadingsareofonerig;sayofwhich:aorb."));
  for (const char* line : {"night.csv:2", "night.csv:3"}) EXPECT_THAT(said, HasSubstr(line));
  EXPECT_EQ(night.learn({"--rig", "b", "--leave-out"}).exitCode, 0);
  const Ran asJson = night.learn({"--json"});
  EXPECT_EQ(asJson.exitCode, 2);
  EXPECT_GE(json::parse(asJson.output)["problems"].size(), 3u);
}

TEST(LearnCommand, SaysPlainlyWhereReadingsTellNothing) {
  const NightRead night("20:48 66.6\n");
  EXPECT_EQ(night.learn({"--rig", "a"}).exitCode, 0);
  const NightRead none("# nothing yet\n");
  EXPECT_EQ(none.learn({"--rig", "a"}).exitCode, 2);
  EXPECT_EQ(runProgram({"learn", night.plan}).exitCode, 2);
  EXPECT_EQ(runProgram({"learn", night.plan, "--rig", "a", "--readings", "nowhere.csv"}).exitCode,
            1);
}

TEST(LearnCommand, KeepsWhatItLearnedInThePlanOnceAndCanBeUndone) {
  const NightRead night(kHalfHour + "06:30 49.4\n");
  const std::string before = test_support::contents(night.plan);
  const Ran first = night.learn({"--rig", "b", "--keep"});
  ASSERT_EQ(first.exitCode, 0) << first.complaint;
  EXPECT_THAT(squeezed(first.output), HasSubstr("Keptin" + squeezed(night.plan) + ":whatitloses"));
  const json kept = json::parse(test_support::contents(night.plan));
  EXPECT_GT(kept["rigs"][1]["loss_factor"], 1.0);
  EXPECT_THAT(kept["rigs"][1]["measured"]["readings"], HasSubstr("night.csv, 6 lines"));
  EXPECT_FALSE(kept["rigs"][0].contains("loss_factor"));
  EXPECT_EQ(test_support::contents(night.plan + "~"), before);
  // Now the plan expects such a night, and the same readings do not count twice.
  const Ran again = night.learn({"--rig", "b", "--keep"});
  EXPECT_EQ(again.exitCode, 2);
  EXPECT_THAT(squeezed(again.complaint), HasSubstr("intheplanalready"));
  EXPECT_EQ(json::parse(test_support::contents(night.plan)), kept);
}

TEST(LearnCommand, KeepsNothingThatWouldMakeThePlanWrong) {
  NightRead night(kHalfHour + "06:30 49.4\n");
  json full = json::parse(test_support::contents(night.plan));
  full["rigs"][1]["measured"] = {{"readings", std::string(1990, 'x')}};
  night.folder.write("night.json", full.dump());
  const std::string before = test_support::contents(night.plan);
  const Ran ran = night.learn({"--rig", "b", "--keep"});
  EXPECT_EQ(ran.exitCode, 2);
  EXPECT_EQ(ran.output, "");
  EXPECT_THAT(squeezed(ran.complaint), HasSubstr("/rigs/1/measured/readings"));
  EXPECT_EQ(test_support::contents(night.plan), before);
  EXPECT_EQ(night.learn({"--rig", "b", "--keep", "--json"}).exitCode, 2);
}

TEST(LearnCommand, KeepsNothingOfWhatIsOnlySupposed) {
  const NightRead night(kHalfHour);
  const std::string before = test_support::contents(night.plan);
  EXPECT_EQ(night.learn({"--rig", "b", "--keep", "--alone", "9 h"}).exitCode, 2);
  EXPECT_EQ(runProgram({"learn", "--readings", night.readings, "--keep"}).exitCode, 2);
  EXPECT_EQ(test_support::contents(night.plan), before);
}

}  // namespace
