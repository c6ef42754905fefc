// SPDX-License-Identifier: GPL-3.0-or-later
// The laws of one phase of the day: how fast everything changes, and what ends it.
#pragma once

#include <vector>

#include "physics/contents.hpp"
#include "physics/heat_loss.hpp"
#include "physics/phase.hpp"
#include "physics/phase_order.hpp"
#include "physics/units.hpp"

namespace physics {

class DayPhase final : public PhaseLaws {
 public:
  // All outlive it.
  DayPhase(const DayConditions& day, const PhaseOrder& order, const Moment& began, Stage& stage);

  PhaseSpan span() const;
  const PhaseOrder& order() const { return order_; }
  HeatLossModel& losses() const { return order_.losses; }
  bool driven() const { return order_.control != Control::Off; }
  bool heats() const { return order_.control == Control::Full; }
  // Held or boiling, nothing but the fill changes.
  bool steady() const { return driven() && !heats(); }

  Rates ratesAt(Temperature trial, Mass trialWater) override;
  // The same at a temperature whose losses are known.
  Rates ratesAt(HeatLossModel::AtTemperature& at, Mass water);
  double event(const PhaseState& s) const override;
  double guard(const PhaseState& s) const override { return guard(temperatureOf(s), waterOf(s)); }
  double guard(Temperature wort, Mass water) const;
  double bend(const PhaseState& s) const override;
  void watch(Time sinceBegin, const PhaseState& s) override;
  // Points that were found otherwise, their times since the phase began.
  void keep(const std::vector<CurvePoint>& points);

  Temperature waterBoils() const { return waterBoils_; }

 private:
  Length fillAt(Temperature t, Mass water) const;
  // How long heating to `goal` would take if nothing were lost.
  Time lossless(Temperature goal) const;

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

}  // namespace physics
