// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/jacket.hpp"

#include <algorithm>
#include <utility>
#include <variant>

#include "physics/sizing.hpp"
#include "physics/water.hpp"
#include "physics/wort.hpp"

namespace physics {
namespace {

// What this program calls worth it: common sense thresholds, own judgement, stated in the docs.
constexpr double kWorthwhileShareOfEnergy = 0.05;
constexpr TemperatureDifference kWorthwhileWarmth = kelvins(3.0);
constexpr double kThinSkinSaving = 0.20;
constexpr double kHiddenShare = 0.10;

Temperature mashGoal(const Batch& batch, Temperature otherwise) {
  if (const auto* held = std::get_if<HeldMash>(&batch.mash)) {
    return held->rests.empty() ? otherwise : held->rests.front().temperature;
  }
  return std::get<UnpluggedMash>(batch.mash).start;
}

LossPair losses(const Rig& bare, const Rig& jacketed, const Place& place, Temperature at,
                Volume filled, double open) {
  const Surroundings room{.air = moistAir(place.room, place.relativeHumidity, place.pressure),
                          .draught = place.draught};
  const auto flows = [&](const Rig& rig) {
    const Length fill = std::min(filled / crossSection(rig.vessel), rig.vessel.height);
    return HeatLossModel(rig.vessel, Hose{}, room, fill, open, rig.evaporationFactor,
                         rig.lossFactor)
        .flows(at, fill);
  };
  const HeatFlows without = flows(bare);
  const HeatFlows with = flows(jacketed);
  return {.at = at,
          .bare = without.lost.total(),
          .jacketed = with.lost.total(),
          .bareSide = without.lost[Path::Side] + without.lost[Path::DryWall],
          .jacketedSide = with.lost[Path::Side] + with.lost[Path::DryWall]};
}

// The first stage of a kind, if it came to its end; a heating to the boil, if it came to that.
const Stage* finished(const BrewDay& day, StageKind kind) {
  const Stage* stage = day.find(kind);
  if (!stage) return nullptr;
  const bool stopped = !day.finished() && stage == &day.stages.back();
  const bool shortOfIt =
      kind == StageKind::HeatingToBoil && day.outcome != Outcome::Done && !day.startsBoiling();
  return stopped || shortOfIt ? nullptr : stage;
}

std::optional<Time> saved(const BrewDay& bare, const BrewDay& jacketed, StageKind kind) {
  const Stage* a = finished(bare, kind);
  const Stage* b = finished(jacketed, kind);
  if (!a || !b) return std::nullopt;
  return (a->end - a->begin) - (b->end - b->begin);
}

bool worthItsTime(const BrewDay& bare, const std::optional<Time>& time, StageKind kind) {
  if (!time) return false;
  const Stage* stage = bare.find(kind);
  return *time > kWorthwhileShareOfTime * (stage->end - stage->begin);
}

// How the strike water was heated does not matter to a mash left alone, only that it was; but where
// the batch itself is left alone, its night is the one that follows on the rig's own element.
BrewDay nightOf(const Rig& rig, const Batch& batch, const Place& place, Time alone,
                const SimulationOptions& asked) {
  Batch left = batch;
  left.mash = UnpluggedMash{mashGoal(batch, celsius(66.0)), alone};
  left.boil = seconds(0.0);
  SimulationOptions options = asked;
  options.leastForAnyPower = false;
  // Where wort is wanted, how much is poured shows at the end of the day only.
  options.untilMashEnds = std::holds_alternative<PouredWater>(batch.size);
  if (std::holds_alternative<UnpluggedMash>(batch.mash)) {
    BrewDay own = simulate(rig, left, place, options);
    if (own.find(StageKind::UnpluggedRest)) return own;
  }
  Rig unplugged = rig;
  unplugged.supply.cableLoop = ohms(0.0);
  return simulate(withDelivered(unplugged, kStrongestElement), left, place, options);
}

}  // namespace

Temperature leftAlone(const Rig& rig, const Batch& batch, const Place& place, Time alone) {
  const BrewDay day = nightOf(rig, batch, place, alone, {});
  const Stage* rest = day.find(StageKind::UnpluggedRest);
  return rest ? rest->last : place.room;
}

std::vector<CurvePoint> coolingCurve(const Rig& rig, const Batch& batch, const Place& place,
                                     Time alone) {
  SimulationOptions options;
  options.curves = true;
  const BrewDay day = nightOf(rig, batch, place, alone, options);
  const Stage* rest = day.find(StageKind::UnpluggedRest);
  return rest ? rest->curve : std::vector<CurvePoint>{};
}

Batch asPoured(const Batch& batch, const BrewDay& day) {
  Batch poured = batch;
  poured.size = PouredWater{day.water};
  return poured;
}

BrewDay supposedDay(const BrewDay& planned, const Rig& supposed, const Batch& batch,
                    const Place& place, const SimulationOptions& options) {
  SimulationOptions guessed = options;
  guessed.waterGuess = planned.water * waterDensity(celsius(20.0));
  if (planned.outcome == Outcome::Done) {
    BrewDay day = simulate(supposed, batch, place, guessed);
    if (day.outcome == Outcome::Done) return day;
  }
  return simulate(supposed, asPoured(batch, planned), place, options);
}

JacketDays jacketDays(const Rig& bare, const Rig& jacketed, const Batch& batch, const Place& place,
                      AsPlanned planned, const SimulationOptions& options) {
  const bool isBare = planned == AsPlanned::Bare;
  BrewDay own = simulate(isBare ? bare : jacketed, batch, place, options);
  BrewDay other = supposedDay(own, isBare ? jacketed : bare, batch, place, options);
  return isBare ? JacketDays{std::move(own), std::move(other)}
                : JacketDays{std::move(other), std::move(own)};
}

JacketEffect compareJacket(const Rig& bare, const Rig& jacketed, const Batch& batch,
                           const Place& place, Time alone, AsPlanned planned) {
  const BrewDay known = simulate(planned == AsPlanned::Bare ? bare : jacketed, batch, place);
  return compareJacket(bare, jacketed, batch, place, alone, planned, known);
}

JacketEffect compareJacket(const Rig& bare, const Rig& jacketed, const Batch& batch,
                           const Place& place, Time alone, AsPlanned planned,
                           const BrewDay& known) {
  const bool isBare = planned == AsPlanned::Bare;
  JacketEffect effect{};
  effect.bare = isBare ? known : supposedDay(known, bare, batch, place);
  effect.jacketed = isBare ? supposedDay(known, jacketed, batch, place) : known;

  const Temperature boiling = boilingPoint(0.0, place.pressure);
  const Volume mashed = effect.bare.fullest;
  const Volume boiled =
      effect.bare.preBoilHot > litres(0.0) ? effect.bare.preBoilHot : effect.bare.fullest;
  effect.atMash =
      losses(bare, jacketed, place, mashGoal(batch, celsius(66.0)), mashed, bare.vessel.open.mash);
  effect.atBoil = losses(bare, jacketed, place, boiling, boiled, bare.vessel.open.boil);
  effect.savedToStrike = saved(effect.bare, effect.jacketed, StageKind::Strike);
  effect.savedToBoil = saved(effect.bare, effect.jacketed, StageKind::HeatingToBoil);
  if (effect.bare.outcome == Outcome::Done && effect.jacketed.outcome == Outcome::Done) {
    effect.savedFromWall = effect.bare.total.fromWall() - effect.jacketed.total.fromWall();
  }
  effect.alone = alone;
  const auto last = [&](const std::vector<CurvePoint>& night) {
    return night.empty() ? place.room : night.back().wort;
  };
  effect.bareNight = coolingCurve(bare, asPoured(batch, effect.bare), place, alone);
  effect.jacketedNight = coolingCurve(jacketed, asPoured(batch, effect.jacketed), place, alone);
  effect.bareAfter = last(effect.bareNight);
  effect.jacketedAfter = last(effect.jacketedNight);

  const Power heat = effect.bare.electrical.delivered;
  effect.reasons.strongElementHidesLosses = effect.atBoil.bareSide < kHiddenShare * heat;
  effect.reasons.skinRadiatesMore = effect.atBoil.sideShareSaved() < kThinSkinSaving;
  effect.reasons.surfaceDominates = effect.atBoil.bareSide < 0.5 * effect.atBoil.bare;

  const bool time = worthItsTime(effect.bare, effect.savedToStrike, StageKind::Strike) ||
                    worthItsTime(effect.bare, effect.savedToBoil, StageKind::HeatingToBoil);
  const bool otherwise =
      (effect.savedFromWall &&
       *effect.savedFromWall > kWorthwhileShareOfEnergy * effect.bare.total.fromWall()) ||
      effect.jacketedAfter - effect.bareAfter > kWorthwhileWarmth;
  if (effect.bare.levelsOff && effect.jacketed.outcome == Outcome::Done) {
    effect.verdict = JacketVerdict::MakesItBoil;
  } else if (effect.bare.levelsOff && effect.jacketed.levelsOff &&
             effect.jacketed.stages.size() > effect.bare.stages.size()) {
    effect.verdict = JacketVerdict::GetsFurther;  // the batch is the same, and so are its stages
  } else if (time) {
    effect.verdict = JacketVerdict::Worthwhile;
  } else {
    effect.verdict = otherwise ? JacketVerdict::TimeNotWorthIt : JacketVerdict::NotWorthIt;
  }
  return effect;
}

}  // namespace physics
