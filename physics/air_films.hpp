// SPDX-License-Identifier: GPL-3.0-or-later
// What a room's air takes from the faces that stand in it: convection.hpp's laws as the inner loop
// asks them, by images of what depends on the film's temperature alone, and with their slopes.
// Plain SI numbers: nothing outside physics sees them.
#pragma once

#include "physics/units.hpp"

namespace physics {

// Of natural convection at a face so many kelvins hotter than the air.
struct SlopedFilm {
  double h;      // W/(m2 K)
  double slope;  // against the face's temperature, W/(m2 K2), to a few thousandths of h/excess
  double seam;   // passes 0 where the law bends, positive beyond; dimensionless
};
inline constexpr double kNoSeam = -1.0;  // of a law that does not bend here

// Radiation between two faces as such a film, against the temperature of the first; K.
SlopedFilm slopedRadiation(double exchange, double face, double other);

// The characteristic length of a face, with what the law makes of it in this air.
struct FaceSize {
  double length;     // m
  double rayleigh4;  // (p/p0)^(1/2) length^(3/4): what multiplies excess^(1/4) to Ra^(1/4)
};

// Still air of one temperature and pressure. Excess, not zero, is the face's over it. Within 1e-10
// of the printed laws from 245 to 395 K of film; a wall beyond half of where it turns turbulent and
// a hose are asked of them.
class AirFilms {
 public:
  AirFilms(Temperature air, Pressure p);

  FaceSize sized(Length characteristic) const;
  double kelvins() const { return air_; }

  SlopedFilm beside(double excess, const FaceSize& height) const;
  SlopedFilm above(double excess, const FaceSize& areaPerPerimeter) const;
  SlopedFilm below(double excess, const FaceSize& areaPerPerimeter) const;
  SlopedFilm around(double excess, const FaceSize& diameter) const;
  // Between a hot face below and a colder one above it, `difference` > 0 apart about `middle`
  // kelvin; the slope is against the difference, the middle staying.
  SlopedFilm between(double middle, double difference, const FaceSize& areaPerPerimeter) const;

 private:
  SlopedFilm facingUp(double film, double difference, const FaceSize& size) const;
  SlopedFilm facingDown(double film, double difference, const FaceSize& size) const;
  SlopedFilm printedBeside(double excess, const FaceSize& height) const;

  struct Images;
  static const Images& images();

  const Images& images_;
  double air_;  // K
  Pressure pressure_;
  double root_;   // (p/p0)^(1/2)
  double third_;  // (p/p0)^(2/3)
};

}  // namespace physics
