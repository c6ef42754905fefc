// SPDX-License-Identifier: GPL-3.0-or-later
// How long does it chill? The finished wort of a day, down to its pitching temperature: by the
// rig's chiller, and by the room alone.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "physics/brewday.hpp"
#include "physics/chilling.hpp"
#include "physics/coil.hpp"
#include "physics/exchanger.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

// One way of chilling, from the moment it begins. Times are empty where it never gets there, or
// does not have to: beyond the pitching temperature water is shut off.
struct ChillWay {
  std::optional<physics::Time> toSixty, toHotHolding, toForty, toTwentyOne, toGoal;
  physics::Volume water{};  // that ran through, until it gets there
  // Of that water: the first of it, and all of it together.
  std::optional<physics::Temperature> firstOutlet, meanOutlet;
  std::optional<physics::HeatTransferCoefficient> overall;  // at the beginning, on the outer face
  std::optional<physics::Temperature> comesToRestAt;
  physics::ChillHeat heat;
  std::vector<physics::ChillPoint> curve;

  // 57 to 21 C, which food service allows 2 h for.
  std::optional<physics::Time> throughTheDanger() const;
};

// Once through a counterflow exchanger. `worst` and `best`: with its conductance off by
// physics::kExchangerScatter.
struct ExchangerPass {
  physics::OnePass likely, worst, best;
  physics::Time time;     // for all of the wort
  physics::Volume water;  // for that
  // Of wort, with which it leaves at the goal; empty where even the slowest does not.
  std::optional<physics::VolumeFlow> flowForGoal;
};

// A pitching temperature that nothing brings about here, and what would.
struct ChillRefusal {
  physics::Temperature warmestWater;
  physics::Mass ice;  // from the floor on
};

struct ChillAnswer {
  bool asked = false;  // for itself; else a part of something else
  bool isStated = false;
  physics::Temperature pitching, water, floor;
  physics::Temperature goal;  // the pitching temperature, or the floor where that is above it
  physics::Temperature boiled, begins;  // at the end of the boil, and of the hot stand
  physics::Volume wort;                 // at 20 C
  std::vector<physics::ChillPoint>
      stood;  // the hot stand, from the end of the boil; one point without
  std::optional<ChillWay> stirred, still, stillAtWorst;  // of a coil; `still` by the law
  std::optional<ExchangerPass> pass;
  ChillWay air;  // as the rig is planned, lid as in the mash
  bool inJacket = false;
  std::optional<ChillWay> airBare;  // a jacket taken off
  std::optional<ChillRefusal> refused;
  Chiller chiller;
};

// From the least to the most, as the rig is planned: stirred, still, in one pass or by air. Empty
// where it never gets there.
struct ChillSpan {
  physics::Time least, most;
};
std::optional<ChillSpan> chillSpan(const ChillAnswer& chill);
// As a sheet to brew by has it: in air a jacket is taken off.
std::optional<ChillSpan> chillSpanAsBrewed(const ChillAnswer& chill);
// All of it is through the exchanger, and still above the goal.
bool isTooWarmToPitch(const ChillAnswer& chill);

// What went in as the boil ended has done it; no way has times to anything warmer.
bool isColdAlready(const ChillAnswer& chill);

// Whether plan or rig say anything of chilling.
bool statesChilling(const Plan& plan, const RigPlan& rig);
bool statesChilling(const Plan& plan);  // of any of its rigs

// Null for a day without finished wort. A coil is chilled with the lid off. The coil is 60 % as
// wide as the kettle, its tube 0.8 mm thick, and a counterflow exchanger's hose 7 mm wider than its
// tube (assumptions: common practice, no source).
std::shared_ptr<const ChillAnswer> chillAnswer(const RigPlan& rig, const Plan& plan,
                                               const physics::BrewDay& day, bool asked);

}  // namespace rigs
