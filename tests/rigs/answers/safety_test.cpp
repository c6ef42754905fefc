// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/safety.hpp"

#include <gtest/gtest.h>

#include "tests/rigs/plans/plan_edit.hpp"
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
  EXPECT_EQ(scaldText(celsius(55.0), UnitSystem::SI),
            "At 55 °C bare skin burns to the second degree in 17 s and to the third in 30 s");
  EXPECT_EQ(scaldText(celsius(49.0), UnitSystem::SI),
            "At 49 °C bare skin burns to the second degree in 8 min and to the third in 10 min");
  EXPECT_EQ(scaldText(celsius(60.0), UnitSystem::SI),
            "At 60 °C bare skin burns to the second degree in 3 s and to the third in 5 s");
  EXPECT_EQ(scaldText(celsius(67.0), UnitSystem::SI),
            "At 67 °C bare skin burns to the second degree in 3 s and to the third in 5 s at the "
            "most");
  EXPECT_EQ(scaldText(celsius(40.0), UnitSystem::SI), "");
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
  EXPECT_WITHIN(warmTime(day), hours(5.0), minutes(1.0));
}

// 1650 W take 13.75 A, with 125 % 17.2 A of 15 A; the others' circuits are large enough.
TEST(CircuitCautions, NameTheRigsThatLongUseWouldStop) {
  const auto read = test_support::readChecked(test_support::demoWith({}));
  ASSERT_TRUE(read.plan);
  const Answers answers = answer(*read.plan, Depth::Circuit);
  int told = 0;
  for (const std::string& text :
       cautionTexts(About::Circuit, *read.plan, answers, UnitSystem::SI)) {
    if (text.find("That may be so here: ") == std::string::npos) continue;
    ++told;
    EXPECT_NE(text.find("New element, kitchen: 17.2 A in place of 13.8 A; New element, jacket and "
                        "lid: 17.2 A in place of 13.8 A. "),
              std::string::npos)
        << text;
    EXPECT_EQ(text.find("Old element"), std::string::npos) << text;
  }
  EXPECT_EQ(told, 2);
}

TEST(CircuitCautions, EndWithTheElectrician) {
  const auto read = test_support::readChecked(test_support::demoWith({}));
  ASSERT_TRUE(read.plan);
  const Answers answers = answer(*read.plan, Depth::Circuit);
  const auto all = cautionTexts(About::Circuit, *read.plan, answers, UnitSystem::SI);
  ASSERT_FALSE(all.empty());
  EXPECT_NE(all.back().find("licensed electrician"), std::string::npos);
  EXPECT_NE(all.back().find("local codes"), std::string::npos);
}

}  // namespace
