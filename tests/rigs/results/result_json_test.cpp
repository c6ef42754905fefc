// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/results/result_json.hpp"

#include <gtest/gtest.h>

#include <limits>
#include <nlohmann/json.hpp>
#include <stdexcept>
#include <utility>

#include "tests/gui/terminal/plan_in_code.hpp"

TEST(ResultJson, KeepsEveryDigit) {
  const rigs::Plan plan = test_support::planInCode();
  const rigs::Answers answers = rigs::answer(plan, rigs::Depth::Everything);
  const auto json = nlohmann::json::parse(rigs::resultJson(plan, answers));
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    EXPECT_EQ(json["rigs"][i]["day"]["result_cold_L"].get<double>(),
              physics::inLitres(answers.rigs[i].day.resultCold));
  }
}

TEST(ResultJson, HasNoNull) {
  const rigs::Plan plan = test_support::planInCode(true);
  const std::string text = rigs::resultJson(plan, rigs::answer(plan, rigs::Depth::Everything));
  EXPECT_EQ(text.find("null"), std::string::npos);
}

TEST(ResultJson, NamesTheOutcomeAndWhereItLevelsOff) {
  const rigs::Plan plan = test_support::planInCode(true);
  const rigs::Answers answers = rigs::answer(plan, rigs::Depth::Day);
  const auto json = nlohmann::json::parse(rigs::resultJson(plan, answers));
  EXPECT_EQ(json["rigs"][0]["day"]["outcome"], "done");
  const auto& weak = json["rigs"][2]["day"];
  EXPECT_EQ(weak["outcome"], "stays far below boiling");
  EXPECT_EQ(weak["levels_off"]["at_C"].get<double>(),
            physics::inCelsius(answers.rigs[2].day.levelsOff->at));
  EXPECT_EQ(weak["boil"]["vigour"], "stays far below boiling");
  EXPECT_EQ(weak["boil"]["rolled_s"], 0.0);
  EXPECT_GT(weak["boil"]["evaporation_kg_per_h"].get<double>(), 0.0);
}

TEST(ResultJson, WritesCurvesOnlyWhereThereAreAny) {
  const rigs::Plan plan = test_support::planInCode();
  EXPECT_EQ(rigs::resultJson(plan, rigs::answer(plan, rigs::Depth::Day)).find("\"curve\""),
            std::string::npos);
  const auto json =
      nlohmann::json::parse(rigs::resultJson(plan, rigs::answer(plan, rigs::Depth::Day, true)));
  EXPECT_GT(json["rigs"][0]["day"]["stages"][0]["curve"].size(), 10u);
}

TEST(ResultJson, CarriesTheCautionsOfItsVerdictsAndEndsWithTheDeferral) {
  const rigs::Plan plan = test_support::planInCode();
  for (const rigs::Depth depth :
       {rigs::Depth::Day, rigs::Depth::Circuit, rigs::Depth::Room, rigs::Depth::Everything}) {
    const auto json = nlohmann::json::parse(rigs::resultJson(plan, rigs::answer(plan, depth)));
    std::string topics;
    for (const auto& caution : json["cautions"])
      topics += caution["topic"].get<std::string>() + ';';
    for (const char* topic : {"dry firing;", "headspace;", "lifting;", "cooling;"})
      EXPECT_NE(topics.find(topic), std::string::npos) << topic;
    EXPECT_EQ(topics.find("room;") != std::string::npos, depth == rigs::Depth::Room);
    const auto& last = json["cautions"].back();
    EXPECT_EQ(last["topic"], "deferral");
    EXPECT_NE(last["text"].get<std::string>().find("licensed electrician"), std::string::npos);
  }
}

