// SPDX-License-Identifier: GPL-3.0-or-later
// Forced flow in a coiled tube: the film between stream and wall.
#pragma once

#include "physics/units.hpp"
#include "physics/water.hpp"

namespace physics {

// Inside a coiled tube that water (or wort) runs through.
//
// Source: Gnielinski, Int. Chem. Eng. 16 (1976) 359, with Petukhov's friction factor, times
// 1 + 3.5 d/D for the coil (Coulson & Richardson's Chemical Engineering vol. 6); below Re 4000
// straight down to the laminar 3.66 at Re 2300 (Gnielinski's own interpolation, from memory).
// Range: Re 2300-1e6, Pr 0.5-200; +-10 % in smooth straight tubes. Below Re 2300 it is low: a
// coil's own swirl is left out. Between the two it falls so steeply that colder water, being
// thicker, may take less. Nothing flows: as laminar. `water` is taken at the stream's mean.
HeatTransferCoefficient tubeFilm(MassFlow flow, Length bore, Length coilDiameter,
                                 const WaterProperties& water);

// Through a tube's wall alone, from face to face. `bore` below `outer`.
ThermalConductance tubeWall(Length outer, Length bore, Length length, ThermalConductivity k);

}  // namespace physics
