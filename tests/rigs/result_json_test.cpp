// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/result_json.hpp"

#include <gtest/gtest.h>

#include <limits>
#include <nlohmann/json.hpp>
#include <stdexcept>

#include "tests/gui/plan_in_code.hpp"

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
  EXPECT_EQ(weak["outcome"], "does not boil");
  EXPECT_EQ(weak["levels_off"]["at_C"].get<double>(),
            physics::inCelsius(answers.rigs[2].day.levelsOff->at));
  EXPECT_FALSE(weak.contains("boil"));
}

TEST(ResultJson, WritesCurvesOnlyWhereThereAreAny) {
  const rigs::Plan plan = test_support::planInCode();
  EXPECT_EQ(rigs::resultJson(plan, rigs::answer(plan, rigs::Depth::Day)).find("\"curve\""),
            std::string::npos);
  const auto json =
      nlohmann::json::parse(rigs::resultJson(plan, rigs::answer(plan, rigs::Depth::Day, true)));
  EXPECT_GT(json["rigs"][0]["day"]["stages"][0]["curve"].size(), 10u);
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

TEST(ProblemsJson, CarriesSeverityPlaceAndSentence) {
  const rigs::Problems problems{{rigs::Severity::Error, "/batch", "bad"},
                                {rigs::Severity::Warning, "", "odd"}};
  const auto json = nlohmann::json::parse(rigs::problemsJson(problems, "plan.json"));
  EXPECT_EQ(json["file"], "plan.json");
  ASSERT_EQ(json["problems"].size(), 2u);
  EXPECT_EQ(json["problems"][0]["severity"], "error");
  EXPECT_EQ(json["problems"][0]["where"], "/batch");
  EXPECT_EQ(json["problems"][1]["severity"], "remark");
}
