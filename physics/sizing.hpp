// SPDX-License-Identifier: GPL-3.0-or-later
// Inverse questions, answered by root finding over the same simulation.
#pragma once

#include <optional>

#include "physics/brewday.hpp"
#include "physics/units.hpp"

namespace physics {

// What stopped a search, or what binds the answer.
enum class Limit {
  None,           // the wish itself binds: nothing else in the way
  Circuit,        // volts times amperes of the supply
  Vessel,         // the fullest moment of the day, head-space included
  BoilVigour,     // the wanted boil-off
  Boiling,        // boiling at all
  SmallestBatch,  // not even the smallest batch that covers the element
  TimeAllowed     // not even a very strong element is fast enough
};

// Element heat (delivered into the vessel, after the cable) that does what was asked. `power` is
// empty if no power up to `kStrongestElement` does. `onThisSupply` says whether the rig's own
// supply can deliver it within its rated current.
struct PowerAnswer {
  std::optional<Power> power;
  bool onThisSupply = false;
  Limit stoppedBy = Limit::None;
  Mass water{};  // poured with that power, for the next search to begin with; 0: not known
};
inline constexpr Power kStrongestElement = watts(60e3);

// Least power that gets through the whole day and rolls: the least whose simulated day is
// Outcome::Done, which stands a millionth above what BrewDay::leastToBoil says with that power, and
// with any other if it pours the same water. The other answers are never less: a wort that comes to
// the boil soon enough under its lid may die once the lid is off.
PowerAnswer powerToBoilAtAll(const Rig& rig, const Batch& batch, const Place& place);

// How far the law of the open surface may be wrong, as a share: Shah's mean deviation over 11 data
// sets is 18 %.
inline constexpr double kEvaporationScatter = 0.2;
// The least power that boils, and what it would be if less or more than the law says evaporated.
struct EdgeOfTheBoil {
  Power least;  // powerToBoilAtAll
  Power ifLessEvaporates, ifMoreEvaporates;

  // Whether a rig that gets this much rolls or steams, nobody can say.
  bool holds(Power delivered) const {
    return ifLessEvaporates <= delivered && delivered < ifMoreEvaporates;
  }
};
// None where no power boils, or boils with more evaporation. `atAll` as below.
std::optional<EdgeOfTheBoil> edgeOfTheBoil(const Rig& rig, const Batch& batch, const Place& place,
                                           const PowerAnswer* atAll = nullptr);

// The other searches begin there. `atAll` is that answer where it is known, for the very same rig,
// batch and place; with it they need not find it first, and give the same.
// Power that takes the lifted wort to the boil within `within`.
PowerAnswer powerToBoilWithin(const Rig& rig, const Batch& batch, const Place& place, Time within,
                              const PowerAnswer* atAll = nullptr);
// Power that takes the poured water to strike within `within`. None if there is no grain.
PowerAnswer powerToStrikeWithin(const Rig& rig, const Batch& batch, const Place& place, Time within,
                                const PowerAnswer* atAll = nullptr);
// Power that boils off this share of the pre-boil volume per hour.
PowerAnswer powerForBoilOff(const Rig& rig, const Batch& batch, const Place& place,
                            double sharePerHour, const PowerAnswer* atAll = nullptr);

// The largest cold volume of finished wort, water and grain in proportion, that this rig brings to
// a boil of at least `sharePerHour`, leaving `headspace` of the vessel free. A boil harder than
// asked is taken as turned down to `sharePerHour`.
struct BatchAnswer {
  std::optional<Volume> wort;
  Limit stoppedBy = Limit::None;
};
BatchAnswer largestBatch(const Rig& rig, const Batch& batch, const Place& place,
                         double sharePerHour, double headspace);

// For a rig that levels off anywhere on its way through the boil: what would change it, each alone.
// What is said to boil gets through every stage.
struct WhatWouldBoil {
  std::optional<Power> power;               // this much delivered, all else equal
  std::optional<double> openFraction;       // lid over the mouth down to this opening, all day
  std::optional<Temperature> levelWithLid;  // with the mouth closed, if that does not boil either
  // Where there is a jacket to put on: that it boils then, or where it still levels off.
  bool jacketBoils = false;
  std::optional<Temperature> levelWithJacket;
};
// `jacketed` is the same rig with the jacket it might get, or nullptr.
WhatWouldBoil whatWouldBoil(const Rig& rig, const Rig* jacketed, const Batch& batch,
                            const Place& place);

// The same rig with one element that delivers `power` on the rig's first supply.
Rig withDelivered(const Rig& rig, Power power);
// The same batch in the same proportions for another volume.
Batch scaled(const Batch& batch, double factor);

}  // namespace physics
