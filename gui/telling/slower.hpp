// SPDX-License-Identifier: GPL-3.0-or-later
// Why one rig heats longer than another, told from their ledgers: no simulation is run for it.
#pragma once

#include <cstddef>
#include <vector>

#include "gui/telling/case.hpp"

namespace gui::telling {

enum class Delay { Power, Warmed, Surface, Walls, Lid, Base, Hose };

struct DelayPart {
  Delay why;
  physics::Time time;  // below zero: saved
};

// Heating, from strike water to the boil without mash-in and rests, takes the heat that is asked
// for over the heat that comes per hour. The difference of two such quotients, parted evenly
// between what changes above and what changes below the line (own, as Shapley (1953) parts a gain):
// the parts add up to the difference to what a ledger misses.
std::vector<DelayPart> delayOf(const physics::BrewDay& slow, const physics::BrewDay& quick);
// In those stages.
physics::Time heatingTime(const physics::BrewDay& day);

// "(b) heats 38 min longer than (d): 21 min for less power, 12 min through the walls." of the
// slowest and the quickest that come to the boil; nothing where they are a minute apart, or alone.
std::vector<rigs::Told> slowerText(const Case& of);

}  // namespace gui::telling
