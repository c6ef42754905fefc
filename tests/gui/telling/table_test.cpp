// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/table.hpp"

#include <gtest/gtest.h>

#include "gui/telling/csv.hpp"
#include "tests/support/readers.hpp"

namespace gui::telling {
namespace {

using namespace physics;
using rigs::Argument;
using rigs::Told;
using test_support::kSi;
using test_support::kUs;

Row row(std::vector<Cell> cells) { return {Told(TOLD("Test", "row")), std::move(cells)}; }

TEST(Cell, OfNothingIsNoNumber) {
  EXPECT_EQ(cellText(std::nullopt, kSi), "–");
  EXPECT_FALSE(cellNumber(std::nullopt, kSi));
}

TEST(Cell, OfZeroIsANumber) {
  EXPECT_EQ(cellText(cellOf(joules(0.0)), kSi), "0.00");
  EXPECT_EQ(cellNumber(cellOf(joules(0.0)), kSi), 0.0);
}

TEST(Cell, FollowsTheReadersUnits) {
  const Cell cell = cellOf(litres(25.0));
  EXPECT_EQ(cellText(cell, kSi), "25.0");
  EXPECT_EQ(cellText(cell, kUs), "6.60");
  EXPECT_NEAR(*cellNumber(cell, kUs), 25.0 / 3.785411784, 1e-12);
}

TEST(Cell, KeepsAUnitOfItsOwn) {
  const Cell cell = Argument(rigs::amountLike(millimetres(12.7), "1 mm"));
  EXPECT_NEAR(*cellNumber(cell, kUs), 12.7, 1e-12);
  EXPECT_EQ(shownUnit(row({cell}), kUs), "mm");
}

// People see how small it is; spreadsheets get what was computed.
TEST(Cell, OfALedgersGapHasAllItsDigits) {
  const Cell cell = Argument(rigs::Gap{3.217e-10});
  EXPECT_EQ(cellText(cell, kSi), "<1e-9");
  EXPECT_EQ(cellNumber(cell, kSi), 3.217e-10);
}

TEST(Row, SaysOneUnitToPeopleAndAnotherToSpreadsheets) {
  const Row time = row({hoursAndMinutes(minutes(125.0)), std::nullopt});
  EXPECT_EQ(shownUnit(time, kSi), "h:min");
  EXPECT_EQ(unitForNumbers(time, kSi), "min");
  EXPECT_EQ(cellText(time.cells[0], kSi), "2:05");
  EXPECT_EQ(cellNumber(time.cells[0], kSi), 125.0);
}

TEST(Table, LeavesOutWhatSaysNothingAndMovesACommonUnitUp) {
  Table table{.name = "t", .columns = {Told::just(rigs::Verbatim{"(a)"})}, .rows = {}};
  table.heading(Told(TOLD("Test", "empty")));
  table.rows.push_back(row({std::nullopt}));
  table.heading(Told(TOLD("Test", "full")));
  table.rows.push_back(row({cellOf(watts(1.0))}));
  table.rows.push_back(row({cellOf(watts(2.0))}));

  const auto rows = shownRows(table, kSi);
  ASSERT_EQ(rows.size(), 3u);
  EXPECT_EQ(rows[0].label, "full, W");
  EXPECT_EQ(rows[1].label, "row");
  EXPECT_EQ(rows[2].cells[0], "2");
}

TEST(Csv, GivesAllDigitsAndNothingForNoFigure) {
  Answer answer;
  Table table{.name = "t", .columns = {Told::just(rigs::Verbatim{"(a)"})}, .rows = {}};
  table.rows.push_back(row({cellOf(watts(1.0 / 3.0))}));
  table.rows.push_back(row({std::nullopt}));
  table.rows.push_back(row({Argument(Told(TOLD("Test", "=SUM(A1, \"x\")")))}));
  answer.show(table);
  answer.cautions = {Told(TOLD("Test", "Hot."))};

  EXPECT_EQ(csvOf(answer, {"One, two"}, kSi),
            "table,group,figure,unit,\"(a) One, two\"\n"
            "t,,row,W,0.333333333333333\n"
            "t,,row,,\n"
            "t,,row,,\"'=SUM(A1, \"\"x\"\")\"\n"
            "caution,,Hot.,,\n");
}

}  // namespace
}  // namespace gui::telling
