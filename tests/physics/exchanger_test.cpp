// SPDX-License-Identifier: GPL-3.0-or-later
// Effectiveness of exchangers, held against printed worked examples.
#include "physics/exchanger.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "physics/water.hpp"
#include "tests/support/between.hpp"
#include "tests/support/within.hpp"

namespace physics {
namespace {

using test_support::between;

// The package "ht" (Kays & London): N 5, C 0.7.
TEST(Effectiveness, IsThePrintedOneInCounterflow) {
  EXPECT_NEAR(counterflowEffectiveness(5.0, 0.7), 0.9206703686051108, 1e-14);
}

// Holman, Heat Transfer, example 10.10: 0.6667 kg/s of water against oil, N 1.8160, C 0.5147.
TEST(Effectiveness, IsHolmansInExample10_10) {
  EXPECT_NEAR(counterflowEffectiveness(1.8160, 0.5147), 0.744, 0.0006);
}

// Cengel, Heat Transfer, example 11.8: effectiveness 0.429 needs N 0.652 at C 1.2*4.18/(2*4.31).
TEST(Effectiveness, IsCengelsInExample11_8) {
  EXPECT_NEAR(counterflowEffectiveness(0.65236, 1.2 * 4.18 / (2.0 * 4.31)), 0.42857, 1e-5);
}

TEST(Effectiveness, HasTheLimitsOfItsForms) {
  EXPECT_NEAR(counterflowEffectiveness(2.0, 1.0), 2.0 / 3.0, 1e-12);
  EXPECT_NEAR(counterflowEffectiveness(2.0, 1.0 - 1e-7), 2.0 / 3.0, 1e-6);
  EXPECT_NEAR(counterflowEffectiveness(1.3, 0.0), mixedEffectiveness(1.3), 1e-15);
  EXPECT_EQ(mixedEffectiveness(0.0), 0.0);
}

// Own arithmetic by the textbook formula, re-run in Python: 20 kg of wort at 4000 J/(kg K), a coil
// of 500 W/K, 8 L/min of water at 4186 J/(kg K), 1 kg/L.
TEST(MixedPot, TakesTheMinutesOfTheFormula) {
  const HeatCapacity pot = kilograms(20.0) * joulesPerKilogramKelvin(4000.0);
  const ThermalConductance ua = wattsPerKelvin(500.0);
  const ThermalConductance stream =
      kilogramsPerSecond(8.0 / 60.0) * joulesPerKilogramKelvin(4186.0);
  EXPECT_NEAR(mixedEffectiveness(static_cast<double>(ua / stream)), 0.5917, 5e-5);
  struct Row {
    double inlet, to, minutes, litres, outlet;
  };
  for (const Row& row : {Row{12.0, 20.0, 9.59, 76.7, 31.43}, Row{20.0, 30.0, 8.29, 66.3, 39.59}}) {
    SCOPED_TRACE(row.inlet);
    const Time time =
        mixedChillTime(pot, ua, stream, celsius(row.inlet), celsius(98.0), celsius(row.to));
    EXPECT_NEAR(inMinutes(time), row.minutes, 0.005);
    EXPECT_NEAR(8.0 * inMinutes(time), row.litres, 0.05);
    const Energy heat = pot * kelvins(98.0 - row.to);
    EXPECT_NEAR(row.inlet + inKelvins(heat / (time * stream)), row.outlet, 0.006);
  }
}

// The same, in summer: 20.4 kg, 600 W/K, 8 L/min at 25 C; then ice water at 1 C.
TEST(MixedPot, TakesTwoStepsWhereTheMainsAreWarm) {
  const HeatCapacity pot = kilograms(20.4) * joulesPerKilogramKelvin(4000.0);
  const ThermalConductance ua = wattsPerKelvin(600.0);
  const ThermalConductance stream =
      kilogramsPerSecond(8.0 / 60.0) * joulesPerKilogramKelvin(4186.0);
  const auto minutesTo = [&](double inlet, double from, double to) {
    return inMinutes(mixedChillTime(pot, ua, stream, celsius(inlet), celsius(from), celsius(to)));
  };
  EXPECT_NEAR(minutesTo(25.0, 98.0, 30.0), 9.92, 0.005);
  EXPECT_NEAR(minutesTo(1.0, 30.0, 20.0), 1.56, 0.005);
  EXPECT_NEAR(minutesTo(25.0, 98.0, 27.0), 13.31, 0.005);
}

// q/(334 + 4.19 T): 20 kg of wort at 4000 J/(kg K) from 30 to 20 C take 1.92 kg of ice, as printed;
// those figures give 1.915, so it holds to its last digit.
TEST(Ice, TakesItsMeltingAndItsWarming) {
  EXPECT_WITHIN(iceFor(joules(800e3), celsius(20.0)), kilograms(1.92), kilograms(0.01));
}

// Own arithmetic by the formula above: wort 1.03 kg/L at 4000 J/(kg K) and 98 C, 900 W/K, 6 L/min
// of water at 12 C. The specific heat of water is IAPWS' at 12 C here, 4193 in place of 4186: that
// moves what the water is warmed by, 48 K at most, by 0.16 %.
TEST(Counterflow, CoolsWortInOnePass) {
  struct Row {
    double wort, effectiveness, wortOut, waterOut;
  };
  for (const Row& row : {Row{2.5, 0.9727, 14.35, 46.31}, Row{4.0, 0.8585, 24.17, 60.44}}) {
    SCOPED_TRACE(row.wort);
    const OnePass pass = counterflowPass(wattsPerKelvin(900.0),
                                         {kilogramsPerSecond(row.wort * 1.03 / 60.0),
                                          joulesPerKilogramKelvin(4000.0), celsius(98.0)},
                                         {kilogramsPerSecond(6.0 / 60.0), celsius(12.0)});
    EXPECT_NEAR(pass.effectiveness, row.effectiveness, 2e-4);
    EXPECT_NEAR(inCelsius(pass.hotOut), row.wortOut, 0.03);
    EXPECT_NEAR(inCelsius(pass.coldOut), row.waterOut, 0.08);
  }
}

TubeInHose someTubeInHose() {
  return {.outerDiameter = millimetres(between(8.0, 16.0)),
          .wallThickness = millimetres(0.8),
          .length = metres(between(2.0, 15.0)),
          .conductivity = wattsPerMetreKelvin(390.0),
          .hoseBore = millimetres(between(18.0, 25.0)),
          .coilDiameter = metres(0.25)};
}

RC_GTEST_PROP(CounterflowOfAnyTube, KeepsItsHeatAndNeverCrosses, ()) {
  const TubeInHose tube = someTubeInHose();
  // Turbulent in every case, Re 4000 at the coldest; where a stream turns laminar its film falls
  // more steeply than anything else here.
  const DynamicViscosity thickest = waterViscosity(celsius(0.0));
  const Length bore = tube.outerDiameter - 2.0 * tube.wallThickness;
  const Length round = tube.hoseBore + tube.outerDiameter;
  const MassFlow wort = 1000.0 * 3.1416 * bore * thickest;
  const MassFlow water = 1000.0 * 3.1416 * round * thickest;
  const HotStream hot{between(1.3, 4.0) * wort, joulesPerKilogramKelvin(4000.0),
                      celsius(between(60.0, 100.0))};
  const ColdStream cold{between(1.05, 4.0) * water, celsius(between(1.0, 30.0))};
  const OnePass pass = counterflowPass(tube, hot, cold);
  RC_ASSERT(pass.hotOut >= cold.inlet);
  RC_ASSERT(pass.coldOut <= hot.inlet);
  const Power given = hot.flow * hot.specificHeat * (hot.inlet - pass.hotOut);
  const Power taken = cold.flow * waterSpecificHeat(cold.inlet) * (pass.coldOut - cold.inlet);
  RC_ASSERT(abs(given - taken) <= 1e-9 * given);
  TubeInHose longer = tube;
  longer.length = 1.2 * tube.length;
  RC_ASSERT(counterflowPass(longer, hot, cold).hotOut <= pass.hotOut + kelvins(1e-6));
  ColdStream more = cold;
  more.flow = 1.2 * cold.flow;
  RC_ASSERT(counterflowPass(tube, hot, more).hotOut <= pass.hotOut + kelvins(1e-6));
  HotStream slower = hot;
  slower.flow = 0.8 * hot.flow;
  RC_ASSERT(counterflowPass(tube, slower, cold).hotOut <= pass.hotOut + kelvins(1e-6));
}

}  // namespace
}  // namespace physics
