// SPDX-License-Identifier: GPL-3.0-or-later
// What a brew day came to, stage by stage.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "physics/batch.hpp"
#include "physics/energy_budget.hpp"
#include "physics/heat_loss.hpp"
#include "physics/rig.hpp"
#include "physics/units.hpp"

namespace physics {

enum class StageKind {
  Strike,
  MashingIn,
  Ramp,
  Rest,
  UnpluggedRest,
  Draining,
  HeatingToBoil,
  Boil
};

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

// The first three get to the end of the day, the others stop before it.
enum class Outcome {
  Done,           // enough heat to roll from when the clock of the boil starts
  Steams,         // too weak for that: it steams instead, and rolls later if at all
  StaysFarBelow,  // too weak even to come within kFarBelow of boiling by the end
  DoesNotReachStrike,
  DoesNotReachRest,
  UncoversElement,  // or would boil dry, or to a syrup thicker than kThickestWort
  StrikeTooHot      // the strike water would have to boil
};
constexpr bool getsToTheEnd(Outcome outcome) { return outcome <= Outcome::StaysFarBelow; }
// How far below boiling no brewer would call it a boil. Own choice: that is about where an open
// surface gives off a fifth less than at boiling, which is as much as Shah's law may be wrong.
inline constexpr TemperatureDifference kFarBelow = kelvins(5.0);

struct LevelsOff {
  Temperature at;  // where supply equals loss; of a boil, as full as when its clock starts
  Temperature wanted;
  Power atWanted;  // the least power that gets there
};

// What rinsing the lifted grain did, all at once.
struct Rinsed {
  Time at;              // from the start of the day
  Temperature before;   // of the wort in the vessel
  Temperature runsOff;  // of what runs off the grain
  Temperature mixed;    // of the wort with that in it
  Volume cold, hot;     // of the wort right after, at 20 C and as hot as it is
  double gravity;       // 20/20
  double extract;       // mass fraction
  Mass gained, left;    // extract washed out of the grain, and what it still holds
  // If the water met none of the wort in the grain, and if it mixed with all of it.
  double gravityIfNone, gravityIfAll;
  Mass gainedIfAll;
  Energy heat;                     // of the water, from as drawn to as poured
  std::optional<Energy> fromWall;  // that heated it; nothing: not by electricity
  std::optional<Time> heating;     // how long; nothing: not by electricity, or of unknown power
};

// What an addition to the boil did.
struct Added {
  std::size_t which;          // of Batch::additions
  Time at;                    // from the start of the day
  Temperature before, mixed;  // of the wort; mixed at once and wholly
  Energy took;                // from its own temperature to `mixed`, out of the wort and its vessel
  Volume coldBefore, hotBefore;
  double gravityBefore;
  std::optional<Time> backIn;  // until the wort rolls again; nothing: not before the boil ends
  Volume cold, hot;            // of the wort right after, at 20 C and as hot as it is
  double gravity;              // 20/20
};

// Of whatever stands for the boil, whether it rolls or not.
struct BoilFigures {
  Temperature temperature;       // at the end, what additions take of it apart
  Power net;                     // supply less everything but evaporation, at the start
  MassFlow evaporation;          // mean over the boil
  VolumeFlow coldBoilOff;        // by which the wort's volume at 20 C falls, additions apart
  double shareOfPreBoilPerHour;  // of the cold volume before the boil
  HeatFlux netPerSurface;        // net over the whole mouth
  Time lasted;
  // Of which it was at boiling. A boil with hardly enough heat takes a while over the last fraction
  // of a kelvin; one with too little may come to it as its level falls; additions take it off.
  Time rolled;
};

// Why the wort is not as much as wanted.
struct UnmetWish {
  Volume missing;   // negative: too much is left
  Outcome because;  // what stops this day, or the one with the water that the wish would need
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
  // Wort, at 20 C and as hot as it is: when the grain is lifted and not yet rinsed, when the clock
  // of the boil starts, and after the last stage.
  Volume liftedCold, liftedHot;
  Volume preBoilCold, preBoilHot;
  Volume resultCold, resultHot;
  double liftedGravity = 1.0, preBoilGravity = 1.0, resultGravity = 1.0;  // 20/20
  double liftedExtract = 0.0, resultExtract = 0.0;  // mass fractions, up to kThickestWort
  Volume fullest;                                   // the most that ever stood in the vessel
  Volume lowest;                                    // the least with the element on
  std::optional<BoilFigures> boil;
  std::optional<Rinsed> rinsed;
  std::vector<Added> additions;  // in the order they went in
  // The least heat the vessel must get for its wort, as it is once the grain is lifted, to come to
  // the boil and roll from when its clock starts, lids as stated for either: the same whatever heat
  // it gets now. The day rolls if it gets that much.
  std::optional<Power> leastToBoil;
  std::optional<UnmetWish> unmet;  // where wort is wanted

  Time duration() const { return stages.empty() ? seconds(0.0) : stages.back().end; }
  // Whether it got to its end, rolling or not.
  bool finished() const { return getsToTheEnd(outcome); }
  // Whether the wort is at boiling when the clock of the boil starts.
  bool startsBoiling() const;
  const Stage* find(StageKind kind) const;  // the first of its kind, or nullptr
  // Of what is heated to the boil.
  double gravityToBoil() const { return rinsed ? rinsed->gravity : liftedGravity; }
  double extractToBoil() const { return rinsed ? rinsed->extract : liftedExtract; }
};

// How a day is followed from one moment to the next.
enum class Method {
  OverTemperature,  // by quadrature where all is a function of temperature, else in steps
  StepsInTime       // all of it: a second opinion, several times slower
};

struct SimulationOptions {
  bool curves = false;
  double relativeTolerance = 1e-9;   // 1e-13 to 1e-5
  Mass waterGuess = kilograms(0.0);  // where a wanted volume leaves the water open; 0: no idea
  // Whether leastToBoil follows other heatings with other powers to their end; otherwise it is
  // taken for as full as this day is when the clock of its boil starts, which is the same where
  // this power is about the least, and within some 2 % elsewhere.
  bool leastForAnyPower = true;
  // No further than the end of the mash: of the rest of the day nothing is told then.
  bool untilMashEnds = false;
  Method method = Method::OverTemperature;
};

}  // namespace physics
