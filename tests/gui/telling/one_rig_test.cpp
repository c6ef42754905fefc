// SPDX-License-Identifier: GPL-3.0-or-later
// A plan of one rig: every question of it in every view, in both languages, without a letter and
// without a word that compares it with another.
#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/csv.hpp"
#include "gui/telling/summary.hpp"
#include "gui/telling/translations.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "tests/gui/telling/asked.hpp"
#include "tests/gui/telling/results.hpp"
#include "tests/support/overnight.hpp"

namespace gui::telling {
namespace {

rigs::Plan oneKettle() {
  rigs::Problems problems;
  auto plan = rigs::readPlan(rigs::planStartText("one-kettle").value(), ".", problems);
  if (!plan) throw std::logic_error("the plan of one kettle has errors");
  return *plan;
}

rigs::Plan only(rigs::Plan plan, std::size_t rig) {
  plan.rigs = {plan.rigs[rig]};
  return plan;
}

// Our own, one whose mash is left alone, one that never boils, and one without a price.
const std::vector<rigs::Solution>& ofOneRig() {
  static const auto all = [] {
    rigs::Problems problems;
    const rigs::Plan demo = *rigs::readPlan(rigs::demoPlanText(), ".", problems);
    rigs::Plan priced = oneKettle();
    priced.tariff.elementPrice = 40.0;
    priced.tariff.jacketPrice = 30.0;
    rigs::Plan unpriced = only(demo, 3);
    unpriced.tariff = {};
    std::vector<rigs::Solution> solutions;
    for (const rigs::Plan& plan :
         {priced, only(test_support::overnightPlan(), 0), only(demo, 0), unpriced})
      solutions.push_back(test_support::swept(plan));
    return solutions;
  }();
  return all;
}

using Views = std::vector<QuestionView>;
Views everyView() {
  return {{},
          {.overThickness = true, .savings = true, .asBars = true, .supposed = true},
          {.asBars = true, .everyRule = true},
          {.asWritten = true, .asBars = true}};
}

void add(std::string& all, const std::string& one) { all += one + '\n'; }

// All that a person reads of an answer.
std::string everyWord(const Answer& answer, const rigs::Reader& reader) {
  std::string all;
  const auto tell = [&](const std::vector<rigs::Told>& texts) {
    for (const rigs::Told& text : texts) add(all, rigs::tell(text, reader));
  };
  tell({answer.title});
  tell(answer.sentences);
  tell(answer.notes);
  tell(answer.allCautions());
  for (const Block& block : answer.blocks) {
    if (const auto* heading = std::get_if<Heading>(&block)) tell({heading->text});
    if (const auto* sentence = std::get_if<Sentence>(&block)) tell({answer.textOf(*sentence)});
  }
  add(all, csvOf(answer, {"The kettle"}, reader));
  for (const Picture& picture : answer.pictures) {
    for (const std::string& text : {picture.title, picture.xTitle, picture.yTitle}) add(all, text);
    for (const PictureLine& line : picture.lines) add(all, line.name);
    for (const PictureMark& mark : picture.marks) add(all, mark.label + ' ' + mark.event);
    for (const PictureLimit& limit : picture.limits) add(all, limit.label);
    for (const PictureStack& stack : picture.stacks) add(all, stack.name);
  }
  return all;
}

const std::vector<std::string>& wordsThatCompare() {
  static const std::vector<std::string> kWords{
      "(a)",           "quickest",     "slowest",       "the cheapest", "the dearest",
      ", the most",    ", the least",  "the coldest",   "the warmest",  "for all [",
      "Side by side",  "side by side", "No rig of",     "all rigs",     "first rig",
      "schnellste",    "langsamste",   "am billigsten", "am teuersten", "am wenigsten",
      "am meisten",    "für alle",     "Nebeneinander", "Keine Anlage", "alle Anlagen",
      "ersten Anlage", "am kältesten", "am wärmsten"};
  return kWords;
}
std::string comparison(const std::string& text) {
  for (const std::string& word : wordsThatCompare())
    if (test_support::holds(text, word)) return word;
  return {};
}

template <class Of>
void eachAnswer(const rigs::Solution& solution, const Of& of) {
  for (const char* language : {"en", "de"}) {
    const rigs::Reader reader{.language = &languageOf(language)};
    for (const Question question : allQuestions())
      for (const QuestionView& view : everyView())
        of(answerTo(question, solution, reader, view), reader,
           std::string(identifierOf(question)) + ' ' + language);
    of(summary({solution, solution.plan, reader, {.supposed = true}}), reader,
       std::string("summary ") + language);
  }
}

TEST(OneRig, IsComparedWithNothingInAnyAnswer) {
  for (const rigs::Solution& solution : ofOneRig()) {
    eachAnswer(
        solution, [&](const Answer& answer, const rigs::Reader& reader, const std::string& where) {
          const std::string text = everyWord(answer, reader);
          EXPECT_GT(text.size(), 200U) << where;
          EXPECT_EQ(comparison(text), "") << where << ": " << solution.plan.rigs[0].name << '\n'
                                          << text.substr(0, 3000);
          EXPECT_FALSE(answer.lettered);
          for (const Picture& picture : answer.pictures) EXPECT_FALSE(picture.lettered) << where;
        });
  }
}

// The walk would see the words: of two rigs they are there.
TEST(OneRig, WordsThatCompareAreFoundWhereThereAreTwo) {
  int found = 0;
  int answers = 0;
  eachAnswer(test_support::overnight(),
             [&](const Answer& answer, const rigs::Reader& reader, const std::string& where) {
               ++answers;
               if (!comparison(everyWord(answer, reader)).empty()) ++found;
               EXPECT_TRUE(answer.lettered) << where;
             });
  EXPECT_EQ(found, answers);
}

TEST(OneRig, HasTheFiguresOfTheResultInEveryQuestion) {
  for (const rigs::Solution& solution : ofOneRig()) {
    int questions = 0;
    for (const Question question : allQuestions()) {
      SCOPED_TRACE(identifierOf(question));
      questions +=
          test_support::comparedWithResult(answerTo(question, solution, {}), solution) > 0 ? 1 : 0;
    }
    EXPECT_GE(questions, 6);
  }
}

TEST(OneRig, HasALineOrABarInEveryPicture) {
  const rigs::Solution& solution = ofOneRig().front();
  int pictures = 0;
  for (const Question question : allQuestions()) {
    for (const QuestionView& view : everyView()) {
      for (const Picture& picture : answerTo(question, solution, {}, view).pictures) {
        SCOPED_TRACE(picture.title);
        const bool bars = picture.kind == Picture::Kind::StackedBars;
        const bool areas = picture.kind == Picture::Kind::Areas;
        EXPECT_EQ(picture.stacks.size(), bars ? 1U : 0U);
        if (areas) {
          EXPECT_FALSE(picture.areas.empty());
        }
        if (!bars && !areas) {
          EXPECT_TRUE(std::any_of(picture.lines.begin(), picture.lines.end(),
                                  [](const PictureLine& l) { return l.rig == 0; }));
        }
        ++pictures;
      }
    }
  }
  EXPECT_GE(pictures, 16);
}

// What a price of an element is worth against another rig has nothing to stand there.
TEST(OneRig, HasNoRowWithoutAFigureForWantOfAnother) {
  const Answer cost = answerTo(Question::WhatCost, ofOneRig().front(), {});
  EXPECT_NE(test_support::rowOf(cost, "An element for", "for each batch of its first year"),
            nullptr);
  EXPECT_EQ(test_support::rowOf(cost, "An element for", "saves in a year"), nullptr);
}

TEST(OneRig, IsCalledByItsName) {
  const Answer time = answerTo(Question::HowLong, ofOneRig().front(), {});
  EXPECT_TRUE(test_support::holds(test_support::inShort(time), "with My kettle, from cold"));
  EXPECT_EQ(csvOf(time, {"Kettle"}, {}).substr(0, 30), "table,group,figure,unit,Kettle");
}

}  // namespace
}  // namespace gui::telling
