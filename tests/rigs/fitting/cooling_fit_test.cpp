// SPDX-License-Identifier: GPL-3.0-or-later
// Cooling fitted to closed forms and to measured mugs, and why a room is never left free.
#include <gtest/gtest.h>

#include <cmath>

#include "rigs/fitting/least_squares.hpp"

namespace rigs::fitting {
namespace {

// a + b e^(-k t)
Model oneExponential(const std::vector<double>& t, const std::vector<double>& read) {
  return [&](const std::vector<Numbers>& places) {
    std::vector<Numbers> all;
    for (const Numbers& at : places) {
      all.emplace_back();
      for (std::size_t i = 0; i < t.size(); ++i)
        all.back().push_back(at[0] + at[1] * std::exp(-at[2] * t[i]) - read[i]);
    }
    return all;
  };
}

double deviation(const Fit& fit, std::size_t readings) {
  return std::sqrt(fit.sumOfSquares / static_cast<double>(readings - fit.at.size()));
}

// 80 mL of water in still air, from about 90 °C: github.com/myphysicslabathome/Water-Cooling-Curve,
// thinned. With the room left free the fit is sure, within a third of a kelvin, of a "room" of 38
// °C: the water was at 41.7 °C at last, still falling. Fit by scipy, computed for this test.
TEST(CoolingFit, LeavesNoRoomFreeSinceEvaporationWouldGoIntoIt) {
  const std::vector<double> seconds{0,    61,   122,  182,  243,  303,  364,  424,  485,
                                    546,  606,  667,  727,  788,  849,  909,  970,  1031,
                                    1091, 1151, 1212, 1272, 1332, 1393, 1453, 1514, 1574,
                                    1634, 1695, 1755, 1816, 1876, 1937, 1997, 2057, 2118};
  const std::vector<double> celsius{86.2, 82.2, 79.2, 75.9, 73.4, 70.8, 68.8, 66.6, 64.7,
                                    63.1, 61.5, 60.1, 58.8, 57.4, 56.2, 54.9, 53.9, 53.0,
                                    51.8, 51.0, 50.2, 49.5, 48.6, 47.9, 47.2, 46.8, 46.3,
                                    45.5, 44.8, 44.5, 44.0, 43.4, 42.7, 42.4, 42.2, 41.7};
  std::vector<double> minutes;
  for (const double one : seconds) minutes.push_back(one / 60.0);
  const Fit fit = leastSquaresFit(oneExponential(minutes, celsius), {20.0, 60.0, 0.05});
  EXPECT_NEAR(fit.at[0], 37.956, 5e-4);
  EXPECT_NEAR(fit.at[1], 47.184, 5e-4);
  EXPECT_NEAR(fit.at[2], .068023, 5e-7);
  EXPECT_NEAR(deviation(fit, 36), .377, 5e-4);
  EXPECT_NEAR(deviation(fit, 36) * std::sqrt(fit.covariance(0, 0)), .323, 5e-4);
}

// A mug under oil, logged in °F: fastR2's CoolingWater data, thinned. Fit by scipy, for this test.
TEST(CoolingFit, OfAMugUnderOilHasAMilderCurve) {
  std::vector<double> minutes{6.0 / 60.0};
  for (int i = 1; i <= 19; ++i) minutes.push_back((6.0 + 180.0 * i) / 60.0);
  std::vector<double> celsius;
  for (const double f : {188.0, 183.0, 177.1, 171.0, 165.2, 159.4, 154.2, 149.4, 144.7, 140.5,
                         136.6, 132.8, 129.2, 126.1, 123.1, 120.2, 117.5, 115.0, 112.8, 110.7})
    celsius.push_back((f - 32.0) / 1.8);
  const Fit fit = leastSquaresFit(oneExponential(minutes, celsius), {20.0, 60.0, 0.05});
  EXPECT_NEAR(fit.at[0], 22.993, 5e-4);
  EXPECT_NEAR(fit.at[1], 64.636, 5e-4);
  EXPECT_NEAR(fit.at[2], .0201443, 5e-8);
  EXPECT_NEAR(deviation(fit, 20), .298, 5e-4);
  EXPECT_NEAR(deviation(fit, 20) * std::sqrt(fit.covariance(0, 0)), 1.277, 5e-4);
}

// 120 kJ/K from 67 to 30 °C in 15 h in a room of 14 °C: UA = (C/Δt) ln(53/16) = 2.6616 W/K.
TEST(CoolingFit, OfTwoReadingsIsTheClosedForm) {
  const Model loss = [](const std::vector<Numbers>& places) {
    std::vector<Numbers> all;
    for (const Numbers& at : places)
      all.push_back({14.0 + 53.0 * std::exp(-at[0] * 15.0 * 3600.0 / 120e3) - 30.0});
    return all;
  };
  const Fit fit = leastSquaresFit(loss, {1.0});
  EXPECT_NEAR(fit.at[0], 2.6616, 5e-5);
  EXPECT_NEAR(120e3 / fit.at[0] / 3600.0, 12.524, 5e-4);
  // Half a kelvin in each reading is 2.7 %, a kelvin in the room 3.6 %.
  const double perKelvinLast = std::sqrt(fit.covariance(0, 0)) / fit.at[0];
  EXPECT_NEAR(perKelvinLast, 1.0 / 16.0 / std::log(53.0 / 16.0), 1e-6);
  EXPECT_NEAR(0.5 * std::hypot(perKelvinLast, 1.0 / 53.0 / std::log(53.0 / 16.0)), .027, 5e-4);
}

// Loss ∝ ΔT^1.12, 2.7 W/K at 50 K: what a constant fitted in the first half hour predicts by
// morning is too cold by more than a kelvin.
TEST(CoolingFit, OfTheFirstHalfHourPredictsTooColdAMorning) {
  const double k = 2.7 / 120e3 / std::pow(50.0, 0.12);
  const auto curved = [&](double hours) {
    return 14.0 + std::pow(std::pow(53.0, -0.12) + 0.12 * k * 3600.0 * hours, -1.0 / 0.12);
  };
  for (const auto& [hours, celsius] :
       {std::pair{0.5, 64.887}, {5.0, 49.592}, {10.0, 38.340}, {15.0, 30.923}})
    EXPECT_NEAR(curved(hours), celsius, 5e-4);
  const Model constant = [&](const std::vector<Numbers>& places) {
    std::vector<Numbers> all;
    for (const Numbers& at : places)
      all.push_back({14.0 + 53.0 * std::exp(-at[0] * 0.5) - curved(0.5)});
    return all;
  };
  const double perHour = leastSquaresFit(constant, {0.05}).at[0];
  EXPECT_LT(14.0 + 53.0 * std::exp(-perHour * 15.0), curved(15.0) - 1.0);
}

}  // namespace
}  // namespace rigs::fitting
