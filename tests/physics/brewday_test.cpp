// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/brewday.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "physics/water.hpp"
#include "physics/wort.hpp"
#include "tests/support/kettles.hpp"
#include "tests/support/within.hpp"

namespace physics {
namespace {

using test_support::constantLoss;
using test_support::layer;
using test_support::mashOf;
using test_support::nearlyLossless;
using test_support::openAt;
using test_support::rigOf;
using test_support::roomAt;
using test_support::steelKettle;
using test_support::steelRig;
using test_support::waterOnly;

// Water boils at `t` here.
Place boilingAt(double celsiusBoiling, double celsiusRoom) {
  Place place = roomAt(celsiusRoom);
  place.pressure = saturationPressure(celsius(celsiusBoiling));
  place.water = celsius(celsiusRoom);
  return place;
}

Time heatingTime(const BrewDay& day) {
  const Stage* heating = day.find(StageKind::HeatingToBoil);
  return heating ? heating->end - heating->begin : seconds(-1.0);
}

// Y. Cengel, Heat and Mass Transfer, example 1.2: 1.2 kg of water (4186 J/(kg K)) and 0.5 kg of
// shell (700 J/(kg K)) from 15 to 95 C at 1.2 kW: printed 429.9 kJ and 6.0 min (358.2 s). Ours
// boils at 95 C on its mountain; water's own specific heat is 0.1 % higher on average.
TEST(HeatingToBoil, ReproducesTheTextbooksElectricKettle) {
  Vessel v = nearlyLossless(steelKettle());
  v.innerDiameter = metres(0.12);
  v.height = metres(0.1);  // brim-full, so that the whole shell is wetted
  v.mass = kilograms(0.5);
  v.specificHeat = joulesPerKilogramKelvin(700.0);
  const BrewDay day =
      simulate(rigOf(v, 1200.0), waterOnly(1.2 / 0.99820, seconds(0.0)), boilingAt(95.0, 15.0));
  ASSERT_EQ(day.outcome, Outcome::Done);
  EXPECT_WITHIN(heatingTime(day), seconds(358.2), seconds(1.0));
  EXPECT_WITHIN(day.total.element, joules(429.9e3), joules(1.2e3));
}

// One mixed volume with a constant loss (as in the EnergyPlus Engineering Reference), computed here
// from its closed form with 4182 J/(kg K): 49.9 kg, 3 kW, 5 W/K, 20 to 95 C in a room at 20 C takes
// 5573.1 s, and 5217.0 s without loss. Water's own specific heat is 0.2 % higher on average.
TEST(HeatingToBoil, FollowsTheClosedFormOfAConstantLoss) {
  const double litre = 49.9 / 0.99820;
  const auto timeWith = [&](double conductance) {
    return heatingTime(simulate(constantLoss(litre, 3000.0, conductance),
                                waterOnly(litre, seconds(0.0)), boilingAt(95.0, 20.0)));
  };
  EXPECT_NEAR(inSeconds(timeWith(5.0)), 5573.1, 0.003 * 5573.1);
  EXPECT_NEAR(inSeconds(timeWith(1e-9)), 5217.0, 0.003 * 5217.0);
  EXPECT_NEAR(timeWith(5.0) / timeWith(1e-9), 5573.1 / 5217.0, 2e-4);
}

// Supply = loss where it can be solved by hand: 300 W over 5 W/K is 60 K above the room.
TEST(HeatingToBoil, LevelsOffWhereSupplyEqualsLoss) {
  const BrewDay day =
      simulate(constantLoss(20.0, 300.0, 5.0), waterOnly(20.0), boilingAt(95.0, 20.0));
  EXPECT_EQ(day.outcome, Outcome::StaysFarBelow);
  ASSERT_TRUE(day.levelsOff);
  EXPECT_NEAR(inCelsius(day.levelsOff->at), 80.0, 1e-3);
  EXPECT_NEAR(inCelsius(day.levelsOff->wanted), 95.0, 1e-6);
  EXPECT_NEAR(inWatts(day.levelsOff->atWanted), 375.0, 0.01);
  ASSERT_TRUE(day.leastToBoil);
  EXPECT_NEAR(inWatts(*day.leastToBoil), 375.0, 0.01);
  // Within a quarter of a kelvin of it the clock of the boil starts, and an hour goes its way.
  EXPECT_NEAR(inCelsius(day.find(StageKind::HeatingToBoil)->last), 79.75, 1e-3);
  const double hourOverTimeConstant = 3600.0 * 5.0 / (20.0 * 0.9982 * 4197.0);
  ASSERT_TRUE(day.boil);
  EXPECT_NEAR(inCelsius(day.boil->temperature), 80.0 - 0.25 * std::exp(-hourOverTimeConstant),
              1e-3);
  EXPECT_NEAR(inWatts(day.boil->net), 300.0 - 5.0 * 59.75, 0.01);
}

// The same for an ordinary open kettle, against the losses themselves.
TEST(HeatingToBoil, LevelsOffAtTheRootOfItsLosses) {
  const Rig rig = steelRig(1000.0);
  const Place place = roomAt(15.0);
  const BrewDay day = simulate(rig, waterOnly(25.0), place);
  ASSERT_EQ(day.outcome, Outcome::StaysFarBelow);
  ASSERT_TRUE(day.levelsOff);
  const Temperature at = day.levelsOff->at;
  const Length fill =
      day.preBoilCold * (waterDensity(celsius(20.0)) / waterDensity(at)) / crossSection(rig.vessel);
  const Surroundings room{.air = moistAir(place.room, 0.5, place.pressure),
                          .draught = place.draught};
  HeatLossModel losses(rig.vessel, Hose{}, room, fill, 1.0);
  EXPECT_NEAR(inWatts(losses.flows(at, fill).lost.total()), 1000.0, 0.1);
}

// J. Hancock, IBD engineering symposium 2014: boiling 5 % of 1000 hL off takes 5000 kg x 2257 kJ/kg
// = 11 285 MJ, 3134 kW over 60 min.
TEST(Boil, ReproducesTheBreweryOfATheoreticalThousandHectolitres) {
  Vessel v = nearlyLossless(steelKettle());
  v.innerDiameter = metres(5.0);
  v.height = metres(6.0);
  const BrewDay day = simulate(rigOf(v, 3134e3), waterOnly(100e3), roomAt(20.0));
  ASSERT_EQ(day.outcome, Outcome::Done);
  const Stage* boil = day.find(StageKind::Boil);
  ASSERT_NE(boil, nullptr);
  EXPECT_NEAR(inKilograms(boil->evaporated), 5000.0, 5.0);
  EXPECT_NEAR(inJoules(boil->ledger.lost[Path::Evaporation]), 11285e6, 12e6);
  EXPECT_NEAR(day.boil->shareOfPreBoilPerHour, 0.05, 0.0002);
}

// Computed here with 2257 kJ/kg: net power over latent heat. 2.5 kW less 0.3 kW on 25 L is
// 3.51 L/h, 14.0 %/h; 3 kW at 90 % net 4.31 kg/h; 2 kW at 80 % net 2.55 kg/h.
TEST(Boil, EvaporatesItsNetPowerOverLatentHeat) {
  struct Row {
    double watt, lost, kilogramsPerHour, share;
  };
  for (const Row& row :
       {Row{2500, 300, 3.51, 0.140}, Row{3000, 300, 4.31, 0.172}, Row{2000, 400, 2.55, 0.102}}) {
    SCOPED_TRACE(row.kilogramsPerHour);
    const BrewDay day = simulate(constantLoss(25.0, row.watt, row.lost / 80.0), waterOnly(25.0),
                                 boilingAt(100.0, 20.0));
    ASSERT_EQ(day.outcome, Outcome::Done);
    ASSERT_TRUE(day.boil);
    EXPECT_NEAR(inWatts(day.boil->net), row.watt - row.lost, 0.1);
    EXPECT_NEAR(inKilogramsPerHour(day.boil->evaporation), row.kilogramsPerHour, 0.006);
    EXPECT_NEAR(day.boil->shareOfPreBoilPerHour, row.share, 0.001);
  }
}

// 25 L from 18 to 67 C: 1.424 kWh; 3 kg boiled off: 1.881 kWh (computed here, 4.186 kJ/(kg K),
// 1 kg/L, 2257 kJ/kg).
TEST(Brewday, PaysForHeatingAndEvaporationAlone) {
  const BrewDay day = simulate(constantLoss(25.0, 3000.0, 1e-9),
                               waterOnly(25.0 / 0.9982, minutes(3.0 * 2257e3 / 3000.0 / 60.0)),
                               boilingAt(67.0, 18.0));
  const Stage* heating = day.find(StageKind::HeatingToBoil);
  ASSERT_NE(heating, nullptr);
  EXPECT_NEAR(inKilowattHours(heating->ledger.element), 1.424, 0.003);
  const Stage* boil = day.find(StageKind::Boil);
  ASSERT_NE(boil, nullptr);
  EXPECT_NEAR(inKilowattHours(boil->ledger.element), 1.881, 0.001);
}

// The ledger against an account of masses and temperatures kept here.
TEST(Ledger, AgreesWithMassesTimesEnthalpiesStageByStage) {
  Rig rig = steelRig(3500.0);
  rig.supply.cableLoop = ohms(0.3);
  rig.vessel.open = {.strike = 0.2, .mash = 0.1, .heating = 0.7, .boil = 1.0};
  rig.hose.length = metres(1.5);
  const Batch batch = mashOf(28.0, 6.0, 15.0);
  const Place place = roomAt(17.0);
  const BrewDay day = simulate(rig, batch, place);
  ASSERT_EQ(day.outcome, Outcome::Done);
  ASSERT_EQ(day.stages.size(), 8u);

  const double coldWater = inJoulesPerKilogram(waterEnthalpy(place.water));
  const double coldExtract = inJoulesPerKilogram(extractEnthalpy(batch.grain.temperature));
  const auto waterHeat = [&](Temperature t) {
    return inJoulesPerKilogram(waterEnthalpy(t)) - coldWater;
  };
  const auto extractHeat = [&](Temperature t) {
    return inJoulesPerKilogram(extractEnthalpy(t)) - coldExtract;
  };
  const double grainMass = inKilograms(batch.grain.mass);
  const double grainHeat = inJoulesPerKilogramKelvin(batch.grain.specificHeat);
  const double strikeWater = 28e-3 * inKilogramsPerCubicMetre(waterDensity(celsius(20.0)));
  const Volume filled =
      kilograms(strikeWater) / waterDensity(celsius(66.0)) + batch.grain.mass * batch.displacement;
  const double shell =
      inJoulesPerKelvin(wettedHeatCapacity(rig.vessel, filled / crossSection(rig.vessel)));
  const double delivered = inWatts(electricalLoad(rig.element, rig.supply).delivered);

  double water = strikeWater;
  double extract = 0.0;
  Temperature from = day.stages.front().first;
  for (const Stage& stage : day.stages) {
    SCOPED_TRACE(static_cast<int>(stage.kind));
    double waterBefore = water;
    double extractBefore = extract;
    double grainBefore = stage.kind <= StageKind::MashingIn ? 0.0 : grainMass;
    double grainAfter = stage.kind == StageKind::Strike ? 0.0 : grainMass;
    if (stage.kind == StageKind::HeatingToBoil) {
      // Of the wort at 20 C, 0.8 L per kg stays in the grain.
      extract = grainMass * batch.extractYield;
      const double strength = extract / (water + extract);
      const double whole =
          (water + extract) / inKilogramsPerCubicMetre(wortDensity(strength, celsius(20.0)));
      const double drained = 1.0 - grainMass * 0.8e-3 / whole;
      const double lifted = grainMass * grainHeat * inKelvins(from - batch.grain.temperature) +
                            (1.0 - drained) * water * waterHeat(from) -
                            drained * extract * extractHeat(from);
      EXPECT_NEAR(inJoules(stage.ledger.lifted), lifted, 1e-6 * std::abs(lifted));
      water *= drained;
      extract *= drained;
      grainAfter = 0.0;
    } else if (stage.kind == StageKind::Boil) {
      grainBefore = grainAfter = 0.0;
    }
    water -= inKilograms(stage.evaporated);
    const double wort = water * waterHeat(stage.last) + extract * extractHeat(stage.last) -
                        waterBefore * waterHeat(from) - extractBefore * extractHeat(from);
    const double grain = grainHeat * (grainAfter * inKelvins(stage.last - batch.grain.temperature) -
                                      grainBefore * inKelvins(from - batch.grain.temperature));
    const double tolerance = 1e-6 * (1e5 + std::abs(wort));
    EXPECT_NEAR(inJoules(stage.ledger.wort), wort, tolerance);
    EXPECT_NEAR(inJoules(stage.ledger.grain), grain, tolerance);
    EXPECT_NEAR(inJoules(stage.ledger.vessel), shell * inKelvins(stage.last - from), tolerance);
    const bool full = stage.kind == StageKind::Strike || stage.kind == StageKind::Ramp ||
                      stage.kind == StageKind::HeatingToBoil || stage.kind == StageKind::Boil;
    if (full) {
      const double worked = delivered * inSeconds(stage.end - stage.begin);
      EXPECT_NEAR(inJoules(stage.ledger.element), worked, 1e-8 * worked + 0.01);
    }
    // Latent heat at some temperature between the ends, and steam above its cold start.
    const double kg = inKilograms(stage.evaporated);
    const double latent = inJoules(stage.ledger.lost[Path::Evaporation]);
    EXPECT_GE(latent, kg * inJoulesPerKilogram(latentHeat(std::max(stage.last, from))) - 1.0);
    EXPECT_LE(latent, kg * inJoulesPerKilogram(latentHeat(std::min(stage.last, from))) + 1.0);
    EXPECT_LE(inJoules(stage.ledger.steam), kg * waterHeat(std::max(stage.last, from)) + 1.0);
    EXPECT_LT(stage.ledger.imbalance(), 1e-7);
    from = stage.last;
  }
  EXPECT_LT(day.total.imbalance(), 1e-8);
  EXPECT_NEAR(inJoules(day.total.cable / day.total.element * joules(1.0)),
              inWatts(day.electrical.inCable) / inWatts(day.electrical.delivered), 1e-12);
}

TEST(Brewday, TellsItsStagesInOrderWithCurvesThatJoin) {
  const BrewDay day = simulate(steelRig(), mashOf(28.0, 6.0), roomAt(17.0), {.curves = true});
  ASSERT_EQ(day.outcome, Outcome::Done);
  std::vector<StageKind> kinds;
  for (const Stage& stage : day.stages) {
    kinds.push_back(stage.kind);
    ASSERT_GE(stage.curve.size(), 2u);
    EXPECT_WITHIN(stage.curve.front().time, stage.begin, seconds(1e-6));
    EXPECT_WITHIN(stage.curve.back().time, stage.end, seconds(1e-6));
    EXPECT_WITHIN(stage.curve.back().wort, stage.last, kelvins(1e-6));
    // The power under the curve is the ledger's energy.
    Energy element = joules(0.0);
    Energy lost = joules(0.0);
    for (std::size_t i = 1; i < stage.curve.size(); ++i) {
      const CurvePoint& a = stage.curve[i - 1];
      const CurvePoint& b = stage.curve[i];
      EXPECT_GE(b.time, a.time);
      element += 0.5 * (a.element + b.element) * (b.time - a.time);
      lost += 0.5 * (a.lost.total() + b.lost.total()) * (b.time - a.time);
    }
    EXPECT_WITHIN(element, stage.ledger.element, 1e-3 * stage.ledger.element + joules(1.0));
    EXPECT_WITHIN(lost, stage.ledger.lost.total(), 1e-3 * stage.ledger.lost.total() + joules(1.0));
  }
  EXPECT_EQ(kinds, (std::vector{StageKind::Strike, StageKind::MashingIn, StageKind::Ramp,
                                StageKind::Rest, StageKind::Ramp, StageKind::Rest,
                                StageKind::HeatingToBoil, StageKind::Boil}));
}

// Without time for mashing in, the mash stands at its first rest at once.
TEST(Brewday, NeedsNoRampWhenMashingInTakesNoTime) {
  Batch batch = mashOf(28.0, 6.0);
  batch.mashingIn = seconds(0.0);
  batch.mash = HeldMash{{{celsius(66.0), minutes(60.0)}}};
  const BrewDay day = simulate(steelRig(), batch, roomAt(17.0));
  EXPECT_EQ(day.find(StageKind::Ramp), nullptr);
  const Stage* mixing = day.find(StageKind::MashingIn);
  ASSERT_NE(mixing, nullptr);
  EXPECT_EQ(mixing->begin, mixing->end);
  EXPECT_NEAR(inCelsius(mixing->mixed), 66.0, 1e-9);
}

TEST(Brewday, GoesStraightToTheBoilWithoutGrain) {
  const BrewDay day = simulate(steelRig(), waterOnly(25.0), roomAt(17.0));
  EXPECT_EQ(day.outcome, Outcome::Done);
  EXPECT_EQ(day.stages.size(), 2u);
  EXPECT_NEAR(inLitres(day.liftedCold), 25.0, 1e-3);
  EXPECT_NEAR(day.liftedGravity, 1.0, 2e-5);
}

TEST(Brewday, NamesWhatWentWrong) {
  const auto outcome = [](const Rig& rig, const Batch& batch, const Place& place) {
    const BrewDay day = simulate(rig, batch, place);
    EXPECT_LT(day.total.imbalance(), 1e-6);
    return day.outcome;
  };
  const Batch mash = mashOf(28.0, 6.0);
  Rig rig = steelRig();

  rig.vessel.open.strike = 1.0;
  rig.element.rating = watts(400.0);
  EXPECT_EQ(outcome(rig, mash, roomAt(15.0)), Outcome::DoesNotReachStrike);

  rig = steelRig(700.0);
  rig.vessel.open.mash = 1.0;
  rig.hose.length = metres(10.0);
  rig.hose.wall = squareMetreKelvinsPerWatt(0.001);
  EXPECT_EQ(outcome(rig, mash, roomAt(15.0)), Outcome::DoesNotReachRest);

  EXPECT_EQ(outcome(steelRig(1100.0), mash, roomAt(15.0)), Outcome::StaysFarBelow);
  EXPECT_EQ(outcome(steelRig(1600.0), mash, roomAt(15.0)), Outcome::Steams);

  Batch thick = mashOf(6.0, 8.0);
  thick.mash = HeldMash{{{celsius(76.0), minutes(10.0)}}};
  EXPECT_EQ(outcome(steelRig(), thick, roomAt(15.0)), Outcome::StrikeTooHot);

  rig = steelRig();
  rig.element.topHeight = metres(0.06);  // 5.9 L
  EXPECT_EQ(outcome(rig, waterOnly(5.0), roomAt(15.0)), Outcome::UncoversElement);
  EXPECT_EQ(outcome(rig, waterOnly(8.0), roomAt(15.0)), Outcome::UncoversElement);
  EXPECT_EQ(outcome(rig, waterOnly(12.0), roomAt(15.0)), Outcome::Done);
}

// An outside heater may go on to the last drop, and to syrup.
TEST(Boil, StopsBeforeItIsDry) {
  const BrewDay water = simulate(steelRig(9000.0), waterOnly(5.0), roomAt(15.0));
  EXPECT_EQ(water.outcome, Outcome::UncoversElement);
  EXPECT_NEAR(inLitres(water.resultHot), 0.396, 0.001);  // 1 % of the kettle's height
  Batch small = mashOf(12.0, 3.0);
  small.boil = hours(3.0);
  const BrewDay wort = simulate(steelRig(9000.0), small, roomAt(15.0));
  EXPECT_EQ(wort.outcome, Outcome::UncoversElement);
  EXPECT_GT(wort.resultGravity, 1.15);
  EXPECT_LT(wort.resultGravity, 1.30);
}

// What lid and dry wall do not pass on must leave as steam. Half empty, the wall under a lid's
// steam takes more than an open surface's air and radiation; nearly full, the bright lid alone
// takes less.
TEST(Boil, EvaporatesUnderALidWhatLidAndWallDoNotTake) {
  const auto lidded = [](double litre) {
    Rig rig = steelRig();
    const BrewDay open = simulate(rig, waterOnly(litre), roomAt(15.0));
    rig.vessel.open.boil = 0.0;
    const BrewDay closed = simulate(rig, waterOnly(litre), roomAt(15.0));
    for (const BrewDay* day : {&open, &closed}) {
      const Power latent = day->boil->evaporation * latentHeat(day->boil->temperature);
      EXPECT_NEAR(inWatts(latent), inWatts(day->boil->net), 0.01 * inWatts(latent));
    }
    return static_cast<double>(closed.boil->evaporation / open.boil->evaporation);
  };
  EXPECT_LT(lidded(12.0), 1.0);
  EXPECT_GT(lidded(12.0), 0.8);
  EXPECT_GT(lidded(35.0), 1.0);
  EXPECT_LT(lidded(35.0), 1.1);
}

// Half the power in the boil evaporates less than half.
TEST(Boil, IsTurnedDown) {
  Rig rig = steelRig(4000.0);
  const BrewDay full = simulate(rig, waterOnly(25.0), roomAt(15.0));
  rig.boilPower = 0.5;
  const BrewDay half = simulate(rig, waterOnly(25.0), roomAt(15.0));
  ASSERT_TRUE(full.boil && half.boil);
  EXPECT_NEAR(inWatts(full.boil->net - half.boil->net), 2000.0, 1e-6);
  rig.boilPower = 0.2;
  const BrewDay tooLittle = simulate(rig, waterOnly(25.0), roomAt(15.0));
  EXPECT_EQ(tooLittle.outcome, Outcome::StaysFarBelow);
  ASSERT_TRUE(tooLittle.levelsOff && tooLittle.leastToBoil);
  EXPECT_LT(tooLittle.levelsOff->at, tooLittle.boilingPoint);
  EXPECT_GT(*tooLittle.leastToBoil, watts(4000.0));
}

// Saturation at 60 kPa is 85.93 C (steam tables).
TEST(Brewday, BoilsOnAHighMountain) {
  Place place = roomAt(15.0);
  place.pressure = pascals(60e3);
  const BrewDay day = simulate(steelRig(), mashOf(25.0, 5.0), place);
  EXPECT_EQ(day.outcome, Outcome::Done);
  EXPECT_GT(day.boilingPoint, celsius(85.93));
  EXPECT_LT(day.boilingPoint, celsius(86.4));
}

// What overflows is reported, and does not widen the walls.
TEST(Brewday, ReportsAnOverfullKettle) {
  const BrewDay day = simulate(steelRig(), mashOf(38.0, 8.0), roomAt(15.0));
  EXPECT_GT(day.fullest, capacity(steelKettle()));
  EXPECT_LT(day.total.imbalance(), 1e-8);
}

// In a room hotter than the rest the controller stays off, and the mash warms.
TEST(Rest, IsNotCooledByItsController) {
  Batch batch = mashOf(20.0, 4.0, 30.0);
  batch.mash = HeldMash{{{celsius(35.0), hours(2.0)}}};
  batch.mashingIn = seconds(0.0);
  Rig rig = steelRig();
  const BrewDay day = simulate(rig, batch, roomAt(45.0));
  const Stage* rest = day.find(StageKind::Rest);
  ASSERT_NE(rest, nullptr);
  EXPECT_GE(rest->ledger.element, joules(0.0));
  EXPECT_LT(rest->ledger.lost.total(), joules(0.0));
  EXPECT_GT(rest->last, celsius(35.0));
  EXPECT_LT(rest->ledger.imbalance(), 1e-6);
}

// Held warm: what the element gives is what is lost.
TEST(Rest, IsHeldByWhatItLoses) {
  const BrewDay day = simulate(steelRig(), mashOf(28.0, 6.0), roomAt(17.0));
  const Stage* rest = day.find(StageKind::Rest);
  ASSERT_NE(rest, nullptr);
  EXPECT_WITHIN(rest->ledger.element, rest->ledger.lost.total(), joules(1.0));
  EXPECT_WITHIN(rest->last, rest->first, kelvins(1e-9));
}

// A rest cooler than the one before is waited for, within its own time.
TEST(Rest, IsReachedByCoasting) {
  Batch batch = mashOf(28.0, 6.0);
  batch.mash = HeldMash{{{celsius(66.0), minutes(10.0)}, {celsius(65.0), minutes(90.0)}}};
  const BrewDay day = simulate(steelRig(), batch, roomAt(10.0));
  const Stage& second = day.stages[4];
  ASSERT_EQ(second.kind, StageKind::Rest);
  EXPECT_WITHIN(second.end - second.begin, minutes(90.0), seconds(1e-6));
  EXPECT_NEAR(inCelsius(second.last), 65.0, 1e-6);
  EXPECT_LT(second.ledger.element, second.ledger.lost.total());
}

// A grain bill that holds all the wort back leaves nothing to boil, and numbers all the same.
TEST(Brewday, SurvivesGrainThatKeepsAllTheWort) {
  Batch batch = mashOf(15.0, 6.0);
  batch.absorption = litresPerKilogram(5.0);
  const BrewDay day = simulate(steelRig(), batch, roomAt(15.0));
  EXPECT_EQ(day.outcome, Outcome::UncoversElement);
  EXPECT_NEAR(day.resultGravity, 1.0, 2e-5);
  EXPECT_TRUE(std::isfinite(inJoules(day.total.accounted())));
}

// Hot strike water for a cold, thick mash: as if it could be heated far beyond boiling.
TEST(Brewday, SurvivesStrikeWaterFarAboveBoiling) {
  Batch batch = mashOf(6.0, 7.0, -20.0);
  batch.mash = HeldMash{{{celsius(94.0), minutes(10.0)}}};
  const BrewDay day = simulate(steelRig(), batch, roomAt(-20.0));
  EXPECT_EQ(day.outcome, Outcome::StrikeTooHot);
  // 7 kg x 1707 J/(kg K) x 114 K less slaking, over some 27 kJ/K of water and kettle.
  EXPECT_GT(day.strike, celsius(130.0));
  EXPECT_LT(day.strike, celsius(155.0));
}

// 60 kW on five litres: trial steps of the integrator shoot past the boil.
TEST(Brewday, SurvivesAnAbsurdlyStrongElement) {
  const BrewDay day = simulate(steelRig(60e3), waterOnly(5.0, minutes(1.0)), roomAt(15.0));
  EXPECT_EQ(day.outcome, Outcome::Done);
  // 5 kg x 4186 x 88 K / 60 kW and the kettle's own.
  EXPECT_NEAR(inSeconds(heatingTime(day)), 32.0, 3.0);
}

}  // namespace
}  // namespace physics
