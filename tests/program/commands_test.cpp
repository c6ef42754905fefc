// SPDX-License-Identifier: GPL-3.0-or-later
// What a person types, and what comes back.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <algorithm>
#include <cstdio>
#include <iterator>
#include <nlohmann/json.hpp>
#include <sstream>
#include <vector>

#include "tests/program/run_program.hpp"

using test_support::contents;
using test_support::Folder;
using test_support::Ran;
using test_support::runProgram;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

TEST(Program, SaysWhatToTypeFirstWhenNothingIsTyped) {
  const Ran ran = runProgram({});
  EXPECT_EQ(ran.exitCode, 0);
  EXPECT_THAT(ran.output, HasSubstr("heatledger answer"));
  EXPECT_EQ(ran.complaint, "");
}

TEST(Program, TellsItsVersion) {
  const Ran ran = runProgram({"--version"});
  EXPECT_EQ(ran.exitCode, 0);
  EXPECT_THAT(ran.output, StartsWith("heatledger "));
}

TEST(Program, ExplainsEveryCommandWithAnExample) {
  for (const char* command : {"answer", "day", "size", "insulate", "night", "boil", "cost", "check",
                              "new", "list", "schema"}) {
    SCOPED_TRACE(command);
    const Ran ran = runProgram({command, "--help"});
    EXPECT_EQ(ran.exitCode, 0);
    EXPECT_THAT(ran.output, HasSubstr("Examples"));
    EXPECT_THAT(ran.output, HasSubstr(std::string("heatledger ") + command));
  }
}

TEST(Program, AnswersFromTheBundledExampleAndSaysSo) {
  for (const char* command : {"answer", "day", "size", "insulate", "night", "boil", "cost"}) {
    SCOPED_TRACE(command);
    const Ran ran = runProgram({command});
    EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
    EXPECT_THAT(ran.output, HasSubstr("The bundled example"));
    EXPECT_THAT(ran.output, HasSubstr("Take care"));
    EXPECT_THAT(ran.output, Not(HasSubstr("\033")));
  }
}

// On the first screen stands how every rig fares; all of it is four screens at most.
TEST(Program, AnswersOfEveryRigOnTheFirstScreenAndInNinetyLines) {
  const Ran ran = runProgram({"answer", "--width", "80"});
  EXPECT_EQ(ran.exitCode, 0);
  EXPECT_LE(std::count(ran.output.begin(), ran.output.end(), '\n'), 90);
  std::istringstream lines(ran.output);
  std::string screen;
  std::string line;
  for (int k = 0; k < 24 && std::getline(lines, line); ++k) screen += line + '\n';
  for (const char* verdict :
       {"(a) Old element, kitchen: never rolls", "(b) New element, kitchen: on",
        "(c) New element, jacket and lid: rolls steadily",
        "(d) Old element, laundry: rolls strongly"})
    EXPECT_THAT(screen, HasSubstr(verdict));
}

// What other pages leave to it, so that they can be read.
TEST(Program, HasAPageOfAllThereIsToTakeCareOf) {
  const Ran ran = runProgram({"safety", "--width", "200"});
  EXPECT_EQ(ran.exitCode, 0);
  for (const char* part : {"botulism spores", "(NIOSH)", "trapped steam", "one time constant",
                           "Dry firing", "must be earthed", "ground-fault", "licensed electrician"})
    EXPECT_THAT(ran.output, HasSubstr(part));
  const std::string circuit = runProgram({"circuit", "--width", "200"}).output;
  EXPECT_THAT(circuit, Not(HasSubstr("botulism spores")));
  EXPECT_THAT(circuit, HasSubstr("\"heatledger safety\" tells "));
  EXPECT_EQ(runProgram({"safety", "--rig", "a"}).exitCode, 2);
}

