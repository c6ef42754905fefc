// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/solver.hpp"

#include <gtest/gtest.h>
#include <sys/resource.h>
#include <unistd.h>

#include <QLabel>
#include <QSignalSpy>
#include <QTest>
#include <cerrno>
#include <fstream>
#include <functional>
#include <future>
#include <new>
#include <optional>
#include <stdexcept>
#include <system_error>
#include <thread>
#include <vector>

#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "tests/gui/window/window_fixture.hpp"
#include "tests/support/patience.hpp"

namespace {

using gui::Solver;

std::shared_ptr<const rigs::Plan> planWithBoil(const std::string& boil) {
  rigs::Problems problems;
  auto plan =
      rigs::readPlan(rigs::withText(rigs::demoPlanText(), "/batch/boil", boil), ".", problems);
  return plan ? std::make_shared<const rigs::Plan>(std::move(*plan)) : nullptr;
}

std::vector<gui::SolutionPtr> solutionsOf(const QSignalSpy& spy) {
  std::vector<gui::SolutionPtr> all;
  for (const QList<QVariant>& call : spy) all.push_back(call.front().value<gui::SolutionPtr>());
  return all;
}

TEST(TheSolver, ShowsTheDaysFirstThenWhatIsLookedAtThenAll) {
  Solver solver;
  solver.lookAt({.thickness = true});
  QSignalSpy solved(&solver, &Solver::solved);
  solver.solve(planWithBoil("60 min"), 7);
  ASSERT_TRUE(QTest::qWaitFor([&] { return solved.count() >= 3; }, test_support::kPatience));
  const auto all = solutionsOf(solved);
  EXPECT_EQ(all[0]->answers.rigs.size(), 4U);
  EXPECT_EQ(all[0]->done, gui::Searches{});
  EXPECT_TRUE(all[0]->sweeps[0].thickness.empty());
  EXPECT_EQ(all[1]->done, gui::Searches{.thickness = true});
  EXPECT_GT(all[1]->sweeps[0].thickness.size(), 10U);
  EXPECT_EQ(all[2]->done, gui::kEverySearch);
  ASSERT_EQ(all[2]->sweeps.size(), 4U);
  EXPECT_EQ(all[2]->edition, 7);
  EXPECT_TRUE(all[2]->answers.rigs[0].sizing.has_value());
  EXPECT_GT(all[2]->sweeps[0].power.size(), 10U);
}

// The demo with a boil of an hour, every search done; nothing if that takes too long.
gui::SolutionPtr allOfTheDemo(Solver& solver, const QSignalSpy& solved) {
  solver.solve(planWithBoil("60 min"), 1);
  if (!QTest::qWaitFor([&] { return solver.isIdle(); }, test_support::kPatience)) return nullptr;
  QTest::qWait(20);
  const auto all = solutionsOf(solved);
  return all.empty() ? nullptr : all.back();
}

// A thousand days a rig: nobody waits for them who has not asked.
TEST(TheSolver, SearchesForWhatHelpsOnlyWhereThatIsLookedAt) {
  Solver solver;
  QSignalSpy solved(&solver, &Solver::solved);
  QSignalSpy progress(&solver, &Solver::searching);
  ASSERT_TRUE(allOfTheDemo(solver, solved));
  EXPECT_FALSE(solutionsOf(solved).back()->done.helps);
  EXPECT_EQ(progress.count(), 0);
  solved.clear();
  solver.lookAt({.helps = true});
  EXPECT_FALSE(solver.isIdle());
  ASSERT_TRUE(
      QTest::qWaitFor([&] { return !solved.isEmpty() && solutionsOf(solved).back()->done.helps; },
                      test_support::kPatience));
  const auto found = solutionsOf(solved).back();
  ASSERT_TRUE(found->answers.rigs[1].helps);
  EXPECT_FALSE(found->answers.rigs[1].helps->isPart());
  EXPECT_TRUE(found->done.covers(gui::kEverySearch)) << "all else is remembered";
  ASSERT_GE(progress.count(), 2);
  EXPECT_EQ(progress.front().at(0).toULongLong(), 0U);
  std::uint64_t ways = 0;
  for (const rigs::RigAnswer& rig : found->answers.rigs) ways += rig.helps->ways;
  EXPECT_EQ(progress.back().at(0).toULongLong(), ways);
  EXPECT_EQ(progress.back().at(1).toULongLong(), ways);
  // Looked at again, it is there.
  progress.clear();
  solver.lookAt({});
  solver.lookAt({.helps = true});
  ASSERT_TRUE(QTest::qWaitFor([&] { return solver.isIdle(); }, test_support::kPatience));
  EXPECT_EQ(progress.count(), 0);
}

TEST(TheSolver, ShowsWhatWasFoundWhenSomebodyHasEnough) {
  Solver solver;
  solver.lookAt({.helps = true});
  QSignalSpy solved(&solver, &Solver::solved);
  QSignalSpy over(&solver, &Solver::searched);
  QObject::connect(&solver, &Solver::searching, &solver, &Solver::endSearch);
  solver.solve(planWithBoil("60 min"), 1);
  ASSERT_TRUE(
      QTest::qWaitFor([&] { return !solved.isEmpty() && solutionsOf(solved).back()->done.helps; },
                      test_support::kPatience));
  EXPECT_EQ(over.count(), 1);
  bool part = false;
  for (const rigs::RigAnswer& rig : solutionsOf(solved).back()->answers.rigs) {
    ASSERT_TRUE(rig.helps);
    EXPECT_FALSE(rig.helps->changes.empty());
    part = part || rig.helps->isPart();
  }
  EXPECT_TRUE(part);
}

// A goal is searched for anew; no day and no curve depends on it.
TEST(TheSolver, KeepsTheCurvesWhenOnlyAGoalChanges) {
  Solver solver;
  QSignalSpy solved(&solver, &Solver::solved);
  const auto before = allOfTheDemo(solver, solved);
  ASSERT_TRUE(before);
  solved.clear();
  auto plan = std::make_shared<rigs::Plan>(before->plan);
  plan->goals.boilWithin = physics::minutes(25.0);
  solver.solve(plan, 2);
  ASSERT_TRUE(QTest::qWaitFor([&] { return solver.isIdle(); }, test_support::kPatience));
  QTest::qWait(20);
  const auto after = solutionsOf(solved);
  ASSERT_EQ(after.size(), 2U);
  // All but what the goal decides is there at once, and the same.
  gui::Searches left = gui::kEverySearch;
  left.bands = true;
  left.sizing = left.rest = false;
  EXPECT_EQ(after[0]->done, left);
  for (std::size_t i = 0; i < 4; ++i) {
    ASSERT_EQ(after[0]->sweeps[i].power.size(), before->sweeps[i].power.size());
    EXPECT_EQ(after[0]->sweeps[i].power[9].toBoil, before->sweeps[i].power[9].toBoil);
  }
  ASSERT_TRUE(after[1]->answers.rigs[0].sizing && before->answers.rigs[0].sizing);
  EXPECT_GT(*after[1]->answers.rigs[0].sizing->toBoilWithin.power,
            *before->answers.rigs[0].sizing->toBoilWithin.power);
}

// What is remembered from plan to plan is what the new plan alone would give, to the last digit.
TEST(TheSolver, GivesTheSameAfterEditsAsAtOnce) {
  Solver solver;
  QSignalSpy solved(&solver, &Solver::solved);
  auto plan = std::make_shared<rigs::Plan>(*planWithBoil("60 min"));
  const auto change = [&](const std::function<void(rigs::Plan&)>& edit) {
    plan = std::make_shared<rigs::Plan>(*plan);
    edit(*plan);
    solver.solve(plan, static_cast<int>(solved.count()) + 1);
    ASSERT_TRUE(QTest::qWaitFor([&] { return solver.isIdle(); }, test_support::kPatience));
    QTest::qWait(20);
  };
  change([](rigs::Plan&) {});
  const auto stronger = [](rigs::Plan& edited) {
    for (rigs::RigPlan& rig : edited.rigs)
      for (physics::Rig* one : {&rig.rig, &rig.bare, &rig.jacketed})
        one->element.rating += physics::watts(90.0);
  };
  change(stronger);
  change([](rigs::Plan& edited) { edited.goals.boilWithin = physics::minutes(37.0); });
  change(stronger);
  const gui::SolutionPtr last = solutionsOf(solved).back();
  const gui::SolutionPtr afresh = gui::solveAtOnce(*plan);
  ASSERT_TRUE(last->done.covers(gui::kEverySearch));
  for (std::size_t i = 0; i < 4; ++i) {
    SCOPED_TRACE(i);
    const rigs::RigAnswer& mine = last->answers.rigs[i];
    const rigs::RigAnswer& other = afresh->answers.rigs[i];
    ASSERT_TRUE(mine.sizing && other.sizing);
    for (const auto which :
         {&rigs::SizingAnswer::toBoilAtAll, &rigs::SizingAnswer::toBoilWithin,
          &rigs::SizingAnswer::toStrikeWithin, &rigs::SizingAnswer::forBoilOff}) {
      EXPECT_EQ(((*mine.sizing).*which).power, ((*other.sizing).*which).power);
      EXPECT_EQ(((*mine.sizing).*which).onThisSupply, ((*other.sizing).*which).onThisSupply);
    }
    EXPECT_EQ(mine.sizing->asIs.delivered, other.sizing->asIs.delivered);
    EXPECT_EQ(mine.sizing->mostOnCircuit, other.sizing->mostOnCircuit);
    EXPECT_EQ(mine.sizing->largest.wort, other.sizing->largest.wort);
    EXPECT_EQ(mine.sizing->largestOnCircuit.wort, other.sizing->largestOnCircuit.wort);
    EXPECT_EQ(mine.whatWouldBoil.has_value(), other.whatWouldBoil.has_value());
    ASSERT_EQ(mine.circuit.readings.size(), other.circuit.readings.size());
    ASSERT_FALSE(mine.circuit.readings.empty());
    for (std::size_t k = 0; k < mine.circuit.readings.size(); ++k) {
      EXPECT_EQ(mine.circuit.readings[k].day, other.circuit.readings[k].day);
      EXPECT_EQ(mine.circuit.readings[k].fits, other.circuit.readings[k].fits);
    }
    ASSERT_EQ(last->sweeps[i].power.size(), afresh->sweeps[i].power.size());
    for (std::size_t k = 0; k < last->sweeps[i].power.size(); ++k)
      EXPECT_EQ(last->sweeps[i].power[k].toBoil, afresh->sweeps[i].power[k].toBoil);
  }
}

// Where the hour decides the price, another start is another saving.
TEST(TheSolver, PricesTheSavingsAnewWhenTheDayBeginsAtAnotherHour) {
  auto plan = std::make_shared<rigs::Plan>(*planWithBoil("60 min"));
  plan->rigs.resize(2);
  for (auto* windows : {&plan->tariff.weekday, &plan->tariff.weekend})
    *windows = {{physics::hours(0.0), physics::hours(14.0), 0.1},
                {physics::hours(14.0), physics::hours(24.0), 0.5}};
  Solver solver;
  QSignalSpy solved(&solver, &Solver::solved);
  for (const double hour : {6.0, 15.0}) {
    plan = std::make_shared<rigs::Plan>(*plan);
    plan->startOfDay = physics::hours(hour);
    solver.solve(plan, static_cast<int>(hour));
    ASSERT_TRUE(QTest::qWaitFor([&] { return solver.isIdle(); }, test_support::kPatience));
    QTest::qWait(20);
    const auto last = solutionsOf(solved).back();
    ASSERT_TRUE(last->done.covers(gui::kEverySearch));
    const auto afresh = gui::solveAtOnce(*plan);
    EXPECT_EQ(last->sweeps[1].thickness.back().savedMoney,
              afresh->sweeps[1].thickness.back().savedMoney);
    EXPECT_EQ(last->sweeps[1].jacketPower.back().bare.cost,
              afresh->sweeps[1].jacketPower.back().bare.cost);
  }
}

// Editing one rig leaves the others' curves alone; in another place they move.
TEST(TheSolver, KeepsTheCurvesOfRigsThatStayAsTheyAre) {
  Solver solver;
  QSignalSpy solved(&solver, &Solver::solved);
  const auto before = allOfTheDemo(solver, solved);
  ASSERT_TRUE(before);
  auto plan = std::make_shared<rigs::Plan>(before->plan);
  std::swap(plan->rigs[0], plan->rigs[1]);
  solved.clear();
  solver.solve(plan, 2);
  ASSERT_TRUE(QTest::qWaitFor([&] { return solved.count() > 0; }, test_support::kPatience));
  EXPECT_TRUE(
      solutionsOf(solved)[0]->done.covers(gui::kEverySearch));  // the same rigs, in another order
  EXPECT_EQ(solutionsOf(solved)[0]->sweeps[0].power[9].toBoil, before->sweeps[1].power[9].toBoil);
  ASSERT_TRUE(QTest::qWaitFor([&] { return solver.isIdle(); }, test_support::kPatience));
  solved.clear();
  plan = std::make_shared<rigs::Plan>(before->plan);
  plan->place.room = physics::celsius(5.0);
  solver.solve(plan, 3);
  ASSERT_TRUE(QTest::qWaitFor([&] { return solved.count() > 0; }, test_support::kPatience));
  EXPECT_EQ(solutionsOf(solved)[0]->done, gui::Searches{});
}

TEST(TheSolver, LetsTheNewestPlanWin) {
  Solver solver;
  QSignalSpy solved(&solver, &Solver::solved);
  for (int i = 1; i <= 30; ++i) solver.solve(planWithBoil(std::to_string(60 + i) + " min"), i);
  ASSERT_TRUE(QTest::qWaitFor([&] { return solver.isIdle(); }, test_support::kPatience));
  QTest::qWait(50);
  const auto all = solutionsOf(solved);
  ASSERT_FALSE(all.empty());
  EXPECT_EQ(all.back()->edition, 30);
  EXPECT_EQ(physics::inMinutes(all.back()->plan.batch.boil), 90.0);
  EXPECT_LT(all.size(), 10U);  // the ones between were dropped
  for (std::size_t i = 1; i < all.size(); ++i) EXPECT_GE(all[i]->edition, all[i - 1]->edition);
}

TEST(TheSolver, EndsWhileItIsComputing) {
  auto solver = std::make_unique<Solver>();
  solver->solve(planWithBoil("60 min"), 1);
  QTest::qWait(5);
  solver.reset();  // does not hang, does not call back
  QTest::qWait(20);
}

TEST(TheSolver, TellsWhatOnlyTheSimulationFinds) {
  rigs::Problems problems;
  auto plan =
      rigs::readPlan(rigs::withText(rigs::demoPlanText(), "/batch/wort", "38 L"), ".", problems);
  ASSERT_TRUE(plan.has_value());
  Solver solver;
  QSignalSpy solved(&solver, &Solver::solved);
  QSignalSpy checked(&solver, &Solver::checked);
  solver.solve(std::make_shared<const rigs::Plan>(std::move(*plan)), 3);
  ASSERT_TRUE(QTest::qWaitFor([&] { return checked.count() == 1 && solver.isIdle(); },
                              test_support::kPatience));
  EXPECT_TRUE(rigs::hasErrors(checked[0][0].value<rigs::Problems>()));
  EXPECT_EQ(checked[0][1].toInt(), 3);
  EXPECT_EQ(solved.count(), 0);
}

// Fails as a machine does that has run out of something, at one edition.
class FailingSolver : public Solver {
 public:
  std::function<void()> fails;
  int failsAt = 1;

