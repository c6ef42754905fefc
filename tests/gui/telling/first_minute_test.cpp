// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/first_minute.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "rigs/answers/day_figures.hpp"
#include "rigs/answers/search.hpp"
#include "rigs/plans/first_kettle.hpp"
#include "tests/gui/telling/asked.hpp"

namespace gui::telling {
namespace {

using rigs::FirstKettle;
using rigs::inEnglish;
using rigs::KettleFigure;
using test_support::siReader;
using testing::HasSubstr;
using testing::StartsWith;

rigs::Solution solved(const FirstKettle& kettle) {
  rigs::Problems problems;
  const auto plan = rigs::readPlan(
      rigs::startWith(kettle, "My kettle", rigs::UnitSystem::SI).document, ".", problems);
  return rigs::solve(plan.value(), {.rest = true});
}
FirstMinute minuteOf(const FirstKettle& kettle) { return firstMinute(solved(kettle), siReader()); }

std::string dayTold(const FirstMinute& minute) { return inEnglish(rigs::sentences(minute.day)); }

TEST(TheFirstMinute, TellsWhenItRollsByTheDayItself) {
  const rigs::Solution solution = solved({.typed = {{KettleFigure::Volume, "45 L"}}});
  const FirstMinute minute = firstMinute(solution, siReader());
  const physics::BrewDay& day = solution.answers.rigs[0].day;
  const auto told = [](physics::Time time) {
    return inEnglish(rigs::Told::just(rigs::roughly(time)));
  };
  EXPECT_THAT(
      inEnglish(minute.headline),
      StartsWith("It rolls after " + told(day.find(physics::StageKind::Boil)->begin) + ": a "));
  EXPECT_THAT(dayTold(minute),
              HasSubstr("after " + told(*rigs::timeOf(day, physics::StageKind::Strike))));
  EXPECT_THAT(dayTold(minute), HasSubstr("takes " + told(*rigs::timeToBoil(day))));
  EXPECT_THAT(dayTold(minute), HasSubstr("EUR"));
  EXPECT_THAT(inEnglish(minute.circuit), HasSubstr("fits its 16 A circuit"));
  EXPECT_FALSE(minute.overloaded);
  EXPECT_THAT(inEnglish(minute.jacket),
              StartsWith("A jacket (19 mm closed-cell rubber foam)? It would save "));
  EXPECT_THAT(inEnglish(minute.assumed), HasSubstr("5 kg of grain"));
}

TEST(TheFirstMinute, SaysThatNobodyCanSay) {
  const FirstMinute minute = minuteOf(
      {.typed = {{KettleFigure::Volume, "45 L"}, {KettleFigure::Power, "2.2 kW"}}, .lid = false});
  EXPECT_THAT(inEnglish(minute.headline), StartsWith("Nobody can say whether it rolls"));
  EXPECT_THAT(dayTold(minute), StartsWith("That is on the edge: it gets 2200 W"));
}

TEST(TheFirstMinute, SaysThatItDoesNotRoll) {
  const FirstMinute minute =
      minuteOf({.typed = {{KettleFigure::Volume, "70 L"}, {KettleFigure::Power, "1.2 kW"}}});
  const std::string headline = inEnglish(minute.headline);
  EXPECT_THAT(headline, testing::Not(HasSubstr("It rolls after")));
  EXPECT_THAT(headline, testing::Not(HasSubstr("Nobody can say")));
  EXPECT_FALSE(headline.empty());
}

TEST(TheFirstMinute, WarnsOfAnOverload) {
  const FirstMinute minute = minuteOf({.typed = {{KettleFigure::Power, "5.5 kW"}}});
  EXPECT_TRUE(minute.overloaded);
  EXPECT_THAT(inEnglish(minute.circuit), StartsWith("▲ Overload"));
  EXPECT_THAT(inEnglish(minute.circuit), HasSubstr("16 A"));
}

TEST(TheFirstMinute, TellsWhatAJacketSavesThatIsThere) {
  EXPECT_THAT(inEnglish(minuteOf({.jacket = true}).jacket), StartsWith("Its jacket ("));
}

TEST(TheFirstMinute, HasItsCautionsAlways) {
  const std::string all = inEnglish(rigs::sentences(minuteOf({}).cautions));
  for (const char* part : {"Mains current kills", "electrician", "foam rises", "lid on a boil"})
    EXPECT_THAT(all, HasSubstr(part));
}

}  // namespace
}  // namespace gui::telling
