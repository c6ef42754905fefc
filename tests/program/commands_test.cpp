// SPDX-License-Identifier: GPL-3.0-or-later
// What a person types, and what comes back.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <nlohmann/json.hpp>

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
  for (const char* command :
       {"answer", "day", "size", "insulate", "boil", "cost", "check", "new", "list", "schema"}) {
    SCOPED_TRACE(command);
    const Ran ran = runProgram({command, "--help"});
    EXPECT_EQ(ran.exitCode, 0);
    EXPECT_THAT(ran.output, HasSubstr("Examples"));
    EXPECT_THAT(ran.output, HasSubstr(std::string("heatledger ") + command));
  }
}

TEST(Program, AnswersFromTheBundledExampleAndSaysSo) {
  for (const char* command : {"answer", "day", "size", "insulate", "boil", "cost"}) {
    SCOPED_TRACE(command);
    const Ran ran = runProgram({command});
    EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
    EXPECT_THAT(ran.output, HasSubstr("The bundled example"));
    EXPECT_THAT(ran.output, HasSubstr("Take care"));
    EXPECT_THAT(ran.output, Not(HasSubstr("\033")));
  }
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
  const Ran ran = runProgram({"check", broken, "--json"});
  EXPECT_EQ(ran.exitCode, 2);
  EXPECT_EQ(nlohmann::json::parse(ran.output)["problems"].size(), 2u);
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
  EXPECT_THAT(none.complaint, HasSubstr("plan, rules, tariff or catalogue is accepted"));
}

TEST(Program, SaysThatTheDiskIsFull) {
  const Ran ran =
      runProgram({"answer"}, {.standardInput = {}, .outputTo = "/dev/full", .readerLeaves = false});
  EXPECT_EQ(ran.exitCode, 1);
  EXPECT_THAT(ran.complaint, HasSubstr("could not be written"));
}

TEST(Program, EndsQuietlyEnoughWhenNobodyReads) {
  const Ran ran =
      runProgram({"answer"}, {.standardInput = {}, .outputTo = {}, .readerLeaves = true});
  EXPECT_EQ(ran.exitCode, 1);
  EXPECT_THAT(ran.complaint, HasSubstr("could not be written"));
}
