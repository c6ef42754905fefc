// SPDX-License-Identifier: GPL-3.0-or-later
// What readings say about unknowns of which something was believed before: Bayes' rule for a few
// unknowns and a model that takes a while.
//
// The most likely place is found by least squares, beliefs as residuals of their own; how sure it
// is by the same slopes (Laplace); and where that is bent or two-humped, by draws from a wider
// distribution, each weighed by how likely it truly is (importance sampling; Kahn & Marshall 1953).
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "rigs/fitting/least_squares.hpp"
#include "rigs/fitting/likelihood.hpp"

namespace rigs::fitting {

// Normal, of one unknown, before anything was read.
struct Belief {
  double mean = 0.0;
  double spread = 1.0;  // standard deviation, above 0
};

struct Evidence {
  std::vector<Belief> before;
  std::vector<Observation> seen;
};

// Steps as small as the beliefs are wide allow: for slopesOf() and fits.
FitOptions stepsFor(const Evidence& evidence);

// A way in which everything goes together.
struct Story {
  Numbers at;                     // the unknowns
  Matrix covariance;              // of a normal around it
  double cost = 0.0;              // -ln of belief times smooth likelihood
  std::vector<double> good = {};  // the probability of each reading that it is no slip
  int rounds = 0;
};

// `model` says a number for each observation. The most likely story first, and such others as cost
// less than 3 more and lie more than two standard deviations away: then the readings do not go
// together, and which of them are wrong cannot be told. Searched from the beliefs' middle, from a
// standard deviation of the best-known unknown either way, and without each of the three readings
// that go worst with the others. Empty where the model says nothing at the beliefs' middle.
std::vector<Story> storiesOf(const Evidence& evidence, const Model& model);

// -ln of belief times likelihood, with what a model said there.
double costOf(const Evidence& evidence, const Numbers& at, const Numbers& said);

// Draws from the stories' normals, with the wider tails of Student's t with 5 degrees of freedom.
struct Draws {
  std::vector<Numbers> at;
  std::vector<double> lnDensity;  // of being drawn there
};
// One for each of the points, whose coordinates are within 0 and 1: one for each unknown and one
// more.
Draws drawsFrom(const std::vector<Story>& stories, const std::vector<Numbers>& points);

// The same from one story, along a bent ridge: where readings tie `tight` closely to the others, a
// normal follows the tie only as far as it is straight. The others are drawn first, and `tight`
// from around where it is likeliest beside them, found by four looks at the model.
Draws drawsAlong(const Evidence& evidence, const Model& model, const Story& story,
                 std::size_t tight, const std::vector<Numbers>& points);
// The unknown that would be known best if all others were known, as a share of its spread before.
std::size_t tightest(const Evidence& evidence, const Story& story);

// What each draw counts, together 1: how likely it is by how often it is drawn.
struct Weights {
  std::vector<double> of;
  double effective = 0.0;  // as many draws of equal weight would be as good: 1/Σw²
};
Weights weightsOf(const Evidence& evidence, const Draws& draws, const std::vector<Numbers>& said);

// Below this many effective draws no quantiles are shown; below the second no band at all.
inline constexpr double kEnoughForQuantiles = 100.0;
inline constexpr double kEnoughForABand = 20.0;

// The number below which `share` of the weight lies; numbers may be infinite, and the answer then
// is empty where it would be.
std::optional<double> weightedQuantile(const std::vector<double>& numbers,
                                       const std::vector<double>& weights, double share);

// How far a reading is from what was expected before it, in standard deviations of both together.
double surprise(double seen, double expected, double spreadBefore, double noise);

// The variance that is left of a wanted quantity after one more reading: `wanted` and `candidate`
// are how both change with each unknown, `noise` the reading's standard deviation.
double varianceAfter(const Matrix& covariance, const Numbers& wanted, const Numbers& candidate,
                     double noise);
double varianceOf(const Matrix& covariance, const Numbers& wanted);

}  // namespace rigs::fitting
