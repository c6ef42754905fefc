// SPDX-License-Identifier: GPL-3.0-or-later
// What is shown of an answer is all of it, in the reader's units and language.
#include "gui/window/questions/shown_answer.hpp"

#include <gtest/gtest.h>

#include "gui/window/words/language.hpp"
#include "tests/gui/window/solved_demo.hpp"

namespace {

using gui::ShownAnswer;
using gui::ShownNote;
using gui::telling::Question;
using rigs::Told;
using rigs::UnitSystem;
using rigs::Verbatim;
using test_support::solvedDemo;

Told plain(const char* text) { return Told::just(Verbatim{text}); }

TEST(ShownAnswer, IsCompleteForEveryQuestion) {
  for (const Question question : gui::telling::allQuestions()) {
    SCOPED_TRACE(gui::telling::identifierOf(question));
    const ShownAnswer answer = test_support::shownDemo(question);
    EXPECT_FALSE(answer.title.isEmpty());
    ASSERT_FALSE(answer.sentences.isEmpty());
    // Numbers first, but for the overview, which says whom it is about.
    const bool isNumber = answer.sentences[0][0].isDigit();
    EXPECT_EQ(isNumber, question != Question::Overview) << answer.sentences[0].toStdString();
    EXPECT_FALSE(answer.headline().contains(QStringLiteral("%1")));
    EXPECT_GE(answer.pictures.size(), 1U);
    EXPECT_LE(answer.pictures.size(), 2U);
    EXPECT_GE(answer.cautions.size(), 6);
    ASSERT_FALSE(answer.tables.isEmpty());
    for (const gui::ShownTable& table : answer.tables) {
      EXPECT_GT(table.head.size(), 1);
      for (const auto& row : table.rows)
        EXPECT_EQ(row.cells.size(), row.isHeading ? 1 : table.head.size());
    }
  }
}

TEST(ShownAnswer, NamesTheRigsAboveTheirColumns) {
  const ShownAnswer answer = test_support::shownDemo(Question::HowLong);
  ASSERT_EQ(answer.tables[0].head.size(), 5);
  for (int rig = 0; rig < 4; ++rig) {
    const auto& name = solvedDemo()->answers.rigs[static_cast<std::size_t>(rig)].name;
    EXPECT_EQ(answer.tables[0].head[rig + 1].toStdString(),
              gui::telling::letter(static_cast<std::size_t>(rig)) + ' ' + name);
  }
}

// Tables of the rigs are one, before those with other columns.
TEST(ShownAnswer, PutsTheRigsTablesTogether) {
  const auto table = [](const char* label, bool ofRigs) {
    gui::telling::Table made{.name = label, .columns = {plain("(a)")}, .rows = {}};
    made.ofRigs = ofRigs;
    made.rows.push_back({plain(label), {gui::telling::cellOf(Verbatim{"x"})}, {}, {}});
    return made;
  };
  gui::telling::Answer answer;
  answer.show(table("stages", false));
  answer.show(table("first", true));
  answer.show(table("second", true));

  const ShownAnswer shown = gui::shown(answer, {"Kettle"}, {});

  ASSERT_EQ(shown.tables.size(), 2);
  EXPECT_EQ(shown.tables[0].head, (QStringList{QString(), "(a) Kettle"}));
  ASSERT_EQ(shown.tables[0].rows.size(), 2);
  EXPECT_EQ(shown.tables[0].rows[1].cells, (QStringList{"second", "x"}));
  EXPECT_EQ(shown.tables[1].head, (QStringList{QString(), "(a)"}));
  EXPECT_EQ(shown.tables[1].rows[0].cells[0], QStringLiteral("stages"));
}

// A sentence that goes on about the same rig stays behind its letter; a heading above tables
// alone, which stand elsewhere, is left out.
TEST(ShownAnswer, NotesWhatIsSaidOfEachRig) {
  gui::telling::Answer answer;
  answer.heading(plain("Figures"));
  answer.heading(plain("Rig by rig"));
  answer.say(0, plain("It boils."));
  answer.goOn(0, plain("Gently."));
  answer.say(1, plain("It does not."));
  answer.say(plain("For planning only."));
  answer.notes = {plain("A source.")};

  const ShownAnswer shown = gui::shown(answer, {"Kettle", "Urn"}, {});

  const QVector<ShownNote> expected{{"Rig by rig", true},
                                    {"(a) It boils. Gently."},
                                    {"(b) It does not."},
                                    {"For planning only."},
                                    {"A source."}};
  EXPECT_EQ(shown.notes, expected);
}

TEST(ShownAnswer, FollowsTheUnitsEverywhere) {
  const ShownAnswer answer =
      test_support::shownDemo(Question::HowLong, {}, UnitSystem::UsCustomary);
  EXPECT_NE(answer.pictures[0].yTitle.find("°F"), std::string::npos);
  EXPECT_FALSE(answer.headline().contains(QStringLiteral("°C")));
  EXPECT_GT(answer.pictures[0].lines[3].points.back().y, 200.0);
}

TEST(ShownAnswer, IsGermanWithADecimalCommaWhereGermanIsSpoken) {
  const ShownAnswer english = test_support::shownDemo(Question::BoilsEnough);
  gui::speak(QStringLiteral("de"));
  const ShownAnswer german = test_support::shownDemo(Question::BoilsEnough);
  gui::speak(QStringLiteral("en"));
  ASSERT_EQ(german.tables[0].rows.size(), english.tables[0].rows.size());
  EXPECT_NE(german.title, english.title);
  int compared = 0;
  for (qsizetype row = 0; row < english.tables[0].rows.size(); ++row) {
    const QStringList& there = english.tables[0].rows[row].cells;
    for (qsizetype i = 1; i < there.size(); ++i) {
      bool isNumber = false;
      there[i].toDouble(&isNumber);
      if (!isNumber || !there[i].contains(u'.')) continue;
      EXPECT_EQ(german.tables[0].rows[row].cells[i], QString(there[i]).replace(u'.', u','));
      ++compared;
    }
  }
  EXPECT_GT(compared, 8);
}

TEST(ShownAnswer, WarnsOfWarmWortWhereAMashIsLeftAlone) {
  const auto inSight = [](Question question) {
    return test_support::shownDemo(question).cautions.filter(QStringLiteral("57 °C")).size();
  };
  EXPECT_EQ(inSight(Question::HowFarCools), 1);
  EXPECT_EQ(inSight(Question::HowLong), 0);
}

// The days come before the sweeps and the sizing.
TEST(ShownAnswer, StandsWithoutSweeps) {
  rigs::Solution days = *solvedDemo();
  days.sweeps.clear();
  for (rigs::RigAnswer& rig : days.answers.rigs) rig.sizing.reset();
  for (const Question question : gui::telling::allQuestions()) {
    SCOPED_TRACE(gui::telling::identifierOf(question));
    const ShownAnswer answer = gui::shown(gui::telling::answerTo(question, days, {}), {}, {});
    EXPECT_FALSE(answer.headline().isEmpty());
    EXPECT_FALSE(answer.tables.isEmpty());
  }
}

TEST(ShownAnswer, SurvivesAPlanWithoutRigsOrJackets) {
  EXPECT_TRUE(gui::telling::answerTo(Question::HowLong, {}, {}).pictures.empty());
  rigs::Solution bare = *solvedDemo();
  for (rigs::RigAnswer& rig : bare.answers.rigs) {
    rig.jacket.reset();
    rig.night.reset();
  }
  for (rigs::RigSweeps& sweeps : bare.sweeps) {
    sweeps.thickness.clear();
    sweeps.jacketPower.clear();
  }
  for (const Question question : {Question::WorthJacket, Question::HowFarCools}) {
    const ShownAnswer answer = gui::shown(gui::telling::answerTo(question, bare, {}), {}, {});
    EXPECT_TRUE(answer.headline().contains(QStringLiteral("No rig")))
        << answer.headline().toStdString();
  }
}

}  // namespace
