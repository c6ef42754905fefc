// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/page.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "gui/telling/answer_to.hpp"

#include <algorithm>
#include <functional>
#include <regex>
#include <sstream>

#include "gui/telling/case.hpp"
#include "gui/telling/summary.hpp"
#include "gui/telling/translations.hpp"
#include "gui/terminal/catalogue_pages.hpp"
#include "gui/terminal/text_layout.hpp"
#include "tests/gui/terminal/plan_in_code.hpp"
#include "tests/support/solved_demo.hpp"

using namespace gui;
using rigs::Told;
using rigs::UnitSystem;
using telling::Question;
using testing::HasSubstr;
using testing::Not;

namespace {

const rigs::Reader kSi;

Told word(const std::string& text) { return Told::just(rigs::Verbatim{text}); }

rigs::Solution solved(rigs::Plan plan, rigs::Depth depth = rigs::Depth::Everything) {
  rigs::Solution solution;
  solution.plan = std::move(plan);
  solution.answers = rigs::answer(solution.plan, depth);
  return solution;
}

// With rigs that boil and one that does not; solved once.
const rigs::Solution& solution() {
  static const rigs::Solution kSolved = solved(test_support::planInCode(true));
  return kSolved;
}

std::vector<Page> allPages(const rigs::Reader& reader) {
  Page answer = pageAbout(solution().plan, reader, {});
  answer.add(telling::summary({solution(), solution().plan, reader, {}}));
  std::vector<Page> pages{answer};
  for (const Question question : telling::allQuestions()) {
    pages.push_back(pageAbout(solution().plan, reader, {}));
    pages.back().add(telling::answerTo(question, solution(), reader));
  }
  for (const char* subject : {"materials", "supplies", "rigs", "tariffs"})
    pages.push_back(*cataloguePage(subject, reader.units));
  return pages;
}

std::vector<rigs::Reader> allReaders() {
  std::vector<rigs::Reader> readers;
  for (const std::string& code : telling::languageCodes())
    for (const UnitSystem units : {UnitSystem::SI, UnitSystem::UsCustomary})
      readers.push_back({units, &telling::languageOf(code)});
  return readers;
}

}  // namespace

TEST(PageText, IsBoldOnlyWhereTheTerminalCan) {
  Page page;
  page.title = word("Ale");
  EXPECT_EQ(pageText(page, {}, {.width = 80, .bold = false}), "Ale\n");
  EXPECT_EQ(pageText(page, {}, {.width = 80, .bold = true}), "\033[1mAle\033[0m\n");
}

TEST(PageText, ReadsFromTheTitleToTheCautions) {
  Page page;
  page.title = word("Ale");
  page.opening = {word("25 L.")};
  page.rigNames = {"Urn", "Pot"};
  telling::Answer answer;
  answer.title = word("How long?");
  answer.sentences = {word("6 h.")};
  answer.say(0, word("Slow."));
  answer.goOn(0, word("Very."));
  answer.notes = {word("As planned.")};
  answer.cautions = {word("It is hot.")};
  page.add(answer);
  EXPECT_EQ(pageText(page, {}, {}),
            "Ale\n"
            "  25 L.\n"
            "\n"
            "  (a) Urn\n"
            "  (b) Pot\n"
            "\n"
            "How long?\n"
            "  6 h.\n"
            "  (a) Slow.\n"
            "      Very.\n"
            "\n"
            "Notes\n"
            "  As planned.\n"
            "\n"
            "Take care\n"
            "  · It is hot.\n");
}

