// SPDX-License-Identifier: GPL-3.0-or-later
// Heating and cooling that somebody measured, simulated with the stated sizes. What a source leaves
// out is chosen here as plausible and said so. The small cooking pot's size, power and heat come from
// its own lidded runs, after a first guess of the size had missed: those rows check the shape of the
// curves, and the open runs, which were not used, more than that. Residuals are recorded with each
// test.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>
#include <vector>

#include "physics/brewday.hpp"
#include "tests/support/kettles.hpp"

namespace physics {
namespace {

using test_support::layer;
using test_support::openAt;
using test_support::rigOf;
using test_support::roomAt;

constexpr double kHour = 3600.0;  // s

// Water temperature (C) against time (s).
struct Curve {
  std::vector<std::pair<double, double>> points;

  double at(double second) const {
    const auto after = std::find_if(points.begin(), points.end(),
                                    [&](const auto& p) { return p.first >= second; });
    if (after == points.begin()) return after->second;
    if (after == points.end()) return points.back().second;
    const auto before = after - 1;
    const double share = (second - before->first) / (after->first - before->first);
    return before->second + share * (after->second - before->second);
  }
  // Seconds from one temperature to another; -1 if never reached.
  double between(double from, double to) const {
    const double begin = reaching(from);
    const double end = reaching(to);
    return begin < 0.0 || end < 0.0 ? -1.0 : end - begin;
  }
  double reaching(double t) const {
    const auto after =
        std::find_if(points.begin(), points.end(), [&](const auto& p) { return p.second >= t; });
    if (after == points.end()) return -1.0;
    if (after == points.begin()) return after->first;
    const auto before = after - 1;
    return before->first +
           (after->first - before->first) * (t - before->second) / (after->second - before->second);
  }
};

Curve curveOf(const BrewDay& day, StageKind kind) {
  Curve curve;
  const Stage* stage = day.find(kind);
  if (!stage) return curve;
  for (const CurvePoint& p : stage->curve) {
    curve.points.emplace_back(inSeconds(p.time - stage->begin), inCelsius(p.wort));
  }
  return curve;
}

Vessel potOf(double diameter, double height, double shellHeat) {
  Vessel pot = test_support::steelKettle();
  pot.innerDiameter = metres(diameter);
  pot.height = metres(height);
  pot.mass = kilograms(shellHeat / 500.0);
  return pot;
}

BrewDay heated(const Rig& rig, double litre, double start, double room) {
  Place place = roomAt(room);
  place.water = celsius(start);
  return simulate(rig, test_support::waterOnly(litre, seconds(0.0)), place, {.curves = true});
}

// Cooling from a temperature, lid as in the rig's mash, starting from the hot vessel.
Curve cooled(Rig rig, double litre, double start, double room, Time duration) {
  Batch batch = test_support::mashOf(litre, 1e-9);
  batch.mash = UnpluggedMash{celsius(start), duration};
  batch.mashingIn = seconds(0.0);
  batch.boil = seconds(0.0);
  return curveOf(simulate(rig, batch, roomAt(room), {.curves = true}), StageKind::UnpluggedRest);
}

void record(const std::string& key, double value) {
  ::testing::Test::RecordProperty(key, std::to_string(value));
}

// An insulated lidded bucket (M. Hay, TermiskEnergilager, run2.csv): inner plastic bucket
// of mean radius 0.091 m and height 0.142 m, 3.036 kg of water, rock wool (0.037 W/(m K)) 0.04 m at
// the side and 0.05 m above and below, aluminium foil outside; 162 W for the first 35 min, then
// off. Ours: 2 mm of plastic (0.19 kg at 1900 J/(kg K)), foil emissivity 0.1, a wooden table. The
// wool is half as thick as the bucket's radius, so that its two round edges matter: 0.54 k per
// length of edge (shape-factor tables, from memory), counted with lid and base.
Rig bucket(double k) {
  const double radius = 0.091;
  const double end = 3.14159 * radius * radius;
  const double edge = 0.54 * 2.0 * 3.14159 * radius;
  const Layer wool{.thickness = millimetres(50.0),
                   .flatInsulance = squareMetreKelvinsPerWatt(end / (k * (end / 0.05 + edge)))};
  Vessel v = potOf(2.0 * radius, 0.142, 0.19 * 1900.0);
  v.wallThickness = millimetres(2.0);
  v.wallConductivity = wattsPerMetreKelvin(0.2);
  v.side = {{layer(40.0, k)}, 0.1};
  v.base = v.lid = {{wool}, 0.1};
  v.open = openAt(0.0);
  v.support = onTable(metres(0.272), millimetres(30.0), wattsPerMetreKelvin(0.15));
  return rigOf(v, 162.0);
}

// Means of top and bottom, from three hours on. Before, the wool still soaks up heat that the
// simulation's massless jacket does not, and the measured bucket falls by 1.5 K more. With the
// stated conductivity we lose a fifth less than measured (2 K rms): heater, probes and their holes
// in the lid are not described, and rock wool is listed from 0.036 up to 0.057 W/(m K) (D. Q. Kern,
// Process Heat Transfer). The measured curve must lie between the two, give or take the probes' 0.3
// K.
TEST(InsulatedBucket, CoolsForFourDaysBetweenTheListedWools) {
  const std::vector<std::pair<double, double>> measured{
      {4.0, 45.45}, {6.0, 43.9},  {8.0, 42.0},  {10.0, 40.2},  {12.0, 39.0}, {16.0, 36.45},
      {20.0, 34.5}, {24.0, 32.9}, {30.0, 31.0}, {36.0, 29.55}, {48.0, 27.15}};
  // Mean of the room over those days; it wandered between 23.5 and 25.1 C.
  const double room = 24.4;
  const Curve stated = cooled(bucket(0.037), 3.036 / 0.9982, 46.8, room, hours(45.0));
  const Curve poor = cooled(bucket(0.057), 3.036 / 0.9982, 46.8, room, hours(45.0));
  double squares = 0.0;
  for (const auto& [hour, t] : measured) {
    SCOPED_TRACE(hour);
    const double slow = stated.at(kHour * (hour - 3.0));
    EXPECT_GT(slow, t - 0.3);
    EXPECT_LT(poor.at(kHour * (hour - 3.0)), t + 0.3);
    squares += (slow - t) * (slow - t);
  }
  const double rms = std::sqrt(squares / static_cast<double>(measured.size()));
  record("rms_K", rms);
  EXPECT_LT(rms, 2.2);
}

// The measured mean was 50.9 C five minutes after switching off at 35 min.
TEST(InsulatedBucket, HeatsLikeTheMeasuredOne) {
  const Curve heating =
      curveOf(heated(bucket(0.037), 3.036 / 0.9982, 24.7, 24.7), StageKind::HeatingToBoil);
  const double t = heating.at(35.0 * 60.0);
  record("after35min_C", t);
  EXPECT_NEAR(t, 50.9, 1.0);
}

// A small electric cooking pot with lid and side insulation varied (E. Otiato,
// temperature-control): seconds from 30 C in a room at 23.5 C, same heater setting throughout,
// power not stated; the best insulated runs say 225 W net near 45 C. Sizes are not stated either,
// but insulating the side saved 1.3-1.6 W/K under the lid, which takes about 0.16 m2 of bare metal:
// ours is 26 cm wide and 20 cm high. Pot and fittings hold 1-2 kJ/K beside the water (computed from
// the runs): 1.5. Emissivity 0.3, 230 W, nothing lost downwards because the heater is there,
// insulation of k 0.04.
Rig cookingPot(double insulationInMm, double open, double litre, double watt = 230.0,
               double fittings = 1500.0) {
  Vessel v = potOf(0.26, 0.20, 500.0);
  const HeatCapacity wetted = wettedHeatCapacity(v, litres(litre) / crossSection(v));
  v.mass = v.mass * static_cast<double>(joulesPerKelvin(fittings) / wetted);
  if (insulationInMm > 0.0) v.side = {{layer(insulationInMm, 0.04)}, 0.9};
  v.support = {.onLegs = false, .solid = squareMetreKelvinsPerWatt(1e4)};
  v.open = openAt(open);
  return rigOf(v, watt);
}

TEST(CookingPot, HeatsUnderItsLidAsMeasured) {
  struct Row {
    double insulation, litre, to50, to80, to95, tolerance;
  };
  // +-5 % of power and +-3 % of heat capacity; bare, +-15 % of what the assumed sizes lose besides.
  for (const Row& row :
       {Row{0, 1.5, 714, 2063, 3061, 0.15}, Row{0, 2.0, 913, 2672, 3941, 0.15},
        Row{0, 2.5, 1110, 3217, 4749, 0.15}, Row{100, 1.5, 678, 1751, 2334, 0.08},
        Row{100, 2.0, 882, 2263, 3001, 0.08}, Row{100, 2.5, 1071, 2725, 3604, 0.08},
        Row{200, 2.0, 882, 2251, 2978, 0.08}, Row{200, 2.5, 1057, 2686, 3560, 0.08}}) {
    const std::string name =
        std::to_string(int(row.insulation)) + "mm_" + std::to_string(int(10 * row.litre)) + "dL";
    SCOPED_TRACE(name);
    const Curve heating =
        curveOf(heated(cookingPot(row.insulation, 0.0, row.litre), row.litre, 23.5, 23.5),
                StageKind::HeatingToBoil);
    for (const auto& [to, measured] :
         {std::pair{50.0, row.to50}, {80.0, row.to80}, {95.0, row.to95}}) {
      const double simulated = heating.between(30.0, to);
      record("to" + std::to_string(int(to)) + "_" + name, simulated / measured);
      EXPECT_NEAR(simulated, measured, row.tolerance * measured) << to;
    }
  }
}

// Without its lid the same pot stalled at 68.6-69.9 C (bare) and 70.4-73.4 C (insulated). Published
// evaporation scatters by 20 %, which is 4 K here. The pot is the one sized under its lid.
TEST(CookingPot, StallsWithoutItsLidWhereItWasMeasuredTo) {
  for (const auto& [insulation, litre, measured] : {std::tuple{0.0, 1.5, 68.6},
                                                    {0.0, 2.0, 68.9},
                                                    {0.0, 2.5, 69.9},
                                                    {100.0, 1.5, 72.1},
                                                    {100.0, 2.0, 72.6},
                                                    {100.0, 2.5, 73.4},
                                                    {200.0, 2.0, 70.4}}) {
    SCOPED_TRACE(measured);
    const BrewDay day = heated(cookingPot(insulation, 1.0, litre), litre, 23.5, 23.5);
    EXPECT_EQ(day.outcome, Outcome::DoesNotBoil);
    ASSERT_TRUE(day.levelsOff);
    record("level_" + std::to_string(int(insulation)) + "mm_" + std::to_string(int(10 * litre)),
           inCelsius(day.levelsOff->at) - measured);
    EXPECT_NEAR(inCelsius(day.levelsOff->at), measured, 4.0);
  }
}

// Same laboratory, 1 L at stated powers with 10 cm of insulation and 1.8 kJ/K of pot and heater
// (computed from the runs); seconds from 25 C, mean of three runs within 3 %. The source does
// not say whether the lid was covered too, and at 50 W the lid is most of the loss: the measured
// times must lie between ours with a bare and with an equally covered lid.
Rig litrePot(double watt, bool coveredLid) {
  Rig rig = cookingPot(100.0, 0.0, 1.0, watt, 1800.0);
  if (coveredLid) rig.vessel.lid = rig.vessel.side;
  return rig;
}

TEST(CookingPot, BoilsOneLitreAsMeasuredAtStatedPowers) {
  struct Row {
    double watt, to50, to70, to90, to95;
  };
  for (const Row& row : {Row{250, 639, 1146, 1694, 1846}, Row{150, 1027, 1918, 2887, 3157},
                         Row{50, 3289, 6393, 10752, 12395}}) {
    SCOPED_TRACE(row.watt);
    const auto times = [&](bool coveredLid) {
      return curveOf(heated(litrePot(row.watt, coveredLid), 1.0, 23.5, 23.5),
                     StageKind::HeatingToBoil);
    };
    const Curve bare = times(false);
    const Curve covered = times(true);
    for (const auto& [to, measured] :
         {std::pair{50.0, row.to50}, {70.0, row.to70}, {90.0, row.to90}, {95.0, row.to95}}) {
      const std::string name = std::to_string(int(row.watt)) + "W_to" + std::to_string(int(to));
      record("bare_" + name, bare.between(25.0, to) / measured);
      record("covered_" + name, covered.between(25.0, to) / measured);
      // Scatter of the runs and +-2 % of heat capacity.
      EXPECT_GT(bare.between(25.0, to), 0.95 * measured) << to;
      EXPECT_LT(covered.between(25.0, to), 1.05 * measured) << to;
    }
  }
}

// Step test of the same pot: 21.6 W from 70 s on, 22.0 C at the start and in the room.
TEST(CookingPot, CreepsUpAtTwentyWattsAsMeasured) {
  const auto heating = [](bool coveredLid) {
    return curveOf(heated(litrePot(21.6, coveredLid), 1.0, 22.0, 22.0), StageKind::HeatingToBoil);
  };
  const Curve bare = heating(false);
  const Curve covered = heating(true);
  for (const auto& [second, measured] : {std::pair{1800.0, 27.8},
                                         {3600.0, 33.9},
                                         {7200.0, 44.7},
                                         {10800.0, 54.3},
                                         {14400.0, 62.6},
                                         {18000.0, 69.5},
                                         {21600.0, 75.5},
                                         {28000.0, 83.1}}) {
    SCOPED_TRACE(second);
    record("bare_" + std::to_string(int(second)), bare.at(second - 70.0) - measured);
    record("covered_" + std::to_string(int(second)), covered.at(second - 70.0) - measured);
    const double scatter = 0.05 * (measured - 22.0);
    EXPECT_LT(bare.at(second - 70.0), measured + scatter);
    EXPECT_GT(covered.at(second - 70.0), measured - scatter);
  }
}

// A lidded plastic canister (mpc-physical-science, labs-testing/cooling): 5.1 g, 22.6 g of
// water, 22.9 C. Size not stated; ours is a film can's, 3.1 cm wide and 5.0 cm high, 1 mm of
// plastic, on a table. The law for flat walls leaves out the curvature of so slender a cylinder,
// some 20 % of convection here (Cebeci 1974, from memory): it must cool more slowly than measured,
// by up to 40 %.
TEST(PlasticCanister, CoolsAsMeasured) {
  Vessel v = potOf(0.031, 0.050, 5.1e-3 * 1900.0);
  v.wallThickness = millimetres(1.0);
  v.wallConductivity = wattsPerMetreKelvin(0.2);
  v.side.emissivity = v.lid.emissivity = v.base.emissivity = 0.9;
  v.open = openAt(0.0);
  v.support = onTable(metres(0.031), millimetres(20.0), wattsPerMetreKelvin(0.15));
  const Curve cooling = cooled(rigOf(v, 50.0), 0.0226 / 0.9982, 45.4, 22.9, minutes(12.0));
  const auto timeConstant = [](double after) { return 720.0 / std::log(22.5 / (after - 22.9)); };
  const double ratio = timeConstant(cooling.at(720.0)) / timeConstant(34.2);
  record("canister_time_constant", ratio);
  EXPECT_GT(ratio, 1.0);
  EXPECT_LT(ratio, 1.4);
}

// How much longer the boil takes without the lid, at the power that takes the lidded pot as long
// as it took. Two pots on equal burners (a magazine's test, 2012): 1.89 L 10 min 30 s and
// 13 min 20 s (1.27); 7.57 L in 3-gallon pots 26 min 20 s and 34 min 42 s (1.32). One litre on
// a gas ring (D. MacKay): 4 min 49 s and 5 min 05 s (1.055). Pot widths are assumed. Over an
// open flame the air is not still, so that these bound our still-air penalty from above, but for
// the 20 % by which published evaporation scatters.
TEST(LidOnAStove, SavesNoMoreThanMeasuredOverAFlame) {
  struct Row {
    double litre, diameter, lidded, open, atLeast;
  };
  for (const Row& row : {Row{1.89, 0.18, 630, 800, 1.04}, Row{7.57, 0.26, 1580, 2082, 1.05},
                         Row{1.0, 0.16, 289, 305, 1.005}}) {
    SCOPED_TRACE(row.litre);
    Vessel v = potOf(row.diameter, 1.5 * row.litre * 4e-3 / (3.14159 * row.diameter * row.diameter),
                     500.0);
    v.support = {.onLegs = false, .solid = squareMetreKelvinsPerWatt(1e4)};
    const auto timeAt = [&](double watt, double open) {
      v.open = openAt(open);
      return heated(rigOf(v, watt), row.litre, 15.0, 21.0).duration();
    };
    double low = 300.0;
    double high = 6000.0;
    for (int i = 0; i < 40; ++i) {
      const double middle = 0.5 * (low + high);
      (timeAt(middle, 0.0) > seconds(row.lidded) ? low : high) = middle;
    }
    const double ratio = static_cast<double>(timeAt(high, 1.0) / timeAt(high, 0.0));
    record("watt_" + std::to_string(row.litre), high);
    record("ratio_" + std::to_string(row.litre), ratio);
    EXPECT_GT(ratio, row.atLeast);
    EXPECT_LT(ratio - 1.0, 1.2 * (row.open / row.lidded - 1.0));
  }
}

// Brewers' experience of an ordinary kettle (common practice, no source; all sizes and the room are
// assumptions of this test): 30 L and 6.5 kg of grain, steel 0.355 m wide and 0.40 m high, 5 mm of
// foam rubber (0.06 W/(m K), EN 12524) on side and base, a wooden table 25 mm thick (the plan's
// default; 30 mm would be 0.1 h slower), a bare lid whose opening is blocked, no pumping. Mashed in
// at 66.7 C it read 66.1 C after 10 min, 65.0 after 20, 64.4 after 30, and a little under 30 C next
// morning.
Rig jacketedKettle() {
  Vessel v = test_support::steelKettle();
  v.side = v.base = {{layer(5.0, 0.06)}, 0.9};
  v.open.mash = 0.0;
  v.support = onTable(metres(0.355), millimetres(25.0), wattsPerMetreKelvin(0.15));
  return rigOf(v, 3000.0);
}

Curve leftAloneAt(double room) {
  Batch batch = test_support::mashOf(30.0, 6.5, room);
  batch.mash = UnpluggedMash{celsius(66.7), hours(17.0)};
  batch.mashingIn = seconds(0.0);
  batch.boil = seconds(0.0);
  return curveOf(simulate(jacketedKettle(), batch, roomAt(room), {.curves = true}),
                 StageKind::UnpluggedRest);
}

// The thermometer's own reading and a mash that is not stirred: +-0.6 K.
TEST(JacketedKettle, CoolsAsBrewersSeeInTheFirstHalfHour) {
  const Curve mash = leftAloneAt(16.0);
  for (const auto& [minute, measured] :
       {std::pair{0.0, 66.7}, {10.0, 66.1}, {20.0, 65.0}, {30.0, 64.4}}) {
    SCOPED_TRACE(minute);
    record("mash_" + std::to_string(int(minute)), mash.at(60.0 * minute) - measured);
    EXPECT_NEAR(mash.at(60.0 * minute), measured, 0.6);
  }
}

TEST(JacketedKettle, IsBelowThirtyDegreesNextMorning) {
  for (const double room : {12.0, 14.0, 16.0}) {
    SCOPED_TRACE(room);
    const Curve mash = leftAloneAt(room);
    const auto cold = std::find_if(mash.points.begin(), mash.points.end(),
                                   [](const auto& p) { return p.second < 30.0; });
    ASSERT_NE(cold, mash.points.end());
    ASSERT_NE(cold, mash.points.begin());
    // Between two points of the curve, some ten minutes apart.
    const auto warm = std::prev(cold);
    const double passed = (warm->second - 30.0) / (warm->second - cold->second);
    const double hour = (warm->first + passed * (cold->first - warm->first)) / kHour;
    record("below30_room" + std::to_string(int(room)) + "_h", hour);
    EXPECT_GT(hour, 10.0);
    EXPECT_LT(hour, 16.0);
  }
}

}  // namespace
}  // namespace physics
