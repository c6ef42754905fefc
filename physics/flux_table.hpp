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
// against the fourth root of excess: with that root natural convection is a smooth function, so
// that six-point interpolation is within 1e-8 of the flux (beside a film law's seam, as the water
// film has at 10 C: some 1e-3).
// A colder inside has an arm of its own, since film laws turn round at the room's temperature.
// Each node is asked for when it is first needed: a ramp of ten kelvins needs eight of them.
class FluxTable {
 public:
  // Forgets what it knew. Arms of no width cover nothing.
  void cover(TemperatureDifference below, TemperatureDifference above) {
    below_ = below;
    above_ = above;
    step_ = std::sqrt(std::sqrt(inKelvins(std::max({below, above, kelvins(1.0)})))) /
            static_cast<double>(kNodes - 1);
    colder_ = warmer_ = Arm{};
  }
  void forget() { cover(below_, above_); }

  bool covers(TemperatureDifference excess) const { return -below_ <= excess && excess <= above_; }

  // fluxAt(excess) is asked where nobody asked before. Precondition: covers(excess).
  template <class FluxAt>
  HeatFlux at(TemperatureDifference excess, const FluxAt& fluxAt) {
    const double kelvin = inKelvins(excess);
    Arm& arm = kelvin < 0.0 ? colder_ : warmer_;
    const double x = std::sqrt(std::sqrt(std::abs(kelvin))) / step_;
    const auto cell = static_cast<std::ptrdiff_t>(x);
    const auto first = static_cast<std::size_t>(
        std::clamp<std::ptrdiff_t>(cell - 2, 0, static_cast<std::ptrdiff_t>(kNodes) - 6));
    if (((arm.known >> first) & kSix) != kSix) learn(arm, first, kelvin < 0.0, fluxAt);
    // Lagrange's polynomial through six neighbours, t counted from the first.
    const double t = x - static_cast<double>(first);
    const double* f = arm.conductance.data() + first;
    const double t1 = t - 1.0, t2 = t - 2.0, t3 = t - 3.0, t4 = t - 4.0, t5 = t - 5.0;
    const double low = t * t1 * t2;
    const double high = t3 * t4 * t5;
    const double value =
        high * (t * t2 * f[1] / 24.0 - t1 * t2 * f[0] / 120.0 - t * t1 * f[2] / 12.0) +
        low * (t4 * t5 * f[3] / 12.0 - t3 * t5 * f[4] / 24.0 + t3 * t4 * f[5] / 120.0);
    return wattsPerSquareMetre(value * kelvin);
  }

 private:
  static constexpr std::size_t kNodes = 33;
  static constexpr std::uint64_t kSix = 0b111111;
  struct Arm {
    std::uint64_t known = 0;                   // a bit per node
    std::array<double, kNodes> conductance{};  // W/(m2 K)
  };

  template <class FluxAt>
  void learn(Arm& arm, std::size_t first, bool colder, const FluxAt& fluxAt) {
    for (std::size_t i = first; i < first + 6; ++i) {
      if ((arm.known >> i) & 1U) continue;
      // The law's limit at no excess stands for itself a millionth of a kelvin away.
      const double root = std::max(step_ * static_cast<double>(i), 0.0316);
      const double excess = (colder ? -1.0 : 1.0) * root * root * root * root;
      arm.conductance[i] = inWattsPerSquareMetre(fluxAt(kelvins(excess))) / excess;
      arm.known |= std::uint64_t{1} << i;
    }
  }

  double step_ = 1.0;
  // Nothing is covered at first.
  TemperatureDifference below_ = kelvins(-1.0);
  TemperatureDifference above_ = kelvins(-1.0);
  Arm colder_, warmer_;
};

}  // namespace physics
