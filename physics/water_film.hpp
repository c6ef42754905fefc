// SPDX-License-Identifier: GPL-3.0-or-later
// Water next to a surface, as the laws of convection ask for it.
#pragma once

#include "physics/units.hpp"
#include "physics/water.hpp"

namespace physics {

// At the midpoint of both temperatures, not below kColdestWaterFilm, where water's expansion
// vanishes, nor above kHottestWaterFilm. Water stands in for wort, whose viscosity is 1.3-2 times
// water's.
struct WaterFilm {
  WaterProperties properties;
  TemperatureDifference apart;  // >= 0

  double prandtl() const;
  double rayleigh(Length length) const;
};
WaterFilm waterFilm(Temperature a, Temperature b);

}  // namespace physics
