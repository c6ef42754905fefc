// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/opening.hpp"

#include <gtest/gtest.h>

#include <string>

#include "tests/support/solved_demo.hpp"

namespace gui::telling {
namespace {

using namespace physics;

std::string batchOf(const rigs::Plan& plan) { return rigs::inEnglish(openingOf(plan).at(1)); }

TEST(Opening, TellsWhatIsBrewedAndWhere) {
  const auto opening = openingOf(test_support::demoPlan());
  ASSERT_EQ(opening.size(), 3U);
  EXPECT_EQ(rigs::inEnglish(opening[0]), "Altbier after the move");
  EXPECT_EQ(rigs::inEnglish(opening[1]),
            "23 L of finished wort with 5.2 kg of grain, mashed at 66 °C for 1 h, 76 °C for "
            "10 min, boiled 1 h 10 min.");
  EXPECT_EQ(
      rigs::inEnglish(opening[2]),
      "Room 21 °C, water 12 °C, altitude 900 m; water boils at 97 °C here. A time to the boil is "
      "to the roll; first bubbles show 3 K to 5 K below.");
  EXPECT_EQ(rigs::inEnglish(opening[1], rigs::UnitSystem::UsCustomary),
            "6.08 US gal of finished wort with 11.5 lb of grain, mashed at 150.8 °F for 1 h, "
            "168.8 °F for 10 min, boiled 1 h 10 min.");
}

TEST(Opening, TellsTheHeightOfTheSeaInMetresOrFeet) {
  rigs::Plan plan = test_support::demoPlan();
  plan.altitude = metres(0.0);
  EXPECT_NE(rigs::inEnglish(openingOf(plan)[2]).find(", altitude 0 m; "), std::string::npos);
  EXPECT_NE(
      rigs::inEnglish(openingOf(plan)[2], rigs::UnitSystem::UsCustomary).find(", altitude 0 ft; "),
      std::string::npos);
}

TEST(Opening, LeavesOutWhatThePlanDoesNotHave) {
  rigs::Plan plan = test_support::demoPlan();
  plan.title.clear();
  plan.altitude.reset();
  plan.batch.size = PouredWater{litres(10.0)};
  plan.batch.boil = seconds(0.0);
  plan.batch.mash = UnpluggedMash{celsius(67.0), minutes(90.0)};
  EXPECT_EQ(rigs::inEnglish(openingOf(plan)[0]), "A brew day");
  EXPECT_EQ(rigs::inEnglish(openingOf(plan)[2]),
            "Room 21 °C, water 12 °C; water boils at 97 °C here. A time to the boil is to the "
            "roll; first "
            "bubbles show 3 K to 5 K below.");
  EXPECT_EQ(batchOf(plan),
            "10 L of water poured with 5.2 kg of grain, mashed from 67 °C for 1 h 30 min "
            "unplugged.");
  plan.batch.grain.mass = kilograms(0.0);
  EXPECT_EQ(batchOf(plan), "10 L of water poured.");
}

}  // namespace
}  // namespace gui::telling
