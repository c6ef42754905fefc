// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/element_surface.hpp"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cassert>
#include <cmath>
#include <cstdint>

#include "physics/convection.hpp"
#include "physics/water.hpp"
#include "physics/water_film.hpp"

namespace physics {
namespace {

constexpr Pressure kCriticalPressure = pascals(22.064e6);  // IAPWS R2-83

// Where `rising` passes zero between both, which lie on either side.
template <class F>
double rootBetween(double low, double high, const F& rising) {
  std::uintmax_t steps = 100;
  const auto [a, b] = boost::math::tools::toms748_solve(
      rising, low, high, boost::math::tools::eps_tolerance<double>(40), steps);
  return 0.5 * (a + b);
}

// By its warmth alone, however hot.
TemperatureDifference convectiveExcess(HeatFlux q, Temperature bulk, Length diameter) {
  const auto missing = [&](double excess) {
    const TemperatureDifference above = kelvins(excess);
    return inWattsPerSquareMetre(stillRodFilm(bulk + above, bulk, diameter) * above - q);
  };
  double high = 1.0;
  while (missing(high) < 0.0) high *= 2.0;
  return kelvins(rootBetween(0.0, high, missing));
}

}  // namespace

HeatTransferCoefficient stillRodFilm(Temperature skin, Temperature bulk, Length diameter) {
  const WaterFilm water = waterFilm(skin, bulk);
  return horizontalCylinderNusselt(water.rayleigh(diameter), water.prandtl()) *
         water.properties.conductivity / diameter;
}

TemperatureDifference boilingSuperheat(HeatFlux q, Pressure p) {
  assert(q > wattsPerSquareMetre(0.0));
  const double reduced = static_cast<double>(p / kCriticalPressure);
  assert(reduced > 0.0 && reduced <= 0.9);
  const double exponent = 0.9 - 0.3 * std::pow(reduced, 0.15);
  const double factor =
      1.73 * std::pow(reduced, 0.27) + (6.1 + 0.68 / (1.0 - reduced)) * reduced * reduced;
  return q / (factor * std::pow(static_cast<double>(q / wattsPerSquareMetre(20e3)), exponent) *
              perSquareMetreKelvin(5600.0));
}

TemperatureDifference boilingBeginsAbove(HeatFlux q, Pressure p) {
  assert(q > wattsPerSquareMetre(0.0));
  const double bar = static_cast<double>(p / pascals(1e5));
  const double share = inWattsPerSquareMetre(q) / (1082.0 * std::pow(bar, 1.156));
  return kelvins(std::pow(share, std::pow(bar, 0.0234) / 2.16) / 1.8);
}

Temperature skinInStillWater(HeatFlux q, Temperature bulk, Length diameter, Pressure p,
                             Temperature boils) {
  assert(q >= wattsPerSquareMetre(0.0) && bulk <= boils);
  if (q == wattsPerSquareMetre(0.0)) return bulk;
  return std::min(bulk + convectiveExcess(q, bulk, diameter), boils + boilingSuperheat(q, p));
}

Temperature skinInStillMash(HeatFlux q, Temperature bulk, Pressure p, Temperature boils) {
  assert(q >= wattsPerSquareMetre(0.0) && bulk <= boils);
  if (q == wattsPerSquareMetre(0.0)) return bulk;
  return std::min(bulk + q / kStillMashFilm, boils + boilingSuperheat(q, p));
}

Temperature sizzlesFrom(HeatFlux q, Length diameter, Pressure p) {
  const Temperature skin = saturationTemperature(p) + boilingBeginsAbove(q, p);
  const auto missing = [&](double degrees) {
    const Temperature bulk = celsius(degrees);
    return inKelvins(bulk + convectiveExcess(q, bulk, diameter) - skin);
  };
  if (missing(0.0) >= 0.0) return celsius(0.0);
  return celsius(rootBetween(0.0, inCelsius(skin), missing));
}

}  // namespace physics
