// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/band_causes.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

#include "rigs/answers/begins.hpp"
#include "rigs/answers/drawn_days.hpp"
#include "rigs/answers/even_points.hpp"

namespace rigs {
namespace {

constexpr std::size_t kMostCauses = 3;

// Of those that lie below, and half of those that are the same.
double rankAmong(const std::vector<double>& sorted, double number) {
  const auto [from, to] = std::equal_range(sorted.begin(), sorted.end(), number);
  return 0.5 *
         (static_cast<double>(from - sorted.begin()) + static_cast<double>(to - sorted.begin()));
}

bool anyNever(const std::vector<double>& numbers) {
  return std::any_of(numbers.begin(), numbers.end(),
                     [](double number) { return !std::isfinite(number); });
}

std::vector<double> column(const std::vector<DayNumbers>& days, std::size_t figure) {
  std::vector<double> numbers;
  for (const DayNumbers& one : days) numbers.push_back(one[figure]);
  return numbers;
}

double effectOfNumbers(const std::vector<double>& base, const std::vector<double>& changed) {
  const double n = static_cast<double>(base.size());
  double mean = 0.0;
  for (const double number : base) mean += number / n;
  double variance = 0.0;
  double moved = 0.0;
  for (std::size_t i = 0; i < base.size(); ++i) {
    variance += (base[i] - mean) * (base[i] - mean) / n;
    moved += (base[i] - changed[i]) * (base[i] - changed[i]) / (2.0 * n);
  }
  return variance > 0.0 ? moved / variance : 0.0;
}

}  // namespace

double totalEffect(const std::vector<double>& base, const std::vector<double>& changed) {
  assert(base.size() == changed.size() && !base.empty());
  if (!anyNever(base) && !anyNever(changed)) return effectOfNumbers(base, changed);
  std::vector<double> sorted = base;
  std::sort(sorted.begin(), sorted.end());
  std::vector<double> ranks, changedRanks;
  for (std::size_t i = 0; i < base.size(); ++i) {
    ranks.push_back(rankAmong(sorted, base[i]));
    changedRanks.push_back(rankAmong(sorted, changed[i]));
  }
  return effectOfNumbers(ranks, changedRanks);
}

std::optional<BandCauses> bandCauses(const Plan& asked, std::size_t rig,
                                     const std::function<bool()>& stop, std::size_t days) {
  const Plan plan = asBegun(asked, rig);
  const DaysOfARig drawn(plan, rig);
  // Each point has the one day's shares first and then those that are drawn anew.
  const auto points = evenPoints(days, 2 * kUnknowns);
  const auto numbersOf = [&](const DrawnDay& day) {
    return dayNumbers(simulate(day, kForBands), plan);
  };
  const auto base =
      forAllUnless(stop, points, [&](const auto& point) { return numbersOf(drawn.at(point)); });
  if (!base) return std::nullopt;
  std::vector<std::pair<std::size_t, std::size_t>> pairs;
  for (std::size_t k = 0; k < kUnknowns; ++k)
    for (std::size_t i = 0; i < days; ++i) pairs.emplace_back(k, i);
  const auto changed = forAllUnless(stop, pairs, [&](const auto& pair) {
    const auto [k, i] = pair;
    std::vector<double> point = points[i];
    const DrawnDay before = drawn.at(point);
    point[k] = point[kUnknowns + k];
    const DrawnDay day = drawn.at(point);
    return day == before ? (*base)[i] : numbersOf(day);  // no lid, no grain
  });
  if (!changed) return std::nullopt;
  BandCauses causes{};
  for (std::size_t figure = 0; figure < kBandsOf; ++figure) {
    const std::vector<double> numbers = column(*base, figure);
    for (std::size_t k = 0; k < kUnknowns; ++k) {
      const auto from = changed->begin() + static_cast<std::ptrdiff_t>(k * days);
      causes[figure][k] =
          totalEffect(numbers, column({from, from + static_cast<std::ptrdiff_t>(days)}, figure));
    }
  }
  return causes;
}

std::vector<Unknown> foremost(const std::array<double, kUnknowns>& causes) {
  std::vector<Unknown> order;
  for (std::size_t k = 0; k < kUnknowns; ++k)
    if (causes[k] >= kMatters) order.push_back(static_cast<Unknown>(k));
  std::stable_sort(order.begin(), order.end(),
                   [&](Unknown a, Unknown b) { return causes[placeOf(a)] > causes[placeOf(b)]; });
  if (order.size() > kMostCauses) order.resize(kMostCauses);
  return order;
}

double narrowing(double share) { return 1.0 - std::sqrt(1.0 - std::clamp(share, 0.0, 0.98)); }

}  // namespace rigs
