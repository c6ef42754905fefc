// SPDX-License-Identifier: GPL-3.0-or-later
// What time and heat do to the wort, for programs.
#include "rigs/answers/wort.hpp"
#include "rigs/results/result_json_object.hpp"

namespace rigs {
namespace {

// What becomes of DMS's precursor only where there was malt.
Json hotStageJson(const HotStage& stage, bool isOfMalt) {
  Object object;
  object.set("lasts", stage.lasts)
      .set("iso_at_100_C", stage.worth.iso)
      .set("iso_at_100_C_below_80_C", stage.worth.isoTooCold);
  if (isOfMalt) object.set("smm_at_100_C", stage.worth.sulfide);
  return object.take();
}

Json sulfideJson(const physics::Sulfide& sulfide) {
  return Object().set("smm", sulfide.precursor).set("dms", sulfide.dms).take();
}

std::string_view carriesOffKey(CarriesOff carries) {
  switch (carries) {
    case CarriesOff::Little:
      return "little";
    case CarriesOff::Uncertain:
      return "uncertain";
    case CarriesOff::Much:
      return "much";
  }
  return "";
}

Json mashedJson(const MashedWort& mash) {
  const physics::MashConversion& found = mash.conversion;
  Object object;
  object.set("lasts", found.lasts)
      .set("hottest", found.hottest)
      .set("starch_reached", found.reached)
      .set("starch_reached_at_least", found.reachedAtLeast)
      .setIf("starch_done_by", found.doneBy)
      .setIf("starch_done_late_by", found.doneLateBy)
      .set("at_45_to_60_C", found.betweenTrims);
  if (found.limit)
    object.set("attenuation_limit_low", found.limit->least)
        .set("attenuation_limit_high", found.limit->most)
        .set("attenuation_was_measured_so", found.limit->validity == physics::Validity::InRange);
  if (found.trimming)
    object.set("long_hours_add_up_to", found.trimming->probably)
        .set("long_hours_add_at_most", found.trimming->atMost);
  if (mash.gravity)
    object.set("gravity_before", mash.gravity->before)
        .set("gravity_fermented_low", mash.gravity->afterLeast)
        .set("gravity_fermented_high", mash.gravity->afterMost);
  return object.take();
}

void addSulfide(Object& object, const BoiledWort& wort) {
  object.set("whole_smm_at_100_C", wort.whole().sulfide)
      .set("carries_dms_off", carriesOffKey(carriesOff(wort.evaporatedPerHour)))
      .put("boiled_shares", sulfideJson(wort.boiled))
      .put("chilled_shares", sulfideJson(wort.chilled))
      .put("left_by_itself_shares", sulfideJson(wort.leftByItself));
}

void addBoiled(Object& object, const BoiledWort& wort) {
  const auto stage = [&](const char* key, const HotStage& of) {
    object.put(key, hotStageJson(of, wort.isOfMalt));
  };
  object.set("boiling", wort.boiling);
  stage("heating_up", wort.heatingUp);
  stage("boil", wort.boil);
  stage("stand", wort.stand);
  stage("chilling", wort.chilling);
  if (wort.chillingAtMost) stage("chilling_at_most", *wort.chillingAtMost);
  stage("left_by_itself", wort.byItself);
  object.set("whole_iso_at_100_C", wort.whole().iso)
      .set("boil_at_sea_level_iso_at_100_C", wort.atSeaLevel)
      .setIf("boil_for_sea_level", wort.forSeaLevel)
      .set("boil_off_share_per_h", wort.evaporatedPerHour);
  if (wort.isOfMalt) addSulfide(object, wort);
}

}  // namespace

Json wortJson(const WortAnswer& answer) {
  Object object;
  if (answer.mashed) object.put("mash", mashedJson(*answer.mashed));
  if (answer.boiled) addBoiled(object, *answer.boiled);
  return object.take();
}

}  // namespace rigs
