// SPDX-License-Identifier: GPL-3.0-or-later
// A wall's conductance from its inside to the room, as the inner loop asks it. Plain SI numbers.
#pragma once

#include <cstddef>

#include "physics/air_films.hpp"
#include "physics/law_image.hpp"

namespace physics {

// W/m2 of the inner face, and W/(m2 K) of the inside.
struct SlopedFlux {
  double flux, slope;
};

// Metal and layers, then the outer film with radiation, per area of the inner face.
struct WallFace {
  double insulance = 0.0;
  double areaRatio = 1.0;  // outer area over inner
  double emissivity = 0.9;
  SlopedFilm (AirFilms::*film)(double excess, const FaceSize&) const = nullptr;
  FaceSize size{};

  // Out of a skin so many kelvins hotter than the room; the slope is against the skin.
  SlopedFlux outOf(double skin, const AirFilms& air) const;
  double seamAt(double skin, const AirFilms& air) const { return (air.*film)(skin, size).seam; }
};

// A wall whose inside is as hot as what fills it, solved for its skin. What leaves the skin by film
// and radiation is asked at a few skins; between them it is a polynomial of the fourth root of the
// skin's excess, smooth down to the room's temperature. Below the room, and beyond where the film's
// law bends, other polynomials hold, made when they are first asked for. Within 1e-8 of the
// balance.
class WallConductance {
 public:
  // Up to how many kelvins above the room and below it the inside is asked for.
  struct Range {
    double above, below;
  };
  WallConductance() = default;
  WallConductance(const WallFace& face, Range range) : face_(face), range_(range) {}

  SlopedFlux at(double excess, const AirFilms& air);
  double skinAt(double excess, const AirFilms& air) {
    at(excess, air);
    return skin_;
  }
  // K of skin beyond where the film's law bends, negative before it; as asked last.
  double seam() const { return seam_; }

 private:
  static constexpr std::size_t kNodes = 12;
  // Laminar films go by the fourth root of the skin's excess, turbulent ones by the third.
  enum class Root { Fourth, Third };
  struct Piece {
    Root root = Root::Fourth;
    LawImage<kNodes> conductance;  // W/(m2 K) of the inner face, against that root
  };
  struct Side {
    bool known = false;
    double bends = 0.0;  // the skin's excess where the film's law does; endless if it never does
    Piece near, far;
  };
  void learn(Side& side, double sign, const AirFilms& air) const;
  Piece between(Root root, double coldest, double hottest, double sign, const AirFilms& air) const;
  double bendingSkin(double most, double sign, const AirFilms& air) const;
  static SlopedFlux outOf(const Piece& piece, double skin);

  WallFace face_;
  Range range_{};
  double seam_ = -1.0;
  Side above_, below_;
  // The last solution, a guess for the next.
  double skin_ = 0.0, excess_ = 0.0, rises_ = 0.5;
};

}  // namespace physics
