// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/fitting/posterior.hpp"

#include <algorithm>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cassert>
#include <cmath>
#include <limits>
#include <numeric>
#include <utility>

namespace rigs::fitting {
namespace {

// Not by way of long double, which not every processor has.
using InDouble = boost::math::policies::policy<boost::math::policies::promote_double<false>>;

constexpr double kDegrees = 5.0;
// Another story counts where it costs less than this much more and lies this far away.
constexpr double kAsLikely = 3.0;
constexpr double kApart = 2.0;
constexpr int kMostReweightings = 20;
constexpr double kWeightsSettled = 0.01;
constexpr std::size_t kSuspects = 3;
constexpr double kSuspicious = 1.5;  // below it nobody would wonder

double costOfBeliefs(const Evidence& evidence, const Numbers& at) {
  double cost = 0.0;
  for (std::size_t k = 0; k < at.size(); ++k) {
    const Belief& belief = evidence.before[k];
    const double z = (at[k] - belief.mean) / belief.spread;
    cost += 0.5 * z * z + kHalfLnTwoPi + std::log(belief.spread);
  }
  return cost;
}

double smoothCost(const Evidence& evidence, const Numbers& at, const Numbers& said) {
  double cost = costOfBeliefs(evidence, at);
  for (std::size_t i = 0; i < said.size(); ++i)
    cost -= lnSmoothLikelihood(evidence.seen[i], said[i]);
  return cost;
}

Numbers middles(const Evidence& evidence) {
  Numbers at;
  for (const Belief& belief : evidence.before) at.push_back(belief.mean);
  return at;
}

// Readings and beliefs as residuals of spread 1; a reading that is good with probability p counts
// √p of its own and √(1-p) of a wrong one's.
Model residualsOf(const Evidence& evidence, const Model& model, const std::vector<double>& good) {
  return [&evidence, &model, &good](const std::vector<Numbers>& places) {
    std::vector<Numbers> all = model(places);
    for (std::size_t p = 0; p < places.size(); ++p) {
      Numbers& out = all[p];
      for (std::size_t i = 0; i < evidence.seen.size(); ++i) {
        const Observation& seen = evidence.seen[i];
        const double spread = spreadOf(seen);
        double share = good[i] / (spread * spread);
        if (seen.wide > 0.0) share += (1.0 - good[i]) / (seen.wide * seen.wide);
        out[i] = (seen.value - out[i]) * std::sqrt(share);
      }
      for (std::size_t k = 0; k < evidence.before.size(); ++k)
        out.push_back((places[p][k] - evidence.before[k].mean) / evidence.before[k].spread);
    }
    return all;
  };
}

// From a place, and from what is thought of each reading to begin with, to a story.
Story storyFrom(const Evidence& evidence, const Model& model, const Numbers& start,
                std::vector<double> good) {
  FitOptions options = stepsFor(evidence);
  options.covariance = false;
  Story story{.at = start, .covariance = {}};
  const bool slips = std::any_of(evidence.seen.begin(), evidence.seen.end(),
                                 [](const Observation& seen) { return seen.wide > 0.0; });
  for (int turn = 0; turn < kMostReweightings; ++turn) {
    const Fit fit = leastSquaresFit(residualsOf(evidence, model, good), story.at, options);
    story.at = fit.at;
    story.rounds += fit.rounds;
    const Numbers said = model({story.at}).front();
    story.cost = smoothCost(evidence, story.at, said);
    double moved = 0.0;
    for (std::size_t i = 0; slips && i < said.size(); ++i) {
      const double now = probablyGood(evidence.seen[i], said[i]);
      moved = std::max(moved, std::abs(now - good[i]));
      good[i] = now;
    }
    if (moved < kWeightsSettled) break;
  }
  options.covariance = true;
  const Fit last = leastSquaresFit(residualsOf(evidence, model, good), story.at, options);
  story.at = last.at;
  story.covariance = last.covariance;
  story.rounds += last.rounds;
  story.cost = smoothCost(evidence, story.at, model({story.at}).front());
  story.good = std::move(good);
  return story;
}

// All of n, with one of them last.
std::vector<std::size_t> lastOf(std::size_t n, std::size_t last) {
  std::vector<std::size_t> order;
  for (std::size_t k = 0; k < n; ++k)
    if (k != last) order.push_back(k);
  order.push_back(last);
  return order;
}

Matrix ordered(const Matrix& covariance, const std::vector<std::size_t>& order) {
  Matrix all(order.size(), order.size());
  for (std::size_t i = 0; i < order.size(); ++i)
    for (std::size_t j = 0; j < order.size(); ++j) all(i, j) = covariance(order[i], order[j]);
  return all;
}

// A standard deviation of belief aside, of what is known best.
Numbers besideBestKnown(const Evidence& evidence, const Story& story, double side) {
  const std::size_t best = tightest(evidence, story);
  Numbers at = middles(evidence);
  at[best] += side * evidence.before[best].spread;
  return at;
}

// The readings that the others go with least, each judged without itself, the worst first.
std::vector<std::size_t> suspects(const Evidence& evidence, const Model& model,
                                  const Story& story) {
  const auto slopes = slopesOf(model, story.at, stepsFor(evidence));
  if (!slopes) return {};
  const Numbers said = model({story.at}).front();
  std::vector<std::pair<double, std::size_t>> worst;
  for (std::size_t i = 0; i < said.size(); ++i) {
    const Observation& seen = evidence.seen[i];
    if (!(seen.wide > 0.0) || story.good[i] < 0.5) continue;
    Numbers slope;
    for (std::size_t k = 0; k < story.at.size(); ++k) slope.push_back((*slopes)(i, k));
    const double spread = spreadOf(seen);
    const double own = varianceOf(story.covariance, slope) / (spread * spread);
    const double left = std::max(1.0 - own, 1e-6);
    const double z = std::abs(seen.value - said[i]) / spread / std::sqrt(left);
    if (z > kSuspicious) worst.emplace_back(z, i);
  }
  std::stable_sort(worst.begin(), worst.end(),
                   [](const auto& a, const auto& b) { return a.first > b.first; });
  std::vector<std::size_t> which;
  for (std::size_t i = 0; i < std::min(worst.size(), kSuspects); ++i)
    which.push_back(worst[i].second);
  return which;
}

// In standard deviations of the wider of both.
double apart(const Story& a, const Story& b) {
  Numbers off(a.at.size());
  for (std::size_t k = 0; k < off.size(); ++k) off[k] = a.at[k] - b.at[k];
  double least = std::numeric_limits<double>::infinity();
  for (const Story* one : {&a, &b}) {
    const auto root = lowerRoot(one->covariance);
    if (!root) continue;
    const Numbers z = solveLower(*root, off);
    least = std::min(least, std::sqrt(dot(z, z)));
  }
  return least;
}

double lnDensityOf(const Story& story, const Matrix& root, const Numbers& at) {
  const auto n = static_cast<double>(at.size());
  Numbers off(at.size());
  double lnRoot = 0.0;
  for (std::size_t k = 0; k < at.size(); ++k) {
    off[k] = at[k] - story.at[k];
    lnRoot += std::log(root(k, k));
  }
  const Numbers z = solveLower(root, off);
  return std::lgamma(0.5 * (kDegrees + n)) - std::lgamma(0.5 * kDegrees) -
         0.5 * n * std::log(kDegrees * M_PI) - lnRoot -
         0.5 * (kDegrees + n) * std::log1p(dot(z, z) / kDegrees);
}

struct Source {
  const Story* story;
  Matrix root;
  double share;
};

// By the volume under each: how high it is, and how wide.
std::vector<Source> sourcesOf(const std::vector<Story>& stories) {
  std::vector<Source> sources;
  for (const Story& story : stories) {
    auto root = lowerRoot(story.covariance);
    if (!root) continue;
    double ln = stories.front().cost - story.cost;
    for (std::size_t k = 0; k < story.at.size(); ++k) ln += std::log((*root)(k, k));
    sources.push_back({&story, std::move(*root), ln});
  }
  double most = -std::numeric_limits<double>::infinity();
  for (const Source& one : sources) most = std::max(most, one.share);
  double sum = 0.0;
  for (Source& one : sources) sum += one.share = std::exp(one.share - most);
  for (Source& one : sources) one.share /= sum;
  return sources;
}

}  // namespace

FitOptions stepsFor(const Evidence& evidence) {
  FitOptions options{.scale = {}, .difference = 0.02, .enough = 1e-3, .mostRounds = 30};
  for (const Belief& belief : evidence.before) options.scale.push_back(belief.spread);
  return options;
}

double costOf(const Evidence& evidence, const Numbers& at, const Numbers& said) {
  double cost = costOfBeliefs(evidence, at);
  for (std::size_t i = 0; i < evidence.seen.size(); ++i)
    cost -= lnLikelihood(evidence.seen[i], said[i]);
  return cost;
}

std::vector<Story> storiesOf(const Evidence& evidence, const Model& model) {
  const auto cheaper = [](const Story& a, const Story& b) { return a.cost < b.cost; };
  const Numbers middle = middles(evidence);
  const Numbers said = model({middle}).front();
  if (!std::all_of(said.begin(), said.end(), [](double x) { return std::isfinite(x); })) return {};
  const std::vector<double> all(evidence.seen.size(), 1.0);
  // First as if none were wrong: from there it shows which readings pull at each other.
  const Fit plain = leastSquaresFit(residualsOf(evidence, model, all), middle, stepsFor(evidence));
  std::vector<Story> found;
  const auto alsoFrom = [&](const Numbers& start, std::vector<double> good) {
    const Numbers there = model({start}).front();
    if (!std::all_of(there.begin(), there.end(), [](double x) { return std::isfinite(x); })) return;
    Story story = storyFrom(evidence, model, start, std::move(good));
    // What has no slopes lies on the edge of what can be: no normal stands for it.
    if (story.covariance.rows() > 0) found.push_back(std::move(story));
  };
  alsoFrom(plain.at, all);
  if (found.empty()) return {};
  for (const double side : {-1.0, 1.0}) {
    const Numbers start = besideBestKnown(evidence, found.front(), side);
    alsoFrom(start, all);
  }
  const auto withoutEachSuspectOf = [&](const Story& story) {
    for (const std::size_t one : suspects(evidence, model, story)) {
      std::vector<double> without = story.good;
      without[one] = 0.0;
      alsoFrom(middle, std::move(without));
    }
  };
  if (plain.covariance.rows() > 0)
    withoutEachSuspectOf({.at = plain.at, .covariance = plain.covariance, .good = all});
  std::stable_sort(found.begin(), found.end(), cheaper);
  const Story best = found.front();
  withoutEachSuspectOf(best);
  std::stable_sort(found.begin(), found.end(), cheaper);
  std::vector<Story> told;
  for (Story& one : found) {
    const bool another = std::all_of(told.begin(), told.end(), [&](const Story& other) {
      return one.cost < found.front().cost + kAsLikely && apart(one, other) > kApart;
    });
    if (another) told.push_back(one);
  }
  return told;
}

Draws drawsFrom(const std::vector<Story>& stories, const std::vector<Numbers>& points) {
  assert(!stories.empty());
  const std::size_t n = stories.front().at.size();
  const boost::math::normal_distribution<double, InDouble> normal;
  const boost::math::chi_squared_distribution<double, InDouble> square(kDegrees);
  const std::vector<Source> sources = sourcesOf(stories);
  assert(!sources.empty());
  Draws draws;
  for (std::size_t p = 0; p < points.size(); ++p) {
    assert(points[p].size() == n + 1);
    // The last coordinate first says whose draw it is, then, stretched again, how far out.
    double last = points[p][n];
    std::size_t whose = 0;
    while (whose + 1 < sources.size() && last >= sources[whose].share)
      last -= sources[whose++].share;
    last = std::clamp(last / sources[whose].share, 1e-12, 1.0 - 1e-12);
    const double stretch = std::sqrt(kDegrees / boost::math::quantile(square, last));
    Numbers z(n);
    for (std::size_t k = 0; k < n; ++k)
      z[k] = stretch * boost::math::quantile(normal, points[p][k]);
    Numbers at = times(sources[whose].root, z);
    for (std::size_t k = 0; k < n; ++k) at[k] += sources[whose].story->at[k];
    double density = 0.0;
    for (const Source& one : sources)
      density += one.share * std::exp(lnDensityOf(*one.story, one.root, at));
    draws.at.push_back(std::move(at));
    draws.lnDensity.push_back(std::log(density));
  }
  return draws;
}

std::size_t tightest(const Evidence& evidence, const Story& story) {
  std::size_t best = 0;
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t k = 0; k < story.at.size(); ++k) {
    const auto root = lowerRoot(ordered(story.covariance, lastOf(story.at.size(), k)));
    if (!root) continue;
    const double share =
        (*root)(story.at.size() - 1, story.at.size() - 1) / evidence.before[k].spread;
    if (share >= least) continue;
    least = share;
    best = k;
  }
  return best;
}

