// SPDX-License-Identifier: GPL-3.0-or-later
// What nobody knows of a brew day beforehand, and how far off it may be: spreads with their
// sources.
#pragma once

#include <array>
#include <cstddef>

#include "physics/brewday.hpp"
#include "rigs/plans/rig_plan.hpp"
#include "rigs/words/told.hpp"

namespace rigs {

enum class Unknown : std::size_t {
  ClosedLosses,  // what walls, lid, base and hose lose, by a factor
  OpenSurface,   // what it evaporates below the boil, by a factor
  Amount,        // what is poured and mashed, and its heat capacity, by a factor
  Power,         // that the wort gets, by a factor
  Room           // K off
};
inline constexpr std::size_t kUnknowns = 5;

struct Prior {
  Unknown what;
  double median;  // of the factor, or K
  double spread;  // standard deviation of the factor's logarithm, or K
  Told because;   // "the plate may be 10 % under to 5 % over, ..."
};

// In the order of Unknown; medians are 1 but where the plan's law is known to be off to one side.
std::array<Prior, kUnknowns> priorsOf(const physics::Rig& rig);

}  // namespace rigs
