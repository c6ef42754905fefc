// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/day_phase.hpp"

#include "physics/water.hpp"

namespace physics {
namespace {

constexpr Time kFirstStep = minutes(5.0);  // what a heating usually allows
constexpr double kPointsPerStage = 90.0;
constexpr Mass kLeastWater = kilograms(1e-3);

Temperature followed(Temperature trial) { return std::clamp(trial, kColdestWort, kHottestWort); }

// One phase as the integration sees it.
class DayPhase final : public PhaseLaws {
 public:
  DayPhase(const DayConditions& day, const PhaseOrder& order, const Moment& began, Stage& stage);

  PhaseSpan span() const;

  Rates ratesAt(Temperature trial, Mass trialWater) override;
  double event(const PhaseState& s) const override;
  double guard(const PhaseState& s) const override;
  double bend(const PhaseState& s) const override;
  void watch(Time sinceBegin, const PhaseState& s) override;

 private:
  bool driven() const { return order_.control != Control::Off; }
  bool heats() const { return order_.control == Control::Full; }
  // Held or boiling, nothing but the fill changes.
  bool steady() const { return driven() && !heats(); }
  Length fillAt(Temperature t, Mass water) const {
    return day_.fill(water / waterDensity(t) + besidesWater_);
  }
  // How long heating to `goal` would take if nothing were lost.
  Time lossless(Temperature goal) const {
    return began_.contents.heatCapacity(began_.wort) * (goal - began_.wort) / power_;
  }

  const DayConditions& day_;
  const PhaseOrder& order_;
  const Moment began_;
  Stage& stage_;
  Contents trial_;       // as began, but for the water
  Power power_;          // of a driven element
  Power pump_;           // what the pump gives
  Volume besidesWater_;  // what extract and grain take up
  SpecificEnergy latentHeat_;
  Temperature waterBoils_;
};

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
  const Temperature t = followed(trial);
  trial_.water = std::max(trialWater, kLeastWater);
  Rates rates{};
  rates.flows = order_.losses.flows(t, fillAt(t, trial_.water));
  // What the pump does not make good.
  const Power lost = rates.flows.lost.total() - pump_;
  switch (order_.control) {
    case Control::Full:
      rates.element = power_;
      rates.warming = (power_ - lost) / trial_.heatCapacity(t);
      break;
    case Control::Off:
      rates.warming = -lost / trial_.heatCapacity(t);
      break;
    case Control::Hold:
      // A controller cannot cool, should the room be the warmer.
      rates.element = std::max(lost, watts(0.0));
      rates.warming = (rates.element - lost) / trial_.heatCapacity(t);
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
  rates.steam = rates.flows.vapour * trial_.carried(t);
  return rates;
}

double DayPhase::event(const PhaseState& s) const {
  if (!order_.until) return -1.0;
  const double above = inKelvins(temperatureOf(s) - *order_.until);
  return driven() ? above : -above;
}

double DayPhase::guard(const PhaseState& s) const {
  if (!driven()) return -1.0;
  // Wort must stand above the element, and above nothing at all for an outside heater.
  const Length least = std::max(day_.rig.element.topHeight, 0.01 * day_.rig.vessel.height);
  const Mass water = std::max(waterOf(s), kLeastWater);
  const double uncovered = inMetres(least - fillAt(followed(temperatureOf(s)), water));
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

}  // namespace

void bookStored(Ledger& ledger, const StoredHeat& before, const StoredHeat& after) {
  ledger.wort = after.wort - before.wort;
  ledger.grain = after.grain - before.grain;
  ledger.vessel = after.vessel - before.vessel;
}

PhaseEnd runPhase(const DayConditions& day, const PhaseOrder& order, Moment& now, Stage& stage) {
  DayPhase phase(day, order, now, stage);
  PhaseState start{};
  start[kTemperature] = inKelvin(now.wort);
  start[kWater] = inKilograms(now.contents.water);
  const auto [ended, lasted, last] = integratePhase(start, phase.span(), phase);

  const StoredHeat before = now.contents.storedHeat(now.wort);
  stage.evaporated += now.contents.water - waterOf(last);
  now.contents.water = waterOf(last);
  now.wort = temperatureOf(last);
  now.clock += lasted;

  Ledger account{};
  account.element = megajoules(last[kElement]);
  account.cable = account.element * (day.full.inCable / day.full.delivered);
  account.pump = order.losses.pumpHeat() * lasted;
  bookStored(account, before, now.contents.storedHeat(now.wort));
  account.steam = megajoules(last[kSteam]);
  for (std::size_t i = 0; i < kPathCount; ++i) {
    account.lost.values[i] = megajoules(last[kFirstPath + i]);
  }
  stage.ledger += account;
  return ended;
}

}  // namespace physics
