// SPDX-License-Identifier: GPL-3.0-or-later
// The image of a printed law of one number: a polynomial that stands for it in the inner loop.
#pragma once

#include <array>
#include <cmath>
#include <cstddef>
#include <numbers>

namespace physics {

// Interpolates at `Nodes` Chebyshev points, which for a smooth law is within a factor of a few of
// the best polynomial of its degree. How near each image comes to its law is stated and tested
// where it is used. The law is asked `Nodes` times, once and for all.
template <std::size_t Nodes>
class LawImage {
  static_assert(Nodes >= 2);

 public:
  LawImage() = default;  // zero everywhere
  template <class Law>
  LawImage(const Law& law, double low, double high)
      : middle_(0.5 * (low + high)), perHalf_(2.0 / (high - low)) {
    std::array<double, Nodes> asked{};
    for (std::size_t j = 0; j < Nodes; ++j) asked[j] = law(middle_ + cosines()[1][j] / perHalf_);
    // Chebyshev's sum as a sum of powers: T(k+1) = 2 x T(k) - T(k-1).
    std::array<double, Nodes> before{1.0}, here{0.0, 1.0};
    add(before, weightOf(0, asked));
    for (std::size_t k = 1; k < Nodes; ++k) {
      add(here, weightOf(k, asked));
      std::array<double, Nodes> next{};
      for (std::size_t i = 0; i < Nodes; ++i) next[i] = (i ? 2.0 * here[i - 1] : 0.0) - before[i];
      before = here;
      here = next;
    }
  }

  // Even and odd powers apart, so that two sums go on at once.
  double operator()(double at) const {
    constexpr std::size_t kLastEven = (Nodes - 1) / 2 * 2;
    constexpr std::size_t kLastOdd = (Nodes - 2) / 2 * 2 + 1;
    const double x = (at - middle_) * perHalf_;
    const double square = x * x;
    double even = power_[kLastEven];
    double odd = power_[kLastOdd];
    for (std::size_t i = kLastEven; i >= 2; i -= 2) even = even * square + power_[i - 2];
    for (std::size_t i = kLastOdd; i >= 3; i -= 2) odd = odd * square + power_[i - 2];
    return even + x * odd;
  }

  struct Sloped {
    double value, slope;
  };
  Sloped withSlope(double at) const {
    const double x = (at - middle_) * perHalf_;
    double value = power_[Nodes - 1];
    double slope = 0.0;
    for (std::size_t i = Nodes - 1; i-- > 0;) {
      slope = slope * x + value;
      value = value * x + power_[i];
    }
    return {value, slope * perHalf_};
  }

 private:
  using Table = std::array<std::array<double, Nodes>, Nodes>;
  // [k][j]: Chebyshev's polynomial k at point j.
  static const Table& cosines() {
    static const Table table = [] {
      Table made{};
      for (std::size_t k = 0; k < Nodes; ++k)
        for (std::size_t j = 0; j < Nodes; ++j)
          made[k][j] = std::cos(std::numbers::pi * static_cast<double>(k) *
                                (static_cast<double>(j) + 0.5) / static_cast<double>(Nodes));
      return made;
    }();
    return table;
  }
  static double weightOf(std::size_t k, const std::array<double, Nodes>& asked) {
    double sum = 0.0;
    for (std::size_t j = 0; j < Nodes; ++j) sum += asked[j] * cosines()[k][j];
    return sum * (k == 0 ? 1.0 : 2.0) / static_cast<double>(Nodes);
  }
  void add(const std::array<double, Nodes>& chebyshev, double weight) {
    for (std::size_t i = 0; i < Nodes; ++i) power_[i] += weight * chebyshev[i];
  }

  double middle_ = 0.0;
  double perHalf_ = 1.0;
  std::array<double, Nodes> power_{};
};

}  // namespace physics
