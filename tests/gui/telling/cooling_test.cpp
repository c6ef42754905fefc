// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/cooling.hpp"

#include <gtest/gtest.h>

#include <algorithm>

#include "gui/telling/curve.hpp"
#include "gui/telling/jacket.hpp"
#include "gui/telling/summary.hpp"
#include "rigs/answers/figures.hpp"
#include "rigs/answers/search.hpp"
#include "tests/gui/telling/told_checks.hpp"
#include "tests/support/overnight.hpp"

namespace gui::telling {
namespace {

using rigs::inEnglish;
using test_support::cell;
using test_support::demoCase;
using test_support::holds;
using test_support::inShort;
using test_support::overnight;
using test_support::saidOf;
using test_support::solvedDemo;

std::string degrees(physics::Temperature t) {
  return rigs::formatNumber(physics::inCelsius(t), {.significantDigits = 3, .decimals = 1});
}

std::string allSaid(const Answer& answer) {
  std::string all = inShort(answer);
  for (const Block& block : answer.blocks) {
    if (const auto* one = std::get_if<Sentence>(&block)) all += ' ' + inEnglish(one->text);
    if (const auto* table = std::get_if<Table>(&block))
      for (const Row& row : table->rows) all += '|' + inEnglish(row.label);
  }
  return all;
}

std::ptrdiff_t linesOfRigs(const Picture& picture) {
  return std::count_if(picture.lines.begin(), picture.lines.end(),
                       [](const PictureLine& line) { return line.rig >= 0; });
}

TEST(HowFarCools, TellsEachRigAsItIs) {
  const Answer answer = howFarCools(demoCase());
  const Table& table = *answer.tables().at(0);
  for (std::size_t i = 0; i < 4; ++i) {
    const rigs::Night& night = solvedDemo().answers.rigs[i].night->asItIs;
    EXPECT_EQ(cell(table, "in the end, after 1 h 30 min", i), degrees(night.morning));
    EXPECT_EQ(cell(table, "left alone at", i), degrees(night.first));
    EXPECT_EQ(cell(table, "after 10 min", i), degrees(night.readings[0].wort));
  }
  test_support::expectFiguresOfTheResult(answer, solvedDemo(), 7);
}

// A kettle that levels off below boiling heats to no boil.
TEST(HowFarCools, DoesNotClaimThatAWeakKettleBoilsAfterItsNight) {
  rigs::Plan plan = overnight().plan;
  for (physics::Rig* rig : {&plan.rigs[0].rig, &plan.rigs[0].bare, &plan.rigs[0].jacketed}) {
    rig->vessel.open.heating = 1.0;
    rig->element.rating = 0.5 * rig->element.rating;
  }
  const rigs::Solution weak = rigs::solve(plan, rigs::kEverySearch);
  ASSERT_TRUE(weak.answers.rigs[0].day.finished());
  ASSERT_FALSE(rigs::timeToBoil(weak.answers.rigs[0].day));
  const Answer answer = howFarCools(test_support::caseOf(weak));
  EXPECT_FALSE(holds(saidOf(answer, 0), "heats to the boil")) << saidOf(answer, 0);
  EXPECT_TRUE(holds(saidOf(answer, 0), "is where it levels off")) << saidOf(answer, 0);
  EXPECT_TRUE(holds(saidOf(answer, 1), "From there it heats to the boil in"));
  EXPECT_EQ(cell(*answer.tables().at(0), "heating to the boil", 0), "–");
}

// Of a night of its own it names the clock; of one that is too hot all along it says so, and
// nothing of what does not happen.
TEST(HowFarCools, TellsWhatGrowsMeanwhile) {
  rigs::Plan plan = overnight().plan;
  plan.batch.mash = physics::UnpluggedMash{physics::celsius(67.0), physics::hours(14.0)};
  const rigs::Solution solution = rigs::solve(plan, rigs::kEverySearch);
  const Case of = test_support::caseOf(solution);
  const rigs::Night& night = solution.answers.rigs[0].night->asItIs;
  ASSERT_TRUE(night.tooManyAfter);
  const Answer answer = howFarCools(of);
  const auto* rest = solution.answers.rigs[0].day.find(physics::StageKind::UnpluggedRest);
  const std::string clock =
      of.text(rigs::Argument(of.clockAt(0, rest->begin + *night.tooManyAfter)));
  EXPECT_TRUE(holds(allSaid(answer), ", at " + clock + ": boil it by then, or hold it at 60 °C"))
      << allSaid(answer);
  EXPECT_TRUE(holds(allSaid(answer), "undoes no toxin")) << allSaid(answer);
  const Answer brief = howFarCools(demoCase());
  EXPECT_FALSE(holds(allSaid(brief), "oxin")) << allSaid(brief);
  EXPECT_FALSE(holds(allSaid(brief), "food germs would double")) << allSaid(brief);
  EXPECT_NE(cell(*answer.tables().at(0), "food germs would double, times", 0), "0.0");
}

// A bare kettle has no jacket, a jacketed one is not bare: neither is told, listed or drawn.
TEST(HowFarCools, SupposesNothingThatWasNotAskedFor) {
  for (const rigs::Solution* solution : {&solvedDemo(), &overnight()}) {
    const Answer answer = howFarCools(test_support::caseOf(*solution));
    for (const char* never : {"with jacket", "without", "foam", "upposed", "if it"})
      EXPECT_FALSE(holds(allSaid(answer), never)) << never << '\n' << allSaid(answer);
    ASSERT_EQ(answer.pictures.size(), 1U);
    ASSERT_EQ(linesOfRigs(answer.pictures[0]), std::ssize(solution->answers.rigs));
    for (const PictureLine& line : answer.pictures[0].lines) {
      if (line.rig < 0) continue;  // what all are held against
      EXPECT_FALSE(line.faint);
      const auto& night = solution->answers.rigs.at(static_cast<std::size_t>(line.rig)).night;
      EXPECT_NEAR(line.points.back().y, physics::inCelsius(night->asItIs.morning), 1e-9);
      EXPECT_EQ(line.name, solution->answers.rigs.at(static_cast<std::size_t>(line.rig)).name);
    }
  }
}

TEST(HowFarCools, NamesWhatIsOnlySupposedAndDrawsItThin) {
  const Answer answer = howFarCools(test_support::caseOf(overnight(), {.supposed = true}));
  EXPECT_TRUE(holds(allSaid(answer),
                    "(a) if it had 13 mm closed-cell rubber foam on side and "
                    "lid: "))
      << allSaid(answer);
  EXPECT_TRUE(holds(allSaid(answer), "(b) if it were bare: ")) << allSaid(answer);
  EXPECT_TRUE(holds(allSaid(answer), "|Supposed: if it had 13 mm closed-cell rubber foam on"));
  EXPECT_TRUE(holds(allSaid(answer), "|Supposed: if it were bare"));
  const Picture& picture = answer.pictures.at(0);
  ASSERT_EQ(linesOfRigs(picture), 4);
  for (std::size_t k = 0; k < 4; ++k) EXPECT_EQ(picture.lines[k].faint, k >= 2);
  EXPECT_EQ(picture.lines[2].name, "if it had 13 mm closed-cell rubber foam on side and lid");
  EXPECT_EQ(picture.lines[3].name, "if it were bare");
  EXPECT_GT(picture.lines[2].points.back().y, picture.lines[0].points.back().y);
  EXPECT_LT(picture.lines[3].points.back().y, picture.lines[1].points.back().y);
  test_support::expectFiguresOfTheResult(answer, overnight(), 30);
}

// The plan's own 10 h, not the 90 min of its goal.
TEST(HowFarCools, CountsThePlansOwnNight) {
  const Answer answer = howFarCools(test_support::caseOf(overnight()));
  EXPECT_TRUE(holds(inShort(answer), " after 10 h unplugged is where ")) << inShort(answer);
  EXPECT_FALSE(holds(allSaid(answer), "1 h 30 min")) << allSaid(answer);
  EXPECT_TRUE(holds(saidOf(answer, 0), "It passes 57 °C after ")) << saidOf(answer, 0);
  EXPECT_TRUE(holds(saidOf(answer, 0), " From there it heats to the boil in "))
      << saidOf(answer, 0);
  for (std::size_t i = 0; i < 2; ++i) {
    const physics::BrewDay& day = overnight().answers.rigs[i].day;
    EXPECT_EQ(cell(*answer.tables().at(0), "in the end, after 10 h", i),
              degrees(day.find(physics::StageKind::UnpluggedRest)->last));
  }
}

TEST(HowFarCools, DropsFromReadingToReading) {
  const Answer answer = howFarCools(test_support::caseOf(overnight()));
  const Table& table = *answer.tables().at(0);
  double last = 100.0;
  for (const char* label : {"left alone at", "after 10 min", "after 20 min", "after 30 min",
                            "after 1 h", "after 2 h", "after 9 h", "in the end, after 10 h"}) {
    SCOPED_TRACE(label);
    const Row* row = test_support::rowOf(table, label);
    ASSERT_TRUE(row && row->cells[0] && row->cells[1]);
    EXPECT_LT(*cellNumber(row->cells[0], {}), last);
    last = *cellNumber(row->cells[0], {});
    EXPECT_GT(*cellNumber(row->cells[1], {}), last);  // the jacketed kettle
  }
}

// The readings lie on the curve that is drawn.
TEST(HowFarCools, MeetsItsCurve) {
  const Picture picture = coolingPicture(test_support::caseOf(overnight()));
  for (std::size_t i = 0; i < 2; ++i) {
    for (const rigs::NightPoint& reading : overnight().answers.rigs[i].night->asItIs.readings) {
      const auto drawn = valueAt(picture.lines[i].points, physics::inMinutes(reading.alone));
      ASSERT_TRUE(drawn);
      EXPECT_NEAR(*drawn, physics::inCelsius(reading.wort), 0.02);
    }
  }
}

// Where mash passes it or comes near; a picture of mash that stays far above needs no room for it.
TEST(HowFarCools, DrawsTheLimitThatWarmMashPasses) {
  const auto limitOf = [](const Picture& picture) {
    return std::find_if(picture.lines.begin(), picture.lines.end(),
                        [](const PictureLine& line) { return line.limit; });
  };
  const Picture night = coolingPicture(test_support::caseOf(overnight()));
  const auto limit = limitOf(night);
  ASSERT_NE(limit, night.lines.end());
  EXPECT_EQ(limit->name, "57 °C");
  EXPECT_EQ(limit->rig, -1);
  EXPECT_DOUBLE_EQ(limit->points.front().y, 57.0);
  EXPECT_DOUBLE_EQ(limit->points.front().x, 0.0);
  EXPECT_DOUBLE_EQ(limit->points.back().x, night.lines[0].points.back().x);
  // 57.5 C after an hour and a half: near enough.
  const Picture hours = coolingPicture(demoCase());
  EXPECT_NE(limitOf(hours), hours.lines.end());
  rigs::Plan plan = solvedDemo().plan;
  plan.goals.unplugged = physics::minutes(20.0);
  const rigs::Solution soon = rigs::solve(plan, {});
  const Picture minutes = coolingPicture(test_support::caseOf(soon));
  ASSERT_EQ(linesOfRigs(minutes), 4);
  EXPECT_EQ(limitOf(minutes), minutes.lines.end());
}

TEST(HowFarCools, AnswersWithoutAJacketToCompare) {
  rigs::Solution bare = solvedDemo();
  for (rigs::RigAnswer& rig : bare.answers.rigs) {
    rig.jacket.reset();
    rig.night->supposed.reset();
  }
  const Answer answer = howFarCools(test_support::caseOf(bare, {.supposed = true}));
  EXPECT_TRUE(holds(inShort(answer), " unplugged is where ")) << inShort(answer);
  EXPECT_EQ(linesOfRigs(answer.pictures[0]), 4);
  for (rigs::RigAnswer& rig : bare.answers.rigs) rig.night.reset();
  EXPECT_EQ(inShort(howFarCools(test_support::caseOf(bare))),
            "No rig of this plan has a mash that could be left alone.");
}

TEST(Summary, TellsAnOvernightPlansNightFirst) {
  const Answer answer = summary(test_support::caseOf(overnight()));
  const auto* heading = std::get_if<Heading>(&answer.blocks.at(0));
  ASSERT_TRUE(heading);
  EXPECT_EQ(inEnglish(heading->text), "How far does it cool?");
  EXPECT_TRUE(holds(saidOf(answer, 0), " after 10 h unplugged, from ")) << saidOf(answer, 0);
  EXPECT_EQ(answer.tables().at(0)->name, "night");
  for (const char* label : {"after 10 min", "after 20 min", "after 30 min", "after 5 h"})
    EXPECT_NE(test_support::rowOf(*answer.tables().at(0), label), nullptr) << label;
  EXPECT_EQ(cell(*answer.tables().at(0), "heating to the boil", 0),
            cell(*answer.tables().at(1), "heating before the boil", 0));
  // A plan that holds its rests has no night to tell.
  EXPECT_EQ(summary(demoCase()).tables().size(), 1U);
}

}  // namespace
}  // namespace gui::telling
