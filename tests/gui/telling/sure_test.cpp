// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/sure.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/shortest.hpp"
#include "gui/telling/translations.hpp"
#include "rigs/answers/search.hpp"
#include "tests/gui/telling/asked.hpp"
#include "tests/support/overnight.hpp"
#include "tests/support/solved_demo.hpp"

namespace gui::telling {
namespace {

using test_support::inShort;
using test_support::rowOf;
using test_support::saidOf;
using test_support::siReader;
using test_support::solvedDemo;
using testing::HasSubstr;

const rigs::Solution& sureNight() {
  static const rigs::Solution solution = [] {
    rigs::Solution made{
        .plan = test_support::overnightPlan(), .answers = {}, .sweeps = {}, .done = {}};
    made.answers = rigs::answer(made.plan, rigs::Depth::Day);
    rigs::addHowSure(made, {}, 64);
    return made;
  }();
  return solution;
}

Answer asked(const QuestionView& view = {}) {
  return answerTo(Question::HowSure, solvedDemo(), siReader(), view);
}

TEST(HowSure, TellsSharesInsteadOfYesAndNo) {
  EXPECT_EQ(rigs::inEnglish(rollsOnText(0.85)), "rolls on 17 of 20 such days");
  EXPECT_EQ(rigs::inEnglish(rollsOnText(1.0)), "rolls on every such day");
  EXPECT_EQ(rigs::inEnglish(rollsOnText(0.0)), "rolls on no such day");
  EXPECT_EQ(rigs::inEnglish(rollsOnText(255.0 / 256.0)), "rolls on more than 19 of 20 such days");
  EXPECT_EQ(rigs::inEnglish(rollsOnText(1.0 / 256.0)), "rolls on fewer than 1 of 20 such days");
}

// Kettle (b) rolls on some of its days: the slowest tenth has no time, and is told of.
TEST(HowSure, TellsOfTheDaysThatDoNotRoll) {
  const Answer answer = asked({.rig = 1});
  EXPECT_THAT(inShort(answer), HasSubstr(" of 20 such days roll with (b) New element, kitchen."));
  EXPECT_THAT(inShort(answer), HasSubstr("not at all."));
  EXPECT_THAT(saidOf(answer, 1), HasSubstr("boiling or not"));
  EXPECT_THAT(saidOf(answer, 0), HasSubstr("It rolls on no such day."));
  const Row* late = rowOf(answer, "Boil begins", "1 day in 10 after");
  ASSERT_NE(late, nullptr);
  EXPECT_EQ(cellText(late->cells[1], siReader()), "not at all");
  EXPECT_NE(cellText(late->cells[2], siReader()), "not at all");
}

TEST(HowSure, NamesWhatMakesItWideAndWhatWouldTell) {
  const Answer answer = asked({.rig = 2});
  EXPECT_THAT(saidOf(answer, 2), HasSubstr("When the boil begins hangs on what the element"));
  std::string all;
  for (const Block& block : answer.blocks)
    if (const auto* one = std::get_if<Sentence>(&block)) all += rigs::inEnglish(one->text);
  EXPECT_THAT(all, HasSubstr("have the voltage measured at the plug"));
  EXPECT_THAT(all, HasSubstr("% narrower."));
}

TEST(HowSure, SaysOfAMorningHowWarmItIsAndWhy) {
  const Answer answer = answerTo(Question::HowSure, sureNight(), siReader());
  EXPECT_THAT(saidOf(answer, 0), HasSubstr("In the morning the mash has "));
  EXPECT_THAT(saidOf(answer, 0),
              HasSubstr("How warm the morning is hangs on what walls, lid and base lose"));
  EXPECT_NE(rowOf(answer, "The mash in the morning", "middle"), nullptr);
}

TEST(HowSure, HasTheFiguresOfTheResult) {
  test_support::expectFiguresOfTheResult(asked(), solvedDemo(), 20);
  test_support::expectFiguresOfTheResult(answerTo(Question::HowSure, sureNight(), siReader()),
                                         sureNight(), 20);
}

// Half of a width has one digit, and no figure more places than that.
TEST(HowSure, TellsNoDigitsThatNobodyKnows) {
  const Answer answer = answerTo(Question::HowSure, sureNight(), siReader());
  const Row* morning = rowOf(answer, "The mash in the morning", "middle");
  ASSERT_NE(morning, nullptr);
  EXPECT_EQ(cellText(morning->cells[0], siReader()).find('.'), std::string::npos);
}

TEST(HowSure, DrawsTheBandOfTheRigThatIsAskedAbout) {
  const Answer answer = asked({.rig = 2});
  ASSERT_EQ(answer.pictures.size(), 1U);
  const Picture& picture = answer.pictures.front();
  ASSERT_EQ(picture.lines.size(), 3U);
  EXPECT_FALSE(picture.lines[0].faint);
  EXPECT_TRUE(picture.lines[1].faint);
  EXPECT_TRUE(picture.lines[2].faint);
  for (std::size_t k = 0; k < picture.lines[0].points.size(); ++k) {
    EXPECT_LE(picture.lines[1].points[k].y, picture.lines[0].points[k].y);
    EXPECT_LE(picture.lines[0].points[k].y, picture.lines[2].points[k].y);
  }
}

TEST(HowSure, SaysThatItIsBeingWorkedOut) {
  rigs::Solution bare = solvedDemo();
  for (rigs::RigAnswer& rig : bare.answers.rigs) {
    rig.bands.reset();
    rig.sure.reset();
  }
  EXPECT_EQ(inShort(answerTo(Question::HowSure, bare, siReader())), "Being worked out …");
  const Case of{bare, bare.plan, siReader(), {}};
  EXPECT_TRUE(shortestOf(Question::HowSure, of, 1).empty());
}

TEST(HowSure, NeverSpeaksOfConfidence) {
  const Answer answer = asked();
  for (const auto& told : answer.notes)
    EXPECT_EQ(rigs::inEnglish(told).find("onfidence"), std::string::npos);
}

TEST(Overview, HasTheBandsBelowItsFiguresWhereTheyAreKnown) {
  const Answer with = answerTo(Question::Overview, sureNight(), siReader());
  const Row* rolls = rowOf(with, "", "· on 8 of 10 days");
  ASSERT_NE(rolls, nullptr);
  EXPECT_THAT(cellText(rolls->cells[0], siReader()), HasSubstr("–"));
  rigs::Solution bare = sureNight();
  for (rigs::RigAnswer& rig : bare.answers.rigs) rig.bands.reset();
  const Answer without = answerTo(Question::Overview, bare, siReader());
  for (const Table* table : without.tables())
    for (const ShownRow& row : shownRows(*table, siReader()))
      EXPECT_EQ(row.label.find("8 of 10"), std::string::npos);
}

TEST(HowSure, IsToldInGerman) {
  const rigs::Reader german{.language = &languageOf("de")};
  const Answer answer = answerTo(Question::HowSure, solvedDemo(), german);
  EXPECT_THAT(inShort(answer, german), HasSubstr("solchen"));
}

}  // namespace
}  // namespace gui::telling
