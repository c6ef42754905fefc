// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/phase.hpp"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <boost/numeric/odeint.hpp>
#include <cmath>
#include <cstdint>
#include <limits>
#include <optional>
#include <stdexcept>

namespace physics {
namespace {

namespace odeint = boost::numeric::odeint;

constexpr double kNever = std::numeric_limits<double>::infinity();

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

using DormandPrince = odeint::runge_kutta_dopri5<PhaseState>;
using ErrorChecker = odeint::default_error_checker<double, DormandPrince::algebra_type,
                                                   DormandPrince::operations_type>;
using Controlled = odeint::controlled_runge_kutta<DormandPrince, ErrorChecker, FollowsTheTrend>;
using Stepper = odeint::dense_output_runge_kutta<Controlled>;

// One run of the solver over one phase. Times are seconds since the phase began.
class Integration {
 public:
  Integration(const PhaseState& start, const PhaseSpan& span, PhaseLaws& laws)
      : laws_(laws),
        end_(inSeconds(span.longest)),
        watchEvery_(inSeconds(span.watchEvery)),
        stepper_(
            Controlled(ErrorChecker(10.0 * span.tolerance, std::max(0.1 * span.tolerance, 1e-13)))),
        at_(start) {
    stepper_.initialize(start, 0.0, std::max(1.0, inSeconds(span.firstStep)));
  }

  PhaseResult run();

 private:
  using Mark = double (PhaseLaws::*)(const PhaseState&) const;
  struct Step {
    double from, to;
  };

  Step step();
  // The state at a time within the last step.
  const PhaseState& stateAt(double time);
  // How the phase ended within the last step, cut off at `last`, if it did.
  std::optional<PhaseResult> endWithin(double from, double last);
  // Where `mark`, negative before the step, turns zero within it.
  double crossing(Mark mark, double from, double last);
  void watchUpTo(double time);
  PhaseResult finish(PhaseEnd ended, double time);
  void shortenBeforeBend(Step step);
  double untilBend(Step step);

  PhaseLaws& laws_;
  double end_, watchEvery_;
  double nextWatch_ = 0.0;
  Stepper stepper_;
  PhaseState at_;  // as asked for last
};

PhaseResult Integration::run() {
  while (true) {
    const Step done = step();
    const double last = std::min(done.to, end_);
    if (const auto result = endWithin(done.from, last)) return *result;
    if (last >= end_) return finish(PhaseEnd::Elapsed, end_);
    watchUpTo(last);
    shortenBeforeBend(done);
  }
}

Integration::Step Integration::step() {
  const auto [from, to] = stepper_.do_step([this](const PhaseState& s, PhaseState& d, double) {
    const Rates rates = laws_.ratesAt(temperatureOf(s), waterOf(s));
    d[kTemperature] = rates.warming / kelvins(1.0) * seconds(1.0);
    d[kWater] = -inKilogramsPerSecond(rates.flows.vapour);
    d[kElement] = 1e-6 * inWatts(rates.element);
    d[kSteam] = 1e-6 * inWatts(rates.steam);
    for (std::size_t i = 0; i < kPathCount; ++i) {
      d[kFirstPath + i] = 1e-6 * inWatts(rates.flows.lost.values[i]);
    }
  });
  for (const double x : stepper_.current_state()) {
    if (!std::isfinite(x)) throw std::runtime_error("a simulation step was not finite");
  }
  return {.from = from, .to = to};
}

const PhaseState& Integration::stateAt(double time) {
  stepper_.calc_state(time, at_);
  return at_;
}

std::optional<PhaseResult> Integration::endWithin(double from, double last) {
  const bool cutOff = last < stepper_.current_time();
  const PhaseState& s = cutOff ? stateAt(last) : stepper_.current_state();
  const bool guardHit = laws_.guard(s) >= 0.0;
  const bool eventHit = laws_.event(s) >= 0.0;
  if (!guardHit && !eventHit) return std::nullopt;
  const double guardTime = guardHit ? crossing(&PhaseLaws::guard, from, last) : kNever;
  const double eventTime = eventHit ? crossing(&PhaseLaws::event, from, last) : kNever;
  return eventTime <= guardTime ? finish(PhaseEnd::Event, eventTime)
                                : finish(PhaseEnd::Guard, guardTime);
}

double Integration::crossing(Mark mark, double from, double last) {
  const auto markAt = [&](double time) { return (laws_.*mark)(stateAt(time)); };
  if (markAt(from) >= 0.0) return from;
  if (markAt(last) < 0.0) return last;
  std::uintmax_t most = 60;
  const auto bracket = boost::math::tools::toms748_solve(
      markAt, from, last, boost::math::tools::eps_tolerance<double>(48), most);
  return bracket.second;
}

void Integration::watchUpTo(double time) {
  while (watchEvery_ > 0.0 && nextWatch_ < time) {
    laws_.watch(seconds(nextWatch_), stateAt(nextWatch_));
    nextWatch_ += watchEvery_;
  }
}

PhaseResult Integration::finish(PhaseEnd ended, double time) {
  watchUpTo(time);
  const PhaseState& last = stateAt(time);
  if (watchEvery_ > 0.0) laws_.watch(seconds(time), last);
  return {.ended = ended, .lasted = seconds(time), .state = last};
}

// A step that straddles the bend would be refused, and the next one, five times its length, too.
void Integration::shortenBeforeBend(Step step) {
  const double ahead = untilBend(step);
  if (stepper_.current_time_step() > ahead) {
    stepper_.initialize(stepper_.current_state(), step.to, ahead);
  }
}

// How long until bend(), negative before it, is zero, by the parabola through the last step; at
// least a twentieth of that step, so that it is passed at last.
double Integration::untilBend(Step step) {
  const double half = 0.5 * (step.to - step.from);
  const double now = laws_.bend(stepper_.current_state());
  if (now >= 0.0) return kNever;
  const double first = laws_.bend(stateAt(step.from));
  const double middle = laws_.bend(stateAt(step.from + half));
  const double bending = (now - 2.0 * middle + first) / (half * half);
  const double rate = (now - middle) / half + 0.5 * half * bending;
  const double discriminant = rate * rate - 2.0 * bending * now;
  if (!(rate > 0.0 && discriminant >= 0.0)) return kNever;
  return std::max(-2.0 * now / (rate + std::sqrt(discriminant)), 0.1 * half);
}

}  // namespace

PhaseResult integratePhase(const PhaseState& start, const PhaseSpan& span, PhaseLaws& laws) {
  const auto atOnce = [&](PhaseEnd ended) { return PhaseResult{ended, seconds(0.0), start}; };
  if (laws.guard(start) >= 0.0) return atOnce(PhaseEnd::Guard);
  if (laws.event(start) >= 0.0) return atOnce(PhaseEnd::Event);
  if (span.longest <= seconds(0.0)) return atOnce(PhaseEnd::Elapsed);
  return Integration(start, span, laws).run();
}

}  // namespace physics
