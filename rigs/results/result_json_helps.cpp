// SPDX-License-Identifier: GPL-3.0-or-later
// What helps most, for programs: every change alone, and for each wish the few together.
#include "rigs/answers/helps.hpp"
#include "rigs/circuits/finding.hpp"
#include "rigs/results/result_json_object.hpp"

namespace rigs {
namespace {

std::string_view rollingWord(Rolling rolling) {
  switch (rolling) {
    case Rolling::Yes:
      return "yes";
    case Rolling::OnTheEdge:
      return "on the edge";
    case Rolling::No:
      break;
  }
  return "no";
}

Object effectObject(const Effect& effect) {
  Object object;
  object.set("outcome", outcomeKey(effect.outcome))
      .set("overflows", effect.overflows)
      .set("rolls", rollingWord(effect.rolling))
      .setIf("share_of_least_to_boil", effect.powerShare)
      .setIf("to_strike", effect.toStrike)
      .setIf("to_boil", effect.toBoil)
      .setIf("day", effect.day)
      .setIf("boil_off_share_per_h", effect.boilOffPerHour)
      .setIf("morning", effect.morning)
      .set("from_wall", effect.fromWall)
      .setIf("cost", effect.cost)
      .set("batches_for_as_much", effect.batches)
      .set("verdict", inEnglish(fitWords(effect.circuit)))
      .set("share_of_circuit", effect.circuitShare);
  return object;
}

// Its effect, and what it is against today.
Object wayObject(const HelpsAnswer& helps, const std::vector<std::size_t>& changes,
                 const Effect& effect, double brews) {
  Object object = effectObject(effect);
  object.setIf("saved_per_year", savedInAYear(effect, helps.today, brews))
      .setIf("price", priceOf(helps, changes));
  if (const auto back = paybackOf(helps, changes, effect, brews))
    object.setIf("years", back->years);
  return object;
}

Json changeJson(const HelpsAnswer& helps, std::size_t i, double brews) {
  const Change& change = helps.changes[i];
  Object object = wayObject(helps, {i}, helps.alone[i], brews);
  object.set("id", std::string_view(change.id))
      .set("lever", leverWord(change.lever))
      .set("text", inEnglish(change.words))
      .set("may_be_advised", static_cast<bool>(helps.advised[i]))
      .set("tried_with_others", static_cast<bool>(helps.tried[i]))
      .set("costs_nothing", change.outlay == Outlay::Nothing);
  if (!change.forbidden.empty()) object.set("forbidden", inEnglish(change.forbidden));
  return object.take();
}

Json wayJson(const HelpsAnswer& helps, const Together& way, double brews) {
  Json ids = Json::array();
  for (const std::size_t i : way.changes) ids.push_back(helps.changes[i].id);
  return wayObject(helps, way.changes, way.effect, brews).put("changes", std::move(ids)).take();
}

Json wishJson(const HelpsAnswer& helps, Wish wish, double brews) {
  const WishAnswer& of = helps.of(wish);
  Json best = Json::array();
  for (const auto& one : of.best)
    if (one) best.push_back(wayJson(helps, *one, brews));
  Json ways = Json::array();
  for (const Together& one : of.tradeOffs) ways.push_back(wayJson(helps, one, brews));
  Object object;
  object.put("best_by_number_of_changes", std::move(best));
  if (of.few) object.put("few", wayJson(helps, *of.few, brews));
  if (of.allGoals) object.put("all_goals", wayJson(helps, *of.allGoals, brews));
  object.put("trade_offs", std::move(ways));
  return object.take();
}

}  // namespace

Json helpsJson(const HelpsAnswer& helps, double brews) {
  Json changes = Json::array();
  for (std::size_t i = 0; i < helps.changes.size(); ++i)
    changes.push_back(changeJson(helps, i, brews));
  Json wishes = Json::object();
  for (const Wish wish : kWishes)
    wishes[std::string(wishWord(wish))] = wishJson(helps, wish, brews);
  return Object()
      .put("today", effectObject(helps.today).set("meets_all_goals", helps.goalsMetToday).take())
      .set("changes_at_once", static_cast<double>(helps.together))
      .set("ways", static_cast<double>(helps.ways))
      .set("ways_tried", static_cast<double>(helps.done))
      .set("ways_of_any_number", static_cast<double>(helps.allWays))
      .set("is_part", helps.isPart())
      .put("changes", std::move(changes))
      .put("wishes", std::move(wishes))
      .take();
}

}  // namespace rigs
