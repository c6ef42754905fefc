// SPDX-License-Identifier: GPL-3.0-or-later
// Curves that somebody measured, beside simulated ones: what the source's own scatter and the
// inputs it does not state allow between them.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

#include "physics/brewday.hpp"
#include "tests/support/kettles.hpp"

namespace test_support {

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
  // Seconds from one temperature to another, rising or falling; infinite if never reached.
  double between(double from, double to) const { return reaching(to) - reaching(from); }
  double reaching(double t) const {
    const bool rising = points.back().second > points.front().second;
    const auto after = std::find_if(points.begin(), points.end(), [&](const auto& p) {
      return rising ? p.second >= t : p.second <= t;
    });
    if (after == points.end()) return HUGE_VAL;
    if (after == points.begin()) return after->first;
    const auto before = after - 1;
    return before->first +
           (after->first - before->first) * (t - before->second) / (after->second - before->second);
  }
};

inline Curve curveOf(const physics::BrewDay& day, physics::StageKind kind) {
  Curve curve;
  const physics::Stage* stage = day.find(kind);
  if (!stage) return curve;
  for (const physics::CurvePoint& p : stage->curve) {
    curve.points.emplace_back(physics::inSeconds(p.time - stage->begin),
                              physics::inCelsius(p.wort));
  }
  return curve;
}

inline physics::Vessel potOf(double diameter, double height, double shellHeat) {
  physics::Vessel pot = steelKettle();
  pot.innerDiameter = physics::metres(diameter);
  pot.height = physics::metres(height);
  pot.mass = physics::kilograms(shellHeat / 500.0);
  return pot;
}

// So much metal, whatever its shape, that wort of this volume finds this heat capacity wetted.
inline void holdsBesideWater(physics::Vessel& v, double litre, double joulePerKelvin) {
  const auto wetted = wettedHeatCapacity(v, physics::litres(litre) / crossSection(v));
  v.mass = v.mass * static_cast<double>(physics::joulesPerKelvin(joulePerKelvin) / wetted);
}

inline physics::BrewDay heated(const physics::Rig& rig, double litre, double start, double room) {
  physics::Place place = roomAt(room);
  place.water = physics::celsius(start);
  return simulate(rig, waterOnly(litre, physics::seconds(0.0)), place, {.curves = true});
}
inline Curve heatingCurve(const physics::Rig& rig, double litre, double start, double room) {
  return curveOf(heated(rig, litre, start, room), physics::StageKind::HeatingToBoil);
}

// Cooling from a temperature, lid as in the rig's mash, starting from the hot vessel.
inline Curve cooled(const physics::Rig& rig, double litre, double start, double room,
                    physics::Time duration) {
  physics::Batch batch = mashOf(litre, 1e-9);
  batch.mash = physics::UnpluggedMash{physics::celsius(start), duration};
  batch.mashingIn = physics::seconds(0.0);
  batch.boil = physics::seconds(0.0);
  return curveOf(simulate(rig, batch, roomAt(room), {.curves = true}),
                 physics::StageKind::UnpluggedRest);
}

inline void record(const std::string& key, double value) {
  ::testing::Test::RecordProperty(key, std::to_string(value));
}

// A simulated figure and how far the edges of the unstated inputs move it down and up.
struct Bracket {
  double nominal, down, up;
};

// Runs `figures(inputs)` with the assumed inputs and at both edges of each input alone. The inputs
// are independent, so that their effects add as a root of squares.
template <class Inputs, class Figures>
std::vector<Bracket> propagate(
    const Inputs& assumed,
    const std::vector<std::pair<double Inputs::*, std::pair<double, double>>>& edges,
    const Figures& figures) {
  std::vector<Bracket> brackets;
  for (const double f : figures(assumed)) brackets.push_back({f, 0.0, 0.0});
  for (const auto& [input, range] : edges) {
    Inputs low = assumed;
    Inputs high = assumed;
    low.*input = range.first;
    high.*input = range.second;
    const std::vector<double> atLow = figures(low);
    const std::vector<double> atHigh = figures(high);
    for (std::size_t i = 0; i < brackets.size(); ++i) {
      Bracket& b = brackets[i];
      b.down = std::hypot(b.down, std::max(0.0, b.nominal - std::min(atLow[i], atHigh[i])));
      b.up = std::hypot(b.up, std::max(0.0, std::max(atLow[i], atHigh[i]) - b.nominal));
    }
  }
  return brackets;
}

// The measured figure lies within its own scatter and the unstated inputs of the simulated one.
inline void expectMeasured(const std::string& name, const Bracket& simulated, double measured,
                           double scatter) {
  SCOPED_TRACE(name);
  record(name, simulated.nominal - measured);
  EXPECT_GE(measured, simulated.nominal - std::hypot(simulated.down, scatter));
  EXPECT_LE(measured, simulated.nominal + std::hypot(simulated.up, scatter));
}

}  // namespace test_support
