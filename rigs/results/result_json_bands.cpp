// SPDX-License-Identifier: GPL-3.0-or-later
// How sure the figures are, for programs.
#include <array>

#include "rigs/results/result_json_object.hpp"

namespace rigs {
namespace {

constexpr std::array<const char*, kUnknowns> kUnknownKeys{
    "closed_losses", "open_surface", "amount", "power", "room", "water", "rim_gap", "absorption"};
constexpr std::array<const char*, kBandsOf> kBandKeys{"water_ready", "boil_begins",   "over",
                                                      "boil_off",    "result",        "from_wall",
                                                      "cost",        "least_to_roll", "morning"};

template <class Q>
Json bandJson(const Band<Q>& band, const std::string& unit = {}) {
  Object object;
  if (band.low) object.set("low" + unit, *band.low);
  if (band.middle) object.set("middle" + unit, *band.middle);
  if (band.high) object.set("high" + unit, *band.high);
  return object.take();
}

Json causesJson(const BandCauses& causes) {
  Object all;
  for (std::size_t figure = 0; figure < kBandsOf; ++figure) {
    Object shares;
    for (std::size_t k = 0; k < kUnknowns; ++k) shares.set(kUnknownKeys[k], causes[figure][k]);
    all.put(kBandKeys[figure], shares.take());
  }
  return all.take();
}

Json courseJson(const std::vector<BandCoursePoint>& course) {
  Json list = Json::array();
  for (const BandCoursePoint& point : course)
    list.push_back(Object()
                       .set("time", point.time)
                       .setIf("low", point.wort.low)
                       .setIf("middle", point.wort.middle)
                       .setIf("high", point.wort.high)
                       .take());
  return list;
}

}  // namespace

std::string keyOf(Unknown what) { return kUnknownKeys[placeOf(what)]; }

Json bandsJson(const Bands& bands, const SureAnswer* sure) {
  Object object;
  object.set("days", static_cast<double>(bands.days))
      .set("rolls_share", bands.rolls)
      .set("ends_share", bands.ends)
      .put("water_ready", bandJson(bands.waterReady))
      .put("boil_begins", bandJson(bands.boilBegins))
      .put("over", bandJson(bands.over))
      .put("boil_off", bandJson(bands.boilOff, "_share_of_pre_boil_per_h"))
      .put("result", bandJson(bands.result))
      .put("from_wall", bandJson(bands.fromWall))
      .put("cost", bandJson(bands.cost))
      .put("least_to_roll", bandJson(bands.leastToRoll))
      .put("morning", bandJson(bands.morning));
  if (sure) object.put("causes", causesJson(sure->causes)).put("course", courseJson(sure->course));
  return object.take();
}

}  // namespace rigs
