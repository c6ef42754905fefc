// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/level_off.hpp"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cassert>
#include <cstdint>

namespace physics {

std::optional<Temperature> levelOff(const LossAt& loss, Power supply, Temperature coldest,
                                    Temperature wanted) {
  const auto surplus = [&](double kelvinsAbsolute) {
    return inWatts(supply - loss(kelvin(kelvinsAbsolute)));
  };
  double low = inKelvin(coldest);
  double high = inKelvin(wanted);
  const double atHigh = surplus(high);
  if (atHigh > 0.0) return std::nullopt;
  const double atLow = surplus(low);
  if (atLow <= 0.0) return coldest;
  std::uintmax_t steps = 60;
  const auto bracket = boost::math::tools::toms748_solve(
      surplus, low, high, atLow, atHigh, boost::math::tools::eps_tolerance<double>(40), steps);
  return kelvin(bracket.first);
}

Temperature boilBegins(const LossAt& loss, Power supply, Temperature coldest, Temperature water,
                       Temperature boils) {
  assert(water <= boils);
  if (const auto level = levelOff(loss, supply, coldest, water)) return *level - kLevelled;
  const Power atWater = loss(water);
  const Power lastStretch = atWater - loss(water - kLevelled);
  if (lastStretch <= watts(0.0)) return boils;
  const double stretches = static_cast<double>((supply - atWater) / lastStretch);
  return std::min(boils, water + (stretches - 1.0) * kLevelled);
}

}  // namespace physics