Draws drawsAlong(const Evidence& evidence, const Model& model, const Story& story,
                 std::size_t tight, const std::vector<Numbers>& points) {
  const std::size_t n = story.at.size();
  assert(n >= 2 && tight < n);
  // The tight one last: then the others' draws do not depend on it.
  const std::vector<std::size_t> order = lastOf(n, tight);
  const auto root = lowerRoot(ordered(story.covariance, order));
  assert(root);
  const boost::math::normal_distribution<double, InDouble> normal;
  const boost::math::chi_squared_distribution<double, InDouble> square(kDegrees);
  const boost::math::students_t_distribution<double, InDouble> tails(kDegrees);
  Draws draws;
  for (const Numbers& point : points) {
    assert(point.size() == n + 1);
    const double stretch =
        std::sqrt(kDegrees / boost::math::quantile(square, std::clamp(point[n], 1e-12, 1.0)));
    Numbers z(n, 0.0);
    for (std::size_t k = 0; k + 1 < n; ++k)
      z[k] = stretch * boost::math::quantile(normal, point[order[k]]);
    const Numbers off = times(*root, z);
    Numbers at = story.at;
    for (std::size_t k = 0; k < n; ++k) at[order[k]] += off[k];
    z.pop_back();
    const auto others = static_cast<double>(n - 1);
    draws.at.push_back(std::move(at));
    draws.lnDensity.push_back(-0.5 * (kDegrees + others) * std::log1p(dot(z, z) / kDegrees));
  }
  // Where the tight one is likeliest, by Gauss and Newton's step in it alone; twice.
  const Model residuals = residualsOf(evidence, model, story.good);
  const double step = 0.25 * (*root)(n - 1, n - 1);
  std::vector<double> spread(points.size(), (*root)(n - 1, n - 1));
  for (int turn = 0; turn < 2; ++turn) {
    std::vector<Numbers> places = draws.at;
    for (const Numbers& one : draws.at) {
      places.push_back(one);
      places.back()[tight] += step;
    }
    const std::vector<Numbers> said = residuals(places);
    for (std::size_t p = 0; p < points.size(); ++p) {
      const Numbers& here = said[p];
      Numbers slope = said[points.size() + p];
      for (std::size_t i = 0; i < slope.size(); ++i) slope[i] = (slope[i] - here[i]) / step;
      const double steep = dot(slope, slope);
      const double down = dot(slope, here);
      // Where the model says nothing the draw stays, and will count nothing.
      if (!std::isfinite(steep) || !std::isfinite(down) || !(steep > 0.0)) continue;
      draws.at[p][tight] -= down / steep;
      spread[p] = 1.0 / std::sqrt(steep);
    }
  }
  for (std::size_t p = 0; p < points.size(); ++p) {
    const double out = boost::math::quantile(tails, points[p][tight]);
    draws.at[p][tight] += spread[p] * out;
    draws.lnDensity[p] += std::log(boost::math::pdf(tails, out)) - std::log(spread[p]);
  }
  return draws;
}

