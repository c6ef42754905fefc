// SPDX-License-Identifier: GPL-3.0-or-later
// What the same heat would take of an induction hob, a hot plate or a gas flame: a what-if, by
// published shares of what they use that reach a vessel. No other vessel, flame or time is
// followed.
#pragma once

#include <array>
#include <optional>

#include "physics/brewday.hpp"
#include "physics/units.hpp"

namespace rigs {

enum class OtherHeat { Induction, HotPlate, GasFlame };

// Of what is used, what reaches the vessel; 0 to 1.
struct ReachesVessel {
  OtherHeat by;
  double least, most;
};
// Induction 84 % (US Department of Energy, as quoted) and about 85 % (ENERGY STAR's text); hot
// plates 74-80 % (the same two); gas about 32 % (ENERGY STAR's text) and 40-44 % (DOE, as quoted),
// a home ring 58 % by measuring, outdoor burners up to about 60 %.
inline constexpr std::array<ReachesVessel, 3> kReachesVessel{{
    {OtherHeat::Induction, 0.84, 0.85},
    {OtherHeat::HotPlate, 0.74, 0.80},
    {OtherHeat::GasFlame, 0.32, 0.60},
}};

struct EnergyUsed {
  physics::Energy least, most;
};
// For the heat that the day's element gives the wort. Empty for a day that does not come to its
// end.
std::optional<EnergyUsed> usedInstead(const physics::BrewDay& day, const ReachesVessel& share);

// Propane that holds this much: 46.4 MJ/kg, lower heating value (tables, from memory).
physics::Mass propaneFor(physics::Energy energy);

}  // namespace rigs
