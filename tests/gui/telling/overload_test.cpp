// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/overload.hpp"

#include <gtest/gtest.h>

#include <set>
#include <sstream>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/csv.hpp"
#include "gui/telling/summary.hpp"
#include "gui/telling/translations.hpp"
#include "tests/gui/telling/asked.hpp"
#include "tests/gui/terminal/plan_in_code.hpp"
#include "tests/support/solved_demo.hpp"

namespace gui::telling {
namespace {

using namespace physics;

// 5 kW at 230 V: 21.7 A (I = P/U) from a circuit of 16 A.
rigs::Plan overloadedPlan(double watt) {
  rigs::Plan plan = test_support::planInCode();
  for (Rig* rig : {&plan.rigs[0].rig, &plan.rigs[0].bare, &plan.rigs[0].jacketed}) {
    rig->element = {watts(watt), volts(230.0), metres(0.05)};
    rig->supply = {.nominal = volts(230.0), .rating = amperes(16.0), .cableLoop = ohms(0.0)};
  }
  return plan;
}

TEST(Overload, OpensEveryQuestionAndTheSummary) {
  const test_support::OwnCase own(overloadedPlan(5000.0), rigs::Depth::Everything);
  const std::string expected = "▲ Overload: (a) " + own.get().name(0) +
                               " draws 21.7 A from its circuit of 16 A. Do not run it like that.";
  for (const Question question : allQuestions()) {
    SCOPED_TRACE(identifierOf(question));
    const Answer answer = answerTo(question, own.solution, {});
    ASSERT_FALSE(answer.sentences.empty());
    EXPECT_EQ(rigs::inEnglish(answer.sentences.front()), expected);
  }
  const Answer all = summary(own.get());
  ASSERT_FALSE(all.sentences.empty());
  EXPECT_EQ(rigs::inEnglish(all.sentences.front()), expected);
}

constexpr std::string_view kMark = "▲\u00a0overload";

// Of two rigs that are alike but for their names and elements the second fits its circuit.
const test_support::OwnCase& oneOfTwoOverloads() {
  static const test_support::OwnCase kOwn = [] {
    rigs::Plan plan = overloadedPlan(5000.0);
    plan.rigs.resize(1);
    plan.rigs.push_back(overloadedPlan(3000.0).rigs.front());
    plan.rigs[0].name = "Strong";
    plan.rigs[1].name = "Weak";
    return test_support::OwnCase(plan, rigs::Depth::Everything);
  }();
  return kOwn;
}

// How many sentences there are about a rig.
int expectMarked(const Answer& answer) {
  int about = 0;
  for (const Block& block : answer.blocks) {
    const auto* sentence = std::get_if<Sentence>(&block);
    if (!sentence || !sentence->rig || sentence->goesOn || sentence->text.empty()) continue;
    ++about;
    const std::string read = rigs::inEnglish(answer.textOf(*sentence));
    EXPECT_EQ(read.starts_with("[" + std::string(kMark) + "] "), sentence->rig == 0U) << read;
    EXPECT_TRUE(read.ends_with(rigs::inEnglish(sentence->text))) << read;
  }
  return about;
}

TEST(Overload, IsAtEverySentenceAboutItsRig) {
  const test_support::OwnCase& own = oneOfTwoOverloads();
  for (const Question question : allQuestions()) {
    SCOPED_TRACE(identifierOf(question));
    const int about = expectMarked(answerTo(question, own.solution, {}));
    // The overview tells of its first rig in the headline, heat below a heading for each rig; the
    // room needs a depth of its own, and what helps is searched for.
    if (question != Question::Overview && question != Question::WhereHeat &&
        question != Question::Room && question != Question::HelpsMost &&
        question != Question::HowSure && question != Question::HowChills &&
        question != Question::WortChanges) {
      EXPECT_GT(about, 1);
    }
  }
  EXPECT_GT(expectMarked(summary(own.get())), 1);
  const test_support::OwnCase inRoom(own.solution.plan, rigs::Depth::Room);
  EXPECT_GT(expectMarked(answerTo(Question::Room, inRoom.solution, {})), 1);
}

// In short answers a rig stands by name; the sentence that tells of the overload needs no mark.
TEST(Overload, IsAtEveryNameInASentence) {
  const test_support::OwnCase& own = oneOfTwoOverloads();
  const std::string marked = "(a) Strong [" + std::string(kMark) + "]";
  int named = 0;
  for (const Question question : allQuestions()) {
    SCOPED_TRACE(identifierOf(question));
    const Answer answer = answerTo(question, own.solution, {});
    ASSERT_EQ(answer.warnings, 1U);
    for (std::size_t i = answer.warnings; i < answer.sentences.size(); ++i) {
      const std::string text = rigs::inEnglish(answer.sentences[i]);
      EXPECT_FALSE(test_support::holds(text, "(b) Weak [")) << text;
      if (!test_support::holds(text, "(a)")) continue;
      ++named;
      EXPECT_TRUE(test_support::holds(text, marked)) << text;
    }
  }
  EXPECT_GT(named, 5);
}

// Where there is room for a letter only, its shape goes with it.
TEST(Overload, IsInEveryPicture) {
  const test_support::OwnCase& own = oneOfTwoOverloads();
  std::set<std::string> labels;
  for (const Question question : allQuestions()) {
    SCOPED_TRACE(identifierOf(question));
    for (const Picture& picture : answerTo(question, own.solution, {}).pictures) {
      EXPECT_EQ(markOfRig(picture, 0), kMark);
      EXPECT_EQ(markOfRig(picture, 1), "");
      for (const PictureLine& line : picture.lines)
        EXPECT_FALSE(test_support::holds(line.name, "▲")) << line.name;
      for (const PictureMark& mark : picture.marks) {
        if (!test_support::holds(mark.label, mark.rig == 0 ? "(a)" : "(b)")) continue;
        labels.insert(mark.label);
        EXPECT_EQ(test_support::holds(mark.label, "(a)▲"), mark.rig == 0) << mark.label;
      }
    }
  }
  EXPECT_GT(labels.size(), 2U);
}

// Whoever looks a name up finds it, and every number is where and what it was.
TEST(Overload, IsALineOfItsOwnInSpreadsheets) {
  const test_support::OwnCase& own = oneOfTwoOverloads();
  for (const Question question : allQuestions()) {
    SCOPED_TRACE(identifierOf(question));
    Answer answer = answerTo(question, own.solution, {});
    std::istringstream with(csvOf(answer, {"Strong", "Weak"}, {}));
    answer.rigMarks.clear();
    const std::string without = csvOf(answer, {"Strong", "Weak"}, {});
    std::string others;
    int states = 0;
    for (std::string line; std::getline(with, line);) {
      if (line.ends_with(",,state,,overload,")) {
        ++states;
      } else {
        others += line + '\n';
      }
    }
    // What helps is a table of changes, in which the circuit has a column; how sure it is, nobody
    // has asked.
    if (question != Question::HelpsMost && question != Question::HowSure) {
      EXPECT_GT(states, 0);
    }
    EXPECT_EQ(others, without);
  }
}

TEST(Overload, IsToldInGerman) {
  const rigs::Reader german{.language = &languageOf("de")};
  const test_support::OwnCase& own = oneOfTwoOverloads();
  const Answer answer = answerTo(Question::HowLong, own.solution, german);
  EXPECT_TRUE(rigs::tell(answer.sentences[0], german).starts_with("▲ Überlast: (a) Strong zieht "));
  EXPECT_EQ(rigs::tell(answer.markOf(0), german), "▲\u00a0Überlast");
  EXPECT_EQ(markOfRig(answer.pictures.front(), 0), "▲\u00a0Überlast");
}

// 3.7 kW are 16.09 A: within what an element may take more than its plate says.
TEST(Overload, IsNotClaimedWithinThePlatesTolerance) {
  for (const double watt : {3000.0, 3700.0}) {
    const test_support::OwnCase own(overloadedPlan(watt), rigs::Depth::Day);
    EXPECT_TRUE(overloads(own.get()).empty()) << watt;
    EXPECT_TRUE(answerTo(Question::HowLong, own.solution, {}).rigMarks.empty()) << watt;
    EXPECT_EQ(own.get().lettered(0), "(a)") << watt;
  }
}

}  // namespace
}  // namespace gui::telling
