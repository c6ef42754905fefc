// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/fitting/likelihood.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/support/scores.hpp"

namespace rigs::fitting {
namespace {

// Computed for these tests with scipy.stats.norm: Φ((r + w/2 - μ)/σ) - Φ((r - w/2 - μ)/σ).
TEST(RoundedReading, IsAsLikelyAsTheIntervalItStandsFor) {
  const Observation wholeDegree{.value = 30.0, .step = 1.0, .noise = 0.2};
  EXPECT_NEAR(std::exp(lnLikelihood(wholeDegree, 30.3)), .841313, 5e-7);
  EXPECT_NEAR(lnLikelihood(wholeDegree, 30.3), -.172791, 5e-7);
  EXPECT_NEAR(lnLikelihood(wholeDegree, 31.0), -5.081648, 5e-7);
  const Observation fahrenheit{.value = 65.5556, .step = 0.55556, .noise = 0.3};
  EXPECT_NEAR(lnLikelihood(fahrenheit, 66.0), -1.268425, 5e-7);
}

TEST(RoundedReading, FarOutItFallsOnWithoutAnEdge) {
  const Observation seen{.value = 30.0, .step = 0.1, .noise = 0.2};
  double last = lnLikelihood(seen, 30.0);
  for (double off = 0.5; off < 60.0; off += 0.5) {
    const double here = lnLikelihood(seen, 30.0 + off);
    EXPECT_LT(here, last) << off;
    EXPECT_NEAR(lnLikelihood(seen, 30.0 - off), here, 1e-9 * std::abs(here)) << off;
    // As the density times the step, but for the end of the interval that is nearer.
    EXPECT_NEAR(here, std::log(0.1) + lnLikelihood({.value = 30.0, .noise = 0.2}, 30.0 + off),
                0.05 * off / 0.04 + 0.01)
        << off;
    last = here;
  }
}

// 0.95 N(0, 1) + 0.05 N(0, 10²) at z = 0, 2, 3, 5, 10, computed for these tests.
TEST(SlippedReading, CountsLittleOnceItIsFarOff) {
  const Observation seen{.value = 0.0, .noise = 1.0, .wide = 10.0};
  for (const auto& [z, expected] :
       {std::pair{0.0, -.9650}, {2.0, -2.9328}, {3.0, -5.0967}, {5.0, -6.3415}, {10.0, -6.7173}}) {
    EXPECT_NEAR(lnLikelihood(seen, z), expected, 5e-5) << z;
    EXPECT_NEAR(lnSmoothLikelihood(seen, z), expected, 5e-5) << z;
  }
  EXPECT_GT(probablyGood(seen, 0.0), 0.99);
  EXPECT_LT(probablyGood(seen, 5.0), 0.01);
  EXPECT_EQ(probablyGood({.value = 0.0, .noise = 1.0}, 50.0), 1.0);
}

TEST(SlippedReading, WhereTheModelSaysNothingItIsNoLikelihoodAndNoNaN) {
  const Observation seen{.value = 60.0, .noise = 0.2, .wide = 5.0};
  EXPECT_LT(lnLikelihood(seen, std::nan("")), -1e200);
  EXPECT_EQ(probablyGood(seen, std::nan("")), 0.0);
}

// Closed form of Gneiting & Raftery 2007, computed for these tests; members as in the tests of the
// Python package scoringrules.
TEST(Scores, OfKnownForecasts) {
  EXPECT_NEAR(scores::crpsOfNormal(0.0, 1.0, 0.0), .2336949773, 5e-11);
  EXPECT_NEAR(scores::crpsOfNormal(0.0, 1.0, 1.0), .6024413576, 5e-11);
  EXPECT_NEAR(scores::crpsOfNormal(66.0, 1.5, 64.0), 1.2809009698, 5e-11);
  EXPECT_NEAR(scores::crpsOfNormal(30.0, 2.0, 28.5), .8962885044, 5e-11);
  const std::vector<double> four{1.0, 2.0, 3.0, 4.0};
  const std::vector<double> equal(4, 0.25);
  EXPECT_NEAR(scores::crpsOf(four, equal, 2.5), .375, 1e-12);
  EXPECT_NEAR(scores::crpsOf(four, equal, 2.5, true), 1.0 / 6.0, 1e-12);
  EXPECT_NEAR(scores::crpsOf(four, {.1, .4, .3, .2}, 2.5), .300, 1e-12);
  const std::vector<double> five{28.1, 29.0, 29.4, 30.2, 31.5};
  EXPECT_NEAR(scores::crpsOf(five, std::vector<double>(5, 0.2), 30.0), .400, 1e-12);
  EXPECT_NEAR(scores::crpsOf(five, std::vector<double>(5, 0.2), 30.0, true), .240, 1e-12);
  EXPECT_DOUBLE_EQ(scores::intervalScore(28.0, 32.0, 30.0), 4.0);
  EXPECT_DOUBLE_EQ(scores::intervalScore(28.0, 32.0, 33.0), 14.0);
  EXPECT_DOUBLE_EQ(scores::intervalScore(28.0, 32.0, 27.5), 9.0);
}

}  // namespace
}  // namespace rigs::fitting
