// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/even_points.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace {

using namespace rigs;
using Points = std::vector<std::vector<double>>;

double deviation(const std::vector<double>& numbers) {
  double mean = 0.0, square = 0.0;
  for (const double one : numbers) mean += one / static_cast<double>(numbers.size());
  for (const double one : numbers) square += (one - mean) * (one - mean);
  return std::sqrt(square / static_cast<double>(numbers.size()));
}

template <class Of>
std::vector<double> evaluated(const Points& points, const Of& of) {
  std::vector<double> all;
  for (const auto& point : points) all.push_back(of(point));
  return all;
}

// The narrowest interval that holds 95 % of them.
std::array<double, 2> shortest(std::vector<double> numbers) {
  std::sort(numbers.begin(), numbers.end());
  const auto held = static_cast<std::size_t>(0.95 * static_cast<double>(numbers.size()));
  std::size_t best = 0;
  for (std::size_t i = 0; i + held < numbers.size(); ++i)
    if (numbers[i + held] - numbers[i] < numbers[best + held] - numbers[best]) best = i;
  return {numbers[best], numbers[best + held]};
}

double normal(double share, double mean, double u) { return mean + u * normalQuantile(share); }
double rectangular(double share, double from, double to) { return from + share * (to - from); }

// The fifth and sixth that Boost's generator gives in four dimensions, which are Joe and Kuo's.
TEST(EvenPoints, AreSobolsBehindAShift) {
  const Points points = evenPoints(8, 4);
  const std::array<std::array<double, 4>, 2> expected{
      {{0.875, 0.875, 0.125, 0.375}, {0.625, 0.125, 0.875, 0.625}}};
  for (std::size_t i = 0; i < 2; ++i)
    for (std::size_t k = 0; k < 4; ++k) {
      double unshifted = points[5 + i][k] - points[0][k];
      unshifted -= std::floor(unshifted);
      EXPECT_NEAR(unshifted, expected[i][k], 1e-12);
    }
}

// Without the origin eight points fall into eighths as 0 2 1 1 1 1 1 1.
TEST(EvenPoints, FillEveryCellOnceWhereTheyAreAPowerOfTwo) {
  constexpr std::size_t kDimensions = 16;
  const Points points = evenPoints(256, kDimensions);
  for (std::size_t count = 2; count <= 256; count *= 2)
    for (std::size_t k = 0; k < kDimensions; ++k) {
      std::vector<int> in(count, 0);
      for (std::size_t i = 0; i < count; ++i)
        ++in[static_cast<std::size_t>(points[i][k] * static_cast<double>(count))];
      EXPECT_EQ(std::count(in.begin(), in.end(), 1), static_cast<std::ptrdiff_t>(count))
          << count << " points, dimension " << k;
    }
}

TEST(EvenPoints, NeverTouchTheEdge) {
  for (const auto& point : evenPoints(4096, 8))
    for (const double x : point) {
      EXPECT_GT(x, 0.0);
      EXPECT_LT(x, 1.0);
    }
}

TEST(EvenPoints, AreTheSameEveryTime) { EXPECT_EQ(evenPoints(64, 5), evenPoints(64, 5)); }

TEST(NormalQuantile, HasTheTabledValues) {
  EXPECT_NEAR(normalQuantile(0.5), 0.0, 1e-15);
  EXPECT_NEAR(normalQuantile(0.9), 1.2815515655446004, 1e-12);
  EXPECT_NEAR(normalQuantile(0.025), -1.959963984540054, 1e-12);
  EXPECT_NEAR(normalQuantile(0.001), -3.090232306167813, 1e-12);
}

// JCGM 101:2008 (Supplement 1 to the GUM), 9.2.2: u 2.00, 95 % within 3.92.
TEST(EvenPoints, PropagateASumOfNormals) {
  const auto sums = evaluated(evenPoints(4096, 4), [](const auto& p) {
    return normal(p[0], 0, 1) + normal(p[1], 0, 1) + normal(p[2], 0, 1) + normal(p[3], 0, 1);
  });
  EXPECT_NEAR(deviation(sums), 2.00, 0.005);
  EXPECT_NEAR(shortest(sums)[1] - shortest(sums)[0], 2 * 3.92, 0.1);
}

