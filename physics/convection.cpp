// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/convection.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "physics/law_image.hpp"
#include "physics/roots.hpp"
#include "physics/water.hpp"

namespace physics {
namespace {

constexpr double kLaminarEnds = 1e9;  // Ra at which the two wall forms are joined
constexpr double kWallLawEnds = 1e12;

double sixthPower(double x) { return std::cbrt(std::sqrt(x)); }

struct Buoyancy {
  double rayleigh;
  double prandtl;
};

Buoyancy buoyancyOf(Temperature surface, Temperature ambient, Length length,
                    const AirProperties& air) {
  assert(inMetres(length) > 0.0);
  const TemperatureDifference excess = abs(surface - ambient);
  const double rayleigh = kGravity * (excess / air.expansionScale) * boost::units::pow<3>(length) /
                          (air.momentum * air.heat);
  const double prandtl = air.momentum / air.heat;
  return {.rayleigh = rayleigh, .prandtl = prandtl};
}

// Churchill and Chu's [1 + (c/Pr)^(9/16)]^(-n). Two std::pow would cost more than all the rest
// of a film, and air's Prandtl number hardly moves: between 0.67 and 0.75 a parabola through
// three exact points stands in, which is within 3e-6 and meets the exact form at both ends.
class PrandtlBracket {
 public:
  PrandtlBracket(double c, double n) : c_(c), n_(n), middle_(exact(kMiddle)) {
    const double low = exact(kMiddle - kHalfWidth);
    const double high = exact(kMiddle + kHalfWidth);
    slope_ = 0.5 * (high - low);
    bend_ = 0.5 * (high + low) - middle_;
  }
  double operator()(double prandtl) const {
    const double x = (prandtl - kMiddle) * (1.0 / kHalfWidth);
    return std::abs(x) <= 1.0 ? middle_ + x * (slope_ + x * bend_) : exact(prandtl);
  }

 private:
  static constexpr double kMiddle = 0.71;
  static constexpr double kHalfWidth = 0.04;

  double exact(double prandtl) const {
    return std::pow(1.0 + std::pow(c_ / prandtl, 9.0 / 16.0), -n_);
  }

