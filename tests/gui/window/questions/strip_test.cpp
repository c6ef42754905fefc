// SPDX-License-Identifier: GPL-3.0-or-later
// The line at the foot: what can hurt in this plan, all cautions behind it.
#include <QApplication>
#include <QLabel>
#include <QTest>
#include <QToolButton>

#include "tests/gui/window/window_fixture.hpp"

namespace {

using gui::telling::Question;

class TheStrip : public test_support::WindowTest {
 protected:
  QLabel* label(const char* name) { return window().page().findChild<QLabel*>(name); }
  QToolButton* all() { return window().page().findChild<QToolButton*>("all cautions"); }
};

TEST_F(TheStrip, HasAllCautionsBehindIt) {
  window().setQuestion(Question::HowLong);
  ASSERT_TRUE(settles());
  EXPECT_TRUE(label("strip")->isVisible());
  EXPECT_TRUE(label("strip")->text().startsWith(QStringLiteral("Mains current")));
  EXPECT_FALSE(label("cautions")->isVisible());
  const QStringList cautions = window().page().currentAnswer().cautions;
  EXPECT_TRUE(all()->text().contains(QString::number(cautions.size())));
  QTest::mouseClick(all(), Qt::LeftButton);
  EXPECT_TRUE(label("cautions")->isVisible());
  for (const QString& caution : cautions) EXPECT_TRUE(label("cautions")->text().contains(caution));
  // On every page from then on, until it is folded away.
  window().setQuestion(Question::WhatCost);
  ASSERT_TRUE(settles());
  EXPECT_TRUE(label("cautions")->isVisible());
  QTest::mouseClick(all(), Qt::LeftButton);
  EXPECT_FALSE(label("cautions")->isVisible());
  EXPECT_TRUE(label("strip")->isVisible());
}

TEST_F(TheStrip, LeavesRoomForTheAnswerInLargeLetters) {
  const QFont usual = QApplication::font();
  QFont large = usual;
  large.setPointSize(18);
  QApplication::setFont(large);
  window().resize(1280, 720);
  ASSERT_TRUE(settles());
  EXPECT_LE(label("strip")->height(), 0.15 * window().height());
  EXPECT_GE(label("strip")->height(),
            label("strip")->heightForWidth(label("strip")->width()));  // nothing is cut
  QApplication::setFont(usual);
}

}  // namespace
