// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/sheet.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "gui/telling/begins.hpp"
#include "gui/telling/opening.hpp"
#include "gui/telling/overload.hpp"
#include "gui/telling/overview.hpp"
#include "gui/telling/rig_words.hpp"
#include "gui/telling/sure.hpp"
#include "gui/telling/words.hpp"
#include "physics/brewday.hpp"
#include "rigs/results/circuit_words.hpp"

namespace gui::telling {
namespace {

using physics::Outcome;
using rigs::amount;
using rigs::Told;

constexpr long kMinutesADay = 24L * 60L;

Told originText(const SheetOrigin& from) {
  const rigs::Verbatim version{from.version};
  if (from.but.empty())
    return Told(TOLD("Sheet", "By Heat Ledger %1, from %2."), version, from.plan);
  return Told(TOLD("Sheet", "By Heat Ledger %1, from %2, %3."), version, from.plan, from.but);
}

// What each circuit carries and, where the rules have more to say than that it fits, all of it.
std::vector<Told> circuitTexts(const Case& of, std::size_t i) {
  std::vector<Told> all;
  const auto& circuits = of.rig(i).circuit.circuits;
  for (std::size_t k = 0; k < circuits.size(); ++k) {
    const rigs::CircuitLoad& circuit = circuits[k];
    const rigs::Amount load = rigs::closely(circuit.nameplate.load.value_or(circuit.branch));
    const rigs::Amount rated = rigs::closely(circuit.supply.rating);
    all.push_back(
        k == 0 ? Told(TOLD("Sheet", "Circuit: %1 of %2: %3."), load, rated, circuitState(of, i, k))
               : Told(TOLD("Sheet", "Second circuit: %1 of %2: %3."), load, rated,
                      circuitState(of, i, k)));
    for (const rigs::CircuitVerdict& verdict : circuit.verdicts) {
      if (verdict.overall == rigs::Fit::Fits) continue;
      Told text = rigs::verdictInBrief(verdict);
      if (std::find(all.begin(), all.end(), text) == all.end()) all.push_back(std::move(text));
    }
  }
  return all;
}

// Where nobody can say whether it rolls, on how many days it does; nothing where that is not known.
Told rollsOn(const rigs::RigAnswer& rig) {
  constexpr double kForSure = 0.95;
  if (!rig.bands) return {};
  const double share = rig.bands->rolls;
  if (!rig.edge && (share >= kForSure || share <= 1.0 - kForSure)) return {};
  return Told(TOLD("Sure", "It %1."), rollsOnText(share));
}

// What nobody may overlook before the first line.
std::vector<Told> warningTexts(const Case& of, std::size_t i) {
  std::vector<Told> all;
  for (Overload& one : overloads(of))
    if (one.rig == i) all.push_back(std::move(one.text));
  const rigs::RigAnswer& rig = of.rig(i);
  Told text;
  if (!rig.day.finished())
    text = rigs::sentences(
        {Told(TOLD("Sheet", "This day stops before its end: do not brew by it as it is.")),
         unfinishedText(of, i)});
  else if (rig.day.outcome != Outcome::Done)
    text = rigs::sentences({unfinishedText(of, i), edgeText(of, i), rollsOn(rig)});
  else if (rig.edge)
    text = rigs::sentences({Told(TOLD("Sheet", "Whether it rolls or only steams nobody can say.")),
                            edgeText(of, i), rollsOn(rig)});
  else
    text = rollsOn(rig);
  if (!text.empty()) all.push_back(std::move(text));
  if (Told never = neverReadyText(of, i); !never.empty()) all.push_back(std::move(never));
  return all;
}

Told moneyLabel(const rigs::Tariff& tariff) {
  if (tariff.dependsOnTheHour() || tariff.dependsOnUse() || tariff.rebate != 0.0)
    return Told(TOLD("Sheet", "for that energy"));
  return Told(TOLD("Sheet", "for that energy, at %1/kWh"),
              rigs::Money{tariff.perKilowattHour, tariff.currency});
}

std::vector<SheetSum> sumsOf(const Case& of, std::size_t i) {
  const rigs::RigAnswer& rig = of.rig(i);
  const physics::BrewDay& day = rig.day;
  if (day.stages.empty()) return {};
  std::vector<SheetSum> sums;
  sums.push_back({Told::just(amount(day.total.fromWall())),
                  day.finished() ? Told(TOLD("Sheet", "at the meter, from begin to end"))
                                 : Told(TOLD("Sheet", "at the meter by then"))});
  if (day.rinsed && day.rinsed->fromWall)
    sums.push_back({Told::just(amount(*day.rinsed->fromWall)),
                    Told(TOLD("Sheet", "of that for the rinsing water, beside the kettle"))});
  if (rig.cost)
    sums.push_back(
        {Told::just(rigs::Money{*rig.cost, of.plan.tariff.currency}), moneyLabel(of.plan.tariff)});
  if (!day.finished()) return sums;
  const rigs::Number gravity{day.resultGravity, {.decimals = 3}};
  sums.push_back({Told::just(amount(day.resultCold)),
                  of.plan.batch.mashes() ? Told(TOLD("Sheet", "in the end, cold, at %1"), gravity)
                                         : Told(TOLD("Sheet", "in the end, cold"))});
  physics::Mass steam = physics::kilograms(0.0);
  for (const physics::Stage& stage : day.stages) steam += stage.evaporated;
  sums.push_back({Told::just(amount(steam)), Told(TOLD("Sheet", "of steam: open a window"))});
  return sums;
}

// As clocks show it.
physics::Time toTheMinute(physics::Time time) {
  return physics::minutes(std::round(physics::inMinutes(time)));
}

long calendarDay(physics::Time sinceMidnight) {
  return std::lround(std::floor(physics::inMinutes(toTheMinute(sinceMidnight)) / kMinutesADay));
}

// Days are counted from the one that the first line is of.
void markNewDays(std::vector<SheetLine>& lines) {
  std::optional<long> first;
  long last = 0;
  for (SheetLine& line : lines) {
    if (!line.at) continue;
    line.at = toTheMinute(*line.at);
    if (line.counted) continue;
    const long today = calendarDay(*line.at);
    if (!first) first = std::min(today, 0L);
    const long day = today - *first;
    if (day > last)
      line.newDay = day == 1 ? Told(TOLD("Sheet", "Next day"))
                             : Told(TOLD("Sheet", "Day %1"), rigs::Count{day + 1});
    last = day;
  }
}

}  // namespace

Told SheetLine::clock() const {
  if (!at) return {};
  if (counted) return Told::just(rigs::Clock{.sinceMidnight = *at, .counted = true});
  return Told::just(
      rigs::Clock{*at - static_cast<double>(calendarDay(*at)) * physics::hours(24.0)});
}

Told sideBySide(const std::vector<Told>& figures) {
  Told all;
  for (const Told& one : figures)
    all = all.empty() ? one : Told(TOLD("Sheet", "%1 · %2"), std::move(all), one);
  return all;
}

Sheet sheetOf(const Case& of, std::size_t i, const SheetOrigin& origin) {
  const std::vector<Told> opening = openingOf(of.plan);
  Sheet sheet;
  sheet.title = opening.at(0);
  sheet.rig = Told(TOLD("Sheet", "%1: %2."), of.named(i), rigInFull(of.plan, i, of.reader).text);
  sheet.circuits = circuitTexts(of, i);
  sheet.batch = opening.at(1);
  sheet.place = opening.at(2);
  sheet.origin = originText(origin);
  sheet.warnings = warningTexts(of, i);
  sheet.lines = sheetLines(of, i);
  markNewDays(sheet.lines);
  const bool banded = std::any_of(sheet.lines.begin(), sheet.lines.end(),
                                  [](const SheetLine& line) { return !line.band.empty(); });
  if (banded)
    sheet.ofBands =
        Told(TOLD("Sheet", "Under a time, and between brackets: there 8 of 10 such days lie."));
  sheet.sums = sumsOf(of, i);
  sheet.danger = Told(TOLD("Strip", "Mains current and boiling wort can kill."));
  sheet.cautions = sheetCautions(of, i);
  return sheet;
}

}  // namespace gui::telling
