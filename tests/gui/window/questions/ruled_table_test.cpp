// SPDX-License-Identifier: GPL-3.0-or-later
// A table on the screen is ruled like an account, light and dark.
#include "gui/window/questions/ruled_table.hpp"

#include <gtest/gtest.h>

#include <QImage>
#include <cstdlib>

#include "gui/window/appearance.hpp"
#include "gui/window/questions/answer_table.hpp"

namespace {

gui::ShownTable account(bool summed) {
  gui::ShownTable table{.head = {QString(), "(a) Urn", "(b) Pot"}, .marks = {}, .rows = {}};
  table.looks = {-1, 0, 1};
  table.rows = {{{"over", "15:49", "="}},
                {{"from the wall, kWh", "4.73", "+ 0.60"}, false, summed},
                {{"a batch, EUR", "0.80", "+ 0.10"}, false, summed}};
  return table;
}

// Lines from one side to the other in nearly the colour of ink, those that touch counted once.
int rulesOf(const QImage& image, const QColor& ink) {
  int rules = 0;
  bool inside = false;
  for (int y = 0; y < image.height(); ++y) {
    bool whole = true;
    for (int x = 2; x < image.width() - 2 && whole; ++x)
      whole = std::abs(qGray(image.pixel(x, y)) - qGray(ink.rgb())) < 40;
    if (whole && !inside) ++rules;
    inside = whole;
  }
  return rules;
}

int rulesOf(const gui::ShownTable& table, const QPalette& palette) {
  gui::AnswerTable shown;
  shown.setPalette(palette);
  shown.resize(600, 300);
  shown.fill(table);
  shown.fit();
  // As wide as its columns are together, which is less than it could be.
  shown.resize(shown.horizontalHeader()->length(), shown.height());
  return rulesOf(shown.grab().toImage(), palette.color(QPalette::WindowText));
}

TEST(RuledTable, HasARuleUnderItsHeadsAndSumsBetweenRules) {
  for (const QPalette& palette : {gui::lightPalette(), gui::darkPalette()}) {
    EXPECT_EQ(rulesOf(account(false), palette), 1);
    // Above the sum, and two below.
    EXPECT_EQ(rulesOf(account(true), palette), 4);
  }
}

TEST(RuledTable, LeavesRoomForASwatchAboveARigsName) {
  gui::AnswerTable with, without;
  gui::ShownTable table = account(false);
  with.resize(600, 300);
  with.fill(table);
  table.looks = {};
  without.resize(600, 300);
  without.fill(table);
  with.fit();
  without.fit();
  EXPECT_GE(with.horizontalHeader()->height(),
            without.horizontalHeader()->height() + with.fontMetrics().height());
}

}  // namespace
