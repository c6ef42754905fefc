// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/fitting/likelihood.hpp"

#include <algorithm>
#include <cmath>

namespace rigs::fitting {
namespace {

constexpr double kNothing = -1e300;

double lnDensity(double z, double spread) { return -0.5 * z * z - kHalfLnTwoPi - std::log(spread); }

// ln Q(z) = ln of the share of a standard normal above z, far out too: there erfc() would be 0.
double lnAbove(double z) {
  if (z < 25.0) return std::log(0.5 * std::erfc(z / std::sqrt(2.0)));
  // Abramowitz & Stegun 26.2.12, whose next term is below 1e-5 there.
  const double square = z * z;
  return -0.5 * square - kHalfLnTwoPi - std::log(z) +
         std::log1p(-1.0 / square + 3.0 / (square * square));
}

// ln(Q(low) - Q(high)), on the side where both are small.
double lnBetween(double low, double high) {
  if (low + high < 0.0) return lnBetween(-high, -low);
  const double below = lnAbove(low);
  return below + std::log1p(-std::exp(std::min(lnAbove(high) - below, -1e-16)));
}

double lnAsRead(const Observation& seen, double said, double noise) {
  if (seen.step <= 0.0) return lnDensity((seen.value - said) / noise, noise);
  const double half = 0.5 * seen.step;
  return lnBetween((seen.value - half - said) / noise, (seen.value + half - said) / noise);
}

double mixed(double lnGood, double lnWrong) {
  const double good = std::log1p(-kSlips) + lnGood;
  const double wrong = std::log(kSlips) + lnWrong;
  const double more = std::max(good, wrong);
  return more + std::log1p(std::exp(std::min(good, wrong) - more));
}

}  // namespace

double spreadOf(const Observation& seen) {
  return std::sqrt(seen.noise * seen.noise + seen.step * seen.step / 12.0);
}

double lnLikelihood(const Observation& seen, double said) {
  if (!std::isfinite(said)) return kNothing;
  const double good = lnAsRead(seen, said, seen.noise);
  return std::max(kNothing, seen.wide > 0.0 ? mixed(good, lnAsRead(seen, said, seen.wide)) : good);
}

double lnSmoothLikelihood(const Observation& seen, double said) {
  if (!std::isfinite(said)) return kNothing;
  const double spread = spreadOf(seen);
  const double off = seen.value - said;
  const double good = lnDensity(off / spread, spread);
  return seen.wide > 0.0 ? mixed(good, lnDensity(off / seen.wide, seen.wide)) : good;
}

double probablyGood(const Observation& seen, double said) {
  if (!(seen.wide > 0.0)) return 1.0;
  if (!std::isfinite(said)) return 0.0;
  const double spread = spreadOf(seen);
  const double off = seen.value - said;
  const double good = std::log1p(-kSlips) + lnDensity(off / spread, spread);
  const double wrong = std::log(kSlips) + lnDensity(off / seen.wide, seen.wide);
  return 1.0 / (1.0 + std::exp(wrong - good));
}

}  // namespace rigs::fitting
