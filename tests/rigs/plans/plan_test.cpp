// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/plan.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <numbers>

#include "rigs/answers/figures.hpp"
#include "rigs/documents/files.hpp"
#include "rigs/documents/json_cursor.hpp"
#include "rigs/plans/catalogue.hpp"
#include "tests/rigs/plans/key_values.hpp"
#include "tests/rigs/plans/plan_edit.hpp"
#include "tests/support/within.hpp"

namespace rigs {
namespace {

namespace fs = std::filesystem;
using namespace physics;
using test_support::demoWith;
using test_support::Json;
using test_support::readChecked;
using test_support::removed;
using test_support::told;
using testing::HasSubstr;

Plan planWith(test_support::Edits edits) {
  Problems problems;
  const auto plan = readPlan(demoWith(edits), "/nonexistent", problems);
  EXPECT_TRUE(plan) << told(problems);
  return plan.value_or(Plan{});
}

TEST(DemoPlan, IsWithoutProblems) {
  const auto reading = readChecked(newPlanText());
  ASSERT_TRUE(reading.plan);
  EXPECT_TRUE(reading.problems.empty()) << told(reading.problems);
}

TEST(DemoPlan, SaysWhatIsWritten) {
  const Plan plan = planWith({});
  EXPECT_EQ(plan.title, "Altbier after the move");
  EXPECT_WITHIN(std::get<WantedWort>(plan.batch.size).atTwentyDegrees, litres(23.0), litres(1e-9));
  EXPECT_WITHIN(plan.batch.grain.mass, kilograms(5.2), kilograms(1e-12));
  const auto& rests = std::get<HeldMash>(plan.batch.mash).rests;
  ASSERT_EQ(rests.size(), 2U);
  EXPECT_NEAR(inCelsius(rests[1].temperature), 76.0, 1e-9);
  EXPECT_WITHIN(rests[1].duration, minutes(10.0), seconds(1e-9));
  EXPECT_WITHIN(plan.batch.boil, minutes(70.0), seconds(1e-9));
  EXPECT_EQ(plan.place.relativeHumidity, 0.45);
  // ICAO standard atmosphere at 900 m: 909.7 hPa (from memory).
  EXPECT_WITHIN(plan.place.pressure, pascals(90970.0), pascals(10.0));
  EXPECT_EQ(plan.tariff.perKilowattHour, 0.17);
  EXPECT_EQ(plan.tariff.currency, "USD");
  EXPECT_EQ(plan.tariff.dated, "2026-01");
  EXPECT_WITHIN(plan.startOfDay, hours(9.0), seconds(1e-9));
  ASSERT_EQ(plan.rigs.size(), 4U);
  EXPECT_WITHIN(plan.rigs[0].rig.element.rating, watts(3000.0), watts(1e-9));
  EXPECT_WITHIN(plan.rigs[3].rig.supply.nominal, volts(208.0), volts(1e-9));
  EXPECT_EQ(plan.rigs[3].circuit, "North America 208 V 30 A");
  // 80 % of 30 A, by the rules of North America.
  EXPECT_WITHIN(longUseCurrent(plan, plan.rigs[3]), amperes(24.0), amperes(1e-9));
}

// 14 AWG is 2.08 mm2 (ASTM B258); 12 m there and back at 40 C: 24/58/2.081 x 270/250 ohm.
TEST(DemoPlan, HasTheResistanceOfItsCable) {
  const Plan plan = planWith({});
  EXPECT_WITHIN(plan.rigs[0].rig.supply.cableLoop, ohms(24.0 / 58.0 / 2.081 * 1.08), ohms(2e-4));
}

// A kettle too weak to boil is what the person wants to learn, not a mistake in the plan.
TEST(DemoPlan, MayHoldARigThatDoesNotBoil) {
  const Plan plan = planWith({});
  const BrewDay day = simulate(plan.rigs[0].rig, plan.batch, plan.place);
  EXPECT_EQ(day.outcome, Outcome::StaysFarBelow);
}

TEST(Plan, MeansTheSameInUnitsOfTheUnitedStates) {
  const Plan si = planWith({});
  const Plan us = planWith({{"/batch/wort", "6.0759571 gal"},
                            {"/batch/grain/mass", "11.4640376 lb"},
                            {"/batch/grain/temperature", "66.2 °F"},
                            {"/batch/mash/rests/0/temperature", "150.8 degF"},
                            {"/place/altitude", "2952.7559 ft"},
                            {"/place/water", "53.6 F"}});
  const BrewDay a = simulate(si.rigs[1].rig, si.batch, si.place);
  const BrewDay b = simulate(us.rigs[1].rig, us.batch, us.place);
  EXPECT_WITHIN(a.total.fromWall(), b.total.fromWall(), joules(5.0));
}

TEST(Plan, FillsInWhatIsUsual) {
  const Plan plan = planWith({{"/batch/grain/temperature", removed()},
                              {"/batch/grain/moisture", removed()},
                              {"/batch/mashing_in", removed()},
                              {"/place/humidity", removed()},
                              {"/tariff", removed()},
                              {"/goals", removed()},
                              {"/day_starts", removed()}});
  EXPECT_EQ(plan.batch.grain.temperature, plan.place.room);
  EXPECT_EQ(plan.batch.grain.specificHeat, maltSpecificHeat(0.045));
  EXPECT_WITHIN(plan.batch.mashingIn, minutes(5.0), seconds(1e-9));
  EXPECT_EQ(plan.place.relativeHumidity, 0.5);
  EXPECT_TRUE(plan.tariff.currency.empty());
  EXPECT_NEAR(plan.goals.boilOffPerHour, 0.08, 1e-12);
  EXPECT_WITHIN(plan.startOfDay, hours(8.0), seconds(1e-9));
}

TEST(Plan, TakesPricesAsPeopleWriteThem) {
  struct Case {
    const char* text;
    double price;
    const char* currency;
  };
  constexpr std::array kCases{Case{"0.28 EUR/kWh", 0.28, "EUR"}, Case{"0,28 €/kWh", 0.28, "€"},
                              Case{"$0.17/kWh", 0.17, "$"}, Case{"31 JPY / kWh", 31.0, "JPY"},
                              Case{"28 ct/kWh", 28.0, "ct"}};
  for (const Case& c : kCases) {
    SCOPED_TRACE(c.text);
    const Tariff tariff = planWith({{"/tariff/price", c.text}}).tariff;
    EXPECT_EQ(tariff.perKilowattHour, c.price);
    EXPECT_EQ(tariff.currency, c.currency);
  }
}

TEST(Plan, MayDoWithoutGrain) {
  const Plan plan = planWith({{"/batch/grain", removed()}, {"/batch/mash", removed()}});
  const BrewDay day = simulate(plan.rigs[3].rig, plan.batch, plan.place);
  EXPECT_EQ(day.outcome, Outcome::Done);
  EXPECT_EQ(day.find(StageKind::MashingIn), nullptr);
}

TEST(Plan, MayLeaveTheMashAlone) {
  const Plan plan =
      planWith({{"/batch/mash/rests", removed()},
                {"/batch/mash/unplugged", {{"temperature", "67 C"}, {"time", "90 min"}}}});
  const auto* mash = std::get_if<UnpluggedMash>(&plan.batch.mash);
  ASSERT_TRUE(mash);
  EXPECT_WITHIN(mash->start, celsius(67.0), kelvins(1e-9));
  EXPECT_WITHIN(mash->duration, minutes(90.0), seconds(1e-9));
}

TEST(Plan, TakesACablesResistanceInPlaceOfItsSize) {
  const Plan plan = planWith({{"/rigs/1/cable", {{"loop_resistance", "0.25 ohm"}}}});
  EXPECT_WITHIN(plan.rigs[1].rig.supply.cableLoop, ohms(0.25), ohms(1e-12));
  EXPECT_FALSE(plan.rigs[1].circuits.at(0).details.run);
}

// On the supply's own voltage unless it says otherwise.
TEST(Plan, PutsAPumpOnTheFirstCircuit) {
  const Plan plan = planWith({{"/rigs/0/pump", {{"power", "60 W"}}},
                              {"/rigs/3/pump", {{"power", "60 W"}, {"voltage", "120 V"}}}});
  EXPECT_WITHIN(*plan.rigs[0].circuits.at(0).details.pump, watts(60.0), watts(1e-9));
  EXPECT_WITHIN(plan.rigs[0].circuits.at(0).details.pumpAt, volts(120.0), volts(1e-9));
  EXPECT_WITHIN(plan.rigs[3].circuits.at(0).details.pumpAt, volts(120.0), volts(1e-9));
  EXPECT_FALSE(plan.rigs[1].circuits.at(0).details.pump);
}

TEST(Plan, TakesAPressureInPlaceOfAnAltitude) {
  const Plan plan = planWith({{"/place/altitude", removed()}, {"/place/pressure", "1013.25 hPa"}});
  EXPECT_WITHIN(plan.place.pressure, pascals(101325.0), pascals(1e-6));
  EXPECT_FALSE(plan.altitude);
}

TEST(Plan, KeepsTheSizeThatWasStatedAndIgnoresNotes) {
  const auto reading = readChecked(
      demoWith({{"/batch/note", "for the club"}, {"/rigs/1/element/note", {{"any", "thing"}}}}));
  EXPECT_TRUE(reading.plan);
  EXPECT_TRUE(reading.problems.empty()) << told(reading.problems);
}

// pi/4 x 0.355^2 + pi x 0.355 x 0.405 m2 of 0.8 mm at 7900 kg/m3.
TEST(Vessel, IsWeighedBySizeIfNobodyDid) {
  const double sheet = std::numbers::pi * (0.25 * 0.355 * 0.355 + 0.355 * 0.405);
  const Plan plan = planWith({{"/rigs/1/vessel/mass", "4.2 kg"}});
  EXPECT_WITHIN(plan.rigs[0].rig.vessel.mass, kilograms(sheet * 0.0008 * 7900.0), kilograms(1e-9));
  EXPECT_WITHIN(plan.rigs[1].rig.vessel.mass, kilograms(4.2), kilograms(1e-12));
}

TEST(Vessel, RadiatesAsItsFinishSays) {
  const Plan plan = planWith({{"/rigs/0/vessel/finish", "dull"},
                              {"/rigs/1/vessel", {{"emissivity", "33 %"}}},
                              {"/rigs/2/vessel/material", "copper"}});
  EXPECT_EQ(plan.rigs[0].rig.vessel.side.emissivity,
            catalogue().material("stainless steel")->finish("dull")->emissivity);
  EXPECT_EQ(plan.rigs[0].finish, "dull");
  EXPECT_EQ(plan.rigs[1].rig.vessel.side.emissivity, 0.33);
  EXPECT_EQ(plan.rigs[1].finish, "emissivity 0.33");
  EXPECT_EQ(plan.rigs[2].bare.vessel.side.emissivity,
            catalogue().material("copper")->finish("brushed")->emissivity);
}

TEST(Jacket, HidesTheMetalsEmissivity) {
  const Plan plan = planWith({});
  const RigPlan& dressed = plan.rigs[2];
  EXPECT_TRUE(dressed.hasJacket);
  EXPECT_TRUE(dressed.jacketIsCompared);
  EXPECT_EQ(dressed.bare.vessel.side.emissivity, 0.4);
  EXPECT_EQ(dressed.rig.vessel.side.emissivity, 0.94);
  EXPECT_EQ(dressed.rig.vessel.base.emissivity, 0.4);
  EXPECT_EQ(dressed.rig.vessel.lid.emissivity, 0.94);
  EXPECT_TRUE(dressed.bare.vessel.lid.insulation.empty());
  EXPECT_EQ(dressed.jacket.in(UnitSystem::SI),
            "side 13 mm closed-cell rubber foam; lid 13 mm closed-cell rubber foam");
  EXPECT_EQ(dressed.skin, "closed-cell rubber foam");
}

TEST(Jacket, IsComparedWhereTheRigHasNone) {
  const Plan plan = planWith({{"/jacket_to_compare/side/0", {{"R", "0.5 m2*K/W"}}}});
  const RigPlan& bare = plan.rigs[1];
  EXPECT_FALSE(bare.hasJacket);
  EXPECT_TRUE(bare.jacketIsCompared);
  EXPECT_TRUE(bare.rig.vessel.side.insulation.empty());
  ASSERT_EQ(bare.jacketed.vessel.side.insulation.size(), 1U);
  EXPECT_WITHIN(bare.jacketed.vessel.side.insulation[0].flatInsulance,
                squareMetreKelvinsPerWatt(0.5), squareMetreKelvinsPerWatt(1e-12));
  EXPECT_WITHIN(plan.rigs[2].jacketed.vessel.side.insulation[0].thickness, millimetres(13.0),
                millimetres(1e-9));
}

TEST(Jacket, IsNotComparedWhereThereIsNone) {
  const Plan plan = planWith({{"/jacket_to_compare", removed()}});
  EXPECT_FALSE(plan.rigs[0].jacketIsCompared);
  EXPECT_TRUE(plan.rigs[0].jacketed.vessel.side.insulation.empty());
  EXPECT_TRUE(plan.rigs[2].jacketIsCompared);
}

// The jacket's lid needs a lid; the comparison goes on with the rest.
TEST(Jacket, LeavesOutTheLidOfAKettleWithoutOne) {
  const Plan plan = planWith({{"/rigs/0/lid", "none"}});
  EXPECT_FALSE(plan.rigs[0].hasLid);
  EXPECT_EQ(plan.rigs[0].rig.vessel.open.strike, 1.0);
  EXPECT_TRUE(plan.rigs[0].jacketed.vessel.lid.insulation.empty());
  EXPECT_EQ(plan.rigs[0].jacketed.vessel.side.insulation.size(), 1U);
  EXPECT_EQ(plan.rigs[0].jacket.in(UnitSystem::SI), "side 13 mm closed-cell rubber foam");
}

TEST(Jacket, IsToldAsItsAuthorWroteItToReadersOfThatSystem) {
  const Plan plan =
      planWith({{"/rigs/0/jacket", {{"side", Json::array({{{"R", "1.8 ft2*h*degF/Btu"}}})}}},
                {"/rigs/1/jacket",
                 {{"side", Json::array({{{"material", "cork"}, {"thickness", "1/2 in"}}})}}}});
  EXPECT_EQ(plan.rigs[0].jacket.in(UnitSystem::UsCustomary), "side R 1.8 ft2*h*degF/Btu");
  EXPECT_EQ(plan.rigs[0].jacket.in(UnitSystem::SI), "side R 0.317 m²·K/W");
  EXPECT_EQ(plan.rigs[1].jacket.in(UnitSystem::UsCustomary), "side 1/2 in cork");
  EXPECT_EQ(plan.rigs[1].jacket.in(UnitSystem::SI), "side 12.7 mm cork");
}

TEST(Jacket, IsGovernedByItsOutermostLayer) {
  const Json layers =
      Json::array({{{"material", "cork"}, {"thickness", "5 mm"}},
                   {{"material", "reflective bubble wrap"}, {"thickness", "4 mm"}}});
  const Plan plan = planWith({{"/rigs/0/jacket", {{"side", layers}}},
                              {"/rigs/1/jacket", {{"side", layers}, {"outside", "cloth"}}},
                              {"/rigs/3/jacket", {{"side", layers}, {"outside", 0.5}}}});
  EXPECT_EQ(plan.rigs[0].rig.vessel.side.emissivity, 0.04);
  EXPECT_EQ(plan.rigs[1].rig.vessel.side.emissivity, 0.9);
  EXPECT_EQ(plan.rigs[1].skin, "cloth");
  EXPECT_EQ(plan.rigs[3].rig.vessel.side.emissivity, 0.5);
  EXPECT_EQ(plan.rigs[0].rig.vessel.side.insulation.size(), 2U);
}

TEST(Lid, OfWoodInsulatesByItself) {
  const Plan plan = planWith(
      {{"/rigs/0/lid", {{"material", "pine"}, {"thickness", "20 mm"}, {"open", {{"boil", 0.5}}}}}});
  ASSERT_EQ(plan.rigs[0].bare.vessel.lid.insulation.size(), 1U);
  EXPECT_EQ(plan.rigs[0].jacketed.vessel.lid.insulation.size(), 2U);
  EXPECT_EQ(plan.rigs[0].rig.vessel.open.boil, 0.5);
  // A lid that only lies there lets a little out all round, unless it is said to fit.
  EXPECT_EQ(plan.rigs[0].rig.vessel.open.mash, physics::kRimGap);
  const Plan tight = planWith({{"/rigs/0/lid", {{"material", "pine"}, {"gap", "0 %"}}}});
  EXPECT_EQ(tight.rigs[0].rig.vessel.open.mash, 0.0);
  EXPECT_EQ(tight.rigs[0].rig.vessel.open.boil, 1.0);
}

// A 3 mm wall of silicone (0.35 W/(m K)) on 13 mm inside: r2 ln(r2/r1)/k per outer area.
TEST(Hose, HasTheInsulanceOfItsWall) {
  const Plan plan =
      planWith({{"/rigs/0/recirculation",
                 {{"hose_length", "1.2 m"}, {"outer_diameter", "19 mm"}, {"wall", "3 mm"}}}});
  const Hose& hose = plan.rigs[0].rig.hose;
  EXPECT_WITHIN(hose.outerDiameter, millimetres(19.0), millimetres(1e-9));
  EXPECT_WITHIN(hose.wall, squareMetreKelvinsPerWatt(0.0095 * std::log(9.5 / 6.5) / 0.35),
                squareMetreKelvinsPerWatt(1e-9));
  EXPECT_EQ(plan.rigs[1].rig.hose.length, metres(0.0));
}

class RigFromFile : public testing::Test {
 protected:
  RigFromFile() {
    std::string pattern = (fs::temp_directory_path() / "heatledger-XXXXXX").string();
    folder_ = ::mkdtemp(pattern.data());
  }
  ~RigFromFile() override { fs::remove_all(folder_); }
  void write(const std::string& name, const std::string& text) const {
    fs::create_directories((folder_ / name).parent_path());
    saveText(folder_ / name, text);
  }
  test_support::Reading readWithFrom(const std::string& from) const {
    return readChecked(demoWith({{"/rigs/0/from", from}}), folder_);
  }

