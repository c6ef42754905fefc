// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/sweeps.hpp"

#include <gtest/gtest.h>

#include "rigs/answers/figures.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "tests/support/within.hpp"

namespace rigs {
namespace {

using namespace physics;

const Plan& demoSwept() {
  static const Plan plan = [] {
    Problems problems;
    return *readPlan(demoPlanText(), ".", problems);
  }();
  return plan;
}

TEST(Sweeps, MorePowerBoilsSoonerAndHarder) {
  const auto points =
      againstPower(demoSwept().rigs[1], demoSwept(), watts(500.0), watts(6000.0), 12);

  ASSERT_EQ(points.size(), 12u);
  // Under its lid 500 W come to the boil, 50 W do not.
  EXPECT_FALSE(againstPower(demoSwept().rigs[1], demoSwept(), watts(50.0), watts(6000.0), 2)
                   .front()
                   .toBoil.has_value());
  EXPECT_TRUE(points.front().boilOff.has_value()) << "what does not roll evaporates";
  EXPECT_TRUE(points.back().boilOff.has_value());
  for (std::size_t i = 1; i < points.size(); ++i) {
    if (points[i - 1].toBoil) {
      EXPECT_LT(*points[i].toBoil, *points[i - 1].toBoil);
    }
    if (points[i - 1].boilOffPerHour) {
      EXPECT_GT(*points[i].boilOffPerHour, *points[i - 1].boilOffPerHour);
    }
  }
}

// Straight lines between the points must not show as kinks: no step where the curve bends is
// longer than a tenth of what went before.
TEST(Sweeps, StandCloserWhereTheCurvesBend) {
  const auto powers =
      againstPower(demoSwept().rigs[1], demoSwept(), watts(500.0), watts(6000.0), 33);
  EXPECT_EQ(powers.front().element, watts(500.0));
  EXPECT_EQ(powers.back().element, watts(6000.0));
  for (std::size_t i = 1; i < powers.size(); ++i)
    EXPECT_LT(inWatts(powers[i].element), 1.1 * inWatts(powers[i - 1].element));
  const auto layers = againstThickness(demoSwept().rigs[2], demoSwept(), millimetres(50.0), 17);
  EXPECT_LT(inMillimetres(layers[1].thickness), 0.5);
  EXPECT_EQ(layers.back().thickness, millimetres(50.0));
}

TEST(Sweeps, TheRigsOwnPowerLiesOnItsCurve) {
  const RigPlan& rig = demoSwept().rigs[1];
  const auto points =
      againstPower(rig, demoSwept(), rig.rig.element.rating, 2.0 * rig.rig.element.rating, 2);
  const BrewDay day = simulate(rig.rig, demoSwept().batch, demoSwept().place);

  ASSERT_TRUE(points.front().toBoil.has_value());
  EXPECT_WITHIN(*points.front().toBoil, *timeOf(day, StageKind::HeatingToBoil), seconds(0.5));
}

TEST(Sweeps, ThickerJacketsSaveMoreFromBareOn) {
  const auto points = againstThickness(demoSwept().rigs[2], demoSwept(), millimetres(40.0), 6);

  ASSERT_EQ(points.size(), 6u);
  EXPECT_WITHIN(points.front().savedFromWall, joules(0.0), joules(1.0));
  // The first film of it only makes the metal duller, which radiates more; from there on it counts.
  EXPECT_LT(points[1].thickness, millimetres(2.0));
  for (std::size_t i = 2; i < points.size(); ++i) {
    EXPECT_GT(points[i].savedFromWall, points[i - 1].savedFromWall);
    EXPECT_GT(*points[i].savedMoney, *points[i - 1].savedMoney);
    EXPECT_GT(points[i].savedFromWall, points.front().savedFromWall);
  }
}

TEST(Sweeps, AStrongerElementHidesMoreOfWhatAJacketSaves) {
  const auto points =
      jacketAgainstPower(demoSwept().rigs[2], demoSwept(), watts(1700.0), watts(6000.0), 5);

  for (std::size_t i = 1; i < points.size(); ++i) {
    ASSERT_TRUE(points[i].savedToBoil && points[i - 1].savedToBoil);
    EXPECT_LT(*points[i].savedToBoil, *points[i - 1].savedToBoil);
  }
}

}  // namespace
}  // namespace rigs
