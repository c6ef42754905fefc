// SPDX-License-Identifier: GPL-3.0-or-later
// Mugs that cooled and a pan that boiled, measured in kitchens. Neither sizes nor the room are
// stated; what is assumed stands beside each, with edges.
//
// All three surfaces are smaller than those of Shah's data, 0.07 m2 and more. So his law is not
// taken for +-18 % here: other published laws for still air (Boelter, Himus and Hinchley, Carrier,
// Ryan and Harleman) lie between 0.54 and 1.17 of it from 50 to 80 C. All three vessels lost less
// than his law says: below some 30 cm of width it reads high.
#include <gtest/gtest.h>

#include <cmath>
#include <string>
#include <utility>
#include <vector>

#include "tests/support/measured.hpp"

namespace physics {
namespace {

// Evaporation into still air by five published laws, as shares of Shah's: of water at 80 C, and of
// water at 90 C, where the lowest (0.74 of Carrier's) and the highest (Ryan's and Harleman's) are
// further apart.
constexpr std::pair kPublishedLaws{0.54, 1.17};
constexpr std::pair kPublishedLawsAt90{0.51, 1.22};

using test_support::Bracket;
using test_support::cooled;
using test_support::Curve;
using test_support::expectMeasured;
using test_support::heatingCurve;
using test_support::potOf;
using test_support::propagate;
using test_support::record;

struct Mug {
  double litre = 0.25;
  double diameter = 0.075;
  double full = 0.8;        // share of the height
  double emissivity = 0.9;  // of the outside
  double wall = 0.0;        // m2 K/W, insulance of the side and base
  double shell = 150.0;     // J/K
  double open = 1.0;
  double room = 23.0;
  double evaporation = 1.0;
};
Rig rigOf(const Mug& mug) {
  const double fill = 4e-3 * mug.litre / (3.14159 * mug.diameter * mug.diameter);
  Vessel v = potOf(mug.diameter, fill / mug.full, 100.0);
  test_support::holdsBesideWater(v, mug.litre, mug.shell);
  v.side.emissivity = v.lid.emissivity = v.base.emissivity = mug.emissivity;
  if (mug.wall > 0.0) {
    const Layer vacuum{.thickness = millimetres(2.0),
                       .flatInsulance = squareMetreKelvinsPerWatt(mug.wall)};
    v.side.insulation = v.base.insulation = {vacuum};
  }
  v.open = test_support::openAt(mug.open);
  v.support = onTable(metres(mug.diameter), millimetres(20.0), wattsPerMetreKelvin(0.15));
  Rig rig = test_support::rigOf(v, 1000.0);
  rig.evaporationFactor = mug.evaporation;
  return rig;
}

// An iron mug of 250 mL, open, about 80 % full, preheated (A. Lobanov, cooling-down); s and C.
// Assumed: 7.5 cm wide (6.5-8.5), emissivity 0.9 (0.3 bare iron to 0.95 enamel), 0.15 kJ/K of mug
// (0.05-0.25). The room is not stated either and is taken from the last reading, so that the way
// there is the prediction; a room people live in must come out. As assumed it would be 31 C, 26 C
// with the lowest published laws and a narrow mug: ours cools too fast.
TEST(IronMug, CoolsAsMeasured) {
  const std::vector<std::pair<double, double>> measured{
      {252, 78.7},  {616, 68.9},  {917, 63.7},  {1309, 57.9}, {1635, 54.6}, {1937, 51.7},
      {2237, 49.1}, {2538, 46.9}, {3139, 43.3}, {3739, 40.5}, {4338, 38.3}};
  const std::vector<Bracket> simulated =
      propagate(Mug{},
                {{&Mug::diameter, {0.065, 0.085}},
                 {&Mug::full, {0.7, 0.9}},
                 {&Mug::emissivity, {0.3, 0.95}},
                 {&Mug::shell, {50.0, 250.0}},
                 {&Mug::evaporation, kPublishedLaws}},
                [&](Mug mug) {
                  const auto curve = [&] {
                    return cooled(rigOf(mug), mug.litre, 88.8, mug.room, hours(1.4));
                  };
                  double low = 5.0;
                  double high = 36.0;
                  for (int i = 0; i < 30; ++i) {
                    mug.room = 0.5 * (low + high);
                    (curve().at(4638.0) < 37.4 ? low : high) = mug.room;
                  }
                  std::vector<double> figures;
                  for (const auto& [second, t] : measured) figures.push_back(curve().at(second));
                  figures.push_back(mug.room);
                  return figures;
                });
  const Bracket& room = simulated.back();
  record("room_C", room.nominal);
  record("room_down", room.down);
  EXPECT_GE(room.nominal + room.up, 18.0);
  EXPECT_LE(room.nominal - room.down, 28.0);
  for (std::size_t i = 0; i < measured.size(); ++i) {
    expectMeasured("mug_" + std::to_string(int(measured[i].first)), simulated[i],
                   measured[i].second, 0.05);  // readings to 0.1 K
  }
}

// A vacuum mug lost 40 W when its lid was taken off, 7.5 times what it lost with the lid on
// (M. de Podesta, 2012), in a room of 20 C. Water just boiled, 90 C (85-95) in a mouth of 7.5 cm
// (6.5-8.5): its surface alone must account for what the lid had kept, 40 W less 40/7.5 W.
TEST(VacuumMug, LosesThroughItsSurfaceWhatItsLidKept) {
  struct Open {
    double water = 90.0;
    double diameter = 0.075;
    double evaporation = 1.0;
  };
  const std::vector<Bracket> watt = propagate(
      Open{},
      {{&Open::water, {85.0, 95.0}},
       {&Open::diameter, {0.065, 0.085}},
       {&Open::evaporation, kPublishedLaws}},
      [](const Open& mug) {
        const Rig rig = rigOf({.diameter = mug.diameter, .full = 1.0});
        const Length fill = rig.vessel.height;
        const Surroundings room{.air = moistAir(celsius(20.0), 0.5, pascals(101325.0)),
                                .draught = {}};
        HeatLossModel model(rig.vessel, rig.hose, room, fill, 1.0, mug.evaporation);
        const auto lost = model.flows(celsius(mug.water), fill).lost;
        return std::vector{inWatts(lost[Path::Evaporation] + lost[Path::SurfaceConvection] +
                                   lost[Path::SurfaceRadiation])};
      });
  record("watt", watt[0].nominal);
  // "About" 40 W.
  expectMeasured("surface", watt[0], 40.0 - 40.0 / 7.5, 2.5);
}

// A pan of water on a stove (J. Hofman, boiling-times): F once a minute; 2 US cups twice and 4 cups
// once, the same ring setting, power not stated. Power and what pan and ring hold come from how
// fast each volume passed 100-140 F (38-60 C), where little is lost; how it slows down after that
// is the prediction. Assumed: a pan 18 cm wide (15-21) and 12 cm high, emissivity 0.3 (0.16-0.9),
// no lid. Ours slows down more, by a seventh of two cups' time.
struct Pan {
  double watt, heat;  // J/K beside the water
  double diameter = 0.18, height = 0.12, emissivity = 0.3, evaporation = 1.0;
};
constexpr double kCup = 0.2366;  // L
Curve heatingOf(const Pan& pan, double cups, double start) {
  Vessel v = potOf(pan.diameter, pan.height, 100.0);
  test_support::holdsBesideWater(v, kCup * cups, pan.heat);
  v.side.emissivity = pan.emissivity;
  v.open = test_support::openAt(1.0);
  v.support = {.onLegs = false, .solid = squareMetreKelvinsPerWatt(1e4)};
  Rig rig = test_support::rigOf(v, pan.watt);
  rig.evaporationFactor = pan.evaporation;
  return heatingCurve(rig, kCup * cups, start, 21.0);
}
double celsiusOf(double fahrenheit) { return (fahrenheit - 32.0) / 1.8; }

TEST(PanOnAStove, SlowsDownTowardsTheBoilAsMeasured) {
  const Curve two{{{0, 72}, {60, 95}, {120, 120}, {180, 144}, {240, 170}, {300, 191}, {360, 208}}};
  const Curve again{
      {{0, 67}, {60, 86}, {120, 111}, {180, 135}, {240, 158}, {300, 179}, {360, 199}}};
  const Curve four{{{0, 68},
                    {60, 81},
                    {120, 98},
                    {180, 112},
                    {240, 126},
                    {300, 140},
                    {360, 152},
                    {420, 165},
                    {480, 177},
                    {540, 187},
                    {600, 199},
                    {660, 205}}};
  const double quick = 0.5 * (two.between(100.0, 140.0) + again.between(100.0, 140.0));
  const double slow = four.between(100.0, 140.0);
  const auto start = [](const Curve& c) { return celsiusOf(c.points.front().second); };
  // Power from the four cups' time, heat from the two cups'.
  const auto fitted = [&](Pan pan) {
    pan.watt = 700.0;
    pan.heat = 1000.0;
    for (int i = 0; i < 60; ++i) {
      const double ours = heatingOf(pan, 4.0, start(four)).between(celsiusOf(100), celsiusOf(140));
      pan.watt *= std::sqrt(ours / slow);
      const double oursTwo =
          heatingOf(pan, 2.0, start(two)).between(celsiusOf(100), celsiusOf(140));
      pan.heat *= std::pow(quick / oursTwo, 0.7);
    }
    return pan;
  };
  const std::vector<Bracket> simulated =
      propagate(Pan{},
                {{&Pan::diameter, {0.15, 0.21}},
                 {&Pan::emissivity, {0.16, 0.9}},
                 {&Pan::evaporation, kPublishedLawsAt90}},
                [&](const Pan& assumed) {
                  const Pan pan = fitted(assumed);
                  const Curve a = heatingOf(pan, 2.0, start(two));
                  const Curve b = heatingOf(pan, 4.0, start(four));
                  return std::vector{pan.watt, pan.heat, a.between(celsiusOf(140), celsiusOf(199)),
                                     b.between(celsiusOf(140), celsiusOf(199)),
                                     b.between(celsiusOf(140), celsiusOf(205))};
                });
  record("pan_W", simulated[0].nominal);
  record("pan_J_per_K", simulated[1].nominal);
  // The same pan twice: 158 and 167 s.
  const double first = two.between(140.0, 199.0);
  const double second = again.between(140.0, 199.0);
  const double repeats = 0.5 * std::abs(first - second);
  const double measured = 0.5 * (first + second);
  expectMeasured("two_cups_140F_to_199F", simulated[2], measured, repeats);
  expectMeasured("four_cups_140F_to_199F", simulated[3], four.between(140.0, 199.0),
                 repeats / measured * four.between(140.0, 199.0));
  expectMeasured("four_cups_140F_to_205F", simulated[4], four.between(140.0, 205.0),
                 repeats / measured * four.between(140.0, 205.0));
  // Measured and simulated, a degree takes longer than between 100 F and 140 F.
  EXPECT_GT(simulated[3].nominal, slow * 59.0 / 40.0);
  EXPECT_GT(four.between(140.0, 199.0), slow * 59.0 / 40.0);
}

}  // namespace
}  // namespace physics
