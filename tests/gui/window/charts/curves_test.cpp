// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/charts/curves.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace {

using gui::ChartWindow;
using gui::Points;

Points wave(int count, double height) {
  Points line;
  for (int i = 0; i < count; ++i) line.push_back({1.0 * i, height * std::sin(0.01 * i)});
  return line;
}

double lengthOf(const Points& line) {
  double length = 0.0;
  for (qsizetype i = 1; i < line.size(); ++i) {
    const double piece = std::hypot(line[i].x() - line[i - 1].x(), line[i].y() - line[i - 1].y());
    if (std::isfinite(piece)) length += piece;
  }
  return length;
}

TEST(NiceStep, IsOneTwoOrFive) {
  EXPECT_DOUBLE_EQ(gui::niceStep(100.0, 10), 10.0);
  EXPECT_DOUBLE_EQ(gui::niceStep(101.0, 10), 20.0);
  EXPECT_DOUBLE_EQ(gui::niceStep(0.3, 8), 0.05);
  EXPECT_DOUBLE_EQ(gui::niceStep(270.0, 10, true), 30.0);
  EXPECT_DOUBLE_EQ(gui::niceStep(5000.0, 4, true), 1440.0);
}

RC_GTEST_PROP(NiceStep, NeverMakesMoreTicksThanAsked, ()) {
  const double range = std::pow(10.0, *rc::gen::inRange(-4, 6)) * *rc::gen::inRange(1, 100);
  const int most = *rc::gen::inRange(1, 20);
  const double step = gui::niceStep(range, most);
  RC_ASSERT(range / step <= most * (1.0 + 1e-6));
  RC_ASSERT(gui::ticksWithin(0.0, range, step).size() <= most + 1);
}

TEST(TickText, TakesItsDecimalsFromTheStep) {
  const QLocale c = QLocale::c();
  EXPECT_EQ(gui::tickText(87.5, 2.5, c), QStringLiteral("88"));
  EXPECT_EQ(gui::tickText(0.15, 0.05, c), QStringLiteral("0.15"));
  EXPECT_EQ(gui::tickText(-0.0001, 0.1, c), QStringLiteral("0.0"));
  EXPECT_EQ(gui::tickText(1250.5, 0.5, QLocale(QLocale::German)), QStringLiteral("1250,5"));
}

TEST(HoursAndMinutes, RoundToTheMinute) {
  EXPECT_EQ(gui::hoursAndMinutesText(125.4), QStringLiteral("2:05"));
  EXPECT_EQ(gui::hoursAndMinutesText(-59.6), QStringLiteral("-1:00"));
  EXPECT_EQ(gui::hoursAndMinutesText(0.0), QStringLiteral("0:00"));
}

TEST(Clipping, CutsAtTheEdgesAndKeepsTheRest) {
  const auto runs = gui::clipped({{0, 0}, {10, 10}, {20, 0}, {30, 10}}, {0.0, 30.0, 5.0, 20.0});
  ASSERT_EQ(runs.size(), 2);
  EXPECT_EQ(runs[0], (Points{{5, 5}, {10, 10}, {15, 5}}));
  EXPECT_EQ(runs[1], (Points{{25, 5}, {30, 10}}));
  EXPECT_TRUE(gui::clipped({{0, 0}, {1, 1}}, {2.0, 3.0, 0.0, 1.0}).isEmpty());
}

RC_GTEST_PROP(Clipping, LeavesNothingOutside, ()) {
  const auto ys = *rc::gen::container<std::vector<int>>(rc::gen::inRange(-50, 50));
  Points line;
  for (std::size_t i = 0; i < ys.size(); ++i) line.push_back({static_cast<double>(i), 1.0 * ys[i]});
  const ChartWindow window{2.5, 7.5, -10.0, 20.0};
  for (const Points& run : gui::clipped(line, window)) {
    for (const QPointF& p : run) {
      RC_ASSERT(p.x() >= window.xFrom - 1e-9 && p.x() <= window.xTo + 1e-9);
      RC_ASSERT(p.y() >= window.yFrom - 1e-9 && p.y() <= window.yTo + 1e-9);
    }
  }
}

TEST(Thinning, StaysWithinItsTolerance) {
  const Points line = wave(8000, 100.0);
  const Points thin = gui::thinned(line, {0.1, 1.0}, 0.25);
  EXPECT_LT(thin.size(), 400);
  for (const QPointF& p : line) {
    const auto y = gui::valueAt(thin, p.x());
    ASSERT_TRUE(y);
    // 0.25 px off the line; up to twice that straight up, where it is steep.
    EXPECT_NEAR(*y, p.y(), 3.0);
  }
  EXPECT_EQ(thin.front(), line.front());
  EXPECT_EQ(thin.back(), line.back());
}

TEST(Dashes, DrawTheirShareOfTheLine) {
  const Points line{{0, 0}, {50, 0}, {50, 70}};
  const Points dashes = gui::dashed(line, {6.0, 4.0}, {1.0, 1.0});
  EXPECT_NEAR(lengthOf(dashes), 72.0, 1e-9);
  for (qsizetype i = 1; i < dashes.size(); ++i) {
    EXPECT_FALSE(std::isnan(dashes[i].x()) && std::isnan(dashes[i - 1].x()));
  }
  EXPECT_FALSE(std::isnan(dashes.front().x()));
  EXPECT_FALSE(std::isnan(dashes.back().x()));
  EXPECT_EQ(gui::dashed(line, {}, {1.0, 1.0}), line);
}

TEST(ValueAt, InterpolatesAndStopsAtTheEnds) {
  const Points line{{0, 0}, {10, 20}, {10, 40}, {20, 40}};
  EXPECT_EQ(gui::valueAt(line, 5.0), 10.0);
  EXPECT_EQ(gui::valueAt(line, 15.0), 40.0);
  EXPECT_FALSE(gui::valueAt(line, -0.1));
  EXPECT_FALSE(gui::valueAt(line, 20.1));
  EXPECT_FALSE(gui::valueAt({}, 0.0));
}

}  // namespace
