// SPDX-License-Identifier: GPL-3.0-or-later
// A plan's day with other values of what nobody knows exactly.
#pragma once

#include <array>
#include <atomic>
#include <cstddef>
#include <functional>
#include <optional>
#include <type_traits>
#include <utility>
#include <vector>

#include "physics/brewday.hpp"
#include "rigs/answers/pool.hpp"
#include "rigs/answers/priors.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

// In the order of Unknown: factors, or kelvin; see isOffset().
using UnknownValues = std::array<double, kUnknowns>;
// The plan as it is.
UnknownValues asPlannedValues();
// What a brewer cannot know better: the medians.
UnknownValues medianValues(const Priors& priors);

struct DrawnDay {
  physics::Rig rig;
  physics::Batch batch;
  physics::Place place;

  bool operator==(const DrawnDay&) const = default;
};

// The water that the plan's own day pours, at 20 C: every other day of it pours as much, whatever
// it finds in the end.
physics::Volume waterPlanned(const Plan& plan, std::size_t rig);

// `water` is waterPlanned() of that rig.
DrawnDay dayWith(const Plan& plan, std::size_t rig, physics::Volume water,
                 const UnknownValues& values);

// A band needs no more digits than people see.
inline constexpr physics::SimulationOptions kForBands{.relativeTolerance = 1e-6,
                                                      .leastForAnyPower = false};
physics::BrewDay simulate(const DrawnDay& day, const physics::SimulationOptions& options);

// The days of one rig's priors.
class DaysOfARig {
 public:
  DaysOfARig(const Plan& plan, std::size_t rig);

  const Priors& priors() const { return priors_; }
  // Of a point whose first coordinates are shares, within 0 and 1, in the order of Unknown.
  UnknownValues valuesAt(const std::vector<double>& point) const;
  DrawnDay with(const UnknownValues& values) const { return dayWith(plan_, rig_, water_, values); }
  DrawnDay at(const std::vector<double>& point) const { return with(valuesAt(point)); }

 private:
  const Plan& plan_;
  std::size_t rig_;
  physics::Volume water_;
  Priors priors_;
};

// What `make` gives for each of `points`, in their order, unless `stop` says so before one of them.
template <class Point, class Make>
auto forAllUnless(const std::function<bool()>& stop, const std::vector<Point>& points,
                  const Make& make) {
  using Made = std::decay_t<decltype(make(points.front()))>;
  std::atomic<bool> stopped = false;
  auto all = forAll(points.size(), [&](std::size_t i) {
    if (!stopped && stop && stop()) stopped = true;
    return stopped ? Made{} : make(points[i]);
  });
  return stopped ? std::optional<std::vector<Made>>() : std::optional(std::move(all));
}

}  // namespace rigs
