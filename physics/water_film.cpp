// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/water_film.hpp"

#include <algorithm>

#include "physics/convection.hpp"

namespace physics {

double WaterFilm::prandtl() const {
  return properties.viscosity * properties.specificHeat / properties.conductivity;
}

double WaterFilm::rayleigh(Length length) const {
  const auto momentum = properties.viscosity / properties.density;
  const auto heat = properties.conductivity / (properties.density * properties.specificHeat);
  return kGravity * properties.expansion * apart * boost::units::pow<3>(length) / (momentum * heat);
}

WaterFilm waterFilm(Temperature a, Temperature b) {
  return {.properties =
              waterProperties(std::clamp(midpoint(a, b), kColdestWaterFilm, kHottestWaterFilm)),
          .apart = abs(a - b)};
}

}  // namespace physics
