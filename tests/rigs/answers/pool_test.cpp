// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/pool.hpp"

#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <atomic>
#include <chrono>
#include <fstream>
#include <numeric>
#include <stdexcept>
#include <string>
#include <thread>

namespace rigs {
namespace {

// One core, two, and more than this machine may have.
const std::vector<std::size_t> kHelpers{0, 1, 7};

TEST(ThePool, DoesEveryTaskOnce) {
  for (const std::size_t helpers : kHelpers) {
    Pool pool(helpers);
    std::vector<std::atomic<int>> times(1000);
    pool.forEach(times.size(), [&](std::size_t i) { ++times[i]; });
    for (const auto& one : times) EXPECT_EQ(one, 1);
    pool.forEach(0, [](std::size_t) { FAIL(); });
  }
}

TEST(ThePool, OfOneCoreWorksOnTheCallersThread) {
  Pool pool(0);
  const auto caller = std::this_thread::get_id();
  std::vector<std::size_t> order;
  pool.forEach(5, [&](std::size_t i) {
    EXPECT_EQ(std::this_thread::get_id(), caller);
    order.push_back(i);
  });
  EXPECT_EQ(order, (std::vector<std::size_t>{0, 1, 2, 3, 4}));
}

TEST(ThePool, GivesResultsInTheirOrder) {
  const auto squares = forAll(200, [](std::size_t i) { return i * i; });
  ASSERT_EQ(squares.size(), 200U);
  for (std::size_t i = 0; i < squares.size(); ++i) EXPECT_EQ(squares[i], i * i);
}

// Threads at work, the caller's among them: never more than a core has each.
TEST(ThePool, RunsNoMoreThreadsThanCoresHoweverLoopsNest) {
  Pool pool(2);
  std::atomic<int> working = 0, most = 0;
  pool.forEach(6, [&](std::size_t) {
    pool.forEach(6, [&](std::size_t) {
      const int now = ++working;
      for (int before = most; before < now && !most.compare_exchange_weak(before, now);) {
      }
      std::this_thread::sleep_for(std::chrono::milliseconds(2));
      --working;
    });
  });
  EXPECT_LE(most, 3);
  EXPECT_GE(most, 2);
}

TEST(ThePool, DoesNotDeadlockWhereLoopsNest) {
  for (const std::size_t helpers : kHelpers) {
    Pool pool(helpers);
    std::atomic<int> done = 0;
    pool.forEach(9, [&](std::size_t) {
      pool.forEach(7, [&](std::size_t) { pool.forEach(5, [&](std::size_t) { ++done; }); });
    });
    EXPECT_EQ(done, 9 * 7 * 5);
  }
}

TEST(ThePool, ServesSeveralCallersAtOnce) {
  Pool pool(1);
  std::vector<long> sums(4);
  std::vector<std::thread> callers;
  for (std::size_t c = 0; c < sums.size(); ++c) {
    callers.emplace_back([&pool, &sums, c] {
      std::vector<long> parts(300);
      pool.forEach(parts.size(), [&](std::size_t i) { parts[i] = static_cast<long>(i * (c + 1)); });
      sums[c] = std::accumulate(parts.begin(), parts.end(), 0L);
    });
  }
  for (std::thread& one : callers) one.join();
  for (std::size_t c = 0; c < sums.size(); ++c)
    EXPECT_EQ(sums[c], 44850L * static_cast<long>(c + 1));
}

std::string whatIsThrown(Pool& pool, std::size_t count,
                         const std::function<void(std::size_t)>& task) {
  try {
    pool.forEach(count, task);
  } catch (const std::runtime_error& error) {
    return error.what();
  }
  return "nothing";
}

// Whichever comes first in time.
TEST(ThePool, LetsTheCallerHaveTheFirstExceptionInOrder) {
  for (const std::size_t helpers : kHelpers) {
    Pool pool(helpers);
    for (int round = 0; round < 20; ++round) {
      std::atomic<int> begun = 0;
      EXPECT_EQ(whatIsThrown(pool, 40,
                             [&](std::size_t i) {
                               ++begun;
                               if (i == 11)
                                 std::this_thread::sleep_for(std::chrono::microseconds(200));
                               if (i >= 11) throw std::runtime_error(std::to_string(i));
                             }),
                "11");
      EXPECT_LT(begun, 40);
    }
    // It works on as before.
    std::atomic<int> done = 0;
    pool.forEach(50, [&](std::size_t) { ++done; });
    EXPECT_EQ(done, 50);
  }
}

TEST(ThePool, WaitsForTasksThatAreRunningBeforeItThrows) {
  Pool pool(3);
  std::atomic<int> begun = 0, ended = 0;
  EXPECT_EQ(whatIsThrown(pool, 100,
                         [&](std::size_t i) {
                           ++begun;
                           if (i == 0) {
                             ++ended;
                             throw std::runtime_error("at once");
                           }
                           std::this_thread::sleep_for(std::chrono::milliseconds(1));
                           ++ended;
                         }),
            "at once");
  EXPECT_EQ(begun, ended);
  EXPECT_LT(begun, 100);  // what was not begun is left out
}

TEST(ThePool, LetsAnExceptionThroughNestedLoops) {
  for (const std::size_t helpers : kHelpers) {
    Pool pool(helpers);
    EXPECT_EQ(whatIsThrown(pool, 4,
                           [&](std::size_t i) {
                             pool.forEach(4, [&](std::size_t k) {
                               if (i == 2 && k == 3) throw std::runtime_error("within");
                             });
                           }),
              "within");
  }
}

// A machine that has no thread left: in a process of its own, whose memory ends before the stacks
// of so many do.
TEST(ThePool, WorksWithTheThreadsThereAre) {
  const pid_t child = ::fork();
  if (child == 0) {
    const rlimit none{.rlim_cur = 0, .rlim_max = 0};
    ::setrlimit(RLIMIT_CORE, &none);
    std::ifstream status("/proc/self/statm");
    rlim_t pages = 0;
    status >> pages;
    const rlim_t most = pages * static_cast<rlim_t>(::sysconf(_SC_PAGESIZE)) + (rlim_t{64} << 20);
    const rlimit tight{.rlim_cur = most, .rlim_max = most};
    ::setrlimit(RLIMIT_AS, &tight);
    try {
      Pool pool(500);
      std::atomic<int> done = 0;
      pool.forEach(1000, [&](std::size_t) { ++done; });
      ::_exit(done == 1000 ? 0 : 1);
    } catch (...) {
      ::_exit(2);
    }
  }
  int status = 0;
  ::waitpid(child, &status, 0);
  ASSERT_TRUE(WIFEXITED(status)) << "ended by signal " << WTERMSIG(status);
  EXPECT_EQ(WEXITSTATUS(status), 0);
}

}  // namespace
}  // namespace rigs
