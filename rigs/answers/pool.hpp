// SPDX-License-Identifier: GPL-3.0-or-later
// The one pool of threads: as many as there are cores, whoever asks and however loops nest.
#pragma once

#include <condition_variable>
#include <cstddef>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>
#include <type_traits>
#include <utility>
#include <vector>

namespace rigs {

class Pool {
 public:
  // Threads that help those who call: so many, or as many as the system grants.
  explicit Pool(std::size_t helpers);
  ~Pool();  // no loop is running any more
  Pool(const Pool&) = delete;
  Pool& operator=(const Pool&) = delete;

  // `task(i)` for every i below `count`, in no order, on the calling thread and on those that are
  // free; returns when all are done. Tasks may call this again. What a task throws reaches the
  // caller, of several the one with the least i; those not yet begun are then left out.
  void forEach(std::size_t count, const std::function<void(std::size_t)>& task);

 private:
  struct Loop;
  void help();
  bool doOneOf(Loop* loop, std::unique_lock<std::mutex>& lock);
  Loop* openWithin(const Loop* outer) const;

  std::mutex mutex_;
  std::condition_variable changed_;
  std::vector<Loop*> open_;  // innermost last: what others wait for is done first
  bool ending_ = false;
  std::vector<std::thread> helpers_;
};

// With the caller a thread for each core; begun on first use.
Pool& pool();

// What `make(i)` gives for every i below `count`, in this order however the threads go.
template <class Make>
auto forAll(std::size_t count, const Make& make) {
  using Made = std::decay_t<decltype(make(std::size_t{0}))>;
  std::vector<std::optional<Made>> made(count);
  pool().forEach(count, [&](std::size_t i) { made[i].emplace(make(i)); });
  std::vector<Made> all;
  all.reserve(count);
  for (auto& one : made) all.push_back(std::move(*one));
  return all;
}

}  // namespace rigs