  fs::path folder_;
};

TEST_F(RigFromFile, TakesWhatThePlanDoesNotSay) {
  write("rigs/mine.json",
        R"({"name": "mine", "from": "parts/base.json", "boil_power": "80 %",
            "vessel": {"height": "450 mm", "finish": "dull"}})");
  write("rigs/parts/base.json", R"({"from": "40 L steel kettle", "boil_power": "50 %",
            "vessel": {"inner_diameter": "360 mm", "height": "300 mm"}})");
  const auto reading = readWithFrom("rigs/mine.json");
  ASSERT_TRUE(reading.plan) << told(reading.problems);
  const Rig& rig = reading.plan->rigs[0].rig;
  EXPECT_EQ(rig.name, "Old element, kitchen");                          // the plan
  EXPECT_EQ(reading.plan->rigs[0].finish, "brushed");                   // the plan
  EXPECT_WITHIN(rig.vessel.height, metres(0.45), metres(1e-9));         // mine.json
  EXPECT_EQ(rig.boilPower, 0.8);                                        // mine.json
  EXPECT_WITHIN(rig.vessel.innerDiameter, metres(0.36), metres(1e-9));  // base.json
  EXPECT_WITHIN(rig.element.rating, watts(3000.0), watts(1e-9));        // the catalogue
}

