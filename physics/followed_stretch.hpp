// SPDX-License-Identifier: GPL-3.0-or-later
// A stretch of a passage, followed by Gauss nodes over temperature: how long it takes, what it
// takes of the water and by which path heat goes, anywhere on the way. Plain SI numbers.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <vector>

#include "physics/day.hpp"
#include "physics/gauss_nodes.hpp"
#include "physics/heat_loss.hpp"
#include "physics/heating_nodes.hpp"
#include "physics/phase.hpp"
#include "physics/phase_laws.hpp"
#include "physics/stretch.hpp"

namespace physics {

class FollowedStretch {
 public:
  // `tolerance` as PhaseSpan has it; the laws outlive it.
  FollowedStretch(DayPhase& laws, double tolerance) : laws_(laws), tolerance_(tolerance) {}

  // Follows it from `before`, of which it may take no more than `timeLeft`. Where on the way it
  // must be divided to be followed closely enough; nothing if it was, and only then the rest holds.
  std::optional<double> divisionOf(const Stretch& stretch, const PhaseState& before,
                                   double timeLeft);
  // False where the laws could not be followed at all: the wort comes to rest or turns round on the
  // way, or nearly boils away.
  bool settled() const { return settled_; }
  // As it was followed: where the wort slows down, by another map.
  const Stretch& stretch() const { return stretch_; }

  double lasts() const { return nodes_->sum(lasts_); }  // s
  double lastsTo(double x) const { return nodes_->integralTo(x, lastsSeries_); }
  // By when that many seconds have gone, to about the square of `nearly`.
  double placeAfter(double time, double guess, double nearly) const;
  Temperature wortAt(double x) const;
  Mass waterAt(double x) const;
  // `before` as it is at x: all accounts, water and temperature.
  PhaseState stateAt(double x) const;
  // Those up to x, after what came before.
  void addNodes(double x, std::vector<HeatingNodes::Node>& nodes) const;
  // A point of a curve there, without its time; after learnCurve().
  void learnCurve();
  CurvePoint curveAt(double x) const;

 private:
  using Values = GaussNodes::Values;
  // How the wort stands at one node.
  struct Node {
    HeatLossModel::AtTemperature at;
    Rates rates;
    double perWay;  // K: how temperature goes with the way
  };
  void place(std::size_t count);
  void placeNode(std::size_t node);
  bool firstPass();
  bool rate(std::size_t node);
  bool slowsDown() const;
  Stretch towardsRest() const;
  bool settle(double nearly);
  void guessWater(std::size_t node);
  std::optional<double> bend();
  std::optional<double> bendBetween(double from, double to, std::size_t which);
  double seamAt(double x, std::size_t which);
  double unseen() const;
  bool closeEnough(double timeLeft) const;

  DayPhase& laws_;
  double tolerance_;
  Stretch stretch_{};
  PhaseState before_{};
  const GaussNodes* nodes_ = nullptr;
  std::array<Node, GaussNodes::kMost> node_;
  Values water_{};        // kg
  Values lasts_{};        // s per way
  Values vapour_{};       // kg per way
  Values lastsSeries_{};  // Legendre's
  Values elementSeries_{}, vapourSeries_{};
  std::array<Values, kPathCount> lostSeries_{};
  bool settled_ = false;
  double moved_ = 0.0;      // kg, by the last pass
  double unsettled_ = 0.0;  // what the next may move
};

}  // namespace physics
