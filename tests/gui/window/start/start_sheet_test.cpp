// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet with which somebody new begins.
#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAccessible>
#include <QApplication>
#include <QFileDialog>
#include <QScrollArea>
#include <QScrollBar>
#include <QSettings>
#include <QTabBar>
#include <QTest>
#include <QTimer>

#include "gui/window/start/start_sheet.hpp"
#include "gui/window/window_program.hpp"
#include "gui/window/words/language.hpp"
#include "rigs/answers/figures.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "tests/gui/window/window_fixture.hpp"
#include "tests/support/patience.hpp"

namespace {

using gui::StartSheet;
using test_support::WindowTest;

class TheStart : public WindowTest {
 protected:
  void SetUp() override {
    WindowTest::SetUp();
    window().resize(1280, 720);
  }

  StartSheet* sheet() { return window().findChild<StartSheet*>(); }
  void begin() {
    window().offerStart();
    ASSERT_NE(sheet(), nullptr);
    ASSERT_TRUE(QTest::qWaitForWindowExposed(sheet()));
    if (!QTest::qWaitFor([this] { return sheet()->isActiveWindow(); }, 200))
      QApplication::setActiveWindow(sheet());
  }
  template <class Widget>
  Widget* part(const char* name) {
    auto* found = sheet()->findChild<Widget*>(QString::fromLatin1(name));
    EXPECT_NE(found, nullptr) << name;
    return found;
  }
  QString said(const char* name) { return part<QLabel>(name)->text(); }
  bool answers() {
    const bool all =
        QTest::qWaitFor([this] { return sheet()->kettle().isSettled(); }, test_support::kPatience);
    QTest::qWait(1);  // the layout follows
    return all;
  }

