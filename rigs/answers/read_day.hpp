// SPDX-License-Identifier: GPL-3.0-or-later
// What a day would show to whoever reads it: a thermometer, a meter, marks and a hydrometer at
// their times.
#pragma once

#include <optional>
#include <vector>

#include "physics/day.hpp"
#include "rigs/readings/reading.hpp"

namespace rigs {

// When something is read, counted from what both days, the planned and the real, have in common.
struct ReadAt {
  std::optional<physics::StageKind> since = {};  // empty: since the day began
  physics::Time after;                           // may be before it
};
// The stage that begins with it; a lid's is none.
std::optional<physics::StageKind> stageOf(readings::Event event);
// Of each reading: since the last event before it whose moment a plan has, which is told as one; a
// lid's is none.
std::vector<ReadAt> momentsOf(const std::vector<readings::Reading>& all, physics::Time startOfDay);

// Of a day simulated with curves. Nothing where it has no such stage, had stopped before or is
// over.
class ReadDay {
 public:
  explicit ReadDay(const physics::BrewDay& day);

  std::optional<physics::Time> timeOf(const ReadAt& when) const;  // since this day began
  // Nothing around a rinse and what goes into the boil: nobody knows to the minute when it went in.
  std::optional<physics::Temperature> wort(physics::Time at) const;
  // Taken from the wall so far.
  std::optional<physics::Energy> meter(physics::Time at) const;
  // What fills the vessel, as hot as it is; and of that the same at 20 C.
  std::optional<physics::Volume> hot(physics::Time at) const;
  std::optional<physics::Volume> cold(physics::Time at) const;
  std::optional<double> gravity(physics::Time at) const;

 private:
  // Of the wort in the boil, before and after all that goes in.
  struct InTheBoil {
    physics::Time at;
    physics::Volume hot, cold;
    double gravity;
  };

  const physics::Stage* stageAt(physics::Time at) const;
  bool isAroundAnAddition(physics::Time at) const;
  // Nothing in another stage, or where nothing goes in.
  std::optional<InTheBoil> inTheBoil(const physics::Stage& stage, physics::Time at) const;

  const physics::BrewDay& day_;
  double fromWallPerElement_;
};

}  // namespace rigs
