// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/fitting/least_squares.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>

namespace rigs::fitting {
namespace {

constexpr double kFirstDamping = 1e-3;
constexpr double kMostDamping = 1e20;

double sumOfSquares(const Numbers& residuals) {
  const double sum = dot(residuals, residuals);
  return std::isfinite(sum) ? sum : std::numeric_limits<double>::infinity();
}

double sizeOf(const Numbers& at, const FitOptions& options, std::size_t k) {
  const double scale = options.scale.empty() ? 0.0 : options.scale[k];
  const double size = std::max(scale, std::abs(at[k]));
  return size > 0.0 ? size : 1.0;
}

// The step that the straight-line model advises, shortened by the damping.
std::optional<Numbers> stepFrom(const Matrix& slope, const Numbers& residuals,
                                const Numbers& lengths, double damping) {
  const std::size_t n = slope.columns();
  const std::size_t m = slope.rows();
  Matrix a(m + n, n);
  Numbers b(m + n, 0.0);
  for (std::size_t i = 0; i < m; ++i) {
    b[i] = -residuals[i];
    for (std::size_t k = 0; k < n; ++k) a(i, k) = slope(i, k);
  }
  for (std::size_t k = 0; k < n; ++k) a(m + k, k) = std::sqrt(damping) * lengths[k];
  auto solved = leastSquares(std::move(a), std::move(b));
  if (!solved) return std::nullopt;
  return std::move(solved->x);
}

void lengthen(Numbers& lengths, const Matrix& slope) {
  for (std::size_t k = 0; k < slope.columns(); ++k) {
    double sum = 0.0;
    for (std::size_t i = 0; i < slope.rows(); ++i) sum += slope(i, k) * slope(i, k);
    lengths[k] = std::max(lengths[k], std::sqrt(sum));
    if (!(lengths[k] > 0.0)) lengths[k] = 1.0;
  }
}

Matrix covarianceOf(const Matrix& slope) {
  auto solved = leastSquares(slope, Numbers(slope.rows(), 0.0));
  return solved ? inverseOfSquare(solved->triangle) : Matrix();
}

bool isSmall(const Numbers& step, const Numbers& at, const FitOptions& options) {
  for (std::size_t k = 0; k < at.size(); ++k)
    if (std::abs(step[k]) > options.enough * sizeOf(at, options, k)) return false;
  return true;
}

bool isSamePlace(const Numbers& a, const Numbers& b, const FitOptions& options) {
  for (std::size_t k = 0; k < a.size(); ++k)
    if (std::abs(a[k] - b[k]) > 1e-4 * sizeOf(a, options, k)) return false;
  return true;
}

// One fit on its way.
class Descent {
 public:
  Descent(const Model& residuals, const Numbers& start, const FitOptions& options)
      : model_(residuals), options_(options), lengths_(start.size(), 0.0) {
    fit_.at = start;
    here_ = model_({start}).front();
    fit_.sumOfSquares = sumOfSquares(here_);
    assert(std::isfinite(fit_.sumOfSquares));
    assert(here_.size() >= start.size());
  }

  Fit run() {
    while (!fit_.settled && fit_.rounds < options_.mostRounds) {
      const auto slope = slopesOf(model_, fit_.at, options_);
      if (!slope) return fit_;
      slope_ = *slope;
      lengthen(lengths_, slope_);
      ++fit_.rounds;
      if (!descend()) break;
    }
    if (!options_.covariance) return fit_;
    if (const auto last = slopesOf(model_, fit_.at, options_))
      fit_.covariance = covarianceOf(*last);
    return fit_;
  }

 private:
  // Until a step goes down; false where none does.
  bool descend() {
    for (; damping_ < kMostDamping; damping_ *= 4.0) {
      const auto step = stepFrom(slope_, here_, lengths_, damping_);
      if (!step) continue;
      const bool small = isSmall(*step, fit_.at, options_);
      Numbers there = fit_.at;
      for (std::size_t k = 0; k < there.size(); ++k) there[k] += (*step)[k];
      Numbers said = model_({there}).front();
      const double sum = sumOfSquares(said);
      if (sum < fit_.sumOfSquares) {
        fit_.at = std::move(there);
        here_ = std::move(said);
        fit_.sumOfSquares = sum;
        damping_ = std::max(damping_ / 10.0, 1e-15);
        fit_.settled = small;
        return true;
      }
      if (small) {
        fit_.settled = true;
        return false;
      }
    }
    return false;
  }

  const Model& model_;
  const FitOptions& options_;
  Numbers lengths_, here_;
  Matrix slope_;
  double damping_ = kFirstDamping;
  Fit fit_;
};

}  // namespace

std::optional<Matrix> slopesOf(const Model& model, const Numbers& at, const FitOptions& options) {
  std::vector<Numbers> places{at};
  for (std::size_t k = 0; k < at.size(); ++k) {
    const double step = options.difference * sizeOf(at, options, k);
    for (const double side : {step, -step}) {
      places.push_back(at);
      places.back()[k] += side;
    }
  }
  const std::vector<Numbers> said = model(places);
  Matrix slope(said.front().size(), at.size());
  for (std::size_t k = 0; k < at.size(); ++k) {
    for (std::size_t i = 0; i < slope.rows(); ++i) {
      // At the edge of what the model says anything of, towards the other side alone.
      const std::size_t above = std::isfinite(said[2 * k + 1][i]) ? 2 * k + 1 : 0;
      const std::size_t below = std::isfinite(said[2 * k + 2][i]) ? 2 * k + 2 : 0;
      const double apart = places[above][k] - places[below][k];
      slope(i, k) = (said[above][i] - said[below][i]) / apart;
      if (!std::isfinite(slope(i, k))) return std::nullopt;
    }
  }
  return slope;
}

Fit leastSquaresFit(const Model& residuals, const Numbers& start, const FitOptions& options) {
  assert(!start.empty());
  return Descent(residuals, start, options).run();
}

std::vector<Fit> fitsFrom(const Model& residuals, const std::vector<Numbers>& starts,
                          const FitOptions& options) {
  std::vector<Fit> all;
  for (const Numbers& start : starts) {
    Fit fit = leastSquaresFit(residuals, start, options);
    const auto same = std::find_if(all.begin(), all.end(), [&](const Fit& other) {
      return isSamePlace(fit.at, other.at, options);
    });
    if (same == all.end())
      all.push_back(std::move(fit));
    else if (fit.sumOfSquares < same->sumOfSquares)
      *same = std::move(fit);
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const Fit& a, const Fit& b) { return a.sumOfSquares < b.sumOfSquares; });
  return all;
}

}  // namespace rigs::fitting
