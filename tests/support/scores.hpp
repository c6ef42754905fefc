// SPDX-License-Identifier: GPL-3.0-or-later
// How good a forecast with a spread was, once the truth is known: lower is better, in the unit of
// the quantity.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <vector>

namespace scores {

// Continuous ranked probability score of a normal forecast; Gneiting & Raftery 2007.
inline double crpsOfNormal(double mean, double spread, double truth) {
  const double z = (truth - mean) / spread;
  const double below = 0.5 * std::erfc(-z / std::sqrt(2.0));
  const double density = std::exp(-0.5 * z * z) / std::sqrt(2.0 * M_PI);
  return spread * (z * (2.0 * below - 1.0) + 2.0 * density - 1.0 / std::sqrt(M_PI));
}

// Of members with weights that are together 1. `fair` for equal weights: as if there were many.
inline double crpsOf(const std::vector<double>& members, const std::vector<double>& weights,
                     double truth, bool fair = false) {
  double off = 0.0;
  double apart = 0.0;
  for (std::size_t i = 0; i < members.size(); ++i) {
    off += weights[i] * std::abs(members[i] - truth);
    for (std::size_t j = 0; j < members.size(); ++j)
      apart += weights[i] * weights[j] * std::abs(members[i] - members[j]);
  }
  const auto n = static_cast<double>(members.size());
  return off - 0.5 * apart * (fair ? n / (n - 1.0) : 1.0);
}

// Of the range that eight in ten should end in.
inline double intervalScore(double low, double high, double truth) {
  return high - low + 10.0 * std::max(low - truth, 0.0) + 10.0 * std::max(truth - high, 0.0);
}

}  // namespace scores