TEST_F(RigFromFile, TellsProblemsOfTheFileAtThePlansReference) {
  write("mine.json", R"({"from": "40 L steel kettle", "vessel": {"height": "45"}, "lit": 1})");
  const auto reading = readWithFrom("mine.json");
  EXPECT_FALSE(reading.plan);
  ASSERT_EQ(reading.problems.size(), 2U) << told(reading.problems);
  for (const Problem& problem : reading.problems) {
    EXPECT_EQ(problem.where, "/rigs/0/from");
    EXPECT_THAT(inEnglish(problem.message), HasSubstr("in \"mine.json\" at /"));
  }
}

TEST_F(RigFromFile, MustNotBeFromItself) {
  write("a.json", R"({"from": "b.json"})");
  write("b.json", R"({"from": "./a.json"})");
  const auto reading = readWithFrom("a.json");
  EXPECT_THAT(told(reading.problems), HasSubstr("is from itself"));
}

TEST_F(RigFromFile, MustBeShortAndPlain) {
  write("large.json", "{\"about\": \"" + std::string(300000, 'x') + "\"}");
  EXPECT_THAT(told(readWithFrom("large.json").problems), HasSubstr("too large"));
  write("broken.json", "{\"from\": ");
  EXPECT_THAT(told(readWithFrom("broken.json").problems), HasSubstr("ends too early"));
  fs::create_directory(folder_ / "folder.json");
  EXPECT_THAT(told(readWithFrom("folder.json").problems), HasSubstr("is not a file"));
  for (char c = 'a'; c < 'k'; ++c)
    write(std::string(1, c) + ".json",
          R"({"from": ")" + std::string(1, static_cast<char>(c + 1)) + R"(.json"})");
  EXPECT_THAT(told(readWithFrom("a.json").problems), HasSubstr("keep fewer"));
}

