// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/wort.hpp"

#include <algorithm>
#include <utility>
#include <vector>

#include "physics/wort.hpp"
#include "rigs/answers/chilling.hpp"

namespace rigs {
namespace {

using namespace physics;

struct Course {
  const Plan& plan;
  const BrewDay& day;
};

// What goes in later than that.
Mass addedAfter(const Course& of, Time time) {
  Mass all = kilograms(0.0);
  for (const Added& added : of.day.additions)
    if (added.at > time) all += of.plan.batch.additions[added.which].mass;
  return all;
}

// All that ever is wort, as a stage begins: by what is left at the end of the day and what
// evaporates from then on.
Mass wortFrom(const Course& of, const Stage& stage) {
  Mass wort =
      of.day.resultCold * wortDensity(of.day.resultExtract, celsius(20.0)) + stage.evaporated;
  for (const Stage& later : of.day.stages)
    if (later.begin >= stage.end && &later != &stage) wort += later.evaporated;
  return wort;
}

HotCurve curveOf(const Course& of, const Stage& stage) {
  HotCurve curve;
  Mass wort = wortFrom(of, stage);
  for (std::size_t i = 1; i < stage.curve.size(); ++i) {
    const CurvePoint& from = stage.curve[i - 1];
    const CurvePoint& to = stage.curve[i];
    const Time lasts = to.time - from.time;
    if (lasts <= seconds(0.0)) continue;
    const Mass left = 0.5 * (from.vapour + to.vapour) * lasts;
    curve.push_back(
        {.lasts = lasts,
         .from = from.wort,
         .to = to.wort,
         .evaporated =
             std::clamp(static_cast<double>(left / (wort - addedAfter(of, from.time))), 0.0, 1.0)});
    wort -= left;
  }
  return curve;
}
HotCurve curveOf(const Course& of, StageKind kind) {
  const Stage* stage = of.day.find(kind);
  return stage ? curveOf(of, *stage) : HotCurve{};
}
HotCurve curveOf(const std::vector<ChillPoint>& points) {
  HotCurve curve;
  for (std::size_t i = 1; i < points.size(); ++i)
    curve.push_back({.lasts = points[i].time - points[i - 1].time,
                     .from = points[i - 1].wort,
                     .to = points[i].wort});
  return curve;
}

// What waits in the kettle while the rest is already through the exchanger: less and less of it.
HotCurve waiting(const std::vector<ChillPoint>& kettle, Time all) {
  HotCurve curve = curveOf(kettle);
  Time since = seconds(0.0);
  HotCurve waits;
  for (HotPiece piece : curve) {
    if (since >= all) break;
    const Time left = all - since;
    if (piece.lasts > left) {
      piece.to = piece.from + static_cast<double>(left / piece.lasts) * (piece.to - piece.from);
      piece.lasts = left;
    }
    piece.of = static_cast<double>((all - since - 0.5 * piece.lasts) / all);
    since += piece.lasts;
    waits.push_back(piece);
  }
  return waits;
}

struct Chilled {
  HotCurve likely;
  std::optional<HotCurve> atMost;
};
Chilled chilledBy(const ChillAnswer& chill) {
  if (chill.pass) return {waiting(chill.air.curve, chill.pass->time), {}};
  if (!chill.stirred) return {curveOf(chill.air.curve), {}};
  if (chill.chiller.stirred) return {curveOf(chill.stirred->curve), {}};
  return {curveOf(chill.still->curve), curveOf(chill.stillAtWorst->curve)};
}

HotStage staged(const HotCurve& curve) {
  HotStage stage{.lasts = seconds(0.0), .worth = atHundred(curve)};
  for (const HotPiece& piece : curve) stage.lasts += piece.lasts;
  return stage;
}

// The day's wort boils by what it is when the grain is lifted and rinsed, whatever goes in later.
void compareWithSeaLevel(BoiledWort& wort, const Plan& plan, const BrewDay& day) {
  const Temperature sea = boilingPoint(day.extractToBoil(), pascals(101325.0));
  const HotCurve there{{.lasts = plan.batch.boil, .from = sea, .to = sea}};
  wort.atSeaLevel = atHundred(there).iso;
  if (wort.rolled && wort.boiling >= kIsoMeasuredFrom)
    wort.forSeaLevel = plan.batch.boil * (isoFormation(sea) / isoFormation(wort.boiling));
}

BoiledWort boiledIn(const Plan& plan, const BrewDay& day, const ChillAnswer& chill) {
  BoiledWort wort;
  HotCurve up;
  for (const Stage& stage : day.stages)
    if (stage.kind == StageKind::Draining || stage.kind == StageKind::HeatingToBoil) {
      const HotCurve next = curveOf({plan, day}, stage);
      up.insert(up.end(), next.begin(), next.end());
    }
  const HotCurve boil = curveOf({plan, day}, StageKind::Boil);
  const HotCurve stand = curveOf(chill.stood);
  const Chilled chilled = chilledBy(chill);
  const HotCurve byItself = curveOf(chill.air.curve);
  wort.boiling = day.boil->temperature;
  wort.begins = day.find(StageKind::Boil)->first;
  wort.rolled = day.outcome == Outcome::Done;
  wort.isOfMalt = plan.batch.mashes();
  wort.heatingUp = staged(up);
  wort.boil = staged(boil);
  wort.stand = staged(stand);
  wort.chilling = staged(chilled.likely);
  if (chilled.atMost) wort.chillingAtMost = staged(*chilled.atMost);
  wort.byItself = staged(byItself);
  wort.isLeftByItself = !chill.pass && !chill.stirred;
  compareWithSeaLevel(wort, plan, day);
  wort.evaporatedPerHour = day.boil->shareOfPreBoilPerHour;
  wort.boiled = after(after(Sulfide{}, up), boil);
  const Sulfide stood = after(wort.boiled, stand);
  wort.chilled = after(stood, chilled.likely);
  wort.leftByItself = after(stood, byItself);
  return wort;
}

bool isOfTheMash(StageKind kind) {
  return kind == StageKind::MashingIn || kind == StageKind::Ramp || kind == StageKind::Rest ||
         kind == StageKind::UnpluggedRest;
}

// Whether a plan's extract may be taken at its word: common malt is through, and late malt leaves
// no more than an hour at 65 C does (own; extract as stated is hardly surer than by a tenth).
constexpr double kEnoughOfLateMalt = 0.9;
bool getsItsStarch(const MashConversion& mash) {
  return mash.doneBy && mash.reachedAtLeast >= kEnoughOfLateMalt;
}

std::optional<MashedWort::Gravity> gravityOf(const AttenuationLimit& limit, const Plan& plan,
                                             const BrewDay& day) {
  const auto isSugar = [](const Addition& added) { return added.extract > 0.0; };
  const std::vector<Addition>& additions = plan.batch.additions;
  if (!day.finished() || std::any_of(additions.begin(), additions.end(), isSugar)) return {};
  // Where the brewers' scale ends.
  if (day.resultExtract > 0.34) return {};
  const double plato = 100.0 * day.resultExtract;
  const auto fermented = [&](double share) {
    return gravityFromPlato(plato * std::max(0.0, 1.0 - share));
  };
  return MashedWort::Gravity{.before = day.resultGravity,
                             .afterLeast = fermented(limit.most),
                             .afterMost = fermented(limit.least)};
}

// The grain is lifted once the mash is through.
std::optional<MashedWort> mashedIn(const Plan& plan, const BrewDay& day) {
  if (!plan.batch.mashes() || day.liftedCold <= litres(0.0)) return std::nullopt;
  HotCurve curve;
  for (const Stage& stage : day.stages)
    if (isOfTheMash(stage.kind)) {
      const HotCurve next = curveOf({plan, day}, stage);
      curve.insert(curve.end(), next.begin(), next.end());
    }
  if (curve.empty()) return std::nullopt;
  MashedWort mash{.conversion = conversionOf(curve),
                  .isLeftAlone = std::holds_alternative<UnpluggedMash>(plan.batch.mash),
                  .gravity = {}};
  if (mash.conversion.limit && getsItsStarch(mash.conversion))
    mash.gravity = gravityOf(*mash.conversion.limit, plan, day);
  return mash;
}

}  // namespace

CarriesOff carriesOff(double evaporatedPerHour) {
  if (evaporatedPerHour < kLittleUntil) return CarriesOff::Little;
  return evaporatedPerHour < kMuchFrom ? CarriesOff::Uncertain : CarriesOff::Much;
}

HotMinutes BoiledWort::whole() const {
  HotMinutes all = heatingUp.worth;
  all += boil.worth;
  all += stand.worth;
  all += chilling.worth;
  return all;
}

std::shared_ptr<const WortAnswer> wortAnswer(const Plan& plan, const BrewDay& day,
                                             const ChillAnswer* chill, bool asked) {
  const auto answer = std::make_shared<WortAnswer>();
  answer->asked = asked;
  answer->mashed = mashedIn(plan, day);
  if (chill && day.boil) answer->boiled = boiledIn(plan, day, *chill);
  if (!answer->mashed && !answer->boiled) return nullptr;
  return answer;
}

}  // namespace rigs
