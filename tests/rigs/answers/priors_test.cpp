// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/priors.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <string>

#include "rigs/answers/drawn_days.hpp"
#include "tests/support/solved_demo.hpp"

namespace {

using namespace rigs;
using test_support::demoPlan;
using test_support::startedPlan;

Prior priorOf(const RigPlan& rig, Unknown what) { return priorsOf(rig)[placeOf(what)]; }

// A plan whose one rig is from the catalogue, with what `own` states of it.
RigPlan catalogued(const std::string& own) {
  const std::string text = R"({
    "format": {"name": "heat-ledger-plan", "version": 1}, "title": "t",
    "batch": {"wort": "23 L", "grain": {"mass": "5 kg"},
              "mash": {"rests": [{"temperature": "66 C", "time": "60 min"}]},
              "mashing_in": "5 min", "boil": "60 min"},
    "place": {"altitude": "0 m", "room": "20 C", "water": "12 C"}, "day_starts": "09:00",
    "rigs": [{"name": "r", "from": "40 L steel kettle", "supply": {"from": "Europe 230 V 16 A"})" +
                           own + "}]}";
  Problems problems;
  auto plan = readPlan(text, ".", problems);
  EXPECT_TRUE(plan) << inEnglish(problems.front().message);
  return plan.value().rigs.front();
}

TEST(Priors, StandInTheOrderOfTheirUnknowns) {
  const Priors priors = priorsOf(demoPlan().rigs.front());
  for (std::size_t k = 0; k < kUnknowns; ++k) {
    EXPECT_EQ(placeOf(priors[k].what), k);
    EXPECT_GT(priors[k].spread, 0.0);
    EXPECT_FALSE(priors[k].because.empty());
  }
}

// What somebody measured has in it what laws are known to leave out.
TEST(Priors, AreToNoSideOfAFactorThatIsStated) {
  EXPECT_DOUBLE_EQ(priorOf(catalogued(""), Unknown::ClosedLosses).median, 1.05);
  EXPECT_DOUBLE_EQ(priorOf(catalogued(R"(, "loss_factor": 1.2)"), Unknown::ClosedLosses).median,
                   1.0);
  const std::string small = R"(, "vessel": {"inner_diameter": "250 mm", "height": "700 mm"})";
  EXPECT_DOUBLE_EQ(priorOf(catalogued(small), Unknown::OpenSurface).median, 0.8);
  EXPECT_DOUBLE_EQ(
      priorOf(catalogued(small + R"(, "evaporation_factor": 0.8)"), Unknown::OpenSurface).median,
      1.0);
}

TEST(Priors, AreFactorsOfTheirMedianOrKelvin) {
  const Prior power = priorOf(demoPlan().rigs.front(), Unknown::Power);
  EXPECT_DOUBLE_EQ(power.at(0.0), power.median);
  EXPECT_DOUBLE_EQ(power.at(1.0), power.median * std::exp(power.spread));
  const Prior room = priorOf(demoPlan().rigs.front(), Unknown::Room);
  EXPECT_DOUBLE_EQ(room.at(-2.0), -2.0);
}

// A plate from 10 % under to 5 % over, evenly: mean 0.975, standard deviation 15 %/sqrt(12). A
// voltage within 5 % at two standard deviations: power by twice as much.
TEST(Priors, OfThePowerAreThoseOfPlateAndVoltage) {
  const Prior power = priorOf(demoPlan().rigs.front(), Unknown::Power);
  EXPECT_NEAR(power.median, 1.0 + (0.05 - 0.10) / 2.0, 1e-12);
  EXPECT_NEAR(power.spread, std::hypot(0.15 / std::sqrt(12.0), 2.0 * 0.05 / 2.0), 5e-4);
}

TEST(Priors, OfTheLossesAreWiderWhereNobodySaidHowTheKettleLooks) {
  const RigPlan usual = catalogued("");
  EXPECT_TRUE(usual.finishIsUsual);
  EXPECT_DOUBLE_EQ(priorOf(usual, Unknown::ClosedLosses).spread, 0.22);
  for (const char* stated :
       {R"(, "vessel": {"finish": "brushed"})", R"(, "vessel": {"emissivity": 0.3})"}) {
    const RigPlan rig = catalogued(stated);
    EXPECT_FALSE(rig.finishIsUsual) << stated;
    EXPECT_DOUBLE_EQ(priorOf(rig, Unknown::ClosedLosses).spread, 0.15) << stated;
  }
}

TEST(Priors, OfTheLossesDoNotAskForTheLookOfWhatAJacketCovers) {
  const RigPlan jacketed = catalogued(
      R"(, "jacket": {"side": [{"material": "closed-cell rubber foam", "thickness": "13 mm"}]})");
  EXPECT_TRUE(jacketed.finishIsUsual);
  const Prior losses = priorOf(jacketed, Unknown::ClosedLosses);
  EXPECT_DOUBLE_EQ(losses.spread, 0.15);
  EXPECT_DOUBLE_EQ(losses.median, 1.0);
  EXPECT_DOUBLE_EQ(priorOf(catalogued(""), Unknown::ClosedLosses).median, 1.05);
}

TEST(Priors, OfTheLidAreNarrowerWhereItsGapIsStated) {
  const std::string lid = R"(, "lid": {"material": "stainless steel", "finish": "bright")";
  const Prior open = priorOf(catalogued(lid + "}"), Unknown::RimGap);
  const Prior stated = priorOf(catalogued(lid + R"(, "gap": "2 %"})"), Unknown::RimGap);
  EXPECT_LT(stated.spread, open.spread);
  // The loosest that its pot allows is at two standard deviations.
  EXPECT_NEAR(std::exp(2.0 * open.spread), physics::kLoosestRimGap / physics::kRimGap, 0.1);
}

TEST(Priors, OfASmallMouthExpectLessToEvaporate) {
  RigPlan rig = demoPlan().rigs.front();
  EXPECT_DOUBLE_EQ(priorOf(rig, Unknown::OpenSurface).median, 1.0);
  rig.rig.vessel.innerDiameter = physics::millimetres(200.0);
  EXPECT_DOUBLE_EQ(priorOf(rig, Unknown::OpenSurface).median, 0.8);
}

TEST(DrawnDays, AreThePlansOwnWithNothingChanged) {
  const Plan plan = demoPlan();
  for (std::size_t i = 0; i < plan.rigs.size(); ++i) {
    const physics::Volume water = waterPlanned(plan, i);
    const DrawnDay day = dayWith(plan, i, water, asPlannedValues());
    EXPECT_EQ(day.rig, plan.rigs[i].rig);
    EXPECT_EQ(day.place, plan.place);
    EXPECT_NEAR(physics::inLitres(simulate(day, kForBands).resultCold), 23.0, 1e-3);
  }
}

TEST(DrawnDays, ChangeOneThingForEachUnknown) {
  const Plan plan = demoPlan();
  constexpr std::size_t kJacketed = 2;
  const physics::Volume water = waterPlanned(plan, kJacketed);
  const DrawnDay own = dayWith(plan, kJacketed, water, asPlannedValues());
  const auto with = [&](Unknown what, double value) {
    UnknownValues values = asPlannedValues();
    values[placeOf(what)] = value;
    return dayWith(plan, kJacketed, water, values);
  };
  EXPECT_DOUBLE_EQ(with(Unknown::ClosedLosses, 1.2).rig.lossFactor, 1.2 * own.rig.lossFactor);
  EXPECT_DOUBLE_EQ(with(Unknown::OpenSurface, 0.9).rig.evaporationFactor,
                   0.9 * own.rig.evaporationFactor);
  const DrawnDay more = with(Unknown::Amount, 1.1);
  EXPECT_DOUBLE_EQ(static_cast<double>(more.batch.grain.mass / own.batch.grain.mass), 1.1);
  EXPECT_DOUBLE_EQ(
      static_cast<double>(physics::statedVolume(more.batch) / physics::statedVolume(own.batch)),
      1.1);
  EXPECT_DOUBLE_EQ(
      static_cast<double>(with(Unknown::Power, 0.9).rig.element.rating / own.rig.element.rating),
      0.9);
  EXPECT_NEAR(physics::inKelvins(with(Unknown::Room, 2.0).place.room - own.place.room), 2.0, 1e-9);
  EXPECT_NEAR(physics::inKelvins(with(Unknown::Water, -3.0).place.water - own.place.water), -3.0,
              1e-9);
  const DrawnDay loose = with(Unknown::RimGap, 2.0);
  EXPECT_DOUBLE_EQ(loose.rig.vessel.open.mash, 2.0 * own.rig.vessel.open.mash);
  // Left open on purpose for the boil: no gap of the rim.
  EXPECT_DOUBLE_EQ(loose.rig.vessel.open.boil, own.rig.vessel.open.boil);
  EXPECT_DOUBLE_EQ(
      static_cast<double>(with(Unknown::Absorption, 1.1).batch.absorption / own.batch.absorption),
      1.1);
}

TEST(DrawnDays, NeverPourIce) {
  Plan plan = demoPlan();
  plan.place.water = physics::celsius(0.5);
  UnknownValues values = asPlannedValues();
  values[placeOf(Unknown::Water)] = -4.0;
  const DrawnDay day = dayWith(plan, 0, waterPlanned(plan, 0), values);
  EXPECT_GT(physics::inCelsius(day.place.water), 0.0);
}

}  // namespace