TEST(Program, AnswersInBriefWithOneCaution) {
  const Ran ran = runProgram({"answer", "--brief", "--width", "200"});
  EXPECT_EQ(ran.exitCode, 0);
  EXPECT_EQ(std::count(ran.output.begin(), ran.output.end(), '\n'), 10) << ran.output;
  EXPECT_THAT(ran.output, HasSubstr("licensed electrician"));
  const Ran one = runProgram({"answer", "--brief", "--rig", "c"});
  EXPECT_THAT(one.output, HasSubstr("(c) "));
  EXPECT_THAT(one.output, Not(HasSubstr("(b) ")));
  const Folder folder;
  runProgram({"new", folder.file("night.json"), "--like", "night-unplugged"});
  EXPECT_THAT(runProgram({"answer", folder.file("night.json"), "--brief"}).output,
              HasSubstr("can sour and grow bacteria"));
}

TEST(Program, RefusesWhatItDoesNotKnowWithExitCode2) {
  for (const std::vector<std::string>& words :
       std::vector<std::vector<std::string>>{{"brew"},
                                             {"answer", "--colour"},
                                             {"answer", "--json", "--csv"},
                                             {"check"},
                                             {"list"},
                                             {"list", "beers"},
                                             {"schema", "--csv"},
                                             {"list", "rigs", "--room", "20 °C"},
                                             {"answer", "--units", "metric"},
                                             {"answer", "--width", "wide"},
                                             {"answer", "--units"}}) {
    SCOPED_TRACE(testing::PrintToString(words));
    const Ran ran = runProgram(words);
    EXPECT_EQ(ran.exitCode, 2);
    EXPECT_EQ(ran.output, "");
    EXPECT_NE(ran.complaint, "");
  }
}

TEST(Program, NamesEveryOptionThatIsWrong) {
  const Ran ran = runProgram({"size", "--within", "soon", "--room", "500 °C", "--units", "UK"});
  EXPECT_EQ(ran.exitCode, 2);
  for (const char* option : {"--within", "--room", "--units"}) {
    EXPECT_THAT(ran.complaint, HasSubstr(option));
  }
}

TEST(Program, CannotReadAPlanThatIsNotThere) {
  const Ran ran = runProgram({"answer", "/nowhere/plan.json"});
  EXPECT_EQ(ran.exitCode, 1);
  EXPECT_EQ(ran.output, "");
  EXPECT_THAT(ran.complaint, HasSubstr("/nowhere/plan.json"));
}

TEST(Program, ReportsAllProblemsOfADocumentWithTheirPlaces) {
  const Folder folder;
  ASSERT_EQ(runProgram({"new", folder.file("plan.json")}).exitCode, 0);
  auto plan = nlohmann::ordered_json::parse(contents(folder.file("plan.json")));
  plan["batch"]["boil"] = "soon";
  plan["place"]["room"] = 20;
  const std::string broken = folder.write("broken.json", plan.dump());
  for (const char* command : {"check", "answer"}) {
    const Ran ran = runProgram({command, broken});
    EXPECT_EQ(ran.exitCode, 2);
    EXPECT_EQ(ran.output, "");
    EXPECT_THAT(ran.complaint, HasSubstr("/batch/boil"));
    EXPECT_THAT(ran.complaint, HasSubstr("/place/room"));
    EXPECT_THAT(ran.complaint, HasSubstr("broken.json: 2 problems"));
  }
  for (const char* command : {"check", "answer", "day", "circuit", "room"}) {
    SCOPED_TRACE(command);
    const Ran ran = runProgram({command, broken, "--json"});
    EXPECT_EQ(ran.exitCode, 2);
    EXPECT_EQ(nlohmann::json::parse(ran.output)["problems"].size(), 2u);
    EXPECT_EQ(ran.complaint, "");
  }
  // The options' problems too.
  const Ran ran = runProgram({"answer", broken, "--json", "--within", "soon"});
  EXPECT_EQ(nlohmann::json::parse(ran.output)["problems"].size(), 3u);
}