  double c_;
  double n_;
  double middle_;
  double slope_;
  double bend_;
};

double laminarWallNusselt(double rayleigh, double prandtl) {
  static const PrandtlBracket bracket(0.492, 4.0 / 9.0);
  return 0.68 + 0.670 * fourthRoot(rayleigh) * bracket(prandtl);
}

double fullRangeWallNusselt(double rayleigh, double prandtl) {
  static const PrandtlBracket bracket(0.492, 8.0 / 27.0);
  const double root = 0.825 + 0.387 * sixthPower(rayleigh) * bracket(prandtl);
  return root * root;
}

double joinedWallNusselt(double rayleigh, double prandtl) {
  if (rayleigh <= kLaminarEnds) return laminarWallNusselt(rayleigh, prandtl);
  const double full = fullRangeWallNusselt(rayleigh, prandtl);
  if (rayleigh >= kWallLawEnds) return full;
  // The forms differ by a fifth at the seam. No source says how fast that closes; three
  // decades is our choice, and it keeps h rising.
  const double gap =
      laminarWallNusselt(kLaminarEnds, prandtl) / fullRangeWallNusselt(kLaminarEnds, prandtl) - 1.0;
  const double faded = std::log(rayleigh / kLaminarEnds) / std::log(kWallLawEnds / kLaminarEnds);
  return full * (1.0 + gap * (1.0 - faded));
}

// (B/0.10)^3 in SI units.
double waterFilmCube(Temperature liquid) {
  const WaterProperties water = waterProperties(liquid);
  // (k/H)^3 Ra per kelvin, with nu = mu/rho and alpha = k/(rho c): the height has gone.
  const auto cube = boost::units::pow<2>(water.conductivity * water.density) * kGravity *
                    water.expansion * water.specificHeat / water.viscosity;
  const auto unit = boost::units::pow<3>(perSquareMetreKelvin(1.0)) / kelvins(1.0);
  return static_cast<double>(cube / unit);
}

FilmEstimate filmFrom(double nusselt, double rayleigh, bool inRange, Length length,
                      const AirProperties& air) {
  return {.h = nusselt * air.conductivity / length,
          .rayleigh = rayleigh,
          .validity = inRange ? Validity::InRange : Validity::Extrapolated};
}

}  // namespace

FilmEstimate verticalWallFilm(Temperature wall, Temperature ambient, Length height,
                              const AirProperties& air) {
  const auto [rayleigh, prandtl] = buoyancyOf(wall, ambient, height, air);
  return filmFrom(joinedWallNusselt(rayleigh, prandtl), rayleigh, rayleigh <= kWallLawEnds, height,
                  air);
}

FilmEstimate verticalWallFilmFullRange(Temperature wall, Temperature ambient, Length height,
                                       const AirProperties& air) {
  const auto [rayleigh, prandtl] = buoyancyOf(wall, ambient, height, air);
  return filmFrom(fullRangeWallNusselt(rayleigh, prandtl), rayleigh, rayleigh <= kWallLawEnds,
                  height, air);
}

FilmEstimate plateFacingUpFilm(Temperature plate, Temperature ambient, Length areaPerPerimeter,
                               const AirProperties& air) {
  const double rayleigh = buoyancyOf(plate, ambient, areaPerPerimeter, air).rayleigh;
  constexpr double kCrossing = 3.6 * 3.6 * 3.6 * 3.6 * 3.6 * 3.6 *  // (0.54/0.15)^12
                               3.6 * 3.6 * 3.6 * 3.6 * 3.6 * 3.6;
  const double nusselt =
      rayleigh <= kCrossing ? 0.54 * fourthRoot(rayleigh) : 0.15 * std::cbrt(rayleigh);
  return filmFrom(nusselt, rayleigh, 1e4 <= rayleigh && rayleigh <= 1e11, areaPerPerimeter, air);
}

FilmEstimate plateFacingDownFilm(Temperature plate, Temperature ambient, Length areaPerPerimeter,
                                 const AirProperties& air) {
  const double rayleigh = buoyancyOf(plate, ambient, areaPerPerimeter, air).rayleigh;
  return filmFrom(0.27 * fourthRoot(rayleigh), rayleigh, 1e5 <= rayleigh && rayleigh <= 1e10,
                  areaPerPerimeter, air);
}

FilmEstimate horizontalCylinderFilm(Temperature surface, Temperature ambient, Length diameter,
                                    const AirProperties& air) {
  const auto [rayleigh, prandtl] = buoyancyOf(surface, ambient, diameter, air);
  return filmFrom(horizontalCylinderNusselt(rayleigh, prandtl), rayleigh, rayleigh <= 1e12,
                  diameter, air);
}

double horizontalCylinderNusselt(double rayleigh, double prandtl) {
  static const PrandtlBracket bracket(0.559, 8.0 / 27.0);
  const double root = 0.60 + 0.387 * sixthPower(rayleigh) * bracket(prandtl);
  return root * root;
}

TemperatureDifference waterFilmDrop(HeatFlux q, Temperature liquid) {
  // q = 0.10 cbrt(cube) drop^(4/3), solved without a cube root: drop^4 = q^3 / (0.10^3 cube).
  const double flux = std::abs(inWattsPerSquareMetre(q));
  const double cube = waterFilmCube(std::clamp(liquid, kColdestWaterFilm, kHottestWaterFilm));
  const TemperatureDifference drop = kelvins(fourthRoot(flux * flux * flux / (1e-3 * cube)));
  return q < wattsPerSquareMetre(0.0) ? -drop : drop;
}

double waterFilmDropPerFlux(Temperature liquid) {
  static const LawImage<20> image([](double kelvins) { return waterFilmCube(kelvin(kelvins)); },
                                  inKelvin(kColdestWaterFilm), inKelvin(kHottestWaterFilm));
  const Temperature t = std::clamp(liquid, kColdestWaterFilm, kHottestWaterFilm);
  return 1.0 / fourthRoot(1e-3 * image(inKelvin(t)));
}

}  // namespace physics
