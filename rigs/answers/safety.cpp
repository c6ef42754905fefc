// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/safety.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "physics/water.hpp"
#include "rigs/answers/figures.hpp"
#include "rigs/results/cautions.hpp"
#include "rigs/results/circuit_words.hpp"

namespace rigs {

using namespace physics;

namespace {

struct ScaldRow {
  double celsius;
  double secondDegree, thirdDegree;  // seconds
};
constexpr std::array kScalds{ScaldRow{45, 7200, 10800}, ScaldRow{47, 1200, 2700},
                             ScaldRow{48, 900, 1200},   ScaldRow{49, 480, 600},
                             ScaldRow{51, 120, 252},    ScaldRow{55, 17, 30},
                             ScaldRow{60, 3, 5}};

const Temperature kWarmFrom = celsius(5.0);   // FDA Food Code 3-501.14
const Temperature kWarmUpTo = celsius(57.0);  // hot holding, 3-501.16

std::string text(const auto& q, UnitSystem units) { return format(q, units); }

}  // namespace

std::optional<Scald> scaldAt(Temperature water) {
  std::optional<Scald> found;
  for (const ScaldRow& row : kScalds) {
    if (water >= celsius(row.celsius))
      found = Scald{seconds(row.secondDegree), seconds(row.thirdDegree)};
  }
  return found;
}

std::string scaldText(Temperature water, UnitSystem units) {
  const auto scald = scaldAt(water);
  if (!scald) return {};
  const bool beyond = water > celsius(kScalds.back().celsius);
  return "At " + text(water, units) + " bare skin burns to the second degree in " +
         text(scald->secondDegree, units) + " and to the third in " +
         text(scald->thirdDegree, units) + (beyond ? " at the most" : "");
}

std::optional<Time> coolingTime(Time timeConstant, Temperature from, Temperature to,
                                Temperature surroundings) {
  if (to <= surroundings) return std::nullopt;
  return timeConstant * std::log(inKelvins(from - surroundings) / inKelvins(to - surroundings));
}

std::optional<Time> timeConstantForFood(Temperature surroundings) {
  const auto perConstant = coolingTime(hours(1.0), kWarmUpTo, celsius(21.0), surroundings);
  if (!perConstant) return std::nullopt;
  return hours(2.0) * static_cast<double>(hours(1.0) / *perConstant);
}

double growth(Time time, Time doubling) { return std::exp2(static_cast<double>(time / doubling)); }

double newtonsOnLid(Length diameter, Temperature t) {
  const double area = inSquareMetres(0.25 * std::numbers::pi * diameter * diameter);
  return (inPascals(saturationPressure(t)) - 101325.0) * area;
}

Mass wortMass(Volume atTwentyDegrees, double gravity) {
  return gravity * waterDensity(celsius(20.0)) * atTwentyDegrees;
}

Mass heaviestKettle(const BrewDay& day, const Batch& batch, const Vessel& vessel) {
  Mass mashed = wortMass(day.water, 1.0);
  for (const Stage& stage : day.stages) {
    if (stage.kind != StageKind::Strike) break;
    mashed -= stage.evaporated;
  }
  mashed += batch.grain.mass;
  return vessel.mass + std::max(mashed, wortMass(day.preBoilCold, day.preBoilGravity));
}

Time warmTime(const BrewDay& day) {
  Time sum = seconds(0.0);
  bool wort = false;
  for (const Stage& stage : day.stages) {
    wort = wort || stage.kind != StageKind::Strike;
    if (!wort) continue;
    const Temperature first = stage.kind == StageKind::MashingIn ? stage.mixed : stage.first;
    const Temperature cold = std::min(first, stage.last);
    const Temperature hot = std::max(first, stage.last);
    const TemperatureDifference whole = hot - cold;
    const TemperatureDifference warm = std::min(hot, kWarmUpTo) - std::max(cold, kWarmFrom);
    const double share = whole > kelvins(1e-6) ? std::max(0.0, static_cast<double>(warm / whole))
                                               : (cold >= kWarmFrom && hot < kWarmUpTo ? 1.0 : 0.0);
    sum += share * (stage.end - stage.begin);
  }
  return sum;
}

namespace {

// The hottest of the mash; nullopt where there is none.
std::optional<Temperature> hottestMash(const Answers& answers) {
  std::optional<Temperature> hottest;
  for (const RigAnswer& rig : answers.rigs) {
    for (const Stage& stage : rig.day.stages) {
      if (stage.kind != StageKind::Rest && stage.kind != StageKind::UnpluggedRest) continue;
      const Temperature most = std::max(stage.first, stage.last);
      hottest = hottest ? std::max(*hottest, most) : most;
    }
  }
  return hottest;
}

std::string scaldCaution(const Answers& answers, UnitSystem units) {
  const auto mash = hottestMash(answers);
  Temperature boil = celsius(0.0);
  for (const RigAnswer& rig : answers.rigs) boil = std::max(boil, rig.day.boilingPoint);
  std::string told = mash ? scaldText(*mash, units) : std::string();
  if (!told.empty()) told += ", the hottest of this mash. ";
  if (const std::string boiling = scaldText(boil, units); !boiling.empty()) told += boiling + ". ";
  return told + "(After Moritz & Henriques 1947, tabled up to " + text(celsius(60.0), units) +
         ".) Children and older people burn "
         "faster, and wort clings. Keep children and pets at least " +
         text(metres(1.0), units) + " away.";
}

// What the rules of each region say of long use, with the rigs whose circuits would then be too
// small, or else with the one that draws most.
void longUseCautions(const Answers& answers, std::vector<Caution>& all) {
  struct Load {
    std::string rig;
    Current load, rating;
  };
  struct Near {
    const LongUse* rule;
    std::string region;
    std::vector<Load> loads;
  };
  std::vector<Near> near;
  for (const RigAnswer& rig : answers.rigs) {
    for (const CircuitLoad& circuit : rig.circuit.circuits) {
      for (const CircuitVerdict& verdict : circuit.verdicts) {
        for (const LongUse& rule : verdict.rules->longUse) {
          if (countsAsLong(rule, rig.circuit.duty) == Counts::No) continue;
          auto known = std::find_if(near.begin(), near.end(),
                                    [&](const Near& one) { return one.rule == &rule; });
          if (known == near.end())
            known = near.insert(near.end(), {&rule, verdict.rules->region, {}});
          known->loads.push_back({rig.name, verdict.load, circuit.supply.rating});
        }
      }
    }
  }
  const auto amperesText = [](Current current) {
    return format(current, UnitSystem::SI, {.significantDigits = 3, .decimals = {}});
  };
  for (Near& one : near) {
    std::stable_sort(one.loads.begin(), one.loads.end(), [&](const Load& a, const Load& b) {
      return a.load / a.rating > b.load / b.rating;
    });
    std::string told;
    for (const Load& of : one.loads) {
      if (!told.empty() && of.load <= one.rule->share * of.rating) break;
      told += (told.empty() ? "" : "; ") + of.rig + ": " + amperesText(of.load / one.rule->share) +
              " in place of " + amperesText(of.load);
    }
    all.push_back({"long use", one.region + ": " + one.rule->text +
                                   " That may be so here: " + told +
                                   ". An inspector's or electrician's reading decides; the "
                                   "stricter result is shown."});
  }
}

// Elements on a supply below their own voltage.
void lowVoltageCaution(const Plan& plan, const Answers& answers, UnitSystem units,
                       std::vector<Caution>& all) {
  std::string told;
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const Rig& rig = plan.rigs[i].rig;
    const double share =
        static_cast<double>(ratingAt(rig.element, rig.supply.nominal) / rig.element.rating);
    if (share > 0.95) continue;
    told += (told.empty() ? "" : "; ") + plan.rigs[i].name + ": " +
            format(share, UnitSystem::SI, {.significantDigits = 2, .decimals = {}}) +
            " of its element's rating, " + text(rig.element.ratedAt, units) + " on " +
            text(rig.supply.nominal, units);
  }
  if (!told.empty())
    all.push_back({"low voltage",
                   "Below its rated voltage an element gives less: " + told +
                       ". All times here count with that. Do not fit a larger one to make up for "
                       "it without having the circuit "
                       "checked again."});
}

// Where a standard lets the element leak enough to trip its protection.
std::string leakCaution(const Answers& answers) {
  for (const RigAnswer& rig : answers.rigs)
    for (const CircuitLoad& circuit : rig.circuit.circuits)
      for (const CircuitVerdict& verdict : circuit.verdicts)
        if (verdict.leakageMayTrip)
          return "An element of this size may leak up to " + formatLike(*verdict.leakage, "1 mA") +
                 " by its standard, and a " + verdict.rules->groundFault->name + " may trip from " +
                 formatLike(verdict.rules->groundFault->holds, "1 mA") +
                 ": expect trips while it is damp. Have it dried or replaced; never take the "
                 "protection away or bypass it.";
  return "An element that was stored damp may leak and trip the protection: have it dried or "
         "replaced, never bypass the protection.";
}

}  // namespace

