// SPDX-License-Identifier: GPL-3.0-or-later
// Computes what the window shows, off the interface thread. The newest plan wins: of an older one
// only its days and what is looked at are still finished, so that a picture under a dragging hand
// moves. What a change leaves as it was is not computed again.
#pragma once

#include <QObject>
#include <atomic>
#include <condition_variable>
#include <exception>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

#include "rigs/answers/search.hpp"
#include "rigs/answers/solution.hpp"

namespace gui {

using rigs::both;
using rigs::kEverySearch;
using rigs::RigSweeps;
using rigs::Searches;
using rigs::Solution;
using rigs::SolutionPtr;

class Solver : public QObject {
  Q_OBJECT

 public:
  explicit Solver(QObject* parent = nullptr);
  ~Solver() override;

  // Replaces what waits. Editions grow.
  void solve(std::shared_ptr<const rigs::Plan> plan, int edition);
  // What the picture that is looked at needs; it comes before everything else. What helps most, and
  // what makes figures unsure, is searched for only while that is looked at.
  void lookAt(const Searches& needed);
  // Of a search for what helps most: what was found by now is shown, marked as part.
  void endSearch();
  bool isIdle() const;

 Q_SIGNALS:
  // On the interface thread: there will be no solution of this plan, for want of memory or of a
  // thread. What was shown before still holds for its own plan, and the next plan is tried anew.
  void failed(const rigs::Told& why, int edition);
  // On the interface thread, never older than the last one. First without the searches that are
  // not known yet, then with those that are looked at, then with all.
  void solved(gui::SolutionPtr solution);
  // Contradictions that only the simulation finds; with errors there is no solution.
  void checked(rigs::Problems problems, int edition);
  void busyChanged(bool busy);
  // Of what helps most: so many ways were tried of so many. On the interface thread.
  void searching(qulonglong done, qulonglong of);
  void searched();  // it is over, whatever came of it

 protected:
  struct Job {
    std::shared_ptr<const rigs::Plan> plan;
    int edition = 0;
  };
  // On the worker thread; `memory` is what it found before.
  virtual void compute(const Job& job, rigs::Memory& memory);

 private:
  bool beginWork();
  void work();
  void tell(const rigs::Told& why, int edition);
  bool isOutdated();
  void show(rigs::Solution&& now, int edition);
  void addWhatHelps(rigs::Search& search, const Job& job);
  void addUnlessOutdated(rigs::Search& search, const Searches& wanted, const Job& job);

  mutable std::mutex mutex_;
  std::condition_variable wake_;
  std::optional<Job> waiting_;
  Job last_;  // that was asked for
  Searches lookedAt_;
  bool busy_ = false;
  bool ending_ = false;
  std::atomic<bool> enough_ = false;
  int shown_ = 0;  // interface thread only
  std::thread worker_;
};

// Unless it runs. False without a thread to be had; the next call tries again.
bool beginThread(std::thread& thread, std::function<void()> work);
// Of what a thread caught, for a person.
rigs::Told whatWentWrong(const std::exception_ptr& error);

// The same for commands, which may wait. The plan has been checked.
SolutionPtr solveAtOnce(const rigs::Plan& plan);
// The same solution with what helps most, of every rig that lacks it or of this one alone.
SolutionPtr withWhatHelps(const SolutionPtr& solution, std::size_t together,
                          std::optional<std::size_t> rig = {});
// The same solution with how sure it is.
SolutionPtr withHowSure(const SolutionPtr& solution);
// So many changes at once in reports, which tell of every rig.
inline constexpr std::size_t kTogetherInReports = 2;

}  // namespace gui

Q_DECLARE_METATYPE(gui::SolutionPtr)
Q_DECLARE_METATYPE(rigs::Problems)
Q_DECLARE_METATYPE(rigs::Told)
