// SPDX-License-Identifier: GPL-3.0-or-later
// Every question in the whole window, reached by keyboard.
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QSettings>
#include <QSpinBox>
#include <QTest>
#include <QToolButton>
#include <algorithm>

#include "gui/window/questions/answer_table.hpp"
#include "gui/window/questions/question_column.hpp"
#include "gui/window/words/reader.hpp"
#include "tests/gui/window/window_fixture.hpp"

namespace {

using test_support::WindowTest;

class TheWindow : public WindowTest {};

TEST_F(TheWindow, AnswersEveryQuestionByItsKey) {
  ASSERT_TRUE(settles());
  int place = 0;
  for (const gui::telling::Question question : gui::telling::allQuestions()) {
    SCOPED_TRACE(gui::telling::identifierOf(question));
    if (question == gui::telling::Question::Overview) {
      window().setQuestion(gui::telling::Question::Room);
      press(Qt::Key_Home, Qt::AltModifier);
    } else if (question == gui::telling::Question::HowChills) {
      press(Qt::Key_PageDown, Qt::AltModifier);
    } else if (question == gui::telling::Question::WortChanges) {
      press(Qt::Key_PageUp, Qt::AltModifier);
    } else if (question == gui::telling::Question::HowSure) {
      press(Qt::Key_End, Qt::AltModifier);
    } else {
      press(static_cast<Qt::Key>(Qt::Key_0 + place % 10), Qt::ControlModifier);
    }
    EXPECT_EQ(window().page().question(), question);
    // What helps, and how sure it is, is searched for where it is looked at.
    if (question == gui::telling::Question::HelpsMost ||
        question == gui::telling::Question::HowSure) {
      ASSERT_TRUE(settles());
    }
    const gui::ShownAnswer answer = window().page().currentAnswer();
    EXPECT_FALSE(answer.headline().isEmpty());
    EXPECT_FALSE(answer.pictures.empty());
    ASSERT_FALSE(answer.tables.isEmpty());
    EXPECT_FALSE(answer.tables[0].rows.isEmpty());
    EXPECT_FALSE(answer.cautions.isEmpty());
    EXPECT_EQ(window().findChild<gui::QuestionColumn*>("questions")->currentRow(), place++);
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
  window().setQuestion(gui::telling::Question::HowLong);
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

TEST_F(TheWindow, GoesFromQuestionToQuestionByTheArrows) {
  ASSERT_TRUE(settles());
  auto* column = window().findChild<gui::QuestionColumn*>("questions");
  column->setFocus();
  const auto all = gui::telling::allQuestions();
  for (std::size_t i = 1; i < all.size(); ++i) {
    QTest::keyClick(column, Qt::Key_Down);
    EXPECT_EQ(window().page().question(), all[i]);
  }
  QTest::keyClick(column, Qt::Key_Down);
  EXPECT_EQ(window().page().question(), all.back());
  QTest::keyClick(column, Qt::Key_PageUp);
  QTest::keyClick(column, Qt::Key_PageUp);
  EXPECT_EQ(window().page().question(), all.front());
  QTest::keyClick(column, Qt::Key_PageDown);
  QTest::keyClick(column, Qt::Key_PageDown);
  EXPECT_EQ(window().page().question(), all.back());
  // By the mouse, too.
  QTest::mouseClick(column->viewport(), Qt::LeftButton, {},
                    column->visualItemRect(column->item(2)).center());
  EXPECT_EQ(window().page().question(), all[2]);
}

// The list is read without opening a question, by eyes and by ears.
TEST_F(TheWindow, HasEachQuestionsAnswerBelowIt) {
  window().setFormsShown(false);
  window().resize(1280, 720);
  ASSERT_TRUE(settles());
  const auto* column = window().findChild<gui::QuestionColumn*>("questions");
  EXPECT_FALSE(column->isFolded());
  ASSERT_EQ(column->count(), static_cast<int>(gui::telling::allQuestions().size()));
  int answered = 0;
  for (int i = 0; i < column->count(); ++i) {
    const auto question = gui::telling::allQuestions()[static_cast<std::size_t>(i)];
    const auto& entry = column->entry(i);
    EXPECT_EQ(entry.question, gui::told(gui::telling::titleOf(question)));
    EXPECT_TRUE(column->item(i)->data(Qt::AccessibleTextRole).toString().contains(entry.answer));
    if (!entry.answer.isEmpty()) ++answered;
  }
  EXPECT_GE(answered, 9);  // of what helps nothing is known before it is looked at
  EXPECT_EQ(column->entry(1).answer, QStringLiteral("6 h 49 min, no boil"));
  type("/batch/boil", "90 min");
  ASSERT_TRUE(settles());
  EXPECT_EQ(column->entry(1).answer, QStringLiteral("7 h 12 min, no boil"));
}

TEST_F(TheWindow, OpensTheQuestionOfARowOfTheOverview) {
  window().setQuestion(gui::telling::Question::Overview);
  ASSERT_TRUE(settles());
  const auto table = [&] { return window().page().findChild<gui::AnswerTable*>(); };
  const auto rowOf = [&](const QString& label) {
    for (int row = 0; row < table()->rowCount(); ++row)
      if (table()->item(row, 0)->text().startsWith(label)) return row;
    return -1;
  };
  table()->setCurrentCell(rowOf(QStringLiteral("circuit")), 1);
  table()->setFocus();
  QTest::keyClick(table(), Qt::Key_Return);
  EXPECT_EQ(window().page().question(), gui::telling::Question::Circuit);
  window().setQuestion(gui::telling::Question::Overview);
  ASSERT_TRUE(settles());
  QTest::mouseClick(
      table()->viewport(), Qt::LeftButton, {},
      table()->visualItemRect(table()->item(rowOf(QStringLiteral("boil-off")), 2)).center());
  EXPECT_EQ(window().page().question(), gui::telling::Question::BoilsEnough);
  // Rows of other tables lead nowhere.
  ASSERT_TRUE(settles());
  QTest::mouseClick(table()->viewport(), Qt::LeftButton, {},
                    table()->visualItemRect(table()->item(1, 1)).center());
  EXPECT_EQ(window().page().question(), gui::telling::Question::BoilsEnough);
}

// In every picture, whichever question; the plan knows nothing of it.
TEST_F(TheWindow, DrawsTheRigsThatAreTicked) {
  window().setQuestion(gui::telling::Question::Overview);
  ASSERT_TRUE(settles());
  const std::string before = document().text();
  QVector<QCheckBox*> boxes;
  for (auto* box : window().page().findChildren<QCheckBox*>())
    if (box->isVisible()) boxes += box;
  ASSERT_EQ(boxes.size(), 4);
  EXPECT_EQ(boxes[1]->text(), QStringLiteral("(b)"));
  EXPECT_TRUE(boxes[1]->isChecked());
  boxes[1]->setFocus();
  QTest::keyClick(boxes[1], Qt::Key_Space);
  const auto drawn = [&] {
    const auto pictures = window().page().currentAnswer().pictures;
    return pictures.at(0).lines.size() + pictures.at(0).stacks.size();
  };
  EXPECT_EQ(drawn(), 3u);
  window().setQuestion(gui::telling::Question::HowLong);
  ASSERT_TRUE(settles());
  EXPECT_EQ(drawn(), 3u);
  EXPECT_EQ(document().text(), before);
  EXPECT_FALSE(window().isWindowModified());
}

// The forms come and go by a key, by the menu's entry and by the button; a wide window has them.
TEST_F(TheWindow, ShowsThePlansFormsWhereThereIsRoomOrAsItIsAsked) {
  QSettings().remove(QStringLiteral("forms shown"));
  reopen();
  window().resize(1280, 720);
  EXPECT_FALSE(window().forms().isVisible());
  window().resize(gui::MainWindow::kWide + 40, 800);
  EXPECT_TRUE(window().forms().isVisible());
  window().resize(1280, 720);
  press(Qt::Key_F4, Qt::NoModifier);
  EXPECT_TRUE(window().forms().isVisible());
  QTest::mouseClick(window().findChild<QToolButton*>("forms"), Qt::LeftButton);
  EXPECT_FALSE(window().forms().isVisible());
  window().resize(1600, 900);
  EXPECT_FALSE(window().forms().isVisible()) << "as it was chosen";
  window().close();
  reopen();
  EXPECT_FALSE(window().forms().isVisible()) << "as it was left";
}

// Whoever opens a plan with a mistake sees the field.
TEST_F(TheWindow, ShowsTheFormsOfAPlanWithProblems) {
  window().setFormsShown(false);
  document().change(QStringLiteral("test"), R"({"rigs": []})");
  EXPECT_GT(window().forms().errorCount(), 0);
  EXPECT_TRUE(window().forms().isVisible());
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
