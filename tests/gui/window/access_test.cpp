// SPDX-License-Identifier: GPL-3.0-or-later
// The window without a mouse, and without eyes: one key for one thing, and a name for every input.
#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAccessible>
#include <QApplication>
#include <QDialog>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QSpinBox>
#include <QTabBar>
#include <QTest>
#include <QTimer>
#include <QToolButton>
#include <map>

#include "gui/window/charts/plan_chart.hpp"
#include "gui/window/readings/readings_window.hpp"
#include "gui/window/start/start_sheet.hpp"
#include "gui/window/words/language.hpp"
#include "gui/window/words/reader.hpp"
#include "tests/gui/window/window_fixture.hpp"
#include "tests/support/patience.hpp"

namespace {

using test_support::WindowTest;

// Alt and this letter; none for a text without one.
QString keyOf(const QString& text) {
  const QKeySequence key = QKeySequence::mnemonic(text);
  return key.isEmpty() ? QString() : key.toString();
}

// Texts on one level, none of which may have the key of another.
class Level {
 public:
  explicit Level(const QString& name) : name_(name) {}
  void add(const QString& text) {
    const QString key = keyOf(text);
    if (key.isEmpty()) return;
    ++count_;
    const QString& other = texts_[key];
    EXPECT_TRUE(other.isEmpty()) << name_.toStdString() << ": " << key.toStdString() << " is \""
                                 << other.toStdString() << "\" and \"" << text.toStdString() << '"';
    texts_[key] = text;
  }
  int count() const { return count_; }

