// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/air_films.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "physics/air.hpp"
#include "physics/convection.hpp"
#include "tests/support/between.hpp"

namespace physics {
namespace {

using test_support::between;

// In any room, of any size: the printed laws, and slopes that are their differences.
RC_GTEST_PROP(AirFilms, AreThePrintedLaws, ()) {
  const Temperature room = celsius(between(-20.0, 45.0));
  const Pressure p = pascals(between(60e3, 106e3));
  const Length size = metres(std::exp(between(std::log(0.02), std::log(1.2))));
  const AirFilms air(room, p);
  const FaceSize sized = air.sized(size);
  // Not hotter than wort, nor colder than it may be.
  const double excess =
      between(0.05, 109.0 - inCelsius(room)) * (between(0.0, 1.0) < 0.8 ? 1.0 : 0.0) -
      between(0.05, 20.0);
  if (std::abs(excess) < 0.05) return;
  const auto around = [&](double over) { return dryAir(midpoint(room + kelvins(over), room), p); };
  const auto face = [&](double over) { return room + kelvins(over); };
  const auto compare = [&](const SlopedFilm& film, const auto& printed, const char* what) {
    const double exact = inWattsPerSquareMetreKelvin(printed(excess).h);
    RC_LOG() << what << " " << excess << " K: " << film.h << " for " << exact << "\n";
    RC_ASSERT(std::abs(film.h - exact) <= 1e-10 * exact);
    const double step = 1e-5 * excess;
    const double slope =
        inWattsPerSquareMetreKelvin(printed(excess + step).h - printed(excess - step).h) /
        (2.0 * step);
    RC_ASSERT(std::abs(film.slope - slope) <= 3e-3 * exact / std::abs(excess) ||
              std::abs(film.seam) < 1e-3);
  };
  compare(
      air.beside(excess, sized),
      [&](double x) { return verticalWallFilm(face(x), room, size, around(x)); }, "beside");
  compare(
      air.above(excess, sized),
      [&](double x) {
        return x >= 0.0 ? plateFacingUpFilm(face(x), room, size, around(x))
                        : plateFacingDownFilm(face(x), room, size, around(x));
      },
      "above");
  compare(
      air.below(excess, sized),
      [&](double x) {
        return x >= 0.0 ? plateFacingDownFilm(face(x), room, size, around(x))
                        : plateFacingUpFilm(face(x), room, size, around(x));
      },
      "below");
  compare(
      air.around(excess, sized),
      [&](double x) { return horizontalCylinderFilm(face(x), room, size, around(x)); }, "around");
}

}  // namespace
}  // namespace physics
