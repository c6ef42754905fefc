// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/words.hpp"

#include <gtest/gtest.h>

#include "tests/gui/telling/told_checks.hpp"

namespace gui::telling {
namespace {

using namespace physics;

BrewDay dayOf(std::initializer_list<StageKind> kinds) {
  BrewDay day;
  for (const StageKind kind : kinds) {
    Stage stage{};
    stage.kind = kind;
    day.stages.push_back(stage);
  }
  return day;
}

// A day of one rig that ends as it is told to.
struct Ended {
  explicit Ended(Outcome outcome) {
    solution.answers.rigs.resize(1);
    solution.plan.rigs.resize(1);
    rigs::RigAnswer& rig = solution.answers.rigs[0];
    rig.name = "Urn";
    rig.day.outcome = outcome;
    rig.day.levelsOff = {celsius(82.5), celsius(100.0), watts(1537.0)};
    rig.day.electrical.delivered = watts(797.0);
    rig.day.lowest = litres(3.0);
    rig.day.strike = celsius(101.0);
  }
  rigs::Solution solution;
  std::string text() const {
    return rigs::inEnglish(unfinishedText(test_support::caseOf(solution), 0));
  }
  std::string named() const {
    return rigs::inEnglish(unfinishedNamed(test_support::caseOf(solution), 0));
  }
};

TEST(StageNames, NumberWhatComesTwice) {
  std::vector<std::string> names;
  for (const rigs::Told& name :
       stageNames(dayOf({StageKind::Strike, StageKind::Rest, StageKind::Ramp, StageKind::Rest})))
    names.push_back(rigs::inEnglish(name));
  EXPECT_EQ(names, (std::vector<std::string>{"Strike", "Rest 1", "Ramp", "Rest 2"}));
}

// 797 W arrive where 1537 W would leave.
TEST(UnfinishedText, TellsWhereADayLevelsOffAndWhy) {
  EXPECT_EQ(Ended(Outcome::StaysFarBelow).text(),
            "It stays far below boiling. 82.5 °C is where it levels off, 18 K below boiling: at "
            "100 °C it would lose 1537 W and gets 797 W.");
  EXPECT_EQ(Ended(Outcome::Steams).text().substr(0, 27), "It steams without rolling. ");
  EXPECT_NE(Ended(Outcome::Steams).text().find("evaporates almost as much as if it rolled."),
            std::string::npos);
  EXPECT_EQ(Ended(Outcome::Steams).named(),
            "82.5 °C is where Urn levels off: it steams without rolling, since at 100 °C it "
            "would lose 1537 W and gets 797 W.");
  EXPECT_EQ(Ended(Outcome::DoesNotReachStrike).named(),
            "82.5 °C is where Urn levels off, short of the strike temperature: at 100 °C it "
            "would lose 1537 W and gets 797 W.");
  EXPECT_EQ(Ended(Outcome::DoesNotReachRest).text().substr(0, 33),
            "Does not reach the next rest. 82.");
}

// The lid comes off for the boil.
TEST(UnfinishedText, TellsOfABoilThatCannotBeHeld) {
  Ended ended(Outcome::StaysFarBelow);
  BrewDay& day = ended.solution.answers.rigs[0].day;
  day.stages = dayOf({StageKind::HeatingToBoil, StageKind::Boil}).stages;
  day.stages[0].last = day.boilingPoint = celsius(100.0);
  EXPECT_EQ(ended.text(),
            "It cannot hold the boil. It comes to 100 °C with the lid as it is for heating, but in "
            "the boil it would lose 1537 W there and gets 797 W: it falls back towards 82.5 °C.");
  day.boil.emplace();
  day.boil->rolled = minutes(12.0);
  EXPECT_TRUE(ended.text().ends_with("comes to roll, for the last 12 min."));
}

// Both temperatures would print alike.
TEST(UnfinishedText, TellsOfAKettleThatHardlyMisses) {
  Ended ended(Outcome::Steams);
  ended.solution.answers.rigs[0].day.levelsOff->at = celsius(99.96);
  EXPECT_NE(ended.text().find(" less than 0.1 K below boiling"), std::string::npos) << ended.text();
}

TEST(EdgeText, SaysThatNobodyCanSayAndByHowMuch) {
  Ended ended(Outcome::Done);
  const auto text = [&] {
    return rigs::inEnglish(edgeText(test_support::caseOf(ended.solution), 0));
  };
  EXPECT_EQ(text(), "");
  ended.solution.answers.rigs[0].edge = EdgeOfTheBoil{watts(800.0), watts(650.0), watts(950.0)};
  EXPECT_EQ(text(),
            "That is on the edge: it gets 797 W, and since the law of the open surface is good to "
            "about 20 % only, 650 W may be enough to roll, and 950 W may be needed.");
}

TEST(UnfinishedText, TellsOfTooLittleAndTooHotWater) {
  EXPECT_EQ(Ended(Outcome::UncoversElement).text(),
            "Uncovers its element: 3 L is left when the day stops here.");
  EXPECT_EQ(Ended(Outcome::StrikeTooHot).named().substr(0, 51),
            "101 °C would be needed to strike with Urn: the wat");
}

TEST(UnfinishedText, SaysNothingOfADayThatWasDone) {
  EXPECT_EQ(Ended(Outcome::Done).text(), "");
  EXPECT_EQ(Ended(Outcome::Done).named(), "");
  EXPECT_TRUE(unfinishedOfAll(test_support::caseOf(Ended(Outcome::Done).solution)).empty());
}

TEST(CostText, TellsWhatWasSpentWhereTheDayStops) {
  Ended ended(Outcome::UncoversElement);
  rigs::RigAnswer& rig = ended.solution.answers.rigs[0];
  const auto text = [&] {
    return rigs::inEnglish(costText(test_support::caseOf(ended.solution), 0));
  };
  rig.day.total.element = kilowattHours(4.0);
  EXPECT_EQ(text(), "4 kWh are spent by then.");
  rig.cost = 1.3;
  ended.solution.plan.tariff.currency = "EUR";
  EXPECT_EQ(text(), "4 kWh and 1.30 EUR are spent by then.");
  rig.day.outcome = Outcome::Done;
  rig.day.resultCold = litres(20.0);
  EXPECT_EQ(text(), "1.30 EUR for 4 kWh from the wall, 0.065 EUR/L.");
  rig.cost.reset();
  EXPECT_EQ(text(), "4 kWh from the wall; no price was given.");
}

TEST(BrewsPerYear, AreAMonthlyBrewWhereThePlanDoesNotSay) {
  rigs::Plan plan;
  EXPECT_EQ(brewsPerYear(plan), 12.0);
  plan.tariff.brewsPerYear = 20.0;
  EXPECT_EQ(brewsPerYear(plan), 20.0);
}

}  // namespace
}  // namespace gui::telling
