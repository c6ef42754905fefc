// SPDX-License-Identifier: GPL-3.0-or-later
// Help where one is: at a field, a figure, a question; the list of keys; the way between areas.
#include <gtest/gtest.h>

#include <QApplication>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QDialog>
#include <QDir>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QTableWidget>
#include <QTest>
#include <QTimer>

#include "gui/telling/explained.hpp"
#include "gui/window/charts/plan_chart.hpp"
#include "gui/window/help_note.hpp"
#include "gui/window/questions/answer_table.hpp"
#include "gui/window/words/reader.hpp"
#include "rigs/plans/keys.hpp"
#include "tests/gui/window/window_fixture.hpp"

namespace {

using gui::telling::Question;
using test_support::WindowTest;

class TheHelp : public WindowTest {
 protected:
  static QString note() {
    auto* open = qobject_cast<gui::HelpNote*>(QApplication::activePopupWidget());
    return open ? open->text() : QString();
  }
  static void closeNote() {
    if (QWidget* open = QApplication::activePopupWidget()) QTest::keyClick(open, Qt::Key_Escape);
  }
  gui::AnswerTable* table() { return window().page().findChild<gui::AnswerTable*>(); }
  // The row of the first table whose label begins so, current.
  gui::AnswerTable* atRow(const QString& label) {
    gui::AnswerTable* one = table();
    for (int row = 0; row < one->rowCount(); ++row) {
      if (!one->item(row, 0) || !one->item(row, 0)->text().startsWith(label)) continue;
      one->setCurrentCell(row, 1);
      one->setFocus();
      return one;
    }
    ADD_FAILURE() << label.toStdString();
    return one;
  }
  void chooseFromMenu(const QString& beginning) {
    QTimer::singleShot(50, &hands_, [this, beginning] {
      auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
      if (!menu) return;
      for (QAction* one : menu->actions()) {
        QString text = one->text();
        if (!text.remove(QLatin1Char('&')).startsWith(beginning)) continue;
        ++chosen_;
        QTest::mouseClick(menu, Qt::LeftButton, {}, menu->actionGeometry(one).center());
        return;
      }
      menu->close();
    });
  }
  void openMenu(gui::AnswerTable* over) {
    const QPoint at = over->visualItemRect(over->currentItem()).center();
    QContextMenuEvent open(QContextMenuEvent::Keyboard, at, over->viewport()->mapToGlobal(at));
    qApp->sendEvent(over, &open);
  }
  int chosen_ = 0;
};

TEST_F(TheHelp, AtAFieldSaysWhatItMeansAndAnExample) {
  line("/rigs/0/vessel/height")->setFocus();
  press(Qt::Key_F1, Qt::NoModifier);
  const rigs::Key& key = *rigs::keyAt("/rigs/*/vessel/height");
  EXPECT_TRUE(note().contains(QString::fromUtf8(key.meaning.english))) << note().toStdString();
  EXPECT_TRUE(
      note().contains(QString::fromUtf8(key.example.data(), qsizetype(key.example.size()))));
  closeNote();
  EXPECT_EQ(QApplication::activePopupWidget(), nullptr);
}

TEST_F(TheHelp, OnEveryLabelOfAFormIsItsFieldsMeaning) {
  int seen = 0;
  for (const auto* label : window().forms().findChildren<QLabel*>()) {
    if (label->toolTip().isEmpty() || qobject_cast<const gui::OverloadMark*>(label)) continue;
    ++seen;
    EXPECT_TRUE(label->whatsThis().startsWith(label->toolTip())) << label->text().toStdString();
  }
  EXPECT_GT(seen, 80);
}

TEST_F(TheHelp, AtAFigureSaysHowItWasComputed) {
  window().setQuestion(Question::Overview);
  ASSERT_TRUE(settles());
  atRow(QStringLiteral("boil-off"));
  press(Qt::Key_F1, Qt::NoModifier);
  gui::telling::Row boilOff;
  boilOff.result = "/day/boil/share_of_pre_boil_per_h";
  const auto words = gui::telling::explanationOf(Question::Overview, boilOff);
  EXPECT_TRUE(note().startsWith(gui::told(words.formula))) << note().toStdString();
  EXPECT_TRUE(note().contains(gui::told(words.source)));
  EXPECT_TRUE(note().contains(gui::told(words.certainty)));
  closeNote();
  atRow(QStringLiteral("a batch"));
  press(Qt::Key_F1, Qt::NoModifier);
  EXPECT_TRUE(note().startsWith(gui::told(explanationOf(Question::WhatCost).formula)));
  closeNote();
}

TEST_F(TheHelp, OfATablesMenuExplainsCopiesAndOpens) {
  window().setQuestion(Question::Overview);
  ASSERT_TRUE(settles());
  chooseFromMenu(QStringLiteral("How was this"));
  openMenu(atRow(QStringLiteral("vigour")));
  EXPECT_EQ(chosen_, 1);
  EXPECT_TRUE(note().startsWith(QStringLiteral("A word for the boil-off"))) << note().toStdString();
  closeNote();

  chooseFromMenu(QStringLiteral("Copy cell"));
  gui::AnswerTable* vigour = atRow(QStringLiteral("vigour"));
  openMenu(vigour);
  EXPECT_EQ(QApplication::clipboard()->text(), vigour->currentItem()->text());

  chooseFromMenu(QStringLiteral("Copy the table"));
  openMenu(vigour);
  const QStringList lines = QApplication::clipboard()->text().split(QLatin1Char('\n'));
  EXPECT_EQ(lines.size(), vigour->rowCount() + 1);
  EXPECT_TRUE(lines.front().contains(QStringLiteral("Old element, kitchen")));

  chooseFromMenu(QStringLiteral("Open"));
  openMenu(vigour);
  EXPECT_EQ(window().page().question(), Question::BoilsEnough);
}

TEST_F(TheHelp, CopiesCellsBelowTheirHeadsAndBesideTheirLabels) {
  window().setQuestion(Question::Overview);
  ASSERT_TRUE(settles());
  gui::AnswerTable* one = atRow(QStringLiteral("over"));
  const int row = one->currentRow();
  one->setRangeSelected({row, 2, row + 1, 3}, true);
  QTest::keySequence(one, QKeySequence::Copy);
  const QStringList lines = QApplication::clipboard()->text().split(QLatin1Char('\n'));
  ASSERT_EQ(lines.size(), 3);
  EXPECT_TRUE(lines[0].startsWith(QLatin1Char('\t'))) << lines[0].toStdString();
  EXPECT_TRUE(lines[0].contains(QStringLiteral("(b)")));
  EXPECT_TRUE(lines[1].startsWith(QStringLiteral("over\t"))) << lines[1].toStdString();
}

TEST_F(TheHelp, AtTheQuestionsSaysHowTheyAreAnswered) {
  window().setQuestion(Question::Room);
  ASSERT_TRUE(settles());
  window().findChild<QWidget*>(QStringLiteral("questions"))->setFocus();
  press(Qt::Key_F1, Qt::NoModifier);
  EXPECT_TRUE(note().startsWith(gui::told(explanationOf(Question::Room).formula)));
  closeNote();
}

TEST_F(TheHelp, AtAPictureSaysHowWhatItShowsWasComputed) {
  window().setQuestion(Question::HowLong);
  ASSERT_TRUE(settles());
  auto* picture = window().page().findChild<gui::PlanChart*>();
  const QString formula = gui::told(explanationOf(Question::HowLong).formula);
  picture->setFocus();
  press(Qt::Key_F1, Qt::NoModifier);
  EXPECT_TRUE(note().startsWith(formula)) << note().toStdString();
  closeNote();
  QMenu menu;
  picture->fillMenu(menu);
  ASSERT_TRUE(menu.actions().last()->text().startsWith(QStringLiteral("&How was this computed?")));
  menu.actions().last()->trigger();
  EXPECT_TRUE(note().startsWith(formula));
  closeNote();
}

TEST_F(TheHelp, ListsEveryKeyOfTheMenus) {
  window().findChild<QWidget*>(QStringLiteral("questions"))->setFocus();
  press(Qt::Key_F1, Qt::ControlModifier);
  auto* keys = window().findChild<QDialog*>(QStringLiteral("keys"));
  ASSERT_NE(keys, nullptr);
  const auto* list = keys->findChild<QTableWidget*>();
  EXPECT_FALSE(list->accessibleName().isEmpty());
  QStringList listed;
  for (int row = 0; row < list->rowCount(); ++row) listed += list->item(row, 1)->text();
  int seen = 0;
  for (const auto* action : window().findChildren<QAction*>()) {
    if (action->shortcut().isEmpty() || action->text().isEmpty()) continue;
    bool isInAMenu = false;
    for (QObject* object : action->associatedObjects())
      isInAMenu = isInAMenu || qobject_cast<QMenu*>(object);
    if (!isInAMenu) continue;
    ++seen;
    EXPECT_TRUE(
        listed.contains(QKeySequence::listToString(action->shortcuts(), QKeySequence::NativeText)))
        << action->text().toStdString();
  }
  EXPECT_GT(seen, 20);
  keys->close();
}

TEST_F(TheHelp, LeadsFromAreaToAreaAndBackToWhereOneWas) {
  window().setFormsShown(true);
  line("/rigs/1/element/power")->setFocus();
  const QWidget* field = QApplication::focusWidget();
  press(Qt::Key_F6, Qt::NoModifier);
  EXPECT_TRUE(window().page().isAncestorOf(QApplication::focusWidget()));
  press(Qt::Key_F6, Qt::NoModifier);
  EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("questions"));
  press(Qt::Key_F6, Qt::NoModifier);
  EXPECT_EQ(QApplication::focusWidget(), field);
  press(Qt::Key_F6, Qt::ShiftModifier);
  EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("questions"));
}

TEST_F(TheHelp, ExportsAllQuestionsIntoAFolderOfTheirOwn) {
  ASSERT_TRUE(settles());
  const QDir here(fileIn(QStringLiteral(".")));
  window().exportAll(here.path());
  window().exportAll(here.path());
  const QStringList made =
      here.entryList({QStringLiteral("*answers*")}, QDir::Dirs | QDir::NoDotAndDotDot);
  ASSERT_EQ(made.size(), 2);
  const QDir folder(here.filePath(made.front()));
  const auto questions = static_cast<int>(gui::telling::allQuestions().size());
  EXPECT_EQ(folder.entryList({QStringLiteral("*.csv")}).size(), questions);
  EXPECT_EQ(folder.entryList({QStringLiteral("*.png")}).size(), questions);
  EXPECT_GT(QFileInfo(folder.filePath(QStringLiteral("02-how-long.csv"))).size(), 100);
}

}  // namespace
