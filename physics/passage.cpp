// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/passage.hpp"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>
#include <vector>

#include "physics/convection.hpp"
#include "physics/followed_stretch.hpp"
#include "physics/stretch.hpp"

namespace physics {
namespace {

// As near as two ends of a stretch may come, K or s.
constexpr double kSamePlace = 1e-7;
// More divisions than that: the wort comes to rest or turns round.
constexpr int kMostDivisions = 40;
// So near to boiling, a headspace has begun to fill with vapour; K.
constexpr double kNearBoiling = 10.0;
// How long the stretch beside a root or a bend is, K; by trial.
constexpr double kBesideRoom = 3.0;
constexpr double kBesideBoiling = 1.5;
constexpr double kBesideBend = 0.6;
// How far one stretch may cool on the way to the coldest that could be, in e-folds.
constexpr double kMostFolds = 1.2;
// How far below the room evaporation may cool open wort, and more; K.
constexpr double kBelowRoom = 8.0;
// The first part of the way from a root takes no time.
constexpr double kFromRoot = 1e-4;

class Passage {
 public:
  Passage(const PhaseState& start, DayPhase& laws)
      : laws_(laws),
        span_(laws.span()),
        longest_(inSeconds(span_.longest)),
        watchEvery_(inSeconds(span_.watchEvery)),
        room_(inKelvin(laws.losses().room())),
        waterBoils_(inKelvin(laws.waterBoils())),
        state_(start),
        followed_(laws, span_.tolerance) {}

  std::optional<PhaseResult> run();

 private:
  std::optional<PhaseResult> atOnce() const;
  std::optional<double> nextStop();
  double goalOfCooling() const;
  double firstRootBetween(double here, double goal) const;
  Stretch stretchTo(double to) const;

  // Books what was followed as far as the phase goes, and tells how it ended if it did.
  std::optional<PhaseEnd> accept(const Stretch& stretch);
  std::optional<double> whereGuarded() const;
  void watchWithin(double time);
  void note(double x, double time);

