// SPDX-License-Identifier: GPL-3.0-or-later
// Lagrange's polynomial through six evenly spaced neighbours, for tables of smooth functions.
#pragma once

#include <algorithm>
#include <array>
#include <cstddef>

namespace physics {

// Where one asks a table: its six nearest nodes, counted from `first`, and what each of them
// weighs in the value and in the slope with respect to the place counted in nodes. Several tables
// over the same nodes can be asked with one.
struct SixNeighbours {
  std::size_t first;
  std::array<double, 6> weight;
  std::array<double, 6> slope;

  // At x nodes from the first of `nodes`; precondition: 0 <= x, nodes >= 6.
  SixNeighbours(double x, std::size_t nodes)
      : first(std::min(std::max<std::size_t>(static_cast<std::size_t>(x), 2) - 2, nodes - 6)) {
    // 1 / prod(i - j), j not i.
    constexpr std::array<double, 6> kScale{-1.0 / 120.0, 1.0 / 24.0,  -1.0 / 12.0,
                                           1.0 / 12.0,   -1.0 / 24.0, 1.0 / 120.0};
    const double t = x - static_cast<double>(first);
    // Products of the distances to all nodes before one, and their slopes; then to all after it.
    std::array<double, 6> before{1.0};
    std::array<double, 6> beforeSlope{0.0};
    for (std::size_t i = 1; i < 6; ++i) {
      const double distance = t - static_cast<double>(i - 1);
      before[i] = before[i - 1] * distance;
      beforeSlope[i] = beforeSlope[i - 1] * distance + before[i - 1];
    }
    double after = 1.0;
    double afterSlope = 0.0;
    for (std::size_t i = 6; i-- > 0;) {
      weight[i] = kScale[i] * before[i] * after;
      slope[i] = kScale[i] * (beforeSlope[i] * after + before[i] * afterSlope);
      const double distance = t - static_cast<double>(i);
      afterSlope = afterSlope * distance + after;
      after *= distance;
    }
  }

  double valueOf(const double* nodes) const { return sum(weight, nodes + first); }
  double slopeOf(const double* nodes) const { return sum(slope, nodes + first); }

 private:
  static double sum(const std::array<double, 6>& by, const double* six) {
    return (by[0] * six[0] + by[1] * six[1]) + (by[2] * six[2] + by[3] * six[3]) +
           (by[4] * six[4] + by[5] * six[5]);
  }
};

}  // namespace physics
