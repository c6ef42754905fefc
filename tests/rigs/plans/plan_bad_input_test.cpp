// SPDX-License-Identifier: GPL-3.0-or-later
// What a person is told about a plan that is wrong: place, what was found, what is accepted.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <vector>

#include "rigs/plans/plan.hpp"
#include "tests/rigs/plans/plan_edit.hpp"
#include "tests/rigs/plans/wrong_plans.hpp"

namespace rigs {
namespace {

using test_support::demoWith;
using test_support::Json;
using test_support::kWarning;
using test_support::readChecked;
using test_support::removed;
using test_support::told;
using test_support::Wrong;
using test_support::wrongAdditions;
using test_support::wrongBatches;
using test_support::wrongLifts;
using test_support::wrongPlaces;
using test_support::wrongRigs;
using testing::HasSubstr;

void expectTold(const std::vector<Wrong>& cases) {
  for (const Wrong& wrong : cases) {
    SCOPED_TRACE(wrong.where + ": " + wrong.says);
    const auto reading = readChecked(wrong.document);
    SCOPED_TRACE(told(reading.problems));
    bool found = false;
    for (const Problem& problem : reading.problems)
      found = found || (problem.severity == wrong.severity && problem.where == wrong.where &&
                        inEnglish(problem.message).find(wrong.says) != std::string::npos);
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
TEST(BadPlan, RinseAndDrainAreToldWhere) { expectTold(wrongLifts()); }
TEST(BadPlan, AdditionIsToldWhere) { expectTold(wrongAdditions()); }
TEST(BadPlan, PlaceIsToldWhere) { expectTold(wrongPlaces()); }
TEST(BadPlan, RigIsToldWhere) { expectTold(wrongRigs()); }

// 60 L of wort in a vessel of 40.1 L, which is 10.6 US gal.
TEST(BadPlan, ComputedFiguresFollowTheReader) {
  const auto reading = readChecked(demoWith({{"/batch/wort", "60 L"}}));
  ASSERT_TRUE(reading.plan);
  ASSERT_FALSE(reading.problems.empty());
  EXPECT_THAT(inEnglish(reading.problems.front().message, UnitSystem::UsCustomary),
              HasSubstr("and the vessel holds 10.6 US gal"));
  for (const Problem& problem : reading.problems) {
    const std::string us = inEnglish(problem.message, UnitSystem::UsCustomary);
    EXPECT_EQ(us.find(" L"), std::string::npos) << us;
    EXPECT_EQ(us.find(" kg"), std::string::npos) << us;
  }
}

struct InBoth {
  std::string document, where, si, us;
};

// Whatever the plan is written in; only what is quoted from it stays as it was typed.
TEST(BadPlan, FiguresOfItsReadersFollowWhoeverIsTold) {
  const std::vector<InBoth> cases{
      {demoWith({{"/batch/grain/mass", "60 lb"}, {"/batch/wort", "6 gal"}}), "/batch/grain",
       "27.2 kg of grain in about 44.5 L of water give",
       "60 lb of grain in about 11.8 US gal of water give"},
      {demoWith({{"/batch/grain/mass", "15 kg"},
                 {"/batch/grain/extract", "20 %"},
                 {"/batch/wort", removed()},
                 {"/batch/water", "16 L"}}),
       "/batch/grain", "is no mash; from 1.2 L/kg is accepted, usual are 2.5 to 6 L/kg",
       "is no mash; from 0.575 US qt/lb is accepted, usual are 1.2 to 2.88 US qt/lb"},
      {demoWith({{"/batch/mash/rests/1/temperature", "96.5 C"}}), "/batch/mash/rests/1/temperature",
       "water boils at 97 °C here, and a mash must stay 1 K below",
       "water boils at 206.6 °F here, and a mash must stay 1.8 °F below"},
      {demoWith({{"/rigs/1/vessel/mass", "90 kg"}}), "/rigs/1/vessel/mass", "90 kg is far from",
       "198 lb is far from"},
      {demoWith({{"/batch/wort", "0.1 L"}}), "/batch/wort",
       R"("0.1 L" is out of range; accepted is 0.5 L to 2000 L)",
       R"("0.1 L" is out of range; accepted is 0.5 L to 2000 L)"},
      {demoWith({{"/batch/wort", "1e999 L"}}), "/batch/wort", "500 mL to 2000 L is accepted",
       "16.91 US fl oz to 528.3 US gal is accepted"}};
  for (const InBoth& one : cases) {
    SCOPED_TRACE(one.si);
    std::string si, us;
    for (const Problem& problem : readChecked(one.document).problems) {
      if (problem.where != one.where) continue;
      si += inEnglish(problem.message);
      us += inEnglish(problem.message, UnitSystem::UsCustomary);
    }
    EXPECT_THAT(si, HasSubstr(one.si));
    EXPECT_THAT(us, HasSubstr(one.us));
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
