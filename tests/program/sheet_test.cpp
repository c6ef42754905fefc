// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet to brew by, asked of the built program.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstdlib>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "tests/program/run_program.hpp"

using test_support::contents;
using test_support::Folder;
using test_support::Ran;
using test_support::runProgram;
using test_support::squeezed;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

namespace {

class SheetCommand : public testing::Test {
 protected:
  // A night in one of two kettles, and one kettle alone.
  std::string start(const std::string& name) {
    const std::string file = folder_.file(name + ".json");
    EXPECT_EQ(runProgram({"new", file, "--like", name}).exitCode, 0);
    return file;
  }
  bool isXml(const std::string& file) {
    return std::system(("xmllint --noout '" + file + "'").c_str()) == 0;
  }
  Folder folder_;
};

TEST_F(SheetCommand, IsReadInATerminalAsIs) {
  const std::string plan = start("night-unplugged");
  const Ran ran = runProgram({"sheet", plan, "--rig", "a"});
  EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
  EXPECT_THAT(ran.output, StartsWith("A dark lager mashed overnight\n"));
  EXPECT_THAT(ran.output, HasSubstr("\n  20:49        [ ] Lid on, unplug; leave it alone for"));
  EXPECT_THAT(ran.output, HasSubstr("\n  Next day\n"));
  EXPECT_THAT(ran.output, HasSubstr("temperature ________"));
  EXPECT_THAT(squeezed(ran.output), HasSubstr("Havealicensedelectriciancheck"));
  EXPECT_EQ(runProgram({"sheet", plan, "--rig", "1"}).output, ran.output);
}

TEST_F(SheetCommand, AsksOfWhichRigItIs) {
  for (const std::vector<std::string>& words : std::vector<std::vector<std::string>>{
           {"sheet"}, {"sheet", "--to", folder_.file("day.html")}}) {
    const Ran ran = runProgram(words);
    EXPECT_EQ(ran.exitCode, 2);
    EXPECT_EQ(ran.output, "");
    EXPECT_THAT(squeezed(ran.complaint),
                HasSubstr(squeezed("a sheet is of one rig; say of which: a, b, c or d")));
  }
  EXPECT_EQ(runProgram({"sheet", start("one-kettle")}).exitCode, 0);
}

TEST_F(SheetCommand, RefusesWithExitCode2AndWritesNothing) {
  const std::string plan = start("one-kettle");
  for (const std::vector<std::string>& words :
       std::vector<std::vector<std::string>>{{"sheet", plan, "--to", folder_.file("day.pdf")},
                                             {"sheet", plan, "--to", folder_.file("day")},
                                             {"sheet", plan, "--to", ""},
                                             {"sheet", plan, "--rig", "b"},
                                             {"sheet", plan, "--json"},
                                             {"sheet", plan, "--csv"},
                                             {"sheet", plan, "--explain"},
                                             {"sheet", plan, "--over", "power"},
                                             {"sheet", plan, "--within", "45 min"},
                                             {"sheet", plan, "--to", plan},
                                             {"answer", plan, "--to", folder_.file("day.html")}}) {
    SCOPED_TRACE(testing::PrintToString(words));
    const Ran ran = runProgram(words);
    EXPECT_EQ(ran.exitCode, 2);
    EXPECT_NE(ran.complaint, "");
    EXPECT_EQ(ran.output, "");
  }
  EXPECT_EQ(runProgram({"sheet", folder_.file("none.json")}).exitCode, 1);
  EXPECT_EQ(runProgram({"sheet", plan, "--to", folder_.file("none/day.html")}).exitCode, 1);
}

TEST_F(SheetCommand, WritesAPageThatIsWellFormedAndReplacesOnlyItself) {
  const std::string plan = start("night-unplugged");
  const std::string file = folder_.file("day.html");
  const std::vector<std::string> words{"sheet", plan, "--rig", "b", "--to", file};
  for (int round = 0; round < 2; ++round) {
    const Ran ran = runProgram(words);
    EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
    EXPECT_EQ(ran.output, "Wrote " + file + ".\n");
  }
  EXPECT_TRUE(isXml(file));
  folder_.write("day.html", "<!DOCTYPE html><html>mine</html>");
  const Ran refused = runProgram(words);
  EXPECT_EQ(refused.exitCode, 2);
  EXPECT_THAT(squeezed(refused.complaint), HasSubstr("apagethatthisprogramdidnotwrite(HTML)"));
  EXPECT_THAT(contents(file), HasSubstr("mine"));
  std::vector<std::string> forced = words;
  forced.push_back("--force");
  EXPECT_EQ(runProgram(forced).exitCode, 0);
  EXPECT_THAT(contents(file), Not(HasSubstr("mine")));
}

TEST_F(SheetCommand, IsWellFormedWhateverAPlanIsCalled) {
  auto plan = nlohmann::ordered_json::parse(contents(start("one-kettle")));
  plan["title"] = "</title><script>alert(1)</script> & \"x\" \u202e 'y'";
  plan["rigs"][0]["name"] = "<b onclick='x'>\u200f";
  const std::string named = folder_.write("a<b>&.json", plan.dump());
  const std::string file = folder_.file("day.html");
  const Ran ran = runProgram(
      {"sheet", named, "--to", file, "--language", "de", "--units", "SI,F,gal", "--room", "16 C"});
  ASSERT_EQ(ran.exitCode, 0) << ran.complaint;
  EXPECT_TRUE(isXml(file));
  EXPECT_THAT(contents(file), Not(HasSubstr("<script")));
  EXPECT_THAT(contents(file), HasSubstr("a&lt;b&gt;&amp;.json, mit --room &quot;16&#160;C&quot;"));
  EXPECT_THAT(runProgram({"sheet", named}).output, Not(HasSubstr("\u202e")));
}

// Every figure at hand is one of the result's.
TEST_F(SheetCommand, TellsTheFiguresOfTheResult) {
  const std::string plan = start("one-kettle");
  const auto rig =
      nlohmann::json::parse(runProgram({"answer", plan, "--json"}).output)["rigs"][0]["day"];
  const std::string sheet = squeezed(runProgram({"sheet", plan}).output);
  const auto expect = [&](double number, int decimals, const std::string& after) {
    std::string shown = test_support::fixed(number, decimals);
    if (decimals == 1 && shown.ends_with(".0")) shown.resize(shown.size() - 2);
    EXPECT_THAT(sheet, HasSubstr(shown + after));
  };
  expect(rig["strike_C"], 1, "°C");
  expect(rig["stages"][1]["mixed_C"], 1, "°C");
  expect(rig["lifted_cold_L"], 1, "Lcold");
  expect(rig["pre_boil_gravity"], 3, "");
  expect(rig["result_hot_L"], 1, "Lhot");
}

TEST_F(SheetCommand, FitsNarrowTerminals) {
  const std::string plan = start("night-unplugged");
  for (const char* language : {"en", "de"}) {
    const Ran ran =
        runProgram({"sheet", plan, "--rig", "a", "--width", "40", "--language", language});
    EXPECT_EQ(ran.exitCode, 0);
    std::size_t begin = 0;
    for (std::size_t end = ran.output.find('\n'); end != std::string::npos;
         begin = end + 1, end = ran.output.find('\n', begin)) {
      std::size_t letters = 0;
      for (std::size_t at = begin; at < end; ++at)
        letters += (static_cast<unsigned char>(ran.output[at]) & 0xc0u) != 0x80u ? 1 : 0;
      EXPECT_LE(letters, 40U) << ran.output.substr(begin, end - begin);
    }
  }
}

}  // namespace