  DayPhase& laws_;
  const PhaseSpan span_;
  const double longest_, watchEvery_;  // s
  const double room_, waterBoils_;     // K
  PhaseState state_;
  double seconds_ = 0.0;
  double nextWatch_ = 0.0;
  std::vector<double> dividedAt_;  // the nearest last
  std::vector<CurvePoint> curve_;
  std::vector<HeatingNodes::Node> nodes_;
  FollowedStretch followed_;
};

std::optional<PhaseResult> Passage::run() {
  if (auto result = atOnce()) return result;
  for (int divisions = 0; divisions < kMostDivisions;) {
    const auto to = nextStop();
    if (!to) return std::nullopt;
    const Stretch stretch = stretchTo(*to);
    const auto x = followed_.divisionOf(stretch, state_, longest_ - seconds_);
    // A heating does not get there: it would come to rest, or turn round.
    if (x && laws_.heats() && !followed_.settled()) return std::nullopt;
    if (x) {
      ++divisions;
      dividedAt_.push_back(followed_.stretch().placeAt(*x));
    } else if (const auto ended = accept(stretch)) {
      laws_.keep(curve_);
      if (laws_.order().nodes) laws_.order().nodes->take(std::move(nodes_));
      return PhaseResult{.ended = *ended, .lasted = seconds(seconds_), .state = state_};
    }
  }
  return std::nullopt;
}

std::optional<PhaseResult> Passage::atOnce() const {
  const auto end = [&](PhaseEnd ended) { return PhaseResult{ended, seconds(0.0), state_}; };
  if (laws_.guard(state_) >= 0.0) return end(PhaseEnd::Guard);
  if (laws_.event(state_) >= 0.0) return end(PhaseEnd::Event);
  if (longest_ <= 0.0) return end(PhaseEnd::Elapsed);
  return std::nullopt;
}

// Where the next stretch ends; nothing where no temperature lies ahead.
std::optional<double> Passage::nextStop() {
  const double here = laws_.steady() ? seconds_ : state_[kTemperature];
  while (!dividedAt_.empty() && std::abs(dividedAt_.back() - here) <= kSamePlace) {
    dividedAt_.pop_back();
  }
  if (!dividedAt_.empty()) return dividedAt_.back();
  if (laws_.steady()) return longest_;
  const auto& until = laws_.order().until;
  if (laws_.heats() && !until) return std::nullopt;
  double goal = laws_.heats() ? inKelvin(*until) : goalOfCooling();
  if (!laws_.heats() && until && goal < here) goal = std::max(goal, inKelvin(*until));
  if (std::abs(goal - here) <= kSamePlace) return std::nullopt;
  return firstRootBetween(here, goal);
}

// As cold as the wort could be when the time is over, for it cools more slowly the nearer it comes
// to the coldest of all.
double Passage::goalOfCooling() const {
  const double here = state_[kTemperature];
  const Rates rates = laws_.ratesAt(temperatureOf(state_), waterOf(state_));
  const double warming = rates.warming / kelvins(1.0) * seconds(1.0);
  const bool open = laws_.losses().openFraction() > 0.0;
  const double coldest = warming < 0.0 && open ? room_ - kBelowRoom : room_;
  const double folds = warming * (longest_ - seconds_) / (coldest - here);
  if (!(folds > 0.0)) return here;
  return coldest + (here - coldest) * std::exp(-std::min(1.001 * folds, kMostFolds));
}

// Where the laws have a root or a known bend, there a stretch ends, and a little beside a root: the
// powers that meet there are not quite those that make it smooth.
double Passage::firstRootBetween(double here, double goal) const {
  const double low = std::min(here, goal) + kSamePlace;
  const double high = std::max(here, goal) - kSamePlace;
  double first = goal;
  const auto stopAt = [&](double stop) {
    if (low < stop && stop < high && std::abs(stop - here) < std::abs(first - here)) first = stop;
  };
  for (const double stop : {room_, room_ + kBesideRoom, waterBoils_, inKelvin(kColdestWaterFilm)}) {
    stopAt(stop);
  }
  if (laws_.losses().openFraction() > 0.0) {
    // Just above the dew point the wall takes all that evaporates, and soon hardly any of it.
    stopAt(laws_.losses().evaporationBends().dew);
    stopAt(laws_.losses().evaporationBends().dew + 0.5 * kBesideBend);
    stopAt(laws_.losses().evaporationBends().dew + 2.0 * kBesideBend);
    // There the natural form has hardly begun, by a cube root.
    stopAt(laws_.losses().evaporationBends().overtaken);
    stopAt(laws_.losses().evaporationBends().overtaken + kBesideBend);
  }
  if (laws_.losses().openFraction() < 1.0) {
    if (high > waterBoils_ - kNearBoiling) stopAt(0.5 * (room_ + waterBoils_));
    stopAt(waterBoils_ - kBesideBoiling);
  }
  return first;
}

Stretch Passage::stretchTo(double to) const {
  if (laws_.steady()) return Stretch::steadily(seconds_, to);
  const double from = state_[kTemperature];
  const bool lidded = laws_.losses().openFraction() < 1.0;
  const bool upperHalf = std::min(from, to) >= 0.5 * (room_ + waterBoils_) - kSamePlace;
  const bool aboveBoiling = from + to > 2.0 * waterBoils_;
  return Stretch::fromRoot((lidded && upperHalf) || aboveBoiling ? waterBoils_ : room_, from, to);
}

std::optional<PhaseEnd> Passage::accept(const Stretch& stretch) {
  double x = 1.0;
  std::optional<PhaseEnd> ended;
  const double whole = followed_.lasts();
  if (stretch.steady() ? stretch.to >= longest_ : seconds_ + whole > longest_) {
    ended = PhaseEnd::Elapsed;
    if (!stretch.steady()) x = followed_.placeAfter(longest_ - seconds_, 0.5, 1e-8);
  }
  if (const auto guarded = whereGuarded(); guarded && *guarded < x) {
    ended = PhaseEnd::Guard;
    x = *guarded;
  }
  const double after = ended == PhaseEnd::Elapsed ? longest_
                       : x < 1.0                  ? seconds_ + followed_.lastsTo(x)
                                                  : seconds_ + whole;
  const auto& until = laws_.order().until;
  if (!ended && !stretch.steady() && until && stretch.to == inKelvin(*until))
    ended = PhaseEnd::Event;
  if (watchEvery_ > 0.0) {
    followed_.learnCurve();
    watchWithin(after);
    if (ended) note(x, after);
  }
  if (laws_.order().nodes) followed_.addNodes(x, nodes_);
  state_ = followed_.stateAt(x);
  seconds_ = after;
  return ended;
}

std::optional<double> Passage::whereGuarded() const {
  if (!laws_.driven()) return std::nullopt;
  const auto guardAt = [&](double x) {
    return laws_.guard(followed_.wortAt(x), followed_.waterAt(x));
  };
  const double last = guardAt(1.0);
  if (last < 0.0) return std::nullopt;
  const double first = guardAt(0.0);
  if (first >= 0.0) return 0.0;
  std::uintmax_t most = 60;
  return boost::math::tools::toms748_solve(guardAt, 0.0, 1.0, first, last,
                                           boost::math::tools::eps_tolerance<double>(48), most)
      .second;
}

// A curve's points up to a time, in step with those of all the phase.
void Passage::watchWithin(double time) {
  const double whole = followed_.lasts();
  double x = 0.0;
  while (nextWatch_ < time) {
    const double since = nextWatch_ - seconds_;
    x = followed_.placeAfter(since, std::max({x, since / whole, kFromRoot}), 1e-6);
    note(x, nextWatch_);
    nextWatch_ += watchEvery_;
  }
}

void Passage::note(double x, double time) {
  curve_.push_back(followed_.curveAt(x));
  curve_.back().time = seconds(time);
}

}  // namespace

std::optional<PhaseResult> passOverTemperature(const PhaseState& start, DayPhase& laws) {
  return Passage(start, laws).run();
}

PhaseResult passPhase(const PhaseState& start, DayPhase& laws) {
  if (const auto passed = passOverTemperature(start, laws)) return *passed;
  // What steps leave open would show beside the rest of the day.
  PhaseSpan span = laws.span();
  span.tolerance = std::max(0.05 * span.tolerance, 1e-13);
  return integratePhase(start, span, laws);
}

}  // namespace physics
