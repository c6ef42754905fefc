// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers.hpp"

namespace rigs {
namespace {

SizingAnswer sizing(const physics::Rig& rig, const Plan& plan) {
  const physics::Element largest = physics::largestElementOn(rig.supply, rig.element.topHeight);
  physics::Rig filled = rig;
  filled.element = largest;
  const Goals& goals = plan.goals;
  return {
      .asIs = physics::electricalLoad(rig.element, rig.supply),
      .mostOnCircuit = physics::electricalLoad(largest, rig.supply).delivered,
      .toBoilAtAll = physics::powerToBoilAtAll(rig, plan.batch, plan.place),
      .toBoilWithin = physics::powerToBoilWithin(rig, plan.batch, plan.place, goals.boilWithin),
      .toStrikeWithin = physics::powerToStrikeWithin(rig, plan.batch, plan.place, goals.boilWithin),
      .forBoilOff = physics::powerForBoilOff(rig, plan.batch, plan.place, goals.boilOffPerHour),
      .largest =
          physics::largestBatch(rig, plan.batch, plan.place, goals.boilOffPerHour, goals.headspace),
      .largestOnCircuit = physics::largestBatch(filled, plan.batch, plan.place,
                                                goals.boilOffPerHour, goals.headspace)};
}

}  // namespace

std::optional<double> costOf(physics::Energy fromWall, const Tariff& tariff) {
  if (tariff.currency.empty()) return std::nullopt;
  return physics::inKilowattHours(fromWall) * tariff.perKilowattHour;
}

Answers answer(const Plan& plan, Depth depth, bool curves) {
  Answers answers;
  for (const RigPlan& rigPlan : plan.rigs) {
    RigAnswer one;
    one.name = rigPlan.name;
    physics::SimulationOptions options;
    options.curves = curves;
    one.day = physics::simulate(rigPlan.rig, plan.batch, plan.place, options);
    one.cost = costOf(one.day.total.fromWall(), plan.tariff);
    if (one.day.outcome == physics::Outcome::DoesNotBoil) {
      one.whatWouldBoil = physics::whatWouldBoil(rigPlan.rig, plan.batch, plan.place);
    }
    if (depth != Depth::Day && rigPlan.jacketIsCompared) {
      one.jacket = physics::compareJacket(rigPlan.bare, rigPlan.jacketed, plan.batch, plan.place,
                                          plan.goals.unplugged);
    }
    if (depth == Depth::Everything) one.sizing = sizing(rigPlan.rig, plan);
    answers.rigs.push_back(std::move(one));
  }
  return answers;
}

}  // namespace rigs
