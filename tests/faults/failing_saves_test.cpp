// SPDX-License-Identifier: GPL-3.0-or-later
// Whichever call of a save fails, and whether the disk recovers or not: the old file or the new one
// is there, whole; success means that the new one is on the disk; a failure names the file.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>
#include <cerrno>
#include <filesystem>
#include <functional>
#include <set>

#include "rigs/documents/files.hpp"
#include "tests/program/run_program.hpp"

namespace {

namespace fs = std::filesystem;
using test_support::contents;
using test_support::Folder;
using test_support::Ran;
using test_support::runProgram;
using testing::HasSubstr;
using testing::Not;

constexpr std::array kErrors{ENOSPC, EIO, EDQUOT, EACCES};
constexpr fs::perms kPrivate = fs::perms::owner_read | fs::perms::owner_write;
// What puts bytes and names on the disk.
const std::set<std::string> kDurable{"write", "fsync", "ftruncate", "rename"};

struct Save {
  std::string name;                    // of the file in its folder
  std::vector<std::string> arguments;  // "FILE" and "NEW" stand for the paths of both
  std::string program = SAVE_DRIVER;
  bool replaces = true;
  bool severalNames = false;
  bool isLink = false;
  bool everyError = true;  // else they take turns, where a run takes long
  bool once = false;       // without the disk that stays broken
};

class FailingSaves : public testing::Test {
 protected:
  // The n-th call of it fails, and with `on` all that follow. False once no call failed.
  static bool survives(const Save& save, int n, int error, bool on) {
    SCOPED_TRACE(save.name + ": call " + std::to_string(n) + (on ? " and later, " : ", ") +
                 std::to_string(error));
    const Folder folder, elsewhere;
    const std::string file = folder.file(save.name);
    const std::string before = save.replaces ? "{\"the\": \"old one\"}\n" : "";
    if (save.isLink) fs::create_symlink("real.json", file);
    if (save.replaces) fs::permissions(folder.write(save.name, before), kPrivate);
    if (save.severalNames) fs::create_hard_link(file, elsewhere.file("other.json"));
    const std::string text = "{\"new\": \"" + std::string(9000, 'x') + "\"}\n";
    const Stage stage{file, elsewhere.write("new", text), elsewhere.file("note")};
    const Ran ran = started(save, stage, fs::path(file).parent_path(), n, error, on);
    const std::string call = contents(stage.note), now = contents(file);

    // Whoever holds the folder back from a look says nothing about the contents.
    const std::string want = save.program == SAVE_DRIVER ? text : now;
    if (ran.exitCode == 0) {
      EXPECT_EQ(now, want) << call;
      EXPECT_NE(now, before) << call;
      // A folder that may not be opened cannot be forced out.
      EXPECT_TRUE(!kDurable.contains(call) || error == EACCES) << call;
    } else {
      EXPECT_EQ(ran.exitCode, 1) << call << ran.complaint;
      EXPECT_THAT(test_support::squeezed(ran.complaint),
                  testing::AnyOf(HasSubstr(save.name), HasSubstr("real.json")))
          << call;
      EXPECT_THAT(ran.complaint, Not(HasSubstr("File exists"))) << call;
      if (save.severalNames)
        EXPECT_TRUE(now == before || contents(file + '~') == before) << call;
      else
        EXPECT_TRUE(now == before || now == want) << call << '\n' << now;
    }
    EXPECT_TRUE(!save.severalNames || fs::hard_link_count(file) == 2) << call;
    EXPECT_TRUE(!save.isLink || fs::is_symlink(file)) << call;
    EXPECT_TRUE(!save.replaces || fs::status(file).permissions() == kPrivate) << call;
    isTidyAfterTheNextSave(folder, save);
    return !call.empty();
  }

  // Of every error each call in turn, and then all that follow it. How many calls there are.
  static int survivesAll(const Save& save) {
    int most = 0, all = 0;
    for (const bool on : {false, true}) {
      if (on && save.once) break;
      for (const int error : kErrors) {
        int n = 1;
        const auto turn = [&] { return kErrors[static_cast<std::size_t>(n) % kErrors.size()]; };
        while (survives(save, n, save.everyError ? error : turn(), on) && n < 500) ++n;
        most = std::max(most, n - 1);
        all += n - 1;
        if (HasFailure() || !save.everyError) break;
      }
    }
    EXPECT_LT(most, 499);
    RecordProperty("failures_" + fs::path(save.name).extension().string().substr(1), all);
    return most;
  }

