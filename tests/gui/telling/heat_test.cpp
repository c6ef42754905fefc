// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/heat.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "tests/gui/telling/told_checks.hpp"

namespace gui::telling {
namespace {

using test_support::cell;
using test_support::demoCase;
using test_support::solvedDemo;

const Table* tableNamed(const Answer& answer, std::string_view name) {
  for (const Table* table : answer.tables())
    if (table->name == name) return table;
  return nullptr;
}
double number(const Table& table, std::string_view label, std::size_t column,
              std::string_view heading) {
  const Row* row = test_support::rowOf(table, label, heading);
  return row ? cellNumber(row->cells.at(column), {}).value() : std::nan("");
}

TEST(WhereHeat, BarsAddUpToWhatCameIn) {
  const Answer answer = whereHeat(demoCase({.asBars = true}));
  ASSERT_EQ(answer.pictures[0].stacks.size(), 4U);
  for (const PictureStack& stack : answer.pictures[0].stacks) {
    const physics::Ledger& total =
        solvedDemo().answers.rigs[static_cast<std::size_t>(stack.rig)].day.total;
    double sum = 0.0;
    for (const double part : stack.parts) sum += part;
    // Parts below half a watt-hour are left out.
    EXPECT_NEAR(sum, physics::inKilowattHours(total.fromWall() + total.slaking), 0.002);
  }
}

// The demo's weak element loses the largest share on other ways than steam, the jacket the
// smallest.
TEST(WhereHeat, TellsOfAllRigsWhoLosesMostAndLeast) {
  const Answer answer = whereHeat(demoCase({.asBars = true}));
  ASSERT_EQ(answer.sentences.size(), 2U);
  EXPECT_NE(rigs::inEnglish(answer.sentences[0]).find("came into (a) Old element, kitchen"),
            std::string::npos);
  EXPECT_NE(rigs::inEnglish(answer.sentences[1]).find("came into (c) New element, jacket and lid"),
            std::string::npos);
}

TEST(WhereHeat, SaysBelowThePicturesTitleWhyTheSlowestIsSlower) {
  const Answer answer = whereHeat(demoCase({.asBars = true}));
  EXPECT_NE(answer.pictures[0].yTitle.find("than (d) Old element, laundry"), std::string::npos);
  EXPECT_TRUE(whereHeat(demoCase({.rig = 1})).pictures[0].yTitle.find("longer to heat") ==
              std::string::npos);
}

TEST(WhereHeat, PutsTheLargestPathFirst) {
  const Picture picture = whereHeat(demoCase({.asBars = true})).pictures[0];
  std::vector<double> sums(picture.partNames.size());
  for (const PictureStack& stack : picture.stacks)
    for (std::size_t i = 0; i < sums.size(); ++i) sums[i] += stack.parts[i];
  EXPECT_TRUE(std::is_sorted(sums.rbegin(), sums.rend()));
}

TEST(WhereHeat, TellsOfEachPieceWhatItIsOfTheHeatAndOfTheBill) {
  const Picture picture = whereHeat(demoCase({.asBars = true})).pictures[0];
  const auto steam = static_cast<std::size_t>(
      std::find(picture.partNames.begin(), picture.partNames.end(), "steam") -
      picture.partNames.begin());
  ASSERT_LT(steam, picture.partNames.size());
  const rigs::RigAnswer& rig = solvedDemo().answers.rigs[0];
  const physics::Ledger& total = rig.day.total;
  const double share =
      (total.lost[physics::Path::Evaporation] + total.steam) / (total.fromWall() + total.slaking);
  const rigs::Money money{share * rig.cost.value(), "USD"};
  EXPECT_EQ(picture.stacks[0].notes.at(steam),
            "steam: 1.12 kWh, 24 % of what came in, " +
                rigs::tell(rigs::Argument(money), test_support::siReader()));
}

TEST(WhereHeat, PowersAreThoseOfTheCurve) {
  const Answer answer = whereHeat(demoCase({.rig = 1}));
  const Picture& picture = answer.pictures[0];
  std::vector<physics::CurvePoint> curve;
  for (const auto& stage : solvedDemo().answers.rigs[1].day.stages)
    curve.insert(curve.end(), stage.curve.begin(), stage.curve.end());
  ASSERT_EQ(picture.areas[0].size(), curve.size());
  std::size_t compared = 0;
  for (std::size_t i = 0; i < curve.size(); i += 7) {
    // Before it is as warm as the room a kettle gains heat: the picture shows losses only.
    const auto& lost = curve[i].lost.values;
    if (std::any_of(lost.begin(), lost.end(),
                    [](physics::Power p) { return p < physics::watts(0.0); })) {
      continue;
    }
    double sum = 0.0;
    for (const auto& area : picture.areas) sum += area[i].y;
    EXPECT_NEAR(sum, physics::inWatts(curve[i].lost.total()), 1.0);
    ++compared;
  }
  EXPECT_GT(compared, 20U);
}

TEST(WhereHeat, HasTheNumbersOfItsPictureBeside) {
  const Answer answer = whereHeat(demoCase({.rig = 1}));
  const Table* table = tableNamed(answer, "power by path");
  ASSERT_NE(table, nullptr);
  const physics::BrewDay& day = solvedDemo().answers.rigs[1].day;
  ASSERT_EQ(table->columns.size(), 1 + answer.pictures[0].partNames.size());
  ASSERT_EQ(table->rows.size(), 1 + 2 * day.stages.size());
  for (std::size_t s = 0; s < day.stages.size(); ++s) {
    const Row& row = table->rows[2 * s + 2];
    const physics::CurvePoint& end = day.stages[s].curve.back();
    EXPECT_EQ(cellNumber(row.cells[0], {}), physics::inWatts(end.element));
    double sum = 0.0;
    for (std::size_t part = 1; part < row.cells.size(); ++part)
      sum += *cellNumber(row.cells[part], {});
    EXPECT_NEAR(sum, physics::inWatts(end.lost.total()), 0.5);
  }
}

TEST(WhereHeat, FindsItsNumbersInTheResult) {
  const Answer answer = whereHeat(demoCase());
  test_support::expectFiguresOfTheResult(answer, solvedDemo(), 10);
}

// What came in stands in what is stored and what left, stage for stage and over the day.
TEST(WhereHeat, AccountsForEveryStage) {
  const Answer answer = whereHeat(demoCase());
  const Table* table = tableNamed(answer, "(b) New element, kitchen");
  ASSERT_NE(table, nullptr);
  EXPECT_FALSE(table->ofRigs);
  const std::size_t day = table->columns.size() - 1;
  EXPECT_EQ(rigs::inEnglish(table->columns[day]), "Day");
  for (std::size_t column = 0; column <= day; ++column) {
    double cameIn = 0.0;
    double went = 0.0;
    std::string heading;
    for (const Row& row : table->rows) {
      if (row.isHeading()) {
        heading = rigs::inEnglish(row.label);
      } else if (heading == "Came in") {
        const bool contained = rigs::inEnglish(row.label).starts_with("of that");
        cameIn += (contained ? -1.0 : 1.0) * *cellNumber(row.cells[column], {});
      } else if (heading == "Stored" || heading == "Left the vessel") {
        went += *cellNumber(row.cells[column], {});
      }
    }
    EXPECT_NEAR(cameIn, went, 1e-6);
  }
  EXPECT_NEAR(number(*table, "from the wall", day, "Came in"),
              physics::inKilowattHours(solvedDemo().answers.rigs[1].day.total.fromWall()), 1e-12);
}

TEST(WhereHeat, TellsStagesByTheClock) {
  const Answer answer = whereHeat(demoCase());
  const Table* table = tableNamed(answer, "(a) Old element, kitchen");
  ASSERT_NE(table, nullptr);
  EXPECT_EQ(cell(*table, "begins", 0), "09:00");
  EXPECT_EQ(cell(*table, "ends", 0), "11:27");
  EXPECT_EQ(cell(*table, "ends", table->columns.size() - 1), "–");
  EXPECT_EQ(cell(*table, "takes", table->columns.size() - 1), "6:49");
}

TEST(WhereHeat, LeavesOutPathsThatNoStageHas) {
  const Answer answer = whereHeat(demoCase());  // no rig of the demo pumps
  for (const Table* table : answer.tables()) {
    EXPECT_EQ(test_support::rowOf(*table, "hose"), nullptr);
    EXPECT_EQ(test_support::rowOf(*table, "lost: hose"), nullptr);
  }
}

TEST(LedgerText, DoesNotTrustADayWithAGap) {
  physics::BrewDay day = solvedDemo().answers.rigs[1].day;
  EXPECT_NE(rigs::inEnglish(ledgerText(day)).find("The ledger closes."), std::string::npos);
  day.total.element += physics::kilowattHours(0.001);
  EXPECT_NE(rigs::inEnglish(ledgerText(day)).find("do not trust this day."), std::string::npos);
}

TEST(WhereHeat, StandsWithoutCurves) {
  rigs::Solution days = solvedDemo();
  for (rigs::RigAnswer& rig : days.answers.rigs)
    for (physics::Stage& stage : rig.day.stages) stage.curve.clear();
  const Answer answer = whereHeat(test_support::caseOf(days));
  EXPECT_NE(tableNamed(answer, "heat"), nullptr);
  EXPECT_TRUE(answer.pictures[0].areas.empty());
}

}  // namespace
}  // namespace gui::telling
