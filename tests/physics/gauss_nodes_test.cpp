// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/gauss_nodes.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <cmath>

#include "physics/law_image.hpp"
#include "tests/support/between.hpp"

namespace physics {
namespace {

using test_support::between;

// Abramowitz and Stegun, table 25.4: abscissas and weights on -1 to 1, n = 4 and 8.
TEST(GaussNodes, AreThoseOfTheTable) {
  const GaussNodes& four = GaussNodes::of(4);
  EXPECT_NEAR(2.0 * four.place(3) - 1.0, 0.861136311594053, 1e-15);
  EXPECT_NEAR(2.0 * four.weight(3), 0.347854845137454, 1e-15);
  EXPECT_NEAR(2.0 * four.place(2) - 1.0, 0.339981043584856, 1e-15);
  EXPECT_NEAR(2.0 * four.weight(2), 0.652145154862546, 1e-15);
  const GaussNodes& eight = GaussNodes::of(8);
  EXPECT_NEAR(2.0 * eight.place(7) - 1.0, 0.960289856497536, 1e-15);
  EXPECT_NEAR(2.0 * eight.weight(7), 0.101228536290376, 1e-15);
}

struct Polynomial {
  std::array<double, 24> c{};
  std::size_t degree;
  double at(double x) const {
    double value = 0.0;
    for (std::size_t k = degree + 1; k-- > 0;) value = value * x + c[k];
    return value;
  }
  double integralTo(double x) const {
    double value = 0.0;
    for (std::size_t k = degree + 1; k-- > 0;) value = value * x + c[k] / double(k + 1);
    return value * x;
  }
};
Polynomial someOf(std::size_t degree) {
  Polynomial p{.c = {}, .degree = degree};
  for (std::size_t k = 0; k <= degree; ++k) p.c[k] = between(-1.0, 1.0);
  return p;
}

// All of the way up to degree 2 n - 1; to a place within it, and the values, up to n - 1.
RC_GTEST_PROP(GaussNodes, IntegrateAndFollowPolynomials, ()) {
  const std::size_t n = 2 + static_cast<std::size_t>(between(0.0, 10.99));
  const GaussNodes& nodes = GaussNodes::of(n);
  const auto valuesOf = [&](const Polynomial& p) {
    GaussNodes::Values values{};
    for (std::size_t i = 0; i < n; ++i) values[i] = p.at(nodes.place(i));
    return values;
  };
  const Polynomial high = someOf(2 * n - 1);
  RC_ASSERT(std::abs(nodes.sum(valuesOf(high)) - high.integralTo(1.0)) < 1e-13);
  const Polynomial low = someOf(n - 1);
  const GaussNodes::Values values = valuesOf(low);
  const GaussNodes::Values series = nodes.series(values);
  const double x = between(0.0, 1.0);
  RC_ASSERT(std::abs(nodes.valueAt(x, series) - low.at(x)) < 1e-12);
  RC_ASSERT(std::abs(nodes.integralTo(x, series) - low.integralTo(x)) < 1e-12);
  RC_ASSERT(std::abs(nodes.sum(nodes.weightsAt(x), values) - low.at(x)) < 1e-12);
  RC_ASSERT(std::abs(nodes.sum(nodes.weightsUpTo(x), values) - low.integralTo(x)) < 1e-12);
  GaussNodes::Values each{};
  for (std::size_t i = 0; i < nodes.count(); ++i) each[i] = nodes.upTo(i, values);
  RC_ASSERT(std::abs(each[n - 1] - low.integralTo(nodes.place(n - 1))) < 1e-12);
}

RC_GTEST_PROP(LawImage, IsThePolynomialItShows, ()) {
  const Polynomial p = someOf(8);
  const double low = between(-1.0, 0.0);
  const double high = low + between(0.1, 1.0);
  const LawImage<9> image([&](double x) { return p.at(x); }, low, high);
  const double x = between(low, high);
  RC_ASSERT(std::abs(image(x) - p.at(x)) < 1e-12);
}

}  // namespace
}  // namespace physics
