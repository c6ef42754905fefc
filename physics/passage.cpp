// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/passage.hpp"

#include <algorithm>
#include <array>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>
#include <vector>

#include "physics/convection.hpp"
#include "physics/gauss_nodes.hpp"
#include "physics/stretch.hpp"

namespace physics {
namespace {

using Values = GaussNodes::Values;

// As near as two ends of a stretch may come, K or s.
constexpr double kSamePlace = 1e-7;
// How near the end of a stretch a bend is no more looked for, as a share of it.
constexpr double kAtItsEnd = 1e-4;
// More divisions than that: the wort comes to rest or turns round.
constexpr int kMostDivisions = 40;
constexpr int kMostPasses = 12;
// Nodes of a stretch of some kelvins, of a long one, and of one at a steady temperature.
constexpr std::size_t kShort = 6;
constexpr std::size_t kLong = 8;
constexpr std::size_t kMost = 10;  // of either, where those are too few
constexpr std::size_t kSteady = 4;
constexpr double kShortStretch = 12.0;  // K
// Water at a node is known when it moves no more than that share of all; and by how much of a move
// the next may be foreseen.
constexpr double kSettled = 3e-11;
constexpr double kMostShare = 0.5;
// Less water than that share of what there was is not followed in one stretch.
constexpr double kLeastShare = 0.2;
// A stretch at whose end the wort warms so many times more slowly than at its beginning leads
// towards a rest.
constexpr double kSlower = 4.0;
// What nodes have not seen may be a tenth of the tolerance, of a heating so many kelvins long: a
// stretch of less counts for less. By trial over thousands of random rigs; see docs/physics.md.
constexpr double kUnseenPerTolerance = 0.1;
constexpr double kWholeHeating = 30.0;
constexpr double kTooShortForABend = 0.01;  // K
constexpr double kTooShortToDivide = 1e-3;  // K, or s
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

class Passage {
 public:
  Passage(const PhaseState& start, DayPhase& laws)
      : laws_(laws),
        span_(laws.span()),
        longest_(inSeconds(span_.longest)),
        watchEvery_(inSeconds(span_.watchEvery)),
        room_(inKelvin(laws.losses().room())),
        waterBoils_(inKelvin(laws.waterBoils())),
        state_(start) {}

  std::optional<PhaseResult> run();

 private:
  // How the wort stands at one node of a stretch.
  struct Node {
    HeatLossModel::AtTemperature at;
    Rates rates;
    double perWay;  // K: how temperature goes with the way
  };
  std::optional<PhaseResult> atOnce() const;
  std::optional<double> nextStop();
  double goalOfCooling() const;
  double firstRootBetween(double here, double goal) const;
  Stretch stretchTo(double to) const;
  bool slowsDown() const;
  Stretch towardsRest(const Stretch& stretch) const;

  bool follow(Stretch& stretch, std::size_t count);
  void place(const Stretch& stretch, std::size_t node);
  bool settleWater(const Stretch& stretch);
  void guessWater(std::size_t node);
  bool rate(const Stretch& stretch, std::size_t node);
  // Where the stretch must be divided to be followed closely enough; nothing if it was.
  std::optional<double> divisionOf(Stretch& stretch);
  std::optional<double> bendOf(const Stretch& stretch) const;
  bool closeEnough(const Stretch& stretch) const;

  // Books it as far as the phase goes, and tells how it ended if it did.
  std::optional<PhaseEnd> accept(const Stretch& stretch);
  double whereAfter(double time, double guess, double nearly) const;
  std::optional<double> whereGuarded(const Stretch& stretch) const;
  void book(const Stretch& stretch, double x);
  void watchWithin(const Stretch& stretch, double time);
  void learnCurve();
  void note(const Stretch& stretch, double x, double time);

  DayPhase& laws_;
  const PhaseSpan span_;
  const double longest_, watchEvery_;  // s
  const double room_, waterBoils_;     // K
  PhaseState state_;
  double seconds_ = 0.0;
  double nextWatch_ = 0.0;
  std::vector<double> dividedAt_;  // the nearest last
  std::vector<CurvePoint> curve_;

