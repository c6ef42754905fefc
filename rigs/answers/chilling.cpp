// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/chilling.hpp"

#include <algorithm>
#include <utility>

#include "physics/water.hpp"
#include "physics/wort.hpp"
#include "rigs/answers/night.hpp"

namespace rigs {
namespace {

using namespace physics;

constexpr Length kTubeWall = millimetres(0.8);
constexpr Length kHoseRound = millimetres(7.0);  // wider than the tube
constexpr double kCoilOfKettle = 0.6;            // of its diameter

constexpr Temperature kSixty = celsius(60.0);
constexpr Temperature kForty = celsius(40.0);
constexpr Temperature kTwentyOne = celsius(21.0);

// A thin tube's wall is no more than an eighth of it.
Length tubeWall(const Chiller& chiller) { return std::min(kTubeWall, chiller.tube / 8.0); }

MassFlow flowOf(VolumeFlow flow, Temperature water) { return flow * waterDensity(water); }

ChillingKettle chillingKettleOf(const Rig& rig, const Place& place, double open) {
  return {.vessel = rig.vessel,
          .room = {.air = moistAir(place.room, place.relativeHumidity, place.pressure),
                   .draught = place.draught},
          .open = open,
          .evaporationFactor = rig.evaporationFactor,
          .lossFactor = rig.lossFactor};
}

// Down to the goal, and with `beyond` down to the other marks, as far as `coldest` lets it.
ChillWay followed(const HotWort& wort, const ChillingKettle& kettle, const ChillSink& sink,
                  Temperature coldest, Temperature goal, bool beyond) {
  ChillWay way;
  std::vector<std::pair<Temperature, std::optional<Time>*>> marks{{kSixty, &way.toSixty},
                                                                  {kWarmUpTo, &way.toHotHolding},
                                                                  {kForty, &way.toForty},
                                                                  {kTwentyOne, &way.toTwentyOne},
                                                                  {goal, &way.toGoal}};
  const Temperature nearest = coldest + kNearestToCoolant - kelvins(1e-9);
  std::erase_if(marks, [&](const auto& mark) {
    return mark.first < nearest || mark.first >= wort.at || (!beyond && mark.first < goal);
  });
  std::stable_sort(marks.begin(), marks.end(),
                   [](const auto& a, const auto& b) { return a.first > b.first; });
  std::vector<Temperature> goals;
  for (const auto& mark : marks) goals.push_back(mark.first);
  ChillCourse course = chill(wort, kettle, sink, coldest, goals);
  for (std::size_t i = 0; i < marks.size(); ++i) *marks[i].second = course.passed[i];
  way.comesToRestAt = course.comesToRestAt;
  way.heat = course.heat;
  way.curve = std::move(course.curve);
  return way;
}

struct CoilRun {
  Coil coil;
  MassFlow water;
  Temperature inlet;
};
// Still wort by the law, or no better than the band's other end.
enum class Film { Stirred, Still, StillAtWorst };

CoilState stateAt(const CoilRun& run, Film film, Temperature wort) {
  const Stirring stirring = film == Film::Stirred ? Stirring::Stirred : Stirring::Still;
  const CoilState state = coilAt(run.coil, run.water, run.inlet, wort, stirring);
  return film == Film::StillAtWorst
             ? coilAtMost(state, run.coil, run.water, run.inlet, wort, kStillLeast)
             : state;
}

ChillWay byCoil(const CoilRun& run, Film film, const HotWort& wort, const ChillingKettle& kettle,
                Temperature goal) {
  ChillWay way = followed(
      wort, kettle, [&](Temperature t) { return stateAt(run, film, t).taken; }, run.inlet, goal,
      false);
  if (wort.at <= run.inlet) return way;
  const CoilState first = stateAt(run, film, wort.at);
  way.firstOutlet = first.outlet;
  way.overall = first.overall;
  const Time lasted = way.curve.back().time;
  const Mass water = run.water * lasted;
  way.water = water / waterDensity(run.inlet);
  if (water > kilograms(0.0))
    way.meanOutlet = run.inlet + way.heat.taken / (water * waterSpecificHeat(run.inlet));
  return way;
}

// The fastest flow of wort that is cold enough, looked for from above: where a slow stream turns
// laminar its outlet may rise again.
template <class Enough>
std::optional<VolumeFlow> fastest(const Enough& isEnough) {
  constexpr int kSteps = 60;
  constexpr int kHalvings = 12;
  const VolumeFlow step = litresPerHour(1800.0 / kSteps);
  for (int i = kSteps; i > 0; --i) {
    VolumeFlow enough = static_cast<double>(i) * step;
    if (!isEnough(enough)) continue;
    if (i == kSteps) return enough;
    VolumeFlow more = enough + step;
    for (int k = 0; k < kHalvings; ++k) {
      const VolumeFlow middle = 0.5 * (enough + more);
      (isEnough(middle) ? enough : more) = middle;
    }
    return enough;
  }
  return std::nullopt;
}

ExchangerPass throughExchanger(const Chiller& chiller, const HotWort& wort, Volume cold,
                               Temperature water, Temperature goal) {
  const TubeInHose tube{.outerDiameter = chiller.tube,
                        .wallThickness = tubeWall(chiller),
                        .length = chiller.length,
                        .conductivity = chiller.conductivity,
                        .hoseBore = chiller.tube + kHoseRound,
                        .coilDiameter = metres(0.25)};
  const MassDensity density = wortDensity(wort.strength(), celsius(20.0));
  const SpecificHeat heat = wortSpecificHeat(wort.strength(), midpoint(wort.at, water));
  const ColdStream stream{flowOf(chiller.waterFlow, water), water};
  const auto hotAt = [&](VolumeFlow flow) { return HotStream{flow * density, heat, wort.at}; };
  const HotStream hot = hotAt(chiller.wortFlow);
  ExchangerPass pass{};
  pass.likely = counterflowPass(tube, hot, stream);
  const auto offBy = [&](double share) {
    return counterflowPass((1.0 + share) * pass.likely.conductance, hot, stream);
  };
  pass.worst = offBy(-kExchangerScatter);
  pass.best = offBy(kExchangerScatter);
  pass.time = cold / chiller.wortFlow;
  pass.water = chiller.waterFlow * pass.time;
  const auto coldEnough = [&](VolumeFlow flow) {
    return counterflowPass(tube, hotAt(flow), stream).hotOut <= goal;
  };
  pass.flowForGoal = fastest(coldEnough);
  return pass;
}

ChillRefusal refusal(const HotWort& wort, const ChillAnswer& answer) {
  const HeatCapacity stored = wort.water * waterSpecificHeat(answer.pitching) +
                              wort.extract * extractSpecificHeat(answer.pitching);
  const Energy left = stored * (answer.floor - answer.pitching);
  return {.warmestWater = answer.pitching - kNearestToCoolant,
          .ice = iceFor(left, answer.pitching)};
}

void addChiller(ChillAnswer& answer, const RigPlan& rig, const Plan& plan, const HotWort& wort) {
  const Chiller& chiller = answer.chiller;
  if (chiller.kind == Chiller::Kind::Air) return;
  if (answer.pitching < answer.floor) answer.refused = refusal(wort, answer);
  if (chiller.kind == Chiller::Kind::Counterflow) {
    if (wort.at > answer.water + kNearestToCoolant)
      answer.pass = throughExchanger(chiller, wort, answer.wort, answer.water, answer.goal);
    return;
  }
  const CoilRun run{.coil = {.outerDiameter = chiller.tube,
                             .wallThickness = tubeWall(chiller),
                             .length = chiller.length,
                             .conductivity = chiller.conductivity,
                             .coilDiameter = kCoilOfKettle * rig.rig.vessel.innerDiameter},
                    .water = flowOf(chiller.waterFlow, answer.water),
                    .inlet = answer.water};
  const ChillingKettle kettle = chillingKettleOf(rig.rig, plan.place, 1.0);
  answer.stirred = byCoil(run, Film::Stirred, wort, kettle, answer.goal);
  answer.still = byCoil(run, Film::Still, wort, kettle, answer.goal);
  answer.stillAtWorst = byCoil(run, Film::StillAtWorst, wort, kettle, answer.goal);
}

}  // namespace

std::optional<Time> ChillWay::throughTheDanger() const {
  if (!toHotHolding || !toTwentyOne) return std::nullopt;
  return *toTwentyOne - *toHotHolding;
}

std::optional<ChillSpan> chillSpan(const ChillAnswer& chill) {
  if (isColdAlready(chill)) return ChillSpan{seconds(0.0), seconds(0.0)};
  if (chill.pass) return ChillSpan{chill.pass->time, chill.pass->time};
  if (chill.stirred && chill.chiller.stirred)
    return chill.stirred->toGoal
               ? std::optional(ChillSpan{*chill.stirred->toGoal, *chill.stirred->toGoal})
               : std::nullopt;
  if (chill.still)
    return chill.still->toGoal && chill.stillAtWorst->toGoal
               ? std::optional(ChillSpan{*chill.still->toGoal, *chill.stillAtWorst->toGoal})
               : std::nullopt;
  return chill.air.toGoal ? std::optional(ChillSpan{*chill.air.toGoal, *chill.air.toGoal})
                          : std::nullopt;
}

std::optional<ChillSpan> chillSpanAsBrewed(const ChillAnswer& chill) {
  if (chill.chiller.kind != Chiller::Kind::Air || !chill.airBare) return chillSpan(chill);
  const auto bare = chill.airBare->toGoal;
  return bare ? std::optional(ChillSpan{*bare, *bare}) : std::nullopt;
}

bool isTooWarmToPitch(const ChillAnswer& chill) {
  return chill.pass && chill.pass->likely.hotOut > chill.goal;
}

bool isColdAlready(const ChillAnswer& chill) { return chill.begins <= chill.goal; }

bool statesChilling(const Plan& plan, const RigPlan& rig) {
  return plan.chilling.isStated || rig.chiller.isStated;
}

bool statesChilling(const Plan& plan) {
  return std::any_of(plan.rigs.begin(), plan.rigs.end(),
                     [&](const RigPlan& rig) { return statesChilling(plan, rig); });
}

std::shared_ptr<const ChillAnswer> chillAnswer(const RigPlan& rig, const Plan& plan,
                                               const BrewDay& day, bool asked) {
  if (!day.finished() || !day.boil || day.resultCold <= litres(0.0)) return nullptr;
  ChillAnswer answer;
  answer.asked = asked;
  answer.isStated = statesChilling(plan, rig);
  answer.pitching = plan.chilling.pitching;
  answer.water = plan.chilling.water.value_or(plan.place.water);
  answer.boiled = day.stages.back().last;
  answer.wort = day.resultCold;
  answer.inJacket = rig.hasJacket;
  answer.chiller = rig.chiller;
  const bool air = rig.chiller.kind == Chiller::Kind::Air;
  answer.floor = (air ? plan.place.room : answer.water) + kNearestToCoolant;
  answer.goal = std::max(answer.pitching, answer.floor);
  const HotWort boiled = hotWort(day.resultCold, day.resultExtract, answer.boiled);
  const auto covered = [&](const Rig& one) {
    return chillingKettleOf(one, plan.place, one.vessel.open.mash);
  };
  ChillCourse stood = standHot(boiled, covered(rig.rig), plan.chilling.hotStand);
  const HotWort wort = stood.last;
  answer.stood = std::move(stood.curve);
  answer.begins = wort.at;
  addChiller(answer, rig, plan, wort);
  const auto byAir = [&](const Rig& one) {
    return followed(
        wort, covered(one), [](Temperature) { return watts(0.0); }, plan.place.room,
        answer.pitching, true);
  };
  answer.air = byAir(rig.rig);
  if (rig.hasJacket) answer.airBare = byAir(rig.bare);
  return std::make_shared<const ChillAnswer>(std::move(answer));
}

}  // namespace rigs
