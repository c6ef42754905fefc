// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/readings/readings_work.hpp"

#include <QMetaObject>
#include <utility>

#include "gui/window/questions/solver.hpp"
#include "rigs/answers/answers.hpp"
#include "rigs/answers/kept.hpp"
#include "rigs/answers/read_setting.hpp"

namespace gui {
namespace {

using rigs::Told;

// False where `stop` said so before anything was found.
bool find(ReadingsFound& found, const std::function<bool()>& stop) {
  const std::size_t rig = found.of.rig;
  rigs::Plan plan = rigs::begunToBeRead(*found.of.plan, rig, found.problems);
  rigs::tellWhereCountedTwice(plan, rig, found.of.text, {}, found.problems);
  found.read = rigs::readings::readLines(found.of.text, rigs::settingOf(plan, rig, {}),
                                         found.of.corrections, found.problems);
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

void ReadingsWork::learn(ReadingsJob job) {
  if (!beginThread(worker_, [this] { work(); })) {
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
