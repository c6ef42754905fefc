// SPDX-License-Identifier: GPL-3.0-or-later
// The unknowns for which residuals are smallest: Gauss and Newton's way, damped.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "rigs/fitting/dense.hpp"

namespace rigs::fitting {

// What a model says at each of several places; the places may be worked on at once. Numbers that
// are not finite are where the model says nothing: no fit goes there.
using Model = std::function<std::vector<Numbers>(const std::vector<Numbers>& places)>;

struct FitOptions {
  // What is a small step for each unknown: its spread beforehand. 0 where its own size says so.
  Numbers scale = {};
  double difference = 1e-5;  // of central differences, as a share of the larger of scale and size
  double enough = 1e-9;      // ends when a step is less, as a share of the same
  int mostRounds = 400;
  bool covariance = true;  // else it stays empty, and a round is saved
};

struct Fit {
  Numbers at;
  double sumOfSquares = 0.0;
  Matrix covariance;  // (JᵀJ)⁻¹: for residuals that are whitened; else times the residual variance
  int rounds = 0;
  bool settled = false;  // no smaller sum nearby; it may be a false optimum all the same
};

// How each number of the model changes with each unknown, by central differences, one-sided
// at an edge; empty where it says nothing at the place or on either side.
std::optional<Matrix> slopesOf(const Model& model, const Numbers& at, const FitOptions& options);

// From `start`, where residuals are finite (asserted). Source: Levenberg 1944, Marquardt 1963, with
// More's 1978 scaling. There are at least as many residuals as unknowns. Covariance is empty where
// the residuals do not depend on some unknown.
Fit leastSquaresFit(const Model& residuals, const Numbers& start, const FitOptions& options = {});

// "It converged" is not "it is right": from several starts, the best first. Fits that ended at the
// same place, to 1e-4 of scale or size, are told once.
std::vector<Fit> fitsFrom(const Model& residuals, const std::vector<Numbers>& starts,
                          const FitOptions& options = {});

}  // namespace rigs::fitting
