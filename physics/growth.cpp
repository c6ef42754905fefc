// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/growth.hpp"

#include <algorithm>
#include <boost/math/quadrature/gauss.hpp>
#include <boost/math/tools/roots.hpp>
#include <cassert>
#include <cmath>
#include <cstdint>

namespace physics {
namespace {

// The distance to the room falls by exp(-decay) along a piece; 0 where it is a straight line.
double decayOf(const WarmPiece& piece) {
  const double first = inKelvins(piece.from - piece.room);
  const double last = inKelvins(piece.to - piece.room);
  return first > 0.0 && last > 0.0 ? std::log(first / last) : 0.0;
}

Temperature at(const WarmPiece& piece, double decay, double share) {
  if (decay == 0.0) return piece.from + share * (piece.to - piece.from);
  return piece.room + std::exp(-decay * share) * (piece.from - piece.room);
}

// How much further, as a share of the piece, to have come by no more than 1 K and by no more than a
// factor of 2 in the distance to the room. A rate has a bend where growth ends, and a long piece
// spends most of its time near the room, so that neither bound does alone.
double nextPart(const WarmPiece& piece, double decay, double from) {
  const double perShare = std::abs(inKelvins(
      decay == 0.0 ? piece.to - piece.from : decay * (at(piece, decay, from) - piece.room)));
  return 1.0 / std::max({1.0, perShare, std::abs(decay) / std::log(2.0)});
}

// Of a rate along the first `share` of a piece.
template <class Rate>
double grown(const WarmPiece& piece, double share, const Rate& rate) {
  const double decay = decayOf(piece);
  const auto along = [&](double s) {
    return static_cast<double>(rate(at(piece, decay, s)) * piece.lasts);
  };
  double sum = 0.0;
  for (double from = 0.0; from < share;) {
    const double to = std::min(share, from + nextPart(piece, decay, from));
    sum += boost::math::quadrature::gauss<double, 7>::integrate(along, from, to);
    from = to;
  }
  return sum;
}

}  // namespace

GrowthRate fastestPathogen(Temperature t) {
  const double degrees = inCelsius(t);
  if (degrees <= -2.92 || t >= kNoPathogenFrom) return perHour(0.0);
  const double root = 0.03201 * (degrees + 2.92) *
                      (1.0 - std::exp(0.4455 * (degrees - inCelsius(kNoPathogenFrom))));
  return perHour(root * root);
}

GrowthRate growthAt(const CardinalGrowth& what, Temperature t) {
  if (t <= what.least || t >= what.most) return perHour(0.0);
  const double above = inKelvins(t - what.least);
  const double span = inKelvins(what.best - what.least);
  // The form with T and T_min as printed, its sums of two temperatures taken from T_min.
  const double below = inKelvins(t - what.best);
  const double edge = inKelvins(what.best - what.most);
  const double divisor = span * (span * below - edge * (span - 2.0 * above));
  const double share = inKelvins(t - what.most) * above * above / divisor;
  return share * what.fastest;
}

double doublingsOfPathogens(const WarmPiece& piece) { return grown(piece, 1.0, fastestPathogen); }

double tenfolds(const CardinalGrowth& what, const WarmPiece& piece) {
  return grown(piece, 1.0, [&](Temperature t) { return growthAt(what, t); }) / std::log(10.0);
}

std::optional<Time> whenDoubled(const std::vector<WarmPiece>& curve, double doublings) {
  assert(doublings > 0.0);
  Time before = seconds(0.0);
  double left = doublings;
  for (const WarmPiece& piece : curve) {
    const double here = doublingsOfPathogens(piece);
    if (here >= left) {
      std::uintmax_t steps = 60;
      const auto missing = [&](double share) {
        return grown(piece, share, fastestPathogen) - left;
      };
      const auto [low, high] =
          boost::math::tools::toms748_solve(missing, 0.0, 1.0, -left, here - left,
                                            boost::math::tools::eps_tolerance<double>(40), steps);
      return before + 0.5 * (low + high) * piece.lasts;
    }
    left -= here;
    before += piece.lasts;
  }
  return std::nullopt;
}

}  // namespace physics
