// SPDX-License-Identifier: GPL-3.0-or-later
// How well a value that a model says goes with one that was read, rounded and perhaps wrong.
#pragma once

namespace rigs::fitting {

inline constexpr double kHalfLnTwoPi = 0.91893853320467274178;

// In one unit, any.
struct Observation {
  double value = 0.0;
  double step = 0.0;   // what it was rounded to: it stands for half a step either way
  double noise = 1.0;  // standard deviation before rounding, above 0
  double wide = 0.0;   // the same of a reading that is plain wrong; 0 where none is supposed
};

// How many readings are supposed to be plain wrong: misread, mistyped, another day's.
inline constexpr double kSlips = 0.05;

// With the rounding counted as a noise of its own, w/√12: as good as the interval itself once the
// noise is above .3 w, and usable below. Source: Sheppard 1898.
double spreadOf(const Observation& seen);

// ln of the probability that `said` is read as it was: of the interval that the rounded value
// stands for, of its density where nothing was rounded. Between -1e300 and what a density may be.
double lnLikelihood(const Observation& seen, double said);

// Without rounding, which a smooth fit needs; the same mixture of a good and a wrong reading.
double lnSmoothLikelihood(const Observation& seen, double said);

// The probability that the reading is a good one, where the model says `said`.
double probablyGood(const Observation& seen, double said);

}  // namespace rigs::fitting
