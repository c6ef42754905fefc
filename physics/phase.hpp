// SPDX-License-Identifier: GPL-3.0-or-later
// Integrating one phase of the day: the only place where units are stripped for the solver. What
// the phase means, the laws say that are handed in.
#pragma once

#include <array>
#include <cstddef>

#include "physics/heat_loss.hpp"
#include "physics/units.hpp"

namespace physics {

// Temperature in K, water in kg, energies in MJ: near one another in size, so that one relative
// tolerance serves all. Accounts start each phase at zero.
inline constexpr std::size_t kTemperature = 0;
inline constexpr std::size_t kWater = 1;
inline constexpr std::size_t kElement = 2;
inline constexpr std::size_t kSteam = 3;
inline constexpr std::size_t kFirstPath = 4;
using PhaseState = std::array<double, kFirstPath + kPathCount>;

inline Temperature temperatureOf(const PhaseState& s) { return kelvin(s[kTemperature]); }
inline Mass waterOf(const PhaseState& s) { return kilograms(s[kWater]); }
inline Energy megajoules(double n) { return joules(1e6 * n); }

// How fast everything changes at an instant.
struct Rates {
  TemperatureRate warming;
  Power element;
  Power steam;  // heat above the cold start carried off by vapour, latent heat apart
  HeatFlows flows;
};

// What drives a phase and what ends it. Asked at trial states beyond the end of the phase, too,
// where the answers count for nothing but must be finite.
class PhaseLaws {
 public:
  virtual Rates ratesAt(Temperature t, Mass water) = 0;
  // Negative until the phase has what it was for; there it ends.
  virtual double event(const PhaseState& s) const = 0;
  // Negative as long as it may go on; something must stop where it is not.
  virtual double guard(const PhaseState& s) const = 0;
  // Zero where a law of the rates bends, negative before it. No step but a short one straddles it.
  virtual double bend(const PhaseState& s) const = 0;
  // Called every PhaseSpan::watchEvery and at the end, unless that is zero.
  virtual void watch(Time sinceBegin, const PhaseState& s) = 0;

 protected:
  ~PhaseLaws() = default;
};

struct PhaseSpan {
  Time longest;
  Time firstStep;    // what the solver tries first; a second at least
  Time watchEvery;   // 0: unwatched
  double tolerance;  // relative, 1e-13 to 1e-5
};

enum class PhaseEnd { Elapsed, Event, Guard };

struct PhaseResult {
  PhaseEnd ended;
  Time lasted;
  PhaseState state;
};

// Dormand-Prince with dense output over span.longest, or until event() or guard() is no longer
// negative, found on the dense output to the last bits of time; the event goes first where both
// come at once. Throws std::runtime_error if a step is not finite, which the preconditions exclude.
PhaseResult integratePhase(const PhaseState& start, const PhaseSpan& span, PhaseLaws& laws);

}  // namespace physics
