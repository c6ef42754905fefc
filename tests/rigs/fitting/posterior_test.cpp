// SPDX-License-Identifier: GPL-3.0-or-later
// Small problems in the shape of ours whose exact answers were found by dense quadrature.
#include "rigs/fitting/posterior.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "rigs/answers/even_points.hpp"

namespace rigs::fitting {
namespace {

double fahrenheit(double degrees) { return (degrees - 32.0) / 1.8; }

// A night: 14 + 53 exp(-m 2.25e-5 t); unknown are ln m and the thermometer's offset.
double cooled(double lnLosses, double atSeconds) {
  return 14.0 + 53.0 * std::exp(-std::exp(lnLosses) * 2.25e-5 * atSeconds);
}
constexpr double kMorning = 36000.0;

struct Night {
  std::vector<double> minutes;
  Evidence evidence;

  Night(std::vector<double> at, const std::vector<double>& read, double step, double wide = 0.0)
      : minutes(std::move(at)) {
    evidence.before = {{0.0, 0.15}, {0.0, 0.5}};
    for (const double value : read) evidence.seen.push_back({value, step, 0.2, wide});
  }
  Model model() const {
    return [this](const std::vector<Numbers>& places) {
      std::vector<Numbers> all;
      for (const Numbers& at : places) {
        all.emplace_back();
        for (const double minute : minutes)
          all.back().push_back(cooled(at[0], 60.0 * minute) + at[1]);
      }
      return all;
    };
  }
};

std::vector<double> inFahrenheit(const std::vector<double>& read) {
  std::vector<double> celsius;
  for (const double one : read) celsius.push_back(fahrenheit(one));
  return celsius;
}

const std::vector<double> kHalfHour{0, 10, 20, 30};
const std::vector<double> kAndFiveHours{0, 10, 20, 30, 300};

Night x1() { return {kHalfHour, inFahrenheit({153, 152, 150, 149}), 1.0 / 1.8}; }
Night x2() { return {kAndFiveHours, inFahrenheit({153, 152, 150, 149, 113}), 1.0 / 1.8}; }
Night x3() { return {kHalfHour, {67, 66, 66, 65}, 1.0}; }
Night x4() { return {kHalfHour, {67.2, 66.3, 65.6, 64.8}, 0.1}; }
Night slipped(double wide) {
  return {kAndFiveHours, inFahrenheit({153, 152, 140, 149, 113}), 1.0 / 1.8, wide};
}

struct Expected {
  double lnLosses, offset, spreadOfLosses, spreadOfOffset, together;
  double losses[3], morning[3];
  double straightMorning, straightSpread;
};

double together(const Matrix& c) { return c(0, 1) / std::sqrt(c(0, 0) * c(1, 1)); }

// How the morning's temperature changes with the unknowns.
Numbers morningSlopes(double lnLosses) {
  const double along = std::exp(lnLosses) * 2.25e-5 * kMorning;
  return {-53.0 * along * std::exp(-along), 0.0};
}

struct Sampled {
  Draws draws;
  Weights weights;
  std::vector<double> losses, morning;
};

Sampled sampled(const Night& night, const std::vector<Story>& stories, std::size_t count) {
  Sampled all{drawsFrom(stories, rigs::evenPoints(count, 3)), {}, {}, {}};
  all.weights = weightsOf(night.evidence, all.draws, night.model()(all.draws.at));
  for (const Numbers& at : all.draws.at) {
    all.losses.push_back(std::exp(at[0]));
    all.morning.push_back(cooled(at[0], kMorning));
  }
  return all;
}

void expectQuantiles(const std::vector<double>& numbers, const Weights& weights,
                     const double (&exact)[3]) {
  const double shares[3] = {0.1, 0.5, 0.9};
  for (int i = 0; i < 3; ++i)
    EXPECT_NEAR(*weightedQuantile(numbers, weights.of, shares[i]), exact[i],
                0.03 * (exact[2] - exact[0]))
        << shares[i];
}

void expectNight(const Night& night, const Expected& expected) {
  const std::vector<Story> stories = storiesOf(night.evidence, night.model());
  ASSERT_EQ(stories.size(), 1u);
  const Story& story = stories.front();
  EXPECT_NEAR(story.at[0], expected.lnLosses, 1e-4);
  EXPECT_NEAR(story.at[1], expected.offset, 1e-4);
  EXPECT_NEAR(std::sqrt(story.covariance(0, 0)), expected.spreadOfLosses, 2e-5);
  EXPECT_NEAR(std::sqrt(story.covariance(1, 1)), expected.spreadOfOffset, 2e-5);
  EXPECT_NEAR(together(story.covariance), expected.together, 2e-4);
  EXPECT_NEAR(cooled(story.at[0], kMorning), expected.straightMorning, 1e-3);
  EXPECT_NEAR(std::sqrt(varianceOf(story.covariance, morningSlopes(story.at[0]))),
              expected.straightSpread, 1e-3);
  const Sampled all = sampled(night, stories, 1024);
  EXPECT_GT(all.weights.effective, 512.0);
  expectQuantiles(all.losses, all.weights, expected.losses);
  expectQuantiles(all.morning, all.weights, expected.morning);
}

TEST(ExactNight, FourReadingsInWholeFahrenheit) {
  expectNight(x1(), {.lnLosses = .040046,
                     .offset = .197160,
                     .spreadOfLosses = .106831,
                     .spreadOfOffset = .164809,
                     .together = .65758,
                     .losses = {.8932, 1.0328, 1.1838},
                     .morning = {34.317, 36.960, 39.707},
                     .straightMorning = 36.8099,
                     .straightSpread = 2.0545});
}

TEST(ExactNight, AndOneMoreFiveHoursLater) {
  expectNight(x2(), {.lnLosses = .302044,
                     .offset = .472007,
                     .spreadOfLosses = .018048,
                     .spreadOfOffset = .135513,
                     .together = .56568,
                     .losses = {1.3217, 1.3522, 1.3842},
                     .morning = {31.272, 31.725, 32.169},
                     .straightMorning = 31.7196,
                     .straightSpread = .3504});
}

TEST(ExactNight, FourInWholeCelsius) {
  expectNight(x3(), {.lnLosses = -.043984,
                     .offset = .010466,
                     .spreadOfLosses = .123493,
                     .spreadOfOffset = .198625,
                     .together = .55160,
                     .losses = {.8118, .9583, 1.1231},
                     .morning = {35.340, 38.388, 41.460},
                     .straightMorning = 38.4138,
                     .straightSpread = 2.3370});
}

TEST(ExactNight, FourInTenths) {
  expectNight(x4(), {.lnLosses = .069699,
                     .offset = .102350,
                     .spreadOfLosses = .093138,
                     .spreadOfOffset = .140426,
                     .together = .70896,
                     .losses = {.9405, 1.0665, 1.1990},
                     .morning = {34.068, 36.341, 38.742},
                     .straightMorning = 36.2384,
                     .straightSpread = 1.7988});
}

// 140 for 150 °F. Without a chance of slips the fit is sure and 1.4 K off.
TEST(ExactNight, ASlipTakenForTrueSpoilsAll) {
  const Night night = slipped(0.0);
  const std::vector<Story> stories = storiesOf(night.evidence, night.model());
  ASSERT_EQ(stories.size(), 1u);
  EXPECT_NEAR(stories[0].at[0], .234972, 1e-4);
  EXPECT_NEAR(stories[0].at[1], -.862949, 1e-4);
  EXPECT_NEAR(cooled(stories[0].at[0], kMorning), 33.0248, 1e-3);
  EXPECT_NEAR(std::sqrt(varianceOf(stories[0].covariance, morningSlopes(stories[0].at[0]))), .3622,
              1e-3);
  const Numbers said = night.model()({stories[0].at}).front();
  double square = 0.0;
  for (std::size_t i = 0; i < said.size(); ++i)
    square +=
        std::pow((night.evidence.seen[i].value - said[i]) / spreadOf(night.evidence.seen[i]), 2);
  EXPECT_NEAR(square, 372.7, 0.5);
}

TEST(ExactNight, ASlipAllowedForIsToldAsTwoStories) {
  const Night night = slipped(5.0);
  const std::vector<Story> stories = storiesOf(night.evidence, night.model());
  ASSERT_EQ(stories.size(), 2u);
  for (const Story& story : stories) EXPECT_LT(story.good[2], 0.01) << "the slip itself";
  EXPECT_NE(stories[0].good[4] > 0.5, stories[1].good[4] > 0.5)
      << "one story believes the last reading, the other does not";
  const Sampled all = sampled(night, stories, 4096);
  EXPECT_GT(all.weights.effective, kEnoughForQuantiles);
  expectQuantiles(all.losses, all.weights, {.9857, 1.3354, 1.3784});
  expectQuantiles(all.morning, all.weights, {31.353, 31.968, 37.852});
}

// Computed for these tests: a normal with t4's weights and with the mixture, prior ± 0.5.
TEST(OneSlip, MovesTheOffsetByAHundredthAndNotByTwoDegrees) {
  const std::vector<double> read{67.0, 66.3, 56.6, 64.9, 62.9};
  const std::vector<double> expected{67, 66.28, 65.58, 64.89, 62.87};
  const Model model = [&](const std::vector<Numbers>& places) {
    std::vector<Numbers> all;
    for (const Numbers& at : places) {
      all.emplace_back();
      for (const double one : expected) all.back().push_back(one + at[0]);
    }
    return all;
  };
  Evidence evidence{{{0.0, 0.5}}, {}};
  for (const double one : read) evidence.seen.push_back({one, 0.0, 0.26, 0.0});
  EXPECT_NEAR(storiesOf(evidence, model).front().at[0], -1.6925, 5e-5);
  for (Observation& one : evidence.seen) one.wide = 5.0;
  const std::vector<Story> stories = storiesOf(evidence, model);
  EXPECT_NEAR(stories.front().at[0], .0083, 2e-4);
  EXPECT_LT(stories.front().good[2], 1e-3);
}

// A heating to the boil: water, power and the thermometer's offset; with and without a meter.
struct Heating {
  Evidence evidence;
  bool meter;

