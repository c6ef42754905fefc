// SPDX-License-Identifier: GPL-3.0-or-later
// What time and heat do to the wort, for programs.
#include "rigs/answers/wort.hpp"
#include "rigs/results/result_json_object.hpp"

namespace rigs {
namespace {

Json hotStageJson(const HotStage& stage) {
  return Object()
      .set("lasts", stage.lasts)
      .set("iso_at_100_C", stage.worth.iso)
      .set("iso_at_100_C_below_80_C", stage.worth.isoTooCold)
      .set("smm_at_100_C", stage.worth.sulfide)
      .take();
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

}  // namespace

Json wortJson(const WortAnswer& answer) {
  const BoiledWort& wort = answer.boiled;
  Object object;
  object.set("boiling", wort.boiling)
      .put("heating_up", hotStageJson(wort.heatingUp))
      .put("boil", hotStageJson(wort.boil))
      .put("stand", hotStageJson(wort.stand))
      .put("chilling", hotStageJson(wort.chilling));
  if (wort.chillingAtMost) object.put("chilling_at_most", hotStageJson(*wort.chillingAtMost));
  object.put("left_by_itself", hotStageJson(wort.byItself))
      .set("whole_iso_at_100_C", wort.whole().iso)
      .set("whole_smm_at_100_C", wort.whole().sulfide)
      .set("boil_at_sea_level_iso_at_100_C", wort.atSeaLevel)
      .set("boil_for_sea_level", wort.forSeaLevel)
      .set("boil_off_share_per_h", wort.evaporatedPerHour)
      .set("carries_dms_off", carriesOffKey(carriesOff(wort.evaporatedPerHour)))
      .put("boiled_shares", sulfideJson(wort.boiled))
      .put("chilled_shares", sulfideJson(wort.chilled))
      .put("left_by_itself_shares", sulfideJson(wort.leftByItself));
  return object.take();
}

}  // namespace rigs