  // --- Hands.
  // Into the field that has the focus, as a person types: what is there is replaced.
  void type(const char* keys) {
    QTest::keyClicks(QApplication::focusWidget(), QString::fromLatin1(keys));
  }
  void tabTo(const char* name) {
    for (int guard = 0; guard < 20; ++guard) {
      if (QApplication::focusWidget() && QApplication::focusWidget()->objectName() == name) return;
      QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    ADD_FAILURE() << "the tab key never reaches " << name;
  }
  // Two clicks: the box, and what is chosen in its list.
  void choose(const char* name, const QString& text) {
    auto* box = part<QComboBox>(name);
    const int index = box->findText(text);
    ASSERT_GE(index, 0) << text.toStdString();
    QTest::mouseClick(box, Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([box] { return box->view()->isVisible(); }, 2000));
    QTest::qWait(QApplication::doubleClickInterval() + 50);  // a quicker one is no choice
    const QModelIndex item = box->model()->index(index, 0);
    box->view()->scrollTo(item);
    QTest::mouseMove(box->view()->viewport(), box->view()->visualRect(item).center());
    QTest::mouseClick(box->view()->viewport(), Qt::LeftButton, {},
                      box->view()->visualRect(item).center());
    ASSERT_TRUE(QTest::qWaitFor([box] { return !box->view()->isVisible(); }, 2000));
    EXPECT_EQ(box->currentText(), text);
  }
};

TEST_F(TheStart, TellsWhenItRollsAsThePlanItselfDoes) {
  begin();
  type("45");
  ASSERT_TRUE(answers());
  const QString headline = said("start/headline");
  const std::string text = sheet()->kettle().document();
  rigs::Problems problems;
  const auto plan = rigs::readPlan(text, ".", problems);
  ASSERT_TRUE(plan);
  const auto day = rigs::answer(*plan, rigs::Depth::Day).rigs[0].day;
  const auto* boil = day.find(physics::StageKind::Boil);
  ASSERT_NE(boil, nullptr);
  const QString after =
      QString::fromStdString(rigs::inEnglish(rigs::Told::just(rigs::roughly(boil->begin))));
  EXPECT_TRUE(headline.contains(after)) << headline.toStdString() << after.toStdString();
}

TEST_F(TheStart, DoesNotComeUninvited) {
  EXPECT_EQ(sheet(), nullptr);
  QTest::qWait(50);
  EXPECT_EQ(QApplication::activeModalWidget(), nullptr);
}

TEST_F(TheStart, ComesUnaskedInTheFirstWindowOnly) {
  QSettings().clear();
  EXPECT_TRUE(gui::isFirstRun(""));
  EXPECT_FALSE(gui::isFirstRun("plan.json"));
  window().close();
  EXPECT_FALSE(gui::isFirstRun(""));
}

TEST_F(TheStart, ComesForANewPlan) {
  press(Qt::Key_N, Qt::ControlModifier);
  ASSERT_NE(sheet(), nullptr);
  EXPECT_TRUE(sheet()->isVisible());
  sheet()->reject();
}

TEST_F(TheStart, LeavesTheWindowAsItWasWhenItIsClosed) {
  const std::string before = document().text();
  for (const bool byKey : {true, false}) {
    begin();
    type("45");
    byKey ? QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape)
          : QTest::mouseClick(part<QWidget>("start/close"), Qt::LeftButton);
    EXPECT_TRUE(QTest::qWaitFor([this] { return sheet() == nullptr; }, 2000));
    EXPECT_EQ(document().text(), before);
    EXPECT_FALSE(document().isModified());
  }
  WindowTest::type("/batch/boil", QStringLiteral("80 min"));
  EXPECT_EQ(textAt("/batch/boil"), "80 min");
  undo();
}

// What was changed in the open plan is lost to nobody who only looked.
TEST_F(TheStart, AsksBeforeItReplacesWhatIsNotSaved) {
  WindowTest::type("/batch/boil", QStringLiteral("81 min"));
  begin();
  answerBoxWith(QMessageBox::Cancel);
  QTest::mouseClick(part<QWidget>("start/take"), Qt::LeftButton);
  EXPECT_EQ(boxes_, 1);
  ASSERT_NE(sheet(), nullptr);
  EXPECT_TRUE(sheet()->isVisible());
  EXPECT_EQ(textAt("/batch/boil"), "81 min");
  sheet()->reject();
  undo();
}

TEST_F(TheStart, TellsWhatIsWrongBesideItAndLosesNothing) {
  begin();
  type("45");
  tabTo("start/power");
  type("plenty");
  tabTo("start/room");
  type("19");
  tabTo("start/batch");
  auto* power = part<QLineEdit>("start/power");
  auto* problem = part<QLabel>("start/power?");
  EXPECT_TRUE(problem->isVisible());
  EXPECT_TRUE(problem->text().contains(QLatin1String("plenty"))) << problem->text().toStdString();
  EXPECT_EQ(power->text(), QLatin1String("plenty"));
  EXPECT_EQ(part<QLineEdit>("start/volume")->text(), QLatin1String("45 L"));
  EXPECT_EQ(part<QLineEdit>("start/room")->text(), QString::fromUtf8("19 °C"));
  EXPECT_FALSE(part<QAbstractButton>("start/take")->isEnabled());
  power->setFocus();
  power->selectAll();
  type("2500");
  QTest::keyClick(power, Qt::Key_Tab);
  EXPECT_FALSE(problem->isVisible());
  EXPECT_EQ(power->text(), QLatin1String("2500 W"));
  EXPECT_TRUE(part<QAbstractButton>("start/take")->isEnabled());
  ASSERT_TRUE(answers());
  sheet()->reject();
}

// A batch that no such kettle holds is known only once the day was computed.
TEST_F(TheStart, TellsOfABatchThatDoesNotFit) {
  begin();
  type("20");
  tabTo("start/batch");
  type("25");
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
  auto* problem = part<QLabel>("start/batch?");
  EXPECT_TRUE(QTest::qWaitFor([&] { return problem->isVisible(); }, test_support::kPatience));
  EXPECT_FALSE(part<QAbstractButton>("start/take")->isEnabled());
  sheet()->reject();
}

TEST_F(TheStart, ShowsAnOverloadSoThatNobodyMissesIt) {
  begin();
  tabTo("start/power");
  type("5.5");
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
  ASSERT_TRUE(answers());
  auto* label = part<QLabel>("start/circuit says");
  EXPECT_TRUE(label->text().startsWith(QString::fromUtf8("▲ Overload")))
      << label->text().toStdString();
  EXPECT_TRUE(label->font().bold());
  EXPECT_EQ(label->foregroundRole(), QPalette::Window);
  sheet()->reject();
}

TEST_F(TheStart, KnowsAKettleByItsDiameterAndHeight) {
  begin();
  choose("start/stated by", QStringLiteral("by diameter and height"));
  EXPECT_FALSE(part<QWidget>("start/volume")->isVisible());
  EXPECT_EQ(QApplication::focusWidget(), part<QLineEdit>("start/diameter"));
  type("400");
  tabTo("start/height");
  type("42 cm");
  tabTo("start/power");
  ASSERT_TRUE(answers());
  EXPECT_EQ(rigs::textAt(sheet()->kettle().document(), "/rigs/0/vessel/inner_diameter"), "400 mm");
  EXPECT_EQ(rigs::textAt(sheet()->kettle().document(), "/rigs/0/vessel/height"), "42 cm");
  sheet()->reject();
}

TEST_F(TheStart, OpensEveryExampleAsACopy) {
  const std::vector<std::string> names = rigs::planStartsToOffer();
  for (std::size_t i = 0; i < names.size(); ++i) {
    SCOPED_TRACE(names[i]);
    begin();
    sheet()->setWay(StartSheet::Way::Example);
    auto* list = part<QListWidget>("start/examples");
    ASSERT_EQ(list->count(), static_cast<int>(names.size()));
    list->setCurrentRow(static_cast<int>(i));
    QTest::mouseClick(part<QWidget>("start/take"), Qt::LeftButton);
    EXPECT_TRUE(QTest::qWaitFor([this] { return sheet() == nullptr; }, 2000));
    EXPECT_EQ(document().text(), rigs::planStartText(names[i]).value_or(rigs::newPlanText()));
    EXPECT_TRUE(document().path().isEmpty());
    EXPECT_FALSE(document().isModified());
    EXPECT_NE(document().plan(), nullptr);
  }
}

TEST_F(TheStart, OpensAPlanThatWasOpenBefore) {
  const QString path = fileIn(QStringLiteral("own.json"));
  test_support::writeFile(path, *rigs::planStartText("one-kettle"));
  QSettings().setValue(QStringLiteral("recent"), QStringList{path});
  begin();
  QTest::mouseClick(part<QTabBar>("start/ways"), Qt::LeftButton, {},
                    part<QTabBar>("start/ways")->tabRect(2).center());
  EXPECT_EQ(sheet()->way(), StartSheet::Way::Open);
  QTest::mouseClick(part<QWidget>("start/take"), Qt::LeftButton);
  EXPECT_TRUE(QTest::qWaitFor([this] { return sheet() == nullptr; }, 2000));
  EXPECT_EQ(document().path(), path);
}

TEST_F(TheStart, AsksForAFileWhereNoneWasOpenBefore) {
  begin();
  sheet()->setWay(StartSheet::Way::Open);
  int asked = 0;
  QTimer hand;
  QObject::connect(&hand, &QTimer::timeout, &hand, [&] {
    auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
    if (!dialog) return;
    ++asked;
    dialog->reject();
  });
  hand.start(20);
  QTest::mouseClick(part<QWidget>("start/take"), Qt::LeftButton);
  EXPECT_EQ(asked, 1);
  ASSERT_NE(sheet(), nullptr);  // nothing was chosen: one may still choose otherwise
  sheet()->reject();
}

TEST_F(TheStart, IsInTheReadersUnits) {
  window().setUnits(rigs::UnitSystem::UsCustomary);
  begin();
  EXPECT_EQ(part<QLineEdit>("start/volume")->placeholderText(), QLatin1String("10.6 gal, assumed"));
  type("12");
  tabTo("start/power");
  ASSERT_TRUE(answers());
  EXPECT_EQ(part<QLineEdit>("start/volume")->text(), QLatin1String("12 gal"));
  sheet()->reject();
}

// --- In German, in letters of 18 pt, in a window of 1280 by 720.

class TheStartInLargeLetters : public TheStart, public testing::WithParamInterface<const char*> {
 protected:
  void SetUp() override {
    font_ = QApplication::font();
    QApplication::setFont(QFont(font_.family(), 18));
    TheStart::SetUp();
    gui::speak(QString::fromLatin1(GetParam()));
    QCoreApplication::processEvents();
  }
  void TearDown() override {
    gui::speak(QStringLiteral("en"));
    TheStart::TearDown();
    QApplication::setFont(font_);
  }
  // Every word of it in sight, or to be scrolled to downwards.
  void expectWhole(const QWidget& page) {
    for (const auto* label : page.findChildren<QLabel*>()) {
      if (!label->isVisible()) continue;
      const int needs =
          label->wordWrap() ? label->heightForWidth(label->width()) : label->sizeHint().height();
      EXPECT_GE(label->height(), needs) << label->text().toStdString();
      if (!label->wordWrap()) {
        EXPECT_GE(label->width(), label->sizeHint().width()) << label->text().toStdString();
      }
    }
    for (const auto* button : page.findChildren<QAbstractButton*>()) {
      if (!button->isVisible() || button->text().isEmpty()) continue;
      EXPECT_GE(button->width(), button->sizeHint().width()) << button->text().toStdString();
    }
    for (const auto* box : page.findChildren<gui::PlanComboBox*>()) {
      if (!box->isVisible()) continue;
      EXPECT_EQ(box->shownChoice(), box->currentText());
    }
    for (const auto* line : page.findChildren<QLineEdit*>()) {
      if (!line->isVisible()) continue;
      EXPECT_GE(line->width() - 2 * 4,
                line->fontMetrics().horizontalAdvance(line->placeholderText()))
          << line->placeholderText().toStdString();
    }
  }

