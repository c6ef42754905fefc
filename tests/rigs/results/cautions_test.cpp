// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/results/cautions.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "tests/gui/terminal/plan_in_code.hpp"
#include "tests/rigs/plans/plan_edit.hpp"
#include "tests/support/caution_texts.hpp"

namespace {

using namespace rigs;
using ::testing::AllOf;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;

std::vector<std::string> topics(About about, const Plan& plan, const Answers& answers) {
  std::vector<std::string> all;
  for (const Caution& caution : cautionsFor(about, plan, answers)) all.emplace_back(caution.topic);
  return all;
}

class CautionsFor : public ::testing::Test {
 protected:
  const Plan plan_ = test_support::planInCode();
  const Answers day_ = answer(plan_, Depth::Day);
};

TEST_F(CautionsFor, EndsWithTheElectricianWhereverThereIsAVerdict) {
  for (const About about : {About::Answer, About::Sizing, About::Circuit, About::Everything}) {
    const auto texts = test_support::cautionTexts(about, plan_, day_, UnitSystem::SI);
    EXPECT_THAT(texts.back(), AllOf(HasSubstr("local codes"), HasSubstr("licensed electrician")));
  }
}

TEST_F(CautionsFor, KeepsMainsAndSteamEverywhere) {
  for (const About about :
       {About::Day, About::Boil, About::Insulation, About::Cost, About::Answer, About::Sizing,
        About::Circuit, About::Room, About::Chilling, About::Everything}) {
    const auto all = topics(about, plan_, day_);
    EXPECT_THAT(all, Contains("mains"));
    EXPECT_THAT(all, Contains("steam"));
    EXPECT_THAT(all, Contains("element"));
    EXPECT_THAT(all, Contains("scald"));
  }
}

// Wort left warm is no matter of one page: whichever question is asked, with this plan's hours.
TEST_F(CautionsFor, TellAnOvernightPlansWarmHoursOnEveryPage) {
  Plan plan = plan_;
  plan.batch.mash = physics::UnpluggedMash{physics::celsius(67.0), physics::hours(10.0)};
  const std::pair<About, Depth> pages[] = {
      {About::Day, Depth::Day},           {About::Boil, Depth::Day},
      {About::Insulation, Depth::Night},  {About::Cost, Depth::DayAndJacket},
      {About::Answer, Depth::Everything}, {About::Sizing, Depth::Everything},
      {About::Circuit, Depth::Circuit},   {About::Room, Depth::Room},
      {About::Chilling, Depth::Chill},    {About::Everything, Depth::Everything}};
  for (const auto& [about, depth] : pages) {
    const Answers answers = answer(plan, depth);
    const NightAnswer& night = *answers.rigs[0].night;
    const std::string hours = tell(Argument(roughly(night.asItIs.below)), {});
    EXPECT_THAT(test_support::cautionTexts(about, plan, answers, UnitSystem::SI),
                Contains(AllOf(HasSubstr("below about 57 °C"),
                               HasSubstr(" for " + hours + " of its 10 h unplugged (Urn)"))));
  }
  // A plan that holds its rests leaves nothing alone, but where that is asked.
  EXPECT_THAT(topics(About::Day, plan_, day_), Not(Contains("left warm")));
  EXPECT_THAT(topics(About::Insulation, plan_, day_), Contains("left warm"));
}

TEST_F(CautionsFor, SizingKnowsElementHeadspaceWeightAndWarmHours) {
  for (const About about : {About::Sizing, About::Circuit, About::Everything}) {
    const auto all = topics(about, plan_, day_);
    for (const char* topic : {"earth", "leakage", "dry firing", "headspace", "lifting",
                              "attendance", "storage", "cooling", "steam force", "deferral"})
      EXPECT_THAT(all, Contains(topic)) << topic;
    auto sorted = test_support::cautionTexts(about, plan_, day_, UnitSystem::SI);
    std::sort(sorted.begin(), sorted.end());
    EXPECT_EQ(std::adjacent_find(sorted.begin(), sorted.end()), sorted.end()) << "said twice";
  }
}

std::string textOf(const char* topic, const Plan& plan, const Answers& answers) {
  for (const Caution& caution : cautionsFor(About::Circuit, plan, answers))
    if (caution.topic == topic) return inEnglish(caution.text);
  return {};
}

// 0.75 mA/kW of 5.6 kW are 4.2 mA, and a Class A device trips between 4 and 6 mA.
TEST_F(CautionsFor, SaysWhereALargeElementMayTripItsProtection) {
  Plan plan = plan_;
  plan.region = "United States";
  plan.rigs.resize(1);
  EXPECT_THAT(textOf("leakage", plan, answer(plan, Depth::Day)),
              HasSubstr("An element that was stored damp may leak"));
  plan.rigs[0].rig.element.rating = physics::watts(5600.0);
  plan.rigs[0].rig.supply.rating = physics::amperes(30.0);
  EXPECT_THAT(textOf("leakage", plan, answer(plan, Depth::Day)),
              AllOf(HasSubstr("may leak up to 4.2 mA by its standard"),
                    HasSubstr("may trip from 4 mA"), HasSubstr("never take the protection away")));
}

TEST_F(CautionsFor, WarnsOfACordAndNotOfBuildingWire) {
  Plan plan = plan_;
  plan.rigs[1].circuits.resize(1);
  CircuitDetails& details = plan.rigs[1].circuits[0].details;
  details.cable = CableAsked{};
  details.cable->use = CableUse::BuildingWire;
  EXPECT_EQ(textOf("cord", plan, day_), "");
  details.cable->use = CableUse::ExtensionSet;
  EXPECT_THAT(textOf("cord", plan, day_), HasSubstr("fully uncoiled and uncovered"));
}

TEST_F(CautionsFor, TellsOfWarmHoursWithBothOfFoodServicesLimits) {
  Plan plan = plan_;
  plan.batch.mash = physics::UnpluggedMash{physics::celsius(54.0), physics::hours(2.0)};
  const Answers answers = answer(plan, Depth::Day);
  EXPECT_THAT(topics(About::Sizing, plan, answers), Contains("warm wort"));
  EXPECT_THAT(test_support::cautionTexts(About::Sizing, plan, answers, UnitSystem::SI),
              Contains(AllOf(HasSubstr("within 2 h"), HasSubstr("within 6 h"))));
}

TEST_F(CautionsFor, TellsOfTheRoomWhereItWasSimulated) {
  EXPECT_THAT(topics(About::Everything, plan_, day_), Not(Contains("room")));
  const Answers rooms = answer(plan_, Depth::Room);
  EXPECT_THAT(topics(About::Room, plan_, rooms), Contains("room"));
  EXPECT_THAT(topics(About::Everything, plan_, rooms), Contains("room"));
}

// 360 mm at 105 C: 19.6 kPa over 0.1018 m2 (IAPWS-IF97, as S1 for 400 mm) are 2.0 kN, 200 kg.
TEST_F(CautionsFor, WeighsTheSteamUnderTheWidestLid) {
  EXPECT_THAT(test_support::cautionTexts(About::Sizing, plan_, day_, UnitSystem::SI),
              Contains(AllOf(HasSubstr("105 °C"), HasSubstr("36 cm"), HasSubstr("200 kg"))));
}

TEST_F(CautionsFor, SaysThatCoolingIsNotInTheDayAndHowSlowItIsUnaided) {
  EXPECT_THAT(
      test_support::cautionTexts(About::Day, plan_, day_, UnitSystem::SI),
      Contains(AllOf(HasSubstr("says nothing of cooling"), HasSubstr("to come down to 57 °C"),
                     HasSubstr("2 h"), HasSubstr("never gives"), HasSubstr("64 times"))));
}

TEST(ScaldText, TellsBothDegreesAndTheTablesEnd) {
  EXPECT_EQ(inEnglish(scaldText(physics::celsius(55.0))),
            "At 55 °C bare skin burns to the second degree in 17 s and to the third in 30 s");
  EXPECT_EQ(inEnglish(scaldText(physics::celsius(49.0))),
            "At 49 °C bare skin burns to the second degree in 8 min and to the third in 10 min");
  EXPECT_EQ(inEnglish(scaldText(physics::celsius(60.0))),
            "At 60 °C bare skin burns to the second degree in 3 s and to the third in 5 s");
  EXPECT_EQ(inEnglish(scaldText(physics::celsius(67.0))),
            "At 67 °C bare skin burns to the second degree in 3 s and to the third in 5 s at the "
            "most");
  EXPECT_EQ(inEnglish(scaldText(physics::celsius(40.0))), "");
}

// 1650 W take 13.75 A, with 125 % 17.2 A of 15 A; the others' circuits are large enough.
TEST(CircuitCautions, NameTheRigsThatLongUseWouldStop) {
  const auto read = test_support::readChecked(test_support::demoWith({}));
  ASSERT_TRUE(read.plan);
  const Answers answers = answer(*read.plan, Depth::Circuit);
  int told = 0;
  for (const std::string& text :
       test_support::cautionTexts(About::Circuit, *read.plan, answers, UnitSystem::SI)) {
    if (text.find("That may be so here: ") == std::string::npos) continue;
    ++told;
    EXPECT_NE(text.find("New element, kitchen: 17.2 A in place of 13.8 A; New element, jacket and "
                        "lid: 17.2 A in place of 13.8 A. "),
              std::string::npos)
        << text;
    EXPECT_EQ(text.find("Old element"), std::string::npos) << text;
  }
  EXPECT_EQ(told, 2);
}

TEST(CircuitCautions, EndWithTheElectrician) {
  const auto read = test_support::readChecked(test_support::demoWith({}));
  ASSERT_TRUE(read.plan);
  const Answers answers = answer(*read.plan, Depth::Circuit);
  const auto all = test_support::cautionTexts(About::Circuit, *read.plan, answers, UnitSystem::SI);
  ASSERT_FALSE(all.empty());
  EXPECT_NE(all.back().find("licensed electrician"), std::string::npos);
  EXPECT_NE(all.back().find("local codes"), std::string::npos);
}

}  // namespace