  // The stretch that was followed last.
  const GaussNodes* nodes_ = nullptr;
  std::array<Node, GaussNodes::kMost> node_;
  Values water_{};        // kg
  Values lasts_{};        // s per way
  Values vapour_{};       // kg per way
  Values lastsSeries_{};  // Legendre's
  Values elementSeries_{}, vapourSeries_{};
  std::array<Values, kPathCount> lostSeries_{};
  bool settled_ = false;  // else none of these say anything
};

std::optional<PhaseResult> Passage::run() {
  if (auto result = atOnce()) return result;
  for (int divisions = 0; divisions < kMostDivisions;) {
    const auto to = nextStop();
    if (!to) return std::nullopt;
    Stretch stretch = stretchTo(*to);
    const auto x = divisionOf(stretch);
    // A heating does not get there: it would come to rest, or turn round.
    if (x && laws_.heats() && !settled_) return std::nullopt;
    if (x) {
      ++divisions;
      dividedAt_.push_back(stretch.placeAt(*x));
    } else if (const auto ended = accept(stretch)) {
      laws_.keep(curve_);
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

bool Passage::slowsDown() const {
  const std::size_t last = nodes_->count() - 1;
  return std::abs(node_[0].perWay / lasts_[0]) >
         kSlower * std::abs(node_[last].perWay / lasts_[last]);
}

// Where the rate would be zero, by the last two nodes. A little too far, as losses bend upwards,
// and so never on the stretch.
Stretch Passage::towardsRest(const Stretch& stretch) const {
  const std::size_t last = nodes_->count() - 1;
  const double end = stretch.temperatureAt(nodes_->place(last));
  const double before = stretch.temperatureAt(nodes_->place(last - 1));
  const double rate = node_[last].perWay / lasts_[last];
  const double rateBefore = node_[last - 1].perWay / lasts_[last - 1];
  const double rest = end + rate * (end - before) / (rateBefore - rate);
  const bool ahead = std::isfinite(rest) && (rest - stretch.to) * (stretch.to - stretch.from) > 0.0;
  return ahead ? Stretch::towardsRest(rest, stretch.from, stretch.to) : stretch;
}

bool Passage::rate(const Stretch& stretch, std::size_t i) {
  Node& n = node_[i];
  n.rates = laws_.ratesAt(n.at, kilograms(water_[i]));
  const double warming = n.rates.warming / kelvins(1.0) * seconds(1.0);
  lasts_[i] = stretch.steady() ? stretch.to - stretch.from : n.perWay / warming;
  vapour_[i] = inKilogramsPerSecond(n.rates.flows.vapour) * lasts_[i];
  return stretch.steady() ? warming == 0.0 : std::isfinite(lasts_[i]) && lasts_[i] > 0.0;
}

// By what the nodes before have lost, as a first guess.
void Passage::guessWater(std::size_t i) {
  const double lost = i > 0 ? vapour_[i - 1] : 0.0;
  const double steeper =
      i > 1 ? (lost - vapour_[i - 2]) / (nodes_->place(i - 1) - nodes_->place(i - 2)) : 0.0;
  const double way = i > 0 ? nodes_->place(i) - nodes_->place(i - 1) : 0.0;
  water_[i] = (i > 0 ? water_[i - 1] : state_[kWater]) - way * (lost + 0.5 * way * steeper);
  if (i == 1) water_[i] -= nodes_->place(0) * lost;
}

// What is lost depends a little on how much water is left, and that on what was lost before: again
// and again until it settles, each time a hundredfold or more.
bool Passage::settleWater(const Stretch& stretch) {
  const double before = state_[kWater];
  Values lostBefore{};
  double was = 0.0;
  double moved = 0.0;
  for (int pass = 0; pass < kMostPasses; ++pass) {
    for (std::size_t i = 0; i < nodes_->count(); ++i) {
      if (pass == 0) guessWater(i);
      if (water_[i] < kLeastShare * before || !rate(stretch, i)) return false;
    }
    const double gone = nodes_->sum(vapour_);
    if (gone == 0.0 || (pass > 0 && std::abs(gone - was) <= kSettled * before)) return true;
    // Each pass takes about the same share of what was amiss: the rest of them at once.
    const double move = gone - was;
    const double share = pass > 1 ? std::clamp(move / moved, -kMostShare, kMostShare) : 0.0;
    const double further = share / (1.0 - share);
    Values lost = vapour_;
    for (std::size_t i = 0; i < nodes_->count(); ++i) {
      lost[i] += further * (vapour_[i] - lostBefore[i]);
    }
    lostBefore = vapour_;
    moved = move;
    was = gone;
    water_ = nodes_->upToEach(lost);
    for (std::size_t i = 0; i < nodes_->count(); ++i) water_[i] = before - water_[i];
  }
  return false;
}

void Passage::place(const Stretch& stretch, std::size_t i) {
  Node& n = node_[i];
  n.perWay = stretch.slopeAt(nodes_->place(i));
  n.at = laws_.losses().at(kelvin(stretch.temperatureAt(nodes_->place(i))));
}

bool Passage::follow(Stretch& stretch, std::size_t count) {
  nodes_ = &GaussNodes::of(count);
  if (stretch.steady()) {
    node_[0].at = laws_.losses().at(temperatureOf(state_));
    for (std::size_t i = 1; i < count; ++i) node_[i].at = node_[0].at;
  } else {
    const std::array<std::size_t, 3> telling{0, count - 2, count - 1};
    water_.fill(state_[kWater]);
    bool warms = true;
    for (const std::size_t i : telling) {
      place(stretch, i);
      warms = warms && rate(stretch, i);
    }
    if (warms && stretch.map == Stretch::Map::FromRoot && slowsDown()) {
      stretch = towardsRest(stretch);
      for (const std::size_t i : telling) place(stretch, i);
    }
    for (std::size_t i = 1; i + 2 < count; ++i) place(stretch, i);
  }
  settled_ = settleWater(stretch);
  if (!settled_) return false;
  lastsSeries_ = nodes_->series(lasts_);
  return true;
}

std::optional<double> Passage::divisionOf(Stretch& stretch) {
  constexpr double kHalf = 0.5;
  const bool isShort = std::abs(stretch.to - stretch.from) < kShortStretch;
  const bool meetsRoot = stretch.from == stretch.root || stretch.to == stretch.root;
  const std::size_t count = stretch.steady() ? kSteady
                            : meetsRoot      ? kMost
                            : isShort        ? kShort
                                             : kLong;
  if (!follow(stretch, count)) return kHalf;
  if (std::abs(stretch.to - stretch.from) > kTooShortForABend) {
    if (const auto x = bendOf(stretch)) return x;
  }
  if (closeEnough(stretch)) return std::nullopt;
  if (count < kMost && follow(stretch, kMost) && closeEnough(stretch)) return std::nullopt;
  return kHalf;
}

// The polynomials through what tells each law's bend, where one of them changes its sign: between
// two nodes, or beyond the outermost.
std::optional<double> Passage::bendOf(const Stretch& stretch) const {
  const double nearest = kAtItsEnd * std::abs(stretch.to - stretch.from);

  for (std::size_t which = 0; which < HeatLossModel::kSeams; ++which) {
    Values seam{};
    for (std::size_t i = 0; i < nodes_->count(); ++i) seam[i] = node_[i].at.seam(which);
    if (seam[0] == HeatLossModel::kNoSeam && seam[nodes_->count() - 1] == HeatLossModel::kNoSeam) {
      continue;
    }
    const Values series = nodes_->series(seam);
    const auto at = [&](double x) { return nodes_->valueAt(x, series); };
    double from = 0.0;
    double before = at(from);
    for (std::size_t i = 0; i <= nodes_->count(); ++i) {
      const double to = i < nodes_->count() ? nodes_->place(i) : 1.0;
      const double here = i < nodes_->count() ? seam[i] : at(to);
      if ((before > 0.0) != (here > 0.0)) {
        std::uintmax_t most = 40;
        const double found =
            boost::math::tools::toms748_solve(at, from, to, before, here,
                                              boost::math::tools::eps_tolerance<double>(40), most)
                .first;
        const double place = stretch.placeAt(found);
        if (std::min(std::abs(place - stretch.from), std::abs(stretch.to - place)) > nearest) {
          return found;
        }
      }
      from = to;
      before = here;
    }
  }
  return std::nullopt;
}

bool Passage::closeEnough(const Stretch& stretch) const {
  if (std::abs(stretch.to - stretch.from) < kTooShortToDivide) return true;
  if (stretch.steady()) {
    const Values vapour = nodes_->series(vapour_);
    return vapour[0] == 0.0 || nodes_->tail(vapour) < std::sqrt(span_.tolerance);
  }
  if (seconds_ + lastsSeries_[0] > longest_) return nodes_->tail(lastsSeries_) < span_.tolerance;
  const double share = std::min(std::abs(stretch.to - stretch.from) / kWholeHeating, 1.0);
  // What the map itself contributes is a polynomial, and may hide how the laws fall.
  Values perKelvin{};
  for (std::size_t i = 0; i < nodes_->count(); ++i) perKelvin[i] = lasts_[i] / node_[i].perWay;
  const double unseen =
      std::max(nodes_->unseen(lastsSeries_), nodes_->unseen(nodes_->series(perKelvin)));
  return share * unseen < kUnseenPerTolerance * span_.tolerance;
}

std::optional<PhaseEnd> Passage::accept(const Stretch& stretch) {
  double x = 1.0;
  std::optional<PhaseEnd> ended;
  const double whole = nodes_->sum(lasts_);
  if (stretch.steady() ? stretch.to >= longest_ : seconds_ + whole > longest_) {
    ended = PhaseEnd::Elapsed;
    if (!stretch.steady()) x = whereAfter(longest_ - seconds_, 0.5, 1e-8);
  }
  if (const auto guarded = whereGuarded(stretch); guarded && *guarded < x) {
    ended = PhaseEnd::Guard;
    x = *guarded;
  }
  const double after = ended == PhaseEnd::Elapsed ? longest_
                       : x < 1.0                  ? seconds_ + nodes_->integralTo(x, lastsSeries_)
                                                  : seconds_ + whole;
  watchWithin(stretch, after);
  book(stretch, x);
  const auto& until = laws_.order().until;
  if (!ended && !stretch.steady() && until && stretch.to == inKelvin(*until))
    ended = PhaseEnd::Event;
  if (ended && watchEvery_ > 0.0) note(stretch, x, after);
  seconds_ = after;
  return ended;
}

// The place on the way by when that many seconds have gone.
double Passage::whereAfter(double time, double guess, double nearly) const {
  double x = guess;
  for (int i = 0; i < 30; ++i) {
    const double step =
        (time - nodes_->integralTo(x, lastsSeries_)) / nodes_->valueAt(x, lastsSeries_);
    x = std::clamp(x + step, 0.0, 1.0);
    // The next step is about the square of this one.
    if (std::abs(step) < nearly) break;
  }
  return x;
}

std::optional<double> Passage::whereGuarded(const Stretch& stretch) const {
  if (!laws_.driven()) return std::nullopt;
  const auto guardAt = [&](double x) {
    const double left = state_[kWater] - nodes_->sum(nodes_->weightsUpTo(x), vapour_);
    const double wort = stretch.steady() ? state_[kTemperature] : stretch.temperatureAt(x);
    return laws_.guard(kelvin(wort), kilograms(left));
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

void Passage::book(const Stretch& stretch, double x) {
  const Values part = x < 1.0 ? nodes_->weightsUpTo(x) : nodes_->weights();
  for (std::size_t i = 0; i < nodes_->count(); ++i) {
    const double time = part[i] * lasts_[i];
    const Rates& rates = node_[i].rates;
    state_[kWater] -= part[i] * vapour_[i];
    state_[kElement] += 1e-6 * inWatts(rates.element) * time;
    state_[kSteam] += 1e-6 * inWatts(rates.steam) * time;
    for (std::size_t p = 0; p < kPathCount; ++p) {
      state_[kFirstPath + p] += 1e-6 * inWatts(rates.flows.lost.values[p]) * time;
    }
  }
  if (!stretch.steady()) state_[kTemperature] = x < 1.0 ? stretch.temperatureAt(x) : stretch.to;
}

// A curve's points up to a time, in step with those of all the phase.
void Passage::watchWithin(const Stretch& stretch, double time) {
  if (watchEvery_ <= 0.0) return;
  learnCurve();
  double x = 0.0;
  while (nextWatch_ < time) {
    // The first part of the way from a root takes no time.
    const double since = nextWatch_ - seconds_;
    x = whereAfter(since, std::max({x, since / lastsSeries_[0], kAtItsEnd}), 1e-6);
    note(stretch, x, nextWatch_);
    nextWatch_ += watchEvery_;
  }
}

void Passage::learnCurve() {
  Values values{};
  const auto series = [&](const auto& at) {
    for (std::size_t i = 0; i < nodes_->count(); ++i) values[i] = at(node_[i].rates);
    return nodes_->series(values);
  };
  elementSeries_ = series([](const Rates& r) { return inWatts(r.element); });
  vapourSeries_ = series([](const Rates& r) { return inKilogramsPerSecond(r.flows.vapour); });
  for (std::size_t p = 0; p < kPathCount; ++p) {
    lostSeries_[p] = series([p](const Rates& r) { return inWatts(r.flows.lost.values[p]); });
  }
}

void Passage::note(const Stretch& stretch, double x, double time) {
  const Values legendre = nodes_->legendreAt(x);
  CurvePoint point{};
  point.time = seconds(time);
  point.wort = stretch.steady() ? temperatureOf(state_) : kelvin(stretch.temperatureAt(x));
  point.element = watts(nodes_->sum(legendre, elementSeries_));
  point.vapour = kilogramsPerSecond(nodes_->sum(legendre, vapourSeries_));
  for (std::size_t p = 0; p < kPathCount; ++p) {
    point.lost.values[p] = watts(nodes_->sum(legendre, lostSeries_[p]));
  }
  curve_.push_back(point);
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