TEST(ResultJson, TellsPricesStartsPaybacksAndCarbonDioxide) {
  rigs::Plan plan = test_support::planInCode();
  rigs::Tariff& t = plan.tariff;
  t.weekday = {{physics::hours(0.0), physics::hours(7.0), 0.1},
               {physics::hours(7.0), physics::hours(24.0), 0.3}};
  t.weekend = {{physics::hours(0.0), physics::hours(24.0), 0.2}};
  t.jacketPrice = 40.0;
  t.elementPrice = 60.0;
  t.brewsPerYear = 10.0;
  t.co2PerKilowattHour = physics::kilograms(0.367);
  const rigs::Answers answers = rigs::answer(plan, rigs::Depth::DayAndJacket);
  const auto json = nlohmann::json::parse(rigs::resultJson(plan, answers));
  const auto& tariff = json["tariff"];
  EXPECT_EQ(tariff["dated"], "2026-01");
  EXPECT_EQ(tariff["weekday"][0]["to_s"], 7 * 3600.0);
  EXPECT_EQ(tariff["weekday"][1]["per_kWh"], 0.3);
  EXPECT_EQ(tariff["weekend"].size(), 1u);
  EXPECT_FALSE(tariff.contains("per_kWh"));
  EXPECT_FALSE(tariff.contains("tiers"));
  const auto& rig = json["rigs"][1];
  const double kWh = physics::inKilowattHours(answers.rigs[1].day.total.fromWall());
  EXPECT_DOUBLE_EQ(rig["co2_kg"].get<double>(), kWh * 0.367);
  const double heat = physics::inKilowattHours(answers.rigs[1].day.total.element);
  EXPECT_DOUBLE_EQ(rig["heated_otherwise"]["on_gas_flame"]["most_kWh"].get<double>(), heat / 0.32);
  EXPECT_DOUBLE_EQ(rig["cost_per_year"].get<double>(), 10.0 * *answers.rigs[1].cost);
  EXPECT_LT(rig["cheapest_start"]["cost"], rig["dearest_start"]["cost"]);
  EXPECT_LE(rig["cheapest_start"]["cost"].get<double>(), *answers.rigs[1].cost);
  EXPECT_TRUE(rig["jacket_payback"].contains("saved_per_year"));
  EXPECT_TRUE(rig["jacket"].contains("saved_cost"));
  EXPECT_EQ(rig["element_payback"]["in_place_of"], "Urn");
  EXPECT_EQ(json["rigs"][0].contains("element_payback"), false);
}

TEST(ResultJson, TellsTiersAndTheMonthsUse) {
  rigs::Plan plan = test_support::planInCode();
  plan.tariff.tiers = {{physics::kilowattHours(1000.0), 0.093}, {std::nullopt, 0.11}};
  plan.tariff.usedThisMonth = physics::kilowattHours(990.0);
  const auto json =
      nlohmann::json::parse(rigs::resultJson(plan, rigs::answer(plan, rigs::Depth::Day)));
  EXPECT_NEAR(json["tariff"]["tiers"][0]["up_to_kWh"].get<double>(), 1000.0, 1e-9);
  EXPECT_FALSE(json["tariff"]["tiers"][1].contains("up_to_kWh"));
  EXPECT_NEAR(json["tariff"]["used_this_month_kWh"].get<double>(), 990.0, 1e-9);
}

TEST(ResultJson, SetsTheRoomsNeedBesidePublishedAirflows) {
  const rigs::Plan plan = test_support::planInCode();
  const rigs::Answers answers = rigs::answer(plan, rigs::Depth::Room);
  const auto json = nlohmann::json::parse(rigs::resultJson(plan, answers));
  const auto& room = json["rigs"][0]["room"];
  ASSERT_EQ(room["published_airflows"].size(), 9u);
  for (const auto& one : room["published_airflows"])
    EXPECT_EQ(one["suffices"].get<bool>(), one["airflow_L_per_h"] >= room["airflow_L_per_h"]);
  EXPECT_TRUE(room.contains("level_humidity_at_peak_vapour"));
  EXPECT_TRUE(room.contains("dry_air_filled_L"));
}

TEST(ResultJson, RefusesANumberThatIsNotFinite) {
  const rigs::Plan plan = test_support::planInCode();
  rigs::Answers answers = rigs::answer(plan, rigs::Depth::Day);
  answers.rigs[0].day.resultGravity = std::numeric_limits<double>::quiet_NaN();
  try {
    rigs::resultJson(plan, answers);
    FAIL() << "a NaN was written";
  } catch (const std::domain_error& error) {
    EXPECT_NE(std::string(error.what()).find("result_gravity"), std::string::npos);
  }
}

