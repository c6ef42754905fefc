// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/pool.hpp"

#include <algorithm>
#include <exception>
#include <new>
#include <system_error>
#include <utility>

namespace rigs {

struct Pool::Loop {
  const std::function<void(std::size_t)>& task;
  std::size_t count;
  const Loop* outer;  // whose task began this one; outlives it
  std::size_t next = 0;
  std::size_t running = 0;
  std::size_t failedAt = 0;  // meaningful where `failure` is
  std::exception_ptr failure = {};

  bool isOpen() const { return next < count; }
};

namespace {

// Of the task that this thread is at: a loop that it begins lies within.
thread_local const void* currentLoop = nullptr;

}  // namespace

Pool::Pool(std::size_t helpers) {
  // With fewer threads than cores everything takes longer and comes to the same; and those that
  // were begun must be ended by the destructor, which only runs when nothing leaves here.
  try {
    helpers_.reserve(helpers);
    while (helpers_.size() < helpers) helpers_.emplace_back([this] { help(); });
  } catch (const std::system_error&) {
    return;
  } catch (const std::bad_alloc&) {
    return;
  }
}

Pool::~Pool() {
  {
    const std::lock_guard lock(mutex_);
    ending_ = true;
  }
  changed_.notify_all();
  for (std::thread& one : helpers_) one.join();
}

void Pool::help() {
  std::unique_lock lock(mutex_);
  for (;;) {
    changed_.wait(lock, [this] { return ending_ || openWithin(nullptr); });
    if (ending_) return;
    doOneOf(openWithin(nullptr), lock);
  }
}

// The innermost loop that has tasks left and lies within `outer`; of all, if there is none.
Pool::Loop* Pool::openWithin(const Loop* outer) const {
  for (auto loop = open_.rbegin(); loop != open_.rend(); ++loop) {
    if (!(*loop)->isOpen()) continue;
    const Loop* around = *loop;
    while (around && around != outer) around = around->outer;
    if (around == outer) return *loop;
  }
  return nullptr;
}

bool Pool::doOneOf(Loop* loop, std::unique_lock<std::mutex>& lock) {
  if (!loop) return false;
  const std::size_t i = loop->next++;
  ++loop->running;
  lock.unlock();
  const void* before = std::exchange(currentLoop, loop);
  std::exception_ptr failure;
  try {
    loop->task(i);
  } catch (...) {
    failure = std::current_exception();
  }
  currentLoop = before;
  lock.lock();
  if (failure) {
    // Tasks are begun in order, so that whichever fails first in time, the least is among these.
    if (!loop->failure || i < loop->failedAt) {
      loop->failure = failure;
      loop->failedAt = i;
    }
    loop->next = loop->count;
  }
  --loop->running;
  if (loop->running == 0 && !loop->isOpen()) changed_.notify_all();
  return true;
}

void Pool::forEach(std::size_t count, const std::function<void(std::size_t)>& task) {
  if (count == 0) return;
  if (count == 1) return task(0);
  Loop loop{.task = task, .count = count, .outer = static_cast<const Loop*>(currentLoop)};
  std::unique_lock lock(mutex_);
  open_.push_back(&loop);
  changed_.notify_all();
  while (loop.isOpen()) doOneOf(&loop, lock);
  // Others are at the last tasks: help with what these wait for, and with nothing else, which
  // could take longer than they do.
  while (loop.running > 0) {
    if (doOneOf(openWithin(&loop), lock)) continue;
    changed_.wait(lock, [&] { return loop.running == 0 || openWithin(&loop); });
  }
  open_.erase(std::find(open_.begin(), open_.end(), &loop));
  lock.unlock();
  if (loop.failure) std::rethrow_exception(loop.failure);
}

Pool& pool() {
  static Pool one(std::max(1U, std::thread::hardware_concurrency()) - 1);
  return one;
}

}  // namespace rigs
