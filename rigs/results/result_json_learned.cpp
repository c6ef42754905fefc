// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/results/result_json_learned.hpp"

#include <utility>

#include "rigs/plans/rig_letters.hpp"
#include "rigs/results/result_json_object.hpp"

namespace rigs {
namespace {

using namespace physics;

std::string_view nameOf(const std::optional<Unknown>& what) {
  if (!what) return "thermometer_K";
  switch (*what) {
    case Unknown::ClosedLosses:
      return "closed_losses";
    case Unknown::OpenSurface:
      return "open_surface";
    case Unknown::Amount:
      return "amount";
    case Unknown::Power:
      return "power";
    case Unknown::Room:
      return "room_K";
    case Unknown::Water:
      return "water_K";
    case Unknown::RimGap:
      return "rim_gap";
    case Unknown::Absorption:
      break;
  }
  return "absorption";
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
      .set("p10", estimate.low)
      .set("p50", estimate.middle)
      .set("p90", estimate.high)
      .take();
}

Json unknownsJson(const Learned& learned) {
  Json all = Json::object();
  for (const LearnedUnknown& one : learned.unknowns)
    all[std::string(nameOf(one.what))] = Object()
                                             .set("learned", one.learned())
                                             .set("spread_left", one.spreadLeft)
                                             .put("before", estimateJson(one.before))
                                             .put("after", estimateJson(one.after))
                                             .take();
  return all;
}

template <class Q>
void putBand(Object& object, const char* key, const Band<Q>& band) {
  if (!band.low && !band.middle && !band.high) return;
  object.put(
      key,
      Object().setIf("p10", band.low).setIf("p50", band.middle).setIf("p90", band.high).take());
}

Json bandsJson(const Bands& bands) {
  Object object;
  if (bands.days == 0) return object.take();
  object.set("rolls", bands.rolls).set("ends", bands.ends);
  putBand(object, "water_ready", bands.waterReady);
  putBand(object, "boil_begins", bands.boilBegins);
  putBand(object, "over", bands.over);
  putBand(object, "boil_off_per_h", bands.boilOff);
  putBand(object, "result", bands.result);
  putBand(object, "from_wall", bands.fromWall);
  putBand(object, "cost", bands.cost);
  putBand(object, "morning", bands.morning);
  return object.take();
}

Json readingJson(const readings::Reading& read, const JudgedReading& judged) {
  Object object;
  object.set("line", static_cast<double>(read.line)).set("clock", read.at);
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
      .put("day_before", bandsJson(learned.before))
      .put("day_after", bandsJson(learned.after));
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
