// SPDX-License-Identifier: GPL-3.0-or-later
// What a brew day came to, stage by stage.
#pragma once

#include <optional>
#include <vector>

#include "physics/batch.hpp"
#include "physics/energy_budget.hpp"
#include "physics/heat_loss.hpp"
#include "physics/rig.hpp"
#include "physics/units.hpp"

namespace physics {

enum class StageKind { Strike, MashingIn, Ramp, Rest, UnpluggedRest, HeatingToBoil, Boil };

struct CurvePoint {
  Time time;  // from the start of the day
  Temperature wort;
  Power element;
  ByPath<Power> lost;
  MassFlow vapour;
};

struct Stage {
  StageKind kind;
  Time begin, end;          // from the start of the day
  Temperature first, last;  // of the wort; `first` of MashingIn is the strike temperature
  Temperature mixed;        // right after mixing, MashingIn only
  std::optional<Temperature> goal;
  Volume hotFirst, hotLast;  // what fills the vessel, grain included, as hot as it is
  Mass evaporated;
  Ledger ledger;
  std::vector<CurvePoint> curve;  // empty unless asked for
};

// Extract (mass fraction) at which wort no longer boils but burns: counts as dry. Estimate.
inline constexpr double kThickestWort = 0.6;

enum class Outcome {
  Done,
  DoesNotReachStrike,
  DoesNotReachRest,
  DoesNotBoil,
  UncoversElement,  // or would boil dry, or to a syrup thicker than kThickestWort
  StrikeTooHot      // the strike water would have to boil
};

struct LevelsOff {
  Temperature at;  // where supply equals loss
  Temperature wanted;
  Power atWanted;  // what would be lost there: the least power that gets there
};

struct BoilFigures {
  Temperature temperature;
  Power net;                     // supply less everything but evaporation, at the start
  MassFlow evaporation;          // mean over the boil
  VolumeFlow coldBoilOff;        // by which the wort's volume at 20 C falls
  double shareOfPreBoilPerHour;  // of the cold volume before the boil
  HeatFlux netPerSurface;        // net over the whole mouth
};

struct BrewDay {
  Outcome outcome = Outcome::Done;
  std::optional<LevelsOff> levelsOff;
  ElectricalLoad electrical;
  Volume water;              // poured, at 20 C
  Temperature strike;        // 0 K without grain
  Temperature boilingPoint;  // of the wort, here
  std::vector<Stage> stages;
  Ledger total;
  Volume preBoilCold, preBoilHot;  // wort after the grain is lifted: at 20 C; as hot as it is
  Volume resultCold, resultHot;    // after the last stage
  double preBoilGravity = 1.0, resultGravity = 1.0;  // 20/20
  Volume fullest;                                    // the most that ever stood in the vessel
  Volume lowest;                                     // the least with the element on
  std::optional<BoilFigures> boil;
  // Heat the vessel must get to start boiling and to go on, lids as stated for either; known
  // once the wort is ready to be heated.
  std::optional<Power> leastToBoil;

  Time duration() const { return stages.empty() ? seconds(0.0) : stages.back().end; }
  const Stage* find(StageKind kind) const;  // the first of its kind, or nullptr
};

struct SimulationOptions {
  bool curves = false;
  double relativeTolerance = 1e-9;   // of the integrator, 1e-13 to 1e-5
  Mass waterGuess = kilograms(0.0);  // where a wanted volume leaves the water open; 0: no idea
};

}  // namespace physics
