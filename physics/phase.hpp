// SPDX-License-Identifier: GPL-3.0-or-later
// Integrating one phase of the day: the only place where units are stripped for the solver.
#pragma once

#include <algorithm>
#include <array>
#include <boost/math/tools/toms748_solve.hpp>
#include <boost/numeric/odeint.hpp>
#include <cmath>
#include <cstdint>
#include <limits>
#include <optional>
#include <stdexcept>
#include <utility>

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

// What the right-hand side knows at an instant.
struct Rates {
  TemperatureRate warming;
  Power element;
  Power steam;  // heat above the cold start carried off by vapour, latent heat apart
  HeatFlows flows;
};

enum class PhaseEnd { Elapsed, Event, Guard };

// The next step by the fifth root of the error, of a refused step as of a good one, and no longer
// than the trend of the last two lets expect: towards boiling each step must be shorter than the
// one before, and odeint's own rule has every one of them refused first. After Gustafsson's
// predictive controller (1994), from memory; it chooses steps and judges none, so that accuracy is
// odeint's.
class FollowsTheTrend {
 public:
  using time_type = double;
  using value_type = double;
  double decrease_step(double step, double error, int) const { return changed(step, error); }
  double increase_step(double step, double error, int) {
    const double least = std::max(error, 1e-4);
    const double trend = step / step_ * std::pow(error_ / least, 0.2);
    step_ = step;
    error_ = least;
    return changed(step, least) * kCaution * std::min(1.0, trend);
  }
  bool check_step_size_limit(double) const { return true; }
  double get_max_dt() const { return 0.0; }

 private:
  // A refused step costs as much as a good one: 0.9 was best over twenty rigs and powers.
  static constexpr double kCaution = 0.9;
  static double changed(double step, double error) {
    return step * std::clamp(0.9 * std::pow(error, -0.2), 0.2, 5.0);
  }
  double step_ = 1e-9;  // the last good one, and its error
  double error_ = 1.0;
};

struct PhaseResult {
  PhaseEnd ended;
  Time lasted;
  PhaseState state;
};

