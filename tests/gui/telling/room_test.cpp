// SPDX-License-Identifier: GPL-3.0-or-later
// What happens to the room? The result's own numbers, with and without a hood and a window.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

#include "gui/telling/words.hpp"
#include "tests/gui/telling/results.hpp"
#include "tests/gui/telling/solved.hpp"
#include "tests/support/readers.hpp"

namespace gui::telling {
namespace {

using test_support::caseOf;
using test_support::cellBelow;
using test_support::demoDays;
using test_support::demoWith;
using test_support::figureBelow;
using test_support::joined;
using test_support::kSi;
using test_support::kUs;
using test_support::spokenBlocks;
using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::Not;

Answer roomOfDemo() { return roomChanges(caseOf(demoDays(), kSi)); }

TEST(RoomChanges, PointToTheSameFiguresOfTheResult) {
  EXPECT_GE(test_support::comparedWithResult(roomOfDemo(), demoDays()), 50);
}

TEST(RoomChanges, DrawEveryPointOfTheRoomsDay) {
  const Answer answer = roomOfDemo();
  ASSERT_EQ(answer.pictures.size(), 2u);
  for (std::size_t i = 0; i < 4; ++i) {
    const auto& points = demoDays().answers.rigs[i].room->day.points;
    const auto& line = answer.pictures[0].lines[i].points;
    ASSERT_EQ(line.size(), points.size());
    ASSERT_GT(line.size(), 50u);
    for (std::size_t k = 0; k < line.size(); ++k) {
      EXPECT_DOUBLE_EQ(line[k].x, physics::inMinutes(points[k].time));
      EXPECT_DOUBLE_EQ(line[k].y, 100.0 * points[k].relativeHumidity);
    }
    EXPECT_NEAR(answer.pictures[1].stacks[i].parts[0],
                physics::inLitresPerHour(*demoDays().answers.rigs[i].room->airflow) / 1e3, 1e-9);
  }
  EXPECT_EQ(answer.pictures[0].marks.size(), 4u);  // the first rig fills the air by steaming
  // A hood here, a hood there, and where make-up air is needed: what stands in the list below.
  ASSERT_EQ(answer.pictures[1].limits.size(), 3u);
  EXPECT_NEAR(answer.pictures[1].limits[0].x, 108.0, 1e-9);
  EXPECT_NEAR(answer.pictures[1].limits[1].x, 169.901, 1e-3);
  EXPECT_NEAR(answer.pictures[1].limits[2].x, 679.604, 1e-3);
}

TEST(RoomChanges, TellMostAndLeast) {
  const std::string text = joined(roomOfDemo().sentences);
  EXPECT_THAT(text, AllOf(HasSubstr("3.8 kg of vapour go into the room with (d) "),
                          HasSubstr("1.55 kg with (a) "), HasSubstr(", the least."),
                          HasSubstr("545 m³/h hold 60 % while most of it rises.")));
}

TEST(RoomChanges, TellEachRig) {
  const std::string text = spokenBlocks(roomOfDemo());
  EXPECT_THAT(text, AllOf(HasSubstr("(a) 1.55 kg of vapour and 1.37 kWh of heat go into the room; "
                                    "at most 1.85 kg/h of vapour and 399 W of heat. The air is "
                                    "full of vapour from 6 h into the day on, and 694 g of water "
                                    "run down what is coldest.\n"),
                          HasSubstr("All its vapour would fill 122 m³ of bone-dry air.\n"),
                          HasSubstr("545 m³/h hold 60 % while most vapour rises. Without any "
                                    "exchange the room is full after 8 min of that.\n")));
}

TEST(RoomChanges, SayWhichPublishedAirflowsAreEnough) {
  const std::string text = spokenBlocks(roomOfDemo());
  EXPECT_THAT(text,
              AllOf(HasSubstr("510 m³/h: other exhaust of a kitchen, on demand, enough for (a), "
                              "(b), (c), too little for (d) [ASHRAE 62.2, quoted by a national "
                              "laboratory's page; read]\n"),
                    HasSubstr("42.5 m³/h: kitchen, continuous, too little for all ["),
                    HasSubstr("Above 680 m³/h houses in North America need make-up air")));
}

TEST(RoomChanges, FollowTheRoom) {
  const auto aired = demoWith({{"/place/air", R"({"volume": "40 m3", "airflow": "900 m3/h"})"}});
  const Answer answer = roomChanges(caseOf(aired, kUs));
  const auto units = rigs::UnitSystem::UsCustomary;
  EXPECT_THAT(joined(answer.sentences, units), HasSubstr("or below"));
  EXPECT_TRUE(answer.pictures[0].marks.empty());
  const std::string notes = joined(answer.notes, units);
  EXPECT_THAT(notes, AllOf(HasSubstr("The room: 1413 ft³ of air, 530 ft³/min of it"),
                           Not(HasSubstr("assumed"))));
  EXPECT_THAT(spokenBlocks(answer, units), HasSubstr("The air's humidity rises from 45 % to "));
  EXPECT_NEAR(
      figureBelow(answer, "Air needed while most vapour rises", "to hold 60 %", 3, kUs).value(),
      physics::inLitresPerHour(*aired.answers.rigs[3].room->airflow) / (60.0 * 28.316846592), 1e-9);
}

TEST(RoomChanges, TellOfAHoodAndAWindow) {
  const auto solution = demoWith({{"/place/air", R"-({"volume": "40 m3", "airflow": "20 m3/h",
      "hood_captures": "50 %", "window_u": "2.8 W/(m2 K)"})-"}});
  const Answer answer = roomChanges(caseOf(solution, kSi));
  const std::string needed = "Air needed while most vapour rises";
  const double whole = figureBelow(answer, needed, "to hold 60 %", 3).value();
  EXPECT_NEAR(figureBelow(answer, needed, "behind the hood", 3).value(), 0.5 * whole, 1e-6 * whole);
  EXPECT_THAT(spokenBlocks(answer), AllOf(HasSubstr(" behind the hood. Without"),
                                          HasSubstr("for what the plan's hood leaves."),
                                          HasSubstr("The window's inner face is at ")));
  EXPECT_THAT(joined(answer.notes), HasSubstr("A hood takes 50 % of the vapour"));
  EXPECT_GE(test_support::comparedWithResult(answer, solution), 60);
}

TEST(RoomChanges, SayThatNothingHoldsWhatOutdoorsHasToo) {
  const auto solution = demoWith({{"/place/air", R"({"volume": "40 m3", "airflow": "20 m3/h",
      "outdoors": "30 C", "outdoor_humidity": "95 %"})"}});
  const Answer answer = roomChanges(caseOf(solution, kSi));
  EXPECT_THAT(spokenBlocks(answer),
              HasSubstr("No airflow holds 60 %: outdoors is no drier than that."));
  const std::string needed = "Air needed while most vapour rises";
  EXPECT_EQ(cellBelow(answer, needed, "to hold 60 %", 3), "–");
  EXPECT_EQ(cellBelow(answer, needed, "as a multiple of: make-up air from here, 680 m³/h (IRC)", 3),
            "–");
}

TEST(RoomChanges, AreNotToldBeforeTheyAreComputed) {
  rigs::Solution solution = demoDays();
  for (rigs::RigAnswer& rig : solution.answers.rigs) rig.room.reset();
  const Answer answer = roomChanges(caseOf(solution, kSi));
  EXPECT_EQ(joined(answer.sentences), "The room has not been computed yet.");
  EXPECT_EQ(spokenBlocks(answer), "");
  EXPECT_FALSE(figureBelow(answer, "From the kettle", "vapour", 1));
}

}  // namespace
}  // namespace gui::telling
