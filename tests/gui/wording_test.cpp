// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/wording.hpp"

#include <gtest/gtest.h>

#include "tests/gui/plan_in_code.hpp"

using namespace gui;
using namespace physics;

TEST(RoughTime, KeepsSecondsOnlyWhereTheyMatter) {
  EXPECT_EQ(roughTime(seconds(70.0)), "1 min 10 s");
  EXPECT_EQ(roughTime(minutes(41.7)), "42 min");
  EXPECT_EQ(roughTime(minutes(65.2)), "1 h 05 min");
  EXPECT_EQ(roughTime(minutes(-41.7)), "-42 min");
}

TEST(ClockTime, CountsTheDaysAfterMidnight) {
  EXPECT_EQ(clockTime(hours(9.0) + minutes(41.4)), "09:41");
  EXPECT_EQ(clockTime(hours(24.25)), "+1 d 00:15");
  EXPECT_EQ(clockTime(minutes(59.9)), "01:00");
}

TEST(Money, PutsSymbolsInFrontAndCodesBehind) {
  EXPECT_EQ(money(1.944, {.perKilowattHour = 0.3, .currency = "EUR", .dated = ""}), "1.94 EUR");
  EXPECT_EQ(money(1.944, {.perKilowattHour = 0.3, .currency = "$", .dated = ""}), "$1.94");
  EXPECT_EQ(money(0.0456, {.perKilowattHour = 0.3, .currency = "EUR", .dated = ""}), "0.046 EUR");
}

// The scale's edges belong to the stronger word: 5, 8, 10 and 15 %/h.
TEST(Vigour, ChangesItsWordAtThePublishedFigures) {
  struct Case {
    double share;
    std::string_view word;
  };
  for (const Case& c : {Case{0.049, "simmer"}, Case{0.05, "gentle"}, Case{0.0799, "gentle"},
                        Case{0.08, "steady"}, Case{0.10, "strong"}, Case{0.15, "fierce"}}) {
    SCOPED_TRACE(c.share);
    BoilFigures boil{};
    boil.shareOfPreBoilPerHour = c.share;
    EXPECT_EQ(rigs::vigourWord(rigs::vigourOf(boil)), c.word);
  }
}

// 240 V element on 208 V: (208/240)^2 = 75.1 % of its rating at its terminals, a little less
// behind a cable of 0.1 ohm.
TEST(ElementText, SaysWhatALowerVoltageLeaves) {
  rigs::RigPlan rig = test_support::kettle("Import", 3500.0, 240.0, 208.0);
  rig.rig.supply.cableLoop = ohms(0.0);
  const auto load = electricalLoad(rig.rig.element, rig.rig.supply);
  EXPECT_EQ(elementText(rig, load, UnitSystem::SI),
            "2629 W reach the vessel, 75.1 % of the element's 3500 W at 240 V: its supply has "
            "208 V.");
}

TEST(CircuitText, WarnsOfTooMuchCurrent) {
  const rigs::RigPlan fits = test_support::kettle("Fits", 3000.0, 230.0, 230.0);
  EXPECT_EQ(circuitText(fits, UnitSystem::SI), "");
  const rigs::RigPlan large = test_support::kettle("Large", 5500.0, 230.0, 230.0);
  EXPECT_NE(circuitText(large, UnitSystem::SI).find("too much for its circuit of 16 A"),
            std::string::npos);
}

TEST(StageNames, NumbersWhatComesTwice) {
  BrewDay day;
  for (const StageKind kind :
       {StageKind::Strike, StageKind::Rest, StageKind::Ramp, StageKind::Rest}) {
    Stage stage{};
    stage.kind = kind;
    day.stages.push_back(stage);
  }
  EXPECT_EQ(stageNames(day), (std::vector<std::string>{"Strike", "Rest 1", "Ramp", "Rest 2"}));
}
