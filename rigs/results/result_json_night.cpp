// SPDX-License-Identifier: GPL-3.0-or-later
// A mash left unplugged, for programs.
#include "rigs/results/result_json_object.hpp"

namespace rigs {
namespace {

Json points(const std::vector<NightPoint>& all) {
  Json list = Json::array();
  for (const NightPoint& point : all)
    list.push_back(Object().set("after", point.alone).set("wort", point.wort).take());
  return list;
}

Object nightObject(const Night& night) {
  Object object;
  object.set("first", night.first)
      .set("morning", night.morning)
      .setIf("below_57_after", night.passesAfter)
      .set("below_57", night.below)
      .set("germs_double_at_worst", night.doublings)
      .setIf("ten_doublings_after", night.tooManyAfter)
      .set("souring_tenfolds_at_worst", night.souring)
      .put("readings", points(night.readings));
  if (!night.curve.empty()) object.put("curve", points(night.curve));
  return object;
}

}  // namespace

Json nightJson(const NightAnswer& night, bool hasJacket) {
  Object object = nightObject(night.asItIs);
  object.set("alone", night.asItIs.alone).set("of_the_day", night.own);
  if (night.supposed)
    object.put(hasJacket ? "if_bare" : "if_jacketed", nightObject(*night.supposed).take());
  return object.take();
}

}  // namespace rigs
