// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/element_skin.hpp"

#include <gtest/gtest.h>

#include "gui/telling/element.hpp"
#include "tests/gui/telling/told_checks.hpp"

namespace gui::telling {
namespace {

using rigs::inEnglish;
using test_support::caseOf;
using test_support::cell;
using test_support::holds;

// The demo with a rod of 11 mm and this length in its first kettle.
rigs::Solution demoWithRod(double metres) {
  rigs::Solution solution = test_support::solvedDemo();
  rigs::RigPlan& rig = solution.plan.rigs[0];
  rig.circuits.front().elements.front().rod = {.diameter = physics::metres(0.011),
                                               .length = physics::metres(metres)};
  return solution;
}
std::string saidOfSkins(const Answer& answer) { return test_support::saidOf(answer, 0); }

TEST(TheElementsSkin, IsToldWhereItsSizeIsStated) {
  Answer without;
  saySkins(without, caseOf(test_support::solvedDemo()));
  EXPECT_EQ(saidOfSkins(without), "");
  const rigs::Solution solution = demoWithRod(0.6);
  Answer answer;
  saySkins(answer, caseOf(solution));
  const std::string said = saidOfSkins(answer);
  EXPECT_TRUE(holds(said, "W/cm² go through its element's skin")) << said;
  EXPECT_TRUE(holds(said, "No published limit was found")) << said;
}

TEST(TheElementsSkin, SaysOfALongRodThatItKeepsToPracticeAndOfAShortOneThatItDoesNot) {
  const auto said = [](double metres) {
    const rigs::Solution solution = demoWithRod(metres);
    Answer answer;
    saySkins(answer, caseOf(solution));
    return saidOfSkins(answer);
  };
  EXPECT_TRUE(holds(said(8.0), "and it does")) << said(8.0);
  EXPECT_TRUE(holds(said(0.3), "and this is more")) << said(0.3);
}

TEST(TheElementsSkin, HasItsRowsInTheTableOfElements) {
  const Table table = elementTable(caseOf(demoWithRod(0.6)));
  EXPECT_NE(cell(table, "heat through it", 0), "no such row");
  EXPECT_NE(cell(table, "water sizzles on it from", 0), "no such row");
  EXPECT_EQ(cell(elementTable(caseOf(test_support::solvedDemo())), "heat through it", 0),
            "no such row");
}

}  // namespace
}  // namespace gui::telling
