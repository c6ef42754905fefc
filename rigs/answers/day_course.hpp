// SPDX-License-Identifier: GPL-3.0-or-later
// Of a simulated day what whoever follows it asks: when its stages begin, and its wort meanwhile.
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

#include "physics/brewday.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

struct CourseStage {
  physics::StageKind kind;
  physics::Time begin;         // since the day began
  physics::Temperature first;  // of the wort
};
struct CoursePoint {
  physics::Time at;  // since the day began
  physics::Temperature wort;
};

// One of many days that may come. Their stages are those of the plan, as far as each gets.
struct DayCourse {
  std::vector<CourseStage> stages;
  physics::Time over;  // of the last one
  physics::Outcome outcome = physics::Outcome::Done;
  physics::Temperature boiling;
  std::vector<CoursePoint> wort;  // in the order of time
  double weight = 1.0;            // of all days together 1
  double lawsOff = 0.0;           // what the laws are off by, in standard deviations
  physics::TemperatureDifference thermometer = physics::kelvins(0.0);  // that it reads too high

  // Where there is such a stage.
  std::optional<physics::Time> begin(physics::StageKind kind) const;
  // Before the first point as there, behind the last as there. Needs a point.
  physics::Temperature wortAt(physics::Time at) const;
};

// Of a day simulated with curves; weight and what is off are as nobody knows better.
DayCourse courseOf(const physics::BrewDay& day);

// Before anything is read: as many days as a band is made of, of equal weight. The same plan gives
// the same. Empty where `stop`, asked between days by several threads, said so.
std::optional<std::vector<DayCourse>> plannedCourses(const Plan& plan, std::size_t rig,
                                                     const std::function<bool()>& stop = {});

}  // namespace rigs