// Programs read these words: each has its own, and none is empty.
TEST(ResultJson, HasAWordForEveryOutcomeLimitVerdictAndStage) {
  using physics::JacketVerdict;
  using physics::Limit;
  using physics::Outcome;
  using physics::StageKind;
  const rigs::Plan plan = test_support::planInCode();
  rigs::Answers answers = rigs::answer(plan, rigs::Depth::Everything);
  rigs::RigAnswer& rig = answers.rigs[0];
  const auto written = [&] {
    return nlohmann::json::parse(rigs::resultJson(plan, answers))["rigs"][0];
  };
  for (const auto& [outcome, word] : std::initializer_list<std::pair<Outcome, const char*>>{
           {Outcome::Done, "done"},
           {Outcome::DoesNotReachStrike, "does not reach strike"},
           {Outcome::DoesNotReachRest, "does not reach rest"},
           {Outcome::Steams, "steams"},
           {Outcome::StaysFarBelow, "stays far below boiling"},
           {Outcome::UncoversElement, "uncovers element"},
           {Outcome::StrikeTooHot, "strike too hot"}}) {
    rig.day.outcome = outcome;
    EXPECT_EQ(written()["day"]["outcome"], word);
  }
  for (const auto& [limit, word] : std::initializer_list<std::pair<Limit, const char*>>{
           {Limit::None, "none"},
           {Limit::Circuit, "circuit"},
           {Limit::Vessel, "vessel"},
           {Limit::BoilVigour, "boil-off"},
           {Limit::Boiling, "boiling"},
           {Limit::SmallestBatch, "smallest batch"},
           {Limit::TimeAllowed, "time allowed"}}) {
    rig.sizing->largest.stoppedBy = rig.sizing->toBoilWithin.stoppedBy = limit;
    EXPECT_EQ(written()["sizing"]["largest_batch"]["stopped_by"], word);
    EXPECT_EQ(written()["sizing"]["to_boil_within"]["stopped_by"], word);
  }
  for (const auto& [verdict, word] : std::initializer_list<std::pair<JacketVerdict, const char*>>{
           {JacketVerdict::MakesItBoil, "makes it boil"},
           {JacketVerdict::GetsFurther, "gets further"},
           {JacketVerdict::Worthwhile, "worthwhile"},
           {JacketVerdict::TimeNotWorthIt, "worthwhile, but not for the time"},
           {JacketVerdict::NotWorthIt, "not worth it"}}) {
    rig.jacket->verdict = verdict;
    EXPECT_EQ(written()["jacket"]["verdict"], word);
  }
  for (const auto& [kind, word] : std::initializer_list<std::pair<StageKind, const char*>>{
           {StageKind::Strike, "strike"},
           {StageKind::MashingIn, "mashing in"},
           {StageKind::Ramp, "ramp"},
           {StageKind::Rest, "rest"},
           {StageKind::UnpluggedRest, "unplugged rest"},
           {StageKind::Draining, "draining"},
           {StageKind::HeatingToBoil, "heating to boil"},
           {StageKind::Boil, "boil"}}) {
    rig.day.stages[0].kind = kind;
    EXPECT_EQ(written()["day"]["stages"][0]["stage"], word);
  }
}

TEST(ProblemsJson, CarriesSeverityPlaceAndSentence) {
  const rigs::Problems problems{
      {rigs::Severity::Error, "/batch",
       rigs::Told(TOLD("Problem", "accepted is %1"), rigs::amount(physics::litres(10.0)))},
      {rigs::Severity::Warning, "", rigs::Told(TOLD("Problem", "keep one"))}};
  const auto us = nlohmann::json::parse(
      rigs::problemsJson(problems, "plan.json", rigs::UnitSystem::UsCustomary));
  EXPECT_EQ(us["problems"][0]["message"], "accepted is 2.64 US gal");
  const auto json = nlohmann::json::parse(rigs::problemsJson(problems, "plan.json"));
  EXPECT_EQ(json["problems"][0]["message"], "accepted is 10 L");
  EXPECT_EQ(json["file"], "plan.json");
  ASSERT_EQ(json["problems"].size(), 2u);
  EXPECT_EQ(json["problems"][0]["severity"], "error");
  EXPECT_EQ(json["problems"][0]["where"], "/batch");
  EXPECT_EQ(json["problems"][1]["severity"], "remark");
}
