// SPDX-License-Identifier: GPL-3.0-or-later
// Everything a plan's questions ask, computed once: the one result that terminal, window, report
// and JSON show. Nobody further out computes anything.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "physics/brewday.hpp"
#include "physics/jacket.hpp"
#include "physics/sizing.hpp"
#include "rigs/answers/circuit_answer.hpp"
#include "rigs/answers/helps.hpp"
#include "rigs/answers/night.hpp"
#include "rigs/answers/published_airflows.hpp"
#include "rigs/answers/sure.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

struct ChillAnswer;  // rigs/answers/chilling.hpp
struct WortAnswer;   // rigs/answers/wort.hpp

struct SizingAnswer {
  physics::ElectricalLoad asIs;  // the rig's element on the rig's supply
  physics::Power mostOnCircuit;  // heat from the largest element within the rated current
  physics::PowerAnswer toBoilAtAll;
  physics::PowerAnswer toBoilWithin;
  physics::PowerAnswer toStrikeWithin;
  physics::PowerAnswer forBoilOff;
  physics::BatchAnswer largest;           // with the element as it is
  physics::BatchAnswer largestOnCircuit;  // with the largest element the circuit carries
};

// The room's air over the day, and what would hold its humidity at the planned level.
struct RoomAnswer {
  physics::RoomDay day;
  physics::MoistAir start, outdoors;
  std::optional<physics::VolumeFlow> airflow;  // at the most vapour; empty if outdoors is no drier
  std::optional<physics::VolumeFlow> airflowBehindHood;  // for what the hood does not take
  std::optional<physics::Time> closedFull;  // until a closed room would be full at the most vapour
  std::optional<physics::Temperature> windowFace;
  // Where it would level off if the most vapour went on; above 1 for more than the air can hold.
  // Empty for a closed room.
  std::optional<double> levelHumidity;
  physics::Volume fills;  // bone-dry air of the room that the day's vapour would fill
  std::vector<JudgedAirflow> published;  // against the airflow that holds, behind a stated hood
  physics::Power airHeat;  // leaves with the planned airflow when it is as warm as the room
};

struct RigAnswer {
  std::string name;
  physics::BrewDay day;
  // Clock time, see beginsAt(): all clocks of the rig, and its money by the hour, go by it.
  std::optional<physics::Time> begins;
  std::optional<physics::JacketEffect> jacket;          // if there is one to compare
  std::optional<NightAnswer> night;                     // of every plan that is left unplugged
  std::optional<SizingAnswer> sizing;                   // if asked for
  std::optional<physics::WhatWouldBoil> whatWouldBoil;  // if it levels off
  std::optional<physics::EdgeOfTheBoil> edge;           // if nobody can say whether it rolls
  std::optional<double> cost;                           // of the day, in the plan's currency
  CircuitAnswer circuit;
  std::optional<RoomAnswer> room;                 // if asked for
  std::vector<double> stageCosts;                 // in the order of the stages; or empty
  std::shared_ptr<const HelpsAnswer> helps = {};  // where somebody searched for what helps
  std::shared_ptr<const Bands> bands = {};        // where somebody waited for them
  std::shared_ptr<const SureAnswer> sure = {};    // where somebody asked; then with bands
  std::shared_ptr<const ChillAnswer> chill = {};  // if asked for or stated, of a finished day
  std::shared_ptr<const WortAnswer> wort = {};    // if asked for, of a finished day
};

struct Answers {
  std::vector<RigAnswer> rigs;                   // in the plan's order
  std::shared_ptr<const CircuitRules> ownRules;  // the plan's; verdicts point into them
};

// Figures: the day alone, without advice on what would help it, for who asks for thousands of days.
// Night: with its curve, whatever `curves` says. Circuit: the inverse questions about circuits too.
// Room: the room's air over the day. Chill: chilling after the boil, of plans that say nothing of
// it too. Wort: that, and what time and heat do to the wort.
enum class Depth { Figures, Day, DayAndJacket, Night, Circuit, Room, Chill, Wort, Everything };

// Curves fill the stages' time series, and with them the room's; with everything, they are for the
// pictures of every question, those about circuits too. Preconditions: a plan from readPlan without
// errors.
Answers answer(const Plan& plan, Depth depth, bool curves = false);

// The pieces of a rig's answer with everything, for who shows them one by one; each is what
// answer() has there.
//
// All but the largest batches. None of the powers depends on what the rig's element is rated.
// `known` has them for the same rig, batch, place and boil-off with another time that is wanted:
// what does not depend on that time is taken from there.
SizingAnswer powersNeeded(const RigPlan& rig, const Plan& plan,
                          const SizingAnswer* known = nullptr);
void addLargestBatches(SizingAnswer& sizing, const RigPlan& rig, const Plan& plan);
// For a day that levels off.
std::optional<physics::WhatWouldBoil> adviceFor(const RigPlan& rig, const Plan& plan,
                                                const physics::BrewDay& day);
// For a day whose boil is within the scatter of the law of the open surface.
std::optional<physics::EdgeOfTheBoil> edgeFor(const RigPlan& rig, const Plan& plan,
                                              const physics::BrewDay& day);

}  // namespace rigs
