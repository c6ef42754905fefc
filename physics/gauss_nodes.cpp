// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/gauss_nodes.hpp"

#include <algorithm>
#include <boost/math/special_functions/legendre.hpp>
#include <cassert>
#include <cmath>
#include <vector>

namespace physics {
namespace {

// 1/n: divisions are what the recurrences would spend most on.
constexpr double kLeast = 0.3;
constexpr auto kPer = [] {
  std::array<double, 2 * GaussNodes::kMost + 2> per{};
  for (std::size_t n = 1; n < per.size(); ++n) per[n] = 1.0 / static_cast<double>(n);
  return per;
}();

}  // namespace

const GaussNodes& GaussNodes::of(std::size_t count) {
  static const auto all = [] {
    std::vector<GaussNodes> made;
    for (std::size_t n = 2; n <= kMost; ++n) made.push_back(GaussNodes(n));
    return made;
  }();
  assert(2 <= count && count <= kMost);
  return all[count - 2];
}

GaussNodes::GaussNodes(std::size_t count) : count_(count) {
  const int n = static_cast<int>(count);
  // Those not negative, rising; the others mirror them.
  std::vector<double> zeros = boost::math::legendre_p_zeros<double>(n);
  for (std::size_t i = zeros.size(); i-- > 0;) {
    if (zeros[i] > 0.0) zeros.push_back(-zeros[i]);
  }
  std::sort(zeros.begin(), zeros.end());
  for (std::size_t i = 0; i < count_; ++i) {
    const double z = zeros[i];
    const double slope = boost::math::legendre_p_prime(n, z);
    place_[i] = 0.5 * (1.0 + z);
    weight_[i] = 1.0 / ((1.0 - z * z) * slope * slope);
  }
  for (std::size_t i = 0; i < count_; ++i) {
    const Values p = legendreAt(place_[i]);
    for (std::size_t k = 0; k < count_; ++k) {
      legendre_[k][i] = (2.0 * static_cast<double>(k) + 1.0) * weight_[i] * p[k];
    }
  }
  for (std::size_t i = 0; i < count_; ++i) upTo_[i] = weightsUpTo(place_[i]);
  atBegin_ = weightsAt(0.0);
  atEnd_ = weightsAt(1.0);
}

// On [0, 1].
GaussNodes::Values GaussNodes::legendreAt(double x) const {
  Values p{};
  const double z = 2.0 * x - 1.0;
  p[0] = 1.0;
  p[1] = z;
  for (std::size_t k = 1; k + 1 < count_; ++k) {
    const double order = static_cast<double>(k);
    p[k + 1] = ((2.0 * order + 1.0) * z * p[k] - order * p[k - 1]) * kPer[k + 1];
  }
  return p;
}

// Of the shifted ones: (P_{k+1} - P_{k-1}) / (2 (2k + 1)), which is 0 at 0.
GaussNodes::Values GaussNodes::legendreIntegralsTo(double x) const {
  Values s{};
  const double z = 2.0 * x - 1.0;
  double before = 1.0;
  double here = z;
  s[0] = x;
  for (std::size_t k = 1; k < count_; ++k) {
    const double order = static_cast<double>(k);
    const double next = ((2.0 * order + 1.0) * z * here - order * before) * kPer[k + 1];
    s[k] = 0.5 * (next - before) * kPer[2 * k + 1];
    before = here;
    here = next;
  }
  return s;
}

GaussNodes::Values GaussNodes::weighed(const Values& series) const {
  Values weights{};
  for (std::size_t k = 0; k < count_; ++k) {
    for (std::size_t i = 0; i < count_; ++i) weights[i] += legendre_[k][i] * series[k];
  }
  return weights;
}

GaussNodes::Values GaussNodes::weightsAt(double x) const { return weighed(legendreAt(x)); }

GaussNodes::Values GaussNodes::weightsUpTo(double x) const {
  return weighed(legendreIntegralsTo(x));
}

GaussNodes::Values GaussNodes::series(const Values& values) const {
  Values terms{};
  for (std::size_t k = 0; k < count_; ++k) terms[k] = sum(legendre_[k], values);
  return terms;
}

double GaussNodes::integralTo(double x, const Values& series) const {
  return sum(legendreIntegralsTo(x), series);
}

double GaussNodes::tail(const Values& series) const {
  const double last = std::max(std::abs(series[count_ - 1]), std::abs(series[count_ - 2]));
  return last / std::abs(series[0]);
}

double GaussNodes::unseen(const Values& series) const {
  assert(count_ >= 4);
  const double last = tail(series);
  const double before =
      std::max(std::abs(series[count_ - 3]), std::abs(series[count_ - 4])) / std::abs(series[0]);
  const double fall = before > 0.0 ? std::min(last / before, 1.0) : 0.0;
  return last * std::max(std::pow(fall, 0.5 * static_cast<double>(count_)), kLeast * last);
}

}  // namespace physics
