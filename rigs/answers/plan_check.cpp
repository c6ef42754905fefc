// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <string>
#include <vector>

#include "physics/vessel.hpp"
#include "rigs/answers/circuit_answer.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace rigs {
namespace {

using namespace physics;

std::string_view stageName(StageKind kind) {
  switch (kind) {
    case StageKind::Strike:
      return "heating the strike water";
    case StageKind::MashingIn:
      return "mashing in";
    case StageKind::Ramp:
      return "heating the mash";
    case StageKind::Rest:
    case StageKind::UnpluggedRest:
      return "the mash rest";
    case StageKind::HeatingToBoil:
      return "heating to the boil";
    case StageKind::Boil:
      return "the boil";
  }
  return "the day";
}

// What the element must be under: its own height, or next to nothing for an outside heater.
Volume leastFill(const Vessel& vessel, const Element& element) {
  return crossSection(vessel) * std::max(element.topHeight, 0.01 * vessel.height);
}

std::string uncovered(const BrewDay& day, const Rig& rig, UnitSystem units) {
  const auto text = [units](const auto& q) { return format(q, units); };
  const Stage* last = day.stages.empty() ? nullptr : &day.stages.back();
  const Volume least = leastFill(rig.vessel, rig.element);
  const std::string element =
      rig.element.topHeight > metres(0.0)
          ? "the element, " + text(rig.element.topHeight) + " high, needs at least " + text(least)
          : "a heater below the base needs at least " + text(least);
  if (last && last->kind == StageKind::Boil) {
    const std::string after = text(last->end - last->begin);
    // The day also stops where the wort has become a syrup, which burns on an element however deep
    // it stands.
    if (last->hotLast > 1.001 * least)
      return "the boil is longer than the wort lasts: after " + after + " only " +
             text(last->hotLast) + " are left of " + text(last->hotFirst) +
             ", a syrup of more than " + text(kThickestWort) +
             " extract, which burns on the element; boil for less time, with less power, or start "
             "with more water";
    return "the boil is longer than the water lasts: after " + after + " only " +
           text(last->hotLast) + " are left, and " + element +
           " to stay covered; boil for less time, with less power, or start with more";
  }
  const std::string when(last ? stageName(last->kind) : "the day");
  const Volume fill = last ? last->hotLast : day.water;
  return "the element would run dry during " + when + ": only " + text(fill) + " stand in the " +
         "vessel, and " + element + "; never switch on an element that is not fully covered";
}

// The most that must fit, also where the day ends before the grain is in.
Volume fullest(const BrewDay& day, const Batch& batch) {
  return std::max(day.fullest, day.water + batch.grain.mass * batch.displacement);
}

// A rig whose strike water must be cooler than the water as it is drawn.
struct TooWarm {
  const std::string* rig;
  Temperature strike;
};

void checkRig(const Rig& rig, const Batch& batch, const Place& place, const std::string& where,
              UnitSystem units, std::vector<TooWarm>& tooWarmFor, Problems& problems) {
  const auto text = [units](const auto& q) { return format(q, units); };
  const auto error = [&](std::string_view key, std::string message) {
    problems.push_back({Severity::Error, where + std::string(key), std::move(message)});
  };
  // Who overflows or runs dry does so by litres: a coarse look is enough.
  const BrewDay day = simulate(rig, batch, place, {.curves = false, .relativeTolerance = 1e-6});
  const Volume holds = capacity(rig.vessel);
  const Volume most = fullest(day, batch);
  if (most > holds) {
    const bool grain = batch.grain.mass > kilograms(0.0);
    error("/vessel", (grain ? "grain and water do not fit: " : "the water does not fit: ") +
                         text(day.water) + " of water" +
                         (grain ? " and " + text(batch.grain.mass) + " of grain" : std::string()) +
                         " fill " + text(most) + " when hot, and the vessel holds " + text(holds) +
                         "; take a smaller batch or a larger vessel");
    return;  // the rest of that day would flow over
  }
  if (day.outcome == Outcome::UncoversElement) error("/element", uncovered(day, rig, units));
  if (day.outcome == Outcome::StrikeTooHot)
    problems.push_back(
        {Severity::Error, "/batch/mash",
         "for " + quotedText(rig.name) + " the strike water would have to be at " +
             text(day.strike) + ", but it boils at " + text(boilingPoint(0.0, place.pressure)) +
             " here; take more water, less or warmer grain, or a cooler first rest"});
  if (batch.grain.mass > kilograms(0.0) && place.water > day.strike &&
      day.outcome != Outcome::StrikeTooHot)
    tooWarmFor.push_back({&rig.name, day.strike});
}

}  // namespace

void checkPlan(const Plan& plan, Problems& problems, UnitSystem units) {
  const auto text = [units](const auto& q) { return format(q, units); };
  checkCircuits(plan, problems);
  std::vector<TooWarm> tooWarmFor;
  for (std::size_t i = 0; i < plan.rigs.size(); ++i)
    checkRig(plan.rigs[i].rig, plan.batch, plan.place, "/rigs/" + std::to_string(i), units,
             tooWarmFor, problems);
  const auto coolest =
      std::min_element(tooWarmFor.begin(), tooWarmFor.end(),
                       [](const TooWarm& a, const TooWarm& b) { return a.strike < b.strike; });
  if (coolest != tooWarmFor.end())
    problems.push_back({Severity::Error, "/place/water",
                        "water of " + text(plan.place.water) + " is hotter than strike water may " +
                            "be, " + text(coolest->strike) + " for " + quotedText(*coolest->rig) +
                            "; take cooler water"});
}

}  // namespace rigs
