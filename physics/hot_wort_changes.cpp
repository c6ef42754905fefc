// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/hot_wort_changes.hpp"

#include <algorithm>
#include <boost/math/quadrature/gauss.hpp>
#include <cmath>

#include "physics/constants.hpp"

namespace physics {
namespace {

constexpr Temperature kHundred = celsius(100.0);

// Small enough that a rate is nearly a parabola over it, and one reaction hardly feeds the next.
HotCurve divided(const HotPiece& piece) {
  const double byWarmth = std::abs(inKelvins(piece.to - piece.from)) / 2.0;
  const double byTime = inMinutes(piece.lasts) / 10.0;
  const int parts = std::max(1, static_cast<int>(std::ceil(std::max(byWarmth, byTime))));
  HotCurve all;
  for (int i = 0; i < parts; ++i) {
    const auto at = [&](int k) {
      return piece.from + (static_cast<double>(k) / parts) * (piece.to - piece.from);
    };
    all.push_back({.lasts = piece.lasts / static_cast<double>(parts),
                   .from = at(i),
                   .to = at(i + 1),
                   .evaporated = piece.evaporated / parts,
                   .of = piece.of});
  }
  return all;
}

// A rate's integral over a piece.
template <class Rate>
double turned(const HotPiece& piece, const Rate& rate) {
  const auto along = [&](double s) {
    return static_cast<double>(rate(piece.from + s * (piece.to - piece.from)) * piece.lasts);
  };
  return piece.of * boost::math::quadrature::gauss<double, 7>::integrate(along, 0.0, 1.0);
}

// What of a first substance, going by `goes`, is the second at the end, itself going by `lost`:
// both numbers of the exponent over the whole piece.
double passedOn(double goes, double lost) {
  const double apart = lost - goes;
  const double share = std::abs(apart) < 1e-9 ? 1.0 : -std::expm1(-apart) / apart;
  return goes * std::exp(-goes) * share;
}

}  // namespace

ReactionRate isoFormation(Temperature t) {
  return perMinute(7.9e11 * std::exp(-11858.0 / inKelvin(t)));
}
ReactionRate sulfideFormation(Temperature t) {
  return perMinute(0.0198 *
                   std::exp(131600.0 / kMolarGasConstant * (1.0 / 373.15 - 1.0 / inKelvin(t))));
}

HotMinutes& HotMinutes::operator+=(const HotMinutes& other) {
  iso += other.iso;
  sulfide += other.sulfide;
  isoTooCold += other.isoTooCold;
  return *this;
}

HotMinutes atHundred(const HotCurve& curve) {
  HotMinutes all;
  for (const HotPiece& whole : curve)
    for (const HotPiece& piece : divided(whole)) {
      const Time iso = turned(piece, isoFormation) / isoFormation(kHundred);
      all.iso += iso;
      all.sulfide += turned(piece, sulfideFormation) / sulfideFormation(kHundred);
      if (midpoint(piece.from, piece.to) < kBitternessFrom) all.isoTooCold += iso;
    }
  return all;
}

Sulfide after(Sulfide sulfide, const HotCurve& curve) {
  for (const HotPiece& whole : curve)
    for (const HotPiece& piece : divided(whole)) {
      const double formed = turned(piece, sulfideFormation);
      const double carried = kSulfideInVapour * piece.evaporated;
      sulfide.dms =
          sulfide.dms * std::exp(-carried) + sulfide.precursor * passedOn(formed, carried);
      sulfide.precursor *= std::exp(-formed);
    }
  return sulfide;
}

}  // namespace physics