 protected:
  void compute(const Job& job, rigs::Memory& memory) override {
    if (job.edition == failsAt) fails();
    Solver::compute(job, memory);
  }
};

TEST(TheSolver, TellsWhatTheMachineRanOutOfAndGoesOn) {
  const std::pair<std::function<void()>, const char*> cases[] = {
      {[] { throw std::bad_alloc(); }, "there was not enough memory for it"},
      {[] { throw std::system_error(EAGAIN, std::generic_category()); },
       "the system had no thread left for it"},
      {[] { throw std::domain_error("something else"); }, "something else"}};
  for (const auto& [fails, why] : cases) {
    FailingSolver solver;
    solver.fails = fails;
    QSignalSpy solved(&solver, &Solver::solved);
    QSignalSpy failed(&solver, &Solver::failed);
    solver.solve(planWithBoil("60 min"), 1);
    ASSERT_TRUE(QTest::qWaitFor([&] { return failed.count() == 1; }, test_support::kPatience));
    EXPECT_EQ(rigs::inEnglish(failed[0][0].value<rigs::Told>()), why);
    EXPECT_EQ(failed[0][1].toInt(), 1);
    EXPECT_EQ(solved.count(), 0);
    ASSERT_TRUE(QTest::qWaitFor([&] { return solver.isIdle(); }, test_support::kPatience));
    solver.solve(planWithBoil("61 min"), 2);
    ASSERT_TRUE(QTest::qWaitFor([&] { return solved.count() >= 1; }, test_support::kPatience));
    EXPECT_EQ(solutionsOf(solved).back()->edition, 2);
  }
}

// Of a machine whose last thread is taken; the limit is lifted before anything else needs memory.
TEST(TheSolver, TellsThatThereIsNoThreadToBeginWith) {
  rlimit before{};
  ::getrlimit(RLIMIT_AS, &before);
  std::ifstream status("/proc/self/statm");
  rlim_t pages = 0;
  status >> pages;
  rlimit tight = before;
  tight.rlim_cur = (pages + 256) * static_cast<rlim_t>(::sysconf(_SC_PAGESIZE));
  const auto plan = planWithBoil("60 min");
  std::promise<void> over;
  const std::shared_future<void> end = over.get_future().share();
  std::vector<std::thread> others;
  others.reserve(1000);
  ::setrlimit(RLIMIT_AS, &tight);
  try {
    while (others.size() < 1000) others.emplace_back([end] { end.wait(); });
  } catch (const std::system_error&) {  // as wanted
  }
  std::optional<Solver> solver(std::in_place);
  ::setrlimit(RLIMIT_AS, &before);
  ASSERT_LT(others.size(), 1000U);
  QSignalSpy failed(&*solver, &Solver::failed);
  QSignalSpy checked(&*solver, &Solver::checked);
  ::setrlimit(RLIMIT_AS, &tight);
  solver->solve(plan, 1);
  ::setrlimit(RLIMIT_AS, &before);
  ASSERT_TRUE(QTest::qWaitFor([&] { return failed.count() == 1; }, test_support::kPatience));
  EXPECT_EQ(failed[0][1].toInt(), 1);
  EXPECT_TRUE(solver->isIdle());
  solver->solve(plan, 2);  // there is one again
  EXPECT_TRUE(QTest::qWaitFor([&] { return checked.count() == 1; }, test_support::kPatience));
  over.set_value();
  for (std::thread& one : others) one.join();
}

class TheWindowWithoutAnAnswer : public test_support::WindowTest {};

TEST_F(TheWindowWithoutAnAnswer, SaysSoAndKeepsTheLastOne) {
  ASSERT_TRUE(settles());
  const auto before = window().page().newestSolution();
  auto* line = window().findChild<QLabel*>(QStringLiteral("stale"));
  ASSERT_TRUE(line);
  EXPECT_TRUE(line->isHidden());
  Q_EMIT window().solver().failed(rigs::Told::just(rigs::Verbatim{"no memory"}),
                                  document().edition());
  EXPECT_FALSE(line->isHidden());
  EXPECT_TRUE(line->text().contains(QStringLiteral("was not computed: no memory")));
  EXPECT_EQ(window().page().newestSolution(), before);
  type("/batch/boil", "75 min");
  EXPECT_TRUE(line->isHidden());
  ASSERT_TRUE(settles());
}

}  // namespace
