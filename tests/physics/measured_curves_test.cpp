// SPDX-License-Identifier: GPL-3.0-or-later
// Heating and cooling that somebody measured, simulated with the stated sizes. What a source leaves
// out is assumed here, with edges: a simulated figure must meet the measured one within the
// source's own scatter and what those edges do to it. Residuals are recorded with each test.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <numbers>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

#include "physics/convection.hpp"
#include "tests/support/measured.hpp"

namespace physics {
namespace {

using test_support::Bracket;
using test_support::cooled;
using test_support::Curve;
using test_support::curveOf;
using test_support::expectMeasured;
using test_support::heated;
using test_support::heatingCurve;
using test_support::kHour;
using test_support::layer;
using test_support::openAt;
using test_support::potOf;
using test_support::propagate;
using test_support::record;
using test_support::rigOf;
using test_support::roomAt;

// An insulated lidded bucket (M. Hay, TermiskEnergilager, run2.csv): inner plastic bucket
// of mean radius 0.091 m and height 0.142 m, 3.036 kg of water, rock wool about 0.04 m at the side
// and 0.05 m above and below, aluminium foil outside; 162 W for the first 35 min, then off.
// Assumed:
//
//   rock wool 0.037 W/(m K) as its author states (0.036-0.057, batts of ASHRAE to D. Q. Kern's
//   wool) its thickness at the side (35-45 mm: the buckets' radii leave 45) 0.36 kJ/K beside the
//   water, 2 mm of plastic (0.2 to 1.2: 1 mm; 3 mm and half of the wool's heat) foil emissivity 0.1
//   (0.04-0.2) a wooden table (10 to 50 mm) the room's mean of 24.4 C (-0.5 K: it wandered
//   between 23.5 and 25.1 C)
//
// The wool is half as thick as the bucket's radius, so that its two round edges matter: 0.54 k per
// length of edge (shape-factor tables, from memory), counted with lid and base.
struct Bucket {
  double k = 0.037;
  double side = 40.0;   // mm
  double heat = 360.0;  // J/K beside the water
  double foil = 0.1;
  double table = 30.0;  // mm
  double room = 24.4;
};
const std::vector<std::pair<double Bucket::*, std::pair<double, double>>> kBucketEdges{
    {&Bucket::k, {0.036, 0.057}},
    {&Bucket::side, {35.0, 45.0}},
    {&Bucket::heat, {200.0, 1200.0}},
    {&Bucket::foil, {0.04, 0.2}},
    {&Bucket::table, {10.0, 50.0}}};
constexpr double kBucketLitres = 3.036 / 0.9982;

Rig rigOf(const Bucket& bucket) {
  const double radius = 0.091;
  const double end = 3.14159 * radius * radius;
  const double edge = 0.54 * 2.0 * 3.14159 * radius;
  const Layer wool{
      .thickness = millimetres(50.0),
      .flatInsulance = squareMetreKelvinsPerWatt(end / (bucket.k * (end / 0.05 + edge)))};
  Vessel v = potOf(2.0 * radius, 0.142, 500.0);
  test_support::holdsBesideWater(v, kBucketLitres, bucket.heat);
  v.wallThickness = millimetres(2.0);
  v.wallConductivity = wattsPerMetreKelvin(0.2);
  v.side = {{layer(bucket.side, bucket.k)}, bucket.foil};
  v.base = v.lid = {{wool}, bucket.foil};
  v.open = openAt(0.0);
  v.support = onTable(metres(0.272), millimetres(bucket.table), wattsPerMetreKelvin(0.15));
  return rigOf(v, 162.0);
}
Curve coolingOf(const Bucket& bucket) {
  return cooled(rigOf(bucket), kBucketLitres, 46.8, bucket.room, hours(45.0));
}

// Means of top and bottom, from three hours on, in h and C. Before, the wool still soaks up heat
// that the simulation's massless jacket does not, and the measured bucket falls by 1.5 K more.
const std::vector<std::pair<double, double>> kBucketCools{
    {4.0, 45.45}, {6.0, 43.9},  {8.0, 42.0},  {10.0, 40.2},  {12.0, 39.0}, {16.0, 36.45},
    {20.0, 34.5}, {24.0, 32.9}, {30.0, 31.0}, {36.0, 29.55}, {48.0, 27.15}};

double rmsOf(const std::vector<std::pair<double, double>>& measured,
             const std::function<double(double)>& temperatureAfter) {
  double squares = 0.0;
  for (const auto& [hour, t] : measured) {
    const double miss = temperatureAfter(kHour * (hour - 3.0)) - t;
    squares += miss * miss;
  }
  return std::sqrt(squares / static_cast<double>(measured.size()));
}

// With the stated wool ours is up to 2.6 K too warm (2.0 K rms). Heater, probes, their leads and
// holes in the lid are not described. The measured curve must lie between the stated bucket and the
// one with every unstated input at the edge that loses most, give or take half of what top and
// bottom differ by. Were the edges independent errors, their root of squares would miss hour 10 by
// 0.2 K.
TEST(InsulatedBucket, CoolsForFourDaysBetweenTheStatedAndTheWorstBucket) {
  const Curve stated = coolingOf({});
  const Curve worst = coolingOf(
      {.k = 0.057, .side = 35.0, .heat = 200.0, .foil = 0.2, .table = 10.0, .room = 23.9});
  for (const auto& [hour, t] : kBucketCools) {
    SCOPED_TRACE(hour);
    const double second = kHour * (hour - 3.0);
    record("hour" + std::to_string(int(hour)), stated.at(second) - t);
    record("worst" + std::to_string(int(hour)), worst.at(second) - t);
    EXPECT_GT(stated.at(second), t - 0.2);
    EXPECT_LT(worst.at(second), t + 0.2);
  }
  record("rms_K", rmsOf(kBucketCools, [&](double s) { return stated.at(s); }));
}

// One constant taken from the curve, the wool that fits it best, must be a listed one; and what
// then remains must be no more than the best single time constant leaves, or the films' bend with
// temperature would be worth nothing.
TEST(InsulatedBucket, FitsAListedWoolAtLeastAsWellAsOneTimeConstant) {
  const auto best = [](double low, double high, const std::function<double(double)>& misfit) {
    for (int i = 0; i < 60; ++i) {
      const double a = low + 0.382 * (high - low);
      const double b = low + 0.618 * (high - low);
      const bool left = misfit(a) < misfit(b);
      (left ? high : low) = left ? b : a;
    }
    return std::pair{low, misfit(low)};
  };
  const auto [k, rms] = best(0.02, 0.09, [](double wool) {
    const Curve curve = coolingOf({.k = wool});
    return rmsOf(kBucketCools, [&](double s) { return curve.at(s); });
  });
  const auto [tau, lumped] = best(10.0, 40.0, [](double hour) {
    return rmsOf(kBucketCools,
                 [&](double s) { return 24.4 + (46.8 - 24.4) * std::exp(-s / (hour * kHour)); });
  });
  record("fitted_wool", k);
  record("fitted_wool_rms_K", rms);
  record("time_constant_h", tau);
  record("time_constant_rms_K", lumped);
  EXPECT_GT(k, 0.036);
  EXPECT_LT(k, 0.057);
  EXPECT_LE(rms, lumped);
}

// Means of top and bottom, which differ by 1 K while it heats and are not stirred. In the five
// minutes after switching off, their mean still rose by 1.6 K: so much the probes lag behind the
// water's mean while the element is on. After that the mean is known to the probes' 0.3 K.
TEST(InsulatedBucket, HeatsLikeTheMeasuredOne) {
  Bucket assumed;
  assumed.room = 24.7;
  const std::vector<std::pair<double, double>> measured{
      {5, 26.65}, {10, 30.65}, {15, 34.45}, {20, 37.95}, {25, 41.4}, {30, 44.85}, {35, 49.3}};
  const std::vector<Bracket> simulated = propagate(assumed, kBucketEdges, [&](const Bucket& b) {
    const Curve curve = heatingCurve(rigOf(b), kBucketLitres, 24.7, b.room);
    std::vector<double> temperatures;
    for (const auto& [minute, t] : measured) temperatures.push_back(curve.at(60.0 * minute));
    temperatures.push_back(temperatures.back());
    return temperatures;
  });
  for (std::size_t i = 0; i < measured.size(); ++i) {
    const auto& [minute, t] = measured[i];
    SCOPED_TRACE(minute);
    record("heating" + std::to_string(int(minute)), simulated[i].nominal - t);
    EXPECT_GE(simulated[i].nominal + std::hypot(simulated[i].up, 0.5), t);
    EXPECT_LE(simulated[i].nominal - std::hypot(simulated[i].down, 0.5), t + 1.6);
  }
  // 40 min: what it had come to when mixed; ours loses some 0.1 K in those five minutes.
  expectMeasured("mixed_at_40min", simulated.back(), 50.9, 0.3);
}

// A lidded plastic canister (mpc-physical-science, labs-testing/cooling): 5.1 g, 22.6 g of
// water, 22.9 C. Size not stated; ours is a film can's, 3.1 cm wide and 5.0 cm high (3.0-3.4 by
// 4.7-5.4), 1 mm of plastic of 0.2 W/(m K) (0.5-1.5 mm), emissivity 0.9 (0.85-0.95), on a table of
// 20 mm (10-40).
struct Canister {
  double diameter = 31.0, height = 50.0, wall = 1.0;  // mm
  double emissivity = 0.9;
  double table = 20.0;  // mm
};
const std::vector<std::pair<double Canister::*, std::pair<double, double>>> kCanisterEdges{
    {&Canister::diameter, {30.0, 34.0}},
    {&Canister::height, {47.0, 54.0}},
    {&Canister::wall, {0.5, 1.5}},
    {&Canister::emissivity, {0.85, 0.95}},
    {&Canister::table, {10.0, 40.0}}};
constexpr double kCanisterLitres = 0.0226 / 0.9982;

Rig rigOf(const Canister& can) {
  Vessel v = potOf(1e-3 * can.diameter, 1e-3 * can.height, 5.1e-3 * 1900.0);
  v.wallThickness = millimetres(can.wall);
  v.wallConductivity = wattsPerMetreKelvin(0.2);
  v.side.emissivity = v.lid.emissivity = v.base.emissivity = can.emissivity;
  v.open = openAt(0.0);
  v.support =
      onTable(metres(1e-3 * can.diameter), millimetres(can.table), wattsPerMetreKelvin(0.15));
  return rigOf(v, 50.0);
}

// What Popiel's correction for slender cylinders makes of a plate's film (as in a public
// heat-transfer library): 1 + B [32^(1/2) Gr^(-1/4) L/D]^C.
double slenderCylinder(Temperature wall, Temperature room, Length height, Length diameter) {
  const AirProperties air = dryAir(midpoint(wall, room), pascals(101325.0));
  const double pr = air.momentum / air.heat;
  const double gr = verticalWallFilm(wall, room, height, air).rayleigh / pr;
  const double b = 0.0571322 + 0.20305 * std::pow(pr, -0.43);
  const double c = 0.9165 - 0.0043 * std::sqrt(pr) + 0.01333 * std::log(pr) + 0.0004809 / pr;
  const double slenderness = height / diameter;
  return 1.0 + b * std::pow(std::sqrt(32.0) * std::pow(gr, -0.25) * slenderness, c);
}

// Ours cools a third more slowly than measured. Curvature explains a tenth of that: Popiel's
// factor is 1.13 on the side's convection. The headspace explains the rest, if anything here does:
// over water of 45 C ours passes little heat to dry wall and lid. So the measured canister must
// lie between ours as it is and ours with a slender cylinder's film and all of wall and lid as warm
// as the water. Whether the can stood in a draught, as little a thing as it is, nobody says.
TEST(PlasticCanister, CoolsBetweenAPoorAndAPerfectHeadspace) {
  const auto timeConstant = [](double after) { return 720.0 / std::log(22.5 / (after - 22.9)); };
  const double measured = timeConstant(34.2);
  const std::vector<Bracket> ratio = propagate(Canister{}, kCanisterEdges, [&](const Canister& c) {
    const Rig rig = rigOf(c);
    const Curve cooling = cooled(rig, kCanisterLitres, 45.4, 22.9, minutes(12.0));
    const double ours = timeConstant(cooling.at(720.0)) / measured;

    const Temperature halfway = celsius(39.5);
    const Temperature room = celsius(22.9);
    const Surroundings around{.air = moistAir(room, 0.5, pascals(101325.0)), .draught = {}};
    const Length fill = litres(kCanisterLitres) / crossSection(rig.vessel);
    HeatLossModel model(rig.vessel, rig.hose, around, fill, 0.0);
    const auto lost = model.flows(halfway, fill).lost;
    const Temperature skin = model.skins().side;
    const double slender = slenderCylinder(skin, room, rig.vessel.height, rig.vessel.innerDiameter);
    record("slender", slender);
    const double radiated = static_cast<double>(
        radiationToRoom(c.emissivity, skin, room) *
        (std::numbers::pi * rig.vessel.innerDiameter * fill) / lost[Path::Side]);
    const double wettedSide = slender * (1.0 - radiated) + radiated;
    const double allOver = (c.height + 0.25 * c.diameter) / inMillimetres(fill);
    const Power perfect = wettedSide * allOver * lost[Path::Side] + lost[Path::Base];
    return std::vector{ours, ours * static_cast<double>(lost.total() / perfect)};
  });
  record("time_constant_ours", ratio[0].nominal);
  record("time_constant_perfect", ratio[1].nominal);
  // Readings to 0.1 K of 11.3 K; convection's laws lie within 13 % at half of the loss.
  const double scatter = std::hypot(0.01, 0.5 * 0.13);
  EXPECT_LT(ratio[1].nominal - std::hypot(ratio[1].down, scatter), 1.0);
  // The bare claim, free of sizes: what is left out slows ours, it does not speed it up.
  EXPECT_GT(ratio[0].nominal, 1.0);
}

// How much longer the boil takes without the lid, at the power that takes the lidded pot as long
// as it took. Two pots on equal burners (a magazine's test, 2012): 1.89 L 10 min 30 s and
// 13 min 20 s (1.27); 7.57 L in 3-gallon pots 26 min 20 s and 34 min 42 s (1.32). One litre on
// a gas ring (D. MacKay): 4 min 49 s and 5 min 05 s (1.055). Assumed: pot widths (+-15 %),
// evaporation (Shah's mean deviation), still air. Beside a flame it is not still: up to 1 m/s, as
// of a slow walk, over the rim; in ours a draught works on evaporation alone.
struct Stove {
  double litre, diameter, lidded;  // L, m, s
  double evaporation = 1.0;
  double draught = 0.0;  // m/s
};

double penaltyOfNoLid(const Stove& stove) {
  Vessel v = potOf(stove.diameter,
                   1.5 * stove.litre * 4e-3 / (3.14159 * stove.diameter * stove.diameter), 500.0);
  v.support = {.onLegs = false, .solid = squareMetreKelvinsPerWatt(1e4)};
  Place kitchen = roomAt(21.0);
  kitchen.water = celsius(15.0);
  kitchen.draught = metresPerSecond(stove.draught);
  const auto timeAt = [&](double watt, double open) {
    v.open = openAt(open);
    Rig rig = rigOf(v, watt);
    rig.evaporationFactor = stove.evaporation;
    return simulate(rig, test_support::waterOnly(stove.litre, seconds(0.0)), kitchen).duration();
  };
  double low = 300.0;
  double high = 6000.0;
  for (int i = 0; i < 40; ++i) {
    const double middle = 0.5 * (low + high);
    (timeAt(middle, kRimGap) > seconds(stove.lidded) ? low : high) = middle;
  }
  return static_cast<double>(timeAt(high, 1.0) / timeAt(high, kRimGap)) - 1.0;
}

// MacKay's litre is met. The magazine's pots lost 2.7 and 2.2 times what ours do, more than width,
// law and a draught of 1 m/s together explain; a flame's own gases sweep their rims, and when a
// cook calls a pot boiling is not said. Two kitchens that differ so much bound ours from above
// only.
TEST(LidOnAStove, SavesWhatOneKitchenMeasuredAndLessThanTheOther) {
  double last = 0.0;
  for (const auto& [stove, open, met] : {std::tuple{Stove{1.0, 0.16, 289}, 305.0, true},
                                         {Stove{1.89, 0.18, 630}, 800.0, false},
                                         {Stove{7.57, 0.26, 1580}, 2082.0, false}}) {
    SCOPED_TRACE(stove.litre);
    const std::vector<Bracket> penalty =
        propagate(stove,
                  {{&Stove::diameter, {0.85 * stove.diameter, 1.15 * stove.diameter}},
                   {&Stove::evaporation, {0.818, 1.182}},
                   {&Stove::draught, {0.0, 1.0}}},
                  [](const Stove& s) { return std::vector{penaltyOfNoLid(s)}; });
    const double measured = open / stove.lidded - 1.0;
    record("penalty_" + std::to_string(stove.litre), penalty[0].nominal);
    // Single runs: two boils of one pan on one ring differ by 3 % (the pan of water).
    const double scatter = std::hypot(0.03, 0.03);
    EXPECT_LE(penalty[0].nominal - std::hypot(penalty[0].down, scatter), measured);
    if (met) expectMeasured("one_litre", penalty[0], measured, scatter);
    EXPECT_GT(penalty[0].nominal, last);  // as measured: it grows with the time it takes
    last = penalty[0].nominal;
  }
}

// Brewers' experience of an ordinary kettle (common practice, no source; all sizes and the room are
// assumptions of this test): 30 L and 6.5 kg of grain, steel 0.355 m wide and 0.40 m high, 5 mm of
// foam rubber (0.06 W/(m K), EN 12524) on side and base, a wooden table 25 mm thick (the plan's
// default), a bare lid whose opening is blocked, no pumping. Mashed in at 66.7 C it read 66.1 C
// after 10 min, 65.0 after 20, 64.4 after 30, and a little under 30 C next morning.
struct LeftAlone {
  double room = 16.0;
  double foam = 0.06;       // W/(m K)
  double table = 25.0;      // mm
  double emissivity = 0.3;  // of the lid
  double malt = 6.5;        // kg
};

Curve curveOf(const LeftAlone& mash) {
  Vessel v = test_support::steelKettle();
  v.side = v.base = {{layer(5.0, mash.foam)}, 0.9};
  v.lid.emissivity = mash.emissivity;
  v.open.mash = 0.0;
  v.support = onTable(metres(0.355), millimetres(mash.table), wattsPerMetreKelvin(0.15));
  Batch batch = test_support::mashOf(30.0, mash.malt, mash.room);
  batch.mash = UnpluggedMash{celsius(66.7), hours(20.0)};
  batch.mashingIn = seconds(0.0);
  batch.boil = seconds(0.0);
  return curveOf(simulate(rigOf(v, 3000.0), batch, roomAt(mash.room), {.curves = true}),
                 StageKind::UnpluggedRest);
}
double hoursTo30(const LeftAlone& mash) { return curveOf(mash).reaching(30.0) / kHour; }

// The thermometer's own reading and a mash that is not stirred: +-0.6 K.
TEST(JacketedKettle, CoolsAsBrewersSeeInTheFirstHalfHour) {
  const Curve mash = curveOf(LeftAlone{});
  for (const auto& [minute, measured] :
       {std::pair{0.0, 66.7}, {10.0, 66.1}, {20.0, 65.0}, {30.0, 64.4}}) {
    SCOPED_TRACE(minute);
    record("mash_" + std::to_string(int(minute)), mash.at(60.0 * minute) - measured);
    EXPECT_NEAR(mash.at(60.0 * minute), measured, 0.6);
  }
}

// In a room of 16 C only just: 15.9 h of 16. What is assumed moves it by more than is left; see
// below.
TEST(JacketedKettle, IsBelowThirtyDegreesNextMorning) {
  for (const double room : {12.0, 14.0, 16.0}) {
    SCOPED_TRACE(room);
    const double hour = hoursTo30({.room = room});
    record("below30_room" + std::to_string(int(room)) + "_h", hour);
    EXPECT_GT(hour, 10.0);
    EXPECT_LT(hour, 16.0);
  }
}

// How far the assumptions carry that hour, in 16 C, and that each carries it the way it must. "Next
// morning" must come out at all their edges: later than 10 h, and no later than the longest night
// anybody leaves a mash, 20 h.
TEST(JacketedKettle, ReachesNextMorningAtTheEdgesOfWhatIsAssumed) {
  const auto figure = [](const LeftAlone& m) { return std::vector{hoursTo30(m)}; };
  using Edge = std::pair<double LeftAlone::*, std::pair<double, double>>;
  for (const auto& [name, edge, laterWhenHigh] :
       {std::tuple{"table_20_40mm", Edge{&LeftAlone::table, {20.0, 40.0}}, true},
        {"foam_0.05_0.07", Edge{&LeftAlone::foam, {0.05, 0.07}}, false},
        {"lid_0.16_0.44", Edge{&LeftAlone::emissivity, {0.16, 0.44}}, false},
        {"malt_6.0_7.0kg", Edge{&LeftAlone::malt, {6.0, 7.0}}, true}}) {
    SCOPED_TRACE(name);
    const Bracket hour = test_support::propagate(LeftAlone{}, {edge}, figure)[0];
    record(std::string(name) + "_down_h", hour.down);
    record(std::string(name) + "_up_h", hour.up);
    LeftAlone high;
    high.*edge.first = edge.second.second;
    EXPECT_EQ(hoursTo30(high) > hour.nominal, laterWhenHigh);
  }
  record("table30_h", hoursTo30({.table = 30.0}));
  const Bracket all = test_support::propagate(LeftAlone{},
                                              {{&LeftAlone::table, {20.0, 40.0}},
                                               {&LeftAlone::foam, {0.05, 0.07}},
                                               {&LeftAlone::emissivity, {0.16, 0.44}},
                                               {&LeftAlone::malt, {6.0, 7.0}},
                                               {&LeftAlone::room, {12.0, 16.0}}},
                                              figure)[0];
  record("all_down_h", all.down);
  record("all_up_h", all.up);
  EXPECT_GT(all.nominal - all.down, 10.0);
  EXPECT_LT(all.nominal + all.up, 20.0);
}

}  // namespace
}  // namespace physics
