// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/air_films.hpp"

#include <cmath>

#include "physics/air.hpp"
#include "physics/convection.hpp"
#include "physics/law_image.hpp"
#include "physics/roots.hpp"

namespace physics {
namespace {

constexpr Pressure kOneAtmosphere = pascals(101325.0);
constexpr double kColdestFilm = 245.0;  // K
constexpr double kHottestFilm = 395.0;
constexpr double kPlatesCross = 3.6 * 3.6 * 3.6;  // Ra^(1/4): (0.54/0.15)^3
constexpr double kWallBends = 1e9;                // Ra
constexpr double kWallMayBend = 150.0;            // Ra^(1/4): at half of that
constexpr double kAsideForSlope = 1e-4;
// How films go by their absolute temperature, as a power: for slopes only.
constexpr double kPowerOfFilm = -0.28;
constexpr double kPowerOfTurbulentFilm = -0.66;
constexpr double kPowerOfConductivity = 0.88;
// Churchill and Chu's bracket at air's middling Prandtl number, to tell Ra from a film.
constexpr double kBracket = 0.766;

double conductivity(double kelvins) {
  return inWattsPerMetreKelvin(dryAir(kelvin(kelvins), kOneAtmosphere).conductivity);
}
// Ra per m3 and kelvin of excess.
double buoyancy(double kelvins) {
  const AirProperties air = dryAir(kelvin(kelvins), kOneAtmosphere);
  return 9.80665 /
         (kelvins * inSquareMetresPerSecond(air.momentum) * inSquareMetresPerSecond(air.heat));
}
// The laminar wall's law without its constant term, per Ra's own fourth root of excess and height.
double besideRoot(double kelvins) {
  constexpr double kExcess = 10.0;
  constexpr double kHeight = 0.1;
  const double k = conductivity(kelvins);
  const FilmEstimate film =
      verticalWallFilm(kelvin(kelvins + 0.5 * kExcess), kelvin(kelvins - 0.5 * kExcess),
                       metres(kHeight), dryAir(kelvin(kelvins), kOneAtmosphere));
  const double nusselt = inWattsPerSquareMetreKelvin(film.h) * kHeight / k;
  return k * (nusselt - 0.68) / std::pow(kExcess * kHeight * kHeight * kHeight, 0.25);
}

}  // namespace

struct AirFilms::Images {
  LawImage<10> k{conductivity, kColdestFilm, kHottestFilm};
  LawImage<12> root{[](double t) { return std::pow(buoyancy(t), 0.25); }, kColdestFilm,
                    kHottestFilm};
  LawImage<12> third{[](double t) { return std::cbrt(buoyancy(t)); }, kColdestFilm, kHottestFilm};
  LawImage<12> beside{besideRoot, kColdestFilm, kHottestFilm};
};

const AirFilms::Images& AirFilms::images() {
  static const Images all;
  return all;
}

namespace {

// From a film's slope against the difference to that against its face, hotter or colder.
SlopedFilm againstFace(SlopedFilm f, double film, double sign) {
  const double power = f.seam > 0.0 ? kPowerOfTurbulentFilm : kPowerOfFilm;
  f.slope = sign * f.slope + 0.5 * power / film * f.h;
  return f;
}

}  // namespace

SlopedFilm slopedRadiation(double exchange, double face, double other) {
  const double squares = face * face + other * other;
  const double sum = face + other;
  return {exchange * kStefanBoltzmann * squares * sum,
          exchange * kStefanBoltzmann * (2.0 * face * sum + squares), kNoSeam};
}

AirFilms::AirFilms(Temperature air, Pressure p)
    : images_(images()),
      air_(inKelvin(air)),
      pressure_(p),
      root_(std::sqrt(static_cast<double>(p / kOneAtmosphere))),
      third_(std::cbrt(root_ * root_ * root_ * root_)) {}

FaceSize AirFilms::sized(Length characteristic) const {
  const double length = inMetres(characteristic);
  return {.length = length, .rayleigh4 = root_ * fourthRoot(length * length * length)};
}

// The film's own temperature is taken as given: its part in the slope the callers add.
SlopedFilm AirFilms::facingUp(double film, double difference, const FaceSize& size) const {
  const double k = images_.k(film) / size.length;
  const double rayleigh4 = images_.root(film) * fourthRoot(difference) * size.rayleigh4;
  const double seam = rayleigh4 / kPlatesCross - 1.0;
  if (seam <= 0.0) {
    const double h = 0.54 * k * rayleigh4;
    return {h, 0.25 * h / difference, seam};
  }
  const double h = 0.15 * k * images_.third(film) * std::cbrt(difference) * third_ * size.length;
  return {h, h / (3.0 * difference), seam};
}

SlopedFilm AirFilms::facingDown(double film, double difference, const FaceSize& size) const {
  const double h = 0.27 * images_.k(film) / size.length * images_.root(film) *
                   fourthRoot(difference) * size.rayleigh4;
  return {h, 0.25 * h / difference, kNoSeam};
}

SlopedFilm AirFilms::between(double middle, double difference, const FaceSize& size) const {
  return facingUp(middle, difference, size);
}

SlopedFilm AirFilms::above(double excess, const FaceSize& size) const {
  const double film = air_ + 0.5 * excess;
  return excess >= 0.0 ? againstFace(facingUp(film, excess, size), film, 1.0)
                       : againstFace(facingDown(film, -excess, size), film, -1.0);
}

SlopedFilm AirFilms::below(double excess, const FaceSize& size) const {
  const double film = air_ + 0.5 * excess;
  return excess >= 0.0 ? againstFace(facingDown(film, excess, size), film, 1.0)
                       : againstFace(facingUp(film, -excess, size), film, -1.0);
}

SlopedFilm AirFilms::beside(double excess, const FaceSize& size) const {
  const double film = air_ + 0.5 * excess;
  const double difference = std::abs(excess);
  const double still = 0.68 * images_.k(film) / size.length;
  const double moving =
      images_.beside(film) * fourthRoot(difference) * size.rayleigh4 / size.length;
  const double rayleigh4 = 0.68 * moving / (0.670 * kBracket * still);
  if (rayleigh4 > kWallMayBend) return printedBeside(excess, size);
  return {still + moving,
          moving * (0.25 / excess + 0.5 * kPowerOfFilm / film) +
              still * 0.5 * kPowerOfConductivity / film,
          -1.0};
}

SlopedFilm AirFilms::printedBeside(double excess, const FaceSize& size) const {
  const auto at = [&](double over) {
    const Temperature face = kelvin(air_ + over);
    const Temperature air = kelvin(air_);
    return verticalWallFilm(face, air, metres(size.length), dryAir(midpoint(face, air), pressure_));
  };
  const FilmEstimate film = at(excess);
  const double h = inWattsPerSquareMetreKelvin(film.h);
  const double beyond = inWattsPerSquareMetreKelvin(at((1.0 + kAsideForSlope) * excess).h);
  return {h, (beyond - h) / (kAsideForSlope * excess), film.rayleigh / kWallBends - 1.0};
}

// Nu is the square of 0.60 and a part that goes by Ra^(1/6).
SlopedFilm AirFilms::around(double excess, const FaceSize& size) const {
  const Temperature face = kelvin(air_ + excess);
  const Temperature air = kelvin(air_);
  const AirProperties film = dryAir(midpoint(face, air), pressure_);
  const double h =
      inWattsPerSquareMetreKelvin(horizontalCylinderFilm(face, air, metres(size.length), film).h);
  const double root = std::sqrt(h * size.length / inWattsPerMetreKelvin(film.conductivity));
  // Ra^(1/6) of air goes by the film's temperature to -0.77.
  const double moving = 1.0 - 0.60 / root;
  const double bend = kPowerOfConductivity - 2.0 * 0.77 * moving;
  return {h, h * (moving / (3.0 * excess) + 0.5 * bend / inKelvin(midpoint(face, air))), kNoSeam};
}

}  // namespace physics
