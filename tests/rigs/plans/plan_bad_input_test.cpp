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
using test_support::told;
using test_support::Wrong;
using test_support::wrongBatches;
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