TEST_F(RigFromFile, MayTakeOffWhatTheOtherWears) {
  write("mine.json", R"({"from": "30 L double-wall urn"})");
  const auto dressed = readChecked(demoWith({{"/rigs/0/from", "mine.json"}}), folder_);
  ASSERT_TRUE(dressed.plan) << told(dressed.problems);
  EXPECT_TRUE(dressed.plan->rigs[0].hasJacket);
  const auto bare =
      readChecked(demoWith({{"/rigs/0/from", "mine.json"}, {"/rigs/0/jacket", "none"}}), folder_);
  ASSERT_TRUE(bare.plan) << told(bare.problems);
  EXPECT_FALSE(bare.plan->rigs[0].hasJacket);
}

// Each object of the schema, and the place where the reader meets it.
struct Described {
  const char* definition;
  const char* where;
};
constexpr std::array kDescribed{Described{"batch", "/batch"},
                                Described{"grain", "/batch/grain"},
                                Described{"mash", "/batch/mash"},
                                Described{"rest", "/batch/mash/rests/0"},
                                Described{"place", "/place"},
                                Described{"tariff", "/tariff"},
                                Described{"goals", "/goals"},
                                Described{"jacket", "/jacket_to_compare"},
                                Described{"layer", "/jacket_to_compare/side/0"},
                                Described{"rig", "/rigs/2"},
                                Described{"vessel", "/rigs/2/vessel"},
                                Described{"stands_on", "/rigs/2/stands_on"},
                                Described{"element", "/rigs/2/element"},
                                Described{"supply", "/rigs/2/supply"},
                                Described{"cable", "/rigs/2/cable"},
                                Described{"lid", "/rigs/2/lid"},
                                Described{"open", "/rigs/2/lid/open"},
                                Described{"recirculation", "/rigs/2/recirculation"}};

