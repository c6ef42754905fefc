// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/time.hpp"

#include <gtest/gtest.h>

#include <algorithm>

#include "rigs/answers/figures.hpp"
#include "tests/gui/telling/told_checks.hpp"

namespace gui::telling {
namespace {

using test_support::cell;
using test_support::demoCase;
using test_support::inShort;
using test_support::solvedDemo;

TEST(HowLong, TellsTheDaysOwnTimes) {
  const Answer answer = howLong(demoCase());
  const Table& table = *answer.tables().at(0);
  for (std::size_t rig = 0; rig < 4; ++rig) {
    const physics::BrewDay& day = solvedDemo().answers.rigs[rig].day;
    const auto strike = rigs::timeOf(day, physics::StageKind::Strike);
    ASSERT_TRUE(strike);
    EXPECT_EQ(cell(table, "Strike", rig), cellText(hoursAndMinutes(strike), {}));
    EXPECT_NEAR(answer.pictures[0].lines[rig].points.back().x,
                physics::inMinutes(day.stages.back().end), 1e-6);
    EXPECT_EQ(answer.pictures[1].stacks[rig].parts.size(), answer.pictures[1].partNames.size());
  }
  // The demo's first rig cannot hold its boil: it goes on steaming, and the headline says why.
  EXPECT_EQ(cell(table, "whole day", 0), "6:49");
  EXPECT_EQ(cell(table, "boil begins", 0), "14:39");
  EXPECT_NE(inShort(answer).find("and falls far below"), std::string::npos) << inShort(answer);
  EXPECT_NE(inShort(answer).find("with (b) New element, kitchen, the slowest"), std::string::npos);
}

TEST(HowLong, FindsItsNumbersInTheResult) {
  test_support::expectFiguresOfTheResult(howLong(demoCase()), solvedDemo(), 1);
}

// From 09:00, the demo's start.
TEST(HowLong, TellsEveryRigByTheClock) {
  const Answer answer = howLong(demoCase());
  EXPECT_EQ(test_support::saidOf(answer, 1), "4 h 24 min from 09:00 to 13:24.");
  // Why the headline says.
  EXPECT_EQ(test_support::saidOf(answer, 0), "6 h 49 min from 09:00 to 15:49: no boil.");
}

// At the end of every stage that was finished.
TEST(HowLong, NamesEveryEventOfTheDay) {
  std::vector<std::string> events;
  std::vector<double> moments;
  for (const PictureMark& mark : temperaturePicture(demoCase()).marks) {
    if (mark.rig != 1) continue;
    events.push_back(mark.event);
    moments.push_back(mark.at.x);
  }
  EXPECT_EQ(events,
            (std::vector<std::string>{"strike reached", "mashed in", "rest reached", "rest done",
                                      "rest reached", "mash done", "boil begins", "boil ends"}));
  const auto& stages = solvedDemo().answers.rigs[1].day.stages;
  ASSERT_EQ(stages.size(), 8U);
  for (std::size_t s = 0; s < stages.size(); ++s)
    EXPECT_NEAR(moments[s], physics::inMinutes(stages[s].end), 1e-9);
}

// The lid of the demo's first rig comes off for the boil: up to the boiling point, and down again.
TEST(HowLong, TellsTheHeightThatTheCurveReaches) {
  const Answer answer = howLong(demoCase());
  const physics::BrewDay& day = solvedDemo().answers.rigs[0].day;
  ASSERT_NE(day.find(physics::StageKind::Boil), nullptr);
  double highest = 0.0;
  for (const PicturePoint& p : answer.pictures[0].lines[0].points) highest = std::max(highest, p.y);
  const auto degrees = [](double c) { return rigs::formatNumber(c) + " °C"; };
  const std::string text = inShort(answer);
  const std::size_t said = text.find(degrees(highest));
  ASSERT_NE(said, std::string::npos) << text;
  const std::size_t level = text.find(degrees(physics::inCelsius(day.levelsOff->at)));
  ASSERT_NE(level, std::string::npos) << text;
  EXPECT_GT(level, said);
  EXPECT_NE(text.find("falls far below"), std::string::npos);
}

// Two kettles alike: none of them is quicker.
TEST(HowLong, CallsNoKettleBothQuickestAndSlowest) {
  rigs::Solution alike = solvedDemo();
  for (rigs::RigAnswer& rig : alike.answers.rigs) rig.day = alike.answers.rigs[1].day;
  const std::string text = inShort(howLong(test_support::caseOf(alike)));
  EXPECT_EQ(text.find("est"), std::string::npos) << text;
  EXPECT_NE(text.find(" from cold water to the end of the day."), std::string::npos) << text;
}

TEST(HowLong, FollowsTheReadersUnits) {
  const rigs::Reader us{.units = rigs::UnitSystem::UsCustomary};
  const Case of{solvedDemo(), solvedDemo().plan, us, {}};
  const Answer answer = howLong(of);
  EXPECT_NE(answer.pictures[0].yTitle.find("°F"), std::string::npos);
  EXPECT_GT(answer.pictures[0].lines[3].points.back().y, 200.0);
  EXPECT_EQ(rigs::tell(rigs::sentences(answer.sentences), us).find("°C"), std::string::npos);
}

}  // namespace
}  // namespace gui::telling
