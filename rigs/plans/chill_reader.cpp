// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/chill_reader.hpp"

#include <numbers>

#include "physics/chilling.hpp"
#include "physics/exchanger.hpp"
#include "physics/water.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/catalogue.hpp"
#include "rigs/plans/keys.hpp"
#include "rigs/plans/plan_names.hpp"

namespace rigs {
namespace {

using namespace physics;

// Of the kettle: a coil that displaces more leaves no room for the wort. Own judgement; what is
// sold for 20 to 70 L displaces 1 to 5 %.
constexpr double kMostOfTheKettle = 0.15;

bool hasRoomForCoil(const JsonCursor& at, const Chiller& chiller, const Vessel& vessel) {
  if (chiller.kind != Chiller::Kind::Coil) return true;
  const Volume coil = 0.25 * std::numbers::pi * chiller.tube * chiller.tube * chiller.length;
  const double share = coil / capacity(vessel);
  if (share <= kMostOfTheKettle) return true;
  at.error("length",
           advised(Told(TOLD("Problem",
                             "%1 of this tube displace %2, which is %3 of the kettle: such a coil "
                             "does not go in beside the wort"),
                        amount(chiller.length), amount(coil), amount(share)),
                   Told(TOLD("Problem", "up to %1 is accepted, usual are %2 to %3 of tube"),
                        amount(kMostOfTheKettle), amount(metres(7.0)), amount(metres(15.0)))));
  return false;
}

}  // namespace

std::optional<Chiller> readChiller(const Layers& rig, const Vessel* vessel) {
  const JsonCursor& with = rig.with("chiller");
  if (!with.has("chiller")) return Chiller{};
  const auto at = with.object("chiller");
  if (!at) return std::nullopt;
  Chiller usual;
  const auto kind = at->optionalOneOf<Chiller::Kind>("kind", usual.kind,
                                                     {{"coil", Chiller::Kind::Coil},
                                                      {"counterflow", Chiller::Kind::Counterflow},
                                                      {"air", Chiller::Kind::Air}});
  const auto steel =
      at->optionalOneOf<bool>("material", false, {{"copper", false}, {"stainless steel", true}});
  const auto tube =
      at->optionalQuantity<Length>("tube", usual.tube, {millimetres(4.0), millimetres(40.0)});
  const auto length =
      at->optionalQuantity<Length>("length", usual.length, {metres(0.5), metres(60.0)});
  const auto stirred =
      at->optionalOneOf<bool>("wort", false, {{"still", false}, {"stirred", true}});
  const auto water = at->optionalQuantity<VolumeFlow>("water_flow", usual.waterFlow,
                                                      {litresPerHour(12.0), litresPerHour(3600.0)});
  const auto wort = at->optionalQuantity<VolumeFlow>("wort_flow", usual.wortFlow,
                                                     {litresPerHour(12.0), litresPerHour(1800.0)});
  at->warnAboutKeysExcept(keysOf("/rigs/*/chiller"));
  if (!kind || !steel || !tube || !length || !stirred || !water || !wort) return std::nullopt;
  Chiller read{.kind = *kind,
               .isStated = true,
               .material = *steel ? "stainless steel" : "copper",
               .conductivity = usual.conductivity,
               .tube = *tube,
               .length = *length,
               .stirred = *stirred,
               .waterFlow = *water,
               .wortFlow = *wort};
  if (const Material* tubes = catalogue().material(read.material))
    read.conductivity = tubes->conductivity;
  if (vessel && !hasRoomForCoil(*at, read, *vessel)) return std::nullopt;
  return read;
}

namespace {

// By so much ice for each ten litres of it: wort is taken for water of 1.05 kg/L and 4 kJ/(kg K),
// within 3 %.
Mass iceForTenLitres(Temperature from, Temperature to) {
  const Energy heat = kilograms(10.5) * joulesPerKilogramKelvin(4000.0) * (from - to);
  return iceFor(heat, to);
}

bool isReachedByWater(const JsonCursor& batch, Temperature pitching, Temperature water) {
  const Temperature floor = water + kNearestToCoolant;
  if (pitching >= floor) return true;
  batch.error(
      "pitching_temperature",
      advised(
          Told(TOLD("Problem",
                    "wort at %1 is not possible with cooling water of %2: it comes to about "
                    "%3, %4 above the water"),
               amount(pitching), amount(water), amount(floor), amount(kNearestToCoolant)),
          Told(TOLD("Problem",
                    "pitch at %1 or more, take colder water, or bring the rest by a bath of ice "
                    "round the kettle, about %2 for each %3 of wort"),
               amount(floor), amount(iceForTenLitres(floor, pitching)), amount(litres(10.0)))));
  return false;
}

}  // namespace

std::optional<Chilling> readChilling(const std::optional<JsonCursor>& batch,
                                     const std::optional<JsonCursor>& place) {
  Chilling read;
  bool good = true;
  if (place && place->has("cooling_water")) {
    read.water = place->quantity<Temperature>("cooling_water", {celsius(0.5), celsius(60.0)});
    read.isStated = true;
    good = read.water.has_value();
  }
  if (!batch) return good ? std::optional(read) : std::nullopt;
  const bool hasPitching = batch->has("pitching_temperature");
  read.isStated = read.isStated || hasPitching || batch->has("hot_stand");
  const auto pitching = batch->optionalQuantity<Temperature>("pitching_temperature", read.pitching,
                                                             {celsius(2.0), celsius(50.0)});
  const auto stand =
      batch->optionalQuantity<Time>("hot_stand", read.hotStand, {seconds(0.0), hours(12.0)});
  if (pitching) read.pitching = *pitching;
  if (stand) read.hotStand = *stand;
  good = good && pitching && stand;
  if (hasPitching && pitching && read.water)
    good = isReachedByWater(*batch, read.pitching, *read.water) && good;
  return good ? std::optional(read) : std::nullopt;
}

}  // namespace rigs
