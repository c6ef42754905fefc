// SPDX-License-Identifier: GPL-3.0-or-later
// Comparing quantities in tests: both sides and the tolerance carry the same unit.
#pragma once

#include <gtest/gtest.h>

#include "physics/units.hpp"

namespace test_support {

template <class Unit>
double plain(const physics::Quantity<Unit>& q) {
  return q.value();
}
inline double plain(double n) { return n; }

}  // namespace test_support

// EXPECT_WITHIN(actual, expected, tolerance), all three quantities (SI numbers are printed).
#define EXPECT_WITHIN(actual, expected, tolerance)                            \
  EXPECT_NEAR(::test_support::plain(actual), ::test_support::plain(expected), \
              ::test_support::plain(tolerance))
