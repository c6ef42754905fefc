// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/growth.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "tests/support/between.hpp"
#include "tests/support/within.hpp"

namespace physics {
namespace {

using test_support::between;

Temperature atFahrenheit(double degrees) { return celsius((degrees - 32.0) / 1.8); }

// A kettle that cools by Newton's law, as one piece or as several.
std::vector<WarmPiece> cooling(double from, double room, double timeConstant, double howLong,
                               int pieces = 1) {
  const auto after = [&](double h) {
    return celsius(room + (from - room) * std::exp(-h / timeConstant));
  };
  std::vector<WarmPiece> all;
  for (int i = 0; i < pieces; ++i)
    all.push_back({hours(howLong / pieces), after(howLong * i / pieces),
                   after(howLong * (i + 1) / pieces), celsius(room)});
  return all;
}

// Snyder, HITM 2001: hours to double of the fastest pathogen, by F.
TEST(FastestPathogen, DoublesInThePublishedHours) {
  struct Row {
    double degrees, hours;
  };
  for (const Row& row : {Row{30, 297.14}, Row{35, 46.34}, Row{40, 17.99}, Row{41, 15.55},
                         Row{45, 9.49}, Row{50, 5.85}, Row{55, 3.96}, Row{60, 2.86}, Row{70, 1.69},
                         Row{75, 1.36}, Row{80, 1.12}, Row{85, 0.93}, Row{95, 0.68}, Row{100, 0.59},
                         Row{105, 0.52}, Row{115, 0.46}, Row{125, 3.10}}) {
    SCOPED_TRACE(row.degrees);
    const double taken = 1.0 / inPerHour(fastestPathogen(atFahrenheit(row.degrees)));
    // The fit's own 0.8 %, and half a digit of what is printed.
    EXPECT_NEAR(taken, row.hours, 0.008 * row.hours + 0.005);
  }
}

TEST(FastestPathogen, StopsWhereNoneGrows) {
  EXPECT_EQ(fastestPathogen(celsius(-3.0)), perHour(0.0));
  EXPECT_EQ(fastestPathogen(kNoPathogenFrom), perHour(0.0));
  EXPECT_EQ(fastestPathogen(celsius(67.0)), perHour(0.0));
  EXPECT_GT(fastestPathogen(celsius(52.0)), perHour(0.0));
}

// The cardinal model by its own definition: the optimum at the optimum, and nothing at the ends.
TEST(CardinalGrowth, HasItsOptimumAndItsEnds) {
  for (const CardinalGrowth& what : {kSporeFormingLactic, kLacticFromOutside}) {
    EXPECT_NEAR(inPerHour(growthAt(what, what.best)), inPerHour(what.fastest), 1e-12);
    EXPECT_EQ(growthAt(what, what.least), perHour(0.0));
    EXPECT_EQ(growthAt(what, what.most), perHour(0.0));
    EXPECT_LT(growthAt(what, what.best + kelvins(1.0)), what.fastest);
    EXPECT_LT(growthAt(what, what.best - kelvins(1.0)), what.fastest);
  }
}

// Of the same parameters, worked out independently with Python from the model as printed.
TEST(CardinalGrowth, GivesTheModelsRates) {
  struct Row {
    double degrees, spores, outside;
  };
  for (const Row& row : {Row{30, 0.269, 0.784}, Row{42, 0.682, 0.743}, Row{50, 0.948, 0},
                         Row{55, 0.993, 0}, Row{60, 0.683, 0}}) {
    SCOPED_TRACE(row.degrees);
    EXPECT_NEAR(inPerHour(growthAt(kSporeFormingLactic, celsius(row.degrees))), row.spores, 6e-4);
    EXPECT_NEAR(inPerHour(growthAt(kLacticFromOutside, celsius(row.degrees))), row.outside, 6e-4);
  }
}

// Drifts from 67 C in a room of 20 C, worked out independently with Python by the trapezium rule.
// Doublings would be 11.9, 9.5 and 2.5 if they ended with the last row of the table, at 51.7 C; the
// form goes on to 52.55 C, which is on the safe side.
TEST(WarmNight, GrowsWhatTheLawsSay) {
  struct Row {
    double timeConstant, howLong, spores, outside, doublings;
  };
  for (const Row& row : {Row{6.46, 10, 2.52, 2.22, 12.042}, Row{6.46, 8, 2.24, 1.49, 9.582},
                         Row{20, 10, 3.01, 0, 2.650}, Row{40, 10, 1.79, 0, 0}}) {
    SCOPED_TRACE(row.timeConstant);
    const WarmPiece night = cooling(67.0, 20.0, row.timeConstant, row.howLong).front();
    EXPECT_NEAR(tenfolds(kSporeFormingLactic, night), row.spores, 0.006);
    EXPECT_NEAR(tenfolds(kLacticFromOutside, night), row.outside, 0.006);
    EXPECT_NEAR(doublingsOfPathogens(night), row.doublings, 0.002);
  }
}

TEST(WarmNight, ReachesTenDoublingsWhenTheLawSays) {
  const auto six = whenDoubled(cooling(67.0, 20.0, 6.46, 12.0), kMostDoublings);
  const auto ten = whenDoubled(cooling(67.0, 20.0, 10.0, 12.0), kMostDoublings);
  ASSERT_TRUE(six && ten);
  EXPECT_NEAR(inHours(*six), 8.33, 0.02);
  EXPECT_NEAR(inHours(*ten), 9.28, 0.02);
  EXPECT_FALSE(whenDoubled(cooling(67.0, 20.0, 40.0, 10.0), kMostDoublings));
  EXPECT_FALSE(whenDoubled({}, kMostDoublings));
}

// A piece that ends within a hair of its room has still cooled by Newton's law; how near that hair
// is comes out of a difference of two temperatures, to 1e-6.
TEST(WarmNight, IsTheSameNearTheRoomAsAPiece) {
  const auto halves = cooling(25.0, 0.0, 2.0, 40.0, 2);
  const double whole = doublingsOfPathogens(cooling(25.0, 0.0, 2.0, 40.0).front());
  EXPECT_NEAR(doublingsOfPathogens(halves[0]) + doublingsOfPathogens(halves[1]), whole, 1e-7);
}

RC_GTEST_PROP(WarmNight, IsTheSumOfItsPieces, ()) {
  const double from = between(25.0, 80.0);
  const double room = between(0.0, 24.0);
  const double timeConstant = between(2.0, 60.0);
  const double howLong = between(0.5, 40.0);
  const int pieces = *rc::gen::inRange(2, 40);
  double doublings = 0.0;
  double tens = 0.0;
  const auto curve = cooling(from, room, timeConstant, howLong, pieces);
  for (const WarmPiece& piece : curve) {
    doublings += doublingsOfPathogens(piece);
    tens += tenfolds(kSporeFormingLactic, piece);
  }
  const WarmPiece whole = cooling(from, room, timeConstant, howLong).front();
  RC_ASSERT(std::abs(doublings - doublingsOfPathogens(whole)) < 1e-3 * (1.0 + doublings));
  RC_ASSERT(std::abs(tens - tenfolds(kSporeFormingLactic, whole)) < 1e-3 * (1.0 + tens));
  // Never less with time, and the moment it is told for is the one.
  const double wanted = between(0.1, 12.0);
  if (const auto when = whenDoubled(curve, wanted)) {
    RC_ASSERT(inHours(*when) <= howLong * (1.0 + 1e-12));
    const WarmPiece until = cooling(from, room, timeConstant, inHours(*when)).front();
    RC_ASSERT(std::abs(doublingsOfPathogens(until) - wanted) < 2e-3 * (1.0 + wanted));
  } else {
    RC_ASSERT(doublings < wanted + 1e-9);
  }
}

RC_GTEST_PROP(CardinalGrowth, IsNeverNegativeNorFasterThanItsBest, ()) {
  const Temperature t = celsius(between(-10.0, 110.0));
  for (const CardinalGrowth& what : {kSporeFormingLactic, kLacticFromOutside}) {
    RC_ASSERT(growthAt(what, t) >= perHour(0.0));
    RC_ASSERT(inPerHour(growthAt(what, t)) <= inPerHour(what.fastest) * (1.0 + 1e-9));
  }
}

}  // namespace
}  // namespace physics
