// SPDX-License-Identifier: GPL-3.0-or-later
// The ledger: what came in, where it is, and where it went.
#pragma once

#include "physics/heat_loss.hpp"
#include "physics/units.hpp"

namespace physics {

// One stage's or one day's account. Stored heat counts from the cold start: water from the
// temperature it was drawn at, vessel from the room's, grain from its own.
//
// `element`, the path accounts and `steam` are integrals along the simulation; `wort`, `grain`
// and `vessel` come from the temperatures and masses at its ends. That they agree is the check.
struct Ledger {
  Energy element;  // heat the element gave the vessel
  Energy cable;    // heat along the cable
  Energy pump;     // a pump's, where its heat is stated: what of it ended in the wort
  Energy slaking;  // given off by grain on wetting
  Energy apart;    // what heated rinsing water outside the vessel: of a day's account only
  Energy rinsed;   // came in with rinsing water, above the cold start
  Energy brought;  // came in with additions to the boil, above the cold start: negative if colder

  Energy wort;    // change stored in water, later wort
  Energy grain;   // change stored in grain while it is in the vessel
  Energy vessel;  // change stored in the wetted metal
  Energy lifted;  // left the vessel with the spent grain and what clings to it

  ByPath<Energy> lost;  // Path::Evaporation: the latent part
  Energy steam;         // what evaporated water carried above its cold start

  Energy fromWall() const { return element + cable + pump + apart; }
  // Into the vessel.
  Energy supplied() const { return element + pump + slaking + rinsed + brought; }
  Energy stored() const { return wort + grain + vessel; }
  Energy accounted() const { return stored() + lifted + lost.total() + steam; }
  // Zero if every joule is accounted for.
  Energy residual() const { return supplied() - accounted(); }
  // |residual| over what moved: the supply, or the losses of an unplugged stage.
  double imbalance() const;

  Ledger& operator+=(const Ledger& other);
};

}  // namespace physics
