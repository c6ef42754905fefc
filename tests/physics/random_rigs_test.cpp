// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold for any kettle, not only for those somebody measured.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "physics/brewday.hpp"
#include "physics/sizing.hpp"
#include "tests/support/kettles.hpp"
#include "tests/support/random_rigs.hpp"

namespace physics {
namespace {

using test_support::between;
using test_support::Case;
using test_support::coin;
using test_support::layer;
using test_support::someCase;
using test_support::someOpening;

BrewDay run(const Case& c, const SimulationOptions& options = {}) {
  return simulate(c.rig, c.batch, c.place, options);
}

bool finite(const Ledger& l) {
  return std::isfinite(inJoules(l.supplied() + l.accounted() + l.cable)) &&
         std::all_of(l.lost.values.begin(), l.lost.values.end(),
                     [](Energy e) { return std::isfinite(inJoules(e)); });
}

bool finite(const BrewDay& day) {
  bool all = finite(day.total);
  for (const double x :
       {inKelvin(day.strike), inKelvin(day.boilingPoint), inLitres(day.preBoilCold),
        inLitres(day.preBoilHot), inLitres(day.resultCold), inLitres(day.resultHot),
        day.preBoilGravity, day.resultGravity, inLitres(day.fullest), inLitres(day.lowest),
        inSeconds(day.duration())}) {
    all = all && std::isfinite(x);
  }
  if (day.levelsOff) {
    all = all && std::isfinite(inKelvin(day.levelsOff->at)) &&
          std::isfinite(inWatts(day.levelsOff->atWanted));
  }
  if (day.boil) {
    all = all && std::isfinite(inWatts(day.boil->net)) &&
          std::isfinite(inLitresPerHour(day.boil->coldBoilOff)) &&
          std::isfinite(day.boil->shareOfPreBoilPerHour);
  }
  for (const Stage& stage : day.stages) {
    all = all && finite(stage.ledger) && std::isfinite(inKelvin(stage.last)) &&
          std::isfinite(inKilograms(stage.evaporated));
    for (const CurvePoint& point : stage.curve) {
      all = all && std::isfinite(inKelvin(point.wort)) && std::isfinite(inWatts(point.element)) &&
            std::isfinite(inWatts(point.lost.total()));
    }
  }
  return all;
}

RC_GTEST_PROP(AnyRig, AccountsForEveryJouleOfEveryStage, ()) {
  for (int kettle = 0; kettle < 3; ++kettle) {
    const BrewDay day = run(someCase(), {.curves = true});
    RC_ASSERT(finite(day));
    RC_ASSERT(!day.stages.empty());
    Time clock = seconds(0.0);
    for (const Stage& stage : day.stages) {
      // A stage left alone is supplied nothing: there the day's supply is the measure.
      const bool alone = stage.ledger.supplied() <= joules(0.0);
      const bool closes = alone ? abs(stage.ledger.residual()) < 1e-6 * day.total.supplied()
                                : stage.ledger.imbalance() < 1e-6;
      RC_LOG() << "stage " << static_cast<int>(stage.kind) << ", "
               << inSeconds(stage.end - stage.begin) << " s: " << inJoules(stage.ledger.residual())
               << " J of " << inJoules(stage.ledger.supplied()) << " J, " << inCelsius(stage.first)
               << " to " << inCelsius(stage.last) << " C\n";
      RC_ASSERT(closes);
      RC_ASSERT(stage.begin == clock);
      RC_ASSERT(stage.end >= stage.begin);
      RC_ASSERT(stage.ledger.element >= joules(0.0));
      clock = stage.end;
    }
    RC_ASSERT(day.total.imbalance() < 1e-7);
  }
}

RC_GTEST_PROP(AnyRig, GivesTheSameDayTwice, ()) {
  const Case c = someCase();
  const BrewDay a = run(c);
  const BrewDay b = run(c);
  RC_ASSERT(a.outcome == b.outcome);
  RC_ASSERT(a.duration() == b.duration());
  RC_ASSERT(a.resultCold == b.resultCold);
  RC_ASSERT(a.total.lost.values == b.total.lost.values);
  RC_ASSERT(a.total.element == b.total.element);
}

RC_GTEST_PROP(AnyRig, DoesNotDependOnTheIntegratorsTolerance, ()) {
  const Case c = someCase();
  const BrewDay a = run(c, {.curves = false, .relativeTolerance = 1e-9});
  const BrewDay b = run(c, {.curves = false, .relativeTolerance = 1e-11});
  RC_ASSERT(a.outcome == b.outcome);
  RC_ASSERT(a.stages.size() == b.stages.size());
  for (std::size_t i = 0; i < a.stages.size(); ++i) {
    RC_ASSERT(abs(a.stages[i].last - b.stages[i].last) < kelvins(1e-4));
    // Creeping up to a temperature turns a hair of heat into seconds: a hundred-thousandth of a
    // long day is nothing anybody sees.
    const bool creeps = a.outcome != Outcome::Done && i + 1 == a.stages.size();
    const Time visible = seconds(creeps ? 5.0 : 0.1) + 1e-5 * a.stages[i].end;
    RC_ASSERT(abs(a.stages[i].end - b.stages[i].end) < visible);
  }
}

// The second opinion: the same laws followed in steps of time, to thirteen digits. Of 3,000 rigs
// the median is 6e-12 of the day's energy, 99 of 100 lie within 2e-10 and the worst at 2e-8; 1.4e-4
// s.
RC_GTEST_PROP(AnyRig, IsTheSameFollowedInStepsOfTime, ()) {
  const Case c = someCase();
  const BrewDay day = run(c);
  const BrewDay steps = run(c, {.relativeTolerance = 1e-13, .method = Method::StepsInTime});
  RC_ASSERT(day.outcome == steps.outcome);
  RC_ASSERT(day.stages.size() == steps.stages.size());
  const Energy whole = steps.total.supplied();
  const auto near = [&](Energy a, Energy b) { return abs(a - b) <= 3e-8 * whole; };
  for (std::size_t i = 0; i < day.stages.size(); ++i) {
    const Stage& a = day.stages[i];
    const Stage& b = steps.stages[i];
    RC_LOG() << "stage " << static_cast<int>(a.kind) << ": " << inSeconds(a.end - b.end)
             << " s and " << inKelvins(a.last - b.last) << " K apart, element "
             << inJoules(a.ledger.element - b.ledger.element) << " J of " << inJoules(whole)
             << ", closes to " << inJoules(a.ledger.residual()) << "\n";
    RC_ASSERT(abs(a.end - b.end) <= seconds(5e-4));
    RC_ASSERT(near(a.ledger.element, b.ledger.element));
    for (std::size_t p = 0; p < kPathCount; ++p) {
      RC_ASSERT(near(a.ledger.lost.values[p], b.ledger.lost.values[p]));
    }
    RC_ASSERT(near(a.ledger.residual(), joules(0.0)));
  }
}

// By steps, every power that is tried heats anew; by nodes, those of one heating tell of others.
RC_GTEST_PROP(AnyRig, TakesTheSameLeastPowerByNodesAndBySteps, ()) {
  const Case c = someCase();
  const BrewDay day = run(c);
  const BrewDay steps = run(c, {.method = Method::StepsInTime});
  RC_ASSERT(day.leastToBoil.has_value() == steps.leastToBoil.has_value());
  if (!day.leastToBoil) return;
  RC_LOG() << inWatts(*day.leastToBoil) << " W by nodes, " << inWatts(*steps.leastToBoil)
           << " W by steps\n";
  RC_ASSERT(abs(*day.leastToBoil - *steps.leastToBoil) <= 3e-7 * *steps.leastToBoil);
}

// Time to the boil, or forever.
double minutesToBoil(const BrewDay& day) {
  const Stage* heating = day.find(StageKind::HeatingToBoil);
  const bool rolls = day.outcome != Outcome::Steams && day.outcome != Outcome::StaysFarBelow;
  if (!heating || !rolls) return HUGE_VAL;
  return inMinutes(heating->end - day.stages.front().begin);
}

RC_GTEST_PROP(AnyRig, BoilsNoLaterWithMorePower, ()) {
  Case c = someCase();
  c.batch.grain.mass = kilograms(0.0);
  c.batch.boil = minutes(0.0);
  const double weak = minutesToBoil(run(c));
  c.rig.element.rating *= between(1.0, 2.0);
  RC_ASSERT(minutesToBoil(run(c)) <= weak + 1e-9);
}

// Strong elements and a boil of two minutes: whatever the kettle, it boils and is not boiled dry.
RC_GTEST_PROP(AnyRig, BoilsCoolerHigherUp, ()) {
  Case c = someCase();
  c.rig.element = test_support::fedWith(9000.0);
  c.batch.boil = minutes(2.0);
  Case higher = c;
  higher.place.pressure = c.place.pressure * between(0.90, 0.99);
  const BrewDay low = run(c);
  const BrewDay high = run(higher);
  RC_PRE(low.outcome == Outcome::Done && high.outcome == Outcome::Done);
  RC_ASSERT(high.boilingPoint < low.boilingPoint);
  RC_ASSERT(high.boil->temperature < low.boil->temperature);
  RC_ASSERT(high.find(StageKind::Boil)->last < low.find(StageKind::Boil)->last);
}

RC_GTEST_PROP(AnyRig, GetsAQuarterFromAnElementOnHalfItsVoltage, ()) {
  Case c = someCase();
  c.rig.supply.cableLoop = ohms(0.0);
  c.rig.element.ratedAt = volts(240.0);
  c.rig.supply.nominal = volts(120.0);
  const BrewDay halfVoltage = run(c);
  c.rig.supply.nominal = volts(240.0);
  c.rig.element.rating *= 0.25;
  const BrewDay quarterRating = run(c);
  RC_ASSERT(halfVoltage.outcome == quarterRating.outcome);
  RC_ASSERT(abs(halfVoltage.total.element - quarterRating.total.element) <=
            1e-7 * quarterRating.total.element + joules(1e-3));
}

RC_GTEST_PROP(AnyRig, GetsAQuarterOfItsRatingFromHalfItsVoltage, ()) {
  Case c = someCase();
  c.rig.supply.cableLoop = ohms(0.0);
  c.rig.element.ratedAt = volts(240.0);
  c.rig.supply.nominal = volts(120.0);
  RC_ASSERT(abs(run(c).electrical.delivered - 0.25 * c.rig.element.rating) <
            1e-12 * c.rig.element.rating);
}

// No insulation, insulation of no thickness and insulation that insulates nothing are the same.
RC_GTEST_PROP(AnyRig, IsTheSameWithoutInsulationAndWithNoneToSpeakOf, ()) {
  Case bare = someCase();
  Vessel& v = bare.rig.vessel;
  v.side.insulation = v.base.insulation = v.lid.insulation = {};
  Case thin = bare;
  Case copper = bare;
  for (Covering Vessel::*face : {&Vessel::side, &Vessel::base, &Vessel::lid}) {
    (thin.rig.vessel.*face).insulation = {layer(0.0, 0.04), layer(0.0, 0.2)};
    (copper.rig.vessel.*face).insulation = {
        {.thickness = millimetres(0.0), .flatInsulance = squareMetreKelvinsPerWatt(0.0)}};
  }
  const BrewDay none = run(bare);
  for (const BrewDay& day : {run(thin), run(copper)}) {
    RC_ASSERT(day.outcome == none.outcome);
    RC_ASSERT(day.total.lost.values == none.total.lost.values);
    RC_ASSERT(day.duration() == none.duration());
  }
}

// Twice and half the tolerance: what a table or a clock shows, to 0.1 K, 1 s, 0.01 kWh and 0.01 L,
// moves by less than half of its last digit.
RC_GTEST_PROP(AnyRig, ShowsTheSameAtTwiceAndHalfTheTolerance, ()) {
  const Case c = someCase();
  const BrewDay usual = run(c);
  for (const double tolerance : {2e-9, 0.5e-9}) {
    const BrewDay other = run(c, {.curves = false, .relativeTolerance = tolerance});
    RC_ASSERT(other.outcome == usual.outcome);
    RC_ASSERT(other.stages.size() == usual.stages.size());
    for (std::size_t i = 0; i < usual.stages.size(); ++i) {
      const Stage& a = usual.stages[i];
      const Stage& b = other.stages[i];
      RC_ASSERT(abs(a.last - b.last) < kelvins(0.05));
      const bool creeps = usual.outcome != Outcome::Done && i + 1 == usual.stages.size();
      if (!creeps) RC_ASSERT(abs(a.end - b.end) < seconds(0.5));
      if (!creeps) RC_ASSERT(abs(a.ledger.element - b.ledger.element) < joules(0.005 * 3.6e6));
    }
    RC_ASSERT(abs(other.resultCold - usual.resultCold) < litres(0.005));
  }
}

RC_GTEST_PROP(AnyRig, IsNotChangedByALayerWithoutThickness, ()) {
  const Case c = someCase();
  Case wrapped = c;
  for (Covering* covering :
       {&wrapped.rig.vessel.side, &wrapped.rig.vessel.base, &wrapped.rig.vessel.lid}) {
    covering->insulation.push_back(layer(0.0, between(0.03, 1.0)));
  }
  const BrewDay a = run(c);
  const BrewDay b = run(wrapped);
  RC_ASSERT(a.outcome == b.outcome);
  RC_ASSERT(a.total.lost.values == b.total.lost.values);
}

// Wort that is wanted is what comes out, whenever there is a boil to the end.
RC_GTEST_PROP(AnyRig, MakesTheWortThatIsWanted, ()) {
  Case c = someCase();
  c.rig.element.rating = watts(between(3000.0, 9000.0));
  const BrewDay poured = run(c);
  RC_PRE(poured.outcome == Outcome::Done);
  const Volume wanted = between(0.8, 1.05) * poured.resultCold;
  c.batch.size = WantedWort{wanted};
  const BrewDay day = run(c);
  RC_PRE(day.outcome == Outcome::Done);
  RC_LOG() << inLitres(day.resultCold - wanted) << " L off " << inLitres(wanted) << " water "
           << inLitres(day.water) << " P " << inWatts(c.rig.element.rating) << " least "
           << (day.leastToBoil ? inWatts(*day.leastToBoil) : 0) << " boil "
           << inMinutes(c.batch.boil);
  RC_ASSERT(abs(day.resultCold - wanted) < litres(1e-6));
}

RC_GTEST_PROP(AnyRig, ScalesABatchInProportion, ()) {
  Case c = someCase();
  const double factor = between(0.3, 3.0);
  const Batch twice = scaled(scaled(c.batch, factor), 1.0 / factor);
  const Volume before = std::get<PouredWater>(c.batch.size).atTwentyDegrees;
  RC_ASSERT(abs(std::get<PouredWater>(twice.size).atTwentyDegrees - before) < 1e-12 * before);
  const Batch other = scaled(c.batch, factor);
  RC_ASSERT(abs(other.grain.mass - factor * c.batch.grain.mass) <= 1e-12 * other.grain.mass);
}

// One vessel's losses at one temperature.
HeatFlows flowsOf(const Case& c, Temperature at, double open) {
  const Surroundings room{.air = moistAir(c.place.room, c.place.relativeHumidity, c.place.pressure),
                          .draught = c.place.draught};
  const Length fill = 0.7 * c.rig.vessel.height;
  return HeatLossModel(c.rig.vessel, c.rig.hose, room, fill, open, c.rig.evaporationFactor,
                       c.rig.lossFactor)
      .flows(at, fill);
}
Power lossOf(const Case& c, Temperature at, double open) {
  return flowsOf(c, at, open).lost.total();
}
// Hotter than the room and below boiling at the lowest pressure.
Temperature someHotLiquid(const Case& c) {
  return celsius(between(std::max(inCelsius(c.place.room), 5.0) + 5.0, 84.0));
}

RC_GTEST_PROP(AnyRig, LosesNoMoreThroughMoreInsulation, ()) {
  const Case c = someCase();
  Case wrapped = c;
  for (Covering* covering :
       {&wrapped.rig.vessel.side, &wrapped.rig.vessel.base, &wrapped.rig.vessel.lid}) {
    covering->insulation.push_back(layer(between(1.0, 50.0), between(0.025, 0.1)));
  }
  const Temperature at = someHotLiquid(c);
  const double open = someOpening();
  RC_ASSERT(lossOf(wrapped, at, open) < lossOf(c, at, open));
}

RC_GTEST_PROP(AnyRig, LosesNoLessTheWiderItIsOpen, ()) {
  const Case c = someCase();
  const Temperature at = someHotLiquid(c);
  const double open = between(0.0, 0.9);
  RC_ASSERT(lossOf(c, at, open + 0.1) >= lossOf(c, at, open) - watts(1e-6));
}

RC_GTEST_PROP(AnyRig, LosesNoLessToAColderRoom, ()) {
  const Case c = someCase();
  const Temperature at = someHotLiquid(c);
  Case colder = c;
  colder.place.room = c.place.room - kelvins(between(0.5, 10.0));
  const double open = someOpening();
  RC_ASSERT(lossOf(colder, at, open) > lossOf(c, at, open));
}

RC_GTEST_PROP(AnyRig, LosesNoLessTheHotterItIs, ()) {
  const Case c = someCase();
  const Temperature at = someHotLiquid(c);
  const double open = someOpening();
  RC_ASSERT(lossOf(c, at + kelvins(0.1), open) > lossOf(c, at, open));
}

RC_GTEST_PROP(AnyRig, RadiatesNoLessWhenItIsDuller, ()) {
  const Case c = someCase();
  Case duller = c;
  for (Covering Vessel::*face : {&Vessel::side, &Vessel::base, &Vessel::lid}) {
    double& emissivity = (duller.rig.vessel.*face).emissivity;
    emissivity = between(emissivity, 1.0);
  }
  const Temperature at = someHotLiquid(c);
  const double open = someOpening();
  RC_ASSERT(lossOf(duller, at, open) >= lossOf(c, at, open) - watts(1e-6));
}

RC_GTEST_PROP(AnyRig, EvaporatesNoLessInDrierAirOrAStrongerDraught, ()) {
  const Case c = someCase();
  const Temperature at = someHotLiquid(c);
  const double open = between(0.05, 1.0);
  const MassFlow vapour = flowsOf(c, at, open).vapour;
  Case drier = c;
  drier.place.relativeHumidity = between(0.0, c.place.relativeHumidity);
  RC_ASSERT(flowsOf(drier, at, open).vapour >= vapour);
  Case windier = c;
  windier.place.draught += metresPerSecond(between(0.0, 2.0));
  RC_ASSERT(flowsOf(windier, at, open).vapour >= vapour);
}

// More water takes longer, whatever it stands in; an element on a longer cable too.
RC_GTEST_PROP(AnyRig, BoilsNoSoonerWithMoreWaterOrALongerCable, ()) {
  Case c = someCase();
  c.batch.grain.mass = kilograms(0.0);
  c.batch.boil = minutes(0.0);
  const BrewDay usual = run(c);
  RC_PRE(usual.outcome == Outcome::Done);
  Case longer = c;
  longer.rig.supply.cableLoop += ohms(between(0.0, 0.5));
  RC_ASSERT(minutesToBoil(run(longer)) >= minutesToBoil(usual) - 1e-6);
  Case fuller = c;
  fuller.batch = scaled(c.batch, between(1.0, 1.3));
  // Heat-loss grows with the wetted wall, and no wall gives heat: the room is colder than boiling.
  RC_ASSERT(minutesToBoil(run(fuller)) >= minutesToBoil(usual) - 1e-6);
}

}  // namespace
}  // namespace physics
