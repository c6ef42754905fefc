// SPDX-License-Identifier: GPL-3.0-or-later
// Tariffs and what a day costs, for programs. Money is in the tariff's currency.
#include "rigs/answers/heated_otherwise.hpp"
#include "rigs/answers/money.hpp"
#include "rigs/results/result_json_object.hpp"

namespace rigs {
namespace {

Json windows(const std::vector<PriceWindow>& all) {
  Json list = Json::array();
  for (const PriceWindow& window : all) {
    list.push_back(Object()
                       .set("from", window.from)
                       .set("to", window.to)
                       .set("per_kWh", window.perKilowattHour)
                       .take());
  }
  return list;
}

Json tiers(const std::vector<PriceTier>& all) {
  Json list = Json::array();
  for (const PriceTier& tier : all)
    list.push_back(Object().setIf("up_to", tier.upTo).set("per_kWh", tier.perKilowattHour).take());
  return list;
}

Json start(const Start& one) { return Object().set("at", one.at).set("cost", one.cost).take(); }

Object paybackObject(const Payback& back) {
  Object object;
  object.set("saved_per_brew", back.perBrew)
      .set("saved_per_year", back.perYear)
      .set("pays_back", back.years.has_value())
      .setIf("years", back.years);
  return object;
}

template <class Q>
Json span(const Q& least, const Q& most) {
  return Object().set("least", least).set("most", most).take();
}

const char* keyOf(OtherHeat by) {
  switch (by) {
    case OtherHeat::Induction:
      return "by_induction";
    case OtherHeat::HotPlate:
      return "on_hot_plate";
    case OtherHeat::GasFlame:
      break;
  }
  return "on_gas_flame";
}

Json heatedOtherwise(const physics::BrewDay& day) {
  Object object;
  for (const ReachesVessel& share : kReachesVessel) {
    const auto used = usedInstead(day, share);
    if (!used) continue;
    object.put(keyOf(share.by), span(used->least, used->most));
    if (share.by == OtherHeat::GasFlame)
      object.put("as_propane", span(propaneFor(used->least), propaneFor(used->most)));
  }
  return object.take();
}

}  // namespace

Json tariffJson(const Tariff& tariff) {
  const bool flat = !tariff.dependsOnTheHour() && !tariff.dependsOnUse();
  Object object;
  object.setIf("per_kWh", flat ? std::optional(tariff.perKilowattHour) : std::nullopt)
      .set("currency", std::string_view(tariff.currency));
  const auto text = [&](const char* key, const std::string& value) {
    if (!value.empty()) object.set(key, std::string_view(value));
  };
  text("name", tariff.name);
  text("dated", tariff.dated);
  text("source", tariff.source);
  text("status", tariff.status);
  object.set("day", tariff.day == DayOfWeek::Weekend ? "weekend" : "weekday")
      .set("rebate", tariff.rebate);
  if (tariff.dependsOnTheHour())
    object.put("weekday", windows(tariff.weekday)).put("weekend", windows(tariff.weekend));
  if (tariff.dependsOnUse())
    object.put("tiers", tiers(tariff.tiers)).set("used_this_month", tariff.usedThisMonth);
  object.setIf("brew_from", tariff.brewFrom)
      .setIf("brew_until", tariff.brewUntil)
      .set("brews_per_year", brewsPerYear(tariff))
      .setIf("jacket_price", tariff.jacketPrice)
      .setIf("element_price", tariff.elementPrice)
      .setIf("co2_per_kWh", tariff.co2PerKilowattHour);
  text("co2_source", tariff.co2Source);
  return object.take();
}

void addMoney(Json& rig, const Plan& plan, const Answers& answers, std::size_t index) {
  const RigAnswer& answer = answers.rigs[index];
  Object object;
  object.setIf("cost_per_year", costOfAYear(answer, plan.tariff));
  if (const auto choice = cheapestStart(answer.day, plan.tariff))
    object.put("cheapest_start", start(choice->cheapest))
        .put("dearest_start", start(choice->dearest));
  if (const auto back = jacketPayback(answer, plan))
    object.put("jacket_payback", paybackObject(*back).take());
  if (const auto back = elementPayback(plan, answers, index))
    object.put("element_payback",
               paybackObject(back->payback)
                   .set("in_place_of", std::string_view(answers.rigs[back->against].name))
                   .take());
  object.setIf("co2", co2Of(answer.day.total.fromWall(), plan.tariff));
  if (answer.day.finished()) object.put("heated_otherwise", heatedOtherwise(answer.day));
  const Json more = object.take();
  for (const auto& item : more.items()) rig[item.key()] = item.value();
}

}  // namespace rigs
