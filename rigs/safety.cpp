// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/safety.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "physics/water.hpp"
#include "rigs/cautions.hpp"
#include "rigs/circuit_words.hpp"

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

std::vector<std::string> circuitCautions(const Plan& plan, const Answers& answers,
                                         UnitSystem units) {
  std::vector<std::string> all;
  for (const Caution& caution : cautions(plan, false, units)) {
    if (caution.topic != "mains") all.push_back(caution.text);
  }
  all.emplace_back(
      "Metal kettle, stand and pump must be earthed through the supply. Never cut an earth pin or "
      "use an adaptor without one.");
  all.emplace_back(
      "An element that was stored damp may leak and trip the protection: have it dried or "
      "replaced, "
      "never bypass the protection.");
  std::string cover;
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const Rig& rig = plan.rigs[i].rig;
    if (rig.element.topHeight <= metres(0.0) || answers.rigs[i].day.lowest <= litres(0.0)) continue;
    const Volume needed = crossSection(rig.vessel) * rig.element.topHeight;
    cover += (cover.empty() ? "" : "; ") + plan.rigs[i].name + " needs " + text(needed, units) +
             " over its element and has " + text(answers.rigs[i].day.lowest, units) +
             " at the least with it on";
  }
  if (!cover.empty())
    all.push_back("Dry firing: " + cover +
                  ". In air an element's sheath goes to 1000 °C in seconds; switch off before "
                  "draining or transferring.");
  std::string space;
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const Volume left = capacity(plan.rigs[i].rig.vessel) - answers.rigs[i].day.fullest;
    space += (space.empty() ? "" : "; ") + plan.rigs[i].name + " keeps " + text(left, units);
  }
  all.push_back("Head-space at the fullest moment: " + space +
                ". Reduce power before the boil and at additions.");
  bool cord = false;
  for (const RigPlan& rig : plan.rigs)
    for (const CircuitPlan& circuit : rig.circuits)
      cord =
          cord || (circuit.details.cable && circuit.details.cable->use != CableUse::BuildingWire);
  if (cord)
    all.emplace_back(
        "A flexible cord or extension has its own, lower limit; for a time only, fully uncoiled "
        "and "
        "uncovered, with an earth wire. If a plug or cord is more than warm, switch off.");
  const auto mash = scaldAt(celsius(60.0));
  all.push_back("At " + text(celsius(60.0), units) + " bare skin burns to the second degree in " +
                text(mash->secondDegree, units) + ", at " + text(celsius(55.0), units) + " in " +
                text(scaldAt(celsius(55.0))->secondDegree, units) +
                " (after Moritz & Henriques 1947); children and older people faster. Keep children "
                "and pets at least " +
                text(metres(1.0), units) + " away.");
  Mass heaviest = kilograms(0.0);
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const Mass wort = kilogramsPerCubicMetre(1000.0) * answers.rigs[i].day.resultHot;
    heaviest = std::max(heaviest, Mass(wort + plan.rigs[i].rig.vessel.mass));
  }
  if (heaviest > kLiftingLimit)
    all.push_back("A full kettle weighs up to " + text(heaviest, units) + ", more than the " +
                  text(kLiftingLimit, units) +
                  " that one person lifts under ideal conditions (NIOSH). Do not carry hot liquid: "
                  "let it run, pump or siphon.");
  all.emplace_back(
      "Stay with a heating kettle; do not leave it on a timer or a remote start without someone "
      "present who can switch it off.");
  Time warm = seconds(0.0);
  for (const RigAnswer& rig : answers.rigs) warm = std::max(warm, warmTime(rig.day));
  if (warm > minutes(1.0))
    all.push_back("Wort is between " + text(kWarmFrom, units) + " and " + text(kWarmUpTo, units) +
                  " for " + text(warm, units) +
                  " of this day. Food service passes from 57 to 21 °C within 2 h and to 5 °C "
                  "within 6 h (FDA Food Code 3-501.14); always boil after a luke-warm hold, and do "
                  "not count on the boil to undo many warm hours.");
  all.emplace_back(
      "Do not seal unfermented wort for storage at room temperature: botulism spores survive "
      "boiling. Pitch promptly.");
  all.emplace_back(electricianText());
  return all;
}

std::vector<std::string> roomCautions(const Plan& plan, const Answers& answers, UnitSystem units) {
  Mass most = kilograms(0.0);
  for (const RigAnswer& rig : answers.rigs)
    if (rig.room) most = std::max(most, rig.room->day.released);
  std::vector<std::string> all{
      "This day releases up to " + text(most, units) +
      " of water vapour. Extract it outdoors and let replacement air in. Check that fuel-burning "
      "appliances do not draw back."};
  for (const Caution& caution : cautions(plan, false, units)) all.push_back(caution.text);
  return all;
}

}  // namespace rigs
