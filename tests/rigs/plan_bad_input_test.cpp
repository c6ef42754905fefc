// SPDX-License-Identifier: GPL-3.0-or-later
// What a person is told about a plan that is wrong: place, what was found, what is accepted.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <vector>

#include "rigs/plan.hpp"
#include "tests/rigs/plan_edit.hpp"

namespace rigs {
namespace {

using test_support::demoWith;
using test_support::Json;
using test_support::readChecked;
using test_support::removed;
using test_support::told;
using testing::HasSubstr;

struct Wrong {
  std::string document;
  Severity severity;
  std::string where;
  std::string says;  // part of the sentence
};

constexpr Severity kError = Severity::Error;
constexpr Severity kWarning = Severity::Warning;

std::vector<Wrong> wrongBatches() {
  return {
      {demoWith({{"/batch/wort", 23}}), kError, "/batch/wort", "\"23 L\""},
      {demoWith({{"/batch/wort", "23 kg"}}), kError, "/batch/wort", "volume"},
      {demoWith({{"/batch/wort", "23000 L"}}), kError, "/batch/wort", "0.5 L to 2000 L"},
      {demoWith({{"/batch/wort", removed()}}), kError, "/batch", "\"wort\": \"23 L\""},
      {demoWith({{"/batch/water", "30 L"}}), kError, "/batch", "keep one"},
      {demoWith({{"/batch/boil", removed()}}), kError, "/batch/boil", "missing"},
      {demoWith({{"/batch/grain/mass", "12 kg"}, {"/batch/wort", "10 L"}}), kError, "/batch/grain",
       "12 kg of grain in about 19.6 L of water give a wort of 30.6 % extract"},
      {demoWith({{"/batch/grain/extract", "90 %"}, {"/batch/grain/moisture", "12 %"}}), kError,
       "/batch/grain/extract", "90 % and a moisture of 12 % are more than the whole grain"},
      {demoWith({{"/batch/grain/absorption", "3 L/kg"},
                 {"/batch/wort", removed()},
                 {"/batch/water", "16 L"}}),
       kError, "/batch/water", "the grain keeps 15.6 L"},
      {demoWith({{"/batch/grain/mass", "9.6 kg"},
                 {"/batch/grain/extract", "40 %"},
                 {"/batch/wort", removed()},
                 {"/batch/water", "17 L"}}),
       kWarning, "/batch/grain", "1.77 L/kg of water to grain is too thick"},
      {demoWith({{"/batch/grain/mass", "15 kg"},
                 {"/batch/grain/extract", "20 %"},
                 {"/batch/wort", removed()},
                 {"/batch/water", "16 L"}}),
       kError, "/batch/grain", "1.07 L/kg of water to grain is no mash"},
      {demoWith({{"/batch/mash", removed()}}), kError, "/batch/mash", "missing"},
      {demoWith({{"/batch/grain", removed()}}), kWarning, "/batch/mash", "no grain"},
      {demoWith({{"/batch/mash/unplugged", {{"temperature", "66 C"}, {"time", "8 h"}}}}), kError,
       "/batch/mash", "keep one"},
      {demoWith({{"/batch/mash/rests", removed()}}), kError, "/batch/mash", "neither"},
      {demoWith({{"/batch/mash/rests", Json::array()}}), kError, "/batch/mash/rests",
       "1 to 12 are accepted"},
      {demoWith({{"/batch/mash/rests/1/temperature", "60 C"}}), kWarning,
       "/batch/mash/rests/1/temperature", "60 °C does not rise above the rest before, at 66 °C"},
      // 97.0 C is the boiling point at 900 m.
      {demoWith({{"/batch/mash/rests/1/temperature", "96.5 C"}}), kError,
       "/batch/mash/rests/1/temperature", "water boils at 97 °C here"},
      {demoWith({{"/batch/mash/rests/0/temperature", "94 C"}}), kError, "/batch/mash",
       "it boils at 97 °C here"},
      {demoWith({{"/batch/boil", "6 h"},
                 {"/batch/wort", removed()},
                 {"/batch/water", "12 L"},
                 {"/batch/grain/mass", "1 kg"}}),
       kError, "/rigs/1/element", "the boil is longer than the water lasts"},
      // A wort of that much extract is a syrup long before the outside heater runs dry.
      {demoWith({{"/batch/boil", "12 h"},
                 {"/batch/wort", removed()},
                 {"/batch/water", "20 L"},
                 {"/batch/grain/mass", "5 kg"},
                 {"/rigs/1/element/power", "4000 W"},
                 {"/rigs/1/element/rated_voltage", "120 V"},
                 {"/rigs/1/element/top_height", "0 mm"}}),
       kError, "/rigs/1/element", "a syrup of more than 60 % extract, which burns on the element"},
      {demoWith(
           {{"/batch/wort", removed()}, {"/batch/water", "5 L"}, {"/batch/grain/mass", "1 kg"}}),
       kError, "/rigs/0/element", "needs at least 6.43 L"},
  };
}

std::vector<Wrong> wrongPlaces() {
  return {
      {demoWith({{"/place/pressure", "91 kPa"}}), kError, "/place/altitude", "keep one"},
      {demoWith({{"/place/altitude", removed()}}), kError, "/place", "\"altitude\": \"120 m\""},
      {demoWith({{"/place/altitude", "9000 m"}}), kError, "/place/altitude", "-430 m to 5200 m"},
      {demoWith({{"/place/humidity", "0 %"}}), kError, "/place/humidity", "1 % to 100 %"},
      {demoWith({{"/place/water", "90 C"}}), kError, "/place/water", "hotter than strike water"},
      {demoWith({{"/place/room", "68"}}), kError, "/place/room", "°C"},
      {demoWith({{"/tariff/price", "28 ct"}}), kError, "/tariff/price", "\"0.28 EUR/kWh\""},
      {demoWith({{"/tariff/price", "EUR/kWh"}}), kError, "/tariff/price", "no price"},
      {demoWith({{"/tariff/price", "0.28/kWh"}}), kError, "/tariff/price", "no price"},
      {demoWith({{"/tariff/price", "-1 EUR/kWh"}}), kError, "/tariff/price", "no price"},
      {demoWith({{"/tariff/price", "1 2 EUR/kWh"}}), kError, "/tariff/price", "no price"},
      {demoWith({{"/tariff/dated", "last year"}}), kError, "/tariff/dated", "\"2026-01\""},
      {demoWith({{"/tariff/dated", "2026-13"}}), kError, "/tariff/dated", "no date"},
      {demoWith({{"/day_starts", "24:00"}}), kError, "/day_starts", "23:59"},
      {demoWith({{"/day_starts", "nine"}}), kError, "/day_starts", "no time of day"},
      {demoWith({{"/goals/boil_off", "8 %"}}), kError, "/goals/boil_off", "%/h"},
      {demoWith({{"/format", removed()}}), kError, "/format", "heat-ledger-plan"},
      {demoWith({{"/format/version", 2}}), kError, "/format/version", "understands version 1"},
      {demoWith({{"/format/name", "recipe"}}), kError, "/format/name", "heat-ledger-plan"},
      {demoWith({{"/tarif", 1}, {"/tariff", removed()}}), kWarning, "/tarif",
       "perhaps \"tariff\" was meant"},
      {"", kError, "", "empty"},
      {"[]", kError, "", "an object is needed"},
      {"{\"title\": \"a\"", kError, "", "ends too early"},
  };
}

std::vector<Wrong> wrongRigs() {
  const Json cork = Json::array({{{"material", "cork"}, {"thickness", "10 mm"}}});
  const Json nothing = Json::array({{{"material", "cork"}, {"thickness", "0 mm"}}});
  return {
      {demoWith({{"/rigs", Json::array({{{"name", "A"}, {"from", "40 L steel kettle"}}})}}), kError,
       "/rigs", "2 to 12 are accepted"},
      {demoWith({{"/rigs/3/name", "New element, kitchen"}}), kError, "/rigs/3/name",
       "two rigs are called \"New element, kitchen\""},
      {demoWith({{"/rigs/0/from", "40 L stel kettle"}}), kError, "/rigs/0/from",
       "perhaps \"40 L steel kettle\" was meant"},
      {demoWith({{"/rigs/0/from", "../x.json"}}), kError, "/rigs/0/from", "out of the plan's"},
      {demoWith({{"/rigs/0/from", "a/../../x.json"}}), kError, "/rigs/0/from", "out of the plan's"},
      {demoWith({{"/rigs/0/from", "/etc/x.json"}}), kError, "/rigs/0/from", "out of the plan's"},
      {demoWith({{"/rigs/0/from", "x.json"}}), kError, "/rigs/0/from", "is not there"},
      {demoWith({{"/rigs/0/vessel/finish", "shiny"}}), kError, "/rigs/0/vessel/finish",
       "one of \"bright\", \"brushed\", \"dull\", \"painted\""},
      {demoWith({{"/rigs/0/vessel/emissivity", 0.3}}), kError, "/rigs/0/vessel/emissivity",
       "keep one"},
      {demoWith({{"/rigs/0/vessel/material", "cork"}}), kError, "/rigs/0/vessel/material",
       "no known material for a vessel"},
      {demoWith({{"/rigs/0/vessel/mass", "40 kg"}}), kWarning, "/rigs/0/vessel/mass",
       "far from the 3.48 kg"},
      {demoWith({{"/rigs/1/element/top_height", "500 mm"}}), kError, "/rigs/1/element",
       "50 cm is not below the vessel's rim at 40.5 cm"},
      // 120 V on 208 V: (208/120)^2 is 3.0; 140 V: 1.36; 125 V: 1.085, which is ordinary.
      {demoWith({{"/rigs/1/supply/from", "North America 208 V 30 A"}}), kError, "/rigs/1/supply",
       "an element of 120 V on 208 V would give 3 times its rated power"},
      {demoWith({{"/rigs/1/supply/voltage", "140 V"}}), kError, "/rigs/1/supply",
       "an element of 120 V on 140 V would give 1.36 times"},
      {demoWith({{"/rigs/1/element/rated_voltage", "115 V"}}), kWarning, "/rigs/1/supply",
       "an element of 115 V on 120 V gives 1.09 times"},
      {demoWith({{"/rigs/1/supply/from", "Nort America 120 V 15 A"}}), kError,
       "/rigs/1/supply/from", "perhaps \"North America 120 V 15 A\" was meant"},
      {demoWith({{"/rigs/1/cable/loop_resistance", "0.1 ohm"}}), kError, "/rigs/1/cable/length",
       "keep one"},
      {demoWith({{"/rigs/1/cable/length", "150 m"}}), kWarning, "/rigs/1/cable", "as heat"},
      {demoWith({{"/rigs/2/lid", "none"}}), kError, "/rigs/2/jacket/lid", "the rig has none"},
      {demoWith({{"/rigs/2/lid/open/boil", "0 %"}}), kWarning, "/rigs/2/lid/open/boil",
       "never boil under a closed lid"},
      {demoWith({{"/rigs/2/jacket", Json::object()}}), kError, "/rigs/2/jacket", "around nothing"},
      {demoWith({{"/rigs/2/jacket/side", Json::array()}}), kError, "/rigs/2/jacket/side",
       "this list of layers is empty"},
      {demoWith({{"/rigs/2/jacket/side", nothing}}), kError, "/rigs/2/jacket/side/0/thickness",
       "accepted is 0.1 mm to 300 mm"},
      {demoWith({{"/rigs/2/jacket/outside", "foul"}}), kError, "/rigs/2/jacket/outside",
       "perhaps \"foil\" was meant"},
      {demoWith({{"/rigs/2/jacket/side/0/material", "corc"}}), kError,
       "/rigs/2/jacket/side/0/material", "perhaps \"cork\" was meant"},
      {demoWith({{"/jacket_to_compare/sides", cork}}), kWarning, "/jacket_to_compare/sides",
       "no effect"},
      {demoWith({{"/rigs/0/stands_on", {{"kind", "tabel"}}}}), kError, "/rigs/0/stands_on/kind",
       "perhaps \"table\" was meant"},
      {demoWith({{"/rigs/0/recirculation",
                  {{"hose_length", "1 m"}, {"outer_diameter", "10 mm"}, {"wall", "5 mm"}}}}),
       kError, "/rigs/0/recirculation/wall", "no room for wort"},
      {demoWith({{"/batch/wort", "60 L"}}), kError, "/rigs/0/vessel",
       "and the vessel holds 40.1 L"},
  };
}

void expectTold(const std::vector<Wrong>& cases) {
  for (const Wrong& wrong : cases) {
    SCOPED_TRACE(wrong.where + ": " + wrong.says);
    const auto reading = readChecked(wrong.document);
    SCOPED_TRACE(told(reading.problems));
    bool found = false;
    for (const Problem& problem : reading.problems)
      found = found || (problem.severity == wrong.severity && problem.where == wrong.where &&
                        problem.message.find(wrong.says) != std::string::npos);
    EXPECT_TRUE(found);
    if (wrong.severity == kWarning) {
      EXPECT_FALSE(hasErrors(reading.problems));
      EXPECT_TRUE(reading.plan);
    } else {
      EXPECT_TRUE(hasErrors(reading.problems));
    }
  }
}

TEST(BadPlan, BatchIsToldWhere) { expectTold(wrongBatches()); }
TEST(BadPlan, PlaceIsToldWhere) { expectTold(wrongPlaces()); }
TEST(BadPlan, RigIsToldWhere) { expectTold(wrongRigs()); }

// 60 L of wort in a vessel of 40.1 L, which is 10.6 US gal.
TEST(BadPlan, ComputedFiguresFollowTheReader) {
  const auto reading = readChecked(demoWith({{"/batch/wort", "60 L"}}));
  ASSERT_TRUE(reading.plan);
  Problems problems;
  checkPlan(*reading.plan, problems, UnitSystem::UsCustomary);
  ASSERT_FALSE(problems.empty());
  EXPECT_THAT(problems.front().message, HasSubstr("and the vessel holds 10.6 US gal"));
  for (const Problem& problem : problems) {
    EXPECT_EQ(problem.message.find(" L"), std::string::npos) << problem.message;
    EXPECT_EQ(problem.message.find(" kg"), std::string::npos) << problem.message;
  }
}

TEST(BadPlan, IsToldAllAtOnce) {
  const auto reading = readChecked(demoWith({{"/batch/wort", "23"},
                                             {"/batch/grain/mass", "5 L"},
                                             {"/place/water", "12"},
                                             {"/tariff/price", "free"},
                                             {"/rigs/0/cable/length", "far"},
                                             {"/rigs/1/element/power", "1650"},
                                             {"/rigs/2/lid/material", "tin"},
                                             {"/rigs/3/supply/from", "the wall"}}));
  EXPECT_FALSE(reading.plan);
  EXPECT_EQ(reading.problems.size(), 8U) << told(reading.problems);
}

TEST(BadPlan, HotWaterIsToldOnceForAllRigs) {
  const auto reading = readChecked(demoWith({{"/place/water", "90 C"}}));
  EXPECT_EQ(reading.problems.size(), 1U) << told(reading.problems);
}

// Any number in place of any of the demo's texts: a plan, or an error with a place within it.
RC_GTEST_PROP(BadPlan, AnyTextAnywhereIsReadOrRefused, (const std::string& text)) {
  static const Json flat = Json::parse(newPlanText()).flatten();
  const auto at = *rc::gen::inRange<std::size_t>(0, flat.size());
  auto entry = flat.begin();
  std::advance(entry, static_cast<std::ptrdiff_t>(at));
  Json document = Json::parse(newPlanText());
  document[Json::json_pointer(entry.key())] = text;
  Problems problems;
  const auto plan = readPlan(document.dump(-1, ' ', false, Json::error_handler_t::replace),
                             "/nonexistent", problems);
  RC_ASSERT(plan.has_value() != hasErrors(problems));
  for (const Problem& problem : problems) {
    RC_ASSERT(!problem.message.empty());
    RC_ASSERT(problem.where.empty() || problem.where.front() == '/');
  }
}

}  // namespace
}  // namespace rigs
