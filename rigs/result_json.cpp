// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/result_json.hpp"

#include <array>
#include <cmath>
#include <nlohmann/json.hpp>
#include <optional>
#include <stdexcept>
#include <string_view>

#include "rigs/cautions.hpp"
#include "rigs/figures.hpp"

namespace rigs {
namespace {

using Json = nlohmann::ordered_json;

// An object under construction; one `set` per kind of quantity, so that a unit is written once.
class Object {
 public:
  Object& set(const char* key, double number) {
    if (!std::isfinite(number)) {
      throw std::domain_error("the result has a number that is not finite: " + std::string(key));
    }
    json_[key] = number;
    return *this;
  }
  Object& set(const std::string& key, double number) { return set(key.c_str(), number); }
  Object& set(const char* key, bool flag) { return put(key, flag); }
  Object& set(const char* key, std::string_view text) { return put(key, std::string(text)); }
  Object& set(const char* key, const char* text) { return put(key, std::string(text)); }
  Object& put(const char* key, Json value) {
    json_[key] = std::move(value);
    return *this;
  }
  Object& set(std::string key, physics::Power q) { return set(key + "_W", physics::inWatts(q)); }
  Object& set(std::string key, physics::Energy q) {
    return set(key + "_kWh", physics::inKilowattHours(q));
  }
  Object& set(std::string key, physics::Time q) { return set(key + "_s", physics::inSeconds(q)); }
  Object& set(std::string key, physics::Temperature q) {
    return set(key + "_C", physics::inCelsius(q));
  }
  Object& set(std::string key, physics::Volume q) { return set(key + "_L", physics::inLitres(q)); }
  Object& set(std::string key, physics::Mass q) {
    return set(key + "_kg", physics::inKilograms(q));
  }
  Object& set(std::string key, physics::MassFlow q) {
    return set(key + "_kg_per_h", physics::inKilogramsPerHour(q));
  }
  Object& set(std::string key, physics::VolumeFlow q) {
    return set(key + "_L_per_h", physics::inLitresPerHour(q));
  }
  Object& set(std::string key, physics::HeatFlux q) {
    return set(key + "_W_per_m2", physics::inWattsPerSquareMetre(q));
  }
  Object& set(std::string key, physics::Voltage q) { return set(key + "_V", physics::inVolts(q)); }
  Object& set(std::string key, physics::Current q) {
    return set(key + "_A", physics::inAmperes(q));
  }
  Object& set(std::string key, physics::Resistance q) {
    return set(key + "_ohm", physics::inOhms(q));
  }
  Object& set(std::string key, physics::Pressure q) {
    return set(key + "_Pa", physics::inPascals(q));
  }
  Object& set(std::string key, physics::Length q) { return set(key + "_m", physics::inMetres(q)); }
  Object& set(std::string key, physics::Velocity q) {
    return set(key + "_m_per_s", physics::inMetresPerSecond(q));
  }
  template <class Q>
  Object& setIf(const char* key, const std::optional<Q>& q) {
    if (q) set(key, *q);
    return *this;
  }
  Json take() { return std::move(json_); }