// Qt is loaded by the half that draws alone: a start is to take no more than 10 ms.
TEST(Program, LoadsNoWindowSystemBeforeItDraws) {
  const auto libraries = [](const std::string& program) {
    std::string text;
    FILE* pipe = ::popen(("ldd '" + program + "'").c_str(), "r");
    if (!pipe) return text;
    char buffer[4096];
    while (const std::size_t n = std::fread(buffer, 1, sizeof buffer, pipe)) text.append(buffer, n);
    ::pclose(pipe);
    return text;
  };
  const std::string program = test_support::testedProgram();
  EXPECT_THAT(libraries(program), HasSubstr("libc.so"));
  for (const char* never : {"Qt6", "X11", "xcb", "wayland"})
    EXPECT_THAT(libraries(program), Not(HasSubstr(never)));
  EXPECT_THAT(libraries(program + "-desktop"), HasSubstr("Qt6Widgets"));
}

TEST(Program, KnowsHelpAsAWord) {
  const Ran general = runProgram({"help"});
  EXPECT_EQ(general.exitCode, 0);
  EXPECT_EQ(general.output, runProgram({"--help"}).output);
  const Ran day = runProgram({"help", "day"});
  EXPECT_EQ(day.exitCode, 0);
  EXPECT_EQ(day.output, runProgram({"day", "--help"}).output);
  const Ran unknown = runProgram({"help", "brew"});
  EXPECT_EQ(unknown.exitCode, 2);
  EXPECT_THAT(unknown.complaint, HasSubstr("\"brew\" is no command"));
}

namespace {

std::size_t widest(const std::string& text) {
  std::size_t most = 0;
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) {
    const auto characters = std::count_if(line.begin(), line.end(), [](char c) {
      return (static_cast<unsigned char>(c) & 0xc0) != 0x80;
    });
    most = std::max(most, static_cast<std::size_t>(characters));
  }
  return most;
}

}  // namespace

TEST(Program, FollowsTheWidthOfTheEnvironmentInPipesToo) {
  const Ran wide = runProgram({"answer"}, {.standardInput = {}, .outputTo = {}, .columns = "120"});
  EXPECT_GT(widest(wide.output), 80u);
  EXPECT_LE(widest(wide.output), 120u);
  const Ran narrow = runProgram({"answer"}, {.standardInput = {}, .outputTo = {}, .columns = "60"});
  EXPECT_LE(widest(narrow.output), 60u);
  // The option comes first, and nonsense is no wish.
  const Ran option = runProgram({"answer", "--width", "60"},
                                {.standardInput = {}, .outputTo = {}, .columns = "120"});
  EXPECT_EQ(option.output, narrow.output);
  const Ran nonsense =
      runProgram({"answer"}, {.standardInput = {}, .outputTo = {}, .columns = "x"});
  EXPECT_EQ(nonsense.output, runProgram({"answer"}).output);
}

TEST(Program, WrapsItsComplaints) {
  for (const std::vector<std::string>& words : std::vector<std::vector<std::string>>{
           {"answer", "my plan.json", "and another one", "--colour", "--csv", "--json"},
           {"answer", "/nowhere/at all/where a plan/might have been/plan.json"},
           {"list", "rigs", "--room", "20 °C", "--width", "60"}}) {
    SCOPED_TRACE(testing::PrintToString(words));
    const Ran ran = runProgram(words);
    EXPECT_NE(ran.exitCode, 0);
    EXPECT_LE(widest(ran.complaint), 80u) << ran.complaint;
  }
}

TEST(Insulate, SaysHowToNameAJacketWhereThereIsNone) {
  const Folder folder;
  ASSERT_EQ(runProgram({"new", folder.file("plan.json")}).exitCode, 0);
  auto plan = nlohmann::ordered_json::parse(contents(folder.file("plan.json")));
  plan.erase("jacket_to_compare");
  for (auto& rig : plan["rigs"]) rig.erase("jacket");
  const Ran ran = runProgram({"insulate", folder.write("bare.json", plan.dump())});
  EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
  EXPECT_THAT(ran.output, HasSubstr("\"jacket_to_compare\""));
  EXPECT_THAT(ran.output, Not(HasSubstr("What is compared")));
}

