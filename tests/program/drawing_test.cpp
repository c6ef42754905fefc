// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures and reports from the terminal, without a display.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <nlohmann/json.hpp>

#include "tests/program/run_program.hpp"

using test_support::contents;
using test_support::Folder;
using test_support::Ran;
using test_support::runProgram;
using testing::HasSubstr;
using testing::StartsWith;

namespace {

class Drawing : public testing::Test {
 protected:
  // As on a server: nothing to show a window on, and a person who writes decimal commas.
  void SetUp() override {
    ::unsetenv("DISPLAY");
    ::unsetenv("WAYLAND_DISPLAY");
    ::unsetenv("QT_QPA_PLATFORM");
    ::setenv("LC_ALL", "C.UTF-8", 1);
  }
  Folder folder_;
};

TEST_F(Drawing, WritesEveryQuestionInEveryFormat) {
  for (const std::string question :
       {"how-long", "where-heat", "boils-enough", "worth-jacket", "which-element", "circuit",
        "what-cost", "how-far-cools", "room"}) {
    const std::string file = folder_.file(question + ".svg");
    SCOPED_TRACE(file);
    const Ran ran = runProgram({"picture", question, "--to", file});
    EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
    EXPECT_THAT(ran.output, StartsWith("Wrote "));
    EXPECT_THAT(contents(file), HasSubstr("<svg"));
  }
  const std::pair<const char*, const char*> beginnings[] = {
      {"day.png", "\x89PNG"}, {"day.csv", "table,group,figure,unit,"}, {"day.json", "{"}};
  for (const auto& [name, beginning] : beginnings) {
    SCOPED_TRACE(name);
    const Ran ran = runProgram({"picture", "how-long", "--to", folder_.file(name)});
    EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
    EXPECT_THAT(contents(folder_.file(name)), StartsWith(beginning));
  }
}

TEST_F(Drawing, WritesTheNumbersThatTheTerminalPrints) {
  const std::string file = folder_.file("day.json");
  const Ran picture = runProgram({"picture", "how-long", "--to", file});
  const Ran terminal = runProgram({"answer", "--json"});

  ASSERT_EQ(picture.exitCode, 0) << picture.complaint;
  EXPECT_EQ(nlohmann::json::parse(contents(file))["result"],
            nlohmann::json::parse(terminal.output));
}

TEST_F(Drawing, FollowsWhatIfOptions) {
  const std::string file = folder_.file("day.json");
  const Ran picture = runProgram({"picture", "how-long", "--to", file, "--room", "8 C"});
  const Ran terminal = runProgram({"answer", "--json", "--room", "8 C"});

  ASSERT_EQ(picture.exitCode, 0) << picture.complaint;
  EXPECT_EQ(nlohmann::json::parse(contents(file))["result"],
            nlohmann::json::parse(terminal.output));
}

TEST_F(Drawing, WritesAReportInBothLanguages) {
  for (const char* language : {"en", "de"}) {
    const std::string file = folder_.file(std::string(language) + ".pdf");
    const Ran ran = runProgram({"report", "--language", language, "--to", file});
    EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
    EXPECT_THAT(contents(file), StartsWith("%PDF-"));
    EXPECT_THAT(contents(file), HasSubstr("%%EOF"));
  }
}

TEST_F(Drawing, RefusesWithExitCode2AndWritesNothing) {
  const std::string file = folder_.file("day.svg");
  for (const std::vector<std::string>& words : std::vector<std::vector<std::string>>{
           {"picture", "how-long"},
           {"picture", "--to", file},
           {"picture", "how-warm", "--to", file},
           {"picture", "how-long", "--to", folder_.file("day.bmp")},
           {"picture", "how-long", "--to", file, "--rig", "0"},
           {"picture", "how-long", "--to", file, "--rig", "5"},
           {"picture", "how-long", "--to", file, "--rig", "two"},
           {"picture", "worth-jacket", "--to", file, "--over", "night"},
           {"picture", "how-long", "--to", file, "--language", "tlh"},
           {"picture", "how-long", "--to", file, "--json"},
           {"report"},
           {"report", "--to", file},
           {"answer", "--to", file}}) {
    SCOPED_TRACE(testing::PrintToString(words));
    const Ran ran = runProgram(words);
    EXPECT_EQ(ran.exitCode, 2);
    EXPECT_THAT(ran.complaint,
                testing::AnyOf(StartsWith("heatledger: "), StartsWith("the command: ")));
    EXPECT_EQ(ran.output, "");
  }
  EXPECT_FALSE(std::filesystem::exists(file));
  EXPECT_FALSE(std::filesystem::exists(folder_.file("day.bmp")));
}

TEST_F(Drawing, SaysWhyAFileCannotBeWritten) {
  const Ran ran = runProgram({"picture", "how-long", "--to", folder_.file("none/day.svg")});
  EXPECT_EQ(ran.exitCode, 1);
  EXPECT_THAT(ran.complaint, HasSubstr("none/day.svg"));
}

TEST_F(Drawing, AgreesWithItsManPage) {
  const std::string page =
      contents(std::string(HEATLEDGER_SOURCE_DIR) + "/gui/packaging/heatledger.1.in");
  for (const std::string command :
       {"answer", "day", "size", "insulate", "boil", "cost", "circuit", "room", "picture", "report",
        "sheet", "check", "new", "list", "schema"}) {
    EXPECT_THAT(page, HasSubstr(".It Cm " + command)) << command;
    const std::string help = runProgram({command, "--help"}).output;
    for (std::size_t at = help.find("\n  --"); at != std::string::npos;
         at = help.find("\n  --", at + 1)) {
      const std::string option = help.substr(at + 5, help.find_first_of(" \n", at + 5) - at - 5);
      EXPECT_THAT(page, HasSubstr("Fl -" + option)) << command << " --" << option;
    }
  }
}

}  // namespace
