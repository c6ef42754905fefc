// SPDX-License-Identifier: GPL-3.0-or-later
// Whichever allocation fails, one or all from there on: the right answer or one sentence with exit
// code 1, never a crash, never half a file. And without threads everything comes to the same.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <functional>
#include <string>
#include <vector>

#include "tests/program/run_program.hpp"

namespace {

using test_support::contents;
using test_support::Folder;
using test_support::Ran;
using test_support::runProgram;
using testing::HasSubstr;

class FailingMemory : public testing::Test {
 protected:
  void SetUp() override {
    ASSERT_EQ(runProgram({"new", plan_, "--like", "one-kettle"}).exitCode, 0);
  }
  Ran withoutAllocation(const std::vector<std::string>& arguments, int n, bool on) const {
    std::filesystem::remove(note_);
    return runProgram(arguments, {.environment = {{"LD_PRELOAD", FAILING_CALLS},
                                                  {"FAIL_ALLOCATION", std::to_string(n)},
                                                  {"FAIL_ON", on ? "1" : "0"},
                                                  {"FAIL_NOTE", note_}}});
  }
  // Every one of the first, then about twenty to every doubling. How many there are.
  int survivesAll(
      const std::vector<std::string>& arguments,
      const std::function<void()>& afterwards = [] {}) const {
    const Ran right = runProgram(arguments);
    afterwards();
    int n = 1, all = 0;
    for (const bool on : {false, true}) {
      n = 1;
      for (; !testing::Test::HasFailure(); n += std::max(1, n / 25)) {
        SCOPED_TRACE("allocation " + std::to_string(n) + (on ? " and later" : ""));
        const Ran ran = withoutAllocation(arguments, n, on);
        if (ran.exitCode == right.exitCode) {
          EXPECT_EQ(ran.output, right.output);
          EXPECT_EQ(ran.complaint, right.complaint);
        } else {
          EXPECT_EQ(ran.exitCode, 1) << ran.complaint;
          EXPECT_EQ(ran.output, "");
          EXPECT_EQ(ran.complaint, "heatledger: there is not enough memory for it.\n");
        }
        afterwards();
        if (!std::filesystem::exists(note_)) break;
        ++all;
      }
    }
    RecordProperty("failures_" + arguments[0], all);
    return n;
  }

  const Folder folder_;
  const std::string plan_ = folder_.file("plan.json"), note_ = folder_.file("note");
};

TEST_F(FailingMemory, OfAnAnswerIsToldInOneSentence) {
  EXPECT_GT(survivesAll({"answer", plan_}), 2000);
}

TEST_F(FailingMemory, OfEveryFormAndQuestionIsToldInOneSentence) {
  EXPECT_GT(survivesAll({"circuit", plan_, "--csv", "--every-rule"}), 2000);
  EXPECT_GT(survivesAll({"answer", plan_, "--json"}), 2000);
}

TEST_F(FailingMemory, OfACheckIsToldInOneSentence) {
  EXPECT_GT(survivesAll({"check", plan_}), 2000);
  survivesAll({"check", folder_.write("broken.json", "{\"rigs\": [{\"from\": 5}], \"x\": 1}")});
}

TEST_F(FailingMemory, OfANewPlanLeavesAllOrNothing) {
  const std::string file = folder_.file("mine.json"), whole = contents(plan_);
  survivesAll({"new", file, "--like", "one-kettle"}, [&] {
    EXPECT_TRUE(!std::filesystem::exists(file) || contents(file) == whole);
    std::filesystem::remove(file);
    for (const auto& entry : std::filesystem::directory_iterator(folder_.file("")))
      EXPECT_NE(entry.path().extension(), ".draft");
  });
}

// Libraries that draw letters may end the program where it draws, never the file.
TEST_F(FailingMemory, OfAPictureLeavesTheOldOrTheNewOneWhole) {
  const std::string file = folder_.file("day.svg");
  for (int n = 1;; n += 1 + n / 2) {
    folder_.write("day.svg", "old");
    withoutAllocation({"picture", "how-long", plan_, "--to", file, "--force"}, n, false);
    const std::string now = contents(file);
    EXPECT_TRUE(now == "old" || now.ends_with("</svg>\n")) << n << now;
    if (!std::filesystem::exists(note_)) break;
  }
  EXPECT_NE(contents(file), "old");
}

// --- Threads.

TEST(FailingThreads, ChangeNothingAboutAnyAnswer) {
  const Folder folder;
  const std::string note = folder.file("note");
  const std::vector<std::pair<std::string, std::string>> noThreads{
      {"LD_PRELOAD", FAILING_CALLS}, {"FAIL_THREADS", "1"}, {"FAIL_NOTE", note}};
  const std::vector<std::vector<std::string>> commands{
      {"answer"}, {"answer", "--json"}, {"insulate"}, {"size"}, {"circuit", "--every-rule"}};
  for (const auto& command : commands) {
    const Ran alone = runProgram(command, {.environment = noThreads});
    EXPECT_EQ(contents(note), "pthread_create") << command[0];
    EXPECT_EQ(alone.exitCode, 0);
    EXPECT_EQ(alone.complaint, "");
    EXPECT_EQ(alone.output, runProgram(command).output);
  }
  const std::string file = folder.file("day.json");
  const std::vector<std::string> picture{"picture", "worth-jacket", "--to", file};
  ASSERT_EQ(runProgram(picture).exitCode, 0);
  const std::string right = contents(file);
  std::filesystem::remove(file);
  const Ran alone = runProgram(picture, {.environment = noThreads});
  EXPECT_EQ(alone.exitCode, 0) << alone.complaint;
  EXPECT_EQ(contents(file), right);
}

}  // namespace