// Dormand-Prince with dense output over `longest`, or until event(state) turns from negative to
// zero or above, found on the dense output to the last bits of time. guard(state) works alike and
// says that something must stop. No step but a short one straddles the place where bend(state)
// turns from negative to zero, where a law bends. The first step is `firstStep`, if it may.
// watch(time, state) is called at `watchEvery` and at the end. Throws std::runtime_error if a step
// is not finite, which the preconditions exclude.
template <class RatesAt, class Event, class Guard, class Bend, class Watch>
PhaseResult integratePhase(const PhaseState& start, Time longest, Time firstStep, double tolerance,
                           const RatesAt& ratesAt, const Event& event, const Guard& guard,
                           const Bend& bend, Time watchEvery, const Watch& watch) {
  namespace odeint = boost::numeric::odeint;
  const auto rightHandSide = [&](const PhaseState& s, PhaseState& d, double) {
    const Rates rates = ratesAt(temperatureOf(s), waterOf(s));
    d[kTemperature] = rates.warming / kelvins(1.0) * seconds(1.0);
    d[kWater] = -inKilogramsPerSecond(rates.flows.vapour);
    d[kElement] = 1e-6 * inWatts(rates.element);
    d[kSteam] = 1e-6 * inWatts(rates.steam);
    for (std::size_t i = 0; i < kPathCount; ++i) {
      d[kFirstPath + i] = 1e-6 * inWatts(rates.flows.lost.values[i]);
    }
  };

  if (guard(start) >= 0.0) return {PhaseEnd::Guard, seconds(0.0), start};
  if (event(start) >= 0.0) return {PhaseEnd::Event, seconds(0.0), start};

  using DormandPrince = odeint::runge_kutta_dopri5<PhaseState>;
  using ErrorChecker = odeint::default_error_checker<double, DormandPrince::algebra_type,
                                                     DormandPrince::operations_type>;
  using Controlled = odeint::controlled_runge_kutta<DormandPrince, ErrorChecker, FollowsTheTrend>;
  odeint::dense_output_runge_kutta<Controlled> stepper(
      Controlled(ErrorChecker(10.0 * tolerance, std::max(0.1 * tolerance, 1e-13))));
  const double end = inSeconds(longest);
  const double every = inSeconds(watchEvery);
  double nextWatch = 0.0;
  stepper.initialize(start, 0.0, std::max(1.0, inSeconds(firstStep)));
  PhaseState at = start;
  const auto watchUpTo = [&](double time) {
    while (every > 0.0 && nextWatch < time) {
      stepper.calc_state(nextWatch, at);
      watch(seconds(nextWatch), at);
      nextWatch += every;
    }
  };
  const auto finish = [&](PhaseEnd ended, double time) {
    watchUpTo(time);
    stepper.calc_state(time, at);
    if (every > 0.0) watch(seconds(time), at);
    return PhaseResult{ended, seconds(time), at};
  };
  // Where a function that was negative at `from` turns zero within the last step.
  const auto crossing = [&](const auto& function, double from, double to) {
    const auto atTime = [&](double time) {
      stepper.calc_state(time, at);
      return function(at);
    };
    if (atTime(from) >= 0.0) return from;
    if (atTime(to) < 0.0) return to;
    std::uintmax_t most = 60;
    const auto bracket = boost::math::tools::toms748_solve(
        atTime, from, to, boost::math::tools::eps_tolerance<double>(48), most);
    return bracket.second;
  };
  // How long until bend(state), negative before it, is zero, by the parabola through the last step;
  // at least a twentieth of that step, so that it is passed at last.
  const auto untilBend = [&](double from, double to) {
    const double half = 0.5 * (to - from);
    const double now = bend(stepper.current_state());
    if (now >= 0.0) return std::numeric_limits<double>::infinity();
    stepper.calc_state(from, at);
    const double first = bend(at);
    stepper.calc_state(from + half, at);
    const double middle = bend(at);
    const double bending = (now - 2.0 * middle + first) / (half * half);
    const double rate = (now - middle) / half + 0.5 * half * bending;
    const double discriminant = rate * rate - 2.0 * bending * now;
    if (!(rate > 0.0 && discriminant >= 0.0)) return std::numeric_limits<double>::infinity();
    return std::max(-2.0 * now / (rate + std::sqrt(discriminant)), 0.1 * half);
  };

  if (end <= 0.0) return {PhaseEnd::Elapsed, seconds(0.0), start};
  while (true) {
    const auto [from, to] = stepper.do_step(rightHandSide);
    for (const double x : stepper.current_state()) {
      if (!std::isfinite(x)) throw std::runtime_error("a simulation step was not finite");
    }
    const double last = std::min(to, end);
    if (last < to) {
      stepper.calc_state(last, at);
    } else {
      at = stepper.current_state();
    }
    const bool guardHit = guard(at) >= 0.0;
    const bool eventHit = event(at) >= 0.0;
    if (guardHit || eventHit) {
      const double never = std::numeric_limits<double>::infinity();
      const double guardTime = guardHit ? crossing(guard, from, last) : never;
      const double eventTime = eventHit ? crossing(event, from, last) : never;
      return eventTime <= guardTime ? finish(PhaseEnd::Event, eventTime)
                                    : finish(PhaseEnd::Guard, guardTime);
    }
    watchUpTo(last);
    if (last >= end) return finish(PhaseEnd::Elapsed, end);
    // A step that straddles the bend would be refused, and the next one, five times its length,
    // too.
    const double ahead = untilBend(from, to);
    if (stepper.current_time_step() > ahead) {
      stepper.initialize(stepper.current_state(), to, ahead);
    }
  }
}

}  // namespace physics
