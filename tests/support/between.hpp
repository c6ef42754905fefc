// SPDX-License-Identifier: GPL-3.0-or-later
// Any real number of a range, for properties.
#pragma once

#include <rapidcheck.h>

namespace test_support {

inline double between(double low, double high) {
  return low + (high - low) * static_cast<double>(*rc::gen::inRange(0, 1'000'001)) * 1e-6;
}

}  // namespace test_support