Weights weightsOf(const Evidence& evidence, const Draws& draws, const std::vector<Numbers>& said) {
  Weights weights;
  for (std::size_t i = 0; i < draws.at.size(); ++i)
    weights.of.push_back(-costOf(evidence, draws.at[i], said[i]) - draws.lnDensity[i]);
  const double most = *std::max_element(weights.of.begin(), weights.of.end());
  for (double& one : weights.of) one = std::exp(one - most);
  const double sum = std::accumulate(weights.of.begin(), weights.of.end(), 0.0);
  for (double& one : weights.of) one /= sum;
  weights.effective = 1.0 / dot(weights.of, weights.of);
  return weights;
}

std::optional<double> weightedQuantile(const std::vector<double>& numbers,
                                       const std::vector<double>& weights, double share) {
  assert(numbers.size() == weights.size() && share > 0.0 && share < 1.0);
  std::vector<std::size_t> order(numbers.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return numbers[a] < numbers[b]; });
  // Each number stands in the middle of its weight; between two of them by the straight line.
  double before = 0.0;
  double below = 0.0;
  std::optional<std::size_t> last;
  for (const std::size_t i : order) {
    if (!(weights[i] > 0.0)) continue;
    const double here = before + 0.5 * weights[i];
    if (here >= share) {
      if (!std::isfinite(numbers[i])) return std::nullopt;
      if (!last || !std::isfinite(numbers[*last])) return numbers[i];
      return numbers[*last] + (share - below) / (here - below) * (numbers[i] - numbers[*last]);
    }
    before += weights[i];
    below = here;
    last = i;
  }
  if (!last || !std::isfinite(numbers[*last])) return std::nullopt;
  return numbers[*last];
}

double surprise(double seen, double expected, double spreadBefore, double noise) {
  return (seen - expected) / std::sqrt(spreadBefore * spreadBefore + noise * noise);
}

double varianceOf(const Matrix& covariance, const Numbers& wanted) {
  return dot(wanted, times(covariance, wanted));
}

double varianceAfter(const Matrix& covariance, const Numbers& wanted, const Numbers& candidate,
                     double noise) {
  const double both = dot(wanted, times(covariance, candidate));
  return varianceOf(covariance, wanted) -
         both * both / (noise * noise + varianceOf(covariance, candidate));
}

}  // namespace rigs::fitting