TEST(PlanSchema, NamesOnlyKeysThatAreRead) {
  const Json definitions = test_support::planSchema()["$defs"];
  for (const Described& described : kDescribed) {
    SCOPED_TRACE(described.where);
    ASSERT_TRUE(definitions.contains(described.definition));
    for (const auto& property : definitions[described.definition]["properties"].items()) {
      Json document = Json::parse(newPlanText());
      const Json::json_pointer at(described.where);
      document[at][property.key()] = nullptr;
      Problems problems;
      readPlan(document.dump(), "/nonexistent", problems);
      const std::string where = std::string(described.where) + '/' + property.key();
      for (const Problem& problem : problems)
        EXPECT_FALSE(problem.where == where &&
                     inEnglish(problem.message).find("is not known here") != std::string::npos)
            << where;
    }
  }
}

// Editors show a description beside each key.
TEST(PlanSchema, DescribesEveryKey) {
  const auto visit = [](const auto& self, const Json& node, const std::string& at) -> void {
    if (node.is_object() && node.contains("properties")) {
      for (const auto& property : node["properties"].items())
        EXPECT_TRUE(property.value().contains("description")) << at + '/' + property.key();
    }
    if (!node.is_structured()) return;
    for (const auto& part : node.items()) self(self, part.value(), at + '/' + part.key());
  };
  visit(visit, test_support::planSchema(), "");
}

// Without the warning for a key that nobody knows, its absence above would say nothing.
TEST(PlanSchema, IsNotAloneInKnowingKeys) {
  for (const Described& described : kDescribed) {
    SCOPED_TRACE(described.where);
    Json document = Json::parse(newPlanText());
    document[Json::json_pointer(described.where)]["nobody_knows_this"] = 1;
    Problems problems;
    readPlan(document.dump(), "/nonexistent", problems);
    EXPECT_THAT(told(problems), HasSubstr("nobody_knows_this"));
  }
}

TEST(PlanSchema, NamesEveryKeyOfTheDemo) {
  const Json definitions = test_support::planSchema()["$defs"];
  const Json demo = Json::parse(newPlanText());
  for (const Described& described : kDescribed) {
    SCOPED_TRACE(described.where);
    const Json::json_pointer at(described.where);
    if (!demo.contains(at)) continue;
    for (const auto& entry : demo[at].items())
      EXPECT_TRUE(definitions[described.definition]["properties"].contains(entry.key()))
          << entry.key();
  }
}

}  // namespace
}  // namespace rigs
