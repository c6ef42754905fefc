// SPDX-License-Identifier: GPL-3.0-or-later
// How sure the answers are: the same day many times, with what nobody knows exactly drawn anew each
// time.
#pragma once

#include <array>
#include <cstddef>
#include <functional>
#include <limits>
#include <optional>
#include <vector>

#include "physics/brewday.hpp"
#include "rigs/answers/priors.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

// How many days a band is made of: its ends are then off by 5 or 6 % of a standard deviation.
inline constexpr std::size_t kDaysOfABand = 256;

// Of all such days one in ten lies below `low`, half below `middle` and one in ten above `high`.
// Empty where so many never get there: a day that does not roll is none that was left out.
template <class Q>
struct Band {
  std::optional<Q> low, middle, high;
};

// What a day comes to that bands are made of.
enum class BandOf : std::size_t {
  WaterReady,
  BoilBegins,
  Over,
  BoilOff,
  Result,
  FromWall,
  Cost,
  LeastToRoll,
  Morning
};
inline constexpr std::size_t kBandsOf = 9;

// In the order of BandOf, coherent units; kNoSuchDay where a day has no such figure.
using DayNumbers = std::array<double, kBandsOf>;
inline constexpr double kNoSuchDay = std::numeric_limits<double>::infinity();
DayNumbers dayNumbers(const physics::BrewDay& day, const Plan& plan);

struct Bands {
  std::size_t days = 0;
  double rolls = 0.0;                                // share of the days, 0-1
  double ends = 0.0;                                 // whose boil ends, rolling or not
  Band<physics::Time> waterReady, boilBegins, over;  // since the day began; of a boil, its roll
  Band<double> boilOff;                              // share of the pre-boil volume per hour
  Band<physics::Volume> result;                      // cold
  Band<physics::Energy> fromWall;
  Band<double> cost;                   // in the plan's currency; empty without a price
  Band<physics::Power> leastToRoll;    // that the wort must get
  Band<physics::Temperature> morning;  // at the end of the plan's own unplugged rest
};

// Of one rig. Every day pours what the plan's own would, but for the marks of its kettle. The same
// plan gives the same numbers. `stop` is asked between days, by several threads; empty where it
// said so. `days` is a power of two. Where something is to be ready all of them begin when the
// plan's own day has to.
std::optional<Bands> bandsOf(const Plan& plan, std::size_t rig,
                             const std::function<bool()>& stop = {},
                             std::size_t days = kDaysOfABand);

// Of numbers of which some may be infinite, the one below which `share` of them lie; empty where
// that is infinite.
std::optional<double> quantileOf(std::vector<double> numbers, double share);
// As quantileOf(), of the numbers of `days` in their order. `rolls` and `ends` are left at nothing.
using Quantile = std::function<std::optional<double>(const std::vector<double>&, double)>;
Bands bandsFrom(const std::vector<DayNumbers>& days, const Quantile& quantile);
// `make` turns a number into what the band is of.
template <class Make>
auto bandFrom(const std::vector<double>& numbers, const Make& make, const Quantile& quantile) {
  const auto at = [&](double share) {
    const auto number = quantile(numbers, share);
    return number ? std::optional(make(*number)) : std::nullopt;
  };
  return Band<decltype(make(0.0))>{at(0.1), at(0.5), at(0.9)};
}

}  // namespace rigs
