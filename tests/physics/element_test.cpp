// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/element.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "tests/support/between.hpp"
#include "tests/support/printed_units.hpp"
#include "tests/support/within.hpp"

namespace physics {
namespace {

using test_support::between;
using test_support::kFoot;

Element element(double watt, double volt) {
  return {.rating = watts(watt), .ratedAt = volts(volt), .topHeight = metres(0.0)};
}
Supply supply(double volt, double loopOhm = 0.0) {
  return {.nominal = volts(volt), .rating = amperes(20.0), .cableLoop = ohms(loopOhm)};
}

// V^2/R and V/R computed here to the digits shown, but for the fifth row: a textbook question
// prints 4800 W and 12 ohm for a 240 V heater that draws 20 A.
TEST(ElectricalLoad, FollowsTheSquareOfTheVoltage) {
  struct Row {
    double watt, ratedAt, volt, delivered, ampere;
  };
  for (const Row& row : {Row{5500, 240, 208, 4131.1, 19.861}, Row{5500, 240, 230, 5051.2, 21.962},
                         Row{5500, 240, 120, 1375.0, 11.458}, Row{3500, 240, 230, 3214.4, 13.976},
                         Row{4800, 240, 240, 4800.0, 20.000}, Row{3000, 230, 240, 3266.5, 13.611},
                         Row{3000, 230, 253, 3630.0, 14.348}, Row{3000, 240, 230, 2755.2, 11.979},
                         Row{1650, 120, 110, 1386.5, 12.604}, Row{4500, 240, 120, 1125.0, 9.375},
                         Row{2000, 120, 100, 1388.9, 13.889}, Row{2200, 230, 253, 2662.0, 10.522},
                         Row{4050, 240, 228, 3655.1, 16.031}}) {
    SCOPED_TRACE(row.delivered);
    const ElectricalLoad load = electricalLoad(element(row.watt, row.ratedAt), supply(row.volt));
    EXPECT_WITHIN(load.delivered, watts(row.delivered), watts(0.06));
    EXPECT_WITHIN(load.current, amperes(row.ampere), amperes(0.0006));
    EXPECT_WITHIN(load.inCable, watts(0.0), watts(0.0));
    EXPECT_WITHIN(load.fromWall, load.delivered, watts(1e-9));
  }
  for (const auto& [volt, watt] : {std::pair{228.0, 4963.8}, std::pair{252.0, 6063.8}}) {
    EXPECT_WITHIN(electricalLoad(element(5500, 240), supply(volt)).delivered, watts(watt),
                  watts(0.06));
  }
  for (const auto& [volt, watt] : {std::pair{95.0, 1353.8}, std::pair{107.0, 1717.4}}) {
    EXPECT_WITHIN(electricalLoad(element(1500, 100), supply(volt)).delivered, watts(watt),
                  watts(0.06));
  }
  EXPECT_WITHIN(resistance(element(5500, 240)), ohms(10.473), ohms(0.0006));
  EXPECT_WITHIN(resistance(element(4800, 240)), ohms(12.0), ohms(1e-12));
}

// Cable examples with the loop resistance of NEC chapter 9 table 8 (stranded, ohms per 1000 ft,
// 75 C), computed here: element and cable in series.
TEST(ElectricalLoad, ReproducesCablesInFeetAndGauge) {
  struct Row {
    double watt, volt, feet, ohmPerThousandFeet, ampere, terminals, delivered, inCable, dropShare;
  };
  for (const Row& row : {Row{5500, 240, 60, 1.24, 22.596, 236.64, 5347.0, 76.0, 0.0140},
                         Row{5500, 240, 100, 0.778, 22.581, 236.49, 5340.0, 79.0, 0.01464},
                         Row{1650, 120, 75, 3.14, 13.046, 113.86, 1485.0, 80.0, 0.0512},
                         Row{1500, 120, 100, 4.99, 11.323, 108.7, 1231.0, 128.0, 0.0942},
                         Row{4500, 240, 75, 1.24, 18.481, 236.56, 4372.0, 63.5, 0.01432},
                         Row{3500, 240, 80, 1.98, 14.308, 235.47, 3369.0, 65.0, 0.01889}}) {
    SCOPED_TRACE(row.ampere);
    const double loop = 2.0 * row.feet * row.ohmPerThousandFeet / 1000.0;
    const ElectricalLoad load = electricalLoad(element(row.watt, row.volt), supply(row.volt, loop));
    EXPECT_WITHIN(load.current, amperes(row.ampere), amperes(0.0006));
    EXPECT_WITHIN(load.atTerminals, volts(row.terminals), volts(0.06));
    EXPECT_WITHIN(load.delivered, watts(row.delivered), watts(0.6));
    EXPECT_WITHIN(load.inCable, watts(row.inCable), watts(0.6));
    EXPECT_NEAR(1.0 - load.atTerminals / volts(row.volt), row.dropShare, 6e-5);
  }
}

// BS 7671: 32 mV per ampere and metre of 1.5 mm2 flexible cord, both conductors. The constant-
// current rule of thumb gives 10.43 V for 3 kW over 25 m; in series with the element it is less.
TEST(ElectricalLoad, DropsALittleLessThanTheRuleOfThumb) {
  const ElectricalLoad load = electricalLoad(element(3000, 230), supply(230, 0.032 * 25.0));
  const double ruleOfThumb = 0.032 * 25.0 * 3000.0 / 230.0;
  EXPECT_NEAR(ruleOfThumb, 10.43, 0.006);
  EXPECT_WITHIN(load.current, amperes(12.477), amperes(0.0006));
  EXPECT_WITHIN(load.atTerminals, volts(220.0), volts(0.06));
  EXPECT_WITHIN(load.delivered, watts(2745.0), watts(0.6));
  EXPECT_LT(230.0 - inVolts(load.atTerminals), ruleOfThumb);
}

// IEC 60228, plain copper, maxima at 20 C in ohm/km: class 1/2 (fixed) and class 5 (flexible).
// The maxima allow for undersized cores: a conductor of the full nominal area lies up to 5 % below
// the fixed and up to 14 % below the flexible one, and never above. That is also why 2.5 mm2
// flex at 18 mV/(A m) (BS 7671) is reached at 70 C only within that margin.
TEST(CopperLoop, LiesJustBelowTheStandardsMaxima) {
  struct Row {
    double area, fixed, flexible;
  };
  for (const Row& row : {Row{1.0, 18.1, 19.5}, Row{1.5, 12.1, 13.3}, Row{2.5, 7.41, 7.98},
                         Row{4, 4.61, 4.95}, Row{6, 3.08, 3.30}, Row{10, 1.83, 1.91}}) {
    SCOPED_TRACE(row.area);
    const double oneWay =
        0.5 * inOhms(copperLoop(metres(1000.0), squareMetres(1e-6 * row.area), celsius(20.0)));
    EXPECT_LE(oneWay, row.fixed);
    EXPECT_GE(oneWay, 0.93 * row.fixed);
    EXPECT_LE(oneWay, row.flexible);
    EXPECT_GE(oneWay, 0.86 * row.flexible);
  }
  const auto at = [](double t) {
    return inOhms(copperLoop(metres(1.0), squareMetres(1e-6), celsius(t)));
  };
  EXPECT_NEAR(at(70.0) / at(20.0), 1.20, 1e-12);
  EXPECT_NEAR(at(75.0) / at(20.0), 1.22, 1e-12);
}

// NEC chapter 9 table 8, uncoated copper at 75 C, ohms per 1000 ft of one conductor, solid
// (stranded for 6 AWG, hence 2 % more); areas in circular mils beside it. The code's temperature
// factor is 0.3 % smaller than IEC 60228's, and its third digit is another 0.4 %.
TEST(WireGauge, ReproducesTheCodesTable) {
  struct Row {
    double gauge, circularMils, ohmPerThousandFeet, tolerance;
  };
  for (const Row& row :
       {Row{16, 2580, 4.89, 0.0075}, Row{14, 4110, 3.07, 0.0075}, Row{12, 6530, 1.93, 0.0075},
        Row{10, 10380, 1.21, 0.0075}, Row{8, 16510, 0.764, 0.0075}, Row{6, 26240, 0.491, 0.025}}) {
    SCOPED_TRACE(row.gauge);
    const Area area = wireGaugeArea(row.gauge);
    const double circularMil = 0.25 * 3.14159265358979 * 25.4e-6 * 25.4e-6;  // m2
    EXPECT_NEAR(inSquareMetres(area) / circularMil, row.circularMils, 0.002 * row.circularMils);
    const double oneWay = 0.5 * inOhms(copperLoop(metres(1000.0 * kFoot), area, celsius(75.0)));
    EXPECT_NEAR(oneWay, row.ohmPerThousandFeet, row.tolerance * row.ohmPerThousandFeet);
  }
}

RC_GTEST_PROP(ElectricalLoad, DropsAShareThatDoesNotDependOnTheVoltage, ()) {
  const Element heater = element(between(100.0, 12000.0), between(100.0, 400.0));
  const double loop = between(0.0, 2.0);
  const auto share = [&](double volt) {
    const ElectricalLoad load = electricalLoad(heater, supply(volt, loop));
    return static_cast<double>(load.atTerminals / volts(volt));
  };
  RC_ASSERT(std::abs(share(between(90.0, 420.0)) - share(230.0)) < 1e-12);
}

RC_GTEST_PROP(ElectricalLoad, AccountsForEveryWattFromTheWall, ()) {
  const ElectricalLoad load =
      electricalLoad(element(between(100.0, 12000.0), between(100.0, 400.0)),
                     supply(between(90.0, 420.0), between(0.0, 2.0)));
  RC_ASSERT(abs(load.fromWall - load.delivered - load.inCable) < 1e-12 * load.fromWall);
  RC_ASSERT(abs(load.delivered - load.atTerminals * load.current) < 1e-12 * load.fromWall);
}

RC_GTEST_PROP(ElectricalLoad, IsExactlyAQuarterAtHalfTheRatedVoltage, ()) {
  const double watt = between(100.0, 12000.0);
  const double full = inWatts(electricalLoad(element(watt, 240.0), supply(240.0)).delivered);
  const double half = inWatts(electricalLoad(element(watt, 240.0), supply(120.0)).delivered);
  RC_ASSERT(std::abs(full - watt) < 1e-12 * watt);
  RC_ASSERT(std::abs(half - 0.25 * watt) < 1e-12 * watt);
}

RC_GTEST_PROP(ElementDelivering, DeliversThat, ()) {
  const Supply from = supply(between(90.0, 420.0), between(0.0, 2.0));
  const double most = from.cableLoop > ohms(0.0)
                          ? inWatts(from.nominal * from.nominal / (4.0 * from.cableLoop))
                          : 1e5;
  const Power wanted = watts(between(0.001, 0.98) * most);
  const Element heater = elementDelivering(wanted, from, metres(0.05));
  RC_ASSERT(abs(electricalLoad(heater, from).delivered - wanted) < 1e-9 * wanted);
  RC_ASSERT(heater.topHeight == metres(0.05));
  // The larger root: no more is wasted than used.
  RC_ASSERT(resistance(heater) >= from.cableLoop);
}

// 12 A at 120 V are 1440 W, however long the cable.
TEST(LargestElementOn, DoesNotGrowWithTheCable) {
  for (const double loop : {0.0, 0.2}) {
    Supply from = supply(120.0, loop);
    from.rating = amperes(12.0);
    EXPECT_WITHIN(largestElementOn(from, metres(0.0)).rating, watts(1440.0), watts(1e-9));
  }
}

RC_GTEST_PROP(LargestElementOn, DrawsTheCircuitsRatingAtTheNominalVoltage, ()) {
  Supply from = supply(between(90.0, 420.0), between(0.0, 1.0));
  from.rating = amperes(between(5.0, 50.0));
  const Element largest = largestElementOn(from, metres(0.0));
  RC_ASSERT(std::abs(branchCurrent(largest, from) / from.rating - 1.0) < 1e-12);
  RC_ASSERT(electricalLoad(largest, from).current <= (1.0 + 1e-12) * from.rating);
}

}  // namespace
}  // namespace physics