// The same, 9.2.3, rectangular within the root of 3: 3.88 where first order has 3.92.
TEST(EvenPoints, PropagateASumOfRectangularInputs) {
  const double edge = std::sqrt(3.0);
  const auto sums = evaluated(evenPoints(4096, 4), [&](const auto& p) {
    double sum = 0.0;
    for (const double x : p) sum += rectangular(x, -edge, edge);
    return sum;
  });
  EXPECT_NEAR(deviation(sums), 2.00, 0.005);
  EXPECT_NEAR(shortest(sums)[1] - shortest(sums)[0], 2 * 3.88, 0.1);
}

// The same, 9.3, mg: 1.2341, u 0.0754, shortest 95 % from 1.0834 to 1.3825. First order has u
// 0.0539, since two effects of mean zero are multiplied.
TEST(EvenPoints, PropagateWhatFirstOrderMisses) {
  auto masses = evaluated(evenPoints(16384, 5), [](const auto& p) {
    const double mass = normal(p[0], 100000.0, 0.050);
    const double added = normal(p[1], 1.234, 0.020);
    const double air = rectangular(p[2], 1.1, 1.3);
    const double weights = rectangular(p[3], 7000.0, 9000.0);
    const double reference = rectangular(p[4], 7950.0, 8050.0);
    return (mass + added) * (1.0 + (air - 1.2) * (1.0 / weights - 1.0 / reference)) - 100000.0;
  });
  double mean = 0.0;
  for (const double one : masses) mean += one / static_cast<double>(masses.size());
  EXPECT_NEAR(mean, 1.2341, 0.0005);
  EXPECT_NEAR(deviation(masses), 0.0754, 0.0005);
  // Symmetric, so that the shortest interval is the one that leaves as many on either side; the
  // ends of the shortest of a sample scatter more.
  std::sort(masses.begin(), masses.end());
  EXPECT_NEAR(masses[masses.size() / 40], 1.0834, 0.003);
  EXPECT_NEAR(masses[masses.size() - masses.size() / 40], 1.3825, 0.003);
}

// GUM H.1, nm, inputs taken as normal: u 32, and 34 with the second order.
TEST(EvenPoints, PropagateTheSecondOrderOfAnEndGauge) {
  const auto lengths = evaluated(evenPoints(4096, 6), [](const auto& p) {
    const double standard = normal(p[0], 50000623.0, 25.0);
    const double difference = normal(p[1], 215.0, 9.7);
    const double expansions = normal(p[2], 0.0, 0.58e-6);
    const double off = normal(p[3], -0.1, 0.41);
    const double expansion = normal(p[4], 11.5e-6, 1.2e-6);
    const double between = normal(p[5], 0.0, 0.029);
    return standard + difference - standard * (expansions * off + expansion * between) - 50000838.0;
  });
  EXPECT_NEAR(deviation(lengths), 33.91, 0.5);
}

// Of eight inputs of equal weight: 256 such points are off by 0.065 of a standard deviation at the
// tenth and by 0.039 in the middle, root mean square of many shifts; random ones by twice as much.
TEST(EvenPoints, LeaveTheEndsOfABandAFewHundredthsOff) {
  auto sums = evaluated(evenPoints(256, 8), [](const auto& p) {
    double sum = 0.0;
    for (const double x : p) sum += normalQuantile(x) / std::sqrt(8.0);
    return sum + 0.1 * sum * sum;  // somewhat bent
  });
  std::sort(sums.begin(), sums.end());
  const auto bent = [](double z) { return z + 0.1 * z * z; };
  const double tenth = 1.2815515655446004;
  EXPECT_NEAR(0.5 * (sums[25] + sums[26]), bent(-tenth), 2 * 0.065);
  EXPECT_NEAR(0.5 * (sums[127] + sums[128]), 0.0, 2 * 0.039);
  EXPECT_NEAR(0.5 * (sums[229] + sums[230]), bent(tenth), 2 * 0.065);
}

}  // namespace
