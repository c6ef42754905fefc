// SPDX-License-Identifier: GPL-3.0-or-later
// What goes into the boil, as a person plans it: pages, sheet, JSON, and what is refused.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <string>

#include "tests/program/run_program.hpp"

namespace {

using test_support::Folder;
using test_support::Ran;
using test_support::runProgram;
using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::Not;
using Json = nlohmann::json;

// Honey late in the boil, and water to fill up with when the element is off.
std::string honeyAle(const std::string& honeyBeforeEnd) {
  Json plan = Json::parse(R"({
    "format": {"name": "heat-ledger-plan", "version": 1},
    "batch": {"wort": "22 L", "grain": {"mass": "5 kg"}, "boil": "60 min",
              "mash": {"rests": [{"temperature": "65 C", "time": "60 min"}]},
              "additions": [
                {"what": "honey", "mass": "1.2 kg", "extract": "80 %"},
                {"what": "brewing water", "water": "3 L", "temperature": "12 C",
                 "before_end": "0 min"}]},
    "place": {"altitude": "300 m", "room": "19 C", "water": "11 C"},
    "rigs": [{"name": "Bag kettle", "from": "40 L steel kettle"}]
  })");
  plan["batch"]["additions"][0]["before_end"] = honeyBeforeEnd;
  return plan.dump();
}

TEST(Additions, AreOnPageSheetAndInTheResult) {
  const Folder folder;
  const std::string plan = folder.write("honey.json", honeyAle("10 min"));
  const Ran page = runProgram({"boil", plan, "--width", "200"});
  ASSERT_EQ(page.exitCode, 0) << page.complaint;
  EXPECT_THAT(page.output, AllOf(HasSubstr("With 1.2 kg of honey, 10 min before the end"),
                                 HasSubstr("With 3 L of brewing water, when the boil ends"),
                                 HasSubstr("makes boiling wort foam up, boil over and splash")));
  const Json day = Json::parse(runProgram({"boil", plan, "--json"}).output)["rigs"][0]["day"];
  ASSERT_EQ(day["additions"].size(), 2U);
  EXPECT_EQ(day["outcome"], "done");
  // 99 C at 300 m, about; what goes in as it ends cools the wort and not the boil.
  EXPECT_NEAR(day["boil"]["temperature_C"].get<double>(), 99.2, 0.3);
  EXPECT_LT(day["additions"][1]["mixed_C"].get<double>(), 90.0);
  EXPECT_NEAR(day["result_cold_L"].get<double>(), 22.0, 1e-3);

  const std::string csv = runProgram({"boil", plan, "--csv"}).output;
  EXPECT_THAT(csv, AllOf(HasSubstr("wort right after it,°C,96"), HasSubstr("gravity then,,1.0")));

  // Filled up when the element is off, which is before it is chilled.
  const std::string sheet = runProgram({"sheet", plan, "--width", "200"}).output;
  const auto at = [&](const char* words) { return sheet.find(words); };
  EXPECT_LT(at("In goes 1.2 kg of honey"), at("Element off; unplug")) << sheet;
  EXPECT_LT(at("Element off; unplug"), at("In goes 3 L of brewing water")) << sheet;
  EXPECT_THAT(sheet, HasSubstr("slowly, and stir: it foams and splashes"));
}

// Less is boiled than is wanted, and cold water makes it up.
TEST(Additions, ThatCoolTheWortAreToldAsThat) {
  const Folder folder;
  Json plan = Json::parse(honeyAle("10 min"));
  plan["batch"]["pitching_temperature"] = "50 C";
  plan["batch"]["additions"][1]["water"] = "14 L";
  plan["batch"]["additions"][1]["temperature"] = "4 C";
  plan["batch"]["grain"]["mass"] = "2 kg";
  const std::string file = folder.write("part.json", plan.dump());
  const std::string chill = runProgram({"chill", file, "--width", "250"}).output;
  EXPECT_THAT(chill, HasSubstr("without chilling, by what goes in as the boil ends"));
  EXPECT_THAT(chill, Not(HasSubstr("less than 1 min")));
  EXPECT_THAT(runProgram({"sheet", file}).output, HasSubstr("Pitch"));
  plan["batch"].erase("pitching_temperature");
  const std::string safety =
      runProgram({"safety", folder.write("part2.json", plan.dump()), "--width", "250"}).output;
  EXPECT_THAT(safety, HasSubstr("leaves wort below 57 °C at once"));
  EXPECT_THAT(safety, HasSubstr("What goes in last leaves the wort at "));
}

TEST(Additions, MayBeAsHotAsBoilingByItsWords) {
  const Folder folder;
  Json plan = Json::parse(honeyAle("10 min"));
  plan["place"]["altitude"] = "0 m";
  plan["batch"]["additions"][1]["temperature"] = "100 C";
  EXPECT_EQ(runProgram({"boil", folder.write("hot.json", plan.dump())}).exitCode, 0);
}

TEST(Additions, BeforeTheBoilAreRefusedAndNothingIsWritten) {
  const Folder folder;
  const std::string plan = folder.write("honey.json", honeyAle("80 min"));
  const Ran ran = runProgram({"boil", plan, "--width", "200"});
  EXPECT_EQ(ran.exitCode, 2);
  EXPECT_EQ(ran.output, "");
  EXPECT_THAT(ran.complaint,
              AllOf(HasSubstr("/batch/additions/0/before_end"), HasSubstr("1 h 20 min"),
                    HasSubstr(R"("before_end": "10 min")")));
}

}  // namespace
