// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/table.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "gui/terminal/text_layout.hpp"

using namespace gui;

namespace {

Table table(std::size_t columns) {
  Table t;
  t.name = "test";
  t.heading("Volumes");
  Row row{"before the boil", "L", {}, {}};
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
  t.rows.push_back({"lost", "kWh", {noFigure(), noFigure()}, {}});
  const auto lines = tableLines(t, 80);
  EXPECT_EQ(count(lines, "Hose"), 0u);
  EXPECT_EQ(count(lines, "lost"), 0u);
}

TEST(TableLines, MovesAUnitThatAllRowsShareToTheirHeading) {
  Table t = table(2);
  t.rows.push_back({"after the boil", "L", {{"9.5", 9.5}, {"9.7", 9.7}}, {}});
  const auto shared = tableLines(t, 80);
  EXPECT_EQ(shared[2], "Volumes, L");
  EXPECT_EQ(shared[3], "  before the boil  10.5  11.5");
  t.rows.push_back({"evaporated", "kg", {{"1.0", 1.0}, {"1.8", 1.8}}, {}});
  EXPECT_EQ(tableLines(t, 80)[2], "Volumes");
}

TEST(TableLines, SplitsColumnsIntoGroupsOfLikeSize) {
  // Nine columns of which eight would fit: five and four, not eight and one.
  const auto lines = tableLines(table(9), 72);
  EXPECT_TRUE(lines[0].ends_with("   e")) << lines[0];
}

TEST(TableLines, ShowsAnotherUnitThanSpreadsheetsGet) {
  Table t = table(1);
  t.rows.push_back({"takes", "min", {{"2:05", 125.0}}, "h:min"});
  EXPECT_EQ(tableLines(t, 80)[4], "  takes, h:min        2:05");
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
