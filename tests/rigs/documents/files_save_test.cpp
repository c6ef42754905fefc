// SPDX-License-Identifier: GPL-3.0-or-later
// What survives a save: the version before, and what a file is to others.
#include <fcntl.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/file.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <sys/xattr.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <filesystem>
#include <fstream>
#include <functional>
#include <string>
#include <vector>

#include "rigs/documents/files.hpp"
#include "rigs/plans/plan_writer.hpp"

namespace rigs {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;

class Saves : public testing::Test {
 protected:
  Saves() {
    std::string pattern = (fs::temp_directory_path() / "heatledger-XXXXXX").string();
    folder_ = ::mkdtemp(pattern.data());
  }
  ~Saves() override {
    std::error_code ignored;
    fs::remove_all(folder_, ignored);
  }
  fs::path at(const std::string& name) const { return folder_ / name; }
  fs::path written(const std::string& name, const std::string& text) const {
    std::ofstream(at(name), std::ios::binary) << text;
    return at(name);
  }
  std::vector<std::string> names() const {
    std::vector<std::string> all;
    for (const auto& entry : fs::directory_iterator(folder_))
      all.push_back(entry.path().filename().string());
    std::sort(all.begin(), all.end());
    return all;
  }
  // A process that is ended by the system in the middle of a save, as by a loss of power: what it
  // may write to a file ends after `bytes`.
  static void killedAfter(rlim_t bytes, const std::function<void()>& save) {
    const pid_t child = ::fork();
    if (child == 0) {
      const rlimit tight{.rlim_cur = bytes, .rlim_max = bytes};
      ::setrlimit(RLIMIT_FSIZE, &tight);
      const rlimit none{.rlim_cur = 0, .rlim_max = 0};
      ::setrlimit(RLIMIT_CORE, &none);
      std::signal(SIGXFSZ, SIG_DFL);
      save();
      ::_exit(0);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    ASSERT_TRUE(WIFSIGNALED(status)) << "the save ended by itself";
  }
  static struct stat factsOf(const fs::path& path) {
    struct stat facts {};
    ::stat(path.c_str(), &facts);
    return facts;
  }

  fs::path folder_;
};

std::string complaintOf(const std::function<void()>& action) {
  try {
    action();
  } catch (const FileError& error) {
    return error.what();
  }
  return "";
}

TEST_F(Saves, KeepTheVersionBeforeOfAPlanAndOnlyThatOne) {
  savePlan(at("plan.json"), "one");
  EXPECT_THAT(names(), testing::ElementsAre("plan.json"));
  savePlan(at("plan.json"), "two");
  savePlan(at("plan.json"), "three");
  EXPECT_THAT(names(), testing::ElementsAre("plan.json", "plan.json~"));
  EXPECT_EQ(readText(at("plan.json")), "three\n");
  EXPECT_EQ(readText(at("plan.json~")), "two\n");
}

TEST_F(Saves, KeepTheVersionBeforeWhenTheSameIsSavedAgain) {
  for (const char* text : {"one", "two", "two"}) savePlan(at("plan.json"), text);
  EXPECT_EQ(readText(at("plan.json~")), "one\n");
}

TEST_F(Saves, KeepTheVersionBeforeAsPrivateAsThePlan) {
  const fs::path path = written("plan.json", "one");
  ::chmod(path.c_str(), 0600);
  savePlan(path, "two");
  EXPECT_EQ(factsOf(at("plan.json~")).st_mode & 07777U, 0600U);
}

TEST_F(Saves, ChangeNothingWhenTheVersionBeforeCannotBeKept) {
  written("plan.json", "one");
  fs::create_directories(at("plan.json~") / "full");
  EXPECT_THAT(complaintOf([&] { savePlan(at("plan.json"), "two"); }), HasSubstr("plan.json~"));
  EXPECT_EQ(readText(at("plan.json")), "one");
}

TEST_F(Saves, KeepNoVersionBeforeOfPicturesAndCopies) {
  saveText(at("day.svg"), "one");
  saveText(at("day.svg"), "two");
  EXPECT_THAT(names(), testing::ElementsAre("day.svg"));
}

// --- Drafts of those that were ended.

TEST_F(Saves, ThatAreEndedLeaveTheOldPlanAndAreTidiedUpByTheNext) {
  written("plan.json", "the old plan");
  killedAfter(4096, [&] { savePlan(at("plan.json"), std::string(100000, 'x')); });
  EXPECT_EQ(readText(at("plan.json")), "the old plan");
  ASSERT_EQ(names().size(), 2U) << "there is a draft to tidy up";
  savePlan(at("plan.json"), "new");
  EXPECT_THAT(names(), testing::ElementsAre("plan.json", "plan.json~"));
}

TEST_F(Saves, LeaveDraftsOfTheLivingAlone) {
  const std::string mine = ".heatledger-" + std::to_string(::getpid()) + "-7.draft";
  written(mine, "being filled");
  // A process that is not to be seen from here, as in a container: its lock tells.
  written(".heatledger-999999999-0.draft", "being filled");
  const int held = ::open(at(".heatledger-999999999-0.draft").c_str(), O_RDONLY);
  ::flock(held, LOCK_EX);
  removeStaleDrafts(folder_);
  EXPECT_EQ(names().size(), 2U);
  ::close(held);
  removeStaleDrafts(folder_);
  EXPECT_THAT(names(), testing::ElementsAre(mine));
}

// The number of a process that is gone is another's one day.
TEST_F(Saves, TidyUpOldDraftsWhoseProcessNumberLives) {
  const fs::path draft = written(".heatledger-" + std::to_string(::getpid()) + "-0.draft", "");
  const timespec longAgo[2] = {{.tv_sec = 1000, .tv_nsec = 0}, {.tv_sec = 1000, .tv_nsec = 0}};
  ::utimensat(AT_FDCWD, draft.c_str(), longAgo, 0);
  removeStaleDrafts(folder_);
  EXPECT_TRUE(names().empty());
}

TEST_F(Saves, LeaveWhatOnlyLooksLikeADraftAlone) {
  for (const char* name :
       {".heatledger-.draft", ".heatledger-1.draft", ".heatledger-999999999-0.draft.txt",
        ".heatledger-999999999-.draft", ".heatledger--5-0.draft", ".heatledger-999999999-0x.draft",
        "heatledger-999999999-0.draft", ".heatledger-999999999999999-0.draft"})
    written(name, "somebody's");
  fs::create_directory(at(".heatledger-999999999-1.draft"));
  written("real", "somebody's");
  fs::create_symlink("real", at(".heatledger-999999999-2.draft"));
  const auto before = names();
  removeStaleDrafts(folder_);
  EXPECT_EQ(names(), before);
}

// --- New files.

TEST_F(Saves, MakeANewFileWithAllItsContentsOrNone) {
  killedAfter(100, [&] { createText(at("new.json"), newPlanText()); });
  EXPECT_FALSE(fs::exists(at("new.json")));
  EXPECT_TRUE(createText(at("new.json"), newPlanText()));
  EXPECT_THAT(names(), testing::ElementsAre("new.json"));
  EXPECT_EQ(readText(at("new.json")), newPlanText());
}

TEST_F(Saves, MakeNoNewFileOverAnotherNorOverALink) {
  written("there.json", "mine");
  fs::create_symlink("nowhere", at("link.json"));
  EXPECT_FALSE(createText(at("there.json"), "new"));
  EXPECT_FALSE(createText(at("link.json"), "new"));
  EXPECT_EQ(readText(at("there.json")), "mine");
  EXPECT_FALSE(fs::exists(at("nowhere")));
  EXPECT_EQ(names().size(), 2U);
}

// --- What a file is to others.

TEST_F(Saves, KeepAllNamesOfAFile) {
  written("plan.json", "the old and longer plan");
  fs::create_hard_link(at("plan.json"), at("other.json"));
  savePlan(at("plan.json"), "new");
  EXPECT_EQ(readText(at("other.json")), "new\n");
  EXPECT_EQ(factsOf(at("plan.json")).st_nlink, 2U);
  EXPECT_EQ(readText(at("plan.json~")), "the old and longer plan");
  savePlan(at("other.json"), "a plan that is longer again");
  EXPECT_EQ(readText(at("plan.json")), "a plan that is longer again\n");
  EXPECT_THAT(names(),
              testing::ElementsAre("other.json", "other.json~", "plan.json", "plan.json~"));
}

TEST_F(Saves, ThatAreEndedLeaveAFileOfSeveralNamesAsItWas) {
  written("plan.json", "the old plan");
  fs::create_hard_link(at("plan.json"), at("other.json"));
  killedAfter(4096, [&] { savePlan(at("plan.json"), std::string(100000, 'x')); });
  EXPECT_EQ(readText(at("other.json")), "the old plan");
}

TEST_F(Saves, KeepTheOwnerWhereTheyMay) {
  if (::geteuid() != 0) GTEST_SKIP() << "only root can give a file away";
  const fs::path path = written("plan.json", "old");
  ASSERT_EQ(::chown(path.c_str(), 1234, 5678), 0);
  savePlan(path, "new");
  EXPECT_EQ(readText(path), "new\n");
  for (const char* name : {"plan.json", "plan.json~"}) {
    EXPECT_EQ(factsOf(at(name)).st_uid, 1234U) << name;
    EXPECT_EQ(factsOf(at(name)).st_gid, 5678U) << name;
  }
}

// Someone who may write a file that is another's: it stays that other's.
TEST_F(Saves, KeepTheOwnerOfAFileThatIsSharedWithUs) {
  if (::geteuid() != 0) GTEST_SKIP() << "only root can be two people";
  const fs::path path = written("plan.json", "old");
  ASSERT_EQ(::chown(path.c_str(), 1234, 1234), 0);
  ::chmod(path.c_str(), 0666);
  ::chmod(folder_.c_str(), 0777);
  const pid_t child = ::fork();
  if (child == 0) {
    if (::setgid(4321) != 0 || ::setuid(4321) != 0) ::_exit(2);
    ::_exit(complaintOf([&] { savePlan(path, "new"); }).empty() ? 0 : 1);
  }
  int status = 0;
  ::waitpid(child, &status, 0);
  ASSERT_TRUE(WIFEXITED(status));
  EXPECT_EQ(WEXITSTATUS(status), 0);
  EXPECT_EQ(readText(path), "new\n");
  EXPECT_EQ(factsOf(path).st_uid, 1234U);
  EXPECT_EQ(factsOf(at("plan.json~")).st_uid, 4321U);
  EXPECT_EQ(factsOf(at("plan.json~")).st_mode & 0077U, 0U);
}

TEST_F(Saves, KeepWhatElseIsNotedAboutAFile) {
  const fs::path path = written("plan.json", "old");
  if (::setxattr(path.c_str(), "user.note", "mine", 4, 0) != 0)
    GTEST_SKIP() << "this file system keeps no notes";
  savePlan(path, "new");
  EXPECT_EQ(readText(path), "new\n");
  char note[8] = {};
  EXPECT_EQ(::getxattr(path.c_str(), "user.note", note, sizeof note), 4);
  EXPECT_STREQ(note, "mine");
}

TEST_F(Saves, TakeNamesAsLongAsTheSystemDoes) {
  for (const std::string& name : {std::string(255, 'x'), std::string(253, 'x') + "ö"}) {
    ASSERT_EQ(name.size(), 255U);
    savePlan(at(name), "one");
    savePlan(at(name), "two");
    EXPECT_EQ(readText(at(name)), "two\n");
    EXPECT_EQ(readText(versionBefore(at(name))), "one\n");
    EXPECT_LE(versionBefore(at(name)).filename().string().size(), 255U);
  }
  EXPECT_TRUE(createText(at(std::string(255, 'n')), "new"));
}

}  // namespace
}  // namespace rigs
