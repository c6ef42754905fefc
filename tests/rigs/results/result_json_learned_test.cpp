// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/results/result_json_learned.hpp"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "rigs/results/cautions.hpp"
#include "rigs/results/result_json.hpp"
#include "tests/support/solved_demo.hpp"

namespace {

using namespace rigs;
using namespace physics;
using nlohmann::json;
using readings::Reading;

// What fitting would find is put in by hand: here it is only told.
struct Told {
  Plan plan = test_support::startedPlan("night-unplugged");
  std::vector<Reading> read;
  Learned learned;

  json asJson() const {
    return json::parse(learnedJson(plan, 1, read, learned, cautions(plan, true)));
  }
};

TEST(LearnedJson, HasEveryUnknownUnderTheNameItHasInBands) {
  Told told;
  for (std::size_t k = 0; k < kUnknowns; ++k)
    told.learned.unknowns.push_back({.what = static_cast<Unknown>(k),
                                     .before = {0.8, 1.0, 1.2},
                                     .after = {0.9, 1.1, 1.3},
                                     .spreadLeft = 0.1 * static_cast<double>(k + 1)});
  told.learned.unknowns.push_back(
      {.what = std::nullopt, .before = {-0.5, 0.0, 0.5}, .after = {-0.1, 0.2, 0.4}});
  const json unknowns = told.asJson()["unknowns"];
  ASSERT_EQ(unknowns.size(), 9u);
  for (const char* name : {"closed_losses", "open_surface", "amount", "power", "room_K", "water_K",
                           "rim_gap", "absorption", "thermometer_K"})
    EXPECT_TRUE(unknowns.contains(name)) << name;
  EXPECT_EQ(unknowns["closed_losses"]["after"]["low"], 0.9);
  EXPECT_EQ(unknowns["closed_losses"]["before"]["high"], 1.2);
  EXPECT_EQ(unknowns["closed_losses"]["learned"], true);
  EXPECT_EQ(unknowns["absorption"]["learned"], false);
  EXPECT_EQ(unknowns["thermometer_K"]["after"]["middle"], 0.2);
}

TEST(LearnedJson, HasEveryReadingInItsOwnUnit) {
  Told told;
  told.read = {{1, hours(20.0), readings::Event::Unplugged},
               {2, hours(21.0), celsius(66.0)},
               {3, hours(22.0), kilowattHours(1.5)},
               {4, hours(23.0), readings::ReadVolume{litres(30.0)}},
               {5, hours(24.0), readings::ReadGravity{1.048}}};
  const double kWh = 3.6e6;
  told.learned.judged = {
      {.which = 1, .expected = 340.15, .surprise = -1.2, .fitted = 339.15, .rows = 3},
      {.which = 2, .expected = 1.6 * kWh, .fitted = 1.5 * kWh},
      {.which = 3, .expected = 0.031, .fitted = 0.0305},
      {.which = 4, .expected = 1.05, .good = 0.1, .fitted = 1.049}};
  const json read = told.asJson()["readings"];
  ASSERT_EQ(read.size(), 4u);
  EXPECT_EQ(read[0]["line"], 2);
  EXPECT_EQ(read[0]["clock_s"], 21 * 3600.0);
  EXPECT_DOUBLE_EQ(read[0]["read_C"], 66.0);
  EXPECT_NEAR(read[0]["expected_C"], 67.0, 1e-9);
  EXPECT_NEAR(read[0]["as_learned_C"], 66.0, 1e-9);
  EXPECT_EQ(read[0]["rows"], 3);
  EXPECT_EQ(read[0]["surprise"], -1.2);
  EXPECT_NEAR(read[1]["expected_kWh"], 1.6, 1e-12);
  EXPECT_NEAR(read[2]["read_L"], 30.0, 1e-9);
  EXPECT_NEAR(read[2]["as_learned_L"], 30.5, 1e-9);
  EXPECT_EQ(read[3]["expected_gravity"], 1.05);
  EXPECT_EQ(read[3]["good"], 0.1);
}

TEST(LearnedJson, SaysWhatIsAwaitedAndWhenToLookAgain) {
  Told told;
  EXPECT_FALSE(told.asJson().contains("next_reading"));
  told.learned.next = {.awaited = Awaited::Morning,
                       .halfWidthNow = 2.5,
                       .best = NextReading{hours(30.0), 0.8},
                       .earliest = NextReading{hours(25.0), 1.2}};
  const json night = told.asJson()["next_reading"];
  EXPECT_EQ(night["awaited"], "morning");
  EXPECT_EQ(night["half_width_K"], 2.5);
  EXPECT_EQ(night["best"]["clock_s"], 30 * 3600.0);
  EXPECT_EQ(night["earliest"]["half_width_K"], 1.2);
  told.learned.next.awaited = Awaited::BoilBegins;
  EXPECT_EQ(told.asJson()["next_reading"]["half_width_s"], 2.5);
}

TEST(LearnedJson, SaysWhyThereIsNothingElseToSay) {
  Told told;
  EXPECT_FALSE(told.asJson().contains("nothing"));
  for (const auto& [why, said] :
       {std::pair{NothingLearned::NothingUsable, "no reading falls into the day"},
        std::pair{NothingLearned::NoDay, "the day stops before them"},
        std::pair{NothingLearned::TooBent, "too unlike the plan"}}) {
    told.learned.nothing = why;
    EXPECT_EQ(told.asJson()["nothing"], said);
  }
  const json all = told.asJson();
  EXPECT_EQ(all["rig"], "b");
  EXPECT_EQ(all["cautions"].size(), cautions(told.plan, true).size());
  EXPECT_EQ(all["day_after"], json::object());
}

// One shape, so that one script reads both.
TEST(LearnedJson, HasTheDayAsResultsHaveTheirBands) {
  const Solution& demo = test_support::solvedDemo();
  const auto& sure = demo.answers.rigs[0].sure;
  ASSERT_TRUE(sure);
  Told told;
  told.learned.before = sure->bands;
  json expected = json::parse(resultJson(demo.plan, demo.answers))["rigs"][0]["bands"];
  EXPECT_EQ(expected["days"], 16);
  EXPECT_EQ(expected["causes"].size(), kBandsOf);
  EXPECT_EQ(expected["causes"]["over"].size(), kUnknowns);
  EXPECT_GT(expected["course"].size(), 50u);
  EXPECT_LT(expected["course"].back()["low_C"], expected["course"].back()["high_C"]);
  EXPECT_LT(expected["over"]["low_s"], expected["over"]["middle_s"]);
  expected.erase("causes");
  expected.erase("course");
  EXPECT_EQ(told.asJson()["day_before"], expected);
}

}  // namespace