 private:
  Json json_ = Json::object();
};

constexpr std::array<const char*, physics::kPathCount> kPaths{
    "side",        "dry_wall", "base", "lid", "surface_convection", "surface_radiation",
    "evaporation", "hose"};

std::string_view word(physics::Outcome outcome) {
  switch (outcome) {
    case physics::Outcome::Done:
      return "done";
    case physics::Outcome::DoesNotReachStrike:
      return "does not reach strike";
    case physics::Outcome::DoesNotReachRest:
      return "does not reach rest";
    case physics::Outcome::DoesNotBoil:
      return "does not boil";
    case physics::Outcome::UncoversElement:
      return "uncovers element";
    case physics::Outcome::StrikeTooHot:
      return "strike too hot";
  }
  return "";
}

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
  return Object()
      .set("from_wall", l.fromWall())
      .set("element", l.element)
      .set("cable", l.cable)
      .set("grain_wetting", l.slaking)
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

Json stage(const physics::BrewDay& day, const physics::Stage& s, const Tariff& tariff) {
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
      .setIf("cost", costOf(s.ledger.fromWall(), tariff))
      .put("ledger", ledger(s.ledger));
  if (!s.curve.empty()) object.put("curve", curve(s.curve));
  return object.take();
}

Json day(const physics::BrewDay& d, const Tariff& tariff) {
  Json stages = Json::array();
  for (const physics::Stage& s : d.stages) stages.push_back(stage(d, s, tariff));
  Object object;
  object.set("outcome", word(d.outcome));
  if (d.levelsOff) {
    object.put("levels_off", Object()
                                 .set("at", d.levelsOff->at)
                                 .set("wanted", d.levelsOff->wanted)
                                 .set("needed_there", d.levelsOff->atWanted)
                                 .take());
  }
  object.put("electrical", electrical(d.electrical))
      .set("duration", d.duration())
      .set("water", d.water);
  if (d.strike > physics::kelvin(0.0)) object.set("strike", d.strike);
  if (d.boilingPoint > physics::kelvin(0.0)) object.set("boiling_point", d.boilingPoint);
  object.setIf("least_to_boil", d.leastToBoil)
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
                           .set("vigour", vigourWord(vigourOf(*d.boil)))
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

Json jacket(const physics::JacketEffect& effect, const Tariff& tariff) {
  Object object;
  object.set("verdict", word(effect.verdict))
      .put("reasons",
           Object()
               .set("strong_element_hides_losses", effect.reasons.strongElementHidesLosses)
               .set("skin_radiates_more", effect.reasons.skinRadiatesMore)
               .set("open_surface_dominates", effect.reasons.surfaceDominates)
               .take())
      .setIf("saved_to_strike", effect.savedToStrike)
      .setIf("saved_to_boil", effect.savedToBoil)
      .set("saved_from_wall", effect.savedFromWall)
      .setIf("saved_cost", costOf(effect.savedFromWall, tariff))
      .put("at_mash", lossPair(effect.atMash))
      .put("at_boil", lossPair(effect.atBoil))
      .set("alone", effect.alone)
      .set("bare_after_alone", effect.bareAfter)
      .set("jacketed_after_alone", effect.jacketedAfter)
      .put("bare", day(effect.bare, tariff))
      .put("jacketed", day(effect.jacketed, tariff));
  return object.take();
}

Json power(const physics::PowerAnswer& answer) {
  return Object()
      .setIf("power", answer.power)
      .set("on_this_supply", answer.onThisSupply)
      .set("stopped_by", word(answer.stoppedBy))
      .take();
}

Json batch(const physics::BatchAnswer& answer) {
  return Object().setIf("wort", answer.wort).set("stopped_by", word(answer.stoppedBy)).take();
}

Json sizing(const SizingAnswer& s) {
  return Object()
      .put("as_is", electrical(s.asIs))
      .set("most_on_circuit", s.mostOnCircuit)
      .put("to_boil_at_all", power(s.toBoilAtAll))
      .put("to_boil_within", power(s.toBoilWithin))
      .put("to_strike_within", power(s.toStrikeWithin))
      .put("for_boil_off", power(s.forBoilOff))
      .put("largest_batch", batch(s.largest))
      .put("largest_batch_on_circuit", batch(s.largestOnCircuit))
      .take();
}

Json whatWouldBoil(const physics::WhatWouldBoil& what) {
  return Object()
      .setIf("power", what.power)
      .setIf("open_share_of_mouth", what.openFraction)
      .setIf("levels_off_with_lid", what.levelWithLid)
      .take();
}

Json rig(const RigPlan& plan, const RigAnswer& answer, const Tariff& tariff) {
  Object object;
  object.set("name", answer.name)
      .put("element", Object()
                          .set("rating", plan.rig.element.rating)
                          .set("rated_at", plan.rig.element.ratedAt)
                          .set("resistance", physics::resistance(plan.rig.element))
                          .take())
      .put("supply", Object()
                         .set("nominal", plan.rig.supply.nominal)
                         .set("rating", plan.rig.supply.rating)
                         .set("cable_loop", plan.rig.supply.cableLoop)
                         .set("overloaded", overloads(answer.day.electrical, plan.rig.supply))
                         .take())
      .set("has_jacket", plan.hasJacket)
      .put("day", day(answer.day, tariff))
      .setIf("cost", answer.cost)
      .setIf("cost_per_L", costPer(answer, physics::litres(1.0)));
  if (answer.jacket) object.put("jacket", jacket(*answer.jacket, tariff));
  if (answer.sizing) object.put("sizing", sizing(*answer.sizing));
  if (answer.whatWouldBoil) object.put("what_would_boil", whatWouldBoil(*answer.whatWouldBoil));
  return object.take();
}

}  // namespace

std::string resultJson(const Plan& plan, const Answers& answers) {
  Json rigs = Json::array();
  bool alone = false;
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    rigs.push_back(rig(plan.rigs[i], answers.rigs[i], plan.tariff));
    alone = alone || answers.rigs[i].jacket.has_value();
  }
  Json warnings = Json::array();
  for (const Caution& caution : cautions(plan, alone, UnitSystem::SI)) {
    warnings.push_back(
        Object().set("topic", caution.topic).set("text", std::string_view(caution.text)).take());
  }
  Object object;
  object.put("format", Object().set("name", "heatledger result").put("version", 1).take())
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
                        .set("unplugged", plan.goals.unplugged)
                        .take())
      .set("start_of_day", plan.startOfDay);
  if (!plan.tariff.currency.empty()) {
    object.put("tariff", Object()
                             .set("per_kWh", plan.tariff.perKilowattHour)
                             .set("currency", std::string_view(plan.tariff.currency))
                             .take());
  }
  object.put("rigs", std::move(rigs)).put("cautions", std::move(warnings));
  return object.take().dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
}

std::string problemsJson(const Problems& problems, const std::string& file) {
  Json list = Json::array();
  for (const Problem& problem : problems) {
    list.push_back({{"severity", problem.severity == Severity::Error ? "error" : "remark"},
                    {"where", problem.where},
                    {"message", problem.message}});
  }
  const Json all = {{"file", file}, {"problems", list}};
  return all.dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
}

}  // namespace rigs
