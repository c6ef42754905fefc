// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/band_causes.hpp"

#include <gtest/gtest.h>

#include <array>
#include <atomic>
#include <cmath>
#include <numbers>
#include <numeric>
#include <vector>

#include "rigs/answers/even_points.hpp"
#include "tests/support/solved_demo.hpp"

namespace {

using namespace rigs;
using test_support::demoPlan;
using test_support::startedPlan;

// The total effects of a function on the unit cube.
template <std::size_t N, class Of>
std::array<double, N> effectsOf(const Of& of, std::size_t count) {
  const auto points = evenPoints(count, 2 * N);
  std::array<double, N> effects{};
  std::vector<double> base;
  for (const auto& point : points) base.push_back(of(point));
  for (std::size_t k = 0; k < N; ++k) {
    std::vector<double> changed;
    for (auto point : points) {
      point[k] = point[N + k];
      changed.push_back(of(point));
    }
    effects[k] = totalEffect(base, changed);
  }
  return effects;
}

// Analytic: 0.557589, 0.442411, 0.243684. The scatter of this estimator at 4096 points is 0.0017.
TEST(TotalEffect, IsThatOfIshigami) {
  const auto effects = effectsOf<3>(
      [](const auto& p) {
        const auto x = [&](std::size_t k) { return std::numbers::pi * (2.0 * p[k] - 1.0); };
        return std::sin(x(0)) + 7.0 * std::pow(std::sin(x(1)), 2) +
               0.1 * std::pow(x(2), 4) * std::sin(x(0));
      },
      4096);
  EXPECT_NEAR(effects[0], 0.557589, 0.006);
  EXPECT_NEAR(effects[1], 0.442411, 0.006);
  EXPECT_NEAR(effects[2], 0.243684, 0.006);
}

// Analytic, for a = 0, 1, 4.5, 9 and four of 99.
TEST(TotalEffect, IsThatOfSobolsProduct) {
  constexpr std::array kA{0.0, 1.0, 4.5, 9.0, 99.0, 99.0, 99.0, 99.0};
  const auto effects = effectsOf<8>(
      [&](const auto& p) {
        double product = 1.0;
        for (std::size_t k = 0; k < kA.size(); ++k)
          product *= (std::abs(4.0 * p[k] - 2.0) + kA[k]) / (1.0 + kA[k]);
        return product;
      },
      4096);
  constexpr std::array kExpected{0.787144, 0.242198, 0.034317, 0.010460,
                                 0.000105, 0.000105, 0.000105, 0.000105};
  for (std::size_t k = 0; k < kExpected.size(); ++k) EXPECT_NEAR(effects[k], kExpected[k], 0.01);
}

// f = x + 2 y + x z: the variance is 1/12 (E(1 + z)^2 + 4 + ...), worked out by hand.
TEST(TotalEffect, CountsWhatMattersOnlyTogether) {
  const auto effects =
      effectsOf<3>([](const auto& p) { return p[0] + 2.0 * p[1] + p[0] * p[2]; }, 4096);
  const double variance = (9.0 / 4.0 + 4.0 + 1.0 / 4.0 + 1.0 / 12.0) / 12.0;
  EXPECT_NEAR(effects[0], 7.0 / 3.0 / 12.0 / variance, 0.006);
  EXPECT_NEAR(effects[1], 4.0 / 12.0 / variance, 0.006);
  EXPECT_NEAR(effects[2], 1.0 / 3.0 / 12.0 / variance, 0.006);
}

TEST(TotalEffect, IsNothingWhereNothingVaries) {
  EXPECT_EQ(totalEffect({2.0, 2.0, 2.0}, {2.0, 2.0, 2.0}), 0.0);
  EXPECT_EQ(totalEffect({kNever, kNever}, {kNever, kNever}), 0.0);
}

TEST(TotalEffect, RanksDaysThatNeverGetThereLast) {
  // Only the first input decides, and beyond a half nothing comes of it.
  const auto effects =
      effectsOf<2>([](const auto& p) { return p[0] < 0.5 ? p[0] + 0.01 * p[1] : kNever; }, 1024);
  EXPECT_GT(effects[0], 0.9);
  EXPECT_LT(effects[1], 0.05);
  EXPECT_GT(effects[1], 0.0);
}

TEST(BandCauses, NameWhatPhysicsSays) {
  const Plan plan = startedPlan("night-unplugged");
  const BandCauses causes = bandCauses(plan, 0).value();
  const auto of = [&](BandOf figure, Unknown what) {
    return causes[placeOf(figure)][placeOf(what)];
  };
  // A night cools by what walls lose; no element is on.
  EXPECT_EQ(foremost(causes[placeOf(BandOf::Morning)]).front(), Unknown::ClosedLosses);
  EXPECT_LT(of(BandOf::Morning, Unknown::Power), 0.02);
  // Strike water is ready when power and amount say so, and cold water.
  EXPECT_EQ(foremost(causes[placeOf(BandOf::WaterReady)]).front(), Unknown::Power);
  EXPECT_EQ(of(BandOf::WaterReady, Unknown::Absorption), 0.0);
  // What grain keeps is missing in the end.
  EXPECT_GT(of(BandOf::Result, Unknown::Absorption), 0.05);
  for (std::size_t figure = 0; figure < kBandsOf; ++figure)
    EXPECT_NEAR(std::accumulate(causes[figure].begin(), causes[figure].end(), 0.0), 1.0, 0.15)
        << figure;
}

TEST(BandCauses, AreNoneOfALidThatIsNotThere) {
  Plan plan = demoPlan();
  plan.rigs[3].rig.vessel.open = {};
  const BandCauses causes = bandCauses(plan, 3, {}, 32).value();
  for (const auto& figure : causes) EXPECT_EQ(figure[placeOf(Unknown::RimGap)], 0.0);
}

// Of a kettle at the edge: whether it rolls at all hangs on its power and on its open surface.
TEST(BandCauses, AreKnownWhereSomeDaysNeverRoll) {
  const BandCauses causes = bandCauses(demoPlan(), 1).value();
  const auto order = foremost(causes[placeOf(BandOf::BoilBegins)]);
  ASSERT_GE(order.size(), 2U);
  for (const Unknown what : {order[0], order[1]})
    EXPECT_TRUE(what == Unknown::Power || what == Unknown::OpenSurface);
  for (const double share : causes[placeOf(BandOf::BoilBegins)]) EXPECT_TRUE(std::isfinite(share));
}

TEST(BandCauses, AreTheSameEveryTimeAndEmptyWhereSomebodyStopsThem) {
  const Plan plan = demoPlan();
  EXPECT_EQ(bandCauses(plan, 2, {}, 16), bandCauses(plan, 2, {}, 16));
  std::atomic<int> asked = 0;
  EXPECT_FALSE(bandCauses(plan, 2, [&] { return ++asked > 40; }));
  EXPECT_LT(asked, 60);
}

TEST(Foremost, AreUpToThreeThatMatter) {
  EXPECT_EQ(foremost({0.04, 0.3, 0.02, 0.5, 0.06, 0.07, 0.0, 0.0}),
            (std::vector{Unknown::Power, Unknown::OpenSurface, Unknown::Water}));
  EXPECT_TRUE(foremost({}).empty());
}

TEST(Narrowing, IsHalfOfTheWidthForThreeQuartersOfTheVariance) {
  EXPECT_DOUBLE_EQ(narrowing(0.75), 0.5);
  EXPECT_DOUBLE_EQ(narrowing(0.0), 0.0);
  EXPECT_DOUBLE_EQ(narrowing(1.02), 1.0);
}

}  // namespace
