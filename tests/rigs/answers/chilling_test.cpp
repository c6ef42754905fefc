// SPDX-License-Identifier: GPL-3.0-or-later
// Chilling as a plan's answer: who gets one, what it is told with, and what a plan without it has.
#include "rigs/answers/chilling.hpp"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "physics/water.hpp"
#include "physics/wort.hpp"
#include "rigs/answers/answers.hpp"
#include "rigs/answers/cooling.hpp"
#include "rigs/results/cautions.hpp"
#include "rigs/results/result_json.hpp"
#include "tests/gui/terminal/plan_in_code.hpp"
#include "tests/support/caution_texts.hpp"
#include "tests/support/within.hpp"

namespace {

using namespace physics;
using namespace rigs;
using Json = nlohmann::ordered_json;

class ChillOf : public ::testing::Test {
 protected:
  Plan plan_ = test_support::planInCode();
  std::shared_ptr<const ChillAnswer> chill() const {
    return answer(plan_, Depth::Chill).rigs[0].chill;
  }
};

// Beyond what a hydrometer's scale ends with, too.
TEST_F(ChillOf, TakesAWortAsStrongAsSyrup) {
  plan_.batch.additions = {{.what = "sugar",
                            .mass = kilograms(14.0),
                            .extract = 1.0,
                            .temperature = celsius(20.0),
                            .beforeEnd = minutes(5.0)}};
  const RigAnswer rig = answer(plan_, Depth::Wort).rigs[0];
  ASSERT_GT(rig.day.resultExtract, 0.36);
  ASSERT_GT(rig.day.resultGravity, 1.15);
  ASSERT_TRUE(rig.chill);
  EXPECT_TRUE(rig.wort);
  EXPECT_TRUE(noChill(plan_.rigs[0].rig, rig.day, plan_.place));
  const HotWort syrup = hotWort(rig.day.resultCold, rig.day.resultExtract, celsius(20.0));
  EXPECT_NEAR(syrup.mass() / (rig.day.resultCold * waterDensity(celsius(20.0))),
              rig.day.resultGravity, 1e-9);
}

// Half of the wort comes cold as the boil ends: nothing is left to chill.
TEST_F(ChillOf, HasNoTimesToWhatIsWarmerThanTheWort) {
  plan_.batch.additions = {{.what = "water",
                            .mass = kilograms(30.0),
                            .temperature = celsius(5.0),
                            .beforeEnd = seconds(0.0)}};
  plan_.chilling.pitching = celsius(50.0);
  const auto cold = chill();
  ASSERT_TRUE(cold);
  ASSERT_LT(cold->begins, celsius(50.0));
  EXPECT_TRUE(isColdAlready(*cold));
  EXPECT_FALSE(cold->air.toSixty || cold->air.toHotHolding || cold->air.toGoal);
  EXPECT_FALSE(cold->stirred->toGoal);
  ASSERT_TRUE(chillSpan(*cold));
  EXPECT_EQ(chillSpan(*cold)->most, seconds(0.0));
  plan_.chilling.pitching = celsius(20.0);
  EXPECT_FALSE(isColdAlready(*chill()));
  EXPECT_TRUE(chill()->stirred->toGoal);
}

TEST_F(ChillOf, HasStirredAndStillAsAPairAndABand) {
  const auto chill = this->chill();
  ASSERT_TRUE(chill && chill->stirred && chill->still && chill->stillAtWorst);
  EXPECT_LT(*chill->stirred->toGoal, *chill->still->toGoal);
  EXPECT_LT(*chill->still->toGoal, *chill->stillAtWorst->toGoal);
  EXPECT_LT(*chill->stirred->toSixty, *chill->stirred->toForty);
  EXPECT_LT(*chill->stirred->toForty, *chill->stirred->toGoal);
  EXPECT_GT(*chill->stirred->firstOutlet, *chill->stirred->meanOutlet);
  // The film of the slow end is the handbooks' least.
  EXPECT_WITHIN(*chill->stillAtWorst->overall, kStillLeast, perSquareMetreKelvin(1e-9));
  EXPECT_GT(*chill->still->overall, 2.0 * kStillLeast);
  // What ran through is the flow for as long as it took.
  EXPECT_WITHIN(chill->stirred->water, plan_.rigs[0].chiller.waterFlow * *chill->stirred->toGoal,
                litres(1e-6));
}

// The water's heat is what its litres were warmed by; of a coil the kettle's own losses are small.
TEST_F(ChillOf, AccountsForItsHeat) {
  const auto chill = this->chill();
  for (const ChillWay* way :
       {&*chill->stirred, &*chill->still, &*chill->stillAtWorst, &chill->air}) {
    EXPECT_LT(std::abs(inJoules(way->heat.residual())), 2e-6 * inJoules(way->heat.givenUp));
  }
  EXPECT_LT(chill->stirred->heat.lost, 0.05 * chill->stirred->heat.givenUp);
  EXPECT_EQ(chill->air.heat.taken, joules(0.0));
}

TEST_F(ChillOf, IsOnlyThereWhereItIsAskedForOrStated) {
  EXPECT_FALSE(answer(plan_, Depth::Day).rigs[0].chill);
  EXPECT_FALSE(answer(plan_, Depth::Everything).rigs[0].chill);
  const auto rigOf = [&](Depth depth) {
    return Json::parse(resultJson(plan_, answer(plan_, depth)))["rigs"][0];
  };
  EXPECT_FALSE(rigOf(Depth::Everything).contains("chilling"));
  const Json asked = rigOf(Depth::Chill);
  ASSERT_TRUE(asked.contains("chilling"));
  EXPECT_GT(asked["chilling"]["stirred"]["curve"].size(), 20U);
  EXPECT_FALSE(asked["chilling"]["chiller"]["is_stated"].get<bool>());
  plan_.rigs[0].chiller.isStated = true;
  const Json stated = rigOf(Depth::Day);
  ASSERT_TRUE(stated.contains("chilling"));
  EXPECT_FALSE(stated["chilling"]["stirred"].contains("curve"));
}

// With curves, for pictures, it is there and yet not a part of anybody's result.
TEST_F(ChillOf, OfAPictureIsNoPartOfTheResult) {
  const Answers drawn = answer(plan_, Depth::Day, true);
  ASSERT_TRUE(drawn.rigs[0].chill);
  EXPECT_FALSE(Json::parse(resultJson(plan_, drawn))["rigs"][0].contains("chilling"));
}

TEST_F(ChillOf, TellsWhatWouldDoItWhereTheWaterIsTooWarm) {
  plan_.chilling.water = celsius(24.0);
  plan_.chilling.pitching = celsius(18.0);
  const auto chill = this->chill();
  ASSERT_TRUE(chill->refused);
  EXPECT_WITHIN(chill->floor, celsius(26.0), kelvins(1e-9));
  EXPECT_EQ(chill->goal, chill->floor);
  EXPECT_WITHIN(chill->refused->warmestWater, celsius(16.0), kelvins(1e-9));
  // q/(334 + 4.19 T): 8 K of its wort at 4 kJ/(kg K), within what wort's heat differs by.
  const double kilogram =
      inKilograms(hotWort(chill->wort, 0.01 * platoFromGravity(1.05), celsius(20.0)).mass());
  EXPECT_NEAR(inKilograms(chill->refused->ice), kilogram * 4.0 * 8.0 / (334.0 + 4.19 * 18.0),
              0.04 * kilogram * 4.0 * 8.0 / 409.4);
  EXPECT_TRUE(chill->stirred->toGoal);
}

TEST_F(ChillOf, BeginsColderAfterAHotStand) {
  const auto before = chill();
  plan_.chilling.hotStand = minutes(30.0);
  const auto after = chill();
  EXPECT_LT(after->begins, before->begins - kelvins(1.0));
  EXPECT_LT(*after->stirred->toGoal, *before->stirred->toGoal);
}

TEST_F(ChillOf, OfAJacketIsTheWrongWayRound) {
  plan_.rigs[0].hasJacket = true;
  plan_.rigs[0].rig = plan_.rigs[0].jacketed;
  plan_.rigs[0].chiller.kind = Chiller::Kind::Air;
  const auto chill = this->chill();
  ASSERT_TRUE(chill->airBare && !chill->stirred && !chill->pass);
  EXPECT_LT(*chill->airBare->toHotHolding, *chill->air.toHotHolding);
  EXPECT_FALSE(chill->refused);
}

// By air it is the day's law, not one constant: quicker while it is hot, and about as the constant
// has it from 57 to 21 C.
TEST_F(ChillOf, ByAirIsNearTheOneTimeConstantAndQuickerWhileHot) {
  const auto chill = this->chill();
  const Answers answers = answer(plan_, Depth::Day);
  const auto estimate = noChill(plan_.rigs[0].rig, answers.rigs[0].day, plan_.place);
  ASSERT_TRUE(estimate && estimate->toTwentyOne && chill->air.throughTheDanger());
  EXPECT_LT(*chill->air.toHotHolding, *estimate->toHotHolding);
  EXPECT_WITHIN(*chill->air.throughTheDanger(), *estimate->toTwentyOne,
                0.35 * *estimate->toTwentyOne);
}

TEST_F(ChillOf, InOnePassTakesTheTimeOfItsFlow) {
  plan_.rigs[0].chiller.kind = Chiller::Kind::Counterflow;
  plan_.rigs[0].chiller.length = metres(10.0);
  const auto chill = this->chill();
  ASSERT_TRUE(chill->pass && !chill->stirred);
  EXPECT_WITHIN(chill->pass->time, chill->wort / plan_.rigs[0].chiller.wortFlow, seconds(1e-6));
  EXPECT_LT(chill->pass->best.hotOut, chill->pass->likely.hotOut);
  EXPECT_LT(chill->pass->likely.hotOut, chill->pass->worst.hotOut);
  ASSERT_TRUE(chill->pass->flowForGoal);
  const bool coldEnough = chill->pass->likely.hotOut <= chill->goal;
  EXPECT_EQ(*chill->pass->flowForGoal >= plan_.rigs[0].chiller.wortFlow, coldEnough);
}

TEST_F(ChillOf, IsNothingWhereThereIsNoWort) {
  plan_.rigs[0].rig.element.rating = watts(150.0);
  plan_.rigs[0].bare = plan_.rigs[0].jacketed = plan_.rigs[0].rig;
  EXPECT_FALSE(chill());
}

TEST_F(ChillOf, CarriesItsCautions) {
  const Answers answers = answer(plan_, Depth::Chill);
  std::string all;
  for (const Caution& one : cautionsFor(About::Chilling, plan_, answers))
    all += std::string(one.topic) + ": " + inEnglish(one.text) + '\n';
  for (const char* part :
       {"it scalds", "burns", "Never close a hot vessel", "vacuum", "within 2 h", "within 6 h",
        "botulism", "Mains current kills", "unplug it before a coil goes in"})
    EXPECT_NE(all.find(part), std::string::npos) << part << '\n' << all;
  EXPECT_EQ(all.find("says nothing of cooling"), std::string::npos);
  // Elsewhere a plan that states its chiller is not told that it says nothing.
  const auto elsewhere = [&] {
    std::string text;
    for (const Caution& one : cautionsFor(About::Day, plan_, answers)) text += inEnglish(one.text);
    return text;
  };
  EXPECT_NE(elsewhere().find("says nothing of cooling"), std::string::npos);
  plan_.rigs[0].chiller.isStated = true;
  EXPECT_EQ(elsewhere().find("says nothing of cooling"), std::string::npos);
  EXPECT_NE(elsewhere().find("is a question of its own"), std::string::npos);
}

}  // namespace
