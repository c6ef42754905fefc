// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/readings/readings_work.hpp"

#include <QMetaObject>
#include <system_error>
#include <utility>

#include "gui/window/questions/solver.hpp"
#include "rigs/answers/answers.hpp"
#include "rigs/answers/begins.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/readings/readings_reader.hpp"

namespace gui {
namespace {

using rigs::Told;

// The plan as this rig's day of it began. With a problem where that day is solved backwards and
// has no beginning.
rigs::Plan begun(const rigs::Plan& plan, std::size_t rig, rigs::Problems& problems) {
  rigs::Plan own = rigs::asBegun(plan, rig);
  if (!plan.ready) return own;
  if (const auto start = own.start()) {
    own.startOfDay = rigs::clockOfDay(*start);
  } else {
    problems.push_back({rigs::Severity::Error, "/ready",
                        Told(TOLD("Terminal",
                                  "%1 never comes to what is to be ready, so nobody knows when the "
                                  "day of these readings began"),
                             rigs::Quoted{plan.rigs[rig].name})});
  }
  return own;
}

// False where `stop` said so before anything was found.
bool find(ReadingsFound& found, const std::function<bool()>& stop) {
  const std::size_t rig = found.of.rig;
  rigs::Plan plan = begun(*found.of.plan, rig, found.problems);
  found.read =
      rigs::readings::readLines(found.of.text, rigs::settingOf(plan, rig, {}),
                                {.leaveOutBadRows = found.of.leaveOutBadRows}, found.problems);
  if (rigs::hasErrors(found.problems)) return true;
  found.solution = rigs::Solution{.plan = std::move(plan), .answers = {}, .sweeps = {}, .done = {}};
  found.solution->answers = rigs::answer(found.solution->plan, rigs::Depth::Day);
  const auto planned = rigs::plannedCourses(found.solution->plan, rig, stop);
  if (!planned) return false;
  found.learned = rigs::learnedFrom(found.solution->plan, rig, found.read.readings,
                                    found.of.thermometer, stop, {.courses = true});
  if (!found.learned) return false;
  found.course =
      rigs::readCourse(found.solution->plan, *planned, found.read.readings, *found.learned);
  return true;
}

}  // namespace

ReadingsWork::ReadingsWork(QObject* parent) : QObject(parent) {
  qRegisterMetaType<ReadingsFoundPtr>("gui::ReadingsFoundPtr");
}

ReadingsWork::~ReadingsWork() {
  {
    const std::lock_guard lock(mutex_);
    ending_ = true;
    stop_ = true;
  }
  wake_.notify_all();
  if (worker_.joinable()) worker_.join();
}

// False without a thread to be had; what is asked next tries again.
bool ReadingsWork::beginWork() {
  if (worker_.joinable()) return true;
  try {
    worker_ = std::thread([this] { work(); });
  } catch (const std::system_error&) {
    return false;
  }
  return true;
}

void ReadingsWork::learn(ReadingsJob job) {
  if (!beginWork()) {
    tell({.of = std::move(job),
          .problems = {},
          .failed = Told(TOLD("gui::Solver", "the system had no thread left for it"))});
    return;
  }
  {
    const std::lock_guard lock(mutex_);
    waiting_ = std::move(job);
    stop_ = true;
  }
  wake_.notify_all();
}

bool ReadingsWork::isIdle() const {
  const std::lock_guard lock(mutex_);
  return !busy_ && !waiting_;
}

void ReadingsWork::tell(ReadingsFound found) {
  QMetaObject::invokeMethod(
      this,
      [this, told = std::make_shared<const ReadingsFound>(std::move(found))] {
        Q_EMIT this->found(told);
      },
      Qt::QueuedConnection);
}

void ReadingsWork::work() {
  for (;;) {
    ReadingsFound found;
    {
      std::unique_lock lock(mutex_);
      busy_ = false;
      wake_.wait(lock, [this] { return ending_ || waiting_.has_value(); });
      if (ending_) return;
      found.of = std::move(*waiting_);
      waiting_.reset();
      stop_ = false;
      busy_ = true;
    }
    // Nothing may leave a thread: that would end the program, and the plan with it.
    try {
      if (find(found, [this] { return stop_.load(); })) tell(std::move(found));
    } catch (...) {
      tell({.of = std::move(found.of),
            .problems = {},
            .failed = whatWentWrong(std::current_exception())});
    }
  }
}

}  // namespace gui
