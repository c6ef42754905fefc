// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/readings/thinning.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <span>

namespace rigs::readings {
namespace {

// The group's mean, and how far that may be off.
Thinned meanOf(std::span<const LoggedPoint> group) {
  const auto n = static_cast<double>(group.size());
  Thinned mean{.rows = group.size()};
  for (const LoggedPoint& one : group) {
    mean.at += one.at / n;
    mean.value += one.value / n;
  }
  if (group.size() < 4) return mean;
  double square = 0.0;
  double both = 0.0;
  for (const LoggedPoint& one : group) {
    square += (one.at - mean.at) * (one.at - mean.at);
    both += (one.at - mean.at) * (one.value - mean.value);
  }
  const double slope = square > 0.0 ? both / square : 0.0;
  double sum = 0.0;
  double neighbours = 0.0;
  double last = 0.0;
  for (const LoggedPoint& one : group) {
    const double off = one.value - mean.value - slope * (one.at - mean.at);
    sum += off * off;
    neighbours += off * last;
    last = off;
  }
  const double correlation = sum > 0.0 ? std::clamp(neighbours / sum, 0.0, 0.98) : 0.0;
  const double worth = std::max(1.0, n * (1.0 - correlation) / (1.0 + correlation));
  mean.spread = std::sqrt(sum / (n - 2.0) / worth);
  return mean;
}

}  // namespace

std::vector<Thinned> thinned(const std::vector<LoggedPoint>& log, std::size_t most) {
  assert(most > 0);
  std::vector<Thinned> all;
  const std::size_t groups = std::min(most, log.size());
  for (std::size_t i = 0; i < groups; ++i) {
    const std::size_t begin = i * log.size() / groups;
    const std::size_t end = (i + 1) * log.size() / groups;
    all.push_back(meanOf(std::span(log).subspan(begin, end - begin)));
  }
  return all;
}

}  // namespace rigs::readings
