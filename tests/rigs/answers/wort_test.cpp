// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan's day does to its wort: along which curves it is counted, and who gets it.
#include "rigs/answers/wort.hpp"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "rigs/answers/answers.hpp"
#include "rigs/answers/chilling.hpp"
#include "rigs/results/result_json.hpp"
#include "tests/gui/terminal/plan_in_code.hpp"
#include "tests/support/within.hpp"

namespace {

using namespace physics;
using namespace rigs;
using Json = nlohmann::ordered_json;

class WortOf : public ::testing::Test {
 protected:
  Plan plan_ = test_support::planInCode();
  RigAnswer first() const { return answer(plan_, Depth::Wort).rigs[0]; }
};

TEST_F(WortOf, CountsTheBoilAtItsOwnTemperature) {
  const RigAnswer rig = first();
  ASSERT_TRUE(rig.wort);
  const BoiledWort& wort = rig.wort->boiled.value();
  EXPECT_WITHIN(wort.boil.lasts, plan_.batch.boil, seconds(1.0));
  // At boiling all the time: one rate.
  const HotCurve held{{.lasts = plan_.batch.boil, .from = wort.boiling, .to = wort.boiling}};
  EXPECT_WITHIN(wort.boil.worth.iso, atHundred(held).iso, 0.01 * plan_.batch.boil);
  EXPECT_WITHIN(wort.boil.worth.sulfide, atHundred(held).sulfide, 0.01 * plan_.batch.boil);
  EXPECT_GT(wort.heatingUp.worth.iso, seconds(0.0));
  EXPECT_LT(wort.heatingUp.worth.iso, wort.heatingUp.lasts);
  HotMinutes sum = wort.heatingUp.worth;
  for (const HotStage* stage : {&wort.boil, &wort.stand, &wort.chilling}) sum += stage->worth;
  EXPECT_WITHIN(wort.whole().iso, sum.iso, seconds(1e-9));
  // The day keeps no curves for it.
  for (const Stage& stage : rig.day.stages) EXPECT_TRUE(stage.curve.empty());
}

TEST_F(WortOf, NeedsALongerBoilHigherUpAndCountsAStand) {
  const BoiledWort low = first().wort->boiled.value();
  plan_.place.pressure = pascals(84500.0);  // about 1500 m
  plan_.chilling.hotStand = minutes(20.0);
  const BoiledWort high = first().wort->boiled.value();
  EXPECT_LT(high.boil.worth.iso, 0.8 * low.boil.worth.iso);
  EXPECT_WITHIN(high.forSeaLevel.value() * (high.boil.worth.iso / high.boil.lasts), high.atSeaLevel,
                0.01 * high.atSeaLevel);
  EXPECT_EQ(low.stand.lasts, seconds(0.0));
  EXPECT_WITHIN(high.stand.lasts, minutes(20.0), seconds(1.0));
  EXPECT_GT(high.stand.worth.iso, minutes(5.0));
  EXPECT_GT(high.stand.worth.iso, high.stand.worth.isoTooCold);
}

TEST_F(WortOf, ChillsAsThePlanStatesIt) {
  plan_.rigs[0].chiller.isStated = true;
  plan_.rigs[0].chiller.stirred = true;
  const BoiledWort stirred = first().wort->boiled.value();
  EXPECT_FALSE(stirred.chillingAtMost);
  EXPECT_FALSE(stirred.isLeftByItself);
  EXPECT_LT(stirred.chilling.worth.iso, 0.2 * stirred.byItself.worth.iso);
  plan_.rigs[0].chiller.stirred = false;
  const BoiledWort still = first().wort->boiled.value();
  EXPECT_LT(stirred.chilling.worth.iso, still.chilling.worth.iso);
  ASSERT_TRUE(still.chillingAtMost);
  EXPECT_LT(still.chilling.worth.iso, still.chillingAtMost->worth.iso);
  plan_.rigs[0].chiller.kind = Chiller::Kind::Counterflow;
  const RigAnswer through = first();
  const BoiledWort& pass = through.wort->boiled.value();
  // It waits for half of the pass on average.
  EXPECT_LT(pass.chilling.worth.iso, 0.6 * through.chill->pass->time);
  EXPECT_GT(pass.chilling.worth.iso, 0.3 * through.chill->pass->time);
  plan_.rigs[0].chiller.kind = Chiller::Kind::Air;
  const BoiledWort air = first().wort->boiled.value();
  EXPECT_TRUE(air.isLeftByItself);
  EXPECT_EQ(air.chilling.worth.iso, air.byItself.worth.iso);
  EXPECT_GT(air.chilled.dms, 2.0 * stirred.chilled.dms);
}

// The wort boils by what it was before the boil, whatever goes in later.
TEST_F(WortOf, NeedsNoLongerBoilAtSeaLevel) {
  plan_.place.pressure = pascals(101325.0);
  plan_.batch.additions = {{.what = "sugar",
                            .mass = kilograms(2.0),
                            .extract = 1.0,
                            .temperature = celsius(18.0),
                            .beforeEnd = minutes(5.0)}};
  EXPECT_WITHIN(first().wort->boiled->forSeaLevel.value(), plan_.batch.boil, seconds(1.0));
}

// What begins hot and falls is no boil that any other could be compared with.
TEST_F(WortOf, ComparesNoBoilThatDoesNotRoll) {
  plan_.rigs[0].rig.boilPower = 0.1;
  const RigAnswer rig = first();
  ASSERT_NE(rig.day.outcome, Outcome::Done);
  const BoiledWort& wort = rig.wort->boiled.value();
  EXPECT_FALSE(wort.rolled);
  EXPECT_FALSE(wort.forSeaLevel);
  EXPECT_GT(wort.begins, wort.boiling + kelvins(1.0));
  const Json told = Json::parse(resultJson(plan_, answer(plan_, Depth::Wort)))["rigs"][0]["wort"];
  EXPECT_FALSE(told.contains("boil_for_sea_level_s"));
  EXPECT_TRUE(told.contains("boiled_shares"));
}

// Nor is one that is colder than the rate was measured.
TEST_F(WortOf, ComparesNoBoilOfTheHighestPeaks) {
  plan_.place.pressure = pascals(61640.0);  // about 4000 m
  const BoiledWort wort = first().wort->boiled.value();
  EXPECT_TRUE(wort.rolled);
  EXPECT_FALSE(wort.forSeaLevel);
}

// Nobody mashed, so nobody knows of any precursor of DMS.
TEST_F(WortOf, TellsNoDmsWithoutMalt) {
  plan_.batch.grain.mass = kilograms(0.0);
  const Json told = Json::parse(resultJson(plan_, answer(plan_, Depth::Wort)))["rigs"][0]["wort"];
  ASSERT_TRUE(told.contains("boil"));
  EXPECT_FALSE(told["boil"].contains("smm_at_100_C_s"));
  for (const char* key : {"whole_smm_at_100_C_s", "carries_dms_off", "chilled_shares"})
    EXPECT_FALSE(told.contains(key)) << key;
}

// What is lost of the precursor is DMS, or left with the steam.
TEST_F(WortOf, MakesNoDmsOfNothing) {
  const BoiledWort wort = first().wort->boiled.value();
  EXPECT_LT(wort.boiled.precursor, 1.0);
  for (const Sulfide& one : {wort.boiled, wort.chilled, wort.leftByItself}) {
    EXPECT_GE(one.dms, 0.0);
    EXPECT_LE(one.dms + one.precursor, 1.0);
  }
  EXPECT_LE(wort.boiled.dms, wort.chilled.dms);
  EXPECT_LT(wort.chilled.dms, wort.leftByItself.dms);
}

// More wort in the kettle gives a smaller share of itself to the same steam.
TEST_F(WortOf, TakesWhatGoesInAlongTheWay) {
  const BoiledWort alone = first().wort->boiled.value();
  const Addition water{.what = "water",
                       .mass = kilograms(3.0),
                       .temperature = celsius(99.0),
                       .beforeEnd = plan_.batch.boil};
  plan_.batch.additions = {water};
  const BoiledWort longer = first().wort->boiled.value();
  EXPECT_GT(longer.boiled.dms, alone.boiled.dms);
  EXPECT_WITHIN(longer.boil.lasts, alone.boil.lasts, seconds(1.0));
  // In the moment the boil ends it changes what cools, not what has boiled.
  plan_.batch.additions[0].beforeEnd = seconds(0.0);
  plan_.batch.additions[0].temperature = celsius(10.0);
  const RigAnswer cold = first();
  EXPECT_EQ(cold.day.boil->temperature, cold.day.boilingPoint);
  EXPECT_LT(cold.day.stages.back().last, cold.day.boilingPoint - kelvins(5.0));
  EXPECT_EQ(cold.chill->boiled, cold.day.stages.back().last);
  EXPECT_EQ(cold.wort->boiled->boiling, alone.boiling);
  EXPECT_WITHIN(cold.wort->boiled->boil.worth.iso, alone.boil.worth.iso, seconds(1.0));
  EXPECT_NEAR(cold.wort->boiled->boiled.dms, alone.boiled.dms, 1e-3);
}

TEST_F(WortOf, HasABandWhereDmsIsDoubtful) {
  EXPECT_EQ(carriesOff(0.02), CarriesOff::Little);
  EXPECT_EQ(carriesOff(0.049), CarriesOff::Little);
  EXPECT_EQ(carriesOff(0.051), CarriesOff::Uncertain);
  EXPECT_EQ(carriesOff(0.079), CarriesOff::Uncertain);
  EXPECT_EQ(carriesOff(0.10), CarriesOff::Much);
}

TEST_F(WortOf, IsInTheResultOnlyWhereAsked) {
  const auto has = [&](Depth depth) {
    return Json::parse(resultJson(plan_, answer(plan_, depth)))["rigs"][0].contains("wort");
  };
  EXPECT_TRUE(has(Depth::Wort));
  EXPECT_FALSE(has(Depth::Everything));
  EXPECT_FALSE(answer(plan_, Depth::Day).rigs[0].wort);
  const Answers drawn = answer(plan_, Depth::Day, true);
  ASSERT_TRUE(drawn.rigs[0].wort);
  EXPECT_FALSE(Json::parse(resultJson(plan_, drawn))["rigs"][0].contains("wort"));
}

TEST_F(WortOf, IsTheMashAloneWithoutABoil) {
  plan_.batch.boil = seconds(0.0);
  const RigAnswer rig = first();
  ASSERT_TRUE(rig.wort);
  EXPECT_FALSE(rig.wort->boiled);
  EXPECT_TRUE(rig.wort->mashed);
  plan_.batch.grain.mass = kilograms(0.0);
  EXPECT_FALSE(first().wort);
}

// A held mash is as warm as its plan says.
TEST_F(WortOf, MashesAlongTheDaysOwnTemperature) {
  const RigAnswer rig = first();
  const MashedWort& mash = rig.wort->mashed.value();
  const HotCurve held{{.lasts = minutes(65.0), .from = celsius(66.0), .to = celsius(66.0)}};
  const MashConversion same = conversionOf(held);
  // Mashing in, the hour, and the way back to 66 C between them.
  EXPECT_GE(mash.conversion.lasts, minutes(65.0));
  EXPECT_LT(mash.conversion.lasts, minutes(67.0));
  EXPECT_NEAR(mash.conversion.limit->least, same.limit->least, .005);
  EXPECT_WITHIN(mash.conversion.doneBy.value(), same.doneBy.value(), minutes(3.0));
  EXPECT_FALSE(mash.isLeftAlone);
  // Apparent attenuation is what gravity in degrees Plato loses by.
  ASSERT_TRUE(mash.gravity);
  EXPECT_EQ(mash.gravity->before, rig.day.resultGravity);
  EXPECT_NEAR((mash.gravity->afterLeast - 1.0) / (mash.gravity->before - 1.0),
              1.0 - mash.conversion.limit->most, .01);
  EXPECT_LT(mash.gravity->afterLeast, mash.gravity->afterMost);
}

TEST_F(WortOf, MashesWithoutAnybodyNear) {
  plan_.batch.mash = UnpluggedMash{celsius(67.0), hours(10.0)};
  const RigAnswer rig = first();
  const MashedWort& mash = rig.wort->mashed.value();
  EXPECT_TRUE(mash.isLeftAlone);
  ASSERT_TRUE(mash.conversion.trimming);
  EXPECT_GT(mash.conversion.trimming->atMost, mash.conversion.trimming->probably);
  EXPECT_GT(mash.conversion.betweenTrims, hours(1.0));
}

// Sugar of the boil ferments by laws of its own.
TEST_F(WortOf, TellsNoGravityOfForeignSugar) {
  plan_.batch.additions = {{.what = "sugar",
                            .mass = kilograms(0.5),
                            .extract = 1.0,
                            .temperature = celsius(18.0),
                            .beforeEnd = minutes(10.0)}};
  EXPECT_FALSE(first().wort->mashed->gravity);
}

// Nor of a wort that may be thinner than planned.
TEST_F(WortOf, TellsNoGravityWhereStarchIsLeft) {
  plan_.batch.mash = HeldMash{{{celsius(63.0), minutes(60.0)}}};  // late malt leaves some
  EXPECT_TRUE(first().wort->mashed->conversion.doneBy);
  EXPECT_FALSE(first().wort->mashed->gravity);
  plan_.batch.mash = HeldMash{{{celsius(57.0), minutes(60.0)}}};
  EXPECT_TRUE(first().wort->mashed->conversion.limit);
  EXPECT_FALSE(first().wort->mashed->gravity);
}

TEST_F(WortOf, TellsNoMashThatDidNotGetToItsEnd) {
  plan_.batch.mash = HeldMash{{{celsius(98.0), minutes(60.0)}}};  // with strike water that boils
  const RigAnswer rig = first();
  ASSERT_FALSE(rig.day.finished());
  EXPECT_FALSE(rig.wort && rig.wort->mashed);
}

}  // namespace
