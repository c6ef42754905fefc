// SPDX-License-Identifier: GPL-3.0-or-later
// Natural convection: mean film coefficients of the surfaces a kettle is made of.
#pragma once

#include "physics/air.hpp"
#include "physics/estimate.hpp"
#include "physics/units.hpp"

namespace physics {

struct FilmEstimate {
  HeatTransferCoefficient h;
  double rayleigh;
  Validity validity;
};

// `air` is taken at midpoint(surface, ambient) in every function here. A surface colder than the
// air gives the h of the same distance above it for walls; for plates the direction is turned
// over by the caller (a cold lid is a plate facing the other way). Zero excess gives h of Ra = 0:
// conduction for walls and cylinders, nothing for plates.
// Lengths must be positive; asserted.

// Vertical isothermal wall of the given height.
//
// Source: Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975) 1323: the laminar form
// (eq. 9) up to Ra 1e9, where kettles live; above it the form for all Ra (eq. 8), scaled
// at the seam so that h does not jump; the factor fades with log Ra and is gone at 1e12.
// Range: Ra <= 1e12. Published laws differ by +-13 % at kettle size, and the laminar form is
// the lowest of them: eq. 8 reads 24 % more.
FilmEstimate verticalWallFilm(Temperature wall, Temperature ambient, Length height,
                              const AirProperties& air);
// The all-Ra form alone (eq. 8), for comparison with textbooks that use it everywhere.
FilmEstimate verticalWallFilmFullRange(Temperature wall, Temperature ambient, Length height,
                                       const AirProperties& air);

// Horizontal plate, hot face up (or cold face down). Characteristic length is area/perimeter:
// a quarter of the diameter for a disk.
// Source: McAdams; Lloyd & Moran, 0.54 Ra^1/4 up to 1e7 and 0.15 Ra^1/3 above. The second is
// 6.4 % higher there; to avoid the jump the larger is used, and they cross at Ra 4.7e6.
// Range: 1e4-1e11. Other laws for a kettle's lid give 5-8 W/(m2 K) where this gives 7.3.
FilmEstimate plateFacingUpFilm(Temperature plate, Temperature ambient, Length areaPerPerimeter,
                               const AirProperties& air);
// Horizontal plate, hot face down: McAdams 0.27 Ra^1/4. Range: 1e5-1e10.
FilmEstimate plateFacingDownFilm(Temperature plate, Temperature ambient, Length areaPerPerimeter,
                                 const AirProperties& air);

// Horizontal cylinder (a hose). Source: Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975)
// 1049. Range: Ra <= 1e12.
FilmEstimate horizontalCylinderFilm(Temperature surface, Temperature ambient, Length diameter,
                                    const AirProperties& air);
// The same law for any fluid.
double horizontalCylinderNusselt(double rayleigh, double prandtl);

// What separates still wort from the inside of its wall carrying the flux q: turbulent natural
// convection in water, Nu = 0.10 Ra^1/3 (Sukhatme, A Textbook on Heat Transfer), for which the
// height cancels: excess = (q / B)^(3/4) with B = 0.10 k (g beta/(nu alpha))^(1/3).
// Sign follows q. Range: liquid 10-105 C; below 10 C the value at 10 C is used, since water's
// expansion vanishes at 4 C.
TemperatureDifference waterFilmDrop(HeatFlux q, Temperature liquid);
// Where that law follows the liquid's temperature.
inline constexpr Temperature kColdestWaterFilm = celsius(10.0);
inline constexpr Temperature kHottestWaterFilm = celsius(105.0);
// B^(-3/4) in SI units, by an image that is within 1e-12 of the law.
double waterFilmDropPerFlux(Temperature liquid);

}  // namespace physics
