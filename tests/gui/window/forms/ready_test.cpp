// SPDX-License-Identifier: GPL-3.0-or-later
// What is to be ready, typed in the form: the clocks of the answer move, and take themselves back.
#include <gtest/gtest.h>

#include <QComboBox>

#include "gui/window/questions/shown_answer.hpp"
#include "tests/gui/window/window_fixture.hpp"

namespace {

class ToBeReady : public test_support::WindowTest {
 protected:
  void SetUp() override {
    WindowTest::SetUp();
    window().setQuestion(gui::telling::Question::Overview);
  }
  QString told() {
    EXPECT_TRUE(settles());
    const gui::ShownAnswer answer = window().page().currentAnswer();
    return (answer.sentences + gui::asLines(answer.notes)).join(QLatin1Char('\n'));
  }
};

TEST_F(ToBeReady, MovesTheClocksWithWhatIsTyped) {
  const std::string before = document().text();
  ASSERT_FALSE(told().contains(QStringLiteral("begin at")));
  type("/ready/at", QStringLiteral("11:00"));
  EXPECT_EQ(textAt("/ready/what"), "boil") << "one says nothing without the other";
  EXPECT_FALSE(textAt("/day_starts")) << "it stands instead of that";
  EXPECT_FALSE(rigs::hasErrors(document().problems()));
  const QString rolls = told();
  EXPECT_TRUE(rolls.contains(QStringLiteral("begin at 08:26"))) << rolls.toStdString();
  EXPECT_TRUE(rolls.contains(QStringLiteral("rolls strongly from 11:00"))) << rolls.toStdString();
  type("/ready/at", QStringLiteral("12:30"));
  EXPECT_TRUE(told().contains(QStringLiteral("begin at 09:56"))) << told().toStdString();
  choose("/ready/what", QStringLiteral("end of boil"));
  EXPECT_TRUE(told().contains(QStringLiteral("begin at 08:46"))) << told().toStdString();
  EXPECT_TRUE(told().contains(QStringLiteral("over at 12:30"))) << told().toStdString();
  type("/ready/at", QString());
  EXPECT_FALSE(textAt("/ready/what")) << "emptied, nothing is to be ready";
  window().centralWidget()->setFocus();
  while (document().undoStack().canUndo()) undo();
  EXPECT_EQ(document().text(), before);
  EXPECT_FALSE(told().contains(QStringLiteral("begin at")));
}

TEST_F(ToBeReady, GivesWayToAStatedStart) {
  type("/ready/at", QStringLiteral("11:00"));
  type("/day_starts", QStringLiteral("06:00"));
  EXPECT_FALSE(textAt("/ready/what") || textAt("/ready/at"));
  EXPECT_EQ(textAt("/day_starts"), "06:00");
  EXPECT_FALSE(told().contains(QStringLiteral("begin at")));
}

TEST_F(ToBeReady, SaysAtItsFieldWhatIsWrong) {
  type("/ready/at", QStringLiteral("eleven"));
  EXPECT_TRUE(problemAt("/ready/at").contains(QStringLiteral("no time of day")));
  type("/ready/at", QStringLiteral("19:00"));
  choose("/ready/what", QStringLiteral("pitching"));
  EXPECT_TRUE(problemAt("/ready/what").contains(QStringLiteral("how the wort of")))
      << problemAt("/ready/what").toStdString();
}

}  // namespace
