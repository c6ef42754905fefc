// SPDX-License-Identifier: GPL-3.0-or-later
// Grain that is rinsed and drains, as a person plans it: pages, sheet, JSON, and what is refused.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <regex>
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

Json basketDay() {
  return Json::parse(R"({
    "format": {"name": "heat-ledger-plan", "version": 1},
    "batch": {"water": "22 L", "grain": {"mass": "5 kg"}, "boil": "60 min",
              "mash": {"rests": [{"temperature": "66 C", "time": "60 min"}]},
              "rinse": {"volume": "4 L", "temperature": "76 C", "heated": "same circuit",
                        "power": "1 kW"}},
    "place": {"altitude": "300 m", "room": "19 C", "water": "11 C", "region": "Europe"},
    "tariff": {"price": "0.30 EUR/kWh"},
    "rigs": [{"name": "Basket kettle", "from": "40 L steel kettle",
              "element": {"power": "2.5 kW", "rated_voltage": "230 V"},
              "supply": {"from": "Europe 230 V 16 A"}}]
  })");
}

// As one line, wherever the page breaks it.
std::string unwrapped(const std::string& page) {
  return std::regex_replace(page, std::regex("\\s+"), " ");
}

Json dayOf(const Folder& folder, const Json& plan) {
  const Ran ran = runProgram({"day", folder.write("day.json", plan.dump()), "--json"});
  EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
  return Json::parse(ran.output)["rigs"][0];
}

TEST(Rinse, IsOnPagesSheetAndInTheResult) {
  const Folder folder;
  Json plan = basketDay();
  const std::string file = folder.write("basket.json", plan.dump());
  const Ran time = runProgram({"day", file, "--width", "250"});
  ASSERT_EQ(time.exitCode, 0) << time.complaint;
  EXPECT_THAT(unwrapped(time.output),
              AllOf(HasSubstr("Rinsed with 4 L of water at 76 °C"),
                    HasSubstr("if the water ran past all the wort in the grain"),
                    HasSubstr("never stand or reach under it")));
  const Json rig = dayOf(folder, plan);
  const Json rinse = rig["day"]["rinse"];
  // By the steam table 65 K of 3.993 kg: 1.087 MJ, 0.302 kWh; by 85 % of it 0.355 kWh, and at 0.30
  // EUR/kWh 0.107 EUR.
  EXPECT_NEAR(rinse["heat_kWh"].get<double>(), 0.302, 0.001);
  EXPECT_NEAR(rinse["from_wall_kWh"].get<double>(), 0.355, 0.001);
  EXPECT_NEAR(rinse["cost"].get<double>(), 0.1066, 0.0005);
  EXPECT_NEAR(rinse["heating_s"].get<double>(), 0.355 * 3600.0, 5.0);
  EXPECT_LT(rinse["gravity_if_none_mixes"], rinse["gravity"]);
  EXPECT_LT(rinse["gravity"], rinse["gravity_if_all_mixes"]);
  EXPECT_NEAR(rinse["cold_volume_L"].get<double>() - rig["day"]["lifted_cold_L"].get<double>(), 4.0,
              0.02);
  const Json total = rig["day"]["total"];
  EXPECT_LT(total["imbalance_share"].get<double>(), 1e-6);
  EXPECT_NEAR(total["rinse_heater_kWh"].get<double>(), 0.355, 0.001);

  EXPECT_THAT(runProgram({"cost", file, "--csv"}).output,
              HasSubstr("heating the rinsing water,kWh,0.35"));
  EXPECT_THAT(
      runProgram({"day", file, "--csv"}).output,
      AllOf(HasSubstr("with the rinsing water"), HasSubstr("of that, heating the rinsing water")));
  const std::string sheet = runProgram({"sheet", file, "--width", "200"}).output;
  const auto at = [&](const char* words) { return sheet.find(words); };
  EXPECT_LT(at("Heat the rinsing water"), at("Element off. Lift the grain")) << sheet;
  EXPECT_LT(at("Element off. Lift the grain"), at("Rinse with 4 L of water at 76 °C")) << sheet;
  EXPECT_LT(at("Rinse with 4 L"), at("Take the grain away, full power")) << sheet;
}

// What a plan without it says, byte for byte: not even a key of it.
TEST(Rinse, LeavesNothingInAPlanWithout) {
  const Folder folder;
  Json plan = basketDay();
  plan["batch"].erase("rinse");
  const std::string file = folder.write("plain.json", plan.dump());
  for (const char* page : {"day", "boil", "cost", "circuit", "safety"})
    EXPECT_THAT(runProgram({page, file, "--json"}).output,
                AllOf(Not(HasSubstr("rins")), Not(HasSubstr("\"draining\"")),
                      Not(HasSubstr("lifted grain"))))
        << page;
}

// 2.5 kW and 1 kW are 15.2 A of 16 A; 2 kW would be 19.6 A.
TEST(Rinse, CountsOnTheSameCircuit) {
  const Folder folder;
  Json plan = basketDay();
  const auto verdict = [&] {
    return unwrapped(
        runProgram({"circuit", folder.write("c.json", plan.dump()), "--width", "250"}).output);
  };
  EXPECT_THAT(verdict(), AllOf(HasSubstr("The rinsing water's heater, 1 kW, counts"),
                               Not(HasSubstr("does not fit"))));
  plan["batch"]["rinse"]["power"] = "2 kW";
  EXPECT_THAT(verdict(), HasSubstr("does not fit"));
  plan["batch"]["rinse"].erase("power");
  EXPECT_THAT(verdict(), AllOf(HasSubstr("whose load is not known here and must be added"),
                               HasSubstr("is in no figure here and must be added")));
  plan["batch"]["rinse"]["heated"] = "another circuit";
  EXPECT_THAT(verdict(), AllOf(HasSubstr("on another circuit, which is not judged here"),
                               Not(HasSubstr("must be added"))));
}

TEST(Rinse, IsRefusedWithWhatWouldFit) {
  const Folder folder;
  Json plan = basketDay();
  plan["batch"]["rinse"]["volume"] = "25 L";
  const Ran ran = runProgram({"day", folder.write("full.json", plan.dump())});
  EXPECT_EQ(ran.exitCode, 2);
  EXPECT_THAT(unwrapped(ran.complaint), AllOf(HasSubstr("/batch/rinse"), HasSubstr("do not fit"),
                                              HasSubstr("fit, filled to the brim")));
}

TEST(Draining, CoolsOrHeatsAndIsAStageOfItsOwn) {
  const Folder folder;
  Json plan = basketDay();
  plan["batch"]["drain"] = {{"time", "20 min"}};
  const Json off = dayOf(folder, plan);
  plan["batch"]["drain"]["element"] = "on";
  const Json on = dayOf(folder, plan);
  const auto stageOf = [](const Json& rig) {
    for (const Json& stage : rig["day"]["stages"])
      if (stage["stage"] == "draining") return stage;
    return Json();
  };
  EXPECT_LT(stageOf(off)["last_C"], stageOf(off)["first_C"]);
  EXPECT_GT(stageOf(on)["last_C"], stageOf(on)["first_C"]);
  EXPECT_LT(on["day"]["duration_s"], off["day"]["duration_s"]);
  const std::string page =
      runProgram({"day", folder.write("on.json", plan.dump()), "--width", "250"}).output;
  EXPECT_THAT(unwrapped(page),
              AllOf(HasSubstr("drains for 20 min over the open kettle with the element on"),
                    HasSubstr("no source tells how much less"),
                    HasSubstr("has less wort above it than before")));
}

}  // namespace
