// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/batch_reader.hpp"

#include <algorithm>
#include <utility>
#include <variant>
#include <vector>

#include "physics/water.hpp"
#include "physics/wort.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/keys.hpp"
#include "rigs/plans/rinse_reader.hpp"
#include "rigs/plans/water_temperature.hpp"

namespace rigs {
namespace {

using namespace physics;

struct GrainRead {
  Grain grain;
  double extract;
  VolumePerMass absorption, displacement;
};

std::optional<GrainRead> readGrain(const JsonCursor& at, const Place& place) {
  const auto mass = at.quantity<Mass>("mass", {kilograms(0.001), kilograms(500.0)});
  const auto temperature =
      at.optionalQuantity<Temperature>("temperature", place.room, {celsius(-20.0), celsius(60.0)});
  const auto moisture = at.optionalQuantity<double>("moisture", 0.045, {0.0, 0.15});
  const auto extract = at.optionalQuantity<double>("extract", 0.72, {0.1, 0.95});
  const auto absorption = at.optionalQuantity<VolumePerMass>(
      "absorption", litresPerKilogram(0.8), {litresPerKilogram(0.0), litresPerKilogram(3.0)});
  const auto displacement = at.optionalQuantity<VolumePerMass>(
      "displacement", litresPerKilogram(0.67), {litresPerKilogram(0.3), litresPerKilogram(1.5)});
  const double wet = moisture.value_or(0.045);
  const auto heat = at.optionalQuantity<SpecificHeat>(
      "specific_heat", maltSpecificHeat(wet),
      {joulesPerKilogramKelvin(500.0), joulesPerKilogramKelvin(4200.0)});
  const auto slaking = at.optionalQuantity<SpecificEnergy>(
      "slaking_heat", maltSlakingHeat(wet), {joulesPerKilogram(0.0), joulesPerKilogram(100e3)});
  at.warnAboutKeysExcept(keysOf("/batch/grain"));
  if (!mass || !temperature || !moisture || !extract || !absorption || !displacement || !heat ||
      !slaking)
    return std::nullopt;
  if (*extract + *moisture > 1.0) {
    at.error(
        "extract",
        advised(Told(TOLD("Problem",
                          "an extract of %1 and a moisture of %2 are more than the whole "
                          "grain"),
                     amount(*extract), amount(*moisture)),
                Told(TOLD("Problem", "together they may be 100 %, usual are 72 % and 4.5 %"))));
    return std::nullopt;
  }
  return GrainRead{.grain = {.mass = *mass,
                             .temperature = *temperature,
                             .specificHeat = *heat,
                             .slakingHeat = *slaking},
                   .extract = *extract,
                   .absorption = *absorption,
                   .displacement = *displacement};
}

// A mash below the boiling point of water, by 1 K: no kettle holds a rest at the boil.
bool isBelowBoiling(const JsonCursor& at, Temperature wanted, const Place& place) {
  const Temperature boils = boilingPoint(0.0, place.pressure);
  const TemperatureDifference below = kelvins(1.0);
  if (wanted <= boils - below) return true;
  at.error("temperature",
           Told(TOLD("Problem",
                     "a mash at %1 is not possible: water boils at %2 here, and a mash must stay "
                     "%3 below"),
                amount(wanted), amount(boils), amount(below)));
  return false;
}

std::optional<HeldMash> readRests(const JsonCursor& at, const Place& place) {
  const auto rests = at.objects("rests", {1, 12});
  if (!rests) return std::nullopt;
  HeldMash held;
  bool good = true;
  for (const JsonCursor& rest : *rests) {
    const auto temperature =
        rest.quantity<Temperature>("temperature", {celsius(20.0), celsius(100.0)});
    const auto time = rest.quantity<Time>("time", {seconds(0.0), hours(24.0)});
    rest.warnAboutKeysExcept(keysOf("/batch/mash/rests/*"));
    if (!temperature || !time || !isBelowBoiling(rest, *temperature, place)) {
      good = false;
      continue;
    }
    if (!held.rests.empty() && *temperature <= held.rests.back().temperature)
      rest.warn("temperature",
                advised(Told(TOLD("Problem", "%1 does not rise above the rest before, at %2"),
                             amount(*temperature), amount(held.rests.back().temperature)),
                        Told(TOLD("Problem", "a kettle can only cool by waiting"))));
    held.rests.push_back({.temperature = *temperature, .duration = *time});
  }
  return good && held.rests.size() == rests->size() ? std::optional(held) : std::nullopt;
}

std::optional<UnpluggedMash> readUnplugged(const JsonCursor& at, const Place& place) {
  const auto temperature = at.quantity<Temperature>("temperature", {celsius(20.0), celsius(100.0)});
  const auto time = at.quantity<Time>("time", {seconds(0.0), hours(48.0)});
  at.warnAboutKeysExcept(keysOf("/batch/mash/unplugged"));
  if (!temperature || !time || !isBelowBoiling(at, *temperature, place)) return std::nullopt;
  return UnpluggedMash{.start = *temperature, .duration = *time};
}

// How much of it; water has no extract.
struct AmountAdded {
  Mass mass;
  double extract;
};

std::optional<AmountAdded> readAmountAdded(const JsonCursor& at) {
  const bool weighed = at.has("mass");
  if (weighed == at.has("water")) {
    if (weighed)
      at.error(
          advised(Told(TOLD("Problem", "both \"mass\" and \"water\" of an addition are stated")),
                  Told(TOLD("Problem", "keep one of them"))));
    else
      at.error(withExample(
          advised(Told(TOLD("Problem", "neither \"mass\" nor \"water\" of an addition is stated")),
                  Told(TOLD("Problem", "write one"))),
          Verbatim{R"("mass": "500 g", "extract": "100 %")"}));
    return std::nullopt;
  }
  if (weighed) {
    const auto mass = at.quantity<Mass>("mass", {kilograms(0.001), kilograms(500.0)});
    const auto extract = at.quantity<double>("extract", {0.0, 1.0});
    return mass && extract ? std::optional(AmountAdded{*mass, *extract}) : std::nullopt;
  }
  const auto water = at.quantity<Volume>("water", {litres(0.001), litres(500.0)});
  const auto extract = at.quantityIfGiven<double>("extract", {0.0, 1.0});
  if (at.has("extract") && (!extract || *extract > 0.0)) {
    if (extract)
      at.error("extract",
               advised(Told(TOLD("Problem", "water has no extract, but %1 are stated"),
                            amount(*extract)),
                       Told(TOLD("Problem", "write \"mass\" for \"water\", or leave this out"))));
    return std::nullopt;
  }
  return water ? std::optional(AmountAdded{*water * waterDensity(celsius(20.0)), 0.0})
               : std::nullopt;
}

bool isWithinTheBoil(const JsonCursor& at, Time before, Time boil) {
  if (boil <= seconds(0.0)) {
    at.error(advised(Told(TOLD("Problem", "there is no boil for it to go into")),
                     Told(TOLD("Problem", "state a boil, or leave this out"))));
    return false;
  }
  if (before <= boil) return true;
  at.error("before_end",
           withExample(advised(Told(TOLD("Problem",
                                         "%1 before the end is before the boil begins, "
                                         "which lasts %2"),
                                    amount(before), amount(boil)),
                               Told(TOLD("Problem", "accepted is 0 min to %1"), amount(boil))),
                       Verbatim{R"("before_end": "10 min")"}));
  return false;
}

std::optional<Addition> readAddition(const JsonCursor& at, const Place& place,
                                     std::optional<Time> boil) {
  const auto what = at.text("what", 80);
  const auto much = readAmountAdded(at);
  const auto temperature = at.optionalQuantity<Temperature>(
      "temperature", std::max(place.room, celsius(0.0)), {celsius(0.0), celsius(100.0)});
  const auto before = at.quantity<Time>("before_end", {seconds(0.0), hours(12.0)});
  at.warnAboutKeysExcept(keysOf("/batch/additions/*"));
  const bool cool =
      temperature &&
      isNoHotterThanBoiling(
          at, *temperature, place,
          TOLD("Problem", "an addition at %1 is not possible: water boils at %2 here"),
          Verbatim{R"("temperature": "20 C")"});
  const bool timely = before && (!boil || isWithinTheBoil(at, *before, *boil));
  if (!what || !much || !cool || !timely) return std::nullopt;
  return Addition{.what = *what,
                  .mass = much->mass,
                  .extract = much->extract,
                  .temperature = std::min(*temperature, boilingPoint(0.0, place.pressure)),
                  .beforeEnd = *before,
                  .isPoured = at.has("water")};
}

// Nothing if one of them is wrong; none where none are stated.
std::optional<std::vector<Addition>> readAdditions(const JsonCursor& batch, const Place& place,
                                                   std::optional<Time> boil) {
  std::vector<Addition> all;
  if (!batch.has("additions")) return all;
  const auto stated = batch.objects("additions", {1, 12});
  if (!stated) return std::nullopt;
  bool good = true;
  for (const JsonCursor& at : *stated) {
    if (auto addition = readAddition(at, place, boil))
      all.push_back(std::move(*addition));
    else
      good = false;
  }
  return good ? std::optional(std::move(all)) : std::nullopt;
}

using Mash = std::variant<HeldMash, UnpluggedMash>;

std::optional<Mash> readMash(const JsonCursor& at, const Place& place) {
  at.warnAboutKeysExcept(keysOf("/batch/mash"));
  const bool rests = at.has("rests");
  const bool unplugged = at.has("unplugged");
  if (rests == unplugged) {
    if (rests)
      at.error(advised(Told(TOLD("Problem", "the mash has both held rests and an unplugged one")),
                       Told(TOLD("Problem", "keep one of them"))));
    else
      at.error(advised(Told(TOLD("Problem", "the mash has neither \"rests\" nor \"unplugged\"")),
                       Told(TOLD("Problem", "write e.g. %1"),
                            Verbatim{R"("rests": [{"temperature": "66 C", "time": "60 min"}])"})));
    return std::nullopt;
  }
  if (rests) {
    auto held = readRests(at, place);
    return held ? std::optional<Mash>(std::move(*held)) : std::nullopt;
  }
  const auto object = at.object("unplugged");
  const auto left = object ? readUnplugged(*object, place) : std::nullopt;
  return left ? std::optional<Mash>(*left) : std::nullopt;
}

using Size = std::variant<PouredWater, WantedWort>;

std::optional<Size> readSize(const JsonCursor& at) {
  constexpr Range<Volume> kVolumes{litres(0.5), litres(2000.0)};
  if (at.has("wort") == at.has("water")) {
    if (at.has("wort"))
      at.error(advised(Told(TOLD("Problem", "both \"wort\" and \"water\" are stated")),
                       Told(TOLD("Problem", "keep one of them, the other follows"))));
    else
      at.error(withExample(
          advised(Told(TOLD("Problem",
                            "neither \"wort\", the cold wort wanted after the boil, nor "
                            "\"water\", the cold water poured in, is stated")),
                  Told(TOLD("Problem", "write one"))),
          Verbatim{R"("wort": "23 L")"}));
    return std::nullopt;
  }
  if (at.has("wort")) {
    const auto wort = at.quantity("wort", kVolumes);
    return wort ? std::optional<Size>(WantedWort{*wort}) : std::nullopt;
  }
  const auto water = at.quantity("water", kVolumes);
  return water ? std::optional<Size>(PouredWater{*water}) : std::nullopt;
}

// Grain against water, as far as it can be told without brewing.
bool isBrewable(const JsonCursor& at, const Size& size, const GrainRead& grain) {
  const MassDensity cold = kilogramsPerCubicMetre(998.2);  // water at 20 C
  const Volume kept = grain.grain.mass * grain.absorption;
  const Mass extract = grain.extract * grain.grain.mass;
  Volume water{};
  if (const auto* poured = std::get_if<PouredWater>(&size)) {
    water = poured->atTwentyDegrees;
    if (water <= 1.25 * kept) {
      at.error("water",
               advised(Told(TOLD("Problem", "%1 of water are too little: the grain keeps %2"),
                            amount(water), amount(kept)),
                       Told(TOLD("Problem", "pour at least a quarter more than that"))));
      return false;
    }
  } else {
    water = std::get<WantedWort>(size).atTwentyDegrees + kept;
  }
  // Beyond 30 % the laws for sugar solutions used here have no data, and no mash gets there.
  constexpr double kStrongest = 0.30;
  const double strength = static_cast<double>(extract / (extract + water * cold));
  if (strength > kStrongest) {
    at.error(
        "grain",
        advised(Told(TOLD("Problem", "%1 of grain in about %2 of water give a wort of %3 extract"),
                     amount(grain.grain.mass), amount(water), amount(strength)),
                Told(TOLD("Problem", "up to %1 are accepted, usual are 10 to 18 %"),
                     amount(kStrongest))));
    return false;
  }
  const VolumePerMass thickness = water / grain.grain.mass;
  // Wetted grain alone takes up about 1 L/kg: below that there is no mash to heat.
  const VolumePerMass thickest = litresPerKilogram(1.2);
  const Amount from = numberAlone(litresPerKilogram(2.5));
  const Amount to = amount(litresPerKilogram(6.0));
  if (thickness < thickest) {
    at.error("grain",
             advised(Told(TOLD("Problem", "%1 of water to grain is no mash"), amount(thickness)),
                     Told(TOLD("Problem", "from %1 is accepted, usual are %2 to %3"),
                          amount(thickest), from, to)));
    return false;
  }
  if (thickness < litresPerKilogram(1.8))
    at.warn("grain", advised(Told(TOLD("Problem", "%1 of water to grain is too thick to stir"),
                                  amount(thickness)),
                             Told(TOLD("Problem", "usual are %1 to %2"), from, to)));
  return true;
}

}  // namespace

std::optional<Batch> readBatch(const JsonCursor& at, const Place& place) {
  const auto size = readSize(at);
  std::optional<GrainRead> grain;
  std::optional<Mash> mash;
  bool good = size.has_value();
  if (at.has("grain")) {
    const auto object = at.object("grain");
    if (object) grain = readGrain(*object, place);
    const auto mashObject = at.object("mash");
    if (mashObject) mash = readMash(*mashObject, place);
    good = good && grain && mash;
    if (size && grain) good = isBrewable(at, *size, *grain) && good;
  } else {
    if (at.has("mash"))
      at.warn("mash", advised(Told(TOLD("Problem", "there is no grain, so there is no mash")),
                              Told(TOLD("Problem", "add \"grain\" or leave this out"))));
    mash = Mash(HeldMash{});
  }
  const auto mashingIn =
      at.optionalQuantity<Time>("mashing_in", minutes(5.0), {seconds(0.0), hours(1.0)});
  const auto boil = at.quantity<Time>("boil", {seconds(0.0), hours(12.0)});
  auto additions = readAdditions(at, place, boil);
  const auto rinse = readRinse(at, place);
  const auto drain = readDraining(at);
  at.warnAboutKeysExcept(keysOf("/batch"));
  if (!good || !mashingIn || !boil || !additions || !rinse || !drain) return std::nullopt;
  Batch batch{.size = *size,
              .grain = {.mass = kilograms(0.0),
                        .temperature = place.room,
                        .specificHeat = maltSpecificHeat(0.045),
                        .slakingHeat = maltSlakingHeat(0.045)},
              .extractYield = 0.72,
              .displacement = litresPerKilogram(0.67),
              .absorption = litresPerKilogram(0.8),
              .mash = *mash,
              .mashingIn = *mashingIn,
              .boil = *boil,
              .additions = std::move(*additions),
              .rinse = *rinse,
              .drain = *drain};
  if (grain) {
    batch.grain = grain->grain;
    batch.extractYield = grain->extract;
    batch.displacement = grain->displacement;
    batch.absorption = grain->absorption;
  }
  if (batch.rinse && !leavesWaterToMash(*at.object("rinse"), batch)) return std::nullopt;
  return batch;
}

}  // namespace rigs