// A rig alone has no letter, and its column no head.
TEST(PageText, ReadsWithoutLettersOfARigAlone) {
  rigs::Plan plan = test_support::planInCode();
  plan.rigs.resize(1);
  const rigs::Solution alone = solved(plan);
  for (const rigs::Reader& reader : allReaders()) {
    std::vector<Page> pages{pageAbout(plan, reader, {})};
    pages[0].add(telling::summary({alone, plan, reader, {}}));
    for (const Question question : telling::allQuestions()) {
      pages.push_back(pageAbout(plan, reader, {}));
      pages.back().add(telling::answerTo(question, alone, reader, {.asBars = true}));
    }
    for (const Page& page : pages) {
      const std::string text = pageText(page, reader, {});
      EXPECT_THAT(text, testing::ContainsRegex("\n  Urn: (a kettle of|ein Kessel von) "));
      EXPECT_THAT(text, Not(HasSubstr("(a)")));
      EXPECT_THAT(text, Not(HasSubstr("\n\n\n")));
      EXPECT_THAT(pageCsv(page, reader), Not(HasSubstr("(a)")));
    }
  }
}

TEST(Page, TellsACautionOfTwoAnswersOnceAndItsOwnTitleNever) {
  Page page;
  page.title = word("Ale");
  telling::Answer answer;
  answer.title = page.title;
  answer.cautions = {word("It is hot.")};
  answer.furtherCautions = {word("It is dark.")};
  page.add(answer);
  page.add(answer);
  EXPECT_EQ(pageText(page, {}, {}), "Ale\n\nTake care\n  · It is dark.\n  · It is hot.\n");
}

// Every page, in both languages and systems, for rigs that boil and one that does not.
TEST(Pages, FitTheWidth) {
  for (const rigs::Reader& reader : allReaders()) {
    for (const Page& page : allPages(reader)) {
      for (const std::size_t width : {40u, 80u, 132u}) {
        const std::string text = pageText(page, reader, {.width = width, .bold = false});
        SCOPED_TRACE(text);
        std::istringstream lines(text);
        for (std::string line; std::getline(lines, line);) EXPECT_LE(displayWidth(line), width);
        EXPECT_FALSE(std::regex_search(text, std::regex("\\bnan\\b"))) << "a number is none";
        EXPECT_THAT(text, Not(HasSubstr("unknown")));
        EXPECT_FALSE(std::regex_search(text, std::regex("%[1-9]"))) << "a place was not filled";
      }
    }
  }
}

TEST(Pages, OfAnswersEndWithCautions) {
  for (const rigs::Reader& reader : allReaders()) {
    for (const Question question : telling::allQuestions()) {
      Page page = pageAbout(solution().plan, reader, {});
      page.add(telling::answerTo(question, solution(), reader));
      EXPECT_FALSE(page.answer.cautions.empty()) << telling::identifierOf(question);
    }
  }
}

std::size_t linesOf(const std::string& text) {
  return static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
}

// Whoever is warned at every line reads none of them.
TEST(Pages, WarnInLessThanAQuarterOfTheirLines) {
  const rigs::Solution demo = solved(test_support::demoPlan());
  for (const rigs::Reader& reader : allReaders()) {
    Page page = pageAbout(demo.plan, reader, {});
    page.add(telling::summary({demo, demo.plan, reader, {}}));
    const std::string whole = pageText(page, reader, {});
    page.answer.cautions.clear();
    page.answer.furtherCautions.clear();
    const std::size_t cautions = linesOf(whole) - linesOf(pageText(page, reader, {}));
    EXPECT_LT(4 * cautions, linesOf(whole)) << whole;
  }
}

TEST(VerdictsAlone, AreALineOrTwoARigAndTheOneCautionThatTheyHangOn) {
  Page page;
  page.title = word("Ale");
  page.opening = {word("25 L.")};
  page.rigNames = {"Urn", "Pot"};
  page.verdicts = {word("rolls"), word("steams")};
  page.vital = {word("It is hot.")};
  page.answer.cautions = {word("It is dark.")};
  EXPECT_EQ(verdictsAlone(page, {}, {}),
            "Ale\n  (a) Urn: rolls.\n  (b) Pot: steams.\n  · It is hot.\n");
  page.only = 1;
  EXPECT_EQ(verdictsAlone(page, {}, {}), "Ale\n  (b) Pot: steams.\n  · It is hot.\n");
}

