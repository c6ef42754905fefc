// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/table_lines.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "gui/terminal/text_layout.hpp"

using namespace gui;
using rigs::Told;
using telling::Cell;
using telling::cellOf;
using telling::Table;

namespace {

Told verbatim(const std::string& text) { return Told::just(rigs::Verbatim{text}); }
Cell litresCell(double n) { return telling::cellOf(physics::litres(n)); }

Table table(std::size_t columns) {
  Table t;
  t.name = "test";
  t.heading(verbatim("Volumes"));
  telling::Row row{verbatim("before the boil"), {}};
  for (std::size_t i = 0; i < columns; ++i) {
    t.columns.push_back(verbatim(std::string(1, static_cast<char>('a' + i))));
    row.cells.push_back(litresCell(10.5 + static_cast<double>(i)));
  }
  t.rows.push_back(row);
  return t;
}

std::vector<std::string> lines(const Table& t, std::size_t width) {
  return tableLines(t, {}, width);
}

std::size_t count(const std::vector<std::string>& lines, std::string_view text) {
  std::size_t n = 0;
  for (const std::string& line : lines) n += line.find(text) != std::string::npos ? 1 : 0;
  return n;
}

}  // namespace

TEST(TableLines, AlignsCellsUnderTheirHeads) {
  const auto all = lines(table(2), 80);
  ASSERT_EQ(all.size(), 4u);
  EXPECT_EQ(all[0].size(), all[3].size());
  EXPECT_EQ(all[2], "Volumes");
  EXPECT_EQ(all[3], "  before the boil, L  10.5  11.5");
}

TEST(TableLines, RepeatsTheLabelsWhenColumnsDoNotFit) {
  const auto all = lines(table(12), 60);
  EXPECT_EQ(count(all, "before the boil"), 2u);
  EXPECT_EQ(count(all, "21.5"), 1u);
}

// Words go on under themselves, evenly, before rigs are taken apart; figures never do.
TEST(TableLines, BreaksWordsBeforeItTakesColumnsApart) {
  Table t = table(3);
  t.rows.push_back({verbatim("verdict"),
                    {cellOf(verbatim("fits only if (1)")), cellOf(verbatim("fits")),
                     cellOf(verbatim("does not fit"))}});
  const auto wide = lines(t, 80);
  EXPECT_EQ(wide.back(),
            "  verdict             fits only if (1)              fits      does not fit");
  const auto narrow = lines(t, 60);
  EXPECT_EQ(count(narrow, "before the boil"), 1u);
  ASSERT_GE(narrow.size(), 2u);
  EXPECT_EQ(narrow.end()[-2].find("fits only"), narrow.end()[-1].find("if (1)") - 3);
  EXPECT_EQ(count(narrow, "10.5"), 1u);
  for (const std::string& line : narrow) EXPECT_LE(displayWidth(line), 60u) << line;
}

TEST(TableLines, LeavesOutRowsThatSayNothingAndTheirHeading) {
  Table t = table(2);
  t.heading(verbatim("Hose"));
  t.rows.push_back({verbatim("lost"), {std::nullopt, std::nullopt}});
  const auto all = lines(t, 80);
  EXPECT_EQ(count(all, "Hose"), 0u);
  EXPECT_EQ(count(all, "lost"), 0u);
  EXPECT_TRUE(lines(Table{}, 80).empty());
}

TEST(TableLines, MovesAUnitThatAllRowsShareToTheirHeading) {
  Table t = table(2);
  t.rows.push_back({verbatim("after the boil"), {litresCell(9.5), std::nullopt}});
  const auto shared = lines(t, 80);
  EXPECT_EQ(shared[2], "Volumes, L");
  EXPECT_EQ(shared[3], "  before the boil  10.5  11.5");
  EXPECT_EQ(shared[4], "  after the boil    9.5     –");
  t.rows.push_back(
      {verbatim("evaporated"), {telling::cellOf(physics::kilograms(1.0)), std::nullopt}});
  EXPECT_EQ(lines(t, 80)[2], "Volumes");
}

TEST(TableLines, SplitsColumnsIntoGroupsOfLikeSize) {
  // Nine columns of which eight would fit: five and four, not eight and one.
  const auto all = lines(table(9), 72);
  EXPECT_TRUE(all[0].ends_with("   e")) << all[0];
}

TEST(TableLines, FollowTheirReader) {
  Table t = table(1);
  t.rows.push_back({verbatim("takes"), {telling::hoursAndMinutes(physics::minutes(125.0))}});
  EXPECT_EQ(lines(t, 80)[4], "  takes, h:min        2:05");
  const rigs::Reader us{.units = rigs::UnitSystem::UsCustomary};
  EXPECT_EQ(tableLines(t, us, 80)[3], "  before the boil, US gal  2.77");
}

RC_GTEST_PROP(TableLines, StaysWithinAnyWidthAndShowsEveryColumn, ()) {
  const auto columns = *rc::gen::inRange<std::size_t>(1, 13);
  const auto width = *rc::gen::inRange<std::size_t>(40, 200);
  const auto all = lines(table(columns), width);
  for (const std::string& line : all) RC_ASSERT(displayWidth(line) <= width);
  for (std::size_t i = 0; i < columns; ++i) {
    RC_ASSERT(count(all, std::to_string(10 + i) + ".5") == 1u);
  }
}

TEST(TableLines, HaveAMarkBelowTheHeadOfItsRig) {
  Table t = table(3);
  const std::vector<Told> marks{Told(), verbatim("▲ overload"), Told()};
  const auto marked = tableLines(t, {}, 80, marks);
  const auto plain = tableLines(t, {}, 80);
  ASSERT_EQ(marked.size(), plain.size() + 1);
  const std::size_t end = marked[1].find("▲ overload") + std::string("▲ overload").size();
  EXPECT_EQ(marked[1].size(), end);
  // The head ends where its mark does; ▲ is one column of three bytes.
  EXPECT_EQ(marked[0].find('b') + 1, end - 2);
  EXPECT_EQ(count(marked, "overload"), 1U);
  t.ofRigs = false;  // these columns are no rigs
  EXPECT_EQ(tableLines(t, {}, 80, marks), plain);
}

TEST(TableLines, HaveMarksInEveryGroupOfColumns) {
  const Table t = table(6);
  const std::vector<Told> marks(6, verbatim("▲ overload"));
  for (const std::size_t width : {40U, 60U, 100U}) {
    std::size_t found = 0;
    for (const std::string& line : tableLines(t, {}, width, marks)) {
      EXPECT_LE(displayWidth(line), width) << line;
      for (std::size_t at = 0; (at = line.find("overload", at)) != std::string::npos; ++at) ++found;
    }
    EXPECT_EQ(found, 6U) << width;
  }
}
