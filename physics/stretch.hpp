// SPDX-License-Identifier: GPL-3.0-or-later
// A stretch of a passage: from one temperature to another, or from one time to another, as a way
// from 0 to 1 along which the laws of loss are smooth. Plain SI numbers.
#pragma once

#include <algorithm>
#include <cmath>

#include "physics/roots.hpp"

namespace physics {

struct Stretch {
  enum class Map {
    Steady,    // the way is time, the temperature one
    FromRoot,  // temperature goes by the fourth power of the way's distance from a root of the
               // laws, the room or where water boils: fluxes go by 5/4 powers of the excess and 3/4
               // powers of what is lacking to boiling
    TowardsRest  // by the logarithm of what is lacking to where the wort would come to rest
  };

  // Seconds.
  static Stretch steadily(double from, double to) {
    return {.map = Map::Steady, .from = from, .to = to};
  }
  // K; from and to on one side of the root.
  static Stretch fromRoot(double root, double from, double to) {
    Stretch s{.map = Map::FromRoot, .from = from, .to = to, .root = root};
    s.side = from + to >= 2.0 * root ? 1.0 : -1.0;
    const auto place = [&](double t) { return fourthRoot(std::max(s.side * (t - root), 0.0)); };
    s.first = place(from);
    s.span = place(to) - s.first;
    return s;
  }
  // K; `rest` beyond `to`.
  static Stretch towardsRest(double rest, double from, double to) {
    Stretch s{.map = Map::TowardsRest, .from = from, .to = to, .root = rest};
    s.side = from > rest ? 1.0 : -1.0;
    s.first = std::log(std::abs(from - rest));
    s.span = std::log(std::abs(to - rest)) - s.first;
    return s;
  }

  bool steady() const { return map == Map::Steady; }
  double temperatureAt(double x) const {
    const double y = first + span * x;
    return root + side * (map == Map::FromRoot ? (y * y) * (y * y) : std::exp(y));
  }
  double slopeAt(double x) const {  // K per way
    const double y = first + span * x;
    return side * span * (map == Map::FromRoot ? 4.0 * y * y * y : std::exp(y));
  }
  double placeAt(double x) const { return steady() ? from + x * (to - from) : temperatureAt(x); }

  Map map;
  double from, to;                 // K, or s
  double root = 0.0;               // or where the wort would come to rest, K
  double side = 1.0;               // of it on which the stretch lies
  double first = 0.0, span = 0.0;  // of the fourth root, or of the logarithm
};

}  // namespace physics
