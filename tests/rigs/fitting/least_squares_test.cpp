// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/fitting/least_squares.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/rigs/fitting/certified_sets.hpp"

namespace rigs::fitting {
namespace {

double residualVariance(const Fit& fit, std::size_t readings) {
  return fit.sumOfSquares / static_cast<double>(readings - fit.at.size());
}

double standardError(const Fit& fit, std::size_t readings, std::size_t k) {
  return std::sqrt(residualVariance(fit, readings) * fit.covariance(k, k));
}

void expectDigits(double found, double certified, double digits, const std::string& what) {
  EXPECT_NEAR(found, certified, std::abs(certified) * 0.5 * std::pow(10.0, 1.0 - digits)) << what;
}

class CertifiedSets : public testing::TestWithParam<CertifiedSet> {};
INSTANTIATE_TEST_SUITE_P(Nist, CertifiedSets, testing::ValuesIn(certifiedSets()),
                         [](const auto& one) { return one.param.name; });

TEST_P(CertifiedSets, ComeOutToSixDigitsFromBothStartsTogether) {
  const CertifiedSet& set = GetParam();
  const std::vector<Fit> fits = fitsFrom(residualsOf(set), set.starts);
  const Fit& best = fits.front();
  const std::size_t n = set.y.size();
  EXPECT_TRUE(best.settled);
  for (std::size_t k = 0; k < set.b.size(); ++k) {
    expectDigits(best.at[k], set.b[k], set.digits, set.name + " parameter");
    expectDigits(standardError(best, n, k), set.standardError[k], std::min(5.0, set.digits),
                 set.name + " standard error");
  }
  expectDigits(std::sqrt(residualVariance(best, n)), set.residualDeviation, set.digits,
               set.name + " residual standard deviation");
}

// From each start alone it is the certified place, or its sum of squares tells that it is not.
TEST_P(CertifiedSets, AFalseOptimumIsToldByAnotherStart) {
  const CertifiedSet& set = GetParam();
  const double certified =
      std::pow(set.residualDeviation, 2) * static_cast<double>(set.y.size() - set.b.size());
  for (const auto& start : set.starts) {
    const Fit fit = leastSquaresFit(residualsOf(set), start);
    const bool right = std::abs(fit.sumOfSquares / certified - 1.0) < 1e-5;
    const bool worse = fit.sumOfSquares > 1.5 * certified;
    EXPECT_TRUE(right || worse) << fit.sumOfSquares << " after " << fit.rounds;
    if (worse) {
      EXPECT_EQ(fitsFrom(residualsOf(set), set.starts).size(), 2u);
    }
  }
}

Model straight(const std::vector<double>& x, const std::vector<double>& y, bool through0) {
  return [x, y, through0](const std::vector<Numbers>& places) {
    std::vector<Numbers> all;
    for (const Numbers& b : places) {
      all.emplace_back();
      for (std::size_t i = 0; i < x.size(); ++i)
        all.back().push_back((through0 ? b[0] * x[i] : b[0] + b[1] * x[i]) - y[i]);
    }
    return all;
  };
}

// NIST StRD linear regression, set NoInt1 (from memory): y = b x, x = 60 ... 70, y = 130 ... 140.
TEST(StraightLines, ThroughTheOriginAsCertified) {
  std::vector<double> x, y;
  for (int i = 0; i <= 10; ++i) {
    x.push_back(60.0 + i);
    y.push_back(130.0 + i);
  }
  const Fit fit = leastSquaresFit(straight(x, y, true), {1.0});
  expectDigits(fit.at[0], 2.07438016528926, 9.0, "slope");
  expectDigits(standardError(fit, 11, 0), .0165289256119834, 8.0, "standard error");
  expectDigits(std::sqrt(residualVariance(fit, 11)), 3.56753034006338, 8.0, "deviation");
}

// GUM (JCGM 100:2008) H.3, calibration of a thermometer, as in GTC's and suncal's tests.
TEST(StraightLines, CalibrateTheThermometerOfTheGuide) {
  const std::vector<double> t{21.521, 22.012, 22.512, 23.003, 23.507, 23.999,
                              24.513, 25.002, 25.503, 26.010, 26.511};
  const std::vector<double> correction{-.171, -.169, -.166, -.159, -.164, -.165,
                                       -.156, -.157, -.159, -.161, -.160};
  std::vector<double> above20;
  for (const double one : t) above20.push_back(one - 20.0);
  const Fit fit = leastSquaresFit(straight(above20, correction, false), {0.1, 0.1});
  const double s2 = residualVariance(fit, 11);
  EXPECT_NEAR(fit.at[0], -.1712, .00005);
  EXPECT_NEAR(fit.at[1], .00218, .000005);
  EXPECT_NEAR(standardError(fit, 11, 0), .0029, .00005);
  EXPECT_NEAR(standardError(fit, 11, 1), .00067, .000005);
  EXPECT_NEAR(fit.covariance(0, 1) / std::sqrt(fit.covariance(0, 0) * fit.covariance(1, 1)), -.930,
              .0005);
  EXPECT_NEAR(std::sqrt(s2), .0035, .00005);
  // At 30 °C, with the correlation; without it .00727 would be told.
  EXPECT_NEAR(fit.at[0] + 10.0 * fit.at[1], -.1494, .00005);
  const double variance =
      s2 * (fit.covariance(0, 0) + 20.0 * fit.covariance(0, 1) + 100.0 * fit.covariance(1, 1));
  EXPECT_NEAR(std::sqrt(variance), .0041, .00005);
}

// Pearson's data with York's weights: errors in both coordinates, the true x as unknowns of their
// own. Intercept, slope and χ²/(n-2) as in GTC's test_type_a.py; uncertainties there after Kalantar
// 1992, and conventions differ by 2 %.
TEST(StraightLines, WithErrorsInBothCoordinates) {
  const std::vector<double> x{0, .9, 1.8, 2.6, 3.3, 4.4, 5.2, 6.1, 6.5, 7.4};
  const std::vector<double> wx{1000, 1000, 500, 800, 200, 80, 60, 20, 1.8, 1};
  const std::vector<double> y{5.9, 5.4, 4.4, 4.6, 3.5, 3.7, 2.8, 2.8, 2.4, 1.5};
  const std::vector<double> wy{1, 1.8, 4, 8, 20, 20, 70, 70, 100, 500};
  const Model both = [&](const std::vector<Numbers>& places) {
    std::vector<Numbers> all;
    for (const Numbers& at : places) {
      all.emplace_back();
      for (std::size_t i = 0; i < x.size(); ++i) {
        all.back().push_back(std::sqrt(wx[i]) * (at[2 + i] - x[i]));
        all.back().push_back(std::sqrt(wy[i]) * (at[0] + at[1] * at[2 + i] - y[i]));
      }
    }
    return all;
  };
  Numbers start{5.0, -0.5};
  start.insert(start.end(), x.begin(), x.end());
  const Fit fit = leastSquaresFit(both, start);
  EXPECT_NEAR(fit.at[0], 5.47991022, 5e-7);
  EXPECT_NEAR(fit.at[1], -.480533407, 5e-8);
  EXPECT_NEAR(fit.sumOfSquares / 8.0, 1.4833, 5e-5);
  EXPECT_NEAR(std::sqrt(fit.covariance(0, 0)) / .29193, 1.0, .02);
  EXPECT_NEAR(std::sqrt(fit.covariance(1, 1)) / .057617, 1.0, .02);
}

TEST(LeastSquaresFit, TellsWhereAnUnknownHasNoEffect) {
  const Model one = [](const std::vector<Numbers>& places) {
    std::vector<Numbers> all;
    for (const Numbers& at : places) all.push_back({at[0] - 3.0, 2.0 * at[0] - 6.0});
    return all;
  };
  const Fit fit = leastSquaresFit(one, {1.0, 1.0});
  EXPECT_NEAR(fit.at[0], 3.0, 1e-9);
  EXPECT_EQ(fit.covariance.rows(), 0u);
}

TEST(LeastSquaresFit, StaysWhereTheModelSaysSomething) {
  // The least is at ln x = -5, where x is found; the model says nothing below 0.
  const Model logarithm = [](const std::vector<Numbers>& places) {
    std::vector<Numbers> all;
    for (const Numbers& at : places) all.push_back({std::log(at[0]) + 5.0});
    return all;
  };
  const Fit fit = leastSquaresFit(logarithm, {3.0});
  EXPECT_TRUE(fit.settled);
  EXPECT_NEAR(fit.at[0], std::exp(-5.0), 1e-9);
}

}  // namespace
}  // namespace rigs::fitting
