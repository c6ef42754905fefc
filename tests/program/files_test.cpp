// SPDX-License-Identifier: GPL-3.0-or-later
// What the program does to files, and what files cannot do to the program.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <filesystem>
#include <nlohmann/json.hpp>

#include "tests/program/run_program.hpp"

namespace {

namespace fs = std::filesystem;
using test_support::contents;
using test_support::Folder;
using test_support::Ran;
using test_support::runProgram;
using testing::HasSubstr;
using testing::Not;

class WrittenFiles : public testing::Test {
 protected:
  void SetUp() override { ASSERT_EQ(runProgram({"new", plan_}).exitCode, 0); }
  static Ran picture(const std::string& plan, const std::string& to,
                     std::vector<std::string> more = {}) {
    std::vector<std::string> words{"picture", "how-far-cools", plan, "--to", to};
    words.insert(words.end(), more.begin(), more.end());
    return runProgram(words);
  }

  Folder folder_;
  const std::string plan_ = folder_.file("plan.json");
};

TEST_F(WrittenFiles, NeverReplaceThePlanThatIsReadUnderAnyOfItsNames) {
  const std::string before = contents(plan_);
  fs::create_symlink("plan.json", folder_.file("link.json"));
  fs::create_hard_link(plan_, folder_.file("hard.json"));
  for (const char* to : {"plan.json", "link.json", "hard.json", "../" /* up and down again */}) {
    const std::string name =
        std::string(to) == "../"
            ? folder_.file("../" + fs::path(plan_).parent_path().filename().string() + "/plan.json")
            : folder_.file(to);
    for (const bool force : {false, true}) {
      SCOPED_TRACE(name + (force ? " --force" : ""));
      const Ran ran = picture(
          plan_, name, force ? std::vector<std::string>{"--force"} : std::vector<std::string>{});
      EXPECT_EQ(ran.exitCode, 2);
      EXPECT_EQ(ran.output, "");
      EXPECT_THAT(test_support::squeezed(ran.complaint), HasSubstr("theveryplan"));
      EXPECT_EQ(contents(plan_), before);
    }
  }
}

TEST_F(WrittenFiles, ReplaceWhatOthersWroteOnlyByForce) {
  const std::string other = folder_.file("other.json");
  ASSERT_EQ(runProgram({"new", other}).exitCode, 0);
  const std::pair<std::string, std::string> cases[] = {
      {other, "is a plan"},
      {folder_.write("notes.json", "{\"mine\": 1}"), "JSON document that this program did not"},
      {folder_.write("day.svg", "<svg>mine</svg>"), "this program did not draw"},
      {folder_.write("day.png", "\x89PNG\r\n\x1a\nmine"), "this program did not draw"},
      {folder_.write("day.csv", "date,price\n"), "a file that this program did not write"},
      {folder_.write("photo.PNG", "mine"), "a file that this program did not write"}};
  for (const auto& [file, what] : cases) {
    SCOPED_TRACE(file);
    const std::string before = contents(file);
    const Ran refused = picture(plan_, file);
    EXPECT_EQ(refused.exitCode, 2);
    EXPECT_EQ(refused.output, "");
    for (const std::string& part :
         {fs::path(file).filename().string(), what, std::string("--force")})
      EXPECT_THAT(test_support::squeezed(refused.complaint),
                  HasSubstr(test_support::squeezed(part)));
    EXPECT_EQ(contents(file), before);
    EXPECT_EQ(picture(plan_, file, {"--force"}).exitCode, 0);
    EXPECT_NE(contents(file), before);
  }
  const std::string pdf = folder_.write("day.pdf", "%PDF-1.7 mine");
  EXPECT_EQ(runProgram({"report", plan_, "--to", pdf}).exitCode, 2);
  EXPECT_EQ(contents(pdf), "%PDF-1.7 mine");
}

TEST_F(WrittenFiles, ReplaceThemselvesAndNothings) {
  for (const char* name : {"day.svg", "day.png", "day.csv", "day.json"}) {
    SCOPED_TRACE(name);
    const std::string file = folder_.write(name, "");
    for (int round = 0; round < 3; ++round) {
      const Ran ran = picture(plan_, file);
      EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
    }
  }
  for (int round = 0; round < 2; ++round) {
    const Ran ran = runProgram({"report", plan_, "--to", folder_.file("day.pdf")});
    EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
  }
}

// Of our own files the kind counts, too: a report is no picture.
TEST_F(WrittenFiles, DoNotReplaceOwnOnesOfAnotherKind) {
  const std::string csv = folder_.file("day.csv");
  ASSERT_EQ(picture(plan_, csv).exitCode, 0);
  fs::rename(csv, folder_.file("day.svg"));
  EXPECT_EQ(picture(plan_, folder_.file("day.svg")).exitCode, 2);
  const std::string result = folder_.write("result.json", runProgram({"day", "--json"}).output);
  EXPECT_EQ(picture(plan_, result).exitCode, 2);
}

TEST_F(WrittenFiles, DoNotReplaceThePlanOnStandardInputEither) {
  const std::string to = folder_.file("day.json");
  const Ran ran =
      runProgram({"picture", "room", "-", "--to", to}, {.standardInput = contents(plan_)});
  EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
}

TEST_F(WrittenFiles, OfKilledProgramsAreWholeOrNotThere) {
  const std::string file = folder_.file("mine.json");
  const Ran killed = runProgram({"new", file}, {.endsAfter = 200});
  ASSERT_GT(killed.exitCode, 128);
  EXPECT_FALSE(fs::exists(file));
  EXPECT_EQ(runProgram({"new", file}).exitCode, 0);
  EXPECT_EQ(contents(file), contents(plan_));
  // And nothing else is left.
  EXPECT_EQ(
      std::distance(fs::directory_iterator(fs::path(file).parent_path()), fs::directory_iterator()),
      2);
}

// --- What is read.

TEST_F(WrittenFiles, WithoutEndMeetTheLimitOfSize) {
  for (const char* device : {"/dev/zero", "/dev/urandom"}) {
    const Ran ran = runProgram({"check", device});
    EXPECT_EQ(ran.exitCode, 1);
    EXPECT_THAT(ran.complaint, HasSubstr("larger than 4096 KiB"));
  }
}

TEST_F(WrittenFiles, ThatAPlanNamesAreNotWaitedFor) {
  ASSERT_EQ(::mkfifo(folder_.file("pipe.json").c_str(), 0600), 0);
  fs::create_symlink("/dev/zero", folder_.file("zero.json"));
  for (const char* name : {"pipe.json", "zero.json"}) {
    for (const char* pointer : {"/place/rules", "/rigs/2/from"}) {
      auto plan = nlohmann::ordered_json::parse(contents(plan_));
      plan[nlohmann::ordered_json::json_pointer(pointer)] = name;
      const Ran ran = runProgram({"check", folder_.write("broken.json", plan.dump())});
      EXPECT_EQ(ran.exitCode, 2);
      EXPECT_THAT(ran.complaint, HasSubstr(pointer));
      EXPECT_THAT(ran.complaint, HasSubstr("is not a file"));
    }
  }
}

TEST_F(WrittenFiles, OfVeryLongNamesAreToldInShort) {
  for (const std::string& name : {std::string(5000, 'x'), std::string(5000, 'x') + ".json"}) {
    for (const char* command : {"check", "new"}) {
      const Ran ran = runProgram({command, name});
      EXPECT_EQ(ran.exitCode, 1);
      EXPECT_LT(ran.complaint.size(), 600U);
      EXPECT_THAT(ran.complaint, HasSubstr("…"));
    }
  }
  EXPECT_LT(runProgram({std::string(5000, 'x') + ".json", "more"}).complaint.size(), 900U);
}

}  // namespace
