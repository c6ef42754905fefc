// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/results/result_json_learned.hpp"

#include <utility>

#include "rigs/plans/rig_letters.hpp"
#include "rigs/results/result_json_object.hpp"

namespace rigs {
namespace {

using namespace physics;

std::string keyOf(const std::optional<Unknown>& what) {
  if (!what) return "thermometer_K";
  return isOffset(*what) ? keyOf(*what) + "_K" : keyOf(*what);
}

std::string_view whyNothing(NothingLearned why) {
  switch (why) {
    case NothingLearned::NothingUsable:
      return "no reading falls into the day";
    case NothingLearned::NoDay:
      return "the day stops before them";
    case NothingLearned::TooBent:
      break;
  }
  return "too unlike the plan";
}

Json estimateJson(const Estimate& estimate) {
  return Object()
      .set("low", estimate.low)
      .set("middle", estimate.middle)
      .set("high", estimate.high)
      .take();
}

Json unknownsJson(const Learned& learned) {
  Json all = Json::object();
  for (const LearnedUnknown& one : learned.unknowns)
    all[keyOf(one.what)] = Object()
                               .set("learned", one.learned())
                               .set("spread_left", one.spreadLeft)
                               .put("before", estimateJson(one.before))
                               .put("after", estimateJson(one.after))
                               .take();
  return all;
}

Json dayJson(const Bands& bands) {
  return bands.days > 0 ? bandsJson(bands, nullptr) : Json::object();
}

Json readingJson(const readings::Reading& read, const JudgedReading& judged) {
  Object object;
  object.put("line", read.line).set("clock", read.at);
  const auto numbers = [&](const std::string& unit, double value, const auto& made) {
    object.set("read" + unit, value)
        .set("expected" + unit, made(judged.expected))
        .set("as_learned" + unit, made(judged.fitted));
  };
  const auto same = [](double si) { return si; };
  if (const auto* wort = std::get_if<Temperature>(&read.value))
    numbers("_C", inCelsius(*wort), [](double si) { return inCelsius(kelvin(si)); });
  else if (const auto* energy = std::get_if<Energy>(&read.value))
    numbers("_kWh", inKilowattHours(*energy),
            [](double si) { return inKilowattHours(joules(si)); });
  else if (const auto* volume = std::get_if<readings::ReadVolume>(&read.value))
    numbers("_L", inLitres(volume->volume), [](double si) { return 1e3 * si; });
  else if (const auto* gravity = std::get_if<readings::ReadGravity>(&read.value))
    numbers("_gravity", gravity->gravity, same);
  return object.set("rows", static_cast<double>(judged.rows))
      .set("surprise", judged.surprise)
      .set("good", judged.good)
      .take();
}

Json nextJson(const Learned& learned) {
  const std::string width =
      learned.next.awaited == Awaited::Morning ? "half_width_K" : "half_width_s";
  const auto one = [&](const NextReading& next) {
    return Object().set("clock", next.at).set(width, next.halfWidth).take();
  };
  return Object()
      .set("awaited", learned.next.awaited == Awaited::Morning ? "morning" : "boil begins")
      .set(width, learned.next.halfWidthNow)
      .put("best", one(*learned.next.best))
      .put("earliest", one(*learned.next.earliest))
      .take();
}

}  // namespace

std::string learnedJson(const Plan& plan, std::size_t rig,
                        const std::vector<readings::Reading>& read, const Learned& learned,
                        const std::vector<Caution>& cautions) {
  Object object;
  object.put("format",
             Object().set("name", "heat-ledger-learned").put("version", kLearnedVersion).take());
  object.set("rig", letterOfSlot(slotsOf(plan.rigs)[rig])).set("name", plan.rigs[rig].name);
  if (learned.nothing) object.set("nothing", whyNothing(*learned.nothing));
  object.put("unknowns", unknownsJson(learned))
      .set("only_losses_per_litre", learned.onlyLossesPerLitre)
      .set("only_power_per_litre", learned.onlyPowerPerLitre)
      .put("stories", static_cast<int>(learned.stories))
      .set("other_unit", learned.otherUnit)
      .set("twelve_hours_off", learned.twelveHoursOff)
      .set("effective_draws", learned.effective)
      .put("day_before", dayJson(learned.before))
      .put("day_after", dayJson(learned.after));
  if (learned.next.best && learned.next.earliest && learned.next.awaited)
    object.put("next_reading", nextJson(learned));
  Json judged = Json::array();
  for (const JudgedReading& one : learned.judged)
    judged.push_back(readingJson(read[one.which], one));
  object.put("readings", std::move(judged));
  Json told = Json::array();
  for (const Caution& one : cautions)
    told.push_back(Object().set("topic", one.topic).set("text", inEnglish(one.text)).take());
  object.put("cautions", std::move(told));
  return object.take().dump(2) + '\n';
}

}  // namespace rigs
