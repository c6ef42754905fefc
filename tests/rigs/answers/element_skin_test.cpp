// SPDX-License-Identifier: GPL-3.0-or-later
// The skin of a plan's element: which plans have one, by what heat, and what a plan may state.
#include "rigs/answers/element_skin.hpp"

#include <gtest/gtest.h>

#include <numbers>

#include "rigs/answers/answers.hpp"
#include "rigs/results/result_json.hpp"
#include "tests/rigs/plans/plan_edit.hpp"

namespace {

using namespace rigs;
using test_support::demoWith;
using test_support::Edits;
using test_support::Json;
using test_support::readChecked;
using test_support::removed;
using test_support::told;

Plan planWith(Edits edits) {
  const auto read = readChecked(demoWith(edits));
  EXPECT_TRUE(read.plan) << told(read.problems);
  return read.plan.value_or(Plan{});
}
std::optional<ElementSkin> skinOf(const Plan& plan, std::size_t rig = 1) {
  return elementSkin(plan, plan.rigs.at(rig), answer(plan, Depth::Day).rigs.at(rig));
}

// 11 mm by 600 mm: 207 cm2.
const Json kTwoHundred{{"power", "1440 W"},
                       {"rated_voltage", "120 V"},
                       {"top_height", "50 mm"},
                       {"diameter", "11 mm"},
                       {"heated_length", "600 mm"}};
Json twice(const char* wattsOfTheSecond) {
  Json second = kTwoHundred;
  second["power"] = wattsOfTheSecond;
  return Json::array({kTwoHundred, second});
}

TEST(ElementSkin, IsThereWhereItsSizeIsStated) {
  EXPECT_FALSE(skinOf(planWith({})));
  const Plan plan = planWith({{"/rigs/1/element", kTwoHundred}});
  const auto skin = skinOf(plan);
  ASSERT_TRUE(skin);
  EXPECT_FALSE(skinOf(plan, 0));
  const double face = std::numbers::pi * 0.011 * 0.6;
  const double delivered =
      physics::inWatts(answer(plan, Depth::Day).rigs[1].day.electrical.delivered);
  EXPECT_NEAR(physics::inWattsPerSquareMetre(skin->flux), delivered / face,
              1e-6 * delivered / face);
  EXPECT_GT(skin->inStillMash, skin->inStillWater);
  EXPECT_GT(skin->inStillWater, skin->mash);
  const Json json = Json::parse(resultJson(plan, answer(plan, Depth::Day)));
  EXPECT_NEAR(json["rigs"][1]["element_skin"]["in_still_water_C"].get<double>(),
              physics::inCelsius(skin->inStillWater), 1e-3);
  EXPECT_FALSE(json["rigs"][0].contains("element_skin"));
}

// In parallel each has what it would have alone; in series equal ones share; of unlike ones in
// series the weaker, whose resistance is higher, has more.
TEST(ElementSkin, IsOfTheElementWithMostHeatThroughIt) {
  const auto flux = [](const char* wired, const char* second) {
    const Plan plan = planWith({{"/rigs/1/element", removed()},
                                {"/rigs/1/elements", twice(second)},
                                {"/rigs/1/wired", wired},
                                {"/rigs/1/cable", "none"}});
    return physics::inWattsPerSquareMetre(skinOf(plan).value().flux);
  };
  const double alone = physics::inWattsPerSquareMetre(
      skinOf(planWith({{"/rigs/1/element", kTwoHundred}, {"/rigs/1/cable", "none"}})).value().flux);
  EXPECT_NEAR(flux("parallel", "1440 W"), alone, 1e-6 * alone);
  EXPECT_NEAR(flux("parallel", "2880 W"), 2.0 * alone, 1e-6 * alone);
  EXPECT_NEAR(flux("two circuits", "2880 W"), 2.0 * alone, 1e-6 * alone);
  EXPECT_NEAR(flux("series", "1440 W"), alone / 4.0, 1e-6 * alone);
  // R and R/2 on U: the current is 2/3 of U/R, and R takes 4/9 of what it would alone.
  EXPECT_NEAR(flux("series", "2880 W"), alone * 4.0 / 9.0, 1e-6 * alone);
}

TEST(ElementSkin, IsInTheMashOnlyWhereThatIsHeated) {
  const auto heats = [](Json mash) {
    return skinOf(planWith({{"/rigs/1/element", kTwoHundred}, {"/batch/mash", std::move(mash)}}))
        .value()
        .heatsTheMash;
  };
  EXPECT_TRUE(heats({{"rests", Json::array({{{"temperature", "66 C"}, {"time", "60 min"}}})}}));
  EXPECT_FALSE(heats({{"unplugged", {{"temperature", "67 C"}, {"time", "10 h"}}}}));
  const Plan water = planWith(
      {{"/rigs/1/element", kTwoHundred}, {"/batch/grain", removed()}, {"/batch/mash", removed()}});
  EXPECT_FALSE(skinOf(water).value().heatsTheMash);
}

TEST(ElementSize, IsStatedWholeAndOfWhatIsInTheWort) {
  const auto says = [](Edits edits, const char* where, const char* text) {
    const auto read = readChecked(demoWith(edits));
    EXPECT_TRUE(hasErrors(read.problems));
    bool found = false;
    for (const Problem& p : read.problems)
      found = found || (p.where == where && inEnglish(p.message).find(text) != std::string::npos);
    EXPECT_TRUE(found) << told(read.problems);
  };
  says({{"/rigs/1/element/diameter", "11 mm"}}, "/rigs/1/element/heated_length", "missing");
  says({{"/rigs/1/element/heated_length", "1 m"}}, "/rigs/1/element/diameter", "missing");
  says({{"/rigs/1/element/diameter", "11 m"}, {"/rigs/1/element/heated_length", "1 m"}},
       "/rigs/1/element/diameter", "3 mm to 40 mm");
  Json outside = kTwoHundred;
  outside["top_height"] = "0 mm";
  says({{"/rigs/1/element", outside}}, "/rigs/1/element/heated_length", "no skin in the wort");
}

}  // namespace
