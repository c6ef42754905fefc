// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/safety.hpp"

#include <gtest/gtest.h>

#include "tests/support/within.hpp"

namespace {

using namespace physics;
using namespace rigs;

// S4: after Moritz & Henriques (1947), as an industry page tables it. The CPSC's set prints 5 min
// at 120 F, which must never appear here.
TEST(ScaldAt, ReadsOneSetOnly) {
  EXPECT_WITHIN(scaldAt(celsius(55.0))->secondDegree, seconds(17.0), seconds(1e-9));
  EXPECT_WITHIN(scaldAt(celsius(55.0))->thirdDegree, seconds(30.0), seconds(1e-9));
  EXPECT_WITHIN(scaldAt(celsius(60.0))->secondDegree, seconds(3.0), seconds(1e-9));
  EXPECT_WITHIN(scaldAt(celsius(60.0))->thirdDegree, seconds(5.0), seconds(1e-9));
  EXPECT_WITHIN(scaldAt(celsius(49.0))->secondDegree, minutes(8.0), seconds(1e-9));
  EXPECT_WITHIN(scaldAt(celsius(49.0))->thirdDegree, minutes(10.0), seconds(1e-9));
  EXPECT_FALSE(scaldAt(celsius(44.0)));
}

// F1-F4, computed here; limits FDA Food Code 3-501.14(A), doubling USDA.
TEST(CoolingTime, MatchesTheCheckValues) {
  EXPECT_WITHIN(timeConstantForFood(celsius(15.0)).value(), hours(1.03), hours(0.005));
  EXPECT_WITHIN(timeConstantForFood(celsius(20.0)).value(), hours(0.554), hours(0.0005));
  EXPECT_WITHIN(coolingTime(hours(8.0), celsius(57.0), celsius(21.0), celsius(20.0)).value(),
                hours(28.9), hours(0.05));
  EXPECT_WITHIN(coolingTime(hours(8.0), celsius(100.0), celsius(57.0), celsius(20.0)).value(),
                hours(6.17), hours(0.005));
  EXPECT_FALSE(coolingTime(hours(1.0), celsius(57.0), celsius(5.0), celsius(5.0)));
  // As cold already, be it colder than the room.
  EXPECT_EQ(coolingTime(hours(1.0), celsius(57.0), celsius(57.0), celsius(20.0)), seconds(0.0));
  EXPECT_EQ(coolingTime(hours(1.0), celsius(8.0), celsius(57.0), celsius(20.0)), seconds(0.0));
  EXPECT_DOUBLE_EQ(growth(hours(4.0), minutes(20.0)), 4096.0);
}

// S1, S3: saturation of IAPWS-IF97, computed here; why no lid is ever to be closed.
TEST(NewtonsOnLid, MatchesTheCheckValues) {
  EXPECT_NEAR(newtonsOnLid(metres(0.4), celsius(105.0)), 2460.0, 15.0);
  EXPECT_NEAR(newtonsOnLid(metres(0.3), celsius(102.0)), 530.0, 5.0);
}

// S2, computed here: 30 L of wort at 1.05 kg/L in a kettle of 5 kg against NIOSH's 23 kg (read). A
// gravity of 1.05 is on water of 20 C: 0.2 % less.
TEST(HeaviestKettle, IsWellAboveWhatOnePersonLifts) {
  BrewDay day;
  day.preBoilCold = litres(30.0);
  day.preBoilGravity = 1.05;
  day.water = litres(30.0);
  Vessel vessel{};
  vessel.mass = kilograms(5.0);
  Batch batch{};
  EXPECT_WITHIN(heaviestKettle(day, batch, vessel), kilograms(36.5), kilograms(0.005 * 36.5));
  EXPECT_GT(heaviestKettle(day, batch, vessel), kLiftingLimit);
  // Mashed in it is heavier: water, grain and kettle.
  batch.grain.mass = kilograms(6.0);
  EXPECT_WITHIN(heaviestKettle(day, batch, vessel), kilograms(30.0 * 0.9982 + 6.0 + 5.0),
                kilograms(0.01));
}

TEST(WarmTime, CountsWortBetweenFiveAndFiftySevenDegrees) {
  BrewDay day;
  Stage strike{};
  strike.kind = StageKind::Strike;
  strike.first = celsius(12.0);
  strike.last = celsius(70.0);
  strike.end = hours(1.0);
  Stage rest = strike;
  rest.kind = StageKind::UnpluggedRest;
  rest.first = celsius(67.0);
  rest.last = celsius(47.0);
  rest.begin = hours(1.0);
  rest.end = hours(11.0);
  day.stages = {strike, rest};
  RigAnswer rig;
  rig.day = day;
  EXPECT_WITHIN(warmTime(rig), hours(5.0), minutes(1.0));
  // The plan's own night is counted as it cools: by Newton it is sooner below 57 °C.
  rig.night = NightAnswer{};
  rig.night->own = true;
  rig.night->asItIs.warm = hours(6.0);
  EXPECT_WITHIN(warmTime(rig), hours(6.0), minutes(1.0));
}

}  // namespace