std::vector<Caution> circuitCautions(const Plan& plan, const Answers& answers, UnitSystem units) {
  std::vector<Caution> all;
  all.push_back({"earth",
                 "Metal kettle, stand and pump must be earthed through the supply. Never cut an "
                 "earth pin or use an adaptor without one."});
  all.push_back({"leakage", leakCaution(answers)});
  longUseCautions(answers, all);
  lowVoltageCaution(plan, answers, units, all);
  std::string cover;
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const Rig& rig = plan.rigs[i].rig;
    if (rig.element.topHeight <= metres(0.0) || answers.rigs[i].day.lowest <= litres(0.0)) continue;
    const Volume needed = crossSection(rig.vessel) * rig.element.topHeight;
    cover += (cover.empty() ? "" : "; ") + plan.rigs[i].name + " needs " + text(needed, units) +
             " to cover its element and has " + text(answers.rigs[i].day.lowest, units) +
             " at the least with it on";
  }
  if (!cover.empty())
    all.push_back({"dry firing", "Dry firing: " + cover + ". In air an element's sheath goes to " +
                                     text(celsius(1000.0), units) +
                                     " in seconds; switch off before draining or transferring."});
  std::string space;
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const Volume left = capacity(plan.rigs[i].rig.vessel) - answers.rigs[i].day.fullest;
    space += (space.empty() ? "" : "; ") + plan.rigs[i].name + " keeps " + text(left, units);
  }
  all.push_back({"headspace", "Head-space at the fullest moment: " + space +
                                  ". Reduce power before the boil and at additions."});
  bool cord = false;
  for (const RigPlan& rig : plan.rigs)
    for (const CircuitPlan& circuit : rig.circuits)
      cord =
          cord || (circuit.details.cable && circuit.details.cable->use != CableUse::BuildingWire);
  if (cord)
    all.push_back({"cord",
                   "A flexible cord or extension has its own, lower limit; for a time only, fully "
                   "uncoiled and uncovered, with an earth wire. If a plug or cord is more than "
                   "warm, switch off."});
  all.push_back({"scald times", scaldCaution(answers, units)});
  Mass heaviest = kilograms(0.0);
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    heaviest = std::max(heaviest,
                        heaviestKettle(answers.rigs[i].day, plan.batch, plan.rigs[i].rig.vessel));
  }
  if (heaviest > kLiftingLimit)
    all.push_back({"lifting", "A full kettle weighs up to " + text(heaviest, units) +
                                  ", more than the " + text(kLiftingLimit, units) +
                                  " that one person lifts under ideal conditions (NIOSH). Do not "
                                  "carry hot liquid: let it run, pump or siphon."});
  all.push_back({"attendance",
                 "Stay with a heating kettle; do not leave it on a timer or a remote start without "
                 "someone present who can switch it off."});
  Time warm = seconds(0.0);
  for (const RigAnswer& rig : answers.rigs) warm = std::max(warm, warmTime(rig.day));
  if (warm > minutes(1.0))
    all.push_back({"warm wort", "Wort is between " + text(kWarmFrom, units) + " and " +
                                    text(kWarmUpTo, units) + " for " + text(warm, units) +
                                    " of this day. Food service passes from " +
                                    text(kWarmUpTo, units) + " to " + text(celsius(21.0), units) +
                                    " within 2 h and to " + text(kWarmFrom, units) +
                                    " within 6 h (FDA Food Code 3-501.14); always boil after a "
                                    "luke-warm hold, and do not count on the boil to undo many "
                                    "warm hours."});
  all.push_back({"storage",
                 "Do not seal unfermented wort for storage at room temperature: botulism spores "
                 "survive boiling. Pitch promptly."});
  return all;
}

Caution roomCaution(const Answers& answers, UnitSystem units) {
  Mass most = kilograms(0.0);
  for (const RigAnswer& rig : answers.rigs)
    if (rig.room) most = std::max(most, rig.room->day.released);
  return {"room",
          "This day releases up to " + text(most, units) +
              " of water vapour. Extract it outdoors and let replacement air in. Check that "
              "fuel-burning appliances do not draw back."};
}

}  // namespace rigs
