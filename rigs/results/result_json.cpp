// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/results/result_json.hpp"

#include <array>
#include <optional>
#include <string_view>

#include "rigs/answers/chilling.hpp"
#include "rigs/answers/element_skin.hpp"
#include "rigs/answers/figures.hpp"
#include "rigs/answers/nameplate.hpp"
#include "rigs/answers/surely_begins.hpp"
#include "rigs/answers/wort.hpp"
#include "rigs/plans/rig_letters.hpp"
#include "rigs/results/cautions.hpp"
#include "rigs/results/circuit_words.hpp"
#include "rigs/results/result_json_object.hpp"

namespace rigs {
namespace {

constexpr std::array<const char*, physics::kPathCount> kPaths{
    "side",        "dry_wall", "base", "lid", "surface_convection", "surface_radiation",
    "evaporation", "hose"};

std::string_view word(physics::StageKind kind) {
  switch (kind) {
    case physics::StageKind::Strike:
      return "strike";
    case physics::StageKind::MashingIn:
      return "mashing in";
    case physics::StageKind::Ramp:
      return "ramp";
    case physics::StageKind::Rest:
      return "rest";
    case physics::StageKind::UnpluggedRest:
      return "unplugged rest";
    case physics::StageKind::Draining:
      return "draining";
    case physics::StageKind::HeatingToBoil:
      return "heating to boil";
    case physics::StageKind::Boil:
      return "boil";
  }
  return "";
}

std::string_view word(physics::Limit limit) {
  switch (limit) {
    case physics::Limit::None:
      return "none";
    case physics::Limit::Circuit:
      return "circuit";
    case physics::Limit::Vessel:
      return "vessel";
    case physics::Limit::BoilVigour:
      return "boil-off";
    case physics::Limit::Boiling:
      return "boiling";
    case physics::Limit::SmallestBatch:
      return "smallest batch";
    case physics::Limit::TimeAllowed:
      return "time allowed";
  }
  return "";
}

std::string_view word(physics::JacketVerdict verdict) {
  switch (verdict) {
    case physics::JacketVerdict::MakesItBoil:
      return "makes it boil";
    case physics::JacketVerdict::GetsFurther:
      return "gets further";
    case physics::JacketVerdict::Worthwhile:
      return "worthwhile";
    case physics::JacketVerdict::TimeNotWorthIt:
      return "worthwhile, but not for the time";
    case physics::JacketVerdict::NotWorthIt:
      return "not worth it";
  }
  return "";
}

Json ledger(const physics::Ledger& l) {
  Object lost;
  for (std::size_t i = 0; i < physics::kPathCount; ++i) lost.set(kPaths[i], l.lost.values[i]);
  Object object;
  object.set("from_wall", l.fromWall())
      .set("element", l.element)
      .set("cable", l.cable)
      .set("pump", l.pump);
  if (l.apart > physics::joules(0.0)) object.set("rinse_heater", l.apart);
  object.set("grain_wetting", l.slaking);
  if (l.rinsed != physics::joules(0.0)) object.set("with_rinse", l.rinsed);
  return object.set("with_additions", l.brought)
      .set("in_wort", l.wort)
      .set("in_grain", l.grain)
      .set("in_vessel", l.vessel)
      .set("lifted_with_grain", l.lifted)
      .put("lost", lost.take())
      .set("steam_own_heat", l.steam)
      .set("supplied", l.supplied())
      .set("accounted", l.accounted())
      .set("residual", l.residual())
      .set("imbalance_share", l.imbalance())
      .take();
}

Json electrical(const physics::ElectricalLoad& load) {
  return Object()
      .set("current", load.current)
      .set("at_terminals", load.atTerminals)
      .set("delivered", load.delivered)
      .set("in_cable", load.inCable)
      .set("from_wall", load.fromWall)
      .take();
}

Json curve(const std::vector<physics::CurvePoint>& points) {
  Json all = Json::array();
  for (const physics::CurvePoint& point : points) {
    Object lost;
    for (std::size_t i = 0; i < physics::kPathCount; ++i) lost.set(kPaths[i], point.lost.values[i]);
    all.push_back(Object()
                      .set("time", point.time)
                      .set("wort", point.wort)
                      .set("element", point.element)
                      .put("lost", lost.take())
                      .set("vapour", point.vapour)
                      .take());
  }
  return all;
}

Json stage(const physics::BrewDay& day, const physics::Stage& s, std::optional<double> cost) {
  Object object;
  object.set("stage", word(s.kind))
      .set("begin", s.begin)
      .set("end", s.end)
      .set("finished", finished(day, s))
      .set("first", s.first)
      .set("last", s.last);
  if (s.kind == physics::StageKind::MashingIn) object.set("mixed", s.mixed);
  object.setIf("goal", s.goal)
      .set("hot_volume_first", s.hotFirst)
      .set("hot_volume_last", s.hotLast)
      .set("evaporated", s.evaporated)
      .setIf("cost", cost)
      .put("ledger", ledger(s.ledger));
  if (!s.curve.empty()) object.put("curve", curve(s.curve));
  return object.take();
}

Json additions(const std::vector<physics::Added>& added) {
  Json all = Json::array();
  for (const physics::Added& one : added) {
    all.push_back(Object()
                      .put("addition", one.which)
                      .set("at", one.at)
                      .set("before", one.before)
                      .set("mixed", one.mixed)
                      .set("took", one.took)
                      .setIf("rolls_again_after", one.backIn)
                      .set("cold_volume", one.cold)
                      .set("hot_volume", one.hot)
                      .set("gravity", one.gravity)
                      .take());
  }
  return all;
}

Json rinse(const physics::Rinsed& one, std::optional<double> cost) {
  return Object()
      .set("at", one.at)
      .set("before", one.before)
      .set("runs_off", one.runsOff)
      .set("mixed", one.mixed)
      .set("cold_volume", one.cold)
      .set("hot_volume", one.hot)
      .set("gravity", one.gravity)
      .set("gravity_if_none_mixes", one.gravityIfNone)
      .set("gravity_if_all_mixes", one.gravityIfAll)
      .set("extract_gained", one.gained)
      .set("extract_gained_if_all_mixes", one.gainedIfAll)
      .set("extract_left", one.left)
      .set("heat", one.heat)
      .setIf("from_wall", one.fromWall)
      .setIf("heating", one.heating)
      .setIf("cost", cost)
      .take();
}

Json day(const physics::BrewDay& d, const Tariff& tariff, std::optional<physics::Time> begins) {
  Json stages = Json::array();
  const std::vector<double> costs = stageCosts(d, tariff, begins);
  for (std::size_t i = 0; i < d.stages.size(); ++i)
    stages.push_back(stage(d, d.stages[i], costs.empty() ? std::nullopt : std::optional(costs[i])));
  Object object;
  object.set("outcome", outcomeKey(d.outcome));
  if (d.levelsOff) {
    object.put("levels_off", Object()
                                 .set("at", d.levelsOff->at)
                                 .set("wanted", d.levelsOff->wanted)
                                 .set("needed_there", d.levelsOff->atWanted)
                                 .take());
  }
  object.put("electrical", electrical(d.electrical))
      .set("duration", d.duration())
      .setIf("to_strike", timeOf(d, physics::StageKind::Strike))
      .setIf("heating_to_boil", timeOf(d, physics::StageKind::HeatingToBoil))
      .set("water", d.water);
  if (d.strike > physics::kelvin(0.0)) object.set("strike", d.strike);
  if (d.boilingPoint > physics::kelvin(0.0)) object.set("boiling_point", d.boilingPoint);
  object.setIf("least_to_boil", d.leastToBoil)
      .set("lifted_cold", d.liftedCold)
      .set("lifted_hot", d.liftedHot)
      .set("lifted_gravity", d.liftedGravity)
      .set("pre_boil_cold", d.preBoilCold)
      .set("pre_boil_hot", d.preBoilHot)
      .set("result_cold", d.resultCold)
      .set("result_hot", d.resultHot)
      .set("pre_boil_gravity", d.preBoilGravity)
      .set("result_gravity", d.resultGravity)
      .set("fullest", d.fullest)
      .set("lowest_with_element_on", d.lowest);
  if (d.boil) {
    object.put("boil", Object()
                           .set("temperature", d.boil->temperature)
                           .set("net", d.boil->net)
                           .set("evaporation", d.boil->evaporation)
                           .set("boil_off_cold", d.boil->coldBoilOff)
                           .set("share_of_pre_boil_per_h", d.boil->shareOfPreBoilPerHour)
                           .set("net_per_surface", d.boil->netPerSurface)
                           .set("net_per_litre", *netPer(d, physics::litres(1.0)))
                           .set("lasted", d.boil->lasted)
                           .set("rolled", d.boil->rolled)
                           .set("vigour", d.outcome == physics::Outcome::Done
                                              ? vigourWord(vigourOf(*d.boil))
                                              : outcomeKey(d.outcome))
                           .take());
  }
  if (d.rinsed) object.put("rinse", rinse(*d.rinsed, rinseCost(d, tariff, begins)));
  if (!d.additions.empty()) object.put("additions", additions(d.additions));
  if (d.unmet) {
    object.put("unmet_wish", Object()
                                 .set("missing", d.unmet->missing)
                                 .set("because", outcomeKey(d.unmet->because))
                                 .take());
  }
  object.put("stages", std::move(stages)).put("total", ledger(d.total));
  return object.take();
}

Json lossPair(const physics::LossPair& pair) {
  Object object;
  object.set("at", pair.at)
      .set("bare", pair.bare)
      .set("jacketed", pair.jacketed)
      .set("bare_side", pair.bareSide)
      .set("jacketed_side", pair.jacketedSide)
      .set("saved", pair.saved());
  if (pair.bareSide > physics::watts(0.0)) {
    object.set("share_of_side_saved", pair.sideShareSaved());
  }
  return object.take();
}

Json jacket(const physics::JacketEffect& effect, const Tariff& tariff,
            std::optional<physics::Time> begins) {
  Object object;
  object.set("verdict", word(effect.verdict))
      .set("verdict_is_close", isOnTheEdge(effect))
      .put("reasons",
           Object()
               .set("strong_element_hides_losses", effect.reasons.strongElementHidesLosses)
               .set("skin_radiates_more", effect.reasons.skinRadiatesMore)
               .set("open_surface_dominates", effect.reasons.surfaceDominates)
               .take())
      .setIf("saved_to_strike", effect.savedToStrike)
      .setIf("saved_to_boil", effect.savedToBoil)
      .setIf("saved_from_wall", effect.savedFromWall)
      .setIf("saved_cost", moneySaved(effect.bare, effect.jacketed, tariff, begins))
      .put("at_mash", lossPair(effect.atMash))
      .put("at_boil", lossPair(effect.atBoil))
      .set("alone", effect.alone)
      .set("bare_after_alone", effect.bareAfter)
      .set("jacketed_after_alone", effect.jacketedAfter)
      .put("bare", day(effect.bare, tariff, begins))
      .put("jacketed", day(effect.jacketed, tariff, begins));
  return object.take();
}

Json power(const Plan& whole, const RigPlan& plan, const physics::PowerAnswer& answer) {
  return Object()
      .setIf("power", answer.power)
      .set("on_this_supply", answer.onThisSupply)
      .set("circuit_carries_it", carriesWord(carries(whole, plan, answer)))
      .set("stopped_by", word(answer.stoppedBy))
      .take();
}

Json batch(const physics::BatchAnswer& answer) {
  return Object().setIf("wort", answer.wort).set("stopped_by", word(answer.stoppedBy)).take();
}

Json sizing(const Plan& whole, const RigPlan& plan, const SizingAnswer& s) {
  return Object()
      .put("as_is", electrical(s.asIs))
      .set("most_on_circuit", s.mostOnCircuit)
      .put("to_boil_at_all", power(whole, plan, s.toBoilAtAll))
      .put("to_boil_within", power(whole, plan, s.toBoilWithin))
      .put("to_strike_within", power(whole, plan, s.toStrikeWithin))
      .put("for_boil_off", power(whole, plan, s.forBoilOff))
      .put("largest_batch", batch(s.largest))
      .put("largest_batch_on_circuit", batch(s.largestOnCircuit))
      .take();
}

Json whatWouldBoil(const physics::WhatWouldBoil& what) {
  return Object()
      .setIf("power", what.power)
      .setIf("open_share_of_mouth", what.openFraction)
      .setIf("levels_off_with_lid", what.levelWithLid)
      .set("jacket_boils", what.jacketBoils)
      .setIf("levels_off_with_jacket", what.levelWithJacket)
      .take();
}

Json element(const physics::Element& e) {
  return Object()
      .set("rating", e.rating)
      .set("rated_at", e.ratedAt)
      .set("resistance", physics::resistance(e))
      .take();
}

Json skinJson(const ElementSkin& skin) {
  Object object;
  object.set("flux", skin.flux)
      .set("sizzles_from", skin.sizzlesFrom)
      .set("in_still_water", skin.inStillWater);
  if (skin.heatsTheMash) object.set("in_still_mash", skin.inStillMash);
  return object.set("within_common_practice", skin.keepsToPractice()).take();
}

Json supply(const Plan& whole, const RigPlan& plan, std::size_t circuit) {
  const physics::Feed feed = feedsOf(plan.rig).at(circuit);
  return Object()
      .set("nominal", feed.supply.nominal)
      .set("rating", feed.supply.rating)
      .set("cable_loop", feed.supply.cableLoop)
      .set("long_use_current", longUseCurrent(whole, plan, circuit))
      .set("overloaded", overloads(feed.element, feed.supply))
      .set("against_rating", inEnglish(fitWords(nameplate(whole, plan, circuit).fit)))
      .set("overloaded_in_long_use", overloadsForLong(whole, plan, circuit))
      .take();
}

Json rig(const RigPlan& plan, const RigAnswer& answer, const Plan& whole,
         const std::string& letter) {
  Object object;
  object.set("name", answer.name)
      .set("letter", letter)
      .put("element", element(plan.rig.element))
      .put("supply", supply(whole, plan, 0))
      .set("has_jacket", plan.hasJacket)
      .setIf("begins", whole.ready ? answer.begins : std::nullopt)
      .setIf("begins_for_9_of_10",
             answer.bands ? beginsForNineOfTen(whole, answer.day, answer.chill.get(), *answer.bands)
                          : std::nullopt)
      .put("day", day(answer.day, whole.tariff, answer.begins))
      .setIf("cost", answer.cost)
      .setIf("cost_per_L", costPer(answer, physics::litres(1.0)));
  if (plan.rig.second)
    object.put("second_element", element(plan.rig.second->element))
        .put("second_supply", supply(whole, plan, 1));
  if (const auto skin = elementSkin(whole, plan, answer))
    object.put("element_skin", skinJson(*skin));
  if (answer.jacket) object.put("jacket", jacket(*answer.jacket, whole.tariff, answer.begins));
  if (answer.night) object.put("night", nightJson(*answer.night, plan.hasJacket));
  // Only where somebody asked or the plan states it: it is no part of the day.
  if (answer.chill && (answer.chill->asked || answer.chill->isStated))
    object.put("chilling", chillJson(*answer.chill));
  if (answer.wort && answer.wort->asked) object.put("wort", wortJson(*answer.wort));
  if (answer.sizing) object.put("sizing", sizing(whole, plan, *answer.sizing));
  object.put("circuit", circuitJson(answer.circuit));
  if (answer.room) object.put("room", roomJson(*answer.room));
  if (answer.helps) object.put("helps", helpsJson(*answer.helps, brewsPerYear(whole.tariff)));
  if (answer.bands) object.put("bands", bandsJson(*answer.bands, answer.sure.get()));
  if (answer.edge) {
    object.put("on_the_edge", Object()
                                  .set("least", answer.edge->least)
                                  .set("if_less_evaporates", answer.edge->ifLessEvaporates)
                                  .set("if_more_evaporates", answer.edge->ifMoreEvaporates)
                                  .take());
  }
  if (answer.whatWouldBoil) object.put("what_would_boil", whatWouldBoil(*answer.whatWouldBoil));
  return object.take();
}

}  // namespace

std::string_view outcomeKey(physics::Outcome outcome) {
  switch (outcome) {
    case physics::Outcome::Done:
      return "done";
    case physics::Outcome::DoesNotReachStrike:
      return "does not reach strike";
    case physics::Outcome::DoesNotReachRest:
      return "does not reach rest";
    case physics::Outcome::Steams:
      return "steams";
    case physics::Outcome::StaysFarBelow:
      return "stays far below boiling";
    case physics::Outcome::UncoversElement:
      return "uncovers element";
    case physics::Outcome::StrikeTooHot:
      return "strike too hot";
  }
  return "";
}

Json rigJson(const Plan& plan, const Answers& answers, std::size_t index) {
  const std::string letter = letterOfSlot(slotsOf(plan.rigs)[index]);
  Json json = rig(plan.rigs[index], answers.rigs[index], plan, letter);
  addMoney(json, plan, answers, index);
  return json;
}

std::string resultJson(const Plan& plan, const Answers& answers) {
  Json rigs = Json::array();
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) rigs.push_back(rigJson(plan, answers, i));
  Json warnings = Json::array();
  for (const Caution& caution : cautionsFor(About::Everything, plan, answers)) {
    warnings.push_back(
        Object().set("topic", caution.topic).set("text", inEnglish(caution.text)).take());
  }
  Object object;
  object
      .put("format",
           Object().set("name", "heat-ledger-result").put("version", kResultVersion).take())
      .set("title", std::string_view(plan.title))
      .put("place", Object()
                        .set("room", plan.place.room)
                        .set("relative_humidity", plan.place.relativeHumidity)
                        .setIf("altitude", plan.altitude)
                        .set("pressure", plan.place.pressure)
                        .set("water", plan.place.water)
                        .set("draught", plan.place.draught)
                        .take())
      .put("goals", Object()
                        .set("boil_within", plan.goals.boilWithin)
                        .set("boil_off_per_h", plan.goals.boilOffPerHour)
                        .set("headspace", plan.goals.headspace)
                        .set("unplugged", timeAlone(plan))
                        .take())
      .setIf("start_of_day", plan.start());
  if (plan.ready)
    object.put(
        "ready",
        Object().set("what", milestoneWord(plan.ready->what)).set("at", plan.ready->at).take());
  if (!plan.tariff.currency.empty()) {
    object.put("tariff", tariffJson(plan.tariff));
  }
  object.put("rigs", std::move(rigs)).put("cautions", std::move(warnings));
  return object.take().dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
}

std::string problemsJson(const Problems& problems, const std::string& file, UnitSystem units) {
  Json list = Json::array();
  for (const Problem& problem : problems) {
    list.push_back({{"severity", problem.severity == Severity::Error ? "error" : "remark"},
                    {"where", problem.where},
                    {"message", inEnglish(problem.message, units)}});
  }
  const Json all = {{"file", file}, {"problems", list}};
  return all.dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
}

}  // namespace rigs
