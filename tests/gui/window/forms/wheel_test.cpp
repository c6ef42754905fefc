// SPDX-License-Identifier: GPL-3.0-or-later
// The wheel scrolls. It changes no choice and no number that somebody scrolls past.
#include <gtest/gtest.h>

#include <QAbstractItemView>
#include <QApplication>
#include <QScrollBar>
#include <QSpinBox>
#include <QTest>
#include <QWheelEvent>

#include "gui/window/forms/quantity_field.hpp"
#include "rigs/documents/json_edit.hpp"
#include "tests/gui/window/window_fixture.hpp"

namespace {

using gui::telling::Question;
using test_support::WindowTest;

class TheWheel : public WindowTest {
 protected:
  static void turn(QWidget* over, int notches) {
    const QPointF at(5, 5);
    QWheelEvent wheel(at, over->mapToGlobal(at), {}, {0, -120 * notches}, Qt::NoButton,
                      Qt::NoModifier, Qt::NoScrollPhase, false);
    QSpontaneKeyEvent::setSpontaneous(&wheel);  // as from a hand: goes on to what it is ignored in
    qApp->notify(over, &wheel);                 // sendEvent() would take that back
  }
};

TEST_F(TheWheel, TurnsNoChoiceInTheFormsAndScrollsThem) {
  QComboBox* box = choice("/rigs/0/supply/from");
  QScrollBar* bar = window().forms().rigColumns().verticalScrollBar();
  const std::string before = document().text();
  ASSERT_GT(bar->maximum(), 0);
  window().page().setFocus();
  for (const bool focused : {false, true}) {
    if (focused) box->setFocus();  // as after choosing: the pointer is still there
    bar->setValue(0);
    turn(box, 1);
    EXPECT_EQ(document().text(), before);
    EXPECT_GT(bar->value(), 0);
    EXPECT_EQ(box->hasFocus(), focused);
  }
}

TEST_F(TheWheel, TurnsTheOpenList) {
  QComboBox* box = choice("/rigs/0/supply/from");
  box->showPopup();
  ASSERT_TRUE(QTest::qWaitForWindowExposed(box->view()->window()));
  QScrollBar* bar = box->view()->verticalScrollBar();
  if (bar->maximum() > 0) {
    bar->setValue(0);
    turn(box->view()->viewport(), 1);
    EXPECT_GT(bar->value(), 0);
  }
  box->hidePopup();
}

TEST_F(TheWheel, ChangesNothingAboveAnAnswerAndScrollsIt) {
  const std::string before = document().text();
  QScrollBar* bar = window().page().findChild<QScrollArea*>()->verticalScrollBar();
  int seen = 0;
  for (const Question question : gui::telling::allQuestions()) {
    window().setQuestion(question);
    ASSERT_TRUE(settles());
    window().forms().setFocus();
    QList<QWidget*> inputs;
    for (auto* box : window().findChildren<QComboBox*>()) inputs += box;
    for (auto* spin : window().findChildren<QAbstractSpinBox*>()) inputs += spin;
    for (QWidget* input : inputs) {
      if (!input->isVisible() || !window().page().isAncestorOf(input)) continue;
      ++seen;
      bar->setValue(0);
      const QString shown = input->property("currentText").toString();
      turn(input, 1);
      EXPECT_EQ(document().text(), before);
      EXPECT_EQ(input->property("currentText").toString(), shown);
      EXPECT_FALSE(input->hasFocus());
      EXPECT_EQ(bar->value() > 0, bar->maximum() > 0);
    }
  }
  EXPECT_GT(seen, 4);
}

TEST_F(TheWheel, TurnsANumberThatHasTheFocus) {
  window().setQuestion(Question::WhatCost);
  ASSERT_TRUE(settles());
  auto* year = window().page().findChild<QSpinBox*>();
  year->setFocus();
  const int before = year->value();
  turn(year, 1);
  EXPECT_EQ(year->value(), before - 1);
}

TEST_F(TheWheel, ChangesNoUnits) {
  auto* units = window().findChild<QComboBox*>("units");
  turn(units, 1);
  units->setFocus();
  turn(units, 1);
  EXPECT_EQ(document().units(), rigs::UnitSystem::SI);
}

TEST_F(TheWheel, MeetsNoOtherChoicesAndNumbers) {
  for (const auto* box : window().findChildren<QComboBox*>())
    EXPECT_NE(qobject_cast<const gui::PlanComboBox*>(box), nullptr)
        << box->objectName().toStdString();
  for (const auto* spin : window().findChildren<QAbstractSpinBox*>())
    EXPECT_NE(qobject_cast<const gui::PlanSpinBox*>(spin), nullptr);
}

}  // namespace