  QFont font_;
};

TEST_P(TheStartInLargeLetters, HasRoomForEveryWord) {
  begin();
  ASSERT_TRUE(answers());
  QCoreApplication::processEvents();
  EXPECT_LE(sheet()->width(), 1280);
  EXPECT_LE(sheet()->height(), 720);
  expectWhole(*sheet());
  for (const auto* area : sheet()->findChildren<QScrollArea*>())
    EXPECT_EQ(area->horizontalScrollBar()->maximum(), 0);
  const auto* ways = part<QTabBar>("start/ways");
  EXPECT_GE(ways->width(), ways->sizeHint().width());
  for (const StartSheet::Way way : {StartSheet::Way::Example, StartSheet::Way::Open}) {
    sheet()->setWay(way);
    QCoreApplication::processEvents();
    expectWhole(*sheet());
  }
  // Items as tall as their wrapped sentences.
  sheet()->setWay(StartSheet::Way::Example);
  QCoreApplication::processEvents();
  const auto* list = part<QListWidget>("start/examples");
  const int margins =
      2 * (list->style()->pixelMetric(QStyle::PM_FocusFrameHMargin, nullptr, list) + 1);
  for (int i = 0; i < list->count(); ++i) {
    const QRect item = list->visualItemRect(list->item(i));
    const QRect needs = list->fontMetrics().boundingRect(QRect(0, 0, item.width() - margins, 10000),
                                                         Qt::TextWordWrap, list->item(i)->text());
    EXPECT_GE(item.height(), needs.height()) << list->item(i)->text().toStdString();
    EXPECT_LE(item.width(), list->viewport()->width());
  }
  sheet()->reject();
}

TEST_P(TheStartInLargeLetters, CallsEveryControlByItsLabel) {
  begin();
  std::map<QString, QString> keys;
  const auto add = [&](const QString& text) {
    const QString key = QKeySequence::mnemonic(text).toString();
    if (key.isEmpty()) return;
    EXPECT_TRUE(keys[key].isEmpty()) << keys[key].toStdString() << " and " << text.toStdString();
    keys[key] = text;
  };
  auto* ways = part<QTabBar>("start/ways");
  for (int i = 0; i < ways->count(); ++i) add(ways->tabText(i));
  for (const auto* button : sheet()->findChildren<QAbstractButton*>()) add(button->text());
  for (const auto* label : sheet()->findChildren<QLabel*>())
    if (label->buddy()) add(label->text());
  EXPECT_GE(keys.size(), 15U);
  int controls = 0;
  for (QWidget* input : sheet()->findChildren<QWidget*>()) {
    const bool isInput = qobject_cast<QLineEdit*>(input) || qobject_cast<QComboBox*>(input) ||
                         qobject_cast<QAbstractButton*>(input) || qobject_cast<QTabBar*>(input) ||
                         qobject_cast<QListWidget*>(input);
    if (!isInput || input->focusPolicy() == Qt::NoFocus) continue;
    ++controls;
    QAccessibleInterface* told = QAccessible::queryAccessibleInterface(input);
    ASSERT_NE(told, nullptr);
    EXPECT_FALSE(told->text(QAccessible::Name).isEmpty()) << input->objectName().toStdString();
    EXPECT_FALSE(told->text(QAccessible::Name).contains(QLatin1Char('&')));
  }
  EXPECT_GE(controls, 17);
  sheet()->reject();
}

INSTANTIATE_TEST_SUITE_P(Spoken, TheStartInLargeLetters, testing::Values("en", "de"));

// From the first field on, in the order in which it is read.
TEST_F(TheStart, GoesFromFieldToFieldAsItIsRead) {
  begin();
  QStringList visited;
  for (int i = 0; i < 12; ++i) {
    visited += QApplication::focusWidget()->objectName();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
  }
  const QStringList expected{QStringLiteral("start/volume"),   QStringLiteral("start/stated by"),
                             QStringLiteral("start/power"),    QStringLiteral("start/voltage"),
                             QStringLiteral("start/region"),   QStringLiteral("start/circuit"),
                             QStringLiteral("start/altitude"), QStringLiteral("start/room"),
                             QStringLiteral("start/batch"),    QStringLiteral("start/lid"),
                             QStringLiteral("start/jacket"),   QStringLiteral("start/close")};
  EXPECT_EQ(visited.mid(0, expected.size()), expected)
      << visited.join(QLatin1Char(' ')).toStdString();
  sheet()->reject();
}

}  // namespace
