// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/mash.hpp"

#include <algorithm>
#include <array>
#include <cassert>
#include <cstddef>

namespace physics {

SpecificHeat maltSpecificHeat(double moisture) {
  assert(moisture >= 0.0 && moisture <= 0.2);
  return (0.38 * (1.0 - moisture) + moisture) * joulesPerKilogramKelvin(4186.0);
}

SpecificEnergy maltSlakingHeat(double moisture) {
  // Rise (K) added to the two-body mixing result at 2.68 kg/kg, by moisture in percent. The
  // 3 % row prints 2.3 C beside 3.5 F; the Fahrenheit column (1.9 C) is the one that fits.
  struct Row {
    double moisture, rise;
  };
  static constexpr std::array<Row, 7> kRows{
      {{0.00, 3.0}, {0.01, 2.8}, {0.02, 2.3}, {0.03, 1.9}, {0.04, 1.5}, {0.06, 1.3}, {0.08, 1.0}}};
  const double m = std::clamp(moisture, 0.0, kRows.back().moisture);
  std::size_t i = 1;
  while (m > kRows[i].moisture) ++i;
  const double share = (m - kRows[i - 1].moisture) / (kRows[i].moisture - kRows[i - 1].moisture);
  const TemperatureDifference rise =
      kelvins(kRows[i - 1].rise + share * (kRows[i].rise - kRows[i - 1].rise));
  return rise * (2.68 * joulesPerKilogramKelvin(4186.0) + maltSpecificHeat(m));
}

}  // namespace physics
