// SPDX-License-Identifier: GPL-3.0-or-later
// A coil of tube hung into hot wort, cold water running through it: its films and what it takes.
#pragma once

#include "physics/units.hpp"
#include "physics/water.hpp"

namespace physics {

struct Coil {
  Length outerDiameter;
  Length wallThickness;
  Length length;  // of tube in the wort
  ThermalConductivity conductivity;
  Length coilDiameter;  // of the helix, from tube's middle to tube's middle

  Length bore() const { return outerDiameter - 2.0 * wallThickness; }
  Area outerFace() const;
  // Of its wall alone.
  ThermalConductance wall() const;
  bool operator==(const Coil&) const = default;
};

enum class Stirring { Still, Stirred };

// Outside the tube, in wort that nothing moves but its own warmth.
//
// Source: Xin & Ebadian: Nu = 0.290 Ra^0.293 on the tube's diameter, helix upright. Ra 4e3-1e5 in
// air there; a brewer's coil has 1e5-1e6, so this extrapolates, and measured coefficients of coils
// in almost still water are a third to all of it: see kStillLeast. Water stands in for wort, whose
// viscosity is 1.3-2 times water's. Film properties at the midpoint, not below 10 C, where water's
// expansion vanishes.
HeatTransferCoefficient stillCoilFilm(Temperature wort, Temperature tube, Length diameter);

// Outside the tube in wort that is stirred, or moved by the coil itself being moved up and down: a
// cylinder across a stream.
//
// Source: Churchill & Bernstein, J. Heat Transfer 99 (1977) 300; +-20 %. At kStirredSpeed, an
// assumption; never below the still film.
HeatTransferCoefficient stirredCoilFilm(Temperature wort, Temperature tube, Length diameter);
// Of a spoon or a pump's return round a coil: own assumption, no source.
inline constexpr Velocity kStirredSpeed = metresPerSecond(0.15);
// The same law for any speed.
HeatTransferCoefficient crossFlowFilm(Temperature stream, Temperature tube, Length diameter,
                                      Velocity speed);

// Overall coefficients on the outer face that handbooks print for water against water with both
// sides almost still begin here: 340-455 W/(m2 K), water-copper-water (Engineering Toolbox), where
// submerged pipes in still water go up to 1300. The band of "not stirred" reaches from this to the
// law above.
inline constexpr HeatTransferCoefficient kStillLeast = perSquareMetreKelvin(400.0);

// What the coil does to wort of one temperature all round it.
struct CoilState {
  HeatTransferCoefficient overall;  // on the outer face
  ThermalConductance conductance;
  double effectiveness;  // 1 - exp(-UA/(w c)): the wort is of one temperature
  Power taken;
  Temperature outlet;  // of the water
};
// `inlet` 0 C or more and below the wort, flow positive; asserted. Fouling is left out.
CoilState coilAt(const Coil& coil, MassFlow water, Temperature inlet, Temperature wort,
                 Stirring stirring);
// With no more than this overall coefficient, however the law has it.
CoilState coilAtMost(const CoilState& byTheLaw, const Coil& coil, MassFlow water, Temperature inlet,
                     Temperature wort, HeatTransferCoefficient most);

}  // namespace physics
