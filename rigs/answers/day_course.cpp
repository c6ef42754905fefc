// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/day_course.hpp"

#include <algorithm>
#include <cassert>
#include <iterator>

#include "rigs/answers/bands.hpp"
#include "rigs/answers/drawn_days.hpp"
#include "rigs/answers/even_points.hpp"

namespace rigs {

using namespace physics;

std::optional<Time> DayCourse::begin(StageKind kind) const {
  for (const CourseStage& stage : stages)
    if (stage.kind == kind) return stage.begin;
  return std::nullopt;
}

Temperature DayCourse::wortAt(Time at) const {
  assert(!wort.empty());
  const auto after =
      std::lower_bound(wort.begin(), wort.end(), at,
                       [](const CoursePoint& point, Time asked) { return point.at < asked; });
  if (after == wort.begin()) return wort.front().wort;
  if (after == wort.end()) return wort.back().wort;
  const CoursePoint& before = *std::prev(after);
  const double along = static_cast<double>((at - before.at) / (after->at - before.at));
  return before.wort + along * (after->wort - before.wort);
}

DayCourse courseOf(const BrewDay& day) {
  DayCourse course;
  course.over = day.duration();
  course.outcome = day.outcome;
  course.boiling = day.boilingPoint;
  for (const Stage& stage : day.stages) {
    course.stages.push_back({stage.kind, stage.begin, stage.first});
    for (const CurvePoint& point : stage.curve) course.wort.push_back({point.time, point.wort});
  }
  return course;
}

std::optional<std::vector<DayCourse>> plannedCourses(const Plan& plan, std::size_t rig,
                                                     const std::function<bool()>& stop) {
  const DaysOfARig drawn(plan, rig);
  SimulationOptions options = kForBands;
  options.curves = true;
  return forAllUnless(stop, evenPoints(kDaysOfABand, kUnknowns), [&](const auto& point) {
    DayCourse course = courseOf(simulate(drawn.at(point), options));
    course.weight = 1.0 / static_cast<double>(kDaysOfABand);
    return course;
  });
}

}  // namespace rigs
