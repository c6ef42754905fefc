// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/rinse_reader.hpp"

#include <algorithm>

#include "physics/wort.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/keys.hpp"
#include "rigs/plans/water_temperature.hpp"

namespace rigs {
namespace {

using namespace physics;

enum class Heated { SameCircuit, AnotherCircuit, NotElectric };

bool isLiquidAndHeated(const JsonCursor& at, Temperature stated, const Place& place) {
  const Verbatim example{R"("temperature": "75 C")"};
  if (!isNoHotterThanBoiling(
          at, stated, place,
          TOLD("Problem", "rinsing water at %1 is not possible: water boils at %2 here"), example))
    return false;
  if (stated >= place.water - kSameInWords) return true;
  at.error(
      "temperature",
      withExample(
          advised(Told(TOLD("Problem", "rinsing water at %1 is colder than it is drawn, at %2"),
                       amount(stated), amount(place.water)),
                  Told(TOLD("Problem", "accepted is %1 to %2"), amount(place.water),
                       amount(boilingPoint(0.0, place.pressure)))),
          example));
  return false;
}

// Without grain nothing is lifted, and what is stated of it says nothing.
bool isLifted(const JsonCursor& batch, const char* key) {
  if (batch.has("grain")) return true;
  batch.warn(key, advised(Told(TOLD("Problem", "there is no grain to lift")),
                          Told(TOLD("Problem", "add \"grain\" or leave this out"))));
  return false;
}

void warnOfUnused(const JsonCursor& at) {
  for (const char* key : {"power", "efficiency"}) {
    if (!at.has(key)) continue;
    at.warn(key, advised(Told(TOLD("Problem",
                                   "rinsing water that is not heated by electricity has no use for "
                                   "this")),
                         Told(TOLD("Problem", "state another \"heated\" or leave this out"))));
  }
}

}  // namespace

IfStated<Rinse> readRinse(const JsonCursor& batch, const Place& place) {
  using Nothing = std::optional<Rinse>;
  if (!batch.has("rinse")) return Nothing();
  const auto at = batch.object("rinse");
  if (!at) return std::nullopt;
  const auto volume = at->quantity<Volume>("volume", {litres(0.1), litres(500.0)});
  const auto temperature = at->quantity<Temperature>("temperature", {celsius(0.0), celsius(100.0)});
  const auto heated = at->oneOf<Heated>("heated", {{"same circuit", Heated::SameCircuit},
                                                   {"another circuit", Heated::AnotherCircuit},
                                                   {"not electric", Heated::NotElectric}});
  const auto power = at->quantityIfGiven<Power>("power", {watts(50.0), watts(30e3)});
  const auto efficiency =
      at->optionalQuantity<double>("efficiency", kRinseHeaterEfficiency, {0.3, 1.0});
  const auto reached = at->optionalQuantity<double>("reached", kReachedByRinse, {0.0, 1.0});
  at->warnAboutKeysExcept(keysOf("/batch/rinse"));
  const bool good = temperature && isLiquidAndHeated(*at, *temperature, place);
  if (heated && *heated == Heated::NotElectric) warnOfUnused(*at);
  if (!good || !volume || !heated || !efficiency || !reached) return std::nullopt;
  if (at->has("power") && !power) return std::nullopt;
  if (!isLifted(batch, "rinse")) return Nothing();
  Rinse rinse{.atTwentyDegrees = *volume,
              .temperature = std::clamp(*temperature, place.water,
                                        std::max(place.water, boilingPoint(0.0, place.pressure))),
              .electric = {},
              .reached = *reached};
  if (*heated != Heated::NotElectric)
    rinse.electric = RinseHeater{
        .onSameCircuit = *heated == Heated::SameCircuit, .efficiency = *efficiency, .power = power};
  return Nothing(rinse);
}

IfStated<Draining> readDraining(const JsonCursor& batch) {
  using Nothing = std::optional<Draining>;
  if (!batch.has("drain")) return Nothing();
  const auto at = batch.object("drain");
  if (!at) return std::nullopt;
  const auto time = at->quantity<Time>("time", {minutes(1.0), hours(2.0)});
  const auto on = at->optionalOneOf<bool>("element", false, {{"off", false}, {"on", true}});
  at->warnAboutKeysExcept(keysOf("/batch/drain"));
  if (!time || !on) return std::nullopt;
  if (!isLifted(batch, "drain")) return Nothing();
  return Nothing(Draining{.duration = *time, .elementOn = *on});
}

bool leavesWaterToMash(const JsonCursor& at, const Batch& batch) {
  const auto* wanted = std::get_if<WantedWort>(&batch.size);
  if (!batch.rinse || !wanted) return true;
  // Wetted grain alone takes up about 1 L/kg: below that there is no mash to heat.
  const Volume least = litresPerKilogram(1.2) * batch.grain.mass;
  const Volume all = wanted->atTwentyDegrees + batch.grain.mass * batch.absorption;
  const Volume left = all - batch.rinse->atTwentyDegrees;
  if (left >= least) return true;
  const Volume most = all - least;
  if (most < litres(0.1)) {
    at.error("volume",
             advised(Told(TOLD("Problem",
                               "%1 of rinsing water are too much: %2 of wort need them all "
                               "for the mash of %3 of grain"),
                          amount(batch.rinse->atTwentyDegrees), amount(wanted->atTwentyDegrees),
                          amount(batch.grain.mass)),
                     Told(TOLD("Problem", "take less grain, or leave the rinse out"))));
    return false;
  }
  at.error("volume",
           advised(Told(TOLD("Problem",
                             "%1 of rinsing water leave too little of the water for the mash of "
                             "%2 of grain"),
                        amount(batch.rinse->atTwentyDegrees), amount(batch.grain.mass)),
                   Told(TOLD("Problem", "up to about %1 are accepted"),
                        amount(most, {.significantDigits = 2, .decimals = {}}))));
  return false;
}

}  // namespace rigs
