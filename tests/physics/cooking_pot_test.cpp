// SPDX-License-Identifier: GPL-3.0-or-later
// A small electric cooking pot whose lid and side insulation were varied (E. Otiato,
// temperature-control): mean of three uncalibrated probes, the same heater setting throughout, room
// at about 23.5 C. Neither size nor power is stated. What is assumed, and between which edges:
//
//   width 0.26 m (0.23-0.29) and height 0.20 m (0.17-0.23): insulating the side saved 1.3-1.6 W/K
//     under the lid, which takes about 0.16 m2 of bare metal
//   power 230 W (223-237): the best insulated runs gain 225 W net near 45 C, and repeats of one run
//     lie within 3 % of their mean
//   heat of pot and fittings 1.5 kJ/K (1-2, from how the runs' times grow with volume)
//   emissivity of the metal 0.3 (0.16-0.44, stainless steel as supplied and at 215 C)
//   insulation 0.04 W/(m K) (0.033-0.05, foams); nothing lost downwards, where the heater is
//   evaporation by Shah's law (0.818-1.182 of it: his own mean deviation)
//
// The first three come from the lidded runs, after a first guess of the size had missed: those rows
// check only how times change with volume, temperature and insulation. The open runs were not used.
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <string>
#include <utility>
#include <vector>

#include "tests/support/measured.hpp"

