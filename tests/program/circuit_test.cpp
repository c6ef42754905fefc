// SPDX-License-Identifier: GPL-3.0-or-later
// Questions about circuit, room and tariff, as a person asks them.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/program/run_program.hpp"

namespace {

using test_support::runProgram;

TEST(CircuitCommand, NamesRuleEditionStatusAndElectrician) {
  const auto ran = runProgram({"circuit", "--region", "United States"});
  ASSERT_EQ(ran.exitCode, 0) << ran.complaint;
  for (const char* part : {"NEC (NFPA 70) 2023", "80 % of 15 A = 12 A", "fits only if",
                           "from memory,", "What would each reading allow"}) {
    EXPECT_NE(ran.output.find(part), std::string::npos) << part;
  }
  const std::size_t electrician = ran.output.rfind("licensed electrician");
  ASSERT_NE(electrician, std::string::npos);
  EXPECT_EQ(ran.output.find("\n  · ", electrician), std::string::npos) << "not the last caution";
}

TEST(CircuitCommand, ShowsBothCodesOfNorthAmericaUntilOneIsNamed) {
  const auto both = runProgram({"circuit"});
  EXPECT_NE(both.output.find("Canada, CEC"), std::string::npos);
  EXPECT_NE(both.output.find("United States, NEC"), std::string::npos);
  const auto one = runProgram({"circuit", "--region", "Canada"});
  EXPECT_EQ(one.output.find("United States, NEC"), std::string::npos);
}

TEST(CircuitCommand, RefusesForeignRegionsAndVoltages) {
  EXPECT_EQ(runProgram({"circuit", "--region", "Atlantis"}).exitCode, 2);
  EXPECT_EQ(runProgram({"circuit", "--region", "Japan"}).exitCode, 2);
}

TEST(CircuitCommand, GivesProgramsTheSameVerdicts) {
  const auto ran = runProgram({"circuit", "--region", "United States", "--json"});
  ASSERT_EQ(ran.exitCode, 0);
  const auto json = nlohmann::json::parse(ran.output);
  const auto& circuit = json["rigs"][1]["circuit"];
  EXPECT_EQ(circuit["verdict"], "fits only if");
  EXPECT_EQ(circuit["circuits"][0]["verdicts"][0]["edition"], "2023");
  for (const auto& finding : circuit["circuits"][0]["verdicts"][0]["findings"]) {
    if (finding.contains("cite")) {
      EXPECT_TRUE(finding["cite"]["status"] == "read" ||
                  finding["cite"]["status"] == "from memory" ||
                  finding["cite"]["status"] == "computed");
    }
  }
  EXPECT_EQ(circuit["readings"].size(), 3u);
}

TEST(RoomCommand, TellsVapourAirflowAndItsAssumptions) {
  const auto ran = runProgram({"room"});
  ASSERT_EQ(ran.exitCode, 0) << ran.complaint;
  for (const char* part : {"assumed:", "m3/h", "kg/h of vapour", "humidity ratios"}) {
    EXPECT_NE(ran.output.find(part), std::string::npos) << part;
  }
  const auto json = nlohmann::json::parse(runProgram({"room", "--json"}).output);
  EXPECT_GT(json["rigs"][3]["room"]["points"].size(), 50u);
}

TEST(CostCommand, FindsTheCheapestStart) {
  const test_support::Folder folder;
  auto plan = nlohmann::ordered_json::parse(test_support::contents(
      std::string(HEATLEDGER_SOURCE_DIR) + "/rigs/demo/altbier-after-the-move.json"));
  plan["tariff"] = nlohmann::ordered_json::parse(R"({"times": {"weekday": [
      {"from": "19:00", "to": "07:00", "price": "0.076 CAD/kWh"},
      {"from": "07:00", "to": "19:00", "price": "0.158 CAD/kWh"}]},
      "brew_from": "08:00", "brew_until": "19:00", "brews_per_year": 20, "jacket_price": 40,
      "dated": "2024-11"})");
  const std::string file = folder.write("plan.json", plan.dump());
  const auto ran = runProgram({"cost", file, "--width", "200"});
  ASSERT_EQ(ran.exitCode, 0) << ran.complaint;
  for (const char* part :
       {"cheapest at 19:00", "dearest", "0.158 CAD/kWh", "paid back", "a year of 20 brews"}) {
    EXPECT_NE(ran.output.find(part), std::string::npos) << part << "\n" << ran.output;
  }
  plan["tariff"]["times"]["weekday"][0]["from"] = "20:00";
  const auto gap = runProgram({"cost", folder.write("gap.json", plan.dump())});
  EXPECT_EQ(gap.exitCode, 2);
  EXPECT_NE(gap.complaint.find("19:00 to 20:00"), std::string::npos) << gap.complaint;
}

}  // namespace
