// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/wall_conductance.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "physics/roots.hpp"
#include "physics/units.hpp"

namespace physics {
SlopedFlux WallFace::outOf(double skin, const AirFilms& air) const {
  const SlopedFilm moved = (air.*film)(skin, size);
  const SlopedFilm shone = slopedRadiation(emissivity, air.kelvins() + skin, air.kelvins());
  const double h = areaRatio * (moved.h + shone.h);
  return {h * skin, h + skin * areaRatio * (moved.slope + shone.slope)};
}

// The slope is against the skin; a root grows with a quarter or a third of itself over the excess.
SlopedFlux WallConductance::outOf(const Piece& piece, double skin) {
  const bool laminar = piece.root == Root::Fourth;
  const double root = laminar ? fourthRoot(skin) : cubeRoot(skin);
  const auto [h, slope] = piece.conductance.withSlope(root);
  return {h * skin, h + (laminar ? 0.25 : 1.0 / 3.0) * root * slope};
}

WallConductance::Piece WallConductance::between(Root root, double coldest, double hottest,
                                                double sign, const AirFilms& air) const {
  const bool laminar = root == Root::Fourth;
  const auto conductance = [&](double y) {
    const double skin = laminar ? (y * y) * (y * y) : y * y * y;
    return sign * face_.outOf(sign * skin, air).flux / skin;
  };
  const auto rootOf = [&](double skin) { return laminar ? fourthRoot(skin) : cubeRoot(skin); };
  return {root, LawImage<kNodes>(conductance, rootOf(coldest), rootOf(hottest))};
}

// The skin where the film's law bends, or the most; seams rise with the skin.
double WallConductance::bendingSkin(double most, double sign, const AirFilms& air) const {
  double low = 0.0;
  double high = most;
  if (face_.seamAt(sign * high, air) <= 0.0) return most;
  for (int i = 0; i < 50; ++i) {
    const double middle = 0.5 * (low + high);
    (face_.seamAt(sign * middle, air) <= 0.0 ? low : high) = middle;
  }
  return high;
}

void WallConductance::learn(Side& side, double sign, const AirFilms& air) const {
  const double most = sign > 0.0 ? range_.above : range_.below;
  const double bends = bendingSkin(most, sign, air);
  side.near = between(Root::Fourth, 0.0, bends, sign, air);
  side.bends = bends < most ? bends : std::numeric_limits<double>::infinity();
  if (bends < most) side.far = between(Root::Third, bends, most, sign, air);
  side.known = true;
}

// Newton's steps on a nearly straight line, from where the last solution points to. The last of
// them is taken without asking again: it errs by its square.
SlopedFlux WallConductance::at(double excess, const AirFilms& air) {
  constexpr int kMostSteps = 50;
  constexpr double kLastStep = 3e-6;  // of the skin
  const double sign = excess >= 0.0 ? 1.0 : -1.0;
  Side& side = excess >= 0.0 ? above_ : below_;
  if (!side.known) learn(side, sign, air);
  const double whole = std::max(std::abs(excess), std::numeric_limits<double>::min());
  double skin = sign * (skin_ + rises_ * (excess - excess_));
  if (!(0.0 < skin && skin < whole)) skin = rises_ * whole;
  SlopedFlux out{};
  for (int i = 0; i < kMostSteps; ++i) {
    out = outOf(skin <= side.bends ? side.near : side.far, skin);
    const double slope = 1.0 + out.slope * face_.insulance;
    const double surplus = skin + out.flux * face_.insulance - whole;
    // Never below the room.
    const double step = std::max(-surplus / slope, -0.9 * skin);
    rises_ = 1.0 / slope;
    skin += step;
    out.flux += out.slope * step;
    if (std::abs(step) <= kLastStep * skin) break;
  }
  skin_ = sign * skin;
  excess_ = excess;
  seam_ = std::max(skin - side.bends, -1e9);
  return {sign * out.flux, out.slope * rises_};
}

}  // namespace physics