  const Folder folder_;

 private:
  struct Stage {
    std::string file, text, note;
  };
  static Ran started(const Save& save, const Stage& stage, const std::string& below, int n,
                     int error, bool on) {
    std::vector<std::string> arguments;
    for (const std::string& one : save.arguments)
      arguments.push_back(one == "FILE" ? stage.file : one == "NEW" ? stage.text : one);
    return runProgram(arguments, {.environment = {{"LD_PRELOAD", FAILING_CALLS},
                                                  {"FAIL_BELOW", below},
                                                  {"FAIL_CALL", std::to_string(n)},
                                                  {"FAIL_WITH", std::to_string(error)},
                                                  {"FAIL_ON", on ? "1" : "0"},
                                                  {"FAIL_NOTE", stage.note}},
                                  .program = save.program});
  }
  static void isTidyAfterTheNextSave(const Folder& folder, const Save& save) {
    rigs::saveText(folder.file("next"), "another");
    for (const auto& entry : fs::directory_iterator(folder.file(""))) {
      const std::string name = entry.path().filename().string();
      EXPECT_TRUE(name == "next" || name == save.name || name == save.name + '~' ||
                  (save.isLink && name.starts_with("real.json")))
          << name;
    }
  }
};

TEST_F(FailingSaves, OfAPlanLeaveTheOldOrTheNewOneWhole) {
  EXPECT_GT(survivesAll({.name = "plan.json", .arguments = {"plan", "FILE", "NEW"}}), 20);
}

TEST_F(FailingSaves, OfAPlanOfSeveralNamesLeaveItOrTheVersionBefore) {
  EXPECT_GT(survivesAll(
                {.name = "plan.json", .arguments = {"plan", "FILE", "NEW"}, .severalNames = true}),
            20);
}

TEST_F(FailingSaves, OfAPlanBehindALinkLeaveTheLinkToo) {
  EXPECT_GT(
      survivesAll({.name = "plan.json", .arguments = {"plan", "FILE", "NEW"}, .isLink = true}), 20);
}

TEST_F(FailingSaves, OfOtherTextsLeaveTheOldOrTheNewOneWhole) {
  EXPECT_GT(survivesAll({.name = "day.svg", .arguments = {"text", "FILE", "NEW"}}), 10);
}

TEST_F(FailingSaves, OfNewFilesLeaveAllOrNothing) {
  EXPECT_GT(
      survivesAll({.name = "mine.json", .arguments = {"new", "FILE", "NEW"}, .replaces = false}),
      5);
}

// --- The programs themselves.

TEST_F(FailingSaves, OfTheCommandNewLeaveAllOrNothing) {
  EXPECT_GT(survivesAll({.name = "mine.json",
                         .arguments = {"new", "FILE"},
                         .program = HEATLEDGER_PROGRAM,
                         .replaces = false}),
            5);
}

TEST_F(FailingSaves, OfPicturesSheetsAndReportsLeaveTheOldOrTheNewOneWhole) {
  const std::string plan = folder_.file("plan.json");
  ASSERT_EQ(runProgram({"new", plan, "--like", "one-kettle"}).exitCode, 0);
  EXPECT_GT(survivesAll({.name = "day.csv",
                         .arguments = {"picture", "how-far-cools", plan, "--to", "FILE", "--force"},
                         .program = HEATLEDGER_PROGRAM,
                         .everyError = false}),
            10);
  EXPECT_GT(survivesAll({.name = "day.html",
                         .arguments = {"sheet", plan, "--to", "FILE", "--force"},
                         .program = HEATLEDGER_PROGRAM,
                         .everyError = false}),
            10);
  EXPECT_GT(survivesAll({.name = "day.pdf",
                         .arguments = {"report", plan, "--to", "FILE", "--force"},
                         .program = HEATLEDGER_PROGRAM,
                         .everyError = false,
                         .once = true}),
            10);
}

}  // namespace
