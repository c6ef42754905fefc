// SPDX-License-Identifier: GPL-3.0-or-later
// What it costs, what it does to the room, and which cautions go with it, from the built program.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/program/run_program.hpp"

namespace {

using test_support::Folder;
using test_support::Ran;
using test_support::runProgram;
using ::testing::AllOf;
using ::testing::EndsWith;
using ::testing::HasSubstr;
using ::testing::Not;
using Json = nlohmann::json;

// Two kettles that boil; `more` goes into the document's top level.
std::string planWith(const Json& more) {
  Json plan = Json::parse(R"({
    "format": {"name": "heat-ledger-plan", "version": 1},
    "batch": {"water": "30 L", "boil": "30 min"},
    "place": {"altitude": "120 m", "room": "20 C", "water": "12 C"},
    "day_starts": "17:00",
    "rigs": [{"name": "One", "from": "40 L steel kettle"},
             {"name": "Two", "from": "40 L steel kettle", "element": {"power": "2500 W"}}]
  })");
  plan.merge_patch(more);
  return plan.dump();
}

std::string oneLine(std::string text) {
  std::string line;
  for (const char c : text) {
    const char one = c == '\n' ? ' ' : c;
    if (one != ' ' || line.empty() || line.back() != ' ') line += one;
  }
  return line;
}

TEST(Cost, FindsTheCheapestStartInAWindowOverMidnight) {
  const Folder folder;
  const std::string plan = folder.write("plan.json", planWith(Json::parse(R"({"tariff": {
        "from": "Ontario ultra-low overnight 2024", "brew_from": "16:00", "brew_until": "06:00",
        "element_price": 40, "jacket_price": 30}})")));
  const Ran ran = runProgram({"cost", plan});
  EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
  EXPECT_THAT(oneLine(ran.output),
              AllOf(HasSubstr("Begun at 17:00"), HasSubstr("from 16:00 to 06:00 cheapest at 23:00"),
                    HasSubstr("Ontario ultra-low overnight 2024"), HasSubstr("(published)"),
                    HasSubstr("Its element in place of (a)'s")));
  const Json json = Json::parse(runProgram({"cost", plan, "--json"}).output);
  EXPECT_EQ(json["rigs"][0]["cheapest_start"]["at_s"], 23 * 3600.0);
  EXPECT_EQ(json["tariff"]["status"], "published");
  EXPECT_EQ(json["rigs"][1]["element_payback"]["in_place_of"], "One");
}

TEST(Insulate, TellsTheMoneySavedWhereTheHourDecides) {
  const Folder folder;
  const std::string plan = folder.write("plan.json", planWith(Json::parse(R"({
      "tariff": {"from": "Ontario time of use, winter 2024"},
      "jacket_to_compare": {"side": [{"material": "cork", "thickness": "20 mm"}]}})")));
  const Ran ran = runProgram({"insulate", plan, "--csv"});
  EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
  EXPECT_THAT(ran.output, HasSubstr("a jacket saves,CAD,0."));
}

TEST(Tariffs, AreListedWithSourceStatusAndWhatIsNotModelled) {
  const Ran ran = runProgram({"list", "tariffs"});
  EXPECT_THAT(oneLine(ran.output),
              AllOf(HasSubstr("Ontario time of use, winter 2024"), HasSubstr("As of 2024-11"),
                    HasSubstr("(published)"), HasSubstr("Not modelled: seasons")));
}

TEST(Cautions, EndWithTheElectricianInEveryForm) {
  for (const char* command : {"size", "circuit", "answer"}) {
    SCOPED_TRACE(command);
    for (const char* form : {"--csv", "--width=200"}) {
      const Ran ran = runProgram({command, form});
      const auto last = ran.output.rfind("For planning only: rules");
      ASSERT_NE(last, std::string::npos) << form;
      EXPECT_THAT(oneLine(ran.output.substr(last)), HasSubstr("licensed electrician"));
      EXPECT_LT(ran.output.size() - last, 400u) << "nothing comes after it";
    }
  }
  EXPECT_THAT(runProgram({"size"}).output, AllOf(HasSubstr("Dry firing"), HasSubstr("Head-space")));
}

TEST(Room, SaysThatNothingRisesWhereNothingRises) {
  const Folder folder;
  const std::string plan = folder.write("plan.json", planWith(Json::parse(R"({"place": {
      "humidity": "95 %", "air": {"volume": "1000 m3", "air_changes": 20}}})")));
  const std::string text = oneLine(runProgram({"room", plan}).output);
  EXPECT_THAT(text, HasSubstr("never gets moister than the 95 %"));
  EXPECT_THAT(text, Not(HasSubstr("rises from 95 % to 95 %")));
}

TEST(Room, SaysWhichPublishedAirflowsAreEnough) {
  const std::string text = oneLine(runProgram({"room"}).output);
  EXPECT_THAT(text, AllOf(HasSubstr("vented hood, on demand"), HasSubstr("Approved Document F"),
                          HasSubstr("too little for"), HasSubstr("; read]")));
}

}  // namespace
