// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/safety.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "physics/water.hpp"

namespace rigs {

using namespace physics;

namespace {

struct ScaldRow {
  double celsius;
  double secondDegree, thirdDegree;  // seconds
};
constexpr std::array kScalds{ScaldRow{45, 7200, 10800}, ScaldRow{47, 1200, 2700},
                             ScaldRow{48, 900, 1200},   ScaldRow{49, 480, 600},
                             ScaldRow{51, 120, 252},    ScaldRow{55, 17, 30},
                             ScaldRow{60, 3, 5}};
static_assert(celsius(kScalds.back().celsius) == kHottestTabledScald);

}  // namespace

std::optional<Scald> scaldAt(Temperature water) {
  std::optional<Scald> found;
  for (const ScaldRow& row : kScalds) {
    if (water >= celsius(row.celsius))
      found = Scald{seconds(row.secondDegree), seconds(row.thirdDegree)};
  }
  return found;
}

std::optional<Time> coolingTime(Time timeConstant, Temperature from, Temperature to,
                                Temperature surroundings) {
  if (from <= to) return seconds(0.0);
  if (to <= surroundings) return std::nullopt;
  return timeConstant * std::log(inKelvins(from - surroundings) / inKelvins(to - surroundings));
}

std::optional<Time> timeConstantForFood(Temperature surroundings) {
  const auto perConstant = coolingTime(hours(1.0), kWarmUpTo, celsius(21.0), surroundings);
  if (!perConstant) return std::nullopt;
  return hours(2.0) * static_cast<double>(hours(1.0) / *perConstant);
}

double growth(Time time, Time doubling) { return std::exp2(static_cast<double>(time / doubling)); }

double newtonsOnLid(Length diameter, Temperature t) {
  const double area = inSquareMetres(0.25 * std::numbers::pi * diameter * diameter);
  return (inPascals(saturationPressure(t)) - 101325.0) * area;
}

Mass wortMass(Volume atTwentyDegrees, double gravity) {
  return gravity * waterDensity(celsius(20.0)) * atTwentyDegrees;
}

Mass heaviestKettle(const BrewDay& day, const Batch& batch, const Vessel& vessel) {
  Mass mashed = wortMass(day.water, 1.0);
  for (const Stage& stage : day.stages) {
    if (stage.kind != StageKind::Strike) break;
    mashed -= stage.evaporated;
  }
  mashed += batch.grain.mass;
  return vessel.mass + std::max(mashed, wortMass(day.preBoilCold, day.preBoilGravity));
}

Time warmTime(const RigAnswer& rig) {
  const bool hasNight = rig.night && rig.night->own;
  Time sum = seconds(0.0);
  bool wort = false;
  for (const Stage& stage : rig.day.stages) {
    wort = wort || stage.kind != StageKind::Strike;
    if (!wort) continue;
    if (hasNight && stage.kind == StageKind::UnpluggedRest) {
      sum += rig.night->asItIs.warm;
      continue;
    }
    const Temperature first = stage.kind == StageKind::MashingIn ? stage.mixed : stage.first;
    const Temperature cold = std::min(first, stage.last);
    const Temperature hot = std::max(first, stage.last);
    const TemperatureDifference whole = hot - cold;
    const TemperatureDifference warm = std::min(hot, kWarmUpTo) - std::max(cold, kWarmFrom);
    const double share = whole > kelvins(1e-6) ? std::max(0.0, static_cast<double>(warm / whole))
                                               : (cold >= kWarmFrom && hot < kWarmUpTo ? 1.0 : 0.0);
    sum += share * (stage.end - stage.begin);
  }
  return sum;
}

std::optional<Temperature> hottestMash(const Answers& answers) {
  std::optional<Temperature> hottest;
  for (const RigAnswer& rig : answers.rigs) {
    for (const Stage& stage : rig.day.stages) {
      if (stage.kind != StageKind::Rest && stage.kind != StageKind::UnpluggedRest) continue;
      const Temperature most = std::max(stage.first, stage.last);
      hottest = hottest ? std::max(*hottest, most) : most;
    }
  }
  return hottest;
}

}  // namespace rigs
