// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/plan_starts.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "rigs/answers/answers.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/keys.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "tests/rigs/plans/plan_edit.hpp"

namespace rigs {
namespace {

using test_support::readChecked;
using test_support::told;
using testing::ElementsAre;

std::vector<std::string> everyDocument() {
  std::vector<std::string> all{newPlanText()};
  for (const std::string& name : planStartNames()) all.push_back(planStartText(name).value());
  return all;
}

TEST(PlanStarts, AreCalledInPlainWords) {
  EXPECT_THAT(planStartNames(),
              ElementsAre("120-or-240-volts", "hardly-boils", "large-batch", "mountain-batch",
                          "night-unplugged", "one-kettle", "two-circuits", "two-voltages"));
  EXPECT_FALSE(planStartText("one kettle"));
  EXPECT_FALSE(planStartText(""));
}

TEST(PlanStarts, ReadWithoutARemarkAndBoilToTheEnd) {
  for (const std::string& name : planStartNames()) {
    SCOPED_TRACE(name);
    const auto reading = readChecked(planStartText(name).value());
    ASSERT_TRUE(reading.plan) << told(reading.problems);
    EXPECT_TRUE(reading.problems.empty()) << told(reading.problems);
    for (const RigAnswer& rig : answer(*reading.plan, Depth::Day).rigs) {
      EXPECT_EQ(rig.day.outcome, physics::Outcome::Done) << rig.name;
      EXPECT_EQ(rig.circuit.circuits.front().nameplate.fit, Fit::Fits) << rig.name;
    }
  }
}

TEST(PlanStarts, AreWhatTheirNamesSay) {
  const auto plan = [](std::string_view name) {
    return *readChecked(planStartText(name).value()).plan;
  };
  EXPECT_EQ(plan("one-kettle").rigs.size(), 1U);
  EXPECT_TRUE(hasOwnNight(plan("night-unplugged")));
  const Plan voltages = plan("two-voltages");
  EXPECT_NE(voltages.rigs[0].rig.supply.nominal, voltages.rigs[1].rig.supply.nominal);
  EXPECT_EQ(voltages.rigs[0].rig.element.rating, voltages.rigs[1].rig.element.rating);
  EXPECT_TRUE(plan("two-circuits").rigs[1].rig.second.has_value());
  EXPECT_GT(std::get<physics::WantedWort>(plan("large-batch").batch.size).atTwentyDegrees,
            physics::litres(40.0));
  const Plan outlets = plan("120-or-240-volts");
  EXPECT_EQ(outlets.rigs[0].rig.supply.nominal, physics::volts(120.0));
  EXPECT_EQ(outlets.rigs[1].rig.supply.nominal, physics::volts(240.0));
  const Plan mountain = plan("mountain-batch");
  EXPECT_GT(*mountain.altitude, physics::metres(2000.0));
  EXPECT_GT(std::get<physics::WantedWort>(mountain.batch.size).atTwentyDegrees,
            physics::litres(40.0));
  const auto hardly = answer(plan("hardly-boils"), Depth::Day);
  EXPECT_TRUE(hardly.rigs[0].edge.has_value());
  EXPECT_FALSE(hardly.rigs[1].edge.has_value());
}

TEST(PlanStarts, AreAllOfferedWithASentenceOfTheirOwn) {
  std::vector<std::string> offered = planStartsToOffer();
  EXPECT_EQ(offered.front(), "");  // the example
  std::set<std::string> told;
  for (const std::string& name : offered) {
    SCOPED_TRACE(name);
    const auto start = planStartTold(name);
    ASSERT_TRUE(start);
    EXPECT_TRUE(told.insert(inEnglish(start->title)).second);
    EXPECT_TRUE(told.insert(inEnglish(start->about)).second);
    const char last = inEnglish(start->about).back();
    EXPECT_TRUE(last == '.' || last == '?');
  }
  offered.erase(offered.begin());
  std::sort(offered.begin(), offered.end());
  EXPECT_EQ(offered, planStartNames());
  EXPECT_FALSE(planStartTold("no-such-start"));
}

TEST(UsUnits, AreThoseOfAKitchen) {
  const std::string us = inUsUnits(planStartText("one-kettle").value());
  EXPECT_EQ(textAt(us, "/batch/wort"), "6.6 gal");
  EXPECT_EQ(textAt(us, "/batch/grain/mass"), "9.48 lb");
  EXPECT_EQ(textAt(us, "/batch/grain/absorption"), "0.383 qt/lb");
  EXPECT_EQ(textAt(us, "/batch/mash/rests/0/temperature"), "152.6 F");
  EXPECT_EQ(textAt(us, "/batch/mash/rests/0/time"), "60 min");
  EXPECT_EQ(textAt(us, "/place/altitude"), "492 ft");
  EXPECT_EQ(textAt(us, "/rigs/0/vessel/inner_diameter"), "15 in");
  EXPECT_EQ(textAt(us, "/rigs/0/element/power"), "2200 W");
  EXPECT_EQ(textAt(us, "/goals/boil_off"), "8 %/h");
  // Air is in cubic feet, copper in mm2.
  const std::string large = inUsUnits(planStartText("large-batch").value());
  EXPECT_EQ(textAt(large, "/place/air/volume"), "2119 ft3");
  EXPECT_EQ(textAt(large, "/place/air/airflow"), "88.3 ft3/min");
  const std::string two = inUsUnits(planStartText("two-circuits").value());
  EXPECT_EQ(textAt(two, "/rigs/1/cable/conductor"), "2.5 mm2");
}

// Three digits are good to a half of the last: 1 in 200 at the worst.
TEST(UsUnits, AreTheSamePlanToTheRounding) {
  for (const std::string& document : everyDocument()) {
    const Texts before = textsOf(document);
    const Texts after = textsOf(inUsUnits(document));
    ASSERT_EQ(before.size(), after.size());
    EXPECT_TRUE(readChecked(inUsUnits(document)).problems.empty());
    int changed = 0;
    for (const auto& [place, text] : before) {
      SCOPED_TRACE(place + ": " + text + " and " + after.at(place));
      if (after.at(place) == text) continue;
      const Key* key = keyAt(place);
      ASSERT_TRUE(key && key->kind == ValueKind::Quantity);
      const auto metric = detail::read(key->quantity, text).si;
      const auto us = detail::read(key->quantity, after.at(place)).si;
      ASSERT_TRUE(metric && us);
      const bool temperature = key->quantity == QuantityKind::Temperature;
      EXPECT_NEAR(*metric, *us, temperature ? 0.05 / 1.8 + 1e-9 : 0.005 * std::abs(*metric));
      ++changed;
    }
    EXPECT_GE(changed, 6);
  }
}

}  // namespace
}  // namespace rigs
