// SPDX-License-Identifier: GPL-3.0-or-later
// Processes that are killed while they save, at moments that a fixed seed chooses: never half a
// file, and the next save tidies up. HEATLEDGER_KILLS says how many of each; 100 without it.
#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <functional>
#include <random>
#include <string>

#include "rigs/documents/files.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "tests/program/run_program.hpp"

namespace {

namespace fs = std::filesystem;
using test_support::contents;
using test_support::Folder;

const std::string kOne = "{\"one\": \"" + std::string(120000, '1') + "\"}\n";
const std::string kTwo = "{\"two\": \"" + std::string(70000, '2') + "\"}\n";
bool isWhole(const std::string& text) { return text == kOne || text == kTwo; }

int kills() {
  const char* asked = std::getenv("HEATLEDGER_KILLS");
  return asked ? std::atoi(asked) : 100;
}

class KilledSaves : public testing::Test {
 protected:
  // A process that saves on and on, ended within some milliseconds of its first step.
  void killAmid(const std::function<void()>& save) {
    int ready[2];
    ASSERT_EQ(::pipe(ready), 0);
    const pid_t child = ::fork();
    if (child == 0) {
      static_cast<void>(::write(ready[1], "!", 1) == 1);
      for (;;) save();
    }
    char mark = 0;
    ASSERT_EQ(::read(ready[0], &mark, 1), 1);
    ::usleep(static_cast<useconds_t>(random_() % 4000));
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    ::close(ready[0]);
    ::close(ready[1]);
    ASSERT_TRUE(WIFSIGNALED(status)) << "the save ended by itself";
  }
  int drafts() const {
    int found = 0;
    for (const auto& entry : fs::directory_iterator(folder_.file("")))
      found += entry.path().extension() == ".draft" ? 1 : 0;
    return found;
  }

  const Folder folder_;
  const std::string plan_ = folder_.file("plan.json");
  std::mt19937 random_{20261128};
};

TEST_F(KilledSaves, OfAPlanLeaveItAndTheVersionBeforeWhole) {
  rigs::savePlan(plan_, kOne);
  rigs::savePlan(plan_, kTwo);
  int left = 0;
  for (int round = 0; round < kills(); ++round) {
    killAmid([&] {
      rigs::savePlan(plan_, kOne);
      rigs::savePlan(plan_, kTwo);
    });
    ASSERT_TRUE(isWhole(contents(plan_))) << round;
    ASSERT_TRUE(isWhole(contents(plan_ + '~'))) << round;
    left += drafts();
    rigs::saveText(folder_.file("next"), "another");
    ASSERT_EQ(drafts(), 0) << round;
  }
  // Else they were not killed where it matters.
  EXPECT_GT(left, kills() / 10);
}

TEST_F(KilledSaves, OfAPlanOfSeveralNamesLeaveItOrTheVersionBeforeWhole) {
  rigs::savePlan(plan_, kOne);
  fs::create_hard_link(plan_, folder_.file("other.json"));
  rigs::savePlan(plan_, kTwo);
  for (int round = 0; round < kills(); ++round) {
    killAmid([&] {
      rigs::savePlan(plan_, kOne);
      rigs::savePlan(plan_, kTwo);
    });
    ASSERT_TRUE(isWhole(contents(plan_)) || isWhole(contents(plan_ + '~'))) << round;
    // As a person would who found half a plan.
    if (!isWhole(contents(plan_))) rigs::saveText(plan_, contents(plan_ + '~'));
    rigs::savePlan(plan_, kOne);
    rigs::savePlan(plan_, kTwo);
    ASSERT_EQ(drafts(), 0) << round;
    ASSERT_EQ(fs::hard_link_count(plan_), 2U) << round;
  }
}

TEST_F(KilledSaves, OfANewFileLeaveAllOrNothing) {
  int there = 0;
  for (int round = 0; round < kills(); ++round) {
    fs::remove(plan_);
    killAmid([&] {
      if (rigs::createText(plan_, kOne)) fs::remove(plan_);
    });
    there += fs::exists(plan_) ? 1 : 0;
    ASSERT_TRUE(!fs::exists(plan_) || contents(plan_) == kOne) << round;
    rigs::saveText(folder_.file("next"), "another");
    ASSERT_EQ(drafts(), 0) << round;
  }
  EXPECT_LT(there, kills());
}

}  // namespace
