// SPDX-License-Identifier: GPL-3.0-or-later
// Chilling after the boil, for programs.
#include "rigs/answers/chilling.hpp"
#include "rigs/results/result_json_object.hpp"

namespace rigs {
namespace {

std::string_view kindKey(Chiller::Kind kind) {
  switch (kind) {
    case Chiller::Kind::Coil:
      return "coil";
    case Chiller::Kind::Counterflow:
      return "counterflow";
    case Chiller::Kind::Air:
      return "air";
  }
  return "";
}

Json heatJson(const physics::ChillHeat& heat) {
  return Object()
      .set("given_up", heat.givenUp)
      .set("into_water", heat.taken)
      .set("lost", heat.lost)
      .set("with_vapour", heat.carried)
      .take();
}

Json chillWayJson(const ChillWay& way, bool withCurve) {
  Object object;
  object.setIf("to_60", way.toSixty)
      .setIf("to_57", way.toHotHolding)
      .setIf("to_40", way.toForty)
      .setIf("to_21", way.toTwentyOne)
      .setIf("from_57_to_21", way.throughTheDanger())
      .setIf("to_goal", way.toGoal)
      .setIf("comes_to_rest_at", way.comesToRestAt)
      .put("heat", heatJson(way.heat));
  if (way.firstOutlet) object.set("water", way.water).set("first_outlet", *way.firstOutlet);
  object.setIf("mean_outlet", way.meanOutlet);
  if (way.overall)
    object.set("overall_W_per_m2_K", physics::inWattsPerSquareMetreKelvin(*way.overall));
  if (!withCurve) return object.take();
  Json points = Json::array();
  for (const physics::ChillPoint& point : way.curve)
    points.push_back(Object().set("after", point.time).set("wort", point.wort).take());
  object.put("curve", std::move(points));
  return object.take();
}

Json passJson(const ExchangerPass& pass) {
  Object object;
  object.set("wort_out", pass.likely.hotOut)
      .set("wort_out_at_best", pass.best.hotOut)
      .set("wort_out_at_worst", pass.worst.hotOut)
      .set("water_out", pass.likely.coldOut)
      .set("effectiveness", pass.likely.effectiveness)
      .set("conductance_W_per_K", physics::inWattsPerKelvin(pass.likely.conductance))
      .set("time", pass.time)
      .set("water", pass.water)
      .setIf("wort_flow_for_goal", pass.flowForGoal);
  return object.take();
}

Json chillerJson(const Chiller& chiller) {
  Object object;
  object.set("kind", kindKey(chiller.kind)).set("is_stated", chiller.isStated);
  if (chiller.kind == Chiller::Kind::Air) return object.take();
  object.set("material", chiller.material)
      .set("tube", chiller.tube)
      .set("length", chiller.length)
      .set("water_flow", chiller.waterFlow);
  if (chiller.kind == Chiller::Kind::Counterflow)
    object.set("wort_flow", chiller.wortFlow);
  else
    object.set("stirred", chiller.stirred);
  return object.take();
}

}  // namespace

Json chillJson(const ChillAnswer& chill) {
  Object object;
  object.put("chiller", chillerJson(chill.chiller))
      .set("wort", chill.wort)
      .set("boiled", chill.boiled)
      .set("begins", chill.begins)
      .set("cooling_water", chill.water)
      .set("pitching", chill.pitching)
      .set("floor", chill.floor)
      .set("goal", chill.goal);
  if (chill.stirred) object.put("stirred", chillWayJson(*chill.stirred, chill.asked));
  if (chill.still) object.put("still", chillWayJson(*chill.still, chill.asked));
  if (chill.stillAtWorst)
    object.put("still_at_worst", chillWayJson(*chill.stillAtWorst, chill.asked));
  if (chill.pass) object.put("one_pass", passJson(*chill.pass));
  object.put("air", chillWayJson(chill.air, chill.asked));
  if (chill.airBare) object.put("air_bare", chillWayJson(*chill.airBare, chill.asked));
  if (chill.refused)
    object.put("refused", Object()
                              .set("warmest_water", chill.refused->warmestWater)
                              .set("ice", chill.refused->ice)
                              .take());
  return object.take();
}

}  // namespace rigs
