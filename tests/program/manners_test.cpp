// SPDX-License-Identifier: GPL-3.0-or-later
// How the program behaves among others at a terminal.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/program/run_program.hpp"

namespace {

using test_support::Folder;
using test_support::Ran;
using test_support::runProgram;
using test_support::squeezed;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

TEST(Manners, AreSilentWhenAReaderHasReadEnough) {
  for (const char* command : {"answer", "list", "schema", "--help"}) {
    SCOPED_TRACE(command);
    const std::vector<std::string> words = std::string(command) == "list"
                                               ? std::vector<std::string>{"list", "materials"}
                                               : std::vector<std::string>{command};
    const Ran ran = runProgram(words, {.readerLeaves = true});
    EXPECT_EQ(ran.exitCode, 0);
    EXPECT_EQ(ran.complaint, "");
  }
}

TEST(Manners, TakeEverythingBehindTwoDashesForAName) {
  const Folder folder;
  const std::string file = folder.file("-plan.json");
  ASSERT_EQ(runProgram({"new", "--", file}).exitCode, 0);
  EXPECT_EQ(runProgram({"check", "--", file}).exitCode, 0);
  EXPECT_EQ(runProgram({"--", "check", file}).exitCode, 0);
  const Ran noOption = runProgram({"check", "--", "--json"});
  EXPECT_EQ(noOption.exitCode, 1);
  EXPECT_THAT(noOption.complaint, HasSubstr("\"--json\" is not there"));
}

TEST(Manners, GuessWhatWasMeant) {
  const std::pair<std::vector<std::string>, const char*> cases[] = {
      {{"answr"}, "perhaps \"answer\" was meant"},
      {{"insluate"}, "perhaps \"insulate\" was meant"},
      {{"hepl"}, "perhaps \"help\" was meant"},
      {{"answer", "--witdh", "80"}, "perhaps \"--width\" was meant"},
      {{"answer", "--jason"}, "perhaps \"--json\" was meant"},
      {{"answer", "--suply-voltage=208 V"}, "perhaps \"--supply-voltage\" was meant"}};
  for (const auto& [words, guess] : cases) {
    const Ran ran = runProgram(words);
    EXPECT_EQ(ran.exitCode, 2);
    EXPECT_THAT(squeezed(ran.complaint), HasSubstr(squeezed(guess)));
  }
  for (const char* word : {"xylophone", "%", ""})
    EXPECT_THAT(runProgram({word}).complaint, Not(HasSubstr("perhaps")));
}

TEST(Manners, ExplainAPageOnce) {
  const std::string said = squeezed(runProgram({"day", "--explain"}).output);
  const std::string heading = "Howthiswascomputed";
  const std::size_t first = said.find(heading);
  ASSERT_NE(first, std::string::npos);
  EXPECT_EQ(said.find(heading, first + 1), std::string::npos);
}

TEST(Manners, AnswerAtTheTerminalWhereThereIsNoDisplay) {
  const Folder folder;
  const std::string file = folder.file("my plan.json");
  ASSERT_EQ(runProgram({"new", file}).exitCode, 0);
  const Ran asked = runProgram({"answer", file});
  for (const std::vector<std::string>& words :
       std::vector<std::vector<std::string>>{{file}, {"--", file}}) {
    const Ran ran = runProgram(words, {.hasDisplay = false});
    EXPECT_EQ(ran.exitCode, 0);
    EXPECT_EQ(ran.output, asked.output);
    EXPECT_EQ(ran.complaint, "heatledger: no display was found; the answer stands here.\n");
  }
  const Ran gone = runProgram({folder.file("gone.json")}, {.hasDisplay = false});
  EXPECT_EQ(gone.exitCode, 1);
  EXPECT_THAT(gone.complaint, HasSubstr("is not there"));
}

// A variable that names a display is no display: left from a session that has ended, or another's.
TEST(Manners, AnswerInTheTerminalWhereTheDisplayDoesNotAnswer) {
  const Folder folder;
  const std::string file = folder.file("my plan.json");
  ASSERT_EQ(runProgram({"new", file}).exitCode, 0);
  using Variables = std::vector<std::pair<std::string, std::string>>;
  for (const Variables& dead : {Variables{{"DISPLAY", ":7731"}},
                                {{"DISPLAY", "no such display"}},
                                {{"WAYLAND_DISPLAY", "wayland-7731"}},
                                {{"DISPLAY", ":7731"}, {"WAYLAND_DISPLAY", "/nowhere/wayland-0"}},
                                {{"DISPLAY", ":7731"}, {"QT_QPA_PLATFORM", "xcb"}},
                                {{"DISPLAY", ":7731"}, {"QT_QPA_PLATFORM", "wayland;xcb"}}}) {
    SCOPED_TRACE(testing::PrintToString(dead));
    for (const std::vector<std::string>& words :
         std::vector<std::vector<std::string>>{{}, {file}, {folder.file("gone.json")}}) {
      const Ran without = runProgram(words, {.hasDisplay = false});
      const Ran ran = runProgram(words, {.hasDisplay = false, .environment = dead});
      EXPECT_EQ(ran.exitCode, without.exitCode);
      EXPECT_EQ(ran.output, without.output);
      EXPECT_EQ(ran.complaint, without.complaint);
    }
    // What needs no display draws all the same.
    if (dead.back().first == "QT_QPA_PLATFORM") continue;
    const Ran drawn = runProgram({"picture", "room", "--to", folder.file("room.svg")},
                                 {.hasDisplay = false, .environment = dead});
    EXPECT_EQ(drawn.exitCode, 0) << drawn.complaint;
  }
}

TEST(Manners, RefuseAWhatIfThatThePageDoesNotDependOn) {
  const std::vector<std::string> unused[] = {
      {"cost", "--within", "30 min"},      {"day", "--headspace", "5 %"},
      {"boil", "--boil-off", "9 %/h"},     {"room", "--alone", "3 h"},
      {"circuit", "--within", "30 min"},   {"night", "--headspace", "5 %"},
      {"insulate", "--boil-off", "9 %/h"}, {"size", "--alone", "3 h"},
      {"answer", "--alone", "3 h"}};
  for (const auto& words : unused) {
    SCOPED_TRACE(testing::PrintToString(words));
    const Ran ran = runProgram(words);
    EXPECT_EQ(ran.exitCode, 2);
    EXPECT_EQ(ran.output, "");
    EXPECT_THAT(ran.complaint, HasSubstr(words[1]));
    EXPECT_THAT(squeezed(ran.complaint), HasSubstr("doesnotdependonit"));
  }
}

// The other way round: what is accepted makes a difference, with the bundled example.
TEST(Manners, AcceptAWhatIfThatChangesThePage) {
  const std::vector<std::string> used[] = {{"size", "--within", "30 min"},
                                           {"size", "--headspace", "5 %"},
                                           {"size", "--boil-off", "9 %/h"},
                                           {"answer", "--within", "30 min"},
                                           {"night", "--alone", "3 h"},
                                           {"insulate", "--alone", "3 h"},
                                           {"answer", "--json", "--alone", "3 h"},
                                           {"cost", "--room", "5 C"},
                                           {"circuit", "--circuit", "40 A"},
                                           {"room", "--humidity", "70 %"},
                                           {"boil", "--altitude", "2 km"},
                                           {"day", "--water", "5 C"}};
  for (const auto& words : used) {
    SCOPED_TRACE(testing::PrintToString(words));
    const Ran changed = runProgram(words);
    EXPECT_EQ(changed.exitCode, 0) << changed.complaint;
    const std::vector<std::string> without(words.begin(), words.end() - 2);
    EXPECT_NE(changed.output, runProgram(without).output);
  }
}

// A plan that is left alone by itself: every page depends on how long.
TEST(Manners, AcceptTheNightOfAPlanThatHasOne) {
  const Folder folder;
  const std::string file = folder.file("plan.json");
  ASSERT_EQ(runProgram({"new", file}).exitCode, 0);
  auto plan = nlohmann::ordered_json::parse(test_support::contents(file));
  plan["batch"]["mash"] = {{"unplugged", {{"temperature", "67 C"}, {"time", "8 h"}}}};
  const std::string night = folder.write("night.json", plan.dump());
  const Ran checked = runProgram({"check", night});
  ASSERT_EQ(checked.exitCode, 0) << checked.complaint;
  const Ran ran = runProgram({"cost", night, "--alone", "3 h"});
  EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
  EXPECT_NE(ran.output, runProgram({"cost", night}).output);
}

TEST(Manners, ShowOneRigAloneOnEveryPage) {
  for (const char* page : test_support::kPages) {
    SCOPED_TRACE(page);
    const Ran ran = runProgram({page, "--rig", "2"});
    EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
    EXPECT_THAT(ran.output, HasSubstr("\n  (b) New element, kitchen"));
    for (const char* other : {"\n  (a) ", "\n  (c) ", "\n  (d) "})
      EXPECT_THAT(ran.output, Not(HasSubstr(other)));
    EXPECT_THAT(ran.output, Not(HasSubstr("(c)     (d)")));
    EXPECT_THAT(ran.output, Not(HasSubstr("\n  (a), (d): ")));
    EXPECT_THAT(ran.output, HasSubstr("Take care"));
    EXPECT_EQ(runProgram({page, "--rig", "b"}).output, ran.output);
    EXPECT_EQ(runProgram({page, "--rig", "(B)"}).output, ran.output);
    const std::string csv = runProgram({page, "--rig", "2", "--csv"}).output;
    EXPECT_THAT(csv, HasSubstr("New element"));
    EXPECT_THAT(csv, Not(HasSubstr("(c)")));
  }
}

TEST(Manners, RefuseARigThatIsNotThere) {
  for (const char* rig : {"0", "5", "e", "-1", "2x", "ab", "(", "()", "", "99999999999999999999"}) {
    SCOPED_TRACE(rig);
    const Ran ran = runProgram({"cost", std::string("--rig=") + rig});
    EXPECT_EQ(ran.exitCode, 2);
    EXPECT_THAT(squeezed(ran.complaint), HasSubstr(*rig ? "from1to4" : "needsavalue"));
  }
  for (const std::vector<std::string>& words :
       std::vector<std::vector<std::string>>{{"list", "rigs", "--rig", "1"},
                                             {"check", "plan.json", "--rig", "1"},
                                             {"report", "--to", "day.pdf", "--rig", "1"},
                                             {"cost", "--json", "--rig", "1"}}) {
    const Ran ran = runProgram(words);
    EXPECT_EQ(ran.exitCode, 2);
    EXPECT_THAT(ran.complaint, HasSubstr("--rig"));
  }
}

// After others went: two rigs of the four, each called as it was before.
TEST(Manners, KnowARigByItsLetterWhereverItStands) {
  const Folder folder;
  const std::string demo = folder.file("four.json");
  ASSERT_EQ(runProgram({"new", demo}).exitCode, 0);
  auto plan = nlohmann::ordered_json::parse(test_support::contents(demo));
  plan["rigs"] = {plan["rigs"][0], plan["rigs"][2]};
  const std::string name = plan["rigs"][1]["name"];
  plan["rigs"][1]["letter"] = "c";
  const std::string file = folder.write("two.json", plan.dump());
  const Ran both = runProgram({"boil", file});
  EXPECT_THAT(both.output, HasSubstr("\n  (c) " + name));
  EXPECT_THAT(both.output, Not(HasSubstr("(b)")));
  const Ran one = runProgram({"boil", file, "--rig", "c"});
  EXPECT_EQ(one.exitCode, 0) << one.complaint;
  EXPECT_THAT(one.output, HasSubstr("\n  (c) " + name));
  EXPECT_EQ(runProgram({"boil", file, "--rig", "2"}).output, one.output);
  EXPECT_THAT(runProgram({"boil", file, "--csv"}).output, HasSubstr("(c) " + name));
  const Ran none = runProgram({"boil", file, "--rig", "b"});
  EXPECT_EQ(none.exitCode, 2);
  EXPECT_THAT(squeezed(none.complaint), HasSubstr("aletterofthisplan'srigs(a,c)"));
}

// The system ends whoever opens a socket of the internet.
TEST(Manners, LeaveTheNetworkAlone) {
  const Folder folder;
  for (const std::vector<std::string>& words :
       std::vector<std::vector<std::string>>{{"answer"},
                                             {"circuit"},
                                             {"new", folder.file("plan.json")},
                                             {"picture", "room", "--to", folder.file("room.svg")},
                                             {"sheet", "--rig", "d"},
                                             {"sheet", "--rig", "d", "--to", folder.file("d.html")},
                                             {"report", "--to", folder.file("day.pdf")}}) {
    SCOPED_TRACE(testing::PrintToString(words));
    const Ran ran = runProgram(words, {.endsOnNetwork = true, .hasDisplay = false});
    EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
  }
}

TEST(Manners, SayARemarkAboutManyPlacesOnce) {
  const Folder folder;
  const std::string file = folder.file("plan.json");
  ASSERT_EQ(runProgram({"new", file}).exitCode, 0);
  auto plan = nlohmann::ordered_json::parse(test_support::contents(file));
  plan["batch"]["mash"]["rests"] = nlohmann::ordered_json::array();
  for (int i = 0; i < 12; ++i)
    plan["batch"]["mash"]["rests"].push_back({{"temperature", "66 C"}, {"time", "5 min"}});
  const Ran ran = runProgram({"check", folder.write("equal.json", plan.dump())});
  EXPECT_EQ(ran.exitCode, 0);
  EXPECT_THAT(ran.complaint, HasSubstr(": 1 remark\n"));
  EXPECT_THAT(ran.complaint, HasSubstr("/batch/mash/rests/1/temperature"));
  EXPECT_THAT(ran.complaint, HasSubstr("/batch/mash/rests/11/temperature"));
  const std::string once = squeezed(ran.complaint);
  const std::string sentence = "doesnotriseabove";
  EXPECT_NE(once.find(sentence), std::string::npos);
  EXPECT_EQ(once.find(sentence), once.rfind(sentence));
}

}  // namespace