TEST(Pages, ShowEveryNumberInOneSystem) {
  for (const Question question :
       {Question::HowLong, Question::WhereHeat, Question::BoilsEnough, Question::WorthJacket,
        Question::WhichElement, Question::WhatCost, Question::HowFarCools}) {
    const auto textIn = [&](UnitSystem units) {
      const rigs::Reader reader{.units = units};
      Page page = pageAbout(solution().plan, reader, {});
      telling::Answer answer = telling::answerTo(question, solution(), reader);
      answer.notes.clear();  // sources are cited in their own units
      page.add(answer);
      return pageText(page, reader, {});
    };
    const std::string si = textIn(UnitSystem::SI);
    const std::string us = textIn(UnitSystem::UsCustomary);
    EXPECT_THAT(si, Not(HasSubstr("°F")));
    EXPECT_THAT(si, Not(HasSubstr("gal")));
    EXPECT_THAT(us, Not(HasSubstr("°C")));
    EXPECT_FALSE(std::regex_search(us, std::regex(" L\\b"))) << us;  // but "Left" is a word
  }
}

TEST(Pages, NameTheTemperatureWhereAWeakRigLevelsOff) {
  ASSERT_EQ(solution().answers.rigs[2].day.outcome, physics::Outcome::StaysFarBelow);
  const std::string level =
      rigs::format(solution().answers.rigs[2].day.levelsOff->at, UnitSystem::SI);
  std::vector<telling::Answer> answers{telling::summary({solution(), solution().plan, kSi, {}})};
  for (const Question question :
       {Question::HowLong, Question::BoilsEnough, Question::WhichElement, Question::WhatCost})
    answers.push_back(telling::answerTo(question, solution(), kSi));
  for (const telling::Answer& answer : answers) {
    Page page = pageAbout(solution().plan, kSi, {});
    page.add(answer);
    EXPECT_THAT(pageText(page, kSi, {.width = 90, .bold = false}), HasSubstr(level));
  }
}

TEST(Pages, AreGermanFromTitleToCautions) {
  const rigs::Reader german{.language = &telling::languageOf("de")};
  Page page = pageAbout(solution().plan, german, {});
  page.add(telling::answerTo(Question::HowLong, solution(), german));
  const std::string text = pageText(page, german, {});
  EXPECT_THAT(text, HasSubstr("Wie lange dauert es?"));
  EXPECT_THAT(text, HasSubstr("Vorsicht"));
  for (const char* english : {" the ", " with ", " water", "Take care"})
    EXPECT_THAT(text, Not(HasSubstr(english)));
}

TEST(Pages, LetNoNameMoveTheCursor) {
  rigs::Plan plan = test_support::planInCode();
  plan.rigs[0].name = "\033[2J";
  plan.title = "Ale\r";
  const rigs::Solution made = solved(plan, rigs::Depth::Day);
  Page page = pageAbout(made.plan, kSi, {});
  page.add(telling::answerTo(Question::HowLong, made, {}));
  const std::string text = pageText(page, {}, {});
  EXPECT_THAT(text, Not(HasSubstr("\033")));
  EXPECT_THAT(text, Not(HasSubstr("\r")));
}

TEST(CataloguePages, NameEveryMaterialWithItsSource) {
  const rigs::Reader reader;
  const std::string text = pageText(*cataloguePage("materials", reader.units), reader, {});
  EXPECT_THAT(text, HasSubstr("  cork "));
  EXPECT_THAT(text, HasSubstr("cork ("));
  EXPECT_FALSE(cataloguePage("beers", reader.units));
}

