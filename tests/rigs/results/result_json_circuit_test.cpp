// SPDX-License-Identifier: GPL-3.0-or-later
// Circuits in the result's JSON: numbers by hand where the plan gives them, and everything else as
// the answer has it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "rigs/results/circuit_words.hpp"
#include "rigs/results/result_json.hpp"
#include "rigs/results/result_json_object.hpp"
#include "tests/rigs/plans/plan_edit.hpp"

namespace {

using namespace physics;
using namespace rigs;
using test_support::demoWith;
using test_support::Edits;
using test_support::readChecked;
using test_support::removed;
using test_support::told;
using testing::HasSubstr;

// One rig of the demo, its circuit answered and written.
struct Written {
  Answers answers;
  Json json;
  const CircuitAnswer& circuit() const { return answers.rigs.front().circuit; }
};

Written written(std::size_t rig, const std::string& document) {
  const auto read = readChecked(document);
  if (!read.plan) throw std::runtime_error(told(read.problems));
  Plan plan = *read.plan;
  plan.rigs = {plan.rigs.at(rig)};
  Written all{answer(plan, Depth::Circuit), {}};
  all.json = Json::parse(resultJson(plan, all.answers))["rigs"][0]["circuit"];
  return all;
}

// 1650 W at 120 V through 12 m of 14 AWG, on 15 A in the United States.
const Written& kitchen() {
  static const Written kOne = written(1, demoWith({{"/place/region", "United States"}}));
  return kOne;
}

const Json* findingOf(const Json& verdict, const std::string& rule) {
  for (const Json& finding : verdict["findings"])
    if (finding["rule"] == rule) return &finding;
  return nullptr;
}

// R = U^2/P = 8.727 ohm, 1.2 % less when cold; 13.75 A as codes count.
TEST(CircuitJson, TellsWhatTheElementDraws) {
  ASSERT_EQ(kitchen().json["circuits"].size(), 1u);
  const Json& one = kitchen().json["circuits"][0];
  EXPECT_EQ(one["nominal_V"], 120.0);
  EXPECT_EQ(one["rating_A"], 15.0);
  EXPECT_NEAR(one["resistance_hot_ohm"].get<double>(), 8.7273, 5e-5);
  EXPECT_NEAR(one["resistance_cold_ohm"].get<double>(), 8.7273 / 1.012, 5e-5);
  EXPECT_NEAR(one["branch_current_A"].get<double>(), 13.75, 1e-9);
  const double current = one["peak_current_A"];
  const double drop = one["drop_V"];
  EXPECT_NEAR(current, (120.0 - drop) / 8.7273, 1e-4);  // Ohm's law over what the cable leaves
  EXPECT_NEAR(one["in_cable_W"].get<double>(), drop * current, 1e-6);
  EXPECT_NEAR(one["drop_share"].get<double>(), drop / 120.0, 1e-12);
  EXPECT_NEAR(one["from_wall_W"].get<double>(), 120.0 * current, 1e-6);
  EXPECT_NEAR(one["delivered_W"].get<double>(), (120.0 - drop) * current, 1e-6);
  const Json& duty = kitchen().json["duty"];
  EXPECT_NEAR(one["mean_current_A"].get<double>(),
              duty["share_with_current"].get<double>() * current, 1e-9);
  EXPECT_EQ(duty["longest_full_current_s"], inSeconds(kitchen().circuit().duty.longestFull()));
  EXPECT_EQ(duty["longest_enabled_s"], inSeconds(kitchen().circuit().duty.longestEnabled()));
  EXPECT_EQ(kitchen().json["added_by_cable_s"], inSeconds(*kitchen().circuit().addedByCable));
}

TEST(CircuitJson, CarriesTheVerdictWithItsRules) {
  const Json& verdicts = kitchen().json["circuits"][0]["verdicts"];
  ASSERT_EQ(verdicts.size(), 1u);
  const Json& verdict = verdicts[0];
  const CircuitVerdict& judged = kitchen().circuit().circuits[0].verdicts[0];
  EXPECT_EQ(verdict["region"], "United States");
  EXPECT_EQ(verdict["code"], judged.rules->code);
  EXPECT_EQ(verdict["edition"], judged.rules->edition);
  EXPECT_EQ(verdict["verdict"], "fits only if");
  EXPECT_EQ(verdict["text"], inEnglish(verdictText(judged)));
  EXPECT_NEAR(verdict["load_A"].get<double>(), 13.75, 1e-9);
  EXPECT_EQ(verdict["neutral_current_A"], 0.0);
  // 13.75 A, and 17.19 A with the quarter on top; 14 AWG goes to 15 A, 12 AWG to 20 A.
  EXPECT_EQ(verdict["next_breaker_A"], 15.0);
  EXPECT_EQ(verdict["next_breaker_if_continuous_A"], 20.0);
  EXPECT_EQ(verdict["conductor_for_next_breaker"], "14 AWG");
  EXPECT_EQ(verdict["conductor_if_continuous"], "12 AWG");
  // 0.75 mA/kW.
  EXPECT_NEAR(verdict["allowed_leakage_A"].get<double>(), 1.65 * 0.75e-3, 1e-12);
  EXPECT_EQ(verdict["leakage_may_trip"], false);
  EXPECT_EQ(kitchen().json["verdict"], "fits only if");
  EXPECT_EQ(kitchen().json["deferral"], inEnglish(electricianText()));
}

TEST(CircuitJson, CarriesEveryFindingWithArithmeticAndClause) {
  const Json& verdict = kitchen().json["circuits"][0]["verdicts"][0];
  const auto& judged = kitchen().circuit().circuits[0].verdicts[0].findings;
  ASSERT_EQ(verdict["findings"].size(), judged.size());
  for (std::size_t i = 0; i < judged.size(); ++i) {
    EXPECT_EQ(verdict["findings"][i]["text"], inEnglish(findingText(judged[i])));
    EXPECT_EQ(verdict["findings"][i]["verdict"], inEnglish(fitWords(judged[i].fit)));
    EXPECT_EQ(verdict["findings"][i]["binding"], judged[i].binding);
    EXPECT_EQ(verdict["findings"][i].contains("cite"), !judged[i].cite.clause.empty());
  }
  const Json* longUse = findingOf(verdict, "continuous load");
  ASSERT_TRUE(longUse);
  EXPECT_NEAR((*longUse)["load_A"].get<double>(), 13.75, 1e-9);
  EXPECT_EQ((*longUse)["rating_A"], 15.0);
  EXPECT_EQ((*longUse)["share"], 0.8);
  EXPECT_EQ((*longUse)["limit_A"], 12.0);
  EXPECT_EQ((*longUse)["counts_from_s"], 3 * 3600.0);
  EXPECT_EQ((*longUse)["full_current_s"], kitchen().json["duty"]["longest_full_current_s"]);
  EXPECT_EQ((*longUse)["enabled_s"], kitchen().json["duty"]["longest_enabled_s"]);
  EXPECT_EQ((*longUse)["cite"]["status"], "read");
  EXPECT_THAT((*longUse)["cite"]["clause"].get<std::string>(), HasSubstr("210.20(A)"));
  EXPECT_THAT((*longUse)["cite"]["source"].get<std::string>(), HasSubstr("NFPA 70"));
}

// ANSI C84.1, service Range A: 114 V to 126 V.
TEST(CircuitJson, CarriesTheVoltageRanges) {
  const Json& ranges = kitchen().json["circuits"][0]["verdicts"][0]["voltage_ranges"];
  ASSERT_FALSE(ranges.empty());
  const Json& a = ranges[0];
  EXPECT_EQ(a["range"], "service, Range A");
  EXPECT_EQ(a["lowest_V"], 114.0);
  EXPECT_EQ(a["highest_V"], 126.0);
  const double nominal = kitchen().json["circuits"][0]["delivered_W"];
  EXPECT_LT(a["least_delivered_W"], nominal);
  EXPECT_GT(a["most_delivered_W"], nominal);
  // Power goes with the square of a current through one resistance; the tolerance changes that.
  EXPECT_LT(a["least_current_A"].get<double>(), 114.0 / 8.7273);
  EXPECT_GT(a["most_current_A"].get<double>(), 120.0 / 8.7273);
  EXPECT_THAT(a["cite"]["clause"].get<std::string>(), HasSubstr("Range A"));
}

// 15 A and 12 A at 120 V: 1800 W and 1440 W.
TEST(CircuitJson, CarriesWhatEachReadingLeaves) {
  const Json& readings = kitchen().json["readings"];
  ASSERT_EQ(readings.size(), 3u);
  EXPECT_EQ(readings[0]["region"], "United States");
  EXPECT_EQ(readings[0]["reading"], "the circuit's whole rating");
  EXPECT_EQ(readings[0]["limit_A"], 15.0);
  EXPECT_NEAR(readings[0]["largest_element_W"].get<double>(), 1800.0, 1e-6);
  EXPECT_EQ(readings[0]["rated_at_V"], 120.0);
  EXPECT_EQ(readings[0]["outcome"], "done");
  EXPECT_EQ(readings[0]["rig_stays_within"], true);
  EXPECT_NEAR(readings[1]["largest_element_W"].get<double>(), 1440.0, 1e-6);
  EXPECT_EQ(readings[1]["outcome"], "steams");
  EXPECT_EQ(readings[1]["rig_stays_within"], false);
  for (std::size_t i = 0; i < readings.size(); ++i) {
    const ReadingDay& day = kitchen().circuit().readings[i];
    EXPECT_EQ(readings[i]["delivered_W"], inWatts(day.delivered));
    EXPECT_EQ(readings[i]["day_s"], inSeconds(day.day));
    EXPECT_EQ(readings[i]["cite"]["clause"], day.reading.cite.clause);
  }
}

TEST(CircuitJson, CarriesTheShortestDaysAndTheSplit) {
  const Json& days = kitchen().json["shortest_days"];
  ASSERT_EQ(days.size(), 4u);
  EXPECT_EQ(days[0]["circuits"].size(), 1u);
  EXPECT_EQ(days[0]["second_circuit_imagined"], false);
  ASSERT_EQ(days[1]["circuits"].size(), 2u);
  EXPECT_EQ(days[1]["second_circuit_imagined"], true);
  EXPECT_EQ(days[1]["circuits"][1]["limit_A"], 15.0);
  EXPECT_NEAR(days[1]["circuits"][1]["largest_element"]["rating_W"].get<double>(), 1800.0, 1e-6);
  EXPECT_EQ(days[1]["circuits"][1]["largest_element"]["rated_at_V"], 120.0);
  EXPECT_EQ(days[1]["boils"], true);
  EXPECT_EQ(days[2]["boils"], false);
  EXPECT_LT(days[1]["day_s"], days[0]["day_s"]);
  EXPECT_LT(days[1]["mash_to_boil_s"], days[0]["mash_to_boil_s"]);
  EXPECT_NEAR(days[1]["delivered_W"].get<double>(), 2.0 * days[0]["delivered_W"].get<double>(),
              1e-6);
  const Json& split = kitchen().json["split"];
  EXPECT_EQ(split["fits"], true);
  EXPECT_EQ(split["verdict"], "fits");
  EXPECT_EQ(split["second_circuit_imagined"], true);
  ASSERT_EQ(split["parts"].size(), 2u);
  for (const Json& part : split["parts"]) {
    EXPECT_NEAR(part["element"]["rating_W"].get<double>(), 825.0, 1e-6);
    EXPECT_NEAR(part["current_A"].get<double>(), 6.875, 1e-9);
    EXPECT_EQ(part["verdicts"][0]["verdict"], "fits");
  }
}

// 50 W at 120 V beside 3 kW at 230 V on 208 V, which draws 208/230 of 13.04 A.
TEST(CircuitJson, AddsAPumpToLoadAndNeutral) {
  const Json verdict =
      written(3, demoWith({{"/place/region", "United States"},
                           {"/rigs/3/pump", {{"power", "50 W"}, {"voltage", "120 V"}}}}))
          .json["circuits"][0]["verdicts"][0];
  EXPECT_NEAR(verdict["neutral_current_A"].get<double>(), 50.0 / 120.0, 1e-9);
  EXPECT_NEAR(verdict["load_A"].get<double>(), 3000.0 * 208.0 / 230.0 / 230.0 + 50.0 / 120.0, 1e-9);
}

TEST(CircuitJson, CannotSayWithoutRules) {
  const Json json =
      written(0, demoWith({{"/rigs/0/supply", {{"voltage", "120 V"}, {"current", "15 A"}}}})).json;
  EXPECT_EQ(json["verdict"], "cannot say");
  EXPECT_TRUE(json["circuits"][0]["verdicts"].empty());
  EXPECT_FALSE(json.contains("readings"));
  EXPECT_FALSE(json.contains("shortest_days"));
  EXPECT_FALSE(json.contains("split"));
  EXPECT_EQ(json["deferral"], inEnglish(electricianText()));
}

TEST(CircuitJson, LeavesOutWhatAFindingDoesNotHave) {
  CircuitRules rules;
  CircuitVerdict verdict{};
  verdict.rules = &rules;
  Finding drop{};
  drop.kind = RuleKind::VoltageDrop;
  drop.name = Told::just(Verbatim{"voltage drop"});
  drop.share = 0.03;
  drop.foundShare = 0.0576;
  drop.least = squareMetres(2.88e-6);
  drop.longest = metres(30.5);
  drop.cite = {.clause = "Table 2", .source = "own", .status = Status::Computed, .note = ""};
  verdict.findings = {drop};
  CircuitAnswer answer;
  answer.circuits.resize(1);
  answer.circuits[0].supply.nominal = answer.circuits[0].load.atTerminals = volts(120.0);
  answer.circuits[0].verdicts = {verdict};
  const Json found = circuitJson(answer)["circuits"][0]["verdicts"][0]["findings"][0];
  EXPECT_NEAR(found.value("least_conductor_mm2", 0.0), 2.88, 1e-9);
  EXPECT_NEAR(found.value("longest_cable_m", 0.0), 30.5, 1e-9);
  EXPECT_EQ(found["found_share"], 0.0576);
  EXPECT_EQ(found["cite"]["status"], "computed");
  for (const char* key : {"load_A", "rating_A", "limit_A", "voltage_V", "full_current_s",
                          "enabled_s", "within_s", "condition"})
    EXPECT_FALSE(found.contains(key)) << key;
}

}  // namespace
