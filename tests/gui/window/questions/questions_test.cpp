// SPDX-License-Identifier: GPL-3.0-or-later
// Every question in the whole window, reached by keyboard.
#include <QComboBox>
#include <QSpinBox>
#include <QTabBar>
#include <QTest>
#include <algorithm>

#include "gui/window/charts/plan_chart.hpp"
#include "gui/window/words/language.hpp"
#include "gui/window/words/reader.hpp"
#include "tests/gui/window/window_fixture.hpp"

namespace {

using test_support::WindowTest;

class TheWindow : public WindowTest {};

TEST_F(TheWindow, AnswersEveryQuestionByItsKey) {
  ASSERT_TRUE(settles());
  int key = Qt::Key_1;
  int place = 0;
  for (const gui::telling::Question question : gui::telling::allQuestions()) {
    SCOPED_TRACE(gui::telling::identifierOf(question));
    press(key == Qt::Key_9 + 1 ? Qt::Key_0 : static_cast<Qt::Key>(key), Qt::ControlModifier);
    ++key;
    EXPECT_EQ(window().page().question(), question);
    // What helps is searched for where it is looked at.
    if (question == gui::telling::Question::HelpsMost) {
      ASSERT_TRUE(settles());
    }
    const gui::ShownAnswer answer = window().page().currentAnswer();
    EXPECT_FALSE(answer.headline().isEmpty());
    EXPECT_FALSE(answer.pictures.empty());
    ASSERT_FALSE(answer.tables.isEmpty());
    EXPECT_FALSE(answer.tables[0].rows.isEmpty());
    EXPECT_FALSE(answer.cautions.isEmpty());
    EXPECT_EQ(window().findChild<QTabBar*>("questions")->currentIndex(), place++);
  }
}

TEST_F(TheWindow, RanksWhatHelpsByTheWishThatIsChosen) {
  ASSERT_TRUE(settles());
  window().setQuestion(gui::telling::Question::HelpsMost);
  ASSERT_TRUE(settles());
  QComboBox *wish = nullptr, *rig = nullptr;
  for (QComboBox* box : window().page().findChildren<QComboBox*>()) {
    if (!box->isVisible()) continue;
    if (box->findText(QStringLiteral("to be ready sooner")) >= 0) wish = box;
    if (box->findText(QStringLiteral("(d) Old element, laundry")) >= 0) rig = box;
  }
  ASSERT_TRUE(wish && rig);
  EXPECT_EQ(wish->currentText(), QStringLiteral("what it lacks most"));
  rig->setCurrentIndex(3);
  Q_EMIT rig->activated(3);
  wish->setCurrentIndex(2);
  Q_EMIT wish->activated(2);
  ASSERT_TRUE(settles());
  EXPECT_EQ(window().page().view().wish, rigs::Wish::Sooner);
  const gui::ShownAnswer answer = window().page().currentAnswer();
  EXPECT_TRUE(answer.headline().endsWith(
      QStringLiteral("helps (d) Old element, laundry more to be ready sooner.")))
      << answer.headline().toStdString();
  ASSERT_EQ(answer.pictures.size(), 1U);
  EXPECT_TRUE(answer.pictures[0].xIsClock);
}

TEST_F(TheWindow, FollowsAnEdit) {
  ASSERT_TRUE(settles());
  const QString before = window().page().currentAnswer().headline();
  type("/rigs/1/element/power", "1200 W");
  ASSERT_TRUE(settles());
  EXPECT_NE(window().page().currentAnswer().headline(), before);
  undo();
  ASSERT_TRUE(settles());
  EXPECT_EQ(window().page().currentAnswer().headline(), before);
}

TEST_F(TheWindow, TakesADraggedGoalAsOneStep) {
  const std::string before = document().text();
  for (const double minutes : {44.2, 43.1, 40.4}) Q_EMIT window().page().goalDragged(minutes);
  EXPECT_EQ(textAt("/goals/boil_within"), "40.5 min");
  EXPECT_EQ(line("/goals/boil_within")->text(), "40.5 min");
  undo();
  EXPECT_EQ(document().text(), before);
}

TEST_F(TheWindow, TakesTheYearAsAnEditOfThePlan) {
  window().setQuestion(gui::telling::Question::WhatCost);
  ASSERT_TRUE(settles());
  auto* batches = window().page().findChild<QSpinBox*>();
  ASSERT_TRUE(batches && batches->isVisible());
  EXPECT_EQ(batches->value(), 12);
  batches->setValue(20);
  EXPECT_EQ(textAt("/tariff/brews_per_year"), "20");
  ASSERT_TRUE(settles());
  EXPECT_TRUE(window().page().currentAnswer().headline().contains("20 batches"));
  undo();
  EXPECT_EQ(textAt("/tariff/brews_per_year"), std::nullopt);
  ASSERT_TRUE(settles());
  EXPECT_EQ(batches->value(), 12);
}

// All nine in one row of the smallest window promised, none elided; the whole question above the
// answer and in the tool tip.
TEST_F(TheWindow, HasRoomForEveryQuestionInBothLanguages) {
  window().resize(1280, 720);
  for (const char* language : {"en", "de"}) {
    SCOPED_TRACE(language);
    gui::speak(QString::fromLatin1(language));
    QCoreApplication::processEvents();
    ASSERT_TRUE(settles());
    const auto* bar = window().findChild<QTabBar*>("questions");
    ASSERT_EQ(bar->count(), static_cast<int>(gui::telling::allQuestions().size()));
    for (int i = 0; i < bar->count(); ++i) {
      const QRect tab = bar->tabRect(i);
      EXPECT_TRUE(bar->rect().contains(tab)) << bar->tabText(i).toStdString();
      EXPECT_GT(tab.width(), bar->fontMetrics().horizontalAdvance(bar->tabText(i)));
      const auto question = gui::telling::allQuestions()[static_cast<std::size_t>(i)];
      EXPECT_EQ(bar->tabToolTip(i), gui::told(gui::telling::titleOf(question)));
    }
    const QRect last = bar->tabRect(bar->count() - 1);
    EXPECT_LT(bar->mapTo(&window(), last.topRight()).x(),
              window().findChild<QComboBox*>("units")->mapTo(&window(), QPoint(0, 0)).x());
  }
  gui::speak(QStringLiteral("en"));
}

TEST_F(TheWindow, RemembersWhatWasOnScreen) {
  window().setQuestion(gui::telling::Question::WhatCost);
  window().forms().tabs().setCurrentIndex(1);
  window().resize(1400, 800);
  window().close();
  reopen();
  EXPECT_EQ(window().page().question(), gui::telling::Question::WhatCost);
  EXPECT_EQ(window().forms().tabs().currentIndex(), 1);
}

TEST_F(TheWindow, SupposesAJacketOnlyWhenThatIsChosen) {
  window().setQuestion(gui::telling::Question::HowFarCools);
  ASSERT_TRUE(settles());
  auto& page = window().page();
  const auto thin = [&] {
    const gui::ShownAnswer answer = page.currentAnswer();
    const auto& lines = answer.pictures[0].lines;
    return std::count_if(lines.begin(), lines.end(), [](const auto& line) { return line.faint; });
  };
  EXPECT_EQ(thin(), 0);
  QComboBox* shown = nullptr;
  for (auto* box : page.findChildren<QComboBox*>())
    if (box->isVisible() && box->itemText(0) == "each kettle as it is") shown = box;
  ASSERT_NE(shown, nullptr);
  shown->setFocus();
  QTest::keyClick(shown, Qt::Key_Down);
  EXPECT_EQ(thin(), 4);
  QTest::keyClick(shown, Qt::Key_Up);
  EXPECT_EQ(thin(), 0);
}

TEST_F(TheWindow, ChangesBetweenBothDaysOfAJacketAndWhatIsSaved) {
  window().setQuestion(gui::telling::Question::WorthJacket);
  ASSERT_TRUE(settles());
  auto& page = window().page();
  const auto title = [&] { return QString::fromStdString(page.currentAnswer().pictures[0].title); };
  EXPECT_TRUE(title().contains("with a jacket and without"));
  QComboBox* shown = nullptr;
  for (auto* box : page.findChildren<QComboBox*>())
    if (box->isVisible() && box->itemText(1) == "what a jacket saves") shown = box;
  ASSERT_NE(shown, nullptr);
  shown->setFocus();
  QTest::keyClick(shown, Qt::Key_Down);
  EXPECT_EQ(title(), QStringLiteral("Time a jacket saves"));
  QTest::keyClick(shown, Qt::Key_Up);
  EXPECT_TRUE(title().contains("with a jacket and without"));
}

}  // namespace
