// SPDX-License-Identifier: GPL-3.0-or-later
// Every question in the whole window, reached by keyboard.
#include <QTabBar>
#include <QTest>

#include "gui/window/plan_chart.hpp"
#include "tests/window/window_fixture.hpp"

namespace {

using test_support::WindowTest;

class TheWindow : public WindowTest {};

TEST_F(TheWindow, AnswersEveryQuestionByItsKey) {
  ASSERT_TRUE(settles());
  int key = Qt::Key_1;
  for (const gui::Question question : gui::allQuestions()) {
    SCOPED_TRACE(gui::identifierOf(question).toStdString());
    press(static_cast<Qt::Key>(key++), Qt::ControlModifier);
    EXPECT_EQ(window().page().question(), question);
    const gui::Answer answer = window().page().currentAnswer();
    EXPECT_FALSE(answer.sentence.isEmpty());
    EXPECT_FALSE(answer.pictures.isEmpty());
    EXPECT_FALSE(answer.table.rows.isEmpty());
    EXPECT_FALSE(answer.cautions.isEmpty());
    EXPECT_EQ(window().findChild<QTabBar*>("questions")->currentIndex(),
              gui::allQuestions().indexOf(question));
  }
}

TEST_F(TheWindow, FollowsAnEdit) {
  ASSERT_TRUE(settles());
  const QString before = window().page().currentAnswer().sentence;
  type("/rigs/1/element/power", "1200 W");
  ASSERT_TRUE(settles());
  EXPECT_NE(window().page().currentAnswer().sentence, before);
  undo();
  ASSERT_TRUE(settles());
  EXPECT_EQ(window().page().currentAnswer().sentence, before);
}

TEST_F(TheWindow, TakesADraggedGoalAsOneStep) {
  const std::string before = document().text();
  for (const double minutes : {44.2, 43.1, 40.4}) Q_EMIT window().page().goalDragged(minutes);
  EXPECT_EQ(textAt("/goals/boil_within"), "40.5 min");
  EXPECT_EQ(line("/goals/boil_within")->text(), "40.5 min");
  undo();
  EXPECT_EQ(document().text(), before);
}

TEST_F(TheWindow, RemembersWhatWasOnScreen) {
  window().setQuestion(gui::Question::WhatCost);
  window().forms().tabs().setCurrentIndex(1);
  window().resize(1400, 800);
  window().close();
  reopen();
  EXPECT_EQ(window().page().question(), gui::Question::WhatCost);
  EXPECT_EQ(window().forms().tabs().currentIndex(), 1);
}

}  // namespace