// 139 % of a circuit: whoever reads only the first lines of any page has read of it.
TEST(PageText, SaysWhatRigItIsAbout) {
  const rigs::Solution demo{
      .plan = test_support::demoPlan(), .answers = {}, .sweeps = {}, .done = {}};
  const std::string all =
      pageText(pageAbout(demo.plan, kSi, {}), kSi, {.width = 90, .bold = false});
  EXPECT_THAT(all, HasSubstr("(b) New element, kitchen: like (a), but 1.65 kW at 120 V"));
  // Alone it is like nobody on the page.
  Page one = pageAbout(demo.plan, kSi, 1);
  EXPECT_THAT(pageText(one, kSi, {.width = 90, .bold = false}),
              HasSubstr("(b) New element, kitchen: a kettle of 40.1 L in brushed stainless steel "
                        "with 1.65 kW at\n      120 V on a circuit of 15 A, no jacket, "));
  // Behind a verdict there is room for one.
  one.verdicts.resize(4, word("rolls"));
  EXPECT_THAT(pageText(one, kSi, {.width = 90, .bold = false}),
              HasSubstr("(b) New element, kitchen: rolls.\n  It is a kettle of 40.1 L in brushed"));
  Page several = pageAbout(demo.plan, kSi, {});
  several.verdicts.resize(4, word("rolls"));
  EXPECT_THAT(pageText(several, kSi, {}), Not(HasSubstr("a kettle of")));
}

TEST(PageText, BeginsWithAnOverloadWhateverIsAsked) {
  rigs::Plan plan = test_support::planInCode();
  for (physics::Rig* rig : {&plan.rigs[0].rig, &plan.rigs[0].bare, &plan.rigs[0].jacketed}) {
    rig->element = {physics::watts(5100.0), physics::volts(230.0), physics::metres(0.05)};
    rig->supply = {.nominal = physics::volts(230.0),
                   .rating = physics::amperes(16.0),
                   .cableLoop = physics::ohms(0.0)};
  }
  std::vector<rigs::Solution> asked{solved(plan)};
  for (const Question question : telling::allQuestions())
    asked.push_back(solved(plan, telling::depthOf(question)));
  for (const std::string& code : telling::languageCodes()) {
    const rigs::Reader reader{.language = &telling::languageOf(code)};
    const std::string word = code == "de" ? "Überlast" : "overload";
    std::vector<Page> pages{pageAbout(plan, reader, {})};
    pages.back().add(telling::summary({asked[0], plan, reader, {}}));
    for (const Question question : telling::allQuestions()) {
      pages.push_back(pageAbout(plan, reader, {}));
      pages.back().add(telling::answerTo(question, asked[pages.size() - 1], reader));
    }
    std::size_t columns = 0;
    for (const Page& page : pages) {
      const std::string text = pageText(page, reader, {.width = 80, .bold = true});
      SCOPED_TRACE(text);
      const auto lineOf = [&](std::size_t at) {
        return std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(at), '\n');
      };
      // The sentence, before anything is said of a rig, once.
      const std::string sentence = code == "de" ? "\033[1m  ▲ Überlast: " : "\033[1m  ▲ Overload: ";
      const std::size_t said = text.find(sentence);
      ASSERT_NE(said, std::string::npos);
      EXPECT_LT(lineOf(said), 8);
      EXPECT_EQ(text.find(sentence, said + 1), std::string::npos);
      // Then the list of rigs, in heavier letters.
      const std::string listed = "\033[1m  (a) " + page.rigNames[0] + " [▲\u00a0" + word + "]: ";
      const std::size_t first = text.find(listed);
      ASSERT_NE(first, std::string::npos);
      EXPECT_LT(said, first);
      EXPECT_LE(lineOf(first), lineOf(said) + 4);
      // At the head of its column, where it has one, and wherever sentences name it.
      const auto tables = page.answer.tables();
      const bool hasColumn = std::any_of(tables.begin(), tables.end(),
                                         [](const telling::Table* one) { return one->ofRigs; });
      columns += hasColumn ? 1 : 0;
      if (hasColumn) {
        EXPECT_THAT(text.substr(said), HasSubstr("  ▲\u00a0" + word));
      }
      EXPECT_THAT(text.substr(said), HasSubstr("[▲\u00a0" + word + "]"));
    }
    EXPECT_EQ(columns + 2, pages.size())
        << "all but what helps, whose columns are figures, and how sure it is, which nobody asked";
  }
}
