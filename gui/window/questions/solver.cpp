// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/solver.hpp"

#include <QMetaObject>
#include <chrono>
#include <utility>

#include "rigs/answers/search.hpp"

#include "rigs/answers/plan_check.hpp"

namespace gui {
namespace {

// The hand rests: time for what nobody looks at yet.
constexpr std::chrono::milliseconds kPause{120};

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

void Solver::lookAt(const Searches& needed) {
  const std::lock_guard lock(mutex_);
  lookedAt_ = needed;
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
  rigs::Memory memory;
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
    compute(job, memory);
  }
}

void Solver::show(rigs::Solution&& now, int edition) {
  now.edition = edition;
  QMetaObject::invokeMethod(this,
                            [this, solution = std::make_shared<const Solution>(std::move(now))] {
                              if (solution->edition < shown_) return;
                              shown_ = solution->edition;
                              Q_EMIT solved(solution);
                            });
}

void Solver::compute(const Job& job, rigs::Memory& memory) {
  rigs::Search search(*job.plan, memory);
  const rigs::Problems& problems = search.problems();
  QMetaObject::invokeMethod(
      this, [this, problems, edition = job.edition] { Q_EMIT checked(problems, edition); });
  if (rigs::hasErrors(problems)) return;

  // An outdated plan's days and what is looked at are still finished and shown: during a drag
  // something newer always waits, and the picture would stand still.
  search.addDays();
  show(search.solution(), job.edition);
  Searches lookedAt;
  {
    const std::lock_guard lock(mutex_);
    lookedAt = lookedAt_;
  }
  if (!search.done().covers(lookedAt)) {
    search.add(lookedAt);
    show(search.solution(), job.edition);
  }
  if (search.done() == kEverySearch) return;
  // A search is not left half-way: under a dragging hand the next plan would wait for it.
  {
    std::unique_lock lock(mutex_);
    if (wake_.wait_for(lock, kPause, [this] { return ending_ || waiting_.has_value(); })) return;
  }
  for (const Searches& one : rigs::kSearchesInTurn) {
    if (!search.done().covers(one) && !search.add(one, [this] { return isOutdated(); })) return;
  }
  show(search.solution(), job.edition);
}

SolutionPtr solveAtOnce(const rigs::Plan& plan) {
  return std::make_shared<const Solution>(rigs::solve(plan, kEverySearch));
}

}  // namespace gui
