// SPDX-License-Identifier: GPL-3.0-or-later
// Questions about circuit, room and tariff, as a person asks them.
#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>
#include <nlohmann/json.hpp>

#include "tests/program/run_program.hpp"

namespace {

using test_support::runProgram;

bool says(const std::string& output, const std::string& part) {
  return test_support::squeezed(output).find(test_support::squeezed(part)) != std::string::npos;
}

TEST(CircuitCommand, NamesRuleEditionStatusAndElectrician) {
  const auto ran = runProgram({"circuit", "--region", "United States"});
  ASSERT_EQ(ran.exitCode, 0) << ran.complaint;
  for (const char* part : {"NEC (NFPA 70) 2023", "80 % of 15 A = 12 A", "fits only if",
                           "from memory,", "What would each way of counting allow"}) {
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

TEST(CircuitCommand, RefusesARegionThatIsNotThereAndNamesTheWayToOnesOwn) {
  const auto ran = runProgram({"circuit", "--region", "Atlantis", "--width", "1000"});
  EXPECT_EQ(ran.exitCode, 2);
  for (const char* part : {"Brazil", "Generic IEC", "United Kingdom", "--rules", "\"rules\""})
    EXPECT_NE(ran.complaint.find(part), std::string::npos) << ran.complaint;
  EXPECT_EQ(runProgram({"circuit", "--region", "canada"}).output,
            runProgram({"circuit", "--region", "Canada"}).output);
}

// 120 V and 208 V are none of Japan's voltages: a verdict, with its reason, and the day is
// answered.
TEST(CircuitCommand, CannotSayForForeignVoltages) {
  const auto ran = runProgram({"circuit", "--region", "Japan", "--width", "1000"});
  EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
  EXPECT_TRUE(says(ran.output, "cannot say: 120 V is no supply voltage of Japan; there it is"));
  EXPECT_EQ(runProgram({"answer", "--region", "Japan"}).exitCode, 0);
}

std::string demoPlanWith(const std::string& supply, const std::string& element) {
  auto plan = nlohmann::ordered_json::parse(test_support::contents(
      std::string(HEATLEDGER_SOURCE_DIR) + "/rigs/data/demo/altbier-after-the-move.json"));
  plan["rigs"][0]["supply"] = nlohmann::ordered_json::parse(supply);
  plan["rigs"][0]["element"] = nlohmann::ordered_json::parse(element);
  return plan.dump();
}

// 3 kW on a British plug: 13.04 A of 13 A, and 13.61 A on a measured 240 V.
TEST(CircuitCommand, JudgesAFusedPlugAsAFuse) {
  const test_support::Folder folder;
  const std::string element =
      R"({"power": "3 kW", "rated_voltage": "230 V", "top_height": "60 mm"})";
  const std::string plug =
      folder.write("plug.json", demoPlanWith(R"({"from": "UK 230 V 13 A plug"})", element));
  const auto answer = runProgram({"answer", plug, "--width", "1000"});
  EXPECT_EQ(answer.exitCode, 0) << answer.complaint;
  EXPECT_EQ(answer.output.find("or worse"), std::string::npos);
  EXPECT_TRUE(says(answer.output,
                   "on the edge of its circuit of 13 A; a fuse of that size carries "
                   "20.8 A for at least 30 min"));
  const auto json = nlohmann::json::parse(runProgram({"circuit", plug, "--json"}).output);
  EXPECT_EQ(json["rigs"][0]["supply"]["against_rating"], "on the edge");
  EXPECT_EQ(json["rigs"][0]["supply"]["overloaded"], true);
  EXPECT_EQ(json["rigs"][0]["circuit"]["verdict"], "on the edge");
  const auto& rating = json["rigs"][0]["circuit"]["circuits"][0]["verdicts"][0]["findings"][0];
  EXPECT_EQ(rating["device"]["kind"], "fuse");
  EXPECT_NEAR(rating["device"]["carries_A"].get<double>(), 20.8, 1e-9);
  const std::string measured =
      folder.write("measured.json",
                   demoPlanWith(R"({"from": "UK 230 V 13 A plug", "voltage": "240 V"})", element));
  const auto at240 = runProgram({"circuit", measured, "--width", "1000"});
  EXPECT_EQ(at240.exitCode, 0) << at240.complaint;
  EXPECT_TRUE(says(at240.output, "cannot say: 240 V is no nominal voltage of United Kingdom"));
  EXPECT_TRUE(
      says(at240.output, "; on the edge: the fuse's rating (13.61 A against 13 A, 4.7 % more)"));
}

// Every condition of a verdict stands in the page, in full.
TEST(CircuitCommand, NeverLeavesOutACondition) {
  const auto page = runProgram({"circuit", "--width", "1000"});
  const auto csv = runProgram({"circuit", "--csv"});
  ASSERT_EQ(csv.exitCode, 0) << csv.complaint;
  EXPECT_EQ(page.output.find("only if …"), std::string::npos);
  EXPECT_EQ(csv.output.find("only if …"), std::string::npos);
  int seen = 0;
  const auto json = nlohmann::json::parse(runProgram({"circuit", "--json"}).output);
  for (const auto& rig : json["rigs"])
    for (const auto& verdict : rig["circuit"]["circuits"][0]["verdicts"])
      for (const auto& finding : verdict["findings"]) {
        if (finding["verdict"] != "fits only if") continue;
        const std::string condition = finding["condition"];
        EXPECT_TRUE(says(page.output, condition)) << condition;
        if (!finding["binding"].get<bool>()) continue;
        EXPECT_NE(csv.output.find(condition), std::string::npos) << condition;
        ++seen;
      }
  EXPECT_GE(seen, 5);
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

TEST(CircuitCommand, NamesKeptRulesAndShowsThemWhenAsked) {
  const auto brief = runProgram({"circuit", "--region", "United States"});
  const auto all = runProgram({"circuit", "--region", "United States", "--every-rule"});
  ASSERT_EQ(all.exitCode, 0) << all.complaint;
  EXPECT_NE(brief.output.find("rules that fit: "), std::string::npos);
  EXPECT_EQ(all.output.find("rules that fit: "), std::string::npos);
  EXPECT_LT(2 * brief.output.size(), 3 * all.output.size());
  for (const char* part :
       {"· the circuit's rating [", "utilization, Range A", "service, Range B"}) {
    EXPECT_NE(all.output.find(part), std::string::npos) << part;
  }
  for (const char* part : {"What is the shortest day within the current?", "two such circuits"})
    EXPECT_NE(brief.output.find(part), std::string::npos) << part;
  EXPECT_EQ(runProgram({"day", "--every-rule"}).exitCode, 2);
}

// Word for word: what a program reads and what a person sees.
TEST(CircuitCommand, ShowsEveryFindingThatProgramsGet) {
  const auto ran = runProgram({"circuit", "--every-rule"});
  ASSERT_EQ(ran.exitCode, 0) << ran.complaint;
  const std::string output = test_support::squeezed(ran.output);
  int shown = 0;
  const auto json = nlohmann::json::parse(runProgram({"circuit", "--json"}).output);
  for (const auto& rig : json["rigs"]) {
    for (const auto& verdict : rig["circuit"]["circuits"][0]["verdicts"]) {
      EXPECT_NE(output.find(test_support::squeezed(verdict["text"])), std::string::npos)
          << verdict["text"];
      for (const auto& finding : verdict["findings"]) {
        ++shown;
        // The page names a rule once with its clause, and below it what it says of which rig.
        const std::string text = finding["text"];
        const std::string name = finding["rule"];
        ASSERT_TRUE(text.starts_with(name + ": ")) << text;
        const std::size_t end = text.rfind(" [");
        const std::string outcome = text.substr(name.size() + 2, end - name.size() - 2);
        const std::string cite = end == std::string::npos ? "" : text.substr(end);
        EXPECT_NE(output.find(test_support::squeezed("· " + name + cite)), std::string::npos)
            << text;
        EXPECT_NE(output.find(test_support::squeezed(outcome)), std::string::npos) << text;
      }
    }
  }
  EXPECT_GT(shown, 20);
}

// What decides or is conditional stands once for each code, with its edition and source.
TEST(CircuitCommand, SaysNothingTwice) {
  const auto both = runProgram({"circuit", "--width", "1000"});
  ASSERT_EQ(both.exitCode, 0) << both.complaint;
  EXPECT_EQ(both.output.find("IEC 60898-1; IEC 60898-1"), std::string::npos);
  EXPECT_EQ(both.output.find("only if only"), std::string::npos);
}

TEST(CircuitCommand, RefusesOverVoltageEverywhere) {
  for (const char* command : {"circuit", "answer", "day", "boil", "cost", "size"}) {
    const auto ran = runProgram({command, "--supply-voltage", "140 V"});
    EXPECT_EQ(ran.exitCode, 2) << command;
    EXPECT_NE(ran.complaint.find("surface load"), std::string::npos) << ran.complaint;
  }
}

TEST(CircuitCommand, ReadsRulesFromAFile) {
  const test_support::Folder folder;
  const std::string plan = test_support::contents(std::string(HEATLEDGER_SOURCE_DIR) +
                                                  "/rigs/data/demo/altbier-after-the-move.json");
  const std::string file = folder.write("plan.json", plan);
  const std::string good = folder.write("island.json", R"({
    "format": {"name": "heat-ledger-rules", "version": 1},
    "region": "Island", "code": "Island code", "edition": "7", "about": "ours",
    "voltages": [
      {"nominal": "120 V", "lowest": "110 V", "highest": "127 V", "name": "as metered",
       "clause": "1", "source": "ours", "status": "memory"},
      {"nominal": "208 V", "lowest": "190 V", "highest": "220 V", "name": "as metered",
       "clause": "1", "source": "ours", "status": "memory"}],
    "breakers": {"sizes": ["10 A", "15 A", "30 A"], "clause": "2", "source": "ours",
                 "status": "memory"}})");
  const auto ran = runProgram({"circuit", file, "--rules", good});
  ASSERT_EQ(ran.exitCode, 0) << ran.complaint;
  EXPECT_NE(ran.output.find("Island, Island code 7: fits"), std::string::npos) << ran.output;
  EXPECT_EQ(ran.output.find("NEC"), std::string::npos);
  auto json = nlohmann::ordered_json::parse(plan);
  json["place"]["rules"] = "island.json";
  const auto named = runProgram({"circuit", folder.write("named.json", json.dump())});
  ASSERT_EQ(named.exitCode, 0) << named.complaint;
  EXPECT_NE(named.output.find("Island, Island code 7: fits"), std::string::npos);
  // All that is wrong at once, with its place in that file.
  const std::string bad = folder.write("bad.json", R"({
    "format": {"name": "heat-ledger-rules", "version": 1},
    "region": "Island", "code": "Island code", "edition": "7",
    "voltages": [{"nominal": "120 W", "lowest": "110 V", "highest": "127 V", "name": "n",
                  "clause": "1", "source": "s", "status": "hearsay"}]})");
  const auto wrong = runProgram({"circuit", file, "--rules", bad, "--width", "200"});
  EXPECT_EQ(wrong.exitCode, 2);
  for (const char* part : {"about", "/voltages/0/nominal", "/voltages/0/status", "bad.json"})
    EXPECT_NE(wrong.complaint.find(part), std::string::npos) << part << "\n" << wrong.complaint;
}

// A file that is not there is no mistake in its rules.
TEST(CircuitCommand, FailsWhereARulesFileCannotBeRead) {
  const test_support::Folder folder;
  for (const std::string& path : {folder.file("none.json"), folder.file(".")}) {
    const auto ran = runProgram({"circuit", "--rules", path});
    EXPECT_EQ(ran.exitCode, 1) << path;
    EXPECT_EQ(ran.output, "");
    EXPECT_NE(ran.complaint.find(path == folder.file(".") ? "is a folder" : "is not there"),
              std::string::npos)
        << ran.complaint;
  }
  EXPECT_EQ(runProgram({"report", "--rules", "none.json", "--to", folder.file("a.pdf")}).exitCode,
            1);
}

TEST(CircuitCommand, TellsProgramsTheSplitAndTheShortestDays) {
  const auto json =
      nlohmann::json::parse(runProgram({"circuit", "--region", "Canada", "--json"}).output);
  const auto& circuit = json["rigs"][1]["circuit"];
  EXPECT_TRUE(circuit["split"]["fits"].is_boolean());
  EXPECT_EQ(circuit["split"]["parts"].size(), 2u);
  EXPECT_EQ(circuit["shortest_days"].size(), 4u);
  EXPECT_GT(circuit["circuits"][0]["branch_current_A"], circuit["circuits"][0]["peak_current_A"]);
}

TEST(RoomCommand, TellsVapourAirflowAndItsAssumptions) {
  const auto ran = runProgram({"room"});
  ASSERT_EQ(ran.exitCode, 0) << ran.complaint;
  for (const char* part : {"assumed:", "m³/h", "kg/h of vapour", "humidity ratios"}) {
    EXPECT_NE(ran.output.find(part), std::string::npos) << part;
  }
  const auto json = nlohmann::json::parse(runProgram({"room", "--json"}).output);
  EXPECT_GT(json["rigs"][3]["room"]["points"].size(), 50u);
}

TEST(CostCommand, FindsTheCheapestStart) {
  const test_support::Folder folder;
  auto plan = nlohmann::ordered_json::parse(test_support::contents(
      std::string(HEATLEDGER_SOURCE_DIR) + "/rigs/data/demo/altbier-after-the-move.json"));
  plan["tariff"] = nlohmann::ordered_json::parse(R"({"times": {"weekday": [
      {"from": "19:00", "to": "07:00", "price": "0.076 CAD/kWh"},
      {"from": "07:00", "to": "19:00", "price": "0.158 CAD/kWh"}]},
      "brew_from": "08:00", "brew_until": "19:00", "brews_per_year": 20, "jacket_price": 40,
      "dated": "2024-11"})");
  const std::string file = folder.write("plan.json", plan.dump());
  const auto ran = runProgram({"cost", file, "--width", "200"});
  ASSERT_EQ(ran.exitCode, 0) << ran.complaint;
  // Prose ends lines where it likes.
  std::string text = ran.output;
  std::replace(text.begin(), text.end(), '\n', ' ');
  while (text.find("  ") != std::string::npos) text.replace(text.find("  "), 2, " ");
  for (const char* part : {"cheapest at 19:00", "dearest", "0.158 CAD per kWh from 07:00 to 19:00",
                           "paid back", "a year of 20 batches"}) {
    EXPECT_NE(text.find(part), std::string::npos) << part << "\n" << ran.output;
  }
  plan["tariff"]["times"]["weekday"][0]["from"] = "20:00";
  const auto gap = runProgram({"cost", folder.write("gap.json", plan.dump())});
  EXPECT_EQ(gap.exitCode, 2);
  EXPECT_NE(gap.complaint.find("19:00 to 20:00"), std::string::npos) << gap.complaint;
}

}  // namespace
