// SPDX-License-Identifier: GPL-3.0-or-later
// The roots that laws of convection go by, for the inner loop.
#pragma once

#include <bit>
#include <cmath>
#include <cstdint>

namespace physics {

// Of what is not negative.
inline double fourthRoot(double x) { return std::sqrt(std::sqrt(x)); }

// To the last digit or two, of what is positive and of common size; the library's own costs as much
// as all the rest of a headspace. A third of the exponent, in the double's bits, then Halley's
// steps, each of which triples the digits.
inline double cubeRoot(double x) {
  constexpr std::uint64_t kTwoThirdsOfBias = 0x2A9F7893ULL << 32;
  double root = std::bit_cast<double>(std::bit_cast<std::uint64_t>(x) / 3 + kTwoThirdsOfBias);
  for (int i = 0; i < 3; ++i) {
    const double cube = root * root * root;
    root *= (cube + 2.0 * x) / (2.0 * cube + x);
  }
  return root;
}

}  // namespace physics