 private:
  QString name_;
  std::map<QString, QString> texts_;
  int count_ = 0;
};

int expectOneKeyEach(const QMenu& menu) {
  Level level(menu.title());
  int below = 0;
  for (const QAction* action : menu.actions()) {
    level.add(action->text());
    if (action->menu()) below += expectOneKeyEach(*action->menu());
  }
  return level.count() + below;
}

// What is visible in a window, whoever it is in.
Level levelOf(const QWidget& window) {
  Level level(window.windowTitle());
  if (const auto* bar = window.findChild<QMenuBar*>())
    for (const QAction* action : bar->actions()) level.add(action->text());
  for (const auto* tabs : window.findChildren<QTabBar*>())
    for (int i = 0; tabs->isVisible() && i < tabs->count(); ++i) level.add(tabs->tabText(i));
  for (const auto* button : window.findChildren<QAbstractButton*>())
    if (button->isVisible()) level.add(button->text());
  for (const auto* label : window.findChildren<QLabel*>())
    if (label->isVisible() && label->buddy()) level.add(label->text());
  return level;
}

class InEveryLanguage : public WindowTest, public testing::WithParamInterface<const char*> {
 protected:
  void SetUp() override {
    WindowTest::SetUp();
    gui::speak(QString::fromLatin1(GetParam()));
    QCoreApplication::processEvents();
  }
  void TearDown() override {
    gui::speak(QStringLiteral("en"));
    WindowTest::TearDown();
  }
};

TEST_P(InEveryLanguage, EachKeyOfAMenuIsOneEntrys) {
  int seen = 0;
  for (const QAction* action : window().menuBar()->actions()) {
    ASSERT_NE(action->menu(), nullptr);
    Q_EMIT action->menu()->aboutToShow();
    seen += expectOneKeyEach(*action->menu());
  }
  for (const auto* button : window().findChildren<QToolButton*>())
    if (button->menu()) seen += expectOneKeyEach(*button->menu());
  EXPECT_GT(seen, 30);
}

TEST_P(InEveryLanguage, EachKeyOfTheWindowIsOneThings) {
  window().resize(1280, 720);  // where long answers fold and their button shows
  for (const auto question : gui::telling::allQuestions()) {
    SCOPED_TRACE(gui::told(gui::telling::titleOf(question)).toStdString());
    window().setQuestion(question);
    ASSERT_TRUE(settles());
    EXPECT_GE(levelOf(window()).count(), 8);
  }
}

TEST_P(InEveryLanguage, EachKeyOfADialogIsOneButtons) {
  int seen = 0;
  QTimer hand;
  QObject::connect(&hand, &QTimer::timeout, &hand, [&seen] {
    auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
    if (!box) return;
    seen += levelOf(*box).count();
    ++seen;
    box->reject();
  });
  hand.start(20);
  type("/batch/boil", "81 min");
  window().close();  // asks what to do with the change
  EXPECT_TRUE(window().isVisible());
  for (QAction* action : window().menuBar()->actions().last()->menu()->actions()) action->trigger();
  EXPECT_GE(seen, 2);
}

TEST_P(InEveryLanguage, EveryInputIsCalledByItsLabel) {
  int choices = 0;
  int others = 0;
  for (const auto question : gui::telling::allQuestions()) {
    window().setQuestion(question);
    ASSERT_TRUE(settles());
    for (QWidget* input : window().findChildren<QWidget*>()) {
      const bool isChoice = qobject_cast<QComboBox*>(input) != nullptr;
      const bool isOther =
          qobject_cast<QLineEdit*>(input) || qobject_cast<QAbstractSpinBox*>(input) ||
          qobject_cast<QAbstractButton*>(input) || qobject_cast<QAbstractItemView*>(input) ||
          qobject_cast<QTabBar*>(input) || qobject_cast<gui::PlanChart*>(input);
      if ((!isChoice && !isOther) || input->focusPolicy() == Qt::NoFocus) continue;
      if (input->objectName().startsWith(QLatin1String("qt_")) ||
          qobject_cast<QAbstractSpinBox*>(input->parentWidget()) || input->window() != &window())
        continue;  // parts of another input, and closed lists
      QAccessibleInterface* told = QAccessible::queryAccessibleInterface(input);
      ASSERT_NE(told, nullptr);
      const QString name = told->text(QAccessible::Name);
      EXPECT_FALSE(name.isEmpty())
          << input->metaObject()->className() << ' ' << input->objectName().toStdString();
      EXPECT_FALSE(name.contains(QLatin1Char('&'))) << name.toStdString();
      for (const auto* label : window().findChildren<QLabel*>()) {
        if (label->buddy() != input) continue;
        EXPECT_EQ(name, label->text().remove(QLatin1Char('&')));
      }
      if (!isChoice) {
        ++others;
        continue;
      }
      ++choices;
      EXPECT_EQ(told->role(), QAccessible::ComboBox);
      EXPECT_EQ(name, input->accessibleName());
      const QString chosen = qobject_cast<QComboBox*>(input)->currentText();
      EXPECT_EQ(told->text(QAccessible::Value), chosen);
      EXPECT_NE(name, chosen);
    }
  }
  EXPECT_GT(choices, 100);
  EXPECT_GT(others, 500);
}

// Whatever the Tab key or a click may stop at in this window.
int expectStopsCalledSomething(const QWidget& top) {
  int stops = 0;
  for (QWidget* widget : top.findChildren<QWidget*>()) {
    if (!widget->isVisible() || widget->window() != &top || widget->focusProxy() ||
        widget->focusPolicy() == Qt::NoFocus ||
        qobject_cast<QAbstractSpinBox*>(widget->parentWidget()))
      continue;
    ++stops;
    QAccessibleInterface* told = QAccessible::queryAccessibleInterface(widget);
    const QString name = told ? told->text(QAccessible::Name) : QString();
    const auto* label = qobject_cast<QLabel*>(widget);
    if (label && label->text().isEmpty()) continue;
    EXPECT_FALSE(name.trimmed().isEmpty())
        << widget->metaObject()->className() << ' ' << widget->objectName().toStdString() << " in "
        << top.windowTitle().toStdString();
    // What can be read is said: a warning too, and not only that it is one.
    if (!label || label->textFormat() != Qt::PlainText) continue;
    EXPECT_TRUE(name.endsWith(label->text())) << name.toStdString();
  }
  return stops;
}

TEST_P(InEveryLanguage, EveryStopIsCalledSomething) {
  window().resize(1280, 720);
  for (int tab = 0; tab < window().forms().tabs().count(); ++tab) {
    window().forms().tabs().setCurrentIndex(tab);
    window().setQuestion(gui::telling::allQuestions()[static_cast<std::size_t>(4 * tab)]);
    ASSERT_TRUE(settles());
    EXPECT_GT(expectStopsCalledSomething(window()), 20);
  }
  window().offerStart();
  auto* start = window().findChild<gui::StartSheet*>();
  ASSERT_NE(start, nullptr);
  for (const auto way :
       {gui::StartSheet::Way::Example, gui::StartSheet::Way::Kettle, gui::StartSheet::Way::Open}) {
    start->setWay(way);
    EXPECT_GE(expectStopsCalledSomething(*start), 4);
  }
  EXPECT_TRUE(
      QTest::qWaitFor([&] { return start->kettle().isSettled(); }, test_support::kPatience));
  start->reject();
  EXPECT_GT(expectStopsCalledSomething(window().showReadings()), 8);
  EXPECT_GE(levelOf(window().showReadings()).count(), 6);
  window().showReadings().close();
  for (QAction* action : window().menuBar()->actions().last()->menu()->actions())
    if (action->shortcut() == QKeySequence(Qt::CTRL | Qt::Key_F1)) action->trigger();
  auto* keys = window().findChild<QDialog*>(QStringLiteral("keys"));
  ASSERT_NE(keys, nullptr);
  EXPECT_GE(expectStopsCalledSomething(*keys), 1);
  keys->close();
}

INSTANTIATE_TEST_SUITE_P(Spoken, InEveryLanguage, testing::Values("en", "de"));

// What a screen reader can do to it.
TEST_F(WindowTest, AChoiceOpensForAScreenReader) {
  QComboBox* box = choice("/rigs/0/supply/from");
  QAccessibleInterface* told = QAccessible::queryAccessibleInterface(box);
  QAccessibleActionInterface* actions = told->actionInterface();
  ASSERT_TRUE(actions->actionNames().contains(QAccessibleActionInterface::showMenuAction()));
  actions->doAction(QAccessibleActionInterface::showMenuAction());
  EXPECT_TRUE(box->view()->isVisible());
  ASSERT_EQ(told->childCount(), 1);
  EXPECT_EQ(told->child(0)->object(), box->view());
  EXPECT_EQ(told->child(0)->text(QAccessible::Name), told->text(QAccessible::Name));
  EXPECT_EQ(told->indexOfChild(told->child(0)), 0);
  actions->doAction(QAccessibleActionInterface::pressAction());
  EXPECT_FALSE(box->view()->isVisible());
}

}  // namespace
