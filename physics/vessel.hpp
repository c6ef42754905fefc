// SPDX-License-Identifier: GPL-3.0-or-later
// A kettle: its shape, what it is made of and wrapped in, and what it stands on.
#pragma once

#include <vector>

#include "physics/units.hpp"
#include "physics/walls.hpp"

namespace physics {

// What covers a metal face, from the metal outwards, and how its outermost face radiates.
struct Covering {
  std::vector<Layer> insulation;  // empty: bare metal
  double emissivity = 0.3;        // 0-1, of the outermost layer

  bool operator==(const Covering&) const = default;
};

// What the base stands on: either legs with room air beneath, or something solid whose
// insulance per base area is stated.
struct Support {
  bool onLegs = true;
  ThermalInsulance solid = squareMetreKelvinsPerWatt(0.0);

  bool operator==(const Support&) const = default;
};
// A table top: down through the board into still air, and sideways along the board, which is a
// disk fin cooled on both faces outside the base; its foot is at the temperature halfway through
// the board under the base. Surface films 1/0.17 below and 1/0.10 above, W/(m2 K) (ISO 6946, from
// memory). Own derivation; the heat the wood soaks up in the first hour is left out.
Support onTable(Length vesselDiameter, Length thickness, ThermalConductivity k);
// A thick floor: an isothermal disk on a half-space, S = 2 D (shape-factor tables, from memory).
Support onThickFloor(Length vesselDiameter, ThermalConductivity k);

// What a lid that lies on a rim lets out all round, as an open share of the mouth: no such lid
// closes better. From one small electric pot (E. Otiato, temperature-control; tests/physics/
// cooking_pot_test.cpp), whose size, power, lid's cover and Shah's factor were fitted anew, within
// their edges, for each share tried. Its litre boiled at 50 to 250 W, the runs that come nearest
// the boil with little power, fits best with 0.03 (from 0.013 to 0.06 not worse by more than their
// scatter); its eight rows of heating times with 0, up to 0.05 not worse; its step test at 20 W
// with 0, up to 0.03. The three sums of squares together are least at 0.02. Cooling mugs and pots
// on a flame tell nothing. No kettle of 20 L and more was measured. A lid that is clamped lets out
// less; one that is bent, or lifted by a hose or a spoon, more.
inline constexpr double kRimGap = 0.02;
inline constexpr double kTightestRimGap = 0.01;
inline constexpr double kLoosestRimGap = 0.05;

// The share of the mouth that is open, by stage of the day: 0 closed, 1 no lid.
struct LidUse {
  double strike = 1.0, mash = 1.0, heating = 1.0, boil = 1.0;

  bool operator==(const LidUse&) const = default;
};

struct Vessel {
  Length innerDiameter;
  Length height;
  Length wallThickness;
  ThermalConductivity wallConductivity;
  Mass mass;  // shell without lid: what stands in the wort's heat
  SpecificHeat specificHeat;
  Covering side, base, lid;
  LidUse open;
  Support support;

  bool operator==(const Vessel&) const = default;
};
Area crossSection(const Vessel& vessel);
Volume capacity(const Vessel& vessel);
// The share of the shell that stands in wort filled to `fill`: base and wetted side.
HeatCapacity wettedHeatCapacity(const Vessel& vessel, Length fill);

}  // namespace physics
