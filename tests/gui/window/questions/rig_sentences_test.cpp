// SPDX-License-Identifier: GPL-3.0-or-later
// The rigs in words above the overview's table: their parts are ways to their fields.
#include "gui/window/questions/rig_sentences.hpp"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QTest>
#include <QToolButton>

#include "tests/gui/window/window_fixture.hpp"

namespace {

using gui::RigSentences;
using gui::telling::Question;

class TheRigsInWords : public test_support::WindowTest {
 protected:
  RigSentences& sentences() { return *window().page().findChild<RigSentences*>(); }
  // As a person without a mouse: to the part of this number, and into it.
  void choosePart(int rig, int part) {
    auto* label = sentences().findChildren<QLabel*>().at(rig);
    label->setFocus(Qt::TabFocusReason);
    for (int i = 0; i <= part; ++i) QTest::keyClick(label, Qt::Key_Tab);
    QTest::keyClick(label, Qt::Key_Return);
  }
};

TEST_F(TheRigsInWords, StandAboveTheOverviewAlone) {
  window().setQuestion(Question::Overview);
  ASSERT_TRUE(settles());
  EXPECT_TRUE(sentences().isVisible());
  ASSERT_EQ(sentences().texts().size(), 4);
  EXPECT_EQ(sentences().texts()[1],
            QStringLiteral("(b) New element, kitchen: like (a), but 1.65 kW at "
                           "120 V, and other details"));
  window().setQuestion(Question::HowLong);
  ASSERT_TRUE(settles());
  EXPECT_FALSE(sentences().isVisible());
}

TEST_F(TheRigsInWords, OpenTheFieldsOfAPart) {
  window().setQuestion(Question::Overview);
  window().setFormsShown(false);
  ASSERT_TRUE(settles());
  choosePart(0, 0);  // how large it is
  EXPECT_TRUE(window().forms().isVisible());
  EXPECT_EQ(QApplication::focusWidget(), line("/rigs/0/vessel/inner_diameter"));
  choosePart(3, 0);  // what is another circuit than (a)'s
  EXPECT_EQ(QApplication::focusWidget(), choice("/rigs/3/supply/from"));
}

TEST_F(TheRigsInWords, MakeOneMoreThatIsTheSameButForWhatIsThenSaid) {
  window().setQuestion(Question::Overview);
  ASSERT_TRUE(settles());
  QTest::mouseClick(window().page().findChild<QToolButton*>("same, with"), Qt::LeftButton);
  ASSERT_TRUE(settles());
  EXPECT_EQ(textAt("/rigs/1/same_as"), "a");
  EXPECT_EQ(QApplication::focusWidget(), line("/rigs/1/element/power"));
  type("/rigs/1/element/power", QStringLiteral("2 kW"));
  ASSERT_TRUE(settles());
  ASSERT_EQ(sentences().texts().size(), 5);
  EXPECT_EQ(sentences().texts()[1],
            QStringLiteral("(e) Old element, kitchen, otherwise: like (a), but 2 kW at 230 V"));
}

// Whoever was compared with may be gone by then.
TEST_F(TheRigsInWords, MakeOneMoreWhereTheRigComparedWithIsGone) {
  window().setQuestion(Question::Overview);
  ASSERT_TRUE(settles());
  gui::telling::QuestionView view = window().page().view();
  view.rig = 3;
  window().page().setView(view);
  for (const std::size_t rig : {3u, 2u, 1u}) window().forms().rigColumns().remove(rig);
  ASSERT_TRUE(settles());
  QTest::mouseClick(window().page().findChild<QToolButton*>("same, with"), Qt::LeftButton);
  ASSERT_TRUE(settles());
  EXPECT_EQ(textAt("/rigs/1/same_as"), "a");
}

TEST_F(TheRigsInWords, FollowWhatIsTyped) {
  window().setQuestion(Question::Overview);
  ASSERT_TRUE(settles());
  type("/rigs/1/element/power", QStringLiteral("1.5 kW"));
  ASSERT_TRUE(settles());
  EXPECT_TRUE(sentences().texts()[1].contains(QStringLiteral("1.5 kW")))
      << sentences().texts()[1].toStdString();
}

}  // namespace
