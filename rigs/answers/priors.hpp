// SPDX-License-Identifier: GPL-3.0-or-later
// What nobody knows of a brew day beforehand, and how far off it may be: spreads with their
// sources.
#pragma once

#include <array>
#include <cstddef>

#include "rigs/plans/rig_plan.hpp"
#include "rigs/words/told.hpp"

namespace rigs {

enum class Unknown : std::size_t {
  ClosedLosses,  // what walls, lid, base and hose lose, by a factor
  OpenSurface,   // what it evaporates below the boil, by a factor
  Amount,        // what is poured and mashed, and its heat capacity, by a factor
  Power,         // that the wort gets, by a factor
  Room,          // K off
  Water,         // as drawn, K off
  RimGap,        // what a shut lid lets out, by a factor; nothing without a lid
  Absorption     // wort that stays in the lifted grain, by a factor; nothing without grain
};
inline constexpr std::size_t kUnknowns = 8;
template <class Enumerated>
constexpr std::size_t placeOf(Enumerated what) {
  return static_cast<std::size_t>(what);
}
// Whether its value is added, in kelvin; else the plan's own is multiplied by it.
constexpr bool isOffset(Unknown what) { return what == Unknown::Room || what == Unknown::Water; }

struct Prior {
  Unknown what;
  double median;  // of the factor, or K
  double spread;  // standard deviation of the factor's logarithm, or K
  Told because;   // "the plate may be 10 % under to 5 % over, ..."

  // `deviations` above the median, in standard deviations.
  double at(double deviations) const;
};
using Priors = std::array<Prior, kUnknowns>;

// In the order of Unknown; medians are 1 but where the plan's law is known to be off to one side.
// Wider where the plan leaves something at its default, narrower where it is stated.
Priors priorsOf(const RigPlan& rig);

}  // namespace rigs
