// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/followed_stretch.hpp"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>

namespace physics {
namespace {

// How near the end of a stretch a bend is no more looked for, as a share of it.
constexpr double kAtItsEnd = 1e-4;
constexpr double kSamePlace = 1e-5;  // K, or s
constexpr double kNearABend = 1e-8;  // how near it is found, as a share of the way
constexpr int kMostPasses = 12;
// More nodes, where those asked first are too few.
constexpr std::size_t kMost = 10;
// Water at a node is known when it moves no more than that share of all: of the tolerance, and no
// less than numbers can tell.
constexpr double kSettledPerTolerance = 0.03;
constexpr double kSettled = 3e-14;
constexpr double kRoughly = 1e-7;  // enough to see how a stretch must be divided
// Less water than that share of what there was is not followed in one stretch.
constexpr double kLeastShare = 0.2;
// A stretch at whose end the wort warms so many times more slowly than at its beginning leads
// towards a rest.
constexpr double kSlower = 4.0;
// What nodes have not seen may be a tenth of the tolerance, of a heating so many kelvins long: a
// stretch of less counts for less. By trial over thousands of random rigs; see docs/physics.md.
constexpr double kUnseenPerTolerance = 0.1;
constexpr double kWholeHeating = 30.0;
// More than that is not worth settling the water for, which moves it little.
constexpr double kHopeless = 1e-6;
constexpr double kTooShortForABend = 0.01;  // K
constexpr double kTooShortToDivide = 1e-3;  // K, or s

// How many nodes a stretch is likely to need, by trial over the demo's days and random ones: more
// the longer it is, and where it meets a root.
std::size_t nodesFor(const Stretch& stretch) {
  if (stretch.steady()) return 4;
  const double kelvins = std::abs(stretch.to - stretch.from);
  if (stretch.from == stretch.root || stretch.to == stretch.root) {
    return kelvins < 1.3 ? 8 : 10;
  }
  return kelvins < 2.0 ? 5 : kelvins < 12.0 ? 7 : kelvins < 25.0 ? 8 : 10;
}

}  // namespace

std::optional<double> FollowedStretch::divisionOf(const Stretch& stretch, const PhaseState& before,
                                                  double timeLeft) {
  stretch_ = stretch;
  before_ = before;
  constexpr double kHalf = 0.5;
  for (const std::size_t count : {nodesFor(stretch), kMost}) {
    place(count);
    if (!firstPass() || !settle(kRoughly)) return kHalf;
    if (std::abs(stretch.to - stretch.from) > kTooShortForABend) {
      if (const auto x = bend()) return x;
    }
    if (unseen() < kHopeless) {
      if (!settle(std::max(kSettledPerTolerance * tolerance_, kSettled))) return kHalf;
      if (closeEnough(timeLeft)) return std::nullopt;
    }
    if (count == kMost) break;
  }
  return kHalf;
}

// Where the nodes lie, by the map along which the wort warms the most steadily.
void FollowedStretch::place(std::size_t count) {
  nodes_ = &GaussNodes::of(count);
  settled_ = false;
  if (stretch_.steady()) {
    node_[0].at = laws_.losses().at(temperatureOf(before_));
    for (std::size_t i = 1; i < count; ++i) node_[i].at = node_[0].at;
    return;
  }
  const std::array<std::size_t, 3> telling{0, count - 2, count - 1};
  water_.fill(before_[kWater]);
  bool warms = true;
  for (const std::size_t i : telling) {
    placeNode(i);
    warms = warms && rate(i);
  }
  if (warms && stretch_.map == Stretch::Map::FromRoot && slowsDown()) {
    stretch_ = towardsRest();
    for (const std::size_t i : telling) placeNode(i);
  }
  for (std::size_t i = 1; i + 2 < count; ++i) placeNode(i);
}

void FollowedStretch::placeNode(std::size_t i) {
  Node& n = node_[i];
  n.perWay = stretch_.slopeAt(nodes_->place(i));
  n.at = laws_.losses().at(kelvin(stretch_.temperatureAt(nodes_->place(i))));
}

bool FollowedStretch::slowsDown() const {
  const std::size_t last = nodes_->count() - 1;
  return std::abs(node_[0].perWay / lasts_[0]) >
         kSlower * std::abs(node_[last].perWay / lasts_[last]);
}

// Where the rate would be zero, by the last two nodes. A little too far, as losses bend upwards,
// and so never on the stretch_.
Stretch FollowedStretch::towardsRest() const {
  const std::size_t last = nodes_->count() - 1;
  const double end = stretch_.temperatureAt(nodes_->place(last));
  const double before = stretch_.temperatureAt(nodes_->place(last - 1));
  const double rate = node_[last].perWay / lasts_[last];
  const double rateBefore = node_[last - 1].perWay / lasts_[last - 1];
  const double rest = end + rate * (end - before) / (rateBefore - rate);
  const bool ahead =
      std::isfinite(rest) && (rest - stretch_.to) * (stretch_.to - stretch_.from) > 0.0;
  return ahead ? Stretch::towardsRest(rest, stretch_.from, stretch_.to) : stretch_;
}

bool FollowedStretch::rate(std::size_t i) {
  if (water_[i] < kLeastShare * before_[kWater]) return false;
  Node& n = node_[i];
  n.rates = laws_.ratesAt(n.at, kilograms(water_[i]));
  const double warming = n.rates.warming / kelvins(1.0) * seconds(1.0);
  lasts_[i] = stretch_.steady() ? stretch_.to - stretch_.from : n.perWay / warming;
  vapour_[i] = inKilogramsPerSecond(n.rates.flows.vapour) * lasts_[i];
  return stretch_.steady() ? warming == 0.0 : std::isfinite(lasts_[i]) && lasts_[i] > 0.0;
}

bool FollowedStretch::firstPass() {
  for (std::size_t i = 0; i < nodes_->count(); ++i) {
    guessWater(i);
    if (!rate(i)) return false;
  }
  // Where nothing goes all is known.
  unsettled_ = nodes_->sum(vapour_);
  moved_ = 0.0;
  return settled_ = true;
}

// What is lost depends a little on how much water is left, and that on what was lost before: again
// and again until it settles, each time a hundredfold or more, as each node asks what the ones
// before it have lost by now.
bool FollowedStretch::settle(double nearly) {
  const double before = before_[kWater];
  for (int pass = 0; unsettled_ > nearly * before; ++pass) {
    if (pass == kMostPasses) return settled_ = false;
    const double gone = nodes_->sum(vapour_);
    for (std::size_t i = 0; i < nodes_->count(); ++i) {
      water_[i] = before - nodes_->upTo(i, vapour_);
      if (!rate(i)) return settled_ = false;
    }
    const double move = std::abs(nodes_->sum(vapour_) - gone);
    // Each pass takes about the same share of what was amiss.
    unsettled_ = move < moved_ ? move * (move / moved_) : move;
    moved_ = move;
  }
  lastsSeries_ = nodes_->series(lasts_);
  return true;
}

// By what the nodes before have lost, as a first guess.
void FollowedStretch::guessWater(std::size_t i) {
  const double lost = i > 0 ? vapour_[i - 1] : 0.0;
  const double steeper =
      i > 1 ? (lost - vapour_[i - 2]) / (nodes_->place(i - 1) - nodes_->place(i - 2)) : 0.0;
  const double way = i > 0 ? nodes_->place(i) - nodes_->place(i - 1) : 0.0;
  water_[i] = (i > 0 ? water_[i - 1] : before_[kWater]) - way * (lost + 0.5 * way * steeper);
  if (i == 1) water_[i] -= nodes_->place(0) * lost;
}

// The polynomials through what tells each law's bend say between which two nodes, or beyond the
// outermost, one of them changes its sign.
std::optional<double> FollowedStretch::bend() {
  for (std::size_t which = 0; which < HeatLossModel::kSeams; ++which) {
    Values seam{};
    for (std::size_t i = 0; i < nodes_->count(); ++i) seam[i] = node_[i].at.seam(which);
    if (seam[0] == kNoSeam && seam[nodes_->count() - 1] == kNoSeam) {
      continue;
    }
    double from = 0.0;
    double before = nodes_->atBegin(seam);
    for (std::size_t i = 0; i <= nodes_->count(); ++i) {
      const double to = i < nodes_->count() ? nodes_->place(i) : 1.0;
      const double here = i < nodes_->count() ? seam[i] : nodes_->atEnd(seam);
      if ((before > 0.0) != (here > 0.0)) {
        if (const auto x = bendBetween(from, to, which)) return x;
      }
      from = to;
      before = here;
    }
  }
  return std::nullopt;
}

// Where that law itself bends, if not just at either end: the polynomial, which knows nothing of
// what lies between its nodes, would have a stretch divided again and again.
std::optional<double> FollowedStretch::bendBetween(double from, double to, std::size_t which) {
  const auto at = [&](double x) { return seamAt(x, which); };
  const double before = at(from);
  const double here = at(to);
  if ((before > 0.0) == (here > 0.0)) return std::nullopt;
  std::uintmax_t most = 40;
  const double found = boost::math::tools::toms748_solve(
                           at, from, to, before, here,
                           [](double a, double b) { return std::abs(b - a) < kNearABend; }, most)
                           .first;
  const double nearest = std::max(kAtItsEnd * std::abs(stretch_.to - stretch_.from), kSamePlace);
  const double place = stretch_.placeAt(found);
  const double ends = std::min(std::abs(place - stretch_.from), std::abs(stretch_.to - place));
  return ends > nearest ? std::optional(found) : std::nullopt;
}

double FollowedStretch::seamAt(double x, std::size_t which) {
  HeatLossModel::AtTemperature at = stretch_.steady() ? node_[0].at : laws_.losses().at(wortAt(x));
  laws_.ratesAt(at, waterAt(x));
  return at.seam(which);
}

// About by what share the time that it takes is wrong.
double FollowedStretch::unseen() const {
  if (stretch_.steady()) return 0.0;
  // What the map itself contributes is a polynomial, and may hide how the laws fall.
  Values perKelvin{};
  for (std::size_t i = 0; i < nodes_->count(); ++i) perKelvin[i] = lasts_[i] / node_[i].perWay;
  return std::max(nodes_->unseen(lastsSeries_), nodes_->unseen(nodes_->series(perKelvin)));
}

bool FollowedStretch::closeEnough(double timeLeft) const {
  const double length = std::abs(stretch_.to - stretch_.from);
  if (length < kTooShortToDivide) return true;
  if (stretch_.steady()) {
    const Values vapour = nodes_->series(vapour_);
    return vapour[0] == 0.0 || nodes_->tail(vapour) < std::sqrt(tolerance_);
  }
  if (lasts() > timeLeft) return nodes_->tail(lastsSeries_) < tolerance_;
  const double share = std::min(length / kWholeHeating, 1.0);
  return share * unseen() < kUnseenPerTolerance * tolerance_;
}

double FollowedStretch::placeAfter(double time, double guess, double nearly) const {
  double x = guess;
  for (int i = 0; i < 30; ++i) {
    const double step = (time - lastsTo(x)) / nodes_->valueAt(x, lastsSeries_);
    x = std::clamp(x + step, 0.0, 1.0);
    // The next step is about the square of this one.
    if (std::abs(step) < nearly) break;
  }
  return x;
}

Temperature FollowedStretch::wortAt(double x) const {
  if (stretch_.steady()) return temperatureOf(before_);
  return kelvin(x < 1.0 ? stretch_.temperatureAt(x) : stretch_.to);
}

Mass FollowedStretch::waterAt(double x) const {
  return kilograms(before_[kWater] - nodes_->sum(nodes_->weightsUpTo(x), vapour_));
}

PhaseState FollowedStretch::stateAt(double x) const {
  const Values part = x < 1.0 ? nodes_->weightsUpTo(x) : nodes_->weights();
  PhaseState state = before_;
  for (std::size_t i = 0; i < nodes_->count(); ++i) {
    const double time = part[i] * lasts_[i];
    const Rates& rates = node_[i].rates;
    state[kWater] -= part[i] * vapour_[i];
    state[kElement] += 1e-6 * inWatts(rates.element) * time;
    state[kSteam] += 1e-6 * inWatts(rates.steam) * time;
    for (std::size_t p = 0; p < kPathCount; ++p) {
      state[kFirstPath + p] += 1e-6 * inWatts(rates.flows.lost.values[p]) * time;
    }
  }
  state[kTemperature] = inKelvin(wortAt(x));
  return state;
}

void FollowedStretch::addNodes(double x, std::vector<HeatingNodes::Node>& nodes) const {
  const Values part = x < 1.0 ? nodes_->weightsUpTo(x) : nodes_->weights();
  for (std::size_t i = 0; i < nodes_->count(); ++i) {
    nodes.push_back({.evaporated = kilograms(part[i] * vapour_[i]),
                     .lost = node_[i].rates.flows.lost.total() - laws_.losses().pumpHeat()});
  }
}

void FollowedStretch::learnCurve() {
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

CurvePoint FollowedStretch::curveAt(double x) const {
  const Values legendre = nodes_->legendreAt(x);
  CurvePoint point{};
  point.wort = wortAt(x);
  point.element = watts(nodes_->sum(legendre, elementSeries_));
  point.vapour = kilogramsPerSecond(nodes_->sum(legendre, vapourSeries_));
  for (std::size_t p = 0; p < kPathCount; ++p) {
    point.lost.values[p] = watts(nodes_->sum(legendre, lostSeries_[p]));
  }
  return point;
}

}  // namespace physics
