// SPDX-License-Identifier: GPL-3.0-or-later
// Units and the atmosphere as the books print them.
#pragma once

#include "physics/units.hpp"

namespace test_support {

inline constexpr physics::Pressure kAtmosphere = physics::pascals(101325.0);

inline constexpr double kFoot = 0.3048;            // m
inline constexpr double kBtuPerHour = 0.29307107;  // W

inline physics::Temperature fahrenheit(double degrees) {
  return physics::kelvin((degrees + 459.67) / 1.8);
}

}  // namespace test_support
