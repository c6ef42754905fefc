// SPDX-License-Identifier: GPL-3.0-or-later
// Water leaving an open hot surface, or crossing the headspace to a lid.
#pragma once

#include "physics/air.hpp"
#include "physics/units.hpp"

namespace physics {

// Evaporation from a quiet hot surface at bulk temperature `water` into air.
//
// Source: Shah, ASHRAE Trans. 1992-2014; HVAC&R Research 2002: the larger of the natural form
// 35 rho_w (rho_r - rho_w)^(1/3) (W_w - W_r) kg/(m2 h), with rho = dry air per m3 of moist air,
// and the forced form 5e-5 (p_w - p_r) kg/(m2 h). Water is bounded at boiling, where
// rho_w W_w becomes the vapour density.
// Range: water 7-94 C, air 6-35 C; stated mean deviation 18 % over 11 data sets. Never
// multiplied by a Stefan factor: the bulk temperature already stands for the cooler skin.
// Air moister than the surface gives 0 (condensation on wort is not modelled).
MassFlux openSurfaceEvaporation(Temperature water, const MoistAir& room);
// With a draught over the surface: the forced form raised by the air speed, Carrier 1918 as in
// ASHRAE: (0.089 + 0.0782 V)/0.089 times the still forced form, or the natural form if larger.
// V in m/s, not negative; asserted. No draught gives openSurfaceEvaporation.
MassFlux draughtyEvaporation(Temperature water, const MoistAir& room, Velocity draught);

// Air in touch with water: all that Shah's law asks of it, so that a caller who meets the same
// water again need not ask for it twice. Plain numbers in kg/m3 and Pa: the vapour's own density
// stands for rho W, because W alone is infinite at boiling.
struct SurfaceAir {
  double dryAir;
  double vapour;
  double vapourPressure;
};
SurfaceAir surfaceAir(Temperature water, Pressure p);
MassFlux draughtyEvaporation(const SurfaceAir& water, const MoistAir& room, Velocity draught);
// Both of its forms, of which the larger counts, in kg/(m2 h). The forced one is negative in air
// moister than the surface, the natural one then 0.
struct ShahsForms {
  double natural, forced;
  MassFlux larger() const;
};
ShahsForms shahsForms(const SurfaceAir& water, const MoistAir& room, Velocity draught);

// How the wort under an open surface moves.
enum class Motion {
  Still,   // by its own convection, heated or not
  Pumped,  // a pump's return, or a paddle, renews the surface
  Rolling  // boiling
};
// By what the still law's evaporation is to be multiplied.
//
// Pumped: a surface left to itself is cooler than the wort below, by 4 K at 66 C; Shah's law is of
// such. Renewed it is as hot as the wort, which alone makes 1.2 of it at 66 C (vapour through still
// air with Stefan's flow, from the bulk's temperature and from the skin's). Waves add to that: up
// to 1.7 of a flat surface's (abstract on heated water with waves in free convection); agitated
// tanks are put at 1.25 to 1.65. 1.4 is the middle, range 1.2 to 1.7 at 50 to 80 C; own choice. The
// air's convection and the radiation count from the bulk's temperature anyway and stay. Rolling: 1,
// for what leaves in the boil follows from the heat, not from this law; it tells only the least
// power that keeps a roll, which must be what the heating just before needed. Heated, up to that
// edge, wort is Still: a stock pot on a hob lost as the still law says up to 96 C
// (tests/physics/stock_pot_test.cpp).
inline constexpr double kPumpedRenewal = 1.4;
inline constexpr double kLeastPumpedRenewal = 1.2;
inline constexpr double kMostPumpedRenewal = 1.7;
constexpr double surfaceRenewal(Motion motion) {
  return motion == Motion::Pumped ? kPumpedRenewal : 1.0;
}

// The moist air that stands between rim and wort of an open vessel, and warms the wall there.
//
// It is taken as saturated at half of the wort's vapour pressure and half of what saturates air at
// the room's temperature: two alike resistances, from the wort to it and from it over the rim. It
// condenses on the wall by the analogy of heat and mass at Lewis number 1: a film of still air
// times 1 + latent over sensible heat, ten times the air's own over wort of 66 C. Own estimate. The
// half is supported by one measurement: what insulating the side of a small open pot gained at its
// stall (tests/physics/cooking_pot_test.cpp). With a third or two thirds in its place the open dry
// wall of a steel kettle loses a fifth less or a sixth more; with the film halved or doubled 7 %
// less or 5 % more at 66 C. Range: wort and room above -22 C; the vapour pressure of wort is
// bounded at boiling. A wall that draws much out of it lowers it: HeatLossModel sees to that.
struct WellAir {
  Temperature temperature;
  HeatTransferCoefficient film;
};
WellAir wellAir(const SurfaceAir& wort, Pressure saturatedInRoom, SpecificEnergy latent,
                Pressure p);

// Vapour crossing a closed headspace from water to a wetter, cooler lid underside: the natural
// form of Shah's law with the "room" saturated at the lid's temperature. Zero if the lid is not
// colder. Own application of the law, no published check; the outer film controls anyway.
MassFlux headspaceCondensation(Temperature water, Temperature lid, Pressure p);
// The same, and how it changes with the lid's temperature; and how many kelvins hotter the lid
// could be until no air rises any more, there going by their cube root; infinite where none does.
struct SlopedMassFlux {
  MassFlux flux;
  double perKelvinOfLid;  // kg/(m2 s K)
  TemperatureDifference rises;
};
SlopedMassFlux headspaceCondensation(const SurfaceAir& water, Temperature lid, Pressure p);

}  // namespace physics
