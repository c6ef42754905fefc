// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/phase_laws.hpp"

#include <algorithm>

#include "physics/water.hpp"

namespace physics {
namespace {

constexpr Time kFirstStep = minutes(5.0);  // what a heating usually allows
constexpr double kPointsPerStage = 90.0;
constexpr Mass kLeastWater = kilograms(1e-3);

Temperature followed(Temperature trial) { return std::clamp(trial, kColdestWort, kHottestWort); }

}  // namespace

DayPhase::DayPhase(const DayConditions& day, const PhaseOrder& order, const Moment& began,
                   Stage& stage)
    : day_(day),
      order_(order),
      began_(began),
      stage_(stage),
      trial_(began.contents),
      power_(order.share * day.full.delivered),
      pump_(order.losses.pumpHeat()),
      latentHeat_(latentHeat(began.wort)),
      waterBoils_(saturationTemperature(day.pressure)) {
  const Volume wort = trial_.wortVolume(began.wort);
  const Volume extract = wort - trial_.water / waterDensity(began.wort);
  besidesWater_ = extract + trial_.volume(began.wort) - wort;
}

Length DayPhase::fillAt(Temperature t, Mass water) const {
  return day_.fill(water / waterDensity(t) + besidesWater_);
}

Time DayPhase::lossless(Temperature goal) const {
  return began_.contents.heatCapacity(began_.wort) * (goal - began_.wort) / power_;
}

PhaseSpan DayPhase::span() const {
  // A heating's length is not known beforehand: its lossless length sets the spacing.
  const Time expected = order_.spacedFor > seconds(0.0) ? order_.spacedFor
                        : order_.until && driven()      ? lossless(*order_.until)
                                                        : order_.longest;
  // Where nothing but the fill changes, one step may span it all.
  Time firstStep = steady() ? order_.longest : std::min(kFirstStep, 0.5 * expected);
  if (heats() && began_.wort < waterBoils_) firstStep = std::min(firstStep, lossless(waterBoils_));
  return {.longest = order_.longest,
          .firstStep = firstStep,
          .watchEvery = day_.options.curves ? expected / kPointsPerStage : seconds(0.0),
          .tolerance = day_.options.relativeTolerance};
}

// A trial step may reach beyond the event that ends the phase, where water is no liquid or there
// is none left; what it finds there is thrown away, but must be a number.
Rates DayPhase::ratesAt(Temperature trial, Mass trialWater) {
  HeatLossModel::AtTemperature at = order_.losses.at(followed(trial));
  return ratesAt(at, std::max(trialWater, kLeastWater));
}

Rates DayPhase::ratesAt(HeatLossModel::AtTemperature& at, Mass water) {
  const Temperature t = at.wort();
  trial_.water = water;
  Rates rates{};
  rates.flows = order_.losses.flows(at, day_.fill(water / at.waterDensity() + besidesWater_));
  const HeatCapacity capacity = trial_.heatCapacity(t, at.waterSpecificHeat());
  // What the pump does not make good.
  const Power lost = rates.flows.lost.total() - pump_;
  switch (order_.control) {
    case Control::Full:
      rates.element = power_;
      rates.warming = (power_ - lost) / capacity;
      break;
    case Control::Off:
      rates.warming = -lost / capacity;
      break;
    case Control::Hold:
      // A controller cannot cool, should the room be the warmer.
      rates.element = std::max(lost, watts(0.0));
      rates.warming = (rates.element - lost) / capacity;
      break;
    case Control::Boiling: {
      // What nothing else takes leaves as steam, at a steady temperature.
      rates.element = power_;
      Power& latent = rates.flows.lost[Path::Evaporation];
      latent = power_ - (lost - latent);
      rates.flows.vapour = latent / latentHeat_;
      break;
    }
  }
  rates.steam = rates.flows.vapour * trial_.carried(at.waterEnthalpy());
  return rates;
}

double DayPhase::event(const PhaseState& s) const {
  if (!order_.until) return -1.0;
  const double above = inKelvins(temperatureOf(s) - *order_.until);
  return driven() ? above : -above;
}

double DayPhase::guard(Temperature wort, Mass waterLeft) const {
  if (!driven()) return -1.0;
  // Wort must stand above the element, and above nothing at all for an outside heater.
  const Length least = std::max(day_.rig.element.topHeight, 0.01 * day_.rig.vessel.height);
  const Mass water = std::max(waterLeft, kLeastWater);
  const double uncovered = inMetres(least - fillAt(followed(wort), water));
  const Mass extract = began_.contents.extract;
  if (extract <= kilograms(0.0)) return uncovered;
  const double strength = static_cast<double>(extract / (extract + water));
  return std::max(uncovered, strength - kThickestWort);
}

// On the way to the boil the laws of loss bend where vapour alone fills the headspace.
double DayPhase::bend(const PhaseState& s) const {
  return heats() ? inKelvins(temperatureOf(s) - waterBoils_) : 0.0;
}

void DayPhase::watch(Time sinceBegin, const PhaseState& s) {
  const Rates rates = ratesAt(temperatureOf(s), waterOf(s));
  stage_.curve.push_back({.time = began_.clock + sinceBegin,
                          .wort = temperatureOf(s),
                          .element = rates.element,
                          .lost = rates.flows.lost,
                          .vapour = rates.flows.vapour});
}

void DayPhase::keep(const std::vector<CurvePoint>& points) {
  for (CurvePoint point : points) {
    point.time += began_.clock;
    stage_.curve.push_back(point);
  }
}

}  // namespace physics
