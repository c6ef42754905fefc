// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/exports/column_flow.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <QFontMetricsF>

#include "gui/window/exports/text_flow.hpp"

namespace {

using gui::Strip;
using gui::Strips;

Strip strip(double height, bool holdsNext = false) {
  return {.height = height, .gap = 1.0, .holdsNext = holdsNext};
}

TEST(ColumnFlow, NeverEndsAColumnWithAHeading) {
  const Strips strips{strip(10.0), strip(10.0, true), strip(10.0)};
  EXPECT_EQ(gui::fitting(strips, 0, 21.0), 1U);  // the heading would fit, what it heads would not
  EXPECT_EQ(gui::fitting(strips, 0, 32.0), 3U);
  EXPECT_EQ(gui::fitting(strips, 1, 10.0), 0U);
  // In one column 32, in two the heading goes over with what is below it.
  EXPECT_NEAR(gui::balanced(strips, 0, 2, 100.0).value(), 21.0, 1.0);
  EXPECT_FALSE(gui::balanced(strips, 0, 1, 31.0));
}

RC_GTEST_PROP(ColumnFlow, HoldsAllInItsOrderAtTheLowestHeight, ()) {
  Strips strips;
  const auto count = *rc::gen::inRange(1, 30);
  for (int i = 0; i < count; ++i)
    strips.push_back(
        strip(*rc::gen::inRange(5, 40), i + 1 < count && *rc::gen::inRange(0, 4) == 0));
  const int columns = *rc::gen::inRange(1, 4);
  const auto height = gui::balanced(strips, 0, columns, 1e6);
  RC_ASSERT(height.has_value());
  const auto columnsAt = [&](double high) {
    int used = 0;
    for (std::size_t from = 0; from < strips.size(); ++used) {
      const std::size_t here = gui::fitting(strips, from, high);
      if (here == 0) return 1000;
      RC_ASSERT(gui::heightOf(strips, from, here) <= high + 0.1);
      RC_ASSERT(from + here == strips.size() || !strips[from + here - 1].holdsNext);
      from += here;
    }
    return used;
  };
  RC_ASSERT(columnsAt(*height) <= columns);
  // One column is as high as all; beside each other none is higher than that.
  RC_ASSERT(*height <= gui::heightOf(strips, 0, strips.size()));
  if (columns == 1) RC_ASSERT(columnsAt(*height - 2.0) > 1);
}

TEST(ColumnFlow, LeavesNoMereLineForTheNextPage) {
  const Strips strips(20, strip(10.0));
  EXPECT_EQ(gui::fitting(strips, 0, 1, 209.0), 19U);
  EXPECT_EQ(gui::fitting(strips, 0, 1, gui::leavingEnough(strips, 0, 1, 209.0)), 16U);
  EXPECT_EQ(gui::fitting(strips, 0, 2, 100.0), 18U);
  EXPECT_EQ(gui::fitting(strips, 0, 2, gui::leavingEnough(strips, 0, 2, 100.0)), 16U);
  EXPECT_EQ(gui::leavingEnough(strips, 0, 1, 100.0), 100.0);
}

TEST(ColumnFlow, TearsNoNumberFromItsUnit) {
  QFont font(QStringLiteral("DejaVu Sans"));
  font.setPixelSize(75);
  const QString text = QStringLiteral("It falls back towards 79.2 °C and no further than that");
  const double upTo = QFontMetricsF(font).horizontalAdvance(text.left(text.indexOf(u'°')));
  EXPECT_TRUE(gui::linesOf(text, font, upTo).front().endsWith(QLatin1String("79.2")));
  const QStringList lines = gui::linesOfFigures(text, font, upTo);
  EXPECT_TRUE(lines.at(1).startsWith(QStringLiteral("79.2 °C"))) << lines.at(1).toStdString();
  EXPECT_EQ(lines.join(u' '), text);
}

}  // namespace
