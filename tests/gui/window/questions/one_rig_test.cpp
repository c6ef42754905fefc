// SPDX-License-Identifier: GPL-3.0-or-later
// A plan of one rig in the window: no letter at its column, its answers, its pictures.
#include <QComboBox>
#include <QLabel>

#include "gui/window/charts/chart_layouter.hpp"
#include "gui/window/charts/chart_legend.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "tests/gui/window/window_fixture.hpp"

namespace {

class OneRigInTheWindow : public test_support::WindowTest {
 protected:
  void SetUp() override {
    WindowTest::SetUp();
    const QString file = fileIn(QStringLiteral("one.json"));
    test_support::writeFile(file, rigs::planStartText("one-kettle").value());
    reopen(file);
  }
};

TEST_F(OneRigInTheWindow, HasNoLetterInAnyAnswerOrPicture) {
  ASSERT_TRUE(settles());
  int pictures = 0;
  for (const gui::telling::Question question : gui::telling::allQuestions()) {
    SCOPED_TRACE(gui::telling::identifierOf(question));
    window().setQuestion(question);
    ASSERT_TRUE(settles());
    const gui::ShownAnswer answer = window().page().currentAnswer();
    QStringList all = answer.sentences + gui::asLines(answer.notes);
    for (const gui::ShownTable& table : answer.tables) all += table.head;
    // The columns of what helps are figures.
    if (question != gui::telling::Question::HelpsMost) {
      EXPECT_EQ(answer.tables.front().head.value(1), QStringLiteral("My kettle"));
    }
    for (const gui::telling::Picture& picture : answer.pictures) {
      for (const gui::LegendEntry& entry : gui::legendOf(picture)) all += entry.text;
      const gui::ChartLayout layout =
          gui::layOut(picture, QSizeF(800.0, 480.0), gui::paperLook(QLocale::c()));
      EXPECT_TRUE(layout.lineEnds.isEmpty()) << picture.title;
      for (const gui::ChartLayout::Label& name : layout.barNames) all += name.text;
      for (const gui::ChartLayout::Label& mark : layout.marks) all += mark.text;
      ++pictures;
    }
    EXPECT_FALSE(all.join(QLatin1Char('\n')).contains(QStringLiteral("(a)")))
        << all.join(QLatin1Char('\n')).toStdString();
  }
  EXPECT_GE(pictures, 9);
}

TEST_F(OneRigInTheWindow, HasNoLetterAtItsColumnAndNoChoiceOfRigs) {
  ASSERT_TRUE(settles());
  for (const QLabel* label : window().forms().findChildren<QLabel*>())
    EXPECT_FALSE(label->text().contains(QStringLiteral("(a)")));
  window().setQuestion(gui::telling::Question::WhereHeat);
  ASSERT_TRUE(settles());
  for (const QComboBox* box : window().page().findChildren<QComboBox*>())
    EXPECT_FALSE(box->isVisible() && box->findText(QStringLiteral("My kettle")) >= 0);
}

}  // namespace
