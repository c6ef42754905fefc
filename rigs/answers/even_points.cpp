// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/even_points.hpp"

#include <boost/math/distributions/normal.hpp>
#include <boost/random/sobol.hpp>
#include <cassert>
#include <cmath>
#include <random>

namespace rigs {
namespace {

// Not by way of long double, which not every processor has, and some tools that run programs lack.
using InDouble = boost::math::policies::policy<boost::math::policies::promote_double<false>>;

}  // namespace

std::vector<std::vector<double>> evenPoints(std::size_t count, std::size_t dimensions) {
  assert(dimensions >= 1 && dimensions <= 100);
  constexpr double kPerBits = 0x1p-64;
  boost::random::sobol sobol(dimensions);
  // Any numbers do, if they are always these.
  std::mt19937_64 bits(20'260'321);
  std::vector<double> shift(dimensions);
  for (double& one : shift) one = (static_cast<double>(bits() >> 11) + 0.5) * 0x1p-53;
  std::vector<std::vector<double>> points(count, shift);
  for (std::size_t i = 1; i < count; ++i) {
    for (double& x : points[i]) {
      x += static_cast<double>(sobol()) * kPerBits;
      x -= std::floor(x);
    }
  }
  return points;
}

double normalQuantile(double share) {
  return boost::math::quantile(boost::math::normal_distribution<double, InDouble>(), share);
}

}  // namespace rigs
