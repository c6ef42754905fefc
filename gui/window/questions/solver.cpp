// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/solver.hpp"

#include <QMetaObject>
#include <chrono>
#include <cstdint>
#include <exception>
#include <new>
#include <system_error>
#include <utility>

#include "rigs/answers/search.hpp"

#include "rigs/answers/plan_check.hpp"

namespace gui {
namespace {

// The hand rests: time for what nobody looks at yet.
constexpr std::chrono::milliseconds kPause{120};
constexpr std::chrono::milliseconds kBetweenSteps{100};  // of a progress bar

}  // namespace

rigs::Told whatWentWrong(const std::exception_ptr& error) {
  try {
    std::rethrow_exception(error);
  } catch (const std::bad_alloc&) {
    return rigs::Told(TOLD("gui::Solver", "there was not enough memory for it"));
  } catch (const std::system_error&) {
    return rigs::Told(TOLD("gui::Solver", "the system had no thread left for it"));
  } catch (const std::exception& other) {
    return rigs::Told::just(rigs::Verbatim{other.what()});
  }
}

bool beginThread(std::thread& thread, std::function<void()> work) {
  if (thread.joinable()) return true;
  try {
    thread = std::thread(std::move(work));
  } catch (const std::system_error&) {
    return false;
  }
  return true;
}

Solver::Solver(QObject* parent) : QObject(parent) {
  qRegisterMetaType<SolutionPtr>("gui::SolutionPtr");
  qRegisterMetaType<rigs::Problems>("rigs::Problems");
  beginWork();
}

bool Solver::beginWork() {
  return beginThread(worker_, [this] { work(); });
}

Solver::~Solver() {
  {
    const std::lock_guard lock(mutex_);
    ending_ = true;
  }
  wake_.notify_all();
  if (worker_.joinable()) worker_.join();
}

void Solver::tell(const rigs::Told& why, int edition) {
  QMetaObject::invokeMethod(
      this, [this, why, edition] { Q_EMIT failed(why, edition); }, Qt::QueuedConnection);
}

void Solver::solve(std::shared_ptr<const rigs::Plan> plan, int edition) {
  if (!beginWork()) {
    tell(rigs::Told(TOLD("gui::Solver", "the system had no thread left for it")), edition);
    return;
  }
  {
    const std::lock_guard lock(mutex_);
    waiting_ = last_ = Job{std::move(plan), edition};
  }
  wake_.notify_all();
  Q_EMIT busyChanged(true);
}

void Solver::lookAt(const Searches& needed) {
  {
    const std::lock_guard lock(mutex_);
    const bool begins =
        last_.plan && ((needed.helps && !lookedAt_.helps) || (needed.sure && !lookedAt_.sure));
    lookedAt_ = needed;
    if (!begins || waiting_ || !worker_.joinable()) return;
    waiting_ = last_;  // all else of it is remembered
  }
  wake_.notify_all();
  Q_EMIT busyChanged(true);
}

void Solver::endSearch() { enough_ = true; }

bool Solver::isIdle() const {
  const std::lock_guard lock(mutex_);
  return !busy_ && !waiting_;
}

bool Solver::isOutdated() {
  const std::lock_guard lock(mutex_);
  return ending_ || waiting_.has_value();
}

void Solver::work() {
  auto memory = std::make_unique<rigs::Memory>();
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
    // Nothing may leave a thread: that would end the program, and the plan with it.
    try {
      compute(job, *memory);
    } catch (...) {
      tell(whatWentWrong(std::current_exception()), job.edition);
      memory = std::make_unique<rigs::Memory>();  // the old one may hold half of something
    }
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
  const bool helps = std::exchange(lookedAt.helps, false);
  const bool sure = std::exchange(lookedAt.sure, false);
  lookedAt.bands = false;
  if (!search.done().covers(lookedAt)) {
    search.add(lookedAt);
    show(search.solution(), job.edition);
  }
  if (helps) addWhatHelps(search, job);
  if (sure) addUnlessOutdated(search, {.bands = true, .sure = true}, job);
  Searches all = kEverySearch;
  all.bands = true;
  if (search.done().covers(all)) return;
  // A search is not left half-way: under a dragging hand the next plan would wait for it.
  {
    std::unique_lock lock(mutex_);
    if (wake_.wait_for(lock, kPause, [this] { return ending_ || waiting_.has_value(); })) return;
  }
  for (const Searches& one : rigs::kSearchesInTurn) {
    if (!search.done().covers(one) && !search.add(one, [this] { return isOutdated(); })) return;
  }
  show(search.solution(), job.edition);
  addUnlessOutdated(search, {.bands = true}, job);
}

void Solver::addUnlessOutdated(rigs::Search& search, const Searches& wanted, const Job& job) {
  if (search.done().covers(wanted)) return;
  if (search.add(wanted, [this] { return isOutdated(); })) show(search.solution(), job.edition);
}

// Left as soon as another plan waits: it takes too long for a dragging hand.
void Solver::addWhatHelps(rigs::Search& search, const Job& job) {
  if (search.done().helps) return;
  enough_ = false;
  auto next = std::chrono::steady_clock::now();
  const rigs::Watched helping{.stop = [this] { return enough_.load(); },
                              .progress =
                                  [this, &next](std::uint64_t done, std::uint64_t of) {
                                    const auto now = std::chrono::steady_clock::now();
                                    if (done > 0 && done < of && now < next) return;
                                    next = now + kBetweenSteps;
                                    QMetaObject::invokeMethod(
                                        this, [this, done, of] { Q_EMIT searching(done, of); });
                                  }};
  const bool found = search.add(
      {.helps = true}, [this] { return isOutdated(); }, helping);
  QMetaObject::invokeMethod(this, [this] { Q_EMIT searched(); });
  if (found) show(search.solution(), job.edition);
}

SolutionPtr withWhatHelps(const SolutionPtr& solution, std::size_t together,
                          std::optional<std::size_t> rig) {
  rigs::Solution more = *solution;
  for (std::size_t i = 0; i < more.answers.rigs.size(); ++i) {
    auto& helps = more.answers.rigs[i].helps;
    if (!helps && (!rig || *rig == i))
      helps = std::make_shared<const rigs::HelpsAnswer>(rigs::helps(more.plan, i, together));
  }
  return std::make_shared<const Solution>(std::move(more));
}

SolutionPtr withHowSure(const SolutionPtr& solution) {
  rigs::Solution more = *solution;
  rigs::addHowSure(more);
  return std::make_shared<const Solution>(std::move(more));
}

SolutionPtr solveAtOnce(const rigs::Plan& plan) {
  return std::make_shared<const Solution>(rigs::solve(plan, kEverySearch));
}

}  // namespace gui
