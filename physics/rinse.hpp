// SPDX-License-Identifier: GPL-3.0-or-later
// Water poured over lifted grain: what of the wort in it the water takes along.
#pragma once

#include "physics/batch.hpp"
#include "physics/units.hpp"

namespace physics {

// As water and extract; masses >= 0.
struct WortMasses {
  Mass water, extract;

  Mass total() const { return water + extract; }
};
Volume coldVolume(const WortMasses& wort);  // at 20 C

struct RinsedGrain {
  WortMasses runsOff;  // into the vessel
  WortMasses held;     // by the grain, then
};

// `held` is the wort that the lifted grain holds. The share `reached` (0-1) of it mixes wholly with
// the rinsing water; the grain then holds as much as before, by volume at 20 C, and the rest runs
// off.
//
// Own: a balance of masses for one ideal contact, as of a washed filter cake that is stirred up
// with its wash water and drained again. At 0 the water runs past and all extract stays; at 1 it
// mixes with all. Water that trickles slowly and evenly pushes wort before it and may get more out
// than that; water that runs down the side of a bag gets less.
RinsedGrain rinsedGrain(const WortMasses& held, Mass rinse, double reached);

// The heat that brings the water from as drawn to as poured, 0 where it is drawn as hot, and what
// that takes from the wall; nothing where it is not heated by electricity.
Energy heatOfRinse(const Rinse& rinse, Temperature drawn);
std::optional<Energy> fromWallForRinse(const Rinse& rinse, Temperature drawn);
// How long heating it takes; nothing where power or electricity is not stated.
std::optional<Time> timeToHeatRinse(const Rinse& rinse, Temperature drawn);

}  // namespace physics
