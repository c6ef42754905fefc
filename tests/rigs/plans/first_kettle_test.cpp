// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/first_kettle.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <numbers>

#include "rigs/answers/answers.hpp"
#include "rigs/documents/json_edit.hpp"
#include "tests/rigs/plans/plan_edit.hpp"

namespace rigs {
namespace {

using test_support::readChecked;
using test_support::told;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using enum KettleFigure;

StartedKettle started(const FirstKettle& kettle, UnitSystem units = UnitSystem::SI) {
  return startWith(kettle, "My kettle", units);
}

Plan planOf(const StartedKettle& kettle) {
  const auto reading = readChecked(kettle.document);
  EXPECT_TRUE(reading.plan) << told(reading.problems);
  return reading.plan.value();
}

double litresOf(const Plan& plan) {
  const physics::Vessel& vessel = plan.rigs[0].rig.vessel;
  const double d = physics::inMetres(vessel.innerDiameter);
  return std::numbers::pi / 4.0 * d * d * physics::inMetres(vessel.height) * 1e3;
}

TEST(AFirstKettle, AssumesEverythingThatIsNotTyped) {
  const StartedKettle kettle = started({});
  EXPECT_TRUE(kettle.problems.empty()) << told(kettle.problems);
  EXPECT_EQ(kettle.region, "Europe");
  EXPECT_EQ(kettle.circuit, "Europe 230 V 16 A");
  EXPECT_EQ(kettle.assumed.at(Volume), "40 L");
  EXPECT_EQ(kettle.assumed.at(Power), "2.9 kW");
  EXPECT_EQ(kettle.assumed.at(Voltage), "230 V");
  EXPECT_EQ(kettle.assumed.at(Altitude), "0 m");
  EXPECT_EQ(kettle.assumed.at(Batch), "22 L");
  const Plan plan = planOf(kettle);
  EXPECT_EQ(plan.rigs.size(), 1U);
  EXPECT_EQ(plan.title, "My kettle");
  EXPECT_EQ(*plan.altitude, physics::metres(0.0));
  EXPECT_EQ(plan.region, "Europe");
  EXPECT_TRUE(plan.rigs[0].hasLid);
  EXPECT_FALSE(plan.rigs[0].hasJacket);
  EXPECT_TRUE(plan.rigs[0].jacketIsCompared);
}

TEST(AFirstKettle, IsOfTheVolumeAndAsHighAsWide) {
  for (const char* volume : {"10 L", "27 L", "45 L", "70 L", "150 L"}) {
    const Plan plan = planOf(started({.typed = {{Volume, volume}, {Batch, "5 L"}}}));
    const double litres = physics::inLitres(*parseQuantity<physics::Volume>(volume));
    // Whole millimetres: a half of one in the height of the lowest.
    EXPECT_NEAR(litresOf(plan), litres, 0.003 * litres) << volume;
    EXPECT_NEAR(plan.rigs[0].rig.vessel.height / plan.rigs[0].rig.vessel.innerDiameter, 1.0, 0.01);
  }
}

TEST(AFirstKettle, HasItsBatchFromItsSize) {
  const auto batch = [](const FirstKettle& kettle) { return started(kettle).assumed.at(Batch); };
  EXPECT_EQ(batch({.typed = {{Volume, "45 L"}}}), "25 L");
  EXPECT_EQ(batch({.typed = {{Volume, "12 L"}}}), "6.5 L");
  EXPECT_EQ(batch({.typed = {{Diameter, "500 mm"}, {Height, "255 mm"}}, .bySize = true}), "28 L");
  // As high as wide where only one of them is known yet.
  EXPECT_EQ(started({.typed = {{Diameter, "300 mm"}}, .bySize = true}).assumed.at(Height),
            "300 mm");
  // What is typed counts, and grain with it.
  const StartedKettle own = started({.typed = {{Volume, "45 L"}, {Batch, "20 L"}}});
  EXPECT_EQ(textAt(own.document, "/batch/wort"), "20 L");
  EXPECT_EQ(textAt(own.document, "/batch/grain/mass"), "4 kg");
}

TEST(AFirstKettle, KeepsWhatIsTypedAsItIsTyped) {
  const StartedKettle kettle = started({.typed = {{Volume, "45 L"},
                                                  {Power, "2.2 kW"},
                                                  {Voltage, "240 V"},
                                                  {Altitude, "1525 ft"},
                                                  {Room, "66 F"}}},
                                       UnitSystem::UsCustomary);
  EXPECT_TRUE(kettle.problems.empty()) << told(kettle.problems);
  EXPECT_EQ(textAt(kettle.document, "/rigs/0/element/power"), "2.2 kW");
  EXPECT_EQ(textAt(kettle.document, "/rigs/0/element/rated_voltage"), "240 V");
  EXPECT_EQ(textAt(kettle.document, "/place/altitude"), "1525 ft");
  EXPECT_EQ(textAt(kettle.document, "/place/room"), "66 F");
  EXPECT_EQ(kettle.assumed.at(Volume), "10.6 gal");
  EXPECT_EQ(kettle.assumed.at(Room), "68 F");
  EXPECT_NEAR(litresOf(planOf(kettle)), 45.0, 0.5);
}

TEST(AFirstKettle, HasLidAndJacketAsAsked) {
  const Plan open = planOf(started({.lid = false}));
  EXPECT_FALSE(open.rigs[0].hasLid);
  const Plan jacketed = planOf(started({.jacket = true}));
  EXPECT_TRUE(jacketed.rigs[0].hasJacket);
  EXPECT_TRUE(jacketed.rigs[0].jacketIsCompared);  // with the bare one
}

// Nobody's currency but the country's own.
TEST(AFirstKettle, HasNoForeignMoney) {
  const auto currency = [](const FirstKettle& kettle) {
    return planOf(started(kettle)).tariff.currency;
  };
  EXPECT_EQ(currency({.region = "Europe"}), "EUR");
  EXPECT_EQ(currency({.region = "United States"}), "USD");
  for (const char* region : {"Japan", "United Kingdom", "Canada", "Brazil"})
    EXPECT_EQ(currency({.region = region}), "") << region;
  EXPECT_EQ(currency({.region = "Europe", .circuit = "Switzerland 230 V 10 A"}), "");
}

TEST(AFirstKettle, TellsWhatIsWrongWhereItStands) {
  const struct {
    KettleFigure figure;
    const char* text;
    const char* says;
  } kCases[] = {{Volume, "many", "a number"}, {Volume, "9000 L", "2000"},
                {Volume, "45 kg", "mass"},    {Power, "22 W", "50 W"},
                {Voltage, "5 V", "12"},       {Altitude, "9 km", "5.2 km"},
                {Room, "80 C", "50"},         {Batch, "0 L", "0.5"}};
  for (const auto& wrong : kCases) {
    SCOPED_TRACE(wrong.text);
    const StartedKettle kettle = started({.typed = {{wrong.figure, wrong.text}}});
    ASSERT_TRUE(hasErrors(kettle.problems));
    EXPECT_EQ(kettleFigureAt(kettle.problems[0].where, false), wrong.figure)
        << kettle.problems[0].where;
    EXPECT_THAT(inEnglish(kettle.problems[0].message), HasSubstr(wrong.says));
    EXPECT_THAT(inEnglish(kettle.problems[0].message), HasSubstr(wrong.text));
  }
  const StartedKettle flat = started({.typed = {{Height, "3 mm"}}, .bySize = true});
  ASSERT_TRUE(hasErrors(flat.problems));
  EXPECT_EQ(kettleFigureAt(flat.problems[0].where, true), Height);
}

TEST(AFirstKettle, OffersWhatItsCountryHas) {
  EXPECT_THAT(regionsToOffer(), Contains("United States"));
  EXPECT_THAT(regionsToOffer(), testing::Not(Contains("Generic IEC")));
  const auto names = [](std::string_view region) {
    std::vector<std::string> all;
    for (const Circuit* one : circuitsToOffer(region))
      all.push_back(inEnglish(circuitCalled(*one, region)));
    return all;
  };
  EXPECT_THAT(
      names("Europe"),
      ElementsAre("230 V, 16 A wall socket", "Switzerland 230 V 10 A", "Switzerland 230 V 16 A",
                  "230 V, 16 A industrial socket", "230 V, 32 A industrial socket"));
  EXPECT_THAT(names("United States"),
              ElementsAre("120 V, 15 A wall socket", "120 V, 20 A wall socket",
                          "240 V, 20 A circuit", "240 V, 30 A circuit", "240 V, 50 A circuit",
                          "208 V, 20 A circuit", "208 V, 30 A circuit"));
}

// Nobody should meet a remark on what was not typed.
TEST(AFirstKettle, IsAPlanWithoutARemarkOnEveryCircuit) {
  for (const UnitSystem units : {UnitSystem::SI, UnitSystem::UsCustomary}) {
    for (const std::string& region : regionsToOffer()) {
      for (const Circuit* circuit : circuitsToOffer(region)) {
        SCOPED_TRACE(region + ": " + circuit->name);
        const StartedKettle kettle = started({.region = region, .circuit = circuit->name}, units);
        EXPECT_EQ(kettle.circuit, circuit->name);
        const auto reading = readChecked(kettle.document);
        ASSERT_TRUE(reading.plan) << told(reading.problems);
        EXPECT_TRUE(reading.problems.empty()) << told(reading.problems);
        EXPECT_EQ(reading.plan->rigs[0].rig.element.ratedAt,
                  reading.plan->rigs[0].rig.supply.nominal);
      }
    }
  }
}

TEST(AFirstKettle, OfAnotherCountryForgetsACircuitThatIsNotThere) {
  EXPECT_EQ(started({.region = "Japan", .circuit = "Europe 230 V 16 A"}).circuit,
            "Japan 100 V 15 A");
}

}  // namespace
}  // namespace rigs
