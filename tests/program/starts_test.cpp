// SPDX-License-Identifier: GPL-3.0-or-later
// "heatledger new --like NAME": a plan of another scenario, in the units that were asked for.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <iterator>
#include <vector>

#include "tests/program/run_program.hpp"

namespace {

using test_support::contents;
using test_support::Folder;
using test_support::Ran;
using test_support::runProgram;
using testing::HasSubstr;
using testing::Not;

constexpr auto kStarts = {"120-or-240-volts", "hardly-boils", "large-batch",  "mountain-batch",
                          "night-unplugged",  "one-kettle",   "two-circuits", "two-voltages"};

TEST(Starts, AreWrittenAndAnsweredWithoutAComplaint) {
  const Folder folder;
  for (const std::string name : kStarts) {
    SCOPED_TRACE(name);
    const std::string file = folder.file(name + ".json");
    EXPECT_EQ(runProgram({"new", file, "--like", name}).exitCode, 0);
    EXPECT_THAT(runProgram({"check", file}).output, HasSubstr("no problems"));
    const Ran ran = runProgram({"answer", file});
    EXPECT_EQ(ran.exitCode, 0);
    EXPECT_EQ(ran.complaint, "");
    EXPECT_THAT(ran.output, HasSubstr("Take care"));
  }
}

TEST(Starts, AreWrittenInUsUnitsAndGiveTheSameDay) {
  const Folder folder;
  const std::string file = folder.file("us.json");
  ASSERT_EQ(runProgram({"new", file, "--like", "one-kettle", "--units", "US"}).exitCode, 0);
  EXPECT_THAT(contents(file), HasSubstr("\"6.6 gal\""));
  EXPECT_THAT(contents(file), HasSubstr("\"152.6 F\""));
  EXPECT_THAT(contents(file), Not(HasSubstr(" kg\"")));
  EXPECT_THAT(runProgram({"check", file}).output, HasSubstr("no problems; one rig."));
  // The example too; without --units it is as it is bundled.
  ASSERT_EQ(runProgram({"new", folder.file("us-example.json"), "--units", "us"}).exitCode, 0);
  EXPECT_THAT(contents(folder.file("us-example.json")), HasSubstr("\"6.08 gal\""));
  ASSERT_EQ(runProgram({"new", folder.file("example.json")}).exitCode, 0);
  EXPECT_THAT(contents(folder.file("example.json")), HasSubstr("\"23 L\""));
}

TEST(Starts, OfNoSuchNameOrUnitsWriteNothing) {
  const Folder folder;
  const std::string file = folder.file("plan.json");
  const Ran unknown = runProgram({"new", file, "--like", "two-kettles"});
  EXPECT_EQ(unknown.exitCode, 2);
  for (const char* name : kStarts) EXPECT_THAT(unknown.complaint, HasSubstr(name));
  EXPECT_EQ(runProgram({"new", file, "--units", "imperial"}).exitCode, 2);
  EXPECT_EQ(runProgram({"check", file}).exitCode, 1);  // no such file
}

TEST(Starts, MakeAPlanOfOnesOwnKettle) {
  const Folder folder;
  const std::string file = folder.file("kettle.json");
  ASSERT_EQ(runProgram({"new", file, "--kettle", "45 L", "--power", "2.2 kW", "--circuit", "16 A"})
                .exitCode,
            0);
  EXPECT_THAT(contents(file), HasSubstr("\"2.2 kW\""));
  EXPECT_THAT(contents(file), HasSubstr("\"0 m\""));
  EXPECT_THAT(runProgram({"check", file}).output, HasSubstr("no problems; one rig."));
  EXPECT_THAT(runProgram({"answer", file, "--brief"}).output,
              HasSubstr("9.57 A fits its 16 A circuit"));
  // Told at its option, and nothing is written.
  const std::string none = folder.file("none.json");
  const Ran small = runProgram({"new", none, "--kettle", "45 L", "--power", "22 W"});
  EXPECT_EQ(small.exitCode, 2);
  EXPECT_THAT(small.complaint, HasSubstr("--power"));
  EXPECT_THAT(small.complaint, HasSubstr("50 W"));
  const Ran full = runProgram({"new", none, "--kettle", "20 L", "--batch", "25 L"});
  EXPECT_EQ(full.exitCode, 2);
  EXPECT_THAT(full.complaint, HasSubstr("--batch"));
  EXPECT_EQ(runProgram({"check", none}).exitCode, 1);  // no such file
}

TEST(Program, AnswersAPlanOfOneRigOnEveryPageWithoutComparing) {
  const Folder folder;
  const std::string file = folder.file("plan.json");
  runProgram({"new", file, "--like", "one-kettle"});
  std::vector<const char*> commands(std::begin(test_support::kPages),
                                    std::end(test_support::kPages));
  commands.push_back("check");
  for (const char* command : commands) {
    for (const char* language : {"en", "de"}) {
      SCOPED_TRACE(std::string(command) + ' ' + language);
      const Ran ran = runProgram({command, file, "--language", language});
      EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
      for (const char* word : {"(a)", "slowest", "quickest", "ide by side", "langsamste"})
        EXPECT_THAT(ran.output, Not(HasSubstr(word)));
    }
  }
}

}  // namespace
