// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/table.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "gui/text_layout.hpp"

using namespace gui;

namespace {

Table table(std::size_t columns) {
  Table t;
  t.name = "test";
  t.heading("Volumes");
  Row row{"before the boil", "L", {}, false};
  for (std::size_t i = 0; i < columns; ++i) {
    t.columns.push_back(std::string(1, static_cast<char>('a' + i)));
    row.cells.push_back({std::to_string(10 + i) + ".5", 10.5 + static_cast<double>(i)});
  }
  t.rows.push_back(row);
  return t;
}

std::size_t count(const std::vector<std::string>& lines, std::string_view text) {
  std::size_t n = 0;
  for (const std::string& line : lines) n += line.find(text) != std::string::npos ? 1 : 0;
  return n;
}

}  // namespace

TEST(TableLines, AlignsCellsUnderTheirHeads) {
  const auto lines = tableLines(table(2), 80);
  ASSERT_EQ(lines.size(), 4u);
  EXPECT_EQ(lines[0].size(), lines[3].size());
  EXPECT_EQ(lines[2], "Volumes");
  EXPECT_EQ(lines[3], "  before the boil, L  10.5  11.5");
}

TEST(TableLines, RepeatsTheLabelsWhenColumnsDoNotFit) {
  const auto lines = tableLines(table(12), 60);
  EXPECT_EQ(count(lines, "before the boil"), 2u);
  EXPECT_EQ(count(lines, "21.5"), 1u);
}

TEST(TableLines, LeavesOutRowsThatSayNothingAndTheirHeading) {
  Table t = table(2);
  t.heading("Hose");
  t.rows.push_back({"lost", "kWh", {noFigure(), noFigure()}, false});
  const auto lines = tableLines(t, 80);
  EXPECT_EQ(count(lines, "Hose"), 0u);
  EXPECT_EQ(count(lines, "lost"), 0u);
}

RC_GTEST_PROP(TableLines, StaysWithinAnyWidthAndShowsEveryColumn, ()) {
  const auto columns = *rc::gen::inRange<std::size_t>(1, 13);
  const auto width = *rc::gen::inRange<std::size_t>(40, 200);
  const auto lines = tableLines(table(columns), width);
  for (const std::string& line : lines) RC_ASSERT(displayWidth(line) <= width);
  for (std::size_t i = 0; i < columns; ++i) {
    RC_ASSERT(count(lines, std::to_string(10 + i) + ".5") == 1u);
  }
}