// 100 W under the same lid: strike is never reached, and what would help is told at every depth.
TEST(Boil, TellsWhatWouldHelpAKettleThatDoesNotReachStrike) {
  const Folder folder;
  ASSERT_EQ(runProgram({"new", folder.file("plan.json")}).exitCode, 0);
  auto plan = nlohmann::ordered_json::parse(contents(folder.file("plan.json")));
  plan["rigs"][1]["element"]["power"] = "100 W";
  const std::string weak = folder.write("weak.json", plan.dump());
  for (const char* command : {"answer", "boil"}) {
    SCOPED_TRACE(command);
    const Ran ran = runProgram({command, weak});
    EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
    if (command == std::string("answer")) {
      EXPECT_THAT(ran.output, HasSubstr("It would roll with "));
    } else {
      EXPECT_THAT(ran.output, HasSubstr("into the vessel is the least that makes it roll"));
      EXPECT_THAT(ran.output, HasSubstr("is the most a lid gives it"));
      EXPECT_THAT(ran.output, HasSubstr("with a jacket (side 13 mm"));
    }
    const auto json = nlohmann::json::parse(runProgram({command, weak, "--json"}).output);
    const auto& what = json["rigs"][1]["what_would_boil"];
    EXPECT_TRUE(what.contains("power_W")) << what;
    EXPECT_EQ(what["jacket_boils"], false);
    EXPECT_TRUE(what.contains("levels_off_with_jacket_C")) << what;
  }
}

TEST(Size, TellsShortUseFromLongInSentenceTableAndJson) {
  const Ran ran = runProgram({"size"});
  EXPECT_THAT(ran.output, testing::ContainsRegex("for short\\s+use\\s+only"));
  EXPECT_THAT(ran.output, HasSubstr("short use"));
  EXPECT_THAT(ran.output, HasSubstr("licensed electrician"));
  const auto json = nlohmann::json::parse(runProgram({"size", "--json"}).output);
  EXPECT_EQ(json["rigs"][0]["sizing"]["for_boil_off"]["circuit_carries_it"], "for short use only");
}

TEST(Program, SurvivesDocumentsThatAreNoPlans) {
  const Folder folder;
  for (const char* text : {"", "{", "[]", "null", "{}", "\xff\xfe", "{\"format\": 1}", "\033[2J"}) {
    SCOPED_TRACE(text);
    const Ran ran = runProgram({"answer", folder.write("plan.json", text)});
    EXPECT_EQ(ran.exitCode, 2);
    EXPECT_NE(ran.complaint, "");
    EXPECT_THAT(ran.complaint, Not(HasSubstr("\033")));
  }
}

// 2500 W at 120 V are 139 % of 15 A.
TEST(Program, ShowsAnOverloadInTheFirstLinesOfEveryPage) {
  const Folder folder;
  std::string plan = contents([&] {
    const std::string file = folder.file("plan.json");
    runProgram({"new", file});
    return file;
  }());
  const std::string modest = "\"power\": \"1650 W\"";
  ASSERT_NE(plan.find(modest), std::string::npos);
  plan.replace(plan.find(modest), modest.size(), "\"power\": \"2500 W\"");
  const std::string file = folder.write("overloaded.json", plan);
  std::vector<const char*> commands(std::begin(test_support::kPages),
                                    std::end(test_support::kPages));
  commands.push_back("check");
  for (const char* command : commands) {
    for (const char* language : {"en", "de"}) {
      SCOPED_TRACE(std::string(command) + ' ' + language);
      const Ran ran = runProgram({command, file, "--language", language});
      EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
      std::istringstream lines(ran.output);
      std::string first;
      std::string line;
      for (int i = 0; i < 14 && std::getline(lines, line); ++i) first += line + '\n';
      EXPECT_THAT(first, HasSubstr(language == std::string("de") ? "▲ Überlast: (b) New element"
                                                                 : "▲ Overload: (b) New element"));
      EXPECT_THAT(ran.output, Not(HasSubstr("no problems")));
    }
  }
}