  explicit Heating(bool withMeter) : meter(withMeter) {
    evidence.before = {{0.0, .03}, {-.025, .066}, {0.0, 0.5}};
    for (const double one : inFahrenheit({54, 101, 147, 192}))
      evidence.seen.push_back({one, 0.0, .256359, 0.0});
    if (withMeter) evidence.seen.push_back({2.86, 0.0, .03, 0.0});
  }
  Model model() const {
    return [this](const std::vector<Numbers>& places) {
      std::vector<Numbers> all;
      for (const Numbers& at : places) {
        all.emplace_back();
        const double power = std::exp(at[1]);
        const double last = 14.0 + power * 3000.0 / 3.5;
        for (const double minute : {0.0, 20.0, 40.0, 60.0})
          all.back().push_back(
              last + (12.0 - last) * std::exp(-3.5 * 60.0 * minute / (std::exp(at[0]) * 120e3)) +
              at[2]);
        if (meter) all.back().push_back(3.0 * power);
      }
      return all;
    };
  }
};

TEST(ExactHeating, TemperaturesAloneTellOnlyPowerPerLitre) {
  const Heating heating(false);
  const Story story = storiesOf(heating.evidence, heating.model()).front();
  EXPECT_NEAR(story.at[0], .017389, 1e-4);
  EXPECT_NEAR(story.at[1], -.093959, 1e-4);
  EXPECT_NEAR(story.at[2], .04217, 1e-3);
  EXPECT_NEAR(std::sqrt(story.covariance(0, 0)), .02741, 1e-4);
  EXPECT_NEAR(std::sqrt(story.covariance(1, 1)), .02636, 1e-4);
  EXPECT_NEAR(together(story.covariance), .9869, 5e-4);
}

TEST(ExactHeating, AMeterTellsThemApart) {
  const Heating heating(true);
  const Story story = storiesOf(heating.evidence, heating.model()).front();
  EXPECT_NEAR(story.at[0], .058200, 1e-4);
  EXPECT_NEAR(story.at[1], -.054152, 1e-4);
  EXPECT_NEAR(story.at[2], .02501, 1e-3);
  EXPECT_NEAR(std::sqrt(story.covariance(0, 0)), .01097, 5e-5);
  EXPECT_NEAR(std::sqrt(story.covariance(1, 1)), .00980, 5e-5);
  EXPECT_NEAR(together(story.covariance), .9157, 5e-4);
}

// Lee, Bayesian Statistics: the age of a rock (from memory), and a loss after one night.
TEST(OneNormalReading, UpdatesANormalBelief) {
  const auto update = [](double mean, double spread, double read, double noise) {
    const Model model = [](const std::vector<Numbers>& places) { return places; };
    return storiesOf({{{mean, spread}}, {{read, 0.0, noise, 0.0}}}, model).front();
  };
  const Story rock = update(370.0, 20.0, 421.0, 8.0);
  EXPECT_NEAR(rock.at[0], 413.9655, 5e-5);
  EXPECT_NEAR(std::sqrt(rock.covariance(0, 0)), 7.42781, 5e-6);
  EXPECT_NEAR(surprise(421.0, 370.0, 20.0, 8.0), 2.3676, 5e-5);
  const Story losses = update(1.0, 0.15, 1.42, 0.10);
  EXPECT_NEAR(losses.at[0], 1.290769, 5e-7);
  EXPECT_NEAR(std::sqrt(losses.covariance(0, 0)), .083205, 5e-7);
  EXPECT_NEAR(surprise(1.42, 1.0, 0.15, 0.10), 2.3297, 5e-5);
}

TEST(NoReading, GivesTheBeliefsBack) {
  const Model nothing = [](const std::vector<Numbers>& places) {
    return std::vector<Numbers>(places.size());
  };
  const Evidence evidence{{{0.1, 0.15}, {0.0, 0.5}}, {}};
  const std::vector<Story> stories = storiesOf(evidence, nothing);
  ASSERT_EQ(stories.size(), 1u);
  EXPECT_NEAR(stories[0].at[0], 0.1, 1e-9);
  EXPECT_NEAR(std::sqrt(stories[0].covariance(0, 0)), 0.15, 1e-6);
  const Draws draws = drawsFrom(stories, rigs::evenPoints(1024, 3));
  const Weights weights = weightsOf(evidence, draws, std::vector<Numbers>(1024));
  std::vector<double> first;
  for (const Numbers& at : draws.at) first.push_back(at[0]);
  EXPECT_NEAR(*weightedQuantile(first, weights.of, 0.9), 0.1 + 1.28155 * 0.15, 0.005);
}

TEST(Stories, AreNoneWhereTheModelSaysNothing) {
  const Model never = [](const std::vector<Numbers>& places) {
    return std::vector<Numbers>(places.size(), Numbers{std::nan("")});
  };
  EXPECT_TRUE(storiesOf({{{0.0, 1.0}}, {{60.0, 1.0, 0.2, 5.0}}}, never).empty());
}

// A loss m beside what a gap b of unknown size lets out, both bending the other, read closely. The
// ridge is bent; dense sums over both unknowns are the exact answer.
TEST(BentRidge, IsFollowedByDrawsAlongIt) {
  const auto said = [](double m, double b) {
    return 10.0 * std::exp(3.0 * m * std::exp(0.3 * b)) * (1.0 + 0.5 * std::exp(0.8 * b));
  };
  const Model model = [&](const std::vector<Numbers>& places) {
    std::vector<Numbers> all;
    for (const Numbers& at : places) all.push_back({said(at[0], at[1])});
    return all;
  };
  const Evidence evidence{{{0.0, 0.3}, {0.0, 1.0}}, {{16.0, 0.0, 0.05, 0.0}}};
  double sum = 0.0, below = 0.0;
  const double bound = -0.02;
  for (double b = -5.0; b <= 5.0; b += 0.01)
    for (double m = -1.5; m <= 1.0; m += 0.0005) {
      const double z = (16.0 - said(m, b)) / 0.05;
      const double p = std::exp(-0.5 * (z * z + m * m / 0.09 + b * b));
      sum += p;
      if (m < bound) below += p;
    }
  const std::vector<Story> stories = storiesOf(evidence, model);
  ASSERT_EQ(stories.size(), 1u);
  const auto points = rigs::evenPoints(1024, 3);
  const Draws straight = drawsFrom(stories, points);
  const Draws along =
      drawsAlong(evidence, model, stories[0], tightest(evidence, stories[0]), points);
  const Weights poor = weightsOf(evidence, straight, model(straight.at));
  const Weights good = weightsOf(evidence, along, model(along.at));
  EXPECT_LT(poor.effective, 150.0);
  EXPECT_GT(good.effective, 400.0);
  double share = 0.0;
  for (std::size_t i = 0; i < along.at.size(); ++i)
    if (along.at[i][0] < bound) share += good.of[i];
  EXPECT_NEAR(share, below / sum, 0.005);
  EXPECT_GT(below / sum, 0.05);
}

TEST(WeightedQuantile, NumbersThatNeverComeStayInTheSample) {
  const double never = std::numeric_limits<double>::infinity();
  const std::vector<double> numbers{never, 3.0, 1.0, 2.0};
  const std::vector<double> weights{0.25, 0.25, 0.25, 0.25};
  EXPECT_DOUBLE_EQ(*weightedQuantile(numbers, weights, 0.375), 2.0);
  EXPECT_DOUBLE_EQ(*weightedQuantile(numbers, weights, 0.5), 2.5);
  EXPECT_DOUBLE_EQ(*weightedQuantile(numbers, weights, 0.01), 1.0);
  EXPECT_FALSE(weightedQuantile(numbers, weights, 0.9));
  // A weight of nothing counts for nothing.
  EXPECT_DOUBLE_EQ(*weightedQuantile(numbers, {0.0, 0.0, 1.0, 0.0}, 0.9), 1.0);
}

// One night reading of ln m: the gradient is -ΔT0 (t/τ) e^(-t/τ), largest at t = τ.
TEST(NextReading, OneAtTheTimeConstantTellsMost) {
  Matrix before(1, 1);
  before(0, 0) = 0.15 * 0.15;
  const auto left = [&](double hours) {
    const double along = hours / 12.5;
    return varianceAfter(before, {1.0}, {-53.0 * along * std::exp(-along)}, 0.25);
  };
  EXPECT_LT(left(12.5), left(8.0));
  EXPECT_LT(left(12.5), left(20.0));
  // As the conjugate update has it: 1/(1/s0² + j²/s²).
  const double slope = 53.0 * std::exp(-1.0);
  EXPECT_NEAR(left(12.5), 1.0 / (1.0 / before(0, 0) + slope * slope / 0.0625), 1e-12);
}

}  // namespace
}  // namespace rigs::fitting
