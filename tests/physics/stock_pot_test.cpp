// SPDX-License-Identifier: GPL-3.0-or-later
// A stock pot of kettle size, heated without its lid (a private web log of 2011):
// aluminium, 32 L, with 24 L of water on two hob rings; 48 C after 30 min, 66 after 45, 83 after
// 61, 93 after 75 and 100 after 90; then it simmered and would not roll. Nor are its size and the
// rings' power stated. Assumed: 36 cm wide (34-38) and 32 cm high, 3 kg of aluminium (2-4),
// emissivity 0.2 (0.05-0.4), a room of 18 C (15-21), no loss downwards, where the rings are,
// evaporation by Shah's law (0.818-1.182 of it). The power is the one that takes it from 48 to 66 C
// in those 15 min (14.3-15.7: two readings to the minute); how much longer each further step takes
// is the prediction, and shows how losses grow.
#include <gtest/gtest.h>

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
using test_support::heatingCurve;
using test_support::potOf;
using test_support::propagate;
using test_support::record;

constexpr double kLitres = 24.0;

struct StockPot {
  double diameter = 0.36, height = 0.32;
  double aluminium = 3.0;  // kg
  double emissivity = 0.2;
  double room = 18.0;
  double evaporation = 1.0;
  double minutesTo66 = 15.0;
};

Curve heatingOf(const StockPot& pot, double watt) {
  Vessel v = potOf(pot.diameter, pot.height, 500.0);
  v.wallThickness = millimetres(3.0);
  v.wallConductivity = wattsPerMetreKelvin(200.0);
  v.mass = kilograms(pot.aluminium);
  v.specificHeat = joulesPerKilogramKelvin(900.0);
  v.side.emissivity = pot.emissivity;
  v.support = {.onLegs = false, .solid = squareMetreKelvinsPerWatt(1e4)};
  v.open = test_support::openAt(1.0);
  Rig rig = test_support::rigOf(v, watt);
  rig.evaporationFactor = pot.evaporation;
  return heatingCurve(rig, kLitres, 15.0, pot.room);
}

double wattOf(const StockPot& pot) {
  double low = 1000.0;
  double high = 5000.0;
  for (int i = 0; i < 30; ++i) {
    const double middle = 0.5 * (low + high);
    (heatingOf(pot, middle).between(48.0, 66.0) > 60.0 * pot.minutesTo66 ? low : high) = middle;
  }
  return high;
}

// Times to the minute, of two readings each.
TEST(StockPot, SlowsDownTowardsTheBoilAsLogged) {
  const std::vector<std::pair<std::pair<double, double>, double>> logged{
      {{66.0, 83.0}, 16.0}, {{83.0, 93.0}, 14.0}, {{66.0, 93.0}, 30.0}};
  const std::vector<Bracket> figures =
      propagate(StockPot{},
                {{&StockPot::diameter, {0.34, 0.38}},
                 {&StockPot::aluminium, {2.0, 4.0}},
                 {&StockPot::emissivity, {0.05, 0.4}},
                 {&StockPot::room, {15.0, 21.0}},
                 {&StockPot::evaporation, {0.818, 1.182}},
                 {&StockPot::minutesTo66, {14.3, 15.7}}},
                [&](const StockPot& pot) {
                  const double watt = wattOf(pot);
                  const Curve curve = heatingOf(pot, watt);
                  std::vector<double> f;
                  for (const auto& [step, minutes] : logged) {
                    f.push_back(curve.between(step.first, step.second) / 60.0);
                  }
                  f.push_back(watt);
                  return f;
                });
  record("watt", figures.back().nominal);
  for (std::size_t i = 0; i < logged.size(); ++i) {
    const auto& [step, minutes] = logged[i];
    record("minutes_to_" + std::to_string(int(step.second)), figures[i].nominal);
    expectMeasured(
        "from_" + std::to_string(int(step.first)) + "_to_" + std::to_string(int(step.second)),
        figures[i], minutes, std::hypot(0.5, 0.5));
  }
}

}  // namespace
}  // namespace physics
