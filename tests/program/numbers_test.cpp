// SPDX-License-Identifier: GPL-3.0-or-later
// The same figure is the same in JSON, table and spreadsheet.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstdio>
#include <nlohmann/json.hpp>
#include <sstream>

#include "tests/program/run_program.hpp"

using nlohmann::json;
using test_support::fixed;
using test_support::runProgram;

namespace {

json answerAsJson() { return json::parse(runProgram({"answer", "--json"}).output); }

// The cells of the first table row that begins with this label.
std::vector<std::string> cells(const std::string& text, const std::string& label) {
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) {
    if (line.rfind("  " + label, 0) != 0) continue;
    std::istringstream words(line.substr(2 + label.size()));
    std::vector<std::string> found;
    for (std::string word; words >> word;) found.push_back(word);
    return found;
  }
  return {};
}

}  // namespace

TEST(ResultJson, IsTheSameBytesEveryTime) {
  const auto first = runProgram({"answer", "--json"});
  EXPECT_EQ(first.exitCode, 0);
  EXPECT_EQ(first.output, runProgram({"answer", "--json"}).output);
  // In SI whatever a person's tables show.
  EXPECT_EQ(first.output, runProgram({"answer", "--json", "--units", "US"}).output);
}

TEST(ResultJson, HoldsWhatTheTableShows) {
  const json all = answerAsJson();
  const std::string text = runProgram({"answer", "--width", "120"}).output;
  const std::size_t rigs = all["rigs"].size();
  struct Case {
    const char* label;
    const char* pointer;
    int decimals;
  };
  for (const Case& c :
       {Case{"reaches the vessel, W", "/day/electrical/delivered_W", 0},
        Case{"in the end", "/day/result_cold_L", 1}, Case{"cost, USD", "/cost", 2}}) {
    SCOPED_TRACE(c.label);
    const auto row = cells(text, c.label);
    ASSERT_EQ(row.size(), rigs) << text;
    for (std::size_t i = 0; i < rigs; ++i) {
      EXPECT_EQ(row[i], fixed(all["rigs"][i].at(json::json_pointer(c.pointer)), c.decimals));
    }
  }
}

TEST(ResultJson, ConvertsToUsCustomaryInTheTable) {
  const json all = answerAsJson();
  const auto row = cells(runProgram({"boil", "--units", "us"}).output, "water poured, US gal");
  ASSERT_EQ(row.size(), all["rigs"].size());
  for (std::size_t i = 0; i < row.size(); ++i) {
    // A US gallon is 231 cubic inches of 25.4 mm: 3.785411784 L.
    const double litres = all["rigs"][i]["day"]["water_L"];
    EXPECT_EQ(row[i], fixed(litres / 3.785411784, 2));
  }
}

TEST(ResultJson, ClosesEveryLedger) {
  const json all = answerAsJson();
  for (const json& rig : all["rigs"]) {
    SCOPED_TRACE(rig["name"]);
    std::vector<json> ledgers{rig["day"]["total"]};
    for (const json& stage : rig["day"]["stages"]) ledgers.push_back(stage["ledger"]);
    for (const json& ledger : ledgers) {
      EXPECT_LE(ledger["imbalance_share"].get<double>(), 1e-6);
      // Added up again from the parts, by what a reader of the file has.
      double lost = 0.0;
      for (const auto& [path, energy] : ledger["lost"].items()) lost += energy.get<double>();
      const double accounted =
          ledger["in_wort_kWh"].get<double>() + ledger["in_grain_kWh"].get<double>() +
          ledger["in_vessel_kWh"].get<double>() + ledger["lifted_with_grain_kWh"].get<double>() +
          ledger["steam_own_heat_kWh"].get<double>() + lost;
      const double supplied =
          ledger["element_kWh"].get<double>() + ledger["grain_wetting_kWh"].get<double>();
      EXPECT_NEAR(accounted, supplied, 1e-6 * std::max(supplied, lost) + 1e-12);
    }
  }
}

TEST(ResultJson, CarriesTheCautions) {
  const json all = answerAsJson();
  std::vector<std::string> topics;
  for (const json& caution : all["cautions"]) topics.push_back(caution["topic"]);
  EXPECT_THAT(topics, testing::IsSupersetOf({"mains", "ground fault", "element", "steam",
                                             "boil-over", "scald", "left warm", "dry firing",
                                             "headspace", "lifting", "cooling"}));
  EXPECT_EQ(topics.back(), "deferral");
}

TEST(Csv, HoldsTheSameNumbersWithAllDigits) {
  const json all = answerAsJson();
  std::istringstream lines(runProgram({"cost", "--csv"}).output);
  std::string line;
  while (std::getline(lines, line) &&
         line.rfind("cost,Energy from the wall,from the wall,kWh,", 0) != 0) {
  }
  ASSERT_THAT(line, testing::HasSubstr("kWh,"));
  std::istringstream numbers(line.substr(line.find("kWh,") + 4));
  for (const json& rig : all["rigs"]) {
    std::string number;
    ASSERT_TRUE(std::getline(numbers, number, ','));
    const double kilowattHours = rig["day"]["total"]["from_wall_kWh"];
    EXPECT_NEAR(std::stod(number), kilowattHours, 1e-12 * kilowattHours);
  }
}

TEST(WhatIf, ChangesTheAnswerAndNotTheFile) {
  const test_support::Folder folder;
  const std::string file = folder.file("plan.json");
  runProgram({"new", file});
  const std::string before = test_support::contents(file);
  const json asItIs = json::parse(runProgram({"boil", file, "--json"}).output);
  const json higher =
      json::parse(runProgram({"boil", file, "--json", "--altitude", "3000 m"}).output);
  EXPECT_LT(higher["place"]["pressure_Pa"], asItIs["place"]["pressure_Pa"]);
  EXPECT_EQ(test_support::contents(file), before);
}
