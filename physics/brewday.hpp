// SPDX-License-Identifier: GPL-3.0-or-later
// One rig's brew day: strike, mash, heating, boil, stage by stage.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "physics/element.hpp"
#include "physics/element_group.hpp"
#include "physics/energy_budget.hpp"
#include "physics/heat_loss.hpp"
#include "physics/mash.hpp"
#include "physics/units.hpp"
#include "physics/vessel.hpp"

namespace physics {

// A rest of a mash held by a controller; the first is reached by mashing in, each further one by
// a ramp at full power.
struct MashRest {
  Temperature temperature;
  Time duration;

  bool operator==(const MashRest&) const = default;
};
struct HeldMash {
  std::vector<MashRest> rests;

  bool operator==(const HeldMash&) const = default;
};
// A mash left alone: element off, lid as stated for the mash.
struct UnpluggedMash {
  Temperature start;
  Time duration;

  bool operator==(const UnpluggedMash&) const = default;
};

// Either the cold water poured in, or the cold wort wanted after the boil.
struct PouredWater {
  Volume atTwentyDegrees;

  bool operator==(const PouredWater&) const = default;
};
struct WantedWort {
  Volume atTwentyDegrees;

  bool operator==(const WantedWort&) const = default;
};

struct Batch {
  std::variant<PouredWater, WantedWort> size;
  Grain grain;                 // mass 0: no mash, straight to the boil
  double extractYield = 0.72;  // kg of extract dissolved per kg of grain as weighed
  VolumePerMass displacement;  // of grain in the mash, about 0.67 L/kg
  VolumePerMass absorption;    // wort that stays in the lifted grain, at 20 C
  std::variant<HeldMash, UnpluggedMash> mash;
  Time mashingIn;  // grain going in, lid off, element off
  Time boil;

  bool operator==(const Batch&) const = default;
};

struct Place {
  Temperature room;
  double relativeHumidity = 0.5;  // 0-1
  Pressure pressure;              // sets the boiling point
  Temperature water;              // as drawn
  Velocity draught;

  bool operator==(const Place&) const = default;
};

struct Rig {
  std::string name;
  Vessel vessel;
  Element element;
  Supply supply;
  Hose hose;                        // wort is pumped through it during the mash only
  double boilPower = 1.0;           // share of the elements' power used in the boil
  double evaporationFactor = 1.0;   // on the open surface's law; 1 until calibrated
  std::optional<Feed> second = {};  // an element on another circuit, no higher than the first

  bool operator==(const Rig&) const = default;
};

// Both circuits' heat together, where there are two; see together().
ElectricalLoad electricalLoad(const Rig& rig);

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

// Preconditions (asserted where cheap): the rig's quantities positive, fractions 0-1, rests
// between the ice point and boiling, at most 48 h a stage. A result with an outcome other than
// Done ends with the stage that could not be finished.
BrewDay simulate(const Rig& rig, const Batch& batch, const Place& place,
                 const SimulationOptions& options = {});

// Boiling point of a wort of this extract (mass fraction) at a pressure.
Temperature boilingPoint(double extract, Pressure pressure);

}  // namespace physics
