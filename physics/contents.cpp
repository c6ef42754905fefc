// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/contents.hpp"

#include <algorithm>
#include <cmath>

#include "physics/water.hpp"
#include "physics/wort.hpp"

namespace physics {
namespace {

// What water's properties are known for.
constexpr Temperature kColdest = celsius(-20.0);
constexpr Temperature kHottest = celsius(110.0);

// The temperature at which `heat`, increasing with slope about `capacity`, equals `goal`.
// Newton on a nearly straight line: a few steps whatever the start. Beyond the range of water's
// properties the line goes on straight.
template <class Heat, class Capacity>
Temperature temperatureAtWhich(Energy goal, Temperature guess, const Heat& heat,
                               const Capacity& capacity) {
  Temperature t = guess;
  for (int i = 0; i < 30; ++i) {
    const Temperature known = std::clamp(t, kColdest, kHottest);
    const Temperature next = known + (goal - heat(known)) / capacity(known);
    const TemperatureDifference step = next - t;
    t = next;
    if (std::abs(inKelvins(step)) < 1e-11) break;
  }
  return t;
}

}  // namespace

Contents::Contents(const Batch& batch, const Place& place, HeatCapacity vessel)
    : vessel_(vessel),
      grainHeat_(batch.grain.specificHeat),
      displacement_(batch.displacement),
      coldWater_(place.water),
      coldGrain_(batch.grain.temperature),
      coldVessel_(place.room),
      coldWaterEnthalpy_(waterEnthalpy(place.water)),
      coldExtractEnthalpy_(extractEnthalpy(batch.grain.temperature)) {}

HeatCapacity Contents::heatCapacity(Temperature t) const {
  return heatCapacity(t, waterSpecificHeat(t));
}

HeatCapacity Contents::heatCapacity(Temperature t, SpecificHeat ofWater) const {
  return water * ofWater + extract * extractSpecificHeat(t) + grain * grainHeat_ + vessel_;
}

SpecificEnergy Contents::carried(Temperature t) const { return carried(waterEnthalpy(t)); }

StoredHeat Contents::storedHeat(Temperature t) const {
  return {.wort = water * carried(t) + extract * (extractEnthalpy(t) - coldExtractEnthalpy_),
          .grain = grain * grainHeat_ * (t - coldGrain_),
          .vessel = vessel_ * (t - coldVessel_)};
}

double Contents::strength() const {
  const Mass wort = water + extract;
  return wort > kilograms(0.0) ? static_cast<double>(extract / wort) : 0.0;
}

Volume Contents::wortVolume(Temperature t) const {
  return (water + extract) / wortDensity(strength(), t);
}

Volume Contents::volume(Temperature t) const { return wortVolume(t) + grain * displacement_; }

Energy Contents::hotSide(Temperature t) const {
  const StoredHeat stored = storedHeat(t);
  return stored.wort + stored.vessel;
}

Temperature Contents::filled() const {
  return temperatureAtWhich(
      joules(0.0), coldWater_, [&](Temperature t) { return hotSide(t); },
      [&](Temperature t) { return heatCapacity(t); });
}

Temperature Contents::holding(Energy heat, Temperature guess) const {
  return temperatureAtWhich(
      heat, guess, [&](Temperature t) { return storedHeat(t).total(); },
      [&](Temperature t) { return heatCapacity(t); });
}

Energy Contents::heatOf(const Addition& addition, Temperature t) const {
  const Mass dissolves = addition.mass * addition.extract;
  return (addition.mass - dissolves) * carried(t) +
         dissolves * (extractEnthalpy(t) - coldExtractEnthalpy_);
}

Temperature Contents::take(const Addition& addition, Temperature t) {
  const Energy goal = hotSide(t) + heatOf(addition, addition.temperature);
  const Mass dissolves = addition.mass * addition.extract;
  water += addition.mass - dissolves;
  extract += dissolves;
  return temperatureAtWhich(
      goal, t, [&](Temperature at) { return hotSide(at); },
      [&](Temperature at) { return heatCapacity(at); });
}

Temperature Contents::strikeFor(Temperature goal, const Grain& batchGrain) const {
  const Energy toGrain =
      batchGrain.mass * (batchGrain.specificHeat * (goal - coldGrain_) - batchGrain.slakingHeat);
  return temperatureAtWhich(
      hotSide(goal) + toGrain, goal, [&](Temperature t) { return hotSide(t); },
      [&](Temperature t) { return heatCapacity(t); });
}

Temperature Contents::settled(Temperature strike, const Grain& batchGrain) const {
  const HeatCapacity cold = batchGrain.mass * batchGrain.specificHeat;
  const Energy slaking = batchGrain.mass * batchGrain.slakingHeat;
  return temperatureAtWhich(
      hotSide(strike) + slaking, strike,
      [&](Temperature t) { return hotSide(t) + cold * (t - coldGrain_); },
      [&](Temperature t) { return heatCapacity(t) + cold; });
}

}  // namespace physics
