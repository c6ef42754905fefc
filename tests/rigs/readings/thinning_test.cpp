// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/readings/thinning.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace rigs::readings {
namespace {

// 2000 rows of a straight fall with noise of spread 0.1, each `memory` of the one before.
std::vector<LoggedPoint> logged(double memory) {
  std::mt19937_64 bits(7);
  std::vector<LoggedPoint> log;
  double off = 0.0;
  for (int i = 0; i < 2000; ++i) {
    // Twelve even numbers are as good as a normal one here.
    double z = -6.0;
    for (int k = 0; k < 12; ++k) z += static_cast<double>(bits() >> 11) * 0x1p-53;
    off = memory * off + std::sqrt(1.0 - memory * memory) * 0.1 * z;
    log.push_back({60.0 * i, 66.0 - 0.001 * i + off});
  }
  return log;
}

TEST(Thinned, FewRowsStayAsTheyAre) {
  const std::vector<LoggedPoint> log{{0.0, 66.0}, {600.0, 65.0}, {1200.0, 64.5}};
  const auto few = thinned(log, 40);
  ASSERT_EQ(few.size(), 3u);
  EXPECT_EQ(few[1].at, 600.0);
  EXPECT_EQ(few[1].value, 65.0);
  EXPECT_EQ(few[1].spread, 0.0);
  EXPECT_TRUE(thinned({}, 40).empty());
}

TEST(Thinned, IndependentRowsAreWorthTheirNumber) {
  const auto few = thinned(logged(0.0), 10);
  ASSERT_EQ(few.size(), 10u);
  for (const auto& one : few) {
    EXPECT_EQ(one.rows, 200u);
    EXPECT_NEAR(one.spread, 0.1 / std::sqrt(200.0), 0.002);
    EXPECT_NEAR(one.value, 66.0 - 0.001 * one.at / 60.0, 4.0 * one.spread);
  }
}

TEST(Thinned, RowsThatGoWrongTogetherAreWorthLess) {
  // n(1 - r)/(1 + r) is 200/19 at r = 0.9: three times the spread of independent ones, and more.
  double sum = 0.0;
  for (const auto& one : thinned(logged(0.9), 10)) sum += one.spread / 10.0;
  EXPECT_GT(sum, 0.02);
  EXPECT_LT(sum, 0.04);
}

}  // namespace
}  // namespace rigs::readings
