// SPDX-License-Identifier: GPL-3.0-or-later
// What is remembered from plan to plan is what a plan alone would give, and what an edit leaves as
// it was is there before anything is searched for.
#include "rigs/answers/search.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <atomic>
#include <functional>
#include <stdexcept>
#include <string>

#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "rigs/results/result_json.hpp"

namespace rigs {
namespace {

using namespace physics;

Plan demoBoiledAnHour() {
  Problems problems;
  auto plan = readPlan(withText(demoPlanText(), "/batch/boil", "60 min"), ".", problems);
  if (!plan) throw std::logic_error("the demo has errors");
  return *plan;
}

void stronger(Plan& edited) {
  for (RigPlan& rig : edited.rigs)
    for (Rig* one : {&rig.rig, &rig.bare, &rig.jacketed}) one->element.rating += watts(90.0);
}

Solution solvedWith(Memory& memory, const Plan& plan, const Searches& wanted = kEverySearch) {
  Search search(plan, memory);
  search.addDays();
  EXPECT_TRUE(search.add(wanted));
  return search.solution();
}

void expectSame(const JacketDay& a, const JacketDay& b) {
  EXPECT_EQ(a.done, b.done);
  EXPECT_EQ(a.toBoil, b.toBoil);
  EXPECT_EQ(a.fromWall, b.fromWall);
  EXPECT_EQ(a.cost, b.cost);
}

// Where two long texts differ first, with what stands around it; "" where they do not.
std::string difference(const std::string& a, const std::string& b) {
  const auto at = std::mismatch(a.begin(), a.end(), b.begin(), b.end());
  if (at.first == a.end() && at.second == b.end()) return {};
  const auto from = static_cast<std::size_t>(at.first - a.begin());
  const std::size_t begin = from < 200 ? 0 : from - 200;
  return a.substr(begin, 240) + " | " + b.substr(begin, 240);
}
// Every figure of every answer, curves too.
std::string difference(const Plan& plan, const Answers& a, const Answers& b) {
  return difference(resultJson(plan, a), resultJson(plan, b));
}

// To the last digit.
void expectSame(const RigSweeps& a, const RigSweeps& b) {
  ASSERT_EQ(a.power.size(), b.power.size());
  for (std::size_t k = 0; k < a.power.size(); ++k) {
    EXPECT_EQ(a.power[k].element, b.power[k].element);
    EXPECT_EQ(a.power[k].toBoil, b.power[k].toBoil);
    EXPECT_EQ(a.power[k].boilOff, b.power[k].boilOff);
  }
  ASSERT_EQ(a.thickness.size(), b.thickness.size());
  for (std::size_t k = 0; k < a.thickness.size(); ++k) {
    EXPECT_EQ(a.thickness[k].thickness, b.thickness[k].thickness);
    EXPECT_EQ(a.thickness[k].savedMoney, b.thickness[k].savedMoney);
    expectSame(a.thickness[k].jacketed, b.thickness[k].jacketed);
  }
  ASSERT_EQ(a.jacketPower.size(), b.jacketPower.size());
  for (std::size_t k = 0; k < a.jacketPower.size(); ++k) {
    EXPECT_EQ(a.jacketPower[k].element, b.jacketPower[k].element);
    expectSame(a.jacketPower[k].bare, b.jacketPower[k].bare);
    expectSame(a.jacketPower[k].jacketed, b.jacketPower[k].jacketed);
  }
}

void expectSame(const Solution& mine, const Solution& other) {
  EXPECT_EQ(mine.done, other.done);
  EXPECT_EQ(difference(mine.plan, mine.answers, other.answers), "");
  ASSERT_EQ(mine.sweeps.size(), other.sweeps.size());
  for (std::size_t i = 0; i < mine.sweeps.size(); ++i) {
    SCOPED_TRACE(i);
    expectSame(mine.sweeps[i], other.sweeps[i]);
  }
}

TEST(Solve, GivesWhatTheAnswersGiveWithEverything) {
  const Plan plan = demoBoiledAnHour();
  const Solution solution = solve(plan, kEverySearch);
  EXPECT_EQ(solution.done, kEverySearch);
  EXPECT_EQ(difference(plan, solution.answers, answer(plan, Depth::Everything, true)), "");
  ASSERT_EQ(solution.sweeps.size(), 4U);
  EXPECT_EQ(solution.sweeps[1].power.size(), 34U);  // the circuit's largest among them
  EXPECT_EQ(solution.sweeps[1].thickness.size(), 17U);
  EXPECT_EQ(solution.sweeps[1].jacketPower.size(), 17U);
}

TEST(Solve, SearchesForNoMoreThanIsAskedFor) {
  Plan plan = demoBoiledAnHour();
  plan.rigs.resize(2);
  const Solution solution = solve(plan, {.thickness = true});
  EXPECT_EQ(solution.done, Searches{.thickness = true});
  EXPECT_GT(solution.sweeps[1].thickness.size(), 10U);
  EXPECT_TRUE(solution.sweeps[1].power.empty());
  EXPECT_FALSE(solution.answers.rigs[1].sizing);
  EXPECT_TRUE(solution.answers.rigs[1].circuit.readings.empty());
  EXPECT_TRUE(solution.answers.rigs[1].jacket);
}

TEST(Memory, GivesTheSameAfterEditsAsAfresh) {
  Memory memory;
  Plan plan = demoBoiledAnHour();
  const auto change = [&](const std::function<void(Plan&)>& edit) {
    edit(plan);
    return solvedWith(memory, plan);
  };
  change([](Plan&) {});
  change(stronger);
  change([](Plan& edited) { edited.goals.boilWithin = minutes(37.0); });
  change([](Plan& edited) { edited.rigs[2].name = "Another name"; });
  const Solution last = change(stronger);
  expectSame(last, solve(plan, kEverySearch));
  // Back to what was there before, with the rigs in another order.
  const Solution back = change([](Plan& edited) {
    edited = demoBoiledAnHour();
    std::swap(edited.rigs[0], edited.rigs[3]);
  });
  expectSame(back, solve(plan, kEverySearch));
}

// A goal is searched for anew; no day and no curve depends on it.
TEST(Memory, KeepsTheCurvesWhenOnlyAGoalChanges) {
  Memory memory;
  Plan plan = demoBoiledAnHour();
  const Solution before = solvedWith(memory, plan);
  plan.goals.boilWithin = minutes(25.0);
  Search search(plan, memory);
  EXPECT_EQ(search.done(), (Searches{false, true, true, true, true, false}));
  search.addDays();
  const Solution at = search.solution();
  for (std::size_t i = 0; i < 4; ++i) expectSame(at.sweeps[i], before.sweeps[i]);
  EXPECT_FALSE(at.answers.rigs[0].sizing);
  ASSERT_TRUE(search.add(kEverySearch));
  EXPECT_GT(*search.solution().answers.rigs[0].sizing->toBoilWithin.power,
            *before.answers.rigs[0].sizing->toBoilWithin.power);
}

TEST(Memory, KnowsRigsThatStayAsTheyAreWhereverTheyStand) {
  Memory memory;
  Plan plan = demoBoiledAnHour();
  const Solution before = solvedWith(memory, plan);
  std::swap(plan.rigs[0], plan.rigs[1]);
  EXPECT_EQ(Search(plan, memory).done(), kEverySearch);
  plan.place.room = celsius(5.0);  // nothing is the same in another place
  EXPECT_EQ(Search(plan, memory).done(), Searches{});
}

// Another rig's element moves the axis that all curves share.
TEST(Memory, SweepsAnewWhereTheRangeIsAnother) {
  Memory memory;
  Plan plan = demoBoiledAnHour();
  solvedWith(memory, plan, {.power = true});
  plan.rigs[3].rig.element.rating = watts(9000.0);
  EXPECT_FALSE(Search(plan, memory).done().power);
  const Solution anew = solvedWith(memory, plan, {.power = true});
  expectSame(anew, solve(plan, {.power = true}));
}

// Where the hour decides the price, another start is another saving.
TEST(Memory, PricesTheSavingsAnewWhenTheDayBeginsAtAnotherHour) {
  Plan plan = demoBoiledAnHour();
  plan.rigs.resize(2);
  for (auto* windows : {&plan.tariff.weekday, &plan.tariff.weekend})
    *windows = {{hours(0.0), hours(14.0), 0.1}, {hours(14.0), hours(24.0), 0.5}};
  Memory memory;
  std::optional<double> last;
  for (const double hour : {6.0, 15.0}) {
    plan.startOfDay = hours(hour);
    const Solution solution = solvedWith(memory, plan);
    expectSame(solution, solve(plan, kEverySearch));
    EXPECT_NE(solution.sweeps[1].thickness.back().savedMoney, last);
    last = solution.sweeps[1].thickness.back().savedMoney;
  }
}

// Bands are nobody's before they are asked for; then they stay, whatever place a rig has.
TEST(Memory, KeepsHowSureItIs) {
  Memory memory;
  Plan plan = demoBoiledAnHour();
  plan.rigs.resize(2);
  EXPECT_FALSE(solvedWith(memory, plan).answers.rigs[0].bands);
  const Solution bands = solvedWith(memory, plan, {.bands = true});
  ASSERT_TRUE(bands.answers.rigs[0].bands);
  EXPECT_FALSE(bands.answers.rigs[0].sure);
  std::swap(plan.rigs[0], plan.rigs[1]);
  Search again(plan, memory);
  EXPECT_TRUE(again.done().bands);
  again.addDays();
  EXPECT_EQ(again.solution().answers.rigs[1].bands, bands.answers.rigs[0].bands);
  plan.rigs[0].finishIsUsual = true;  // which no day shows, and every band
  EXPECT_FALSE(Search(plan, memory).done().bands);
}

TEST(Search, AddsNoBandsWhereItIsStoppedAmongThem) {
  Memory memory;
  Plan plan = demoBoiledAnHour();
  plan.rigs.resize(1);
  Search search(plan, memory);
  search.addDays();
  std::atomic<int> asked = 0;
  EXPECT_FALSE(search.add({.bands = true}, [&] { return ++asked > 20; }));
  EXPECT_FALSE(search.done().bands);
  EXPECT_FALSE(search.solution().answers.rigs[0].bands);
}

TEST(Search, AddsNothingWhereItIsStopped) {
  Memory memory;
  const Plan plan = demoBoiledAnHour();
  Search search(plan, memory);
  search.addDays();
  EXPECT_FALSE(search.add({.power = true}, [] { return true; }));
  EXPECT_EQ(search.done(), Searches{});
  EXPECT_EQ(Search(plan, memory).done(), Searches{});
  EXPECT_TRUE(search.add({.thickness = true}, [] { return false; }));
  EXPECT_EQ(search.done(), Searches{.thickness = true});
  EXPECT_EQ(Search(plan, memory).done(), Searches{.thickness = true});
}

TEST(Search, TellsWhatOnlyTheSimulationFinds) {
  Problems problems;
  const auto plan = readPlan(withText(demoPlanText(), "/batch/wort", "38 L"), ".", problems);
  ASSERT_TRUE(plan);
  Memory memory;
  EXPECT_TRUE(hasErrors(Search(*plan, memory).problems()));
  const Plan good = demoBoiledAnHour();
  EXPECT_FALSE(hasErrors(Search(good, memory).problems()));
}

TEST(SweepRange, HoldsEveryRigsOwnElementAndJacket) {
  Plan plan = demoBoiledAnHour();
  const SweepRange usual = sweepRange(plan);
  for (const RigPlan& rig : plan.rigs) {
    EXPECT_LT(usual.weakest, rig.rig.element.rating);
    EXPECT_GT(usual.strongest, rig.rig.element.rating);
  }
  plan.rigs[0].rig.element.rating = watts(400.0);
  plan.rigs[1].rig.element.rating = watts(20e3);
  const SweepRange wide = sweepRange(plan);
  EXPECT_EQ(wide.weakest, watts(200.0));
  EXPECT_EQ(wide.strongest, watts(30e3));
}

TEST(SearchesInTurn, AreAllOfThem) {
  Searches all;
  for (const Searches& one : kSearchesInTurn) {
    EXPECT_FALSE(all.covers(one));
    all = {all.sizing || one.sizing,       all.power || one.power,
           all.thickness || one.thickness, all.jacketPower || one.jacketPower,
           all.circuit || one.circuit,     all.rest || one.rest};
  }
  EXPECT_EQ(all, kEverySearch);
}

}  // namespace
}  // namespace rigs
