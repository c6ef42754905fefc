// SPDX-License-Identifier: GPL-3.0-or-later
// Points that fill a cube evenly: as good for a band as several times as many random ones.
#pragma once

#include <cstddef>
#include <vector>

namespace rigs {

// Sobol's first `count` points, a power of two, in `dimensions` from 1 to 100: each coordinate
// within 0 and 1. The origin, which Boost's generator leaves out, is the first, without which the
// points are not balanced; all are shifted by a fixed vector, modulo 1, so that none is 0 or 1.
// The same on every machine.
std::vector<std::vector<double>> evenPoints(std::size_t count, std::size_t dimensions);

// Where a standard normal variable is below with probability `share`, within 0 and 1.
double normalQuantile(double share);

}  // namespace rigs
