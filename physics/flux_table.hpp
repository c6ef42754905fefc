// SPDX-License-Identifier: GPL-3.0-or-later
// A wall's heat flux remembered over a range of temperatures, for the simulation's inner loop.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <cstdint>

#include "physics/units.hpp"

namespace physics {

// Flux against the excess of a wall's inside over the room. What is remembered is flux over excess
// against the fourth root of excess: with that root natural convection is a smooth function.
// Each node is asked for when it is first needed. How near it comes: HeatLossModel::tabulate.
class FluxTable {
 public:
  // Forgets what it knew. No node lies outside the range, so that a law may bend at its ends.
  // Not covered, whatever is said: an inside within 4 K of the room or colder, where film laws
  // turn round and the root bends too much. Nothing is, if that leaves nothing.
  void cover(TemperatureDifference least, TemperatureDifference most) {
    least_ = std::max(least, kelvins(4.0));
    most_ = most;
    known_ = 0;
    if (!(most_ > least_)) return;
    from_ = fourthRoot(inKelvins(least_));
    step_ = (fourthRoot(inKelvins(most_)) - from_) / static_cast<double>(kNodes - 1);
  }
  void forget() { known_ = 0; }

  bool covers(TemperatureDifference excess) const { return least_ <= excess && excess <= most_; }

  // fluxAt(excess) is asked where nobody asked before. Precondition: covers(excess).
  template <class FluxAt>
  HeatFlux at(TemperatureDifference excess, const FluxAt& fluxAt) {
    const double kelvin = inKelvins(excess);
    const double x = std::max(fourthRoot(kelvin) - from_, 0.0) / step_;
    const std::size_t cell = std::max<std::size_t>(static_cast<std::size_t>(x), 2);
    const std::size_t first = std::min(cell - 2, kNodes - 6);
    if (((known_ >> first) & kSix) != kSix) learn(first, fluxAt);
    // Lagrange's polynomial through six neighbours, t counted from the first.
    const double t = x - static_cast<double>(first);
    const double* f = conductance_.data() + first;
    const double t1 = t - 1.0, t2 = t - 2.0, t3 = t - 3.0, t4 = t - 4.0, t5 = t - 5.0;
    const double low = t * t1 * t2;
    const double high = t3 * t4 * t5;
    const double value =
        high * (t * t2 * f[1] / 24.0 - t1 * t2 * f[0] / 120.0 - t * t1 * f[2] / 12.0) +
        low * (t4 * t5 * f[3] / 12.0 - t3 * t5 * f[4] / 24.0 + t3 * t4 * f[5] / 120.0);
    return wattsPerSquareMetre(value * kelvin);
  }

 private:
  static constexpr std::size_t kNodes = 29;
  static constexpr std::uint64_t kSix = 0b111111;

  static double fourthRoot(double x) { return std::sqrt(std::sqrt(x)); }

  template <class FluxAt>
  void learn(std::size_t first, const FluxAt& fluxAt) {
    for (std::size_t i = first; i < first + 6; ++i) {
      if ((known_ >> i) & 1U) continue;
      const double root = from_ + step_ * static_cast<double>(i);
      const double excess = root * root * root * root;
      conductance_[i] = inWattsPerSquareMetre(fluxAt(kelvins(excess))) / excess;
      known_ |= std::uint64_t{1} << i;
    }
  }

  // Nothing is covered at first.
  TemperatureDifference least_ = kelvins(1.0);
  TemperatureDifference most_ = kelvins(0.0);
  double from_ = 0.0;  // fourth root of the first node's excess
  double step_ = 1.0;
  std::uint64_t known_ = 0;                   // a bit per node
  std::array<double, kNodes> conductance_{};  // W/(m2 K)
};

}  // namespace physics
