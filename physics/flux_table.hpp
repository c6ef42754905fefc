// SPDX-License-Identifier: GPL-3.0-or-later
// A wall's heat flux remembered over a range of temperatures, for the simulation's inner loop.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <cstdint>

#include "physics/six_neighbours.hpp"
#include "physics/units.hpp"

namespace physics {

// A flux, and how it grows with the temperature of the wall's inside.
struct SlopedFlux {
  HeatFlux flux;
  HeatTransferCoefficient slope;
};

// Flux against the excess of a wall's inside over the room. What is remembered is flux over excess
// against the fourth root of excess: with that root natural convection is a smooth function, down
// to no excess at all. Below the room other laws hold, so that each side has nodes of its own, and
// so have the 4 K above it. Each node is asked for when it is first needed. How near it comes:
// HeatLossModel::tabulate.
class FluxTable {
 public:
  // An excess, found once for all tables that cover the same range. Precondition: it is covered.
  class Place {
   public:
    Place(const FluxTable& table, TemperatureDifference excess)
        : excess_(inKelvins(excess)),
          span_(excess_ < 0.0    ? kBelow
                : excess_ < kFar ? kNear
                                 : kAbove),
          root_(fourthRoot(std::abs(excess_))),
          step_(table.spans_[span_].step),
          near_(std::max(root_ - table.spans_[span_].from, 0.0) / step_, kNodes) {}

   private:
    friend FluxTable;
    double excess_;
    std::size_t span_;
    double root_;
    double step_;
    SixNeighbours near_;
  };

  // From `least`, which may lie below the room, to `most` above it. Forgets what it knew. No node
  // lies outside the range, so that a law may bend at its ends.
  void cover(TemperatureDifference least, TemperatureDifference most) {
    least_ = inKelvins(least);
    most_ = inKelvins(most);
    spans_ = {};
    place(kBelow, kNearest, -least_);
    place(kNear, std::max(least_, kNearest), std::min(most_, kFar));
    place(kAbove, std::max(least_, kFar), most_);
  }
  void forget() {
    for (Span& span : spans_) span.known = 0;
  }

  bool covers(TemperatureDifference excess) const {
    return least_ <= inKelvins(excess) && inKelvins(excess) <= most_;
  }

  // fluxAt(excess) is asked where nobody asked before. Precondition: the place was found in a
  // table that covers the same range as this one.
  template <class FluxAt>
  SlopedFlux at(const Place& place, const FluxAt& fluxAt) {
    Span& span = spans_[place.span_];
    const SixNeighbours& near = place.near_;
    if (((span.known >> near.first) & kSix) != kSix) {
      learn(span, near.first, place.span_ == kBelow ? -1.0 : 1.0, fluxAt);
    }
    const double conductance = near.valueOf(span.conductance.data());
    // The root grows with a quarter of itself over the excess, on either side of the room.
    const double bend = near.slopeOf(span.conductance.data()) * (0.25 * place.root_ / place.step_);
    return {wattsPerSquareMetre(conductance * place.excess_),
            perSquareMetreKelvin(conductance + bend)};
  }

 private:
  enum : std::size_t { kBelow, kNear, kAbove };
  static constexpr std::size_t kNodes = 29;
  static constexpr std::uint64_t kSix = 0b111111;
  static constexpr double kFar = 4.0;  // K
  // Nearer to the room a skin, solved to 1e-10 K, has too few digits; its conductance stands.
  static constexpr double kNearest = 1e-4;  // K

  struct Span {
    double from = 0.0;                       // fourth root of the first node's excess
    double step = 1.0;                       // to the next
    std::uint64_t known = 0;                 // a bit per node
    std::array<double, kNodes> conductance;  // W/(m2 K)
  };

  static double fourthRoot(double x) { return std::sqrt(std::sqrt(x)); }

  void place(std::size_t span, double least, double most) {
    if (!(most > least)) return;
    spans_[span].from = fourthRoot(least);
    spans_[span].step = (fourthRoot(most) - spans_[span].from) / static_cast<double>(kNodes - 1);
  }

  template <class FluxAt>
  static void learn(Span& span, std::size_t first, double sign, const FluxAt& fluxAt) {
    for (std::size_t i = first; i < first + 6; ++i) {
      if ((span.known >> i) & 1U) continue;
      const double root = span.from + span.step * static_cast<double>(i);
      const double excess = sign * root * root * root * root;
      span.conductance[i] = inWattsPerSquareMetre(fluxAt(kelvins(excess))) / excess;
      span.known |= std::uint64_t{1} << i;
    }
  }

  // Nothing is covered at first.
  double least_ = 1.0;
  double most_ = 0.0;
  std::array<Span, 3> spans_{};
};

}  // namespace physics
