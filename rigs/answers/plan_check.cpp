// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/plan_check.hpp"

#include <algorithm>
#include <iterator>
#include <optional>
#include <string>
#include <vector>

#include "physics/vessel.hpp"
#include "physics/water.hpp"
#include "physics/wort.hpp"
#include "rigs/answers/circuit_check.hpp"
#include "rigs/answers/pool.hpp"
#include "rigs/documents/problem_words.hpp"

namespace rigs {
namespace {

using namespace physics;

Told stageName(StageKind kind) {
  switch (kind) {
    case StageKind::Strike:
      return Told(TOLD("Problem", "heating the strike water"));
    case StageKind::MashingIn:
      return Told(TOLD("Problem", "mashing in"));
    case StageKind::Ramp:
      return Told(TOLD("Problem", "heating the mash"));
    case StageKind::Rest:
    case StageKind::UnpluggedRest:
      return Told(TOLD("Problem", "the mash rest"));
    case StageKind::Draining:
      return Told(TOLD("Problem", "draining"));
    case StageKind::HeatingToBoil:
      return Told(TOLD("Problem", "heating to the boil"));
    case StageKind::Boil:
      return Told(TOLD("Problem", "the boil"));
  }
  return Told(TOLD("Problem", "the day"));
}

// What the element must be under: its own height, or next to nothing for an outside heater.
Volume leastFill(const Vessel& vessel, const Element& element) {
  return crossSection(vessel) * std::max(element.topHeight, 0.01 * vessel.height);
}

Told needs(const Element& element, Volume least) {
  if (element.topHeight > metres(0.0))
    return Told(TOLD("Problem", "the element, %1 high, needs at least %2"),
                amount(element.topHeight), amount(least));
  return Told(TOLD("Problem", "a heater below the base needs at least %1"), amount(least));
}

Told uncovered(const BrewDay& day, const Rig& rig) {
  const Stage* last = day.stages.empty() ? nullptr : &day.stages.back();
  const Volume least = leastFill(rig.vessel, rig.element);
  if (last && last->kind == StageKind::Boil) {
    const Amount after = amount(last->end - last->begin);
    // The day also stops where the wort has become a syrup, which burns on an element however deep
    // it stands.
    if (last->hotLast > 1.001 * least)
      return advised(
          Told(TOLD("Problem",
                    "the boil is longer than the wort lasts: after %1 only %2 are left of %3, a "
                    "syrup of more than %4 extract, which burns on the element"),
               after, amount(last->hotLast), amount(last->hotFirst), amount(kThickestWort)),
          Told(TOLD("Problem", "boil for less time, with less power, or start with more water")));
    return advised(
        Told(TOLD("Problem",
                  "the boil is longer than the water lasts: after %1 only %2 are left, and %3 to "
                  "stay covered"),
             after, amount(last->hotLast), needs(rig.element, least)),
        Told(TOLD("Problem", "boil for less time, with less power, or start with more")));
  }
  if (last && last->kind == StageKind::Draining && last->end <= last->begin)
    return advised(
        Told(TOLD("Problem",
                  "the element would stand dry once the grain is lifted: only %1 stand in the "
                  "vessel before the rinsing water is in, and %2"),
             amount(day.liftedHot), needs(rig.element, least)),
        Told(TOLD("Problem", "let the grain drain with the element off")));
  const Told when = last ? stageName(last->kind) : Told(TOLD("Problem", "the day"));
  return advised(
      Told(TOLD("Problem",
                "the element would run dry during %1: only %2 stand in the vessel, and %3"),
           when, amount(last ? last->hotLast : day.water), needs(rig.element, least)),
      Told(TOLD("Problem", "never switch on an element that is not fully covered")));
}

// The most that must fit, also where the day ends before the grain is in.
Volume fullest(const BrewDay& day, const Batch& batch) {
  return std::max(day.fullest, day.water + batch.grain.mass * batch.displacement);
}

constexpr SimulationOptions kCoarse{.curves = false,
                                    .relativeTolerance = 1e-6,
                                    .waterGuess = kilograms(0.0),
                                    .leastForAnyPower = false};

// A rig whose strike water must be cooler than the water as it is drawn.
struct TooWarm {
  const std::string* rig;
  Temperature strike;
};

Told overfull(const BrewDay& day, const Batch& batch, Volume most, Volume holds) {
  Told found =
      batch.mashes()
          ? Told(TOLD("Problem",
                      "grain and water do not fit: %1 of water and %2 of grain fill %3 when hot, "
                      "and the vessel holds %4"),
                 amount(day.water), amount(batch.grain.mass), amount(most), amount(holds))
          : Told(TOLD("Problem",
                      "the water does not fit: %1 of water fill %2 when hot, and the vessel holds "
                      "%3"),
                 amount(day.water), amount(most), amount(holds));
  return advised(std::move(found),
                 Told(TOLD("Problem", "take a smaller batch or a larger vessel")));
}

// By how much the wort is too much for the vessel once the grain is rinsed, at its hottest; nothing
// where all fits, or did not fit before.
Volume tooMuchOfTheRinse(const BrewDay& day, const Batch& batch, Volume holds) {
  if (!day.rinsed || day.water + batch.grain.mass * batch.displacement > holds) return litres(0.0);
  Volume most = litres(0.0);
  for (const Stage& stage : day.stages) {
    const bool after = stage.begin >= day.rinsed->at && (stage.kind == StageKind::Draining ||
                                                         stage.kind == StageKind::HeatingToBoil);
    if (after)
      most = std::max({most, stage.hotFirst, stage.hotLast});
    else if (stage.kind != StageKind::Boil && std::max(stage.hotFirst, stage.hotLast) > holds)
      return litres(0.0);
  }
  return std::max(litres(0.0), most - holds);
}

// What is too much is so when hot; water at 20 C is less by the share it grows to the boil.
constexpr double kColdOfHot = 0.96;

Told rinseOverflows(const BrewDay& day, const Batch& batch, Volume over, const Rig& rig) {
  const Volume planned = batch.rinse->atTwentyDegrees;
  const Volume fits = planned - over / kColdOfHot;
  const Volume holds = capacity(rig.vessel);
  Told found(TOLD("Problem",
                  "%1 of rinsing water do not fit: with them %2 would stand in %3 when hot, which "
                  "holds %4"),
             amount(planned), amount(over + holds), Quoted{rig.name}, amount(holds));
  // Less rinsing water for a wanted wort is more water at first: the wort stays as much.
  if (std::holds_alternative<WantedWort>(batch.size))
    return advised(std::move(found),
                   Told(TOLD("Problem", "want less wort, or take a larger vessel")));
  if (fits < litres(0.1) || day.liftedHot > holds)
    return advised(std::move(found),
                   Told(TOLD("Problem", "none fits: take a smaller batch or a larger vessel")));
  return advised(std::move(found),
                 Told(TOLD("Problem", "about %1 fit, filled to the brim; leave room for the foam"),
                      amount(fits, {.significantDigits = 2, .decimals = {}})));
}

// The addition that the vessel does not hold, where all before it fits.
const Added* overflowingAddition(const BrewDay& day, const Batch& batch, Volume holds) {
  if (day.water + batch.grain.mass * batch.displacement > holds) return nullptr;
  for (const Stage& stage : day.stages) {
    const bool boils = stage.kind == StageKind::Boil;
    if (stage.hotFirst > holds || (!boils && stage.hotLast > holds)) return nullptr;
  }
  const auto found = std::find_if(day.additions.begin(), day.additions.end(),
                                  [&](const Added& added) { return added.hot > holds; });
  return found == day.additions.end() ? nullptr : &*found;
}

Told additionOverflows(const Addition& addition, const Added& added, const Rig& rig) {
  return advised(
      Told(TOLD("Problem", "%1 does not fit: with it %2 would stand in %3, which holds %4"),
           Quoted{addition.what}, amount(added.hot), Quoted{rig.name},
           amount(capacity(rig.vessel))),
      Told(TOLD("Problem", "add less of it, or take a smaller batch or a larger vessel")));
}

Told additionMakesSyrup(const Addition& addition) {
  return advised(Told(TOLD("Problem",
                           "%1 of %2 make a syrup of more than %3 extract, which burns on the "
                           "element"),
                      amount(addition.mass), Quoted{addition.what}, amount(kThickestWort)),
                 Told(TOLD("Problem", "add less of it")));
}

// The largest, where additions are most of the wort that is wanted.
const Addition* displacingAddition(const Batch& batch) {
  const auto* wanted = std::get_if<WantedWort>(&batch.size);
  if (!wanted || batch.additions.empty()) return nullptr;
  Mass all = kilograms(0.0);
  for (const Addition& one : batch.additions) all += one.mass;
  if (all < 0.5 * wanted->atTwentyDegrees * waterDensity(celsius(20.0))) return nullptr;
  return &*std::max_element(batch.additions.begin(), batch.additions.end(),
                            [](const Addition& a, const Addition& b) { return a.mass < b.mass; });
}

Told leavesTooLittle(const Addition& addition, const Batch& batch) {
  return advised(
      Told(TOLD("Problem", "with %1 of %2 too little of the %3 that are wanted is left to boil"),
           amount(addition.mass), Quoted{addition.what},
           amount(std::get<WantedWort>(batch.size).atTwentyDegrees)),
      Told(TOLD("Problem", "add less of it, or ask for more wort")));
}

// Of a day that stops in the very moment it goes in.
const Added* burningAddition(const BrewDay& day) {
  if (day.outcome != Outcome::UncoversElement || day.additions.empty()) return nullptr;
  const Added& last = day.additions.back();
  return last.at == day.duration() ? &last : nullptr;
}

struct CheckedRig {
  Problems problems;
  std::optional<TooWarm> tooWarm;
};

CheckedRig checkRig(const Rig& rig, const Batch& batch, const Place& place,
                    const std::string& where) {
  CheckedRig checked;
  const auto error = [&checked](std::string at, Told message) {
    checked.problems.push_back({Severity::Error, std::move(at), std::move(message)});
  };
  // Who overflows or runs dry does so by litres: a coarse look is enough.
  const BrewDay day = simulate(rig, batch, place, kCoarse);
  const Volume holds = capacity(rig.vessel);
  const Volume most = fullest(day, batch);
  const auto placeOf = [](const Added& added) {
    return "/batch/additions/" + std::to_string(added.which);
  };
  if (const Volume over = tooMuchOfTheRinse(day, batch, holds); over > litres(0.0)) {
    error("/batch/rinse", rinseOverflows(day, batch, over, rig));
    return checked;
  }
  if (const Added* over = overflowingAddition(day, batch, holds)) {
    error(placeOf(*over), additionOverflows(batch.additions[over->which], *over, rig));
    return checked;
  }
  if (most > holds) {
    error(where + "/vessel", overfull(day, batch, most, holds));
    return checked;  // the rest of that day would flow over
  }
  if (const Added* burns = burningAddition(day))
    error(placeOf(*burns), additionMakesSyrup(batch.additions[burns->which]));
  else if (const Addition* big =
               day.outcome == Outcome::UncoversElement ? displacingAddition(batch) : nullptr)
    error("/batch/additions/" + std::to_string(big - batch.additions.data()),
          leavesTooLittle(*big, batch));
  else if (day.outcome == Outcome::UncoversElement)
    error(where + "/element", uncovered(day, rig));
  if (day.outcome == Outcome::StrikeTooHot)
    error("/batch/mash",
          advised(
              Told(TOLD("Problem",
                        "for %1 the strike water would have to be at %2, but it boils at %3 "
                        "here"),
                   Quoted{rig.name}, amount(day.strike), amount(boilingPoint(0.0, place.pressure))),
              Told(TOLD("Problem",
                        "take more water, less or warmer grain, or a cooler first rest"))));
  if (batch.mashes() && place.water > day.strike && day.outcome != Outcome::StrikeTooHot)
    checked.tooWarm = TooWarm{&rig.name, day.strike};
  return checked;
}

}  // namespace

void checkPlan(const Plan& plan, Problems& problems) {
  checkCircuits(plan, problems);
  std::vector<CheckedRig> checked = forAll(plan.rigs.size(), [&](std::size_t i) {
    return checkRig(plan.rigs[i].rig, plan.batch, plan.place, "/rigs/" + std::to_string(i));
  });
  std::vector<TooWarm> tooWarmFor;
  for (CheckedRig& one : checked) {
    problems.insert(problems.end(), std::make_move_iterator(one.problems.begin()),
                    std::make_move_iterator(one.problems.end()));
    if (one.tooWarm) tooWarmFor.push_back(*one.tooWarm);
  }
  const auto coolest =
      std::min_element(tooWarmFor.begin(), tooWarmFor.end(),
                       [](const TooWarm& a, const TooWarm& b) { return a.strike < b.strike; });
  if (coolest != tooWarmFor.end())
    problems.push_back(
        {Severity::Error, "/place/water",
         advised(Told(TOLD("Problem", "water of %1 is hotter than strike water may be, %2 for %3"),
                      amount(plan.place.water), amount(coolest->strike), Quoted{*coolest->rig}),
                 Told(TOLD("Problem", "take cooler water")))});
}

}  // namespace rigs
