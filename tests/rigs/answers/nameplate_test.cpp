// SPDX-License-Identifier: GPL-3.0-or-later
// A circuit's load by name plates alone.
#include "rigs/answers/nameplate.hpp"

#include <gtest/gtest.h>

#include "rigs/circuits/rating.hpp"
#include "tests/rigs/plans/plan_edit.hpp"
#include "tests/support/within.hpp"

namespace {

using namespace physics;
using namespace rigs;
using test_support::demoWith;
using test_support::Json;
using test_support::readChecked;

Plan with(const char* supply, double watt, double ratedVolt) {
  const Json element = {{"power", std::to_string(watt) + " W"},
                        {"rated_voltage", std::to_string(ratedVolt) + " V"},
                        {"top_height", "60 mm"}};
  const auto read = readChecked(
      demoWith({{"/rigs/0/supply", Json::parse(supply)}, {"/rigs/0/element", element}}));
  EXPECT_TRUE(read.plan) << test_support::told(read.problems);
  return read.plan.value_or(Plan{});
}

// 3 kW on 230 V: 13.04 A on a fuse of 13 A.
TEST(Nameplate, KnowsTheFuseOfABritishPlug) {
  const Plan plan = with(R"({"from": "UK 230 V 13 A plug"})", 3000.0, 230.0);
  const Finding found = nameplate(plan, plan.rigs[0]);
  EXPECT_EQ(found.fit, Fit::OnTheEdge);
  EXPECT_WITHIN(*found.load, amperes(13.043), amperes(5e-4));
  ASSERT_TRUE(found.device);
  EXPECT_TRUE(found.device->isFuse);
  EXPECT_EQ(worstNameplate(plan, plan.rigs[0]), Fit::OnTheEdge);
}

TEST(Nameplate, NeedsNoRules) {
  const Plan plan = with(R"({"voltage": "127 V", "current": "10 A"})", 2000.0, 127.0);
  const Finding found = nameplate(plan, plan.rigs[0]);
  EXPECT_EQ(found.fit, Fit::DoesNotFit);  // 15.7 A
  EXPECT_FALSE(found.device);
  EXPECT_TRUE(found.cite.clause.empty());
}

// The pump runs beside the element: 14.9 and 0.4 A of 15 A.
TEST(Nameplate, CountsThePumpToo) {
  Plan plan = with(R"({"voltage": "120 V", "current": "15 A"})", 1788.0, 120.0);
  EXPECT_EQ(nameplate(plan, plan.rigs[0]).fit, Fit::Fits);
  plan.rigs[0].circuits[0].details.pump = watts(48.0);
  plan.rigs[0].circuits[0].details.pumpAt = volts(120.0);
  EXPECT_EQ(nameplate(plan, plan.rigs[0]).fit, Fit::OnTheEdge);
  EXPECT_WITHIN(*nameplate(plan, plan.rigs[0]).load, amperes(15.3), amperes(1e-9));
}

}  // namespace
