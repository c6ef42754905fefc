// SPDX-License-Identifier: GPL-3.0-or-later
// A wall's heat flux remembered over a range of temperatures, for the simulation's inner loop.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

#include "physics/units.hpp"

namespace physics {

// Flux against the excess of a wall's inside over the room. What is tabulated is flux over excess
// against the fourth root of excess: with that root natural convection is a smooth function, so
// that six-point interpolation is within 1e-8 of the flux (a film law's seam: 1e-3 beside it).
class FluxTable {
 public:
  // fluxAt(excess) is asked at kNodes excesses from 1e-6 K to `hottest`.
  template <class FluxAt>
  void fill(TemperatureDifference hottest, const FluxAt& fluxAt) {
    const double widest = std::sqrt(std::sqrt(inKelvins(hottest)));
    step_ = widest / static_cast<double>(kNodes - 1);
    hottest_ = hottest;
    for (std::size_t i = 0; i < kNodes; ++i) {
      const double root = std::max(step_ * static_cast<double>(i), 0.0316);
      const double excess = i + 1 == kNodes ? inKelvins(hottest) : root * root * root * root;
      conductance_[i] = inWattsPerSquareMetre(fluxAt(kelvins(excess))) / excess;
    }
  }

  bool covers(TemperatureDifference excess) const {
    return excess >= kelvins(0.0) && excess <= hottest_;
  }

  // Precondition: covers(excess).
  HeatFlux at(TemperatureDifference excess) const {
    const double x = std::sqrt(std::sqrt(inKelvins(excess))) / step_;
    const auto cell = static_cast<std::ptrdiff_t>(x);
    const auto first = static_cast<std::size_t>(
        std::clamp<std::ptrdiff_t>(cell - 2, 0, static_cast<std::ptrdiff_t>(kNodes) - 6));
    // Lagrange's polynomial through six neighbours, t counted from the first.
    const double t = x - static_cast<double>(first);
    const double* f = conductance_.data() + first;
    const double t1 = t - 1.0, t2 = t - 2.0, t3 = t - 3.0, t4 = t - 4.0, t5 = t - 5.0;
    const double low = t * t1 * t2;
    const double high = t3 * t4 * t5;
    const double value =
        high * (-t1 * t2 * f[0] / 120.0 + t * t2 * f[1] / 24.0 - t * t1 * f[2] / 12.0) +
        low * (t4 * t5 * f[3] / 12.0 - t3 * t5 * f[4] / 24.0 + t3 * t4 * f[5] / 120.0);
    return wattsPerSquareMetre(value) * (excess / kelvins(1.0));
  }

 private:
  static constexpr std::size_t kNodes = 33;
  double step_ = 1.0;
  TemperatureDifference hottest_ = kelvins(-1.0);  // covers nothing until filled
  std::array<double, kNodes> conductance_{};       // W/(m2 K)
};

}  // namespace physics
