// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/page.hpp"

#include <gtest/gtest.h>

#include <regex>

#include <sstream>

#include "gui/terminal.hpp"
#include "gui/text_layout.hpp"
#include "tests/gui/plan_in_code.hpp"

using namespace gui;

TEST(Letter, GoesOnAfterZ) {
  EXPECT_EQ(letter(0), "(a)");
  EXPECT_EQ(letter(25), "(z)");
  EXPECT_EQ(letter(26), "(aa)");
}

TEST(PageText, IsBoldOnlyWhereTheTerminalCan) {
  Page page;
  page.title = "Ale";
  EXPECT_EQ(pageText(page, {.width = 80, .bold = false}), "Ale\n");
  EXPECT_EQ(pageText(page, {.width = 80, .bold = true}), "\033[1mAle\033[0m\n");
}

// Every page, in both systems, for rigs that boil and one that does not.
TEST(Pages, FitTheWidthAndEndWithCautions) {
  const rigs::Plan plan = test_support::planInCode(true);
  const rigs::Answers answers = rigs::answer(plan, rigs::Depth::Everything);
  for (const UnitSystem units : {UnitSystem::SI, UnitSystem::UsCustomary}) {
    for (const auto& show : {answerPage, dayPage, sizePage, insulatePage, boilPage, costPage}) {
      const Page page = show(plan, answers, units);
      for (const std::size_t width : {40u, 80u, 132u}) {
        const std::string text = pageText(page, {.width = width, .bold = false});
        SCOPED_TRACE(text);
        std::istringstream lines(text);
        for (std::string line; std::getline(lines, line);) EXPECT_LE(displayWidth(line), width);
        EXPECT_NE(text.find("Take care"), std::string::npos);
        EXPECT_EQ(text.find("nan"), std::string::npos);
        EXPECT_EQ(text.find("unknown"), std::string::npos);
      }
    }
  }
}

TEST(Pages, ShowEveryNumberInOneSystem) {
  const rigs::Plan plan = test_support::planInCode(true);
  const rigs::Answers answers = rigs::answer(plan, rigs::Depth::Everything);
  for (const auto& show : {answerPage, dayPage, sizePage, insulatePage, boilPage, costPage}) {
    const TextStyle style{.width = 80, .bold = false};
    const std::string si = pageText(show(plan, answers, UnitSystem::SI), style);
    const std::string us = pageText(show(plan, answers, UnitSystem::UsCustomary), style);
    EXPECT_EQ(si.find("°F"), std::string::npos) << si;
    EXPECT_EQ(si.find("gal"), std::string::npos) << si;
    EXPECT_EQ(us.find("°C"), std::string::npos) << us;
    EXPECT_FALSE(std::regex_search(us, std::regex(" L\\b"))) << us;  // but "Left" is a word
  }
}

TEST(Pages, NameTheTemperatureWhereAWeakRigLevelsOff) {
  const rigs::Plan plan = test_support::planInCode(true);
  const rigs::Answers answers = rigs::answer(plan, rigs::Depth::Everything);
  ASSERT_EQ(answers.rigs[2].day.outcome, physics::Outcome::StaysFarBelow);
  const std::string level = rigs::format(answers.rigs[2].day.levelsOff->at, UnitSystem::SI);
  for (const auto& show : {answerPage, sizePage, boilPage, costPage, dayPage}) {
    const std::string text =
        pageText(show(plan, answers, UnitSystem::SI), {.width = 90, .bold = false});
    EXPECT_NE(text.find("Does not boil"), std::string::npos) << text;
    EXPECT_NE(text.find(level), std::string::npos) << text;
  }
}

TEST(Pages, LetNoNameMoveTheCursor) {
  rigs::Plan plan = test_support::planInCode();
  plan.rigs[0].name = "\033[2J";
  plan.title = "Ale\r";
  const rigs::Answers answers = rigs::answer(plan, rigs::Depth::Day);
  const std::string text = pageText(dayPage(plan, answers, UnitSystem::SI), {});
  EXPECT_EQ(text.find('\033'), std::string::npos);
  EXPECT_EQ(text.find('\r'), std::string::npos);
}
