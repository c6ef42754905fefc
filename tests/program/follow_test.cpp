// SPDX-License-Identifier: GPL-3.0-or-later
// A day that is followed: what is typed and logged, what is told, and that nothing typed is lost.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <chrono>
#include <csignal>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <string>
#include <thread>
#include <vector>

#include "tests/program/live_program.hpp"
#include "tests/program/run_program.hpp"

using nlohmann::json;
using test_support::contents;
using test_support::Folder;
using test_support::LiveProgram;
using test_support::Ran;
using test_support::runProgram;
using test_support::squeezed;
using testing::HasSubstr;
using testing::Not;

namespace {

const std::string kEvening = "20:48 unplugged\n20:49 66.6\n21:00 66.2\n21:10 65.9\n21:19 65.6\n";

// A plan of a night, and a file of readings beside it, which need not be there.
struct NightFollowed {
  Folder folder;
  std::string plan = folder.file("night.json");
  std::string readings = folder.file("night.csv");

  explicit NightFollowed(const std::string& text = kEvening) {
    EXPECT_EQ(runProgram({"new", plan, "--like", "night-unplugged"}).exitCode, 0);
    if (!text.empty()) folder.write("night.csv", text);
  }
  std::vector<std::string> words(const std::string& now, std::vector<std::string> more) const {
    std::vector<std::string> all{"follow", plan, "--readings", readings,
                                 "--rig",  "b",  "--now",      now};
    all.insert(all.end(), more.begin(), more.end());
    return all;
  }
  Ran once(const std::string& now, std::vector<std::string> more = {}) const {
    more.emplace_back("--once");
    return runProgram(words(now, std::move(more)));
  }
  void log(const std::string& text) const {
    std::ofstream(readings, std::ios::binary | std::ios::app) << text;
  }
};

TEST(FollowCommand, TellsOnceWhatWasReadWhatComesAndWhatToHeed) {
  const NightFollowed night;
  const Ran ran = night.once("21:20");
  EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
  const std::string said = squeezed(ran.output);
  EXPECT_THAT(said, HasSubstr("21:20,(b)Inajacket"));
  EXPECT_THAT(said, HasSubstr("Readlast,at21:19:65.6°C,asexpected"));
  EXPECT_THAT(said, HasSubstr("At+1d06:48:Liftthegrain,plugin,fullpower"));
  EXPECT_THAT(said, HasSubstr("Themashthenhasabout"));
  EXPECT_THAT(said, HasSubstr("(8of10suchdays):Itrolls"));
  EXPECT_THAT(said, HasSubstr("Themashfallsbelow57°C"));
  EXPECT_THAT(said, HasSubstr("Takecare"));
  EXPECT_THAT(said, Not(HasSubstr("Bare")));  // of another rig
  EXPECT_LT(said.find("Liftthegrain"), said.find("Itrolls"));
  // What it costs to be wrong is told as learn tells it.
  EXPECT_EQ(night.once("25:99").exitCode, 2);
  EXPECT_EQ(contents(night.readings), kEvening);
}

TEST(FollowCommand, IsAsLearnWhereSomethingIsWrong) {
  const NightFollowed night(kEvening + "21:25 106.5\nlater 65.0\n");
  const Ran ran = night.once("21:30");
  EXPECT_EQ(ran.exitCode, 2);
  EXPECT_EQ(ran.output, "");
  for (const char* line : {"night.csv:6", "night.csv:7"})
    EXPECT_THAT(squeezed(ran.complaint), HasSubstr(line));
  EXPECT_EQ(runProgram(night.words("21:30", {})).exitCode, 2);  // to be watched, likewise
  const Ran without = night.once("21:30", {"--leave-out"});
  EXPECT_EQ(without.exitCode, 0);
  EXPECT_THAT(squeezed(without.complaint), HasSubstr("night.csv:6"));
  EXPECT_THAT(squeezed(without.output), HasSubstr("65.6°C"));

  EXPECT_EQ(runProgram({"follow", night.plan, "--once"}).exitCode, 2);
  EXPECT_EQ(runProgram({"follow", night.plan, "--readings", "-"}).exitCode, 2);
  EXPECT_EQ(runProgram({"follow", night.plan, "--readings", night.plan, "--rig", "b"}).exitCode, 2);
  EXPECT_EQ(runProgram({"learn", night.plan, "--readings", night.readings, "--once"}).exitCode, 2);
  EXPECT_EQ(runProgram({"follow", night.plan, "--readings", "nowhere.csv", "--rig", "a", "--once"})
                .exitCode,
            1);
  const Ran noRig = runProgram({"follow", night.plan, "--readings", night.readings, "--json"});
  EXPECT_EQ(noRig.exitCode, 2);
  EXPECT_GE(json::parse(noRig.output)["problems"].size(), 3u);
}

TEST(FollowCommand, HasOneLineOfJsonForPrograms) {
  const NightFollowed night;
  const Ran ran = night.once("21:20", {"--json"});
  ASSERT_EQ(ran.exitCode, 0) << ran.complaint;
  EXPECT_EQ(ran.output.find('\n'), ran.output.size() - 1);
  const json told = json::parse(ran.output);
  EXPECT_EQ(told["format"]["name"], "heat-ledger-followed");
  EXPECT_EQ(told["rig"], "b");
  EXPECT_NEAR(told["last"]["read_C"].get<double>(), 65.6, 1e-9);
  EXPECT_EQ(told["last"]["verdict"], "as expected");
  EXPECT_EQ(told["next"][0]["begins"], "heating to boil");
  EXPECT_NEAR(told["next"][0]["clock_middle_s"].get<double>(), (30.0 * 60.0 + 48.0) * 60.0, 1.0);
  EXPECT_EQ(told["alarms"][0]["code"], "mash_below_57_C");
  EXPECT_FALSE(told["cautions"].empty());
}

TEST(FollowCommand, SpeaksGerman) {
  const NightFollowed night;
  const std::string said = squeezed(night.once("21:20", {"--language", "de"}).output);
  EXPECT_THAT(said, HasSubstr("Waskommt"));
  EXPECT_THAT(said, HasSubstr("wieerwartet"));
  EXPECT_THAT(said, HasSubstr("Jetztzubeachten"));
  EXPECT_THAT(said, Not(HasSubstr("between")));
}

TEST(FollowCommand, WritesWhatIsTypedBeforeItAnswersAndSeesWhatOthersAppend) {
  const NightFollowed night;
  LiveProgram follow(night.words("21:30", {}));
  ASSERT_TRUE(follow.prints("Take care"));
  follow.type("65.3\n");
  ASSERT_TRUE(follow.prints("Take care", 2));
  EXPECT_EQ(contents(night.readings), kEvening + "21:30 65.3\n");
  EXPECT_THAT(squeezed(follow.output()), HasSubstr("Readlast,at21:30:65.3°C"));
  night.log("21:40 65.0\n");
  ASSERT_TRUE(follow.prints("Take care", 3));
  EXPECT_THAT(squeezed(follow.output()), HasSubstr("Readlast,at21:40:65.0°C"));
  follow.send(SIGINT);
  EXPECT_EQ(follow.exitCode(), 130);
}

TEST(FollowCommand, WritesNothingThatCannotBeRead) {
  const NightFollowed night;
  LiveProgram follow(night.words("21:30", {}));
  ASSERT_TRUE(follow.prints("Take care"));
  follow.type("lid of\n");
  ASSERT_TRUE(follow.prints("is not written"));
  EXPECT_THAT(squeezed(follow.complaint()), HasSubstr("\"lidof\"is"));
  follow.type("166.3\n");
  ASSERT_TRUE(follow.prints("166.3"));
  follow.type("20:30 66\n");
  ASSERT_TRUE(follow.prints("readings follow the clock"));
  EXPECT_EQ(contents(night.readings), kEvening);
  follow.send(SIGTERM);
  EXPECT_EQ(follow.exitCode(), 143);
}

TEST(FollowCommand, LosesNothingThatWasTypedWhereItIsKilled) {
  const NightFollowed night;
  for (int i = 0; i < 8; ++i) {
    LiveProgram follow(night.words("21:3" + std::to_string(i), {}));
    ASSERT_TRUE(follow.prints("Ctrl-C ends"));
    const std::string before = contents(night.readings);
    follow.type("65.3\n");
    // On the disk, whatever else is being done.
    while (contents(night.readings) == before)
      std::this_thread::sleep_for(std::chrono::milliseconds(1));
    follow.send(SIGKILL);
    EXPECT_EQ(follow.exitCode(), 137);
    EXPECT_EQ(contents(night.readings), before + "21:3" + std::to_string(i) + " 65.3\n");
  }
}

TEST(FollowCommand, WaitsForAFileThatIsNotThereAndBeginsItWithWhatIsTyped) {
  const NightFollowed night("");
  LiveProgram follow(night.words("20:40", {}));
  ASSERT_TRUE(follow.prints("is not there yet"));
  ASSERT_TRUE(follow.prints("Nothing was read yet"));
  EXPECT_FALSE(std::filesystem::exists(night.readings));
  follow.type("unplugged\n");
  ASSERT_TRUE(follow.prints("Take care", 2));
  EXPECT_EQ(contents(night.readings), "20:40 unplugged\n");
  EXPECT_THAT(squeezed(follow.output()), HasSubstr("At+1d06:40:Liftthegrain"));
  // An editor puts another in its place.
  night.folder.write("other", "20:41 unplugged\n20:45 66.9\n");
  std::filesystem::rename(night.folder.file("other"), night.readings);
  ASSERT_TRUE(follow.prints("Take care", 3));
  EXPECT_THAT(squeezed(follow.output()), HasSubstr("66.9°C"));
}

TEST(FollowCommand, WaitsForTheRestOfALineAndTellsAWrongOneOnce) {
  const NightFollowed night;
  LiveProgram follow(night.words("21:30", {}));
  ASSERT_TRUE(follow.prints("Take care"));
  night.log("21:25 6");
  ASSERT_TRUE(follow.prints("has no end yet"));
  EXPECT_THAT(squeezed(follow.output()), Not(HasSubstr("Readlast,at21:25")));
  night.log("5.4\n");
  ASSERT_TRUE(follow.prints("21:25: 65.4"));
  night.log("21:26 nonsense\n");
  ASSERT_TRUE(follow.prints("night.csv:7"));
  night.log("21:27 65.3\n");
  ASSERT_TRUE(follow.prints("21:27: 65.3"));
  EXPECT_EQ(follow.complaint().find("night.csv:7"), follow.complaint().rfind("night.csv:7"));
  EXPECT_EQ(contents(night.readings), kEvening + "21:25 65.4\n21:26 nonsense\n21:27 65.3\n");
}

TEST(FollowCommand, GoesOnWhereNobodyTypesAnyMore) {
  const NightFollowed night;
  LiveProgram follow(night.words("21:30", {"--json"}));
  ASSERT_TRUE(follow.prints("\"cautions\""));
  follow.type("65.3");
  follow.endInput();
  ASSERT_TRUE(follow.prints("\"cautions\"", 2));
  night.log("21:41 65.0\n");
  ASSERT_TRUE(follow.prints("\"cautions\"", 3));
  const std::string all = follow.output();
  for (std::size_t begin = 0; begin < all.size(); begin = all.find('\n', begin) + 1)
    EXPECT_TRUE(json::accept(all.substr(begin, all.find('\n', begin) - begin)));
  EXPECT_EQ(contents(night.readings), kEvening + "21:30 65.3\n21:41 65.0\n");
  follow.send(SIGINT);
  EXPECT_EQ(follow.exitCode(), 130);
}

TEST(FollowCommand, MovesTheRestOfTheDayWithWhatHappened) {
  const NightFollowed night(kEvening + "07:30 heating\n");
  const json told = json::parse(night.once("07:31", {"--json"}).output);
  EXPECT_EQ(told["last"]["event"], "heating");
  EXPECT_EQ(told["next"][0]["begins"], "boil");
  EXPECT_GT(told["next"][0]["clock_low_s"].get<double>(), (31.0 * 60.0 + 45.0) * 60.0);
  EXPECT_EQ(told["alarms"][0]["code"], "late");
  EXPECT_THAT(told["alarms"][0]["text"].get<std::string>(), HasSubstr("Late by about 4"));
}

TEST(FollowCommand, TellsAReadingOfTheFuture) {
  const NightFollowed night;
  const json told = json::parse(night.once("21:08", {"--json"}).output);
  EXPECT_EQ(told["alarms"].back()["code"], "from_the_future");
  EXPECT_THAT(squeezed(night.once("21:18").output), Not(HasSubstr("aheadofthisclock")));
}

// As one answer; how long it takes is measured in tests/bench.
TEST(FollowCommand, TakesALongLog) {
  std::string log = "seconds,temp\n";
  for (int i = 0; i < 100000; ++i) {
    char row[32];
    std::snprintf(row, sizeof row, "%.1f,%.2f\n", 2880.0 + 0.3 * i, 66.8 - 0.0000333 * 3.0 * i);
    log += row;
  }
  const NightFollowed night(log);
  const Ran ran = night.once("05:10", {"--leave-out"});
  EXPECT_EQ(ran.exitCode, 0) << ran.complaint.substr(0, 2000);
}

}  // namespace
