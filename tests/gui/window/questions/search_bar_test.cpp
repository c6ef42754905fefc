// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/search_bar.hpp"

#include <gtest/gtest.h>

#include <QProgressBar>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

namespace {

TEST(TheSearchBar, IsSeenFromASecondOnUntilAllIsTried) {
  gui::SearchBar bar;
  bar.setProgress(0, 1000);
  EXPECT_FALSE(bar.isVisible());
  bar.setProgress(10, 1000);
  EXPECT_FALSE(bar.isVisible()) << "a moment needs no bar";
  QTest::qWait(1050);
  bar.setProgress(400, 1000);
  EXPECT_TRUE(bar.isVisible());
  auto* progress = bar.findChild<QProgressBar*>();
  EXPECT_EQ(progress->value(), 400);
  EXPECT_TRUE(progress->text().contains(QStringLiteral("1000"))) << progress->text().toStdString();
  bar.setProgress(1000, 1000);
  EXPECT_FALSE(bar.isVisible());
}

TEST(TheSearchBar, IsGoneWithItsSearchAndBeginsAnew) {
  gui::SearchBar bar;
  bar.setProgress(0, 50);
  QTest::qWait(1050);
  bar.setProgress(10, 50);
  ASSERT_TRUE(bar.isVisible());
  QSignalSpy enough(&bar, &gui::SearchBar::enough);
  bar.findChild<QPushButton*>()->click();
  EXPECT_EQ(enough.count(), 1);
  bar.finish();
  EXPECT_FALSE(bar.isVisible());
  bar.setProgress(0, 50);
  bar.setProgress(10, 50);
  EXPECT_FALSE(bar.isVisible()) << "a second of its own";
}

}  // namespace
