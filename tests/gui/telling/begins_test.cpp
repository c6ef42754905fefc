// SPDX-License-Identifier: GPL-3.0-or-later
// When to begin, so that something is ready: in every place that tells a clock, the same one.
#include "gui/telling/begins.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/csv.hpp"
#include "gui/telling/translations.hpp"
#include "gui/telling/verdict.hpp"
#include "rigs/plans/tariff_reader.hpp"
#include "rigs/results/cautions.hpp"
#include "rigs/results/result_json.hpp"
#include "tests/gui/telling/sheets.hpp"
#include "tests/support/overnight.hpp"

namespace gui::telling {
namespace {

using physics::hours;
using rigs::Milestone;
using rigs::Plan;
using rigs::Solution;
using test_support::cell;
using test_support::daysAlone;
using test_support::inShort;
using test_support::saidOf;
using test_support::startedPlan;
using testing::AllOf;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

Plan wanting(Plan plan, Milestone what, physics::Time at) {
  plan.ready = rigs::Ready{.what = what, .at = at};
  return plan;
}
Answer told(Question question, const Solution& solution, const rigs::Reader& reader = {}) {
  return answerTo(question, solution, reader, {});
}
std::string clockText(physics::Time at) { return rigs::tell(rigs::Argument(rigs::Clock{at}), {}); }

// It rolls on every day.
Plan strongKettle() {
  Plan plan = startedPlan("one-kettle");
  rigs::RigPlan& rig = plan.rigs.front();
  for (physics::Rig* one : {&rig.rig, &rig.bare, &rig.jacketed})
    one->element.rating = physics::watts(3200.0);
  return plan;
}

// One kettle that is to roll at 17:00.
const Solution& aKettle() {
  static const Solution solution = daysAlone(wanting(strongKettle(), Milestone::Boil, hours(17.0)));
  return solution;
}
// With bands.
const Solution& aSureKettle() {
  static const Solution solution = [] {
    Solution all = aKettle();
    rigs::addHowSure(all, 0, 64);
    return all;
  }();
  return solution;
}
const Solution& aWeakKettle() {
  static const Solution solution = [] {
    Plan plan = wanting(startedPlan("one-kettle"), Milestone::Boil, hours(17.0));
    plan.rigs.front().rig.element.rating = physics::watts(700.0);
    return daysAlone(plan);
  }();
  return solution;
}

TEST(BeginsAt, LeadsTheAnswerAndItsClocks) {
  const std::string begin = clockText(*aKettle().answers.rigs[0].begins);
  const Answer answer = told(Question::HowLong, aKettle());
  EXPECT_THAT(inShort(answer), AllOf(StartsWith(begin + " is when to begin with "),
                                     HasSubstr("then it rolls at 17:00.")));
  EXPECT_THAT(saidOf(answer, 0), HasSubstr("Begin at " + begin + ": then it rolls at 17:00."));
  EXPECT_EQ(cell(answer, "By the clock", "begin at", 0), begin);
  EXPECT_EQ(cell(answer, "By the clock", "boil begins", 0), "17:00");
}

TEST(BeginsAt, IsTheFirstRowOfTheOverviewAndInItsVerdict) {
  const std::string begin = clockText(*aKettle().answers.rigs[0].begins);
  const Answer overview = told(Question::Overview, aKettle());
  EXPECT_EQ(rigs::inEnglish(overview.tables().at(0)->rows.front().label), "begin at");
  EXPECT_EQ(cell(overview, "", "begin at", 0), begin);
  EXPECT_EQ(cell(overview, "", "rolls", 0), "17:00");
  EXPECT_THAT(inShort(overview), AllOf(HasSubstr("begin at " + begin), HasSubstr("17:00")));
}

TEST(BeginsAt, IsTheFirstLineOfTheSheet) {
  const std::string begin = clockText(*aKettle().answers.rigs[0].begins);
  const auto lines = test_support::lineTexts(test_support::sheetOf(aKettle()));
  EXPECT_EQ(lines.front(), begin + " Begin, and stay with it; then it rolls at 17:00");
  EXPECT_THAT(lines, testing::Contains(StartsWith("17:00 It rolls")));
  const auto sure = test_support::lineTexts(test_support::sheetOf(aSureKettle()));
  EXPECT_THAT(sure.front(), HasSubstr("for 9 of 10 such days begin by "));
}

TEST(BeginsAt, IsEarlierForNineOfTenDays) {
  const auto& rig = aSureKettle().answers.rigs[0];
  const std::string by = clockText(hours(17.0) - *rig.bands->boilBegins.high);
  ASSERT_LT(hours(17.0) - *rig.bands->boilBegins.high, *rig.begins);
  const Answer answer = told(Question::HowLong, aSureKettle());
  EXPECT_THAT(saidOf(answer, 0),
              HasSubstr("To be ready by 17:00 on 9 of 10 such days, begin by " + by + '.'));
  EXPECT_EQ(cell(answer, "By the clock", "· for 9 of 10 days, by", 0), by);
  // The band's own clocks are of the same beginning.
  EXPECT_EQ(cell(told(Question::HowSure, aSureKettle()), "Boil begins", "1 day in 10 after", 0),
            clockText(*rig.begins + *rig.bands->boilBegins.high));
}

// No band is of chilling.
TEST(BeginsAt, SaysWhatItSupposesOfChilling) {
  Plan plan = wanting(strongKettle(), Milestone::Pitching, hours(20.0));
  plan.rigs.front().chiller.isStated = true;
  Solution solution = daysAlone(plan);
  rigs::addHowSure(solution, 0, 64);
  EXPECT_THAT(saidOf(told(Question::HowLong, solution), 0),
              AllOf(HasSubstr("then its wort is chilled for pitching at 20:00."),
                    HasSubstr("; if chilling takes no longer than told.")));
  const auto lines = test_support::lineTexts(test_support::sheetOf(solution));
  EXPECT_THAT(lines.back(), HasSubstr("or as late as 20:00"));
}

TEST(BeginsAt, IsToldInGerman) {
  const rigs::Reader german{.units = {}, .language = &languageOf("de")};
  const std::string begin = clockText(*aKettle().answers.rigs[0].begins);
  const Answer answer = told(Question::HowLong, aKettle(), german);
  EXPECT_THAT(inShort(answer, german),
              AllOf(StartsWith(begin + " ist der Beginn mit "), HasSubstr("es wallt um 17:00.")));
}

// No clock is made up for whoever never comes to it.
TEST(BeginsAt, IsNoClockWhereItNeverRolls) {
  ASSERT_FALSE(aWeakKettle().answers.rigs[0].begins);
  const Answer answer = told(Question::HowLong, aWeakKettle());
  EXPECT_THAT(inShort(answer), Not(HasSubstr("when to begin")));
  EXPECT_THAT(saidOf(answer, 0),
              AllOf(HasSubstr("from hour 0:00 to hour "),
                    HasSubstr("It never rolls, whenever it begins: its times count from then.")));
  EXPECT_EQ(cell(answer, "By the clock", "begin at", 0), "–");
  EXPECT_THAT(cell(answer, "By the clock", "strike water ready", 0), StartsWith("hour "));
  const auto lines = test_support::lineTexts(test_support::sheetOf(aWeakKettle()));
  EXPECT_THAT(lines.front(), StartsWith("hour 0:00 Heat"));
  for (const auto* text : {&lines.front(), &lines.back()})
    EXPECT_THAT(*text, Not(HasSubstr("17:")));
}

// Which hours can be had is another thing than which are needed.
TEST(BeginsAt, IsHeldAgainstTheHoursInWhichItCouldBegin) {
  Plan plan = wanting(startedPlan("one-kettle"), Milestone::Boil, hours(9.0));
  plan.tariff.brewFrom = hours(8.0);
  plan.tariff.brewUntil = hours(22.0);
  const Solution late = daysAlone(plan);
  const physics::Time until = hours(9.0) - *late.answers.rigs[0].begins;
  const std::string said = saidOf(told(Question::HowLong, late), 0);
  EXPECT_THAT(said, AllOf(HasSubstr("that it could begin from 08:00 to 22:00 only"),
                          HasSubstr("begun at 08:00, it rolls at " + clockText(hours(8.0) + until)),
                          HasSubstr(" too late; begun at 22:00, it rolls at ")));
  plan.ready->at = hours(14.0);
  EXPECT_THAT(saidOf(told(Question::HowLong, daysAlone(plan)), 0), Not(HasSubstr("could begin")));
}

// On the evening before, in sentence, table, sheet and file.
TEST(BeginsAt, MayBeOnTheEveningBefore) {
  const Solution solution =
      daysAlone(wanting(startedPlan("night-unplugged"), Milestone::Boil, hours(7.0)));
  const std::string begin = clockText(*solution.answers.rigs[0].begins);
  ASSERT_THAT(begin, StartsWith("-1 d "));
  const Answer answer = told(Question::HowLong, solution);
  EXPECT_EQ(cell(answer, "By the clock", "begin at", 0), begin);
  EXPECT_THAT(saidOf(answer, 0), HasSubstr("from " + begin + " to 0"));
  EXPECT_THAT(csvOf(answer, {"a", "b"}, {}), HasSubstr(begin));
  const Sheet sheet = test_support::sheetOf(solution);
  EXPECT_EQ(rigs::inEnglish(sheet.lines.front().clock()), begin.substr(5));
  const auto rolls = std::find_if(sheet.lines.begin(), sheet.lines.end(),
                                  [](const auto& line) { return !line.newDay.empty(); });
  ASSERT_NE(rolls, sheet.lines.end());
  EXPECT_EQ(rigs::inEnglish(rolls->newDay), "Next day");
  EXPECT_EQ(rigs::inEnglish(sheet.lines.back().clock()).substr(0, 1), "0");
}

// A tariff by the hour is asked at the rig's own hours.
TEST(BeginsAt, IsTheHourOfItsPrice) {
  Plan plan = wanting(startedPlan("one-kettle"), Milestone::Boil, hours(17.0));
  for (const rigs::BundledTariff& one : rigs::bundledTariffs())
    if (one.tariff.dependsOnTheHour()) plan.tariff = one.tariff;
  const Solution solution = daysAlone(plan);
  const std::string begin = clockText(*solution.answers.rigs[0].begins);
  const Answer cost = told(Question::WhatCost, solution);
  EXPECT_THAT(saidOf(cost, 0), HasSubstr("Begun at " + begin));
  std::string notes;
  for (const rigs::Told& one : cost.notes) notes += rigs::inEnglish(one);
  EXPECT_THAT(notes, HasSubstr("Other hours are told for their price alone"));
  plan.rigs.front().rig.element.rating = physics::watts(700.0);
  EXPECT_THAT(saidOf(told(Question::WhatCost, daysAlone(plan)), 0),
              HasSubstr("its price hangs on the hour, and it has no beginning"));
}

// Nobody is to be told when to begin without being told to be there.
TEST(BeginsAt, SaysNeverToLetItSwitchItselfOn) {
  const Solution solution = test_support::solved(aKettle().plan);
  for (const Question question : allQuestions()) {
    std::string all;
    for (const rigs::Told& one : told(question, solution).cautions) all += rigs::inEnglish(one);
    EXPECT_THAT(all, HasSubstr("Never leave an element to switch on by itself"));
  }
  std::string onPaper;
  for (const rigs::Told& one : test_support::sheetOf(aKettle()).cautions)
    onPaper += rigs::inEnglish(one);
  EXPECT_THAT(onPaper, HasSubstr("Never leave an element to switch on by itself"));
  EXPECT_THAT(rigs::resultJson(aKettle().plan, aKettle().answers), HasSubstr("\"unattended\""));
  // So it is said of every day that begins while people sleep.
  const auto says = [](double hour) {
    Plan plan = startedPlan("one-kettle");
    plan.startOfDay = hours(hour);
    const auto all = rigs::cautions(plan, false);
    return std::any_of(all.begin(), all.end(),
                       [](const rigs::Caution& one) { return one.topic == "unattended"; });
  };
  EXPECT_TRUE(says(22.0) && says(3.0) && says(6.25));
  EXPECT_FALSE(says(6.5) || says(10.0) || says(21.5));
}

}  // namespace
}  // namespace gui::telling
