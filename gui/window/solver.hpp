// SPDX-License-Identifier: GPL-3.0-or-later
// Computes what the window shows, off the interface thread. The newest plan wins: an older one is
// dropped as soon as its day is done, its sweeps between two rigs.
#pragma once

#include <QObject>
#include <condition_variable>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

#include "gui/window/solution.hpp"

namespace gui {

class Solver : public QObject {
  Q_OBJECT

 public:
  explicit Solver(QObject* parent = nullptr);
  ~Solver() override;

  // Replaces what waits. Editions grow.
  void solve(std::shared_ptr<const rigs::Plan> plan, int edition);
  bool isIdle() const;

 Q_SIGNALS:
  // On the interface thread, never older than the last one. First without sweeps, then with.
  void solved(gui::SolutionPtr solution);
  // Contradictions that only the simulation finds; with errors there is no solution.
  void checked(rigs::Problems problems, int edition);
  void busyChanged(bool busy);

 private:
  struct Job {
    std::shared_ptr<const rigs::Plan> plan;
    int edition = 0;
  };
  void work();
  bool isOutdated();
  void compute(const Job& job);

  mutable std::mutex mutex_;
  std::condition_variable wake_;
  std::optional<Job> waiting_;
  bool busy_ = false;
  bool ending_ = false;
  int shown_ = 0;  // interface thread only
  std::thread worker_;
};

// The same for commands, which may wait. The plan has been checked.
SolutionPtr solveAtOnce(const rigs::Plan& plan);

}  // namespace gui

Q_DECLARE_METATYPE(gui::SolutionPtr)
Q_DECLARE_METATYPE(rigs::Problems)
