// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/overload.hpp"

#include <gtest/gtest.h>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/summary.hpp"
#include "tests/gui/telling/asked.hpp"
#include "tests/support/solved_demo.hpp"

namespace gui::telling {
namespace {

using namespace physics;

// 5 kW at 230 V: 21.7 A (I = P/U) from a circuit of 16 A.
rigs::Plan overloadedPlan(double watt) {
  rigs::Plan plan = test_support::planInCode();
  for (Rig* rig : {&plan.rigs[0].rig, &plan.rigs[0].bare, &plan.rigs[0].jacketed}) {
    rig->element = {watts(watt), volts(230.0), metres(0.05)};
    rig->supply = {.nominal = volts(230.0), .rating = amperes(16.0), .cableLoop = ohms(0.0)};
  }
  return plan;
}

TEST(Overload, OpensEveryQuestionAndTheSummary) {
  const test_support::OwnCase own(overloadedPlan(5000.0), rigs::Depth::Everything);
  const std::string expected = "Overload: " + own.get().named(0).text +
                               " draws 21.7 A from its circuit of 16 A. Do not run it like that.";
  for (const Question question : allQuestions()) {
    SCOPED_TRACE(identifierOf(question));
    const Answer answer = answerTo(question, own.solution, {});
    ASSERT_FALSE(answer.sentences.empty());
    EXPECT_EQ(rigs::inEnglish(answer.sentences.front()), expected);
  }
  const Answer all = summary(own.get());
  ASSERT_FALSE(all.sentences.empty());
  EXPECT_EQ(rigs::inEnglish(all.sentences.front()), expected);
}

// 3.7 kW are 16.09 A: within what an element may take more than its plate says.
TEST(Overload, IsNotClaimedWithinThePlatesTolerance) {
  for (const double watt : {3000.0, 3700.0}) {
    const test_support::OwnCase own(overloadedPlan(watt), rigs::Depth::Day);
    EXPECT_TRUE(overloads(own.get()).empty()) << watt;
  }
}

}  // namespace
}  // namespace gui::telling
