// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/solver.hpp"

#include <QMetaObject>
#include <algorithm>
#include <future>
#include <utility>
#include <vector>

namespace gui {
namespace {

using namespace physics;

// Points on a curve that is smooth; a picture draws straight lines between them.
constexpr int kPowers = 33;
constexpr int kThicknesses = 17;
constexpr int kJacketPowers = 17;

rigs::Plan onlyRig(const rigs::Plan& plan, std::size_t index) {
  rigs::Plan one = plan;
  one.rigs = {plan.rigs[index]};
  return one;
}

// From what warms a mash to what a large single-phase circuit carries; the same for all rigs, so
// that their curves share one axis.
struct Powers {
  Power weakest, strongest;
};
Powers powersOf(const rigs::Plan& plan) {
  Powers powers{watts(500.0), watts(6000.0)};
  for (const rigs::RigPlan& rig : plan.rigs) {
    powers.weakest = std::min(powers.weakest, 0.5 * rig.rig.element.rating);
    powers.strongest = std::max(powers.strongest, 1.5 * rig.rig.element.rating);
  }
  return powers;
}

Length thickestOf(const rigs::Plan& plan) {
  Length thickest = millimetres(50.0);
  for (const rigs::RigPlan& rig : plan.rigs) {
    Length sum = metres(0.0);
    for (const Layer& layer : rig.jacketed.vessel.side.insulation) sum += layer.thickness;
    thickest = std::max(thickest, 1.25 * sum);
  }
  return thickest;
}

RigSweeps sweepsOf(const rigs::Plan& plan, std::size_t index) {
  const rigs::RigPlan& rig = plan.rigs[index];
  const Powers powers = powersOf(plan);
  RigSweeps sweeps;
  sweeps.power = rigs::againstPower(rig, plan, powers.weakest, powers.strongest, kPowers);
  if (!rig.jacketIsCompared) return sweeps;
  sweeps.thickness = rigs::againstThickness(rig, plan, thickestOf(plan), kThicknesses);
  sweeps.jacketPower =
      rigs::jacketAgainstPower(rig, plan, powers.weakest, powers.strongest, kJacketPowers);
  sweeps.cooling = rigs::leftAlone(rig, plan, std::max(plan.goals.unplugged, hours(4.0)));
  return sweeps;
}

// `make(i)` for every rig, a few at a time. Empty if `stop` said so on the way.
template <class Make, class Stop>
auto forEachRig(std::size_t count, Make make, Stop stop) {
  std::vector<decltype(make(std::size_t{0}))> all;
  const std::size_t atOnce = std::max(1U, std::thread::hardware_concurrency());
  for (std::size_t first = 0; first < count; first += atOnce) {
    if (stop()) return decltype(all){};
    std::vector<std::future<decltype(make(std::size_t{0}))>> running;
    for (std::size_t i = first; i < std::min(count, first + atOnce); ++i)
      running.push_back(std::async(std::launch::async, make, i));
    for (auto& one : running) all.push_back(one.get());
  }
  return all;
}

}  // namespace

Solver::Solver(QObject* parent) : QObject(parent) {
  qRegisterMetaType<SolutionPtr>("gui::SolutionPtr");
  qRegisterMetaType<rigs::Problems>("rigs::Problems");
  worker_ = std::thread([this] { work(); });
}

Solver::~Solver() {
  {
    const std::lock_guard lock(mutex_);
    ending_ = true;
  }
  wake_.notify_all();
  worker_.join();
}

void Solver::solve(std::shared_ptr<const rigs::Plan> plan, int edition) {
  {
    const std::lock_guard lock(mutex_);
    waiting_ = Job{std::move(plan), edition};
  }
  wake_.notify_all();
  Q_EMIT busyChanged(true);
}

bool Solver::isIdle() const {
  const std::lock_guard lock(mutex_);
  return !busy_ && !waiting_;
}

bool Solver::isOutdated() {
  const std::lock_guard lock(mutex_);
  return ending_ || waiting_.has_value();
}

void Solver::work() {
  for (;;) {
    Job job;
    {
      std::unique_lock lock(mutex_);
      busy_ = false;
      if (!waiting_ && !ending_)
        QMetaObject::invokeMethod(this, [this] { Q_EMIT busyChanged(!isIdle()); });
      wake_.wait(lock, [this] { return ending_ || waiting_.has_value(); });
      if (ending_) return;
      job = std::move(*waiting_);
      waiting_.reset();
      busy_ = true;
    }
    compute(job);
  }
}

void Solver::compute(const Job& job) {
  const rigs::Plan& plan = *job.plan;
  const auto show = [this](std::shared_ptr<const Solution> solution) {
    QMetaObject::invokeMethod(this, [this, solution = std::move(solution)] {
      if (solution->edition < shown_) return;
      shown_ = solution->edition;
      Q_EMIT solved(solution);
    });
  };
  rigs::Problems problems;
  rigs::checkPlan(plan, problems);
  const bool wrong = rigs::hasErrors(problems);
  QMetaObject::invokeMethod(this, [this, problems = std::move(problems), edition = job.edition] {
    Q_EMIT checked(problems, edition);
  });
  if (wrong) return;

  // The day of an outdated plan is still finished and shown: during a drag something newer always
  // waits, and the picture would stand still.
  const auto solve = [&plan](rigs::Depth depth) {
    return [&plan, depth](std::size_t i) {
      return rigs::answer(onlyRig(plan, i), depth, true).rigs.front();
    };
  };
  Solution days{.plan = plan, .answers = {}, .sweeps = {}, .edition = job.edition};
  days.answers.rigs =
      forEachRig(plan.rigs.size(), solve(rigs::Depth::DayAndJacket), [] { return false; });
  show(std::make_shared<const Solution>(days));

  const auto stop = [this] { return isOutdated(); };
  Solution whole = std::move(days);
  whole.answers.rigs = forEachRig(plan.rigs.size(), solve(rigs::Depth::Everything), stop);
  if (whole.answers.rigs.empty()) return;
  whole.sweeps = forEachRig(
      plan.rigs.size(), [&plan](std::size_t i) { return sweepsOf(plan, i); }, stop);
  if (whole.sweeps.empty()) return;
  show(std::make_shared<const Solution>(std::move(whole)));
}

SolutionPtr solveAtOnce(const rigs::Plan& plan) {
  const auto never = [] { return false; };
  Solution whole{.plan = plan, .answers = {}, .sweeps = {}, .edition = 0};
  whole.answers.rigs = forEachRig(
      plan.rigs.size(),
      [&plan](std::size_t i) {
        return rigs::answer(onlyRig(plan, i), rigs::Depth::Everything, true).rigs.front();
      },
      never);
  whole.sweeps = forEachRig(
      plan.rigs.size(), [&plan](std::size_t i) { return sweepsOf(plan, i); }, never);
  return std::make_shared<const Solution>(std::move(whole));
}

}  // namespace gui
