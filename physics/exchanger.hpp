// SPDX-License-Identifier: GPL-3.0-or-later
// Exchangers by effectiveness and number of transfer units: what cold water takes from hot wort.
#pragma once

#include "physics/units.hpp"

namespace physics {

// Of the most that could pass, the share that does. `ntu` is UA over the smaller of the two
// streams' m c, `ratio` the smaller over the larger, 0-1. Textbook forms (Kays & London).
double mixedEffectiveness(double ntu);  // one side of one temperature: 1 - exp(-NTU)
double counterflowEffectiveness(double ntu, double ratio);

// Mixed pot of heat capacity `pot`, a coil of constant `conductance`, water of capacity flow
// `stream` that comes at `inlet`, nothing lost on the way:
// t = pot/(eps stream) ln((from - inlet)/(to - inlet)). `to` above `inlet`; asserted.
Time mixedChillTime(HeatCapacity pot, ThermalConductance conductance, ThermalConductance stream,
                    Temperature inlet, Temperature from, Temperature to);

// Ice at 0 C that takes this heat and leaves as water at `end`: q/(334 kJ/kg + c t). End 0-100 C.
Mass iceFor(Energy heat, Temperature end);

// Tube in hose: wort runs through the tube, water the other way in the ring round it.
struct TubeInHose {
  Length outerDiameter;  // of the tube
  Length wallThickness;
  Length length;
  ThermalConductivity conductivity;
  Length hoseBore;  // greater than the tube's diameter
  Length coilDiameter;

  bool operator==(const TubeInHose&) const = default;
};
struct HotStream {
  MassFlow flow;
  SpecificHeat specificHeat;
  Temperature inlet;
};
struct ColdStream {
  MassFlow flow;
  Temperature inlet;
};
struct OnePass {
  ThermalConductance conductance;
  double effectiveness;
  Power passed;
  Temperature hotOut, coldOut;
};
// In counterflow with a known conductance. Flows positive, hot above cold; asserted.
OnePass counterflowPass(ThermalConductance conductance, const HotStream& hot,
                        const ColdStream& cold);
// Conductance from the dimensions: tubeFilm() on both sides, the ring by its hydraulic diameter
// (hose bore less tube), at the streams' mean temperatures. Water stands in for wort. Films scatter
// by +-20 % or so, and a ring that lies off its middle is worse: kExchangerScatter.
OnePass counterflowPass(const TubeInHose& exchanger, const HotStream& hot, const ColdStream& cold);
inline constexpr double kExchangerScatter = 0.25;  // of the conductance; own judgement

}  // namespace physics
