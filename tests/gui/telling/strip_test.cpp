// SPDX-License-Identifier: GPL-3.0-or-later
// What can hurt, in a line.
#include "gui/telling/strip.hpp"

#include <gtest/gtest.h>

#include <string>

#include "gui/telling/translations.hpp"
#include "tests/gui/telling/asked.hpp"
#include "tests/support/overnight.hpp"
#include "tests/support/readers.hpp"
#include "tests/support/solved_demo.hpp"

namespace gui::telling {
namespace {

std::string stripIn(const rigs::Solution& solution, const rigs::Reader& reader = {}) {
  return rigs::tell(stripOf({solution, solution.plan, reader, {}}), reader);
}

TEST(Strip, SaysWhatHoldsOfEveryPlan) {
  EXPECT_EQ(
      stripIn(test_support::solvedDemo()),
      "Mains current and boiling wort can kill. Have a licensed electrician check; local codes "
      "decide.");
}

TEST(Strip, NamesWhoOverloadsACircuit) {
  rigs::Solution solution = test_support::solvedDemo();
  for (const std::size_t i : {0u, 2u}) {
    auto& circuit = solution.answers.rigs[i].circuit.circuits.front();
    circuit.nameplate.fit = rigs::Fit::DoesNotFit;
    circuit.nameplate.load = 1.4 * circuit.supply.rating;
  }
  EXPECT_EQ(
      stripIn(solution),
      "Mains current and boiling wort can kill. (a)▲ and (c)▲ ask more of their circuits than "
      "those are rated for. Have a licensed electrician check; local codes decide.");
}

TEST(Strip, NamesTheMashThatStandsWarmTheLongest) {
  const rigs::Solution& solution = test_support::overnight();
  const std::string strip = stripIn(solution);
  EXPECT_NE(strip.find("of its rest: boil it promptly."), std::string::npos) << strip;
  EXPECT_NE(strip.find("57 °C"), std::string::npos) << strip;
}

}  // namespace
}  // namespace gui::telling