TEST(Program, WritesAPlanToStartFromButNeverOverAnother) {
  const Folder folder;
  const std::string file = folder.file("my plan.json");
  EXPECT_EQ(runProgram({"new", file}).exitCode, 0);
  EXPECT_EQ(runProgram({"check", file}).exitCode, 0);
  const std::string before = contents(file);
  const Ran again = runProgram({"new", file});
  EXPECT_EQ(again.exitCode, 1);
  EXPECT_THAT(again.complaint, HasSubstr("is there already"));
  EXPECT_EQ(contents(file), before);
  EXPECT_EQ(runProgram({"new", folder.file("no/such/folder/plan.json")}).exitCode, 1);
}

TEST(Program, ReadsAPlanFromStandardInput) {
  const Folder folder;
  runProgram({"new", folder.file("plan.json")});
  const Ran piped = runProgram(
      {"boil", "-"},
      {.standardInput = contents(folder.file("plan.json")), .outputTo = {}, .readerLeaves = false});
  const Ran named = runProgram({"boil", folder.file("plan.json")});
  EXPECT_EQ(piped.exitCode, 0) << piped.complaint;
  EXPECT_EQ(piped.output, named.output);
}

TEST(Program, ListsTheCatalogueWithSources) {
  for (const char* subject : {"materials", "supplies", "rigs", "tariffs"}) {
    SCOPED_TRACE(subject);
    const Ran ran = runProgram({"list", subject});
    EXPECT_EQ(ran.exitCode, 0);
    EXPECT_GT(ran.output.size(), 200u);
    const Ran json = runProgram({"list", subject, "--json"});
    EXPECT_FALSE(nlohmann::json::parse(json.output).empty());
  }
}

TEST(Program, PrintsTheSchemaAsJson) {
  const Ran ran = runProgram({"schema"});
  EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
  EXPECT_TRUE(nlohmann::json::parse(ran.output, nullptr, false).is_object());
  EXPECT_EQ(runProgram({"schema", "plan"}).output, ran.output);
  const Ran rules = runProgram({"schema", "rules"});
  EXPECT_EQ(nlohmann::json::parse(rules.output, nullptr, false)["title"], "Heat Ledger rules");
  const Ran none = runProgram({"schema", "weather"});
  EXPECT_EQ(none.exitCode, 2);
  EXPECT_THAT(none.complaint, HasSubstr("plan, rules, tariff, catalogue or result is accepted"));
}

TEST(Program, SaysThatTheDiskIsFull) {
  const Ran ran =
      runProgram({"answer"}, {.standardInput = {}, .outputTo = "/dev/full", .readerLeaves = false});
  EXPECT_EQ(ran.exitCode, 1);
  EXPECT_THAT(ran.complaint, HasSubstr("could not be written"));
}

TEST(Language, IsTheOneThatIsAskedForElseTheEnvironments) {
  const Ran asked = runProgram({"day", "--language", "de"});
  EXPECT_EQ(asked.exitCode, 0) << asked.complaint;
  EXPECT_THAT(asked.output, HasSubstr("Wie lange dauert es?"));
  EXPECT_THAT(asked.output, HasSubstr("Vorsicht"));
  EXPECT_EQ(runProgram({"day"}, {.locale = "de_AT.UTF-8"}).output, asked.output);
  EXPECT_EQ(runProgram({"day", "--language", "en"}, {.locale = "de_AT.UTF-8"}).output,
            runProgram({"day"}).output);
}

TEST(Language, IsSpokenInProblemsToo) {
  const Folder folder;
  const std::string broken = folder.write("broken.json", "{}");
  const Ran ran = runProgram({"check", broken, "--language", "de"});
  EXPECT_EQ(ran.exitCode, 2);
  EXPECT_THAT(ran.complaint, HasSubstr("Probleme"));
  EXPECT_THAT(ran.complaint, Not(HasSubstr(" is ")));
  EXPECT_THAT(runProgram({"brew", "--language", "de"}).complaint, HasSubstr("ist kein Befehl"));
  EXPECT_THAT(runProgram({"help", "--language", "de"}).output, HasSubstr("Fragen zu einem Plan"));
}

// What programs read is the same for everybody.
TEST(Language, LeavesJsonAlone) {
  const Ran german = runProgram({"circuit", "--json", "--language", "de"});
  EXPECT_EQ(german.output, runProgram({"circuit", "--json"}).output);
}
