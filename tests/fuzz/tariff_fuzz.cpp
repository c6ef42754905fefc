// SPDX-License-Identifier: GPL-3.0-or-later
// Any JSON as a plan's tariff: told where it is wrong; what is accepted has a finite price of every
// hour and a cheapest start.
#include <cmath>
#include <nlohmann/json.hpp>

#include "rigs/plans/plan.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "tests/fuzz/fuzzed.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using Json = nlohmann::ordered_json;
  const Json tariff = Json::parse(data, data + size, nullptr, /*allow_exceptions=*/false);
  if (tariff.is_discarded()) return 0;
  static const Json plan = Json::parse(*rigs::planStartText("one-kettle"));
  Json document = plan;
  document["tariff"] = tariff;
  rigs::Problems problems;
  const auto read = rigs::readPlan(document.dump(-1, ' ', false, Json::error_handler_t::replace),
                                   "/nonexistent", problems);
  fuzz::requireTold(read.has_value(), problems);
  if (!read) return 0;
  const rigs::Tariff& prices = read->tariff;
  if (!prices.isStated()) return 0;
  static const physics::BrewDay day =
      physics::simulate(read->rigs[0].rig, read->batch, read->place);
  const auto cost = rigs::dayCost(day, prices, read->startOfDay);
  fuzz::require(cost && std::isfinite(*cost));
  const auto choice = rigs::cheapestStart(day, prices);
  fuzz::require(!choice || choice->cheapest.cost <= choice->dearest.cost);
  return 0;
}
