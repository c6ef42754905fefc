// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/wall_conductance.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>

#include "tests/support/between.hpp"

namespace physics {
namespace {

using test_support::between;

// The balance of a skin, found between its bounds to the last digits.
double balanced(const WallFace& face, const AirFilms& air, double excess) {
  const auto surplus = [&](double skin) {
    return skin + face.outOf(skin, air).flux * face.insulance - excess;
  };
  const double low = std::min(0.0, excess);
  const double high = std::max(0.0, excess);
  const double aside = 1e-12 * excess;
  std::uintmax_t most = 200;
  const auto found = boost::math::tools::toms748_solve(
      surplus, excess > 0.0 ? aside : low, excess > 0.0 ? high : aside,
      boost::math::tools::eps_tolerance<double>(52), most);
  return face.outOf(found.first, air).flux;
}

RC_GTEST_PROP(WallConductance, IsThatOfTheBalance, ()) {
  const double room = between(-20.0, 40.0);
  const AirFilms air(celsius(room), pascals(between(60e3, 105e3)));
  const double kind = between(0.0, 3.0);
  const WallFace face{.insulance = std::exp(between(std::log(1e-5), std::log(2.0))),
                      .areaRatio = between(1.0, 1.5),
                      .emissivity = between(0.02, 0.98),
                      .film = kind < 1.0   ? &AirFilms::beside
                              : kind < 2.0 ? &AirFilms::above
                                           : &AirFilms::below,
                      .size = air.sized(metres(between(0.03, 1.0)))};
  WallConductance wall(face, {.above = 109.0 - room, .below = room + 20.0 + 1.0});
  for (int i = 0; i < 6; ++i) {
    double excess = between(-room - 20.0, 109.0 - room);
    if (i % 3 == 2) excess = std::copysign(std::pow(10.0, between(-4.0, 1.0)), excess);
    if (std::abs(excess) < 1e-4) continue;
    const double exact = balanced(face, air, excess);
    const SlopedFlux found = wall.at(excess, air);
    RC_LOG() << excess << " K: " << found.flux << " for " << exact << ", apart "
             << found.flux / exact - 1.0 << ", bend " << wall.seam() << "\n";
    // Or a hundred-millionth of a kelvin, where there are few of them.
    RC_ASSERT(std::abs(found.flux - exact) <= 2e-8 * std::abs(exact) + 1e-7);
    const double step = 1e-5 * excess;
    const double slope =
        (balanced(face, air, excess + step) - balanced(face, air, excess - step)) / (2.0 * step);
    RC_ASSERT(std::abs(found.slope - slope) <= 1e-4 * slope || std::abs(wall.seam()) < 0.01);
  }
}

}  // namespace
}  // namespace physics