namespace physics {
namespace {

using test_support::Bracket;
using test_support::Curve;
using test_support::expectMeasured;
using test_support::heated;
using test_support::heatingCurve;
using test_support::layer;
using test_support::potOf;
using test_support::propagate;
using test_support::record;

struct Pot {
  double insulation = 0.0;  // mm
  double open = 0.0;
  double litre = 1.0;
  double watt = 230.0;
  double fittings = 1500.0;  // J/K
  double diameter = 0.26, height = 0.20;
  double emissivity = 0.3;
  double conductivity = 0.04;
  double evaporation = 1.0;
  double lidInsulation = 0.0;  // mm
};

Rig rigOf(const Pot& pot) {
  Vessel v = potOf(pot.diameter, pot.height, 500.0);
  test_support::holdsBesideWater(v, pot.litre, pot.fittings);
  v.side.emissivity = v.lid.emissivity = pot.emissivity;
  if (pot.insulation > 0.0) v.side = {{layer(pot.insulation, pot.conductivity)}, 0.9};
  if (pot.lidInsulation > 0.0) v.lid = {{layer(pot.lidInsulation, pot.conductivity)}, 0.9};
  v.support = {.onLegs = false, .solid = squareMetreKelvinsPerWatt(1e4)};
  v.open = test_support::openAt(pot.open);
  Rig rig = test_support::rigOf(v, pot.watt);
  rig.evaporationFactor = pot.evaporation;
  return rig;
}
Curve heating(const Pot& pot) { return heatingCurve(rigOf(pot), pot.litre, 23.5, 23.5); }

using Edges = std::vector<std::pair<double Pot::*, std::pair<double, double>>>;
const Edges kEdges{{&Pot::watt, {223.0, 237.0}},       {&Pot::fittings, {1000.0, 2000.0}},
                   {&Pot::diameter, {0.23, 0.29}},     {&Pot::height, {0.17, 0.23}},
                   {&Pot::emissivity, {0.16, 0.44}},   {&Pot::conductivity, {0.033, 0.05}},
                   {&Pot::evaporation, {0.818, 1.182}}};

std::string nameOf(double insulation, double litre) {
  return std::to_string(int(insulation)) + "mm_" + std::to_string(int(10 * litre)) + "dL";
}

// Seconds from 30 C, and half the range of three repeats.
TEST(CookingPot, HeatsUnderItsLidAsMeasured) {
  struct Time {
    double mean, shortest, longest;
  };
  struct Row {
    double insulation, litre;
    Time to50, to80, to95;
  };
  for (const Row& row :
       {Row{0, 1.5, {714, 706, 728}, {2063, 2041, 2078}, {3061, 3027, 3100}},
        Row{0, 2.0, {913, 907, 924}, {2672, 2668, 2678}, {3941, 3933, 3949}},
        Row{0, 2.5, {1110, 1104, 1116}, {3217, 3213, 3221}, {4749, 4746, 4751}},
        Row{100, 1.5, {678, 657, 700}, {1751, 1729, 1779}, {2334, 2316, 2364}},
        Row{100, 2.0, {882, 854, 929}, {2263, 2225, 2330}, {3001, 2965, 3068}},
        Row{100, 2.5, {1071, 1055, 1085}, {2725, 2701, 2748}, {3604, 3572, 3642}},
        Row{200, 2.0, {882, 852, 918}, {2251, 2190, 2324}, {2978, 2905, 3071}},
        Row{200, 2.5, {1057, 1050, 1070}, {2686, 2671, 2697}, {3560, 3538, 3572}}}) {
    const Pot pot{.insulation = row.insulation, .open = kRimGap, .litre = row.litre};
    const std::vector<Bracket> times = propagate(pot, kEdges, [](const Pot& p) {
      const Curve curve = heating(p);
      return std::vector{curve.between(30.0, 50.0), curve.between(30.0, 80.0),
                         curve.between(30.0, 95.0)};
    });
    const std::array measured{row.to50, row.to80, row.to95};
    for (std::size_t i = 0; i < measured.size(); ++i) {
      const std::string name = nameOf(row.insulation, row.litre) + "_" + std::to_string(i);
      record("ratio_" + name, times[i].nominal / measured[i].mean);
      expectMeasured(name, times[i], measured[i].mean,
                     0.5 * (measured[i].longest - measured[i].shortest));
    }
  }
}

// Seconds from 30 C without the lid, single runs: repeats of the lidded ones lie within 5 % of
// their mean. At the end each was read at the stated second from switch-on.
TEST(CookingPot, HeatsAndStallsWithoutItsLidAsMeasured) {
  struct Row {
    double insulation, litre;
    std::array<double, 4> seconds;  // to 40, 50, 60, 65 C
    double atEnd, end;
  };
  for (const Row& row : {Row{0, 1.5, {381, 849, 1481, 2048}, 68.6, 3530},
                         Row{0, 2.0, {473, 1031, 1836, 2489}, 68.9, 4140},
                         Row{0, 2.5, {577, 1247, 2148, 2903}, 69.9, 4920},
                         Row{100, 1.5, {366, 782, 1336, 1708}, 72.1, 3760},
                         Row{100, 2.0, {448, 985, 1648, 2163}, 72.6, 4750},
                         Row{100, 2.5, {542, 1170, 1911, 2476}, 73.4, 5140},
                         Row{200, 2.0, {497, 995, 1690, 2183}, 70.4, 3800}}) {
    const Pot pot{.insulation = row.insulation, .open = 1.0, .litre = row.litre};
    const BrewDay day = heated(rigOf(pot), row.litre, 23.5, 23.5);
    EXPECT_EQ(day.outcome, Outcome::StaysFarBelow);
    ASSERT_TRUE(day.levelsOff);
    const std::vector<Bracket> figures = propagate(pot, kEdges, [&](const Pot& p) {
      const Curve c = heating(p);
      return std::vector{c.between(30.0, 40.0), c.between(30.0, 50.0), c.between(30.0, 60.0),
                         c.between(30.0, 65.0), c.at(row.end)};
    });
    const std::string name = nameOf(row.insulation, row.litre);
    for (std::size_t i = 0; i < row.seconds.size(); ++i) {
      record("ratio_" + name + "_" + std::to_string(i), figures[i].nominal / row.seconds[i]);
      expectMeasured(name + "_" + std::to_string(i), figures[i], row.seconds[i],
                     0.05 * row.seconds[i]);
    }
    record("level_" + name, inCelsius(day.levelsOff->at) - row.atEnd);
    // Probes: they read 101 at the boil.
    expectMeasured(name + "_end", figures[4], row.atEnd, 1.0);
  }
}

// How much hotter the open pot gets with its side insulated, 3.5 to 3.7 K: evaporation is common to
// both. Most of the bare side is dry, and with an inner face that took no heat from the moist air
// above the water ours would level off only 1.9 to 2.4 K higher.
TEST(CookingPot, GainsAtItsStallByInsulationAsMeasured) {
  struct Row {
    double litre, bare, bareEnd, insulated, insulatedEnd;
  };
  for (const Row& row : {Row{1.5, 68.6, 3530, 72.1, 3760}, Row{2.0, 68.9, 4140, 72.6, 4750},
                         Row{2.5, 69.9, 4920, 73.4, 5140}}) {
    const Pot pot{.open = 1.0, .litre = row.litre};
    const auto level = [&](Pot p, double insulation) {
      p.insulation = insulation;
      return inCelsius(heated(rigOf(p), row.litre, 23.5, 23.5).levelsOff->at);
    };
    const std::vector<Bracket> gain = propagate(pot, kEdges, [&](const Pot& p) {
      Pot insulated = p;
      insulated.insulation = 100.0;
      return std::vector{heating(insulated).at(row.insulatedEnd) - heating(p).at(row.bareEnd)};
    });
    record("levels_" + nameOf(100, row.litre), level(pot, 100.0) - level(pot, 0.0));
    record("gain_" + nameOf(100, row.litre), gain[0].nominal);
    // Each a single run, whose repeats lie within 5 %: at the end a tenth of the last minutes' 3 K.
    expectMeasured(nameOf(100, row.litre), gain[0], row.insulated - row.bare, 0.4);
  }
}

// Ratios of those times are free of most of what is assumed: power and size cancel. What is left is
// how the loss grows towards the boil, what insulation saves and what volume adds.
TEST(CookingPot, ChangesItsTimesWithHeatInsulationAndVolumeAsMeasured) {
  const auto seconds = [](Pot pot, double insulation, double litre, double to) {
    pot.insulation = insulation;
    pot.litre = litre;
    return heating(pot).between(30.0, to);
  };
  const std::vector<Bracket> ratios = propagate(Pot{.open = kRimGap}, kEdges, [&](const Pot& p) {
    return std::vector{
        seconds(p, 0, 2.0, 95.0) / seconds(p, 0, 2.0, 50.0),
        seconds(p, 200, 2.0, 95.0) / seconds(p, 200, 2.0, 50.0),
        seconds(p, 200, 2.5, 95.0) / seconds(p, 0, 2.5, 95.0),
        seconds(p, 100, 1.5, 95.0) / seconds(p, 0, 1.5, 95.0),
        seconds(p, 0, 2.5, 50.0) / seconds(p, 0, 1.5, 50.0),
        seconds(p, 100, 2.5, 80.0) / seconds(p, 100, 1.5, 80.0),
    };
  });
  // The rows above; scatter of a ratio from both times' ranges.
  expectMeasured("bare_95_over_50", ratios[0], 3941.0 / 913.0, 0.010 * 4.317);
  expectMeasured("insulated_95_over_50", ratios[1], 2978.0 / 882.0, 0.047 * 3.376);
  expectMeasured("200mm_over_bare_2.5L", ratios[2], 3560.0 / 4749.0, 0.005 * 0.750);
  expectMeasured("100mm_over_bare_1.5L", ratios[3], 2334.0 / 3061.0, 0.016 * 0.763);
  expectMeasured("2.5L_over_1.5L_bare", ratios[4], 1110.0 / 714.0, 0.016 * 1.555);
  expectMeasured("2.5L_over_1.5L_100mm", ratios[5], 2725.0 / 1751.0, 0.017 * 1.556);
}

// One litre in 10 cm of insulation at stated powers; seconds from 25 C to 40, 50, ... 90 and 95 C,
// mean of three runs within 3 %. The source does not say whether the lid was covered too, and at 50
// W the lid is most of the loss.
constexpr std::array kSteps{40.0, 50.0, 60.0, 70.0, 80.0, 90.0, 95.0};
struct LitreRun {
  double watt;
  std::array<double, 7> seconds;
};
constexpr std::array kLitreRuns{LitreRun{50, {1937, 3289, 4748, 6393, 8332, 10752, 12395}},
                                LitreRun{150, {616, 1027, 1472, 1918, 2390, 2887, 3157}},
                                LitreRun{250, {398, 639, 886, 1146, 1414, 1694, 1846}}};

// Heat capacity and loss per kelvin of the lumped pot whose times fit these best: with t = C g(UA)
// the best C of each UA is a ratio of sums, and UA is searched for.
struct Lumped {
  double capacity, loss;  // J/K, W/K
};
Lumped lumpedFit(const std::vector<LitreRun>& runs) {
  double capacity = 0.0;
  const auto misfit = [&](double loss) {
    double sum = 0.0, squares = 0.0, count = 0.0;
    for (const LitreRun& run : runs) {
      for (std::size_t i = 0; i < kSteps.size(); ++i) {
        const double perCapacity =
            std::log((run.watt - loss * (25.0 - 23.5)) / (run.watt - loss * (kSteps[i] - 23.5))) /
            loss;
        const double ratio = perCapacity / run.seconds[i];
        sum += ratio;
        squares += ratio * ratio;
        ++count;
      }
    }
    capacity = sum / squares;
    return count - sum * sum / squares;
  };
  double low = 0.02;
  double high = 0.65;  // at 0.699 50 W would stall at 95 C
  for (int i = 0; i < 100; ++i) {
    const double a = low + 0.382 * (high - low);
    const double b = low + 0.618 * (high - low);
    (misfit(a) < misfit(b) ? high : low) = misfit(a) < misfit(b) ? b : a;
  }
  misfit(low);
  return {capacity, low};
}
Pot litrePot(double watt, double lidInsulation) {
  return {.insulation = 100.0,
          .open = kRimGap,
          .watt = watt,
          .fittings = 1800.0,
          .lidInsulation = lidInsulation};
}
LitreRun simulatedRun(const Pot& pot) {
  const Curve curve = heating(pot);
  LitreRun run{pot.watt, {}};
  for (std::size_t i = 0; i < kSteps.size(); ++i) run.seconds[i] = curve.between(25.0, kSteps[i]);
  return run;
}

// The lid that loses what the measured runs lose, all else as in `pot`: as many millimetres of the
// side's insulation. The one constant taken from these runs besides the pot's heat.
double lidFitting(Pot pot, double lumpedLoss) {
  double low = std::log(0.01);
  double high = std::log(100.0);
  for (int i = 0; i < 30; ++i) {
    pot.lidInsulation = std::exp(0.5 * (low + high));
    std::vector<LitreRun> runs;
    for (const LitreRun& run : kLitreRuns) {
      pot.watt = run.watt;
      runs.push_back(simulatedRun(pot));
    }
    (lumpedFit(runs).loss > lumpedLoss ? low : high) = std::log(pot.lidInsulation);
  }
  return std::exp(high);
}

// The measured times as a lumped pot: about 6.0 kJ/K and 0.33 W/K by an earlier fit, 6.1 and 0.34
// by this one (another weighting). Ours must lose that much with a lid between bare and as well
// covered as the side, and must hold as much heat as the same fit finds in ours: 4.18 kJ/K of water
// and the 1.8 kJ/K +-0.1 by which the two fits differ.
TEST(CookingPot, HoldsAndLosesWhatTheOneLitreRunsFit) {
  const Lumped measured = lumpedFit({kLitreRuns.begin(), kLitreRuns.end()});
  record("measured_capacity_J_per_K", measured.capacity);
  record("measured_loss_W_per_K", measured.loss);
  const auto simulated = [](double lid) {
    std::vector<LitreRun> runs;
    for (const LitreRun& run : kLitreRuns) runs.push_back(simulatedRun(litrePot(run.watt, lid)));
    return lumpedFit(runs);
  };
  const Lumped bare = simulated(0.0);
  const Lumped covered = simulated(100.0);
  record("bare_loss", bare.loss);
  record("covered_loss", covered.loss);
  EXPECT_GT(bare.loss, measured.loss);
  EXPECT_LT(covered.loss, measured.loss);
  const Lumped fitted = simulated(lidFitting(litrePot(50.0, 0.0), measured.loss));
  record("fitted_capacity", fitted.capacity);
  EXPECT_NEAR(fitted.loss, measured.loss, 1e-3);
  EXPECT_NEAR(fitted.capacity, measured.capacity, std::hypot(100.0, 0.03 * measured.capacity));
}

// With that lid, the times from 40 C on, at all three powers. Before 40 C the heater itself, which
// gets as hot as 148 C, takes its share first: at 250 W some 35 s, which ours does not know. So
// close to where it stalls the lid that lies on its rim tells: from under one that condenses all,
// 50 W would be at 95 C 7 % sooner than measured.
TEST(CookingPot, BoilsOneLitreAsMeasuredAtStatedPowers) {
  const double loss = lumpedFit({kLitreRuns.begin(), kLitreRuns.end()}).loss;
  Edges edges{{&Pot::fittings, {1600.0, 2000.0}},
              {&Pot::conductivity, {0.033, 0.05}},
              {&Pot::diameter, {0.23, 0.29}},
              {&Pot::height, {0.17, 0.23}},
              {&Pot::open, {kTightestRimGap, kLoosestRimGap}}};
  const std::vector<Bracket> times = propagate(litrePot(50.0, 0.0), edges, [&](Pot p) {
    p.lidInsulation = lidFitting(p, loss);
    std::vector<double> seconds;
    for (const LitreRun& run : kLitreRuns) {
      p.watt = run.watt;
      const Curve curve = heating(p);
      for (std::size_t i = 1; i < kSteps.size(); ++i) {
        seconds.push_back(curve.between(40.0, kSteps[i]));
      }
    }
    return seconds;
  });
  std::size_t n = 0;
  for (const LitreRun& run : kLitreRuns) {
    for (std::size_t i = 1; i < kSteps.size(); ++i, ++n) {
      const double measured = run.seconds[i] - run.seconds[0];
      const std::string name =
          std::to_string(int(run.watt)) + "W_to" + std::to_string(int(kSteps[i]));
      record("ratio_" + name, times[n].nominal / measured);
      expectMeasured(name, times[n], measured, 0.03 * run.seconds[i]);
    }
  }
}

// The gap at which 50 W get to 95 C when they did, all else as above: a little power near the boil
// is what vapour that escapes shows in. It lies within the stated range of a lid on its rim, and
// none at all does not explain the run.
TEST(CookingPot, LetsOutUnderItsLidWhatTheRimGapSays) {
  const double loss = lumpedFit({kLitreRuns.begin(), kLitreRuns.end()}).loss;
  const LitreRun& run = kLitreRuns[0];
  const auto secondsWith = [&](double gap) {
    Pot pot = litrePot(run.watt, 0.0);
    pot.open = gap;
    pot.lidInsulation = lidFitting(pot, loss);
    return heating(pot).between(40.0, 95.0);
  };
  const double measured = run.seconds.back() - run.seconds.front();
  EXPECT_LT(secondsWith(0.0), 0.95 * measured);
  double low = 0.0;
  double high = 0.2;
  for (int i = 0; i < 20; ++i) {
    const double middle = 0.5 * (low + high);
    (secondsWith(middle) < measured ? low : high) = middle;
  }
  record("gap", low);
  EXPECT_GT(low, kTightestRimGap);
  EXPECT_LT(low, kLoosestRimGap);
}

// Step test of the same pot: 21.6 W from 70 s on, 22.0 C at the start and in the room. The lid that
// ends where it was measured to end, 83.1 C, is nearer to the covered one than that of the runs
// above: their lumped loss is 0.34 W/K, here it is 0.25, and the source says of neither how the lid
// lay. Here it must have closed better than a lid on its rim: with a gap of 0.02 of the mouth ours
// would be 0.9 K too warm on the way. The way there and the slope at the end are then predictions.
TEST(CookingPot, CreepsUpAtTwentyWattsAsMeasured) {
  const auto heatingUnder = [](double lid) {
    Pot pot = litrePot(21.6, lid);
    pot.open = 0.0;
    return heatingCurve(rigOf(pot), 1.0, 22.0, 22.0);
  };
  constexpr double kEnd = 28000.0 - 70.0;
  double low = std::log(0.01);
  double high = std::log(100.0);
  for (int i = 0; i < 30; ++i) {
    const double middle = 0.5 * (low + high);
    (heatingUnder(std::exp(middle)).at(kEnd) < 83.1 ? low : high) = middle;
  }
  EXPECT_GT(low, std::log(0.02));
  EXPECT_LT(high, std::log(99.0));
  record("step_lid_mm", std::exp(high));
  const Curve curve = heatingUnder(std::exp(high));
  for (const auto& [second, measured] : {std::pair{1800.0, 27.8},
                                         {3600.0, 33.9},
                                         {5400.0, 39.5},
                                         {7200.0, 44.7},
                                         {10800.0, 54.3},
                                         {14400.0, 62.6},
                                         {18000.0, 69.5},
                                         {21600.0, 75.5},
                                         {25200.0, 80.2}}) {
    SCOPED_TRACE(second);
    record("step_" + std::to_string(int(second)), curve.at(second - 70.0) - measured);
    // The laboratory's repeats lie within 3 %; heat capacity 1.8 +-0.2 of 6.0 kJ/K; the heater's
    // own share, 35 s; readings to 0.1 K.
    const double lag = curve.at(second - 70.0) - curve.at(second - 70.0 - 35.0);
    EXPECT_NEAR(curve.at(second - 70.0), measured,
                std::hypot(std::hypot(0.03, 0.033) * (measured - 22.0), lag, 0.05));
  }
  // 4.08 K/h at 81.5 C; the table's last two intervals make 4.70 and 3.73.
  const double passes = curve.reaching(81.5);
  const double slope = (curve.at(passes + 600.0) - curve.at(passes - 600.0)) * 3.0;
  record("step_slope_K_per_h", slope);
  EXPECT_NEAR(slope, 4.08, 0.35);
  const double loss = (21.6 - (4182.0 + 1800.0) * slope / 3600.0) / (81.5 - 22.0);
  record("step_loss_W_per_K", loss);
  EXPECT_NEAR(loss, 0.25, 0.03);
}

}  // namespace
}  // namespace physics
