// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/answers.hpp"

#include <cmath>

#include "rigs/answers/begins.hpp"
#include "rigs/answers/chilling.hpp"
#include "rigs/answers/pool.hpp"
#include "rigs/answers/wort.hpp"

namespace rigs {
namespace {

RoomAnswer roomAnswer(const Plan& plan, const physics::BrewDay& day) {
  const physics::Place& place = plan.place;
  const RoomPlan& asked = plan.room;
  RoomAnswer answer;
  answer.start = physics::moistAir(place.room, place.relativeHumidity, place.pressure);
  answer.outdoors = physics::moistAir(asked.outdoors, asked.outdoorHumidity, place.pressure);
  if (asked.window)
    answer.windowFace = physics::innerFace(*asked.window, place.room, asked.outdoors);
  answer.day = physics::roomOver(day,
                                 {.volume = asked.volume,
                                  .start = answer.start,
                                  .outdoors = answer.outdoors,
                                  .airflow = asked.airflow,
                                  .captured = asked.captured},
                                 answer.windowFace);
  const physics::MoistAir held = physics::moistAir(place.room, asked.holdHumidity, place.pressure);
  const physics::MassFlow most = answer.day.peakVapour;
  if (most > physics::kilogramsPerHour(0.0)) {
    answer.airflow = physics::airflowToCarry(most, held, answer.outdoors);
    answer.airflowBehindHood =
        physics::airflowToCarry((1.0 - asked.captured) * most, held, answer.outdoors);
    answer.closedFull = physics::timeToSaturation(most, asked.volume, answer.start);
  }
  answer.published = judgedAirflows(
      asked.volume, asked.captured > 0.0 ? answer.airflowBehindHood : answer.airflow);
  answer.fills = physics::volumeSaturatedBy(answer.day.released, place.room, place.pressure);
  if (asked.airflow > physics::litresPerHour(0.0)) {
    const double level = physics::levelHumidityRatio((1.0 - asked.captured) * most, asked.airflow,
                                                     answer.start, answer.outdoors);
    answer.levelHumidity = physics::relativeHumidityOf(level, place.room, place.pressure);
  }
  answer.airHeat = physics::exhaustHeat(asked.airflow, place.room - asked.outdoors);
  return answer;
}

// What nobody asks once the night is told.
void forgetCurves(physics::JacketEffect& jacket) {
  for (physics::BrewDay* day : {&jacket.bare, &jacket.jacketed})
    for (physics::Stage& stage : day->stages) stage.curve.clear();
  jacket.bareNight.clear();
  jacket.jacketedNight.clear();
}

RigAnswer answerFor(const RigPlan& rigPlan, const Plan& plan, Depth depth, bool curves) {
  RigAnswer one;
  one.name = rigPlan.name;
  physics::SimulationOptions options;
  options.curves = curves || depth == Depth::Room || depth == Depth::Wort;
  one.day = physics::simulate(rigPlan.rig, plan.batch, plan.place, options);
  const bool solved = plan.ready && plan.ready->what == Milestone::Pitching;
  const bool stated = depth != Depth::Figures && statesChilling(plan, rigPlan);
  if (depth == Depth::Chill || depth == Depth::Wort || curves || stated || solved)
    one.chill = chillAnswer(rigPlan, plan, one.day, depth == Depth::Chill);
  one.begins = beginsAt(plan, one.day, one.chill.get());
  one.cost = dayCost(one.day, plan.tariff, one.begins);
  one.stageCosts = stageCosts(one.day, plan.tariff, one.begins);
  // Curves without everything are for a picture that follows a dragging hand: no searches then.
  const bool advise = depth != Depth::Figures && (!curves || depth == Depth::Everything);
  if (advise) {
    one.whatWouldBoil = adviceFor(rigPlan, plan, one.day);
    one.edge = edgeFor(rigPlan, plan, one.day);
  }
  const bool besideTheDay =
      depth == Depth::DayAndJacket || depth == Depth::Night || depth == Depth::Everything;
  if (besideTheDay && rigPlan.jacketIsCompared) {
    one.jacket = physics::compareJacket(
        rigPlan.bare, rigPlan.jacketed, plan.batch, plan.place, timeAlone(plan),
        rigPlan.hasJacket ? physics::AsPlanned::Jacketed : physics::AsPlanned::Bare, one.day);
  }
  if (besideTheDay || hasOwnNight(plan))
    one.night = nightAnswer(rigPlan, plan, one.day, one.jacket, curves || depth == Depth::Night);
  if (one.jacket) forgetCurves(*one.jacket);
  const bool everythingDrawn = curves && depth == Depth::Everything;
  one.circuit = circuitAnswer(plan, rigPlan, one.day, depth == Depth::Circuit || everythingDrawn);
  if (depth == Depth::Room || curves) one.room = roomAnswer(plan, one.day);
  if (depth == Depth::Wort || curves)
    one.wort = wortAnswer(plan, one.day, one.chill.get(), depth == Depth::Wort);
  if (!curves)
    for (physics::Stage& stage : one.day.stages) stage.curve.clear();
  if (depth == Depth::Everything) {
    one.sizing = powersNeeded(rigPlan, plan);
    addLargestBatches(*one.sizing, rigPlan, plan);
  }
  return one;
}

// The rig with the largest element its circuit carries: what is searched for must not depend, not
// even in its last digits, on the element that happens to be in the vessel.
physics::Rig filled(const physics::Rig& rig) {
  physics::Rig other = rig;
  other.element = physics::largestElementOn(rig.supply, rig.element.topHeight);
  return other;
}

}  // namespace

SizingAnswer powersNeeded(const RigPlan& rigPlan, const Plan& plan, const SizingAnswer* known) {
  const physics::Rig rig = filled(rigPlan.rig);
  const physics::Batch& batch = plan.batch;
  const physics::Place& place = plan.place;
  const Goals& goals = plan.goals;
  SizingAnswer sizing;
  sizing.asIs = physics::electricalLoad(rigPlan.rig);
  sizing.mostOnCircuit = physics::electricalLoad(rig.element, rig.supply).delivered;
  sizing.toBoilAtAll = known ? known->toBoilAtAll : physics::powerToBoilAtAll(rig, batch, place);
  const physics::PowerAnswer* atAll = &sizing.toBoilAtAll;
  sizing.toBoilWithin = physics::powerToBoilWithin(rig, batch, place, goals.boilWithin, atAll);
  sizing.toStrikeWithin = physics::powerToStrikeWithin(rig, batch, place, goals.boilWithin, atAll);
  sizing.forBoilOff =
      known ? known->forBoilOff
            : physics::powerForBoilOff(rig, batch, place, goals.boilOffPerHour, atAll);
  return sizing;
}

void addLargestBatches(SizingAnswer& sizing, const RigPlan& rig, const Plan& plan) {
  const Goals& goals = plan.goals;
  const auto largest = [&](const physics::Rig& one) {
    return physics::largestBatch(one, plan.batch, plan.place, goals.boilOffPerHour,
                                 goals.headspace);
  };
  sizing.largest = largest(rig.rig);
  sizing.largestOnCircuit = largest(filled(rig.rig));
}

std::optional<physics::WhatWouldBoil> adviceFor(const RigPlan& rig, const Plan& plan,
                                                const physics::BrewDay& day) {
  if (!day.levelsOff) return std::nullopt;
  const bool mayGetAJacket = rig.jacketIsCompared && !rig.hasJacket;
  return physics::whatWouldBoil(rig.rig, mayGetAJacket ? &rig.jacketed : nullptr, plan.batch,
                                plan.place);
}

std::optional<physics::EdgeOfTheBoil> edgeFor(const RigPlan& rig, const Plan& plan,
                                              const physics::BrewDay& day) {
  if (!day.finished() || !day.boil || !day.leastToBoil) return std::nullopt;
  // Evaporation is not all of what is lost at boiling, so that its scatter is less than this.
  const double share = day.electrical.delivered / *day.leastToBoil;
  constexpr double kNear = 1.5 * physics::kEvaporationScatter;
  if (std::abs(share - 1.0) > kNear) return std::nullopt;
  auto edge = physics::edgeOfTheBoil(filled(rig.rig), plan.batch, plan.place);
  return edge && edge->holds(day.electrical.delivered) ? edge : std::nullopt;
}

Answers answer(const Plan& plan, Depth depth, bool curves) {
  // Rigs know nothing of each other.
  Answers answers;
  answers.rigs = forAll(plan.rigs.size(), [&](std::size_t i) {
    return answerFor(plan.rigs[i], plan, depth, curves);
  });
  answers.ownRules = plan.ownRules;
  return answers;
}

}  // namespace rigs
