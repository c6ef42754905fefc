// SPDX-License-Identifier: GPL-3.0-or-later
// What every question about a plan asks beyond its days: which ranges are swept, and what of it
// is left from earlier plans and need not be computed again. Threads are the pool's.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "physics/units.hpp"
#include "rigs/answers/helps.hpp"
#include "rigs/answers/solution.hpp"
#include "rigs/documents/problems.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

// How far pictures reach: the same for all rigs of a plan, so that their curves share one axis.
struct SweepRange {
  // From what warms a mash to beyond what a large single-phase circuit carries.
  physics::Power weakest, strongest;
  physics::Length thickest;  // of a jacket's side
};
SweepRange sweepRange(const Plan& plan);

// What was found for the last plans, by what each finding depends on. For one thread at a time.
class Memory {
 public:
  Memory();
  ~Memory();
  Memory(const Memory&) = delete;
  Memory& operator=(const Memory&) = delete;

 private:
  friend class Search;
  struct Kept;
  std::unique_ptr<Kept> kept_;
};

// One plan on its way from its days to everything that is asked for. What it takes from the memory
// is what it would compute, to the last digit.
class Search {
 public:
  // Both outlive it.
  Search(const Plan& plan, Memory& memory);
  ~Search();

  // Of checkPlan(). With errors among them nothing else is asked for.
  const Problems& problems();
  // Every rig's day with its jacket and its curves; comes before the rest.
  void addDays();
  // Those of `wanted` that are missing. False, and nothing is added, if `stop` says so before each
  // rig has been begun, or in the middle of what helps most or of bands; it is called from several
  // threads.
  // `helping` is about that alone, of all rigs together: where its `stop` says so, what was found
  // by then stays, marked as part, and is not remembered.
  bool add(const Searches& wanted, const std::function<bool()>& stop = {},
           const Watched& helping = {});
  Searches done() const;
  // As far as it is; edition 0.
  Solution solution() const;

 private:
  friend class Memory;
  struct Found;

  const Plan& plan_;
  Memory& memory_;
  std::vector<RigAnswer> days_;
  std::vector<Found> found_;
};

// With how sure the figures are, of every rig that lacks it or of this one alone.
void addHowSure(Solution& solution, std::optional<std::size_t> rig = {},
                std::size_t days = kDaysOfABand);
// With the bands alone, a sixth of the work.
void addBands(Solution& solution, std::size_t rig, std::size_t days = kDaysOfABand);
// All at once. Precondition: a plan that checkPlan() finds no errors in.
Solution solve(const Plan& plan, const Searches& wanted);

}  // namespace rigs
