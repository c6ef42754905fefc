// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/overview.hpp"

#include <algorithm>
#include <optional>
#include <tuple>
#include <utility>
#include <vector>

#include "gui/telling/begins.hpp"
#include "gui/telling/rig_rows.hpp"
#include "gui/telling/sure.hpp"
#include "gui/telling/time.hpp"
#include "gui/telling/verdict.hpp"
#include "gui/telling/words.hpp"
#include "rigs/answers/figures.hpp"
#include "rigs/answers/nameplate.hpp"

namespace gui::telling {
namespace {

using physics::BrewDay;
using physics::StageKind;
using rigs::Fit;
using rigs::Told;

Told eightOfTen() { return Told(TOLD("Answer", "· on 8 of 10 days")); }

void addClockAccount(RigTable& table, const Case& of) {
  addBeginsRows(table, of);
  table.row(Told(TOLD("Answer", "strike water ready")),
            [&](std::size_t i) -> Cell {
              const BrewDay& day = of.rig(i).day;
              const physics::Stage* strike = day.find(StageKind::Strike);
              if (!strike || !rigs::finished(day, *strike)) return std::nullopt;
              return of.clockAt(i, strike->end);
            },
            {.opens = Question::HowLong});
  table.row(Told(TOLD("Answer", "rolls")), [&](std::size_t i) { return rollsAt(of, i); },
            {.opens = Question::HowLong});
  // Below a figure that is told as a difference its band stands as it is, where it is known.
  table.row(eightOfTen(), [&](std::size_t i) { return clockBand(of, i, &rigs::Bands::boilBegins); },
            {.opens = Question::HowSure});
  table.row(Told(TOLD("Answer", "over")),
            [&](std::size_t i) -> Cell {
              const auto whole = wholeDay(of.rig(i).day);
              return whole ? Cell(of.clockAt(i, *whole)) : std::nullopt;
            },
            {.opens = Question::HowLong});
}

void addBoilAccount(RigTable& table, const Case& of) {
  table.row(Told(TOLD("Answer", "boil-off")),
            [&](std::size_t i) -> Cell {
              const auto& boil = of.rig(i).day.boil;
              return boil ? cellOf(rigs::boilOffRate(*boil)) : std::nullopt;
            },
            {.result = "/day/boil/share_of_pre_boil_per_h", .opens = Question::BoilsEnough});
  table.row(eightOfTen(), [&](std::size_t i) { return boilOffBand(of, i); },
            {.opens = Question::HowSure});
  table.row(Told(TOLD("Answer", "vigour")), [&](std::size_t i) { return vigourCell(of, i); },
            {.result = "/day/boil/vigour", .opens = Question::BoilsEnough});
}

// A kettle's second circuit has a row of its own.
void addCircuitAccount(RigTable& table, const Case& of) {
  std::size_t most = 0;
  for (std::size_t i = 0; i < of.count(); ++i)
    most = std::max(most, of.rig(i).circuit.circuits.size());
  for (std::size_t k = 0; k < most; ++k)
    table.row(k == 0 ? Told(TOLD("Answer", "circuit")) : Told(TOLD("Answer", "its second circuit")),
              [&](std::size_t i) -> Cell {
                if (k >= of.rig(i).circuit.circuits.size()) return std::nullopt;
                return Cell(circuitState(of, i, k));
              },
              {.opens = Question::Circuit});
}

void addNightAccount(RigTable& table, const Case& of) {
  const rigs::Night* night = nullptr;
  for (std::size_t i = 0; i < of.count() && !night; ++i)
    if (of.rig(i).night && of.rig(i).night->own) night = &of.rig(i).night->asItIs;
  if (!night) return;
  table.heading(Told(TOLD("Answer", "The mash while it is left alone")));
  table.row(Told(TOLD("Answer", "in the end, after %1"), rigs::asChosen(night->alone)),
            [&](std::size_t i) -> Cell {
              const auto& own = of.rig(i).night;
              return own && own->own ? cellOf(own->asItIs.morning) : std::nullopt;
            },
            {.result = "/night/morning_C", .opens = Question::HowFarCools});
  table.row(eightOfTen(), [&](std::size_t i) { return morningBand(of, i); },
            {.opens = Question::HowSure});
  // What follows is not the mash's alone.
  table.heading(Told(TOLD("Answer", "The whole day")));
}

void addCostAccount(RigTable& table, const Case& of) {
  table.row(Told(TOLD("Answer", "from the wall")),
            [&](std::size_t i) { return of.rig(i).day.total.fromWall(); },
            {.result = "/day/total/from_wall_kWh", .opens = Question::WhatCost});
  table.row(eightOfTen(), [&](std::size_t i) { return fromWallBand(of, i); },
            {.opens = Question::HowSure});
  table.row(Told(TOLD("Answer", "a batch")),
            [&](std::size_t i) -> Cell {
              const auto& cost = of.rig(i).cost;
              return cost ? Cell(rigs::Money{*cost, of.plan.tariff.currency}) : std::nullopt;
            },
            {.result = "/cost", .isSum = true, .opens = Question::WhatCost});
}

Table accountOf(const Case& of) {
  RigTable table("overview", of);
  addClockAccount(table, of);
  addBoilAccount(table, of);
  addCircuitAccount(table, of);
  addNightAccount(table, of);
  addCostAccount(table, of);
  return table.take();
}

Told verdictNamed(const Case& of, std::size_t i) {
  return Told(TOLD("Answer", "%1: %2."), of.named(i), verdictText(of, i));
}

// What name plates ask of a rating; the branch's current where they have none.
rigs::Amount circuitShare(const rigs::CircuitLoad& circuit) {
  const physics::Current load = circuit.nameplate.load.value_or(circuit.branch);
  return percent(static_cast<double>(load / circuit.supply.rating));
}

// More where a circuit stands worse.
auto weightOf(const Case& of, std::size_t i, std::size_t k) {
  const rigs::CircuitLoad& circuit = of.rig(i).circuit.circuits[k];
  return std::tuple(isOverloaded(circuit), circuit.nameplate.fit == Fit::OnTheEdge,
                    rigs::overloadsForLong(of.plan, of.planned(i), k), rigs::worstOf(circuit));
}

std::size_t worstCircuit(const Case& of, std::size_t i) {
  std::size_t worst = 0;
  for (std::size_t k = 1; k < of.rig(i).circuit.circuits.size(); ++k)
    if (weightOf(of, i, k) > weightOf(of, i, worst)) worst = k;
  return worst;
}

}  // namespace

std::size_t baseOf(const Case& of) {
  const auto wanted = static_cast<std::size_t>(std::max(0, of.view.rig));
  return wanted < of.count() ? wanted : 0;
}

Told circuitState(const Case& of, std::size_t i, std::size_t k) {
  const rigs::CircuitLoad& circuit = of.rig(i).circuit.circuits[k];
  const rigs::Amount share = circuitShare(circuit);
  if (isOverloaded(circuit)) return Told(TOLD("Answer", "%1, %2"), overloadMark(), share);
  if (circuit.nameplate.fit == Fit::OnTheEdge)
    return Told(TOLD("Answer", "on the edge, %1"), share);
  if (rigs::overloadsForLong(of.plan, of.planned(i), k))
    return Told(TOLD("Answer", "too much for long use, %1"), share);
  switch (rigs::worstOf(circuit)) {
    case Fit::Fits:
      return Told(TOLD("Answer", "✓ fits, %1"), share);
    case Fit::OnlyIf:
      return Told(TOLD("Answer", "◑ on conditions, %1"), share);
    case Fit::DoesNotFit:
      return Told(TOLD("Answer", "not within its rules, %1"), share);
    case Fit::OnTheEdge:
    case Fit::CannotSay:
      break;
  }
  return Told(TOLD("Answer", "within its rating, %1"), share);
}

Told circuitState(const Case& of, std::size_t i) {
  return circuitState(of, i, worstCircuit(of, i));
}

std::size_t worstOnItsCircuit(const Case& of, std::size_t unlessWorseThan) {
  std::size_t worst = unlessWorseThan;
  const auto weight = [&](std::size_t i) { return weightOf(of, i, worstCircuit(of, i)); };
  for (std::size_t i = 0; i < of.count(); ++i)
    if (weight(i) > weight(worst)) worst = i;
  return worst;
}

Cell rollsAt(const Case& of, std::size_t i) {
  const BrewDay& day = of.rig(i).day;
  const bool done = day.outcome == physics::Outcome::Done;
  const bool onTheEdge = of.rig(i).edge.has_value();
  if (!done)
    return Cell(onTheEdge ? Told(TOLD("Answer", "perhaps not")) : outcomeWord(day.outcome));
  const physics::Stage* boil = day.find(StageKind::Boil);
  if (!boil) return std::nullopt;
  const rigs::Clock clock = of.clockAt(i, boil->begin);
  return onTheEdge ? Cell(Told(TOLD("Answer", "perhaps %1"), clock)) : Cell(clock);
}

Answer overview(const Case& of) {
  const std::size_t base = baseOf(of);
  Answer answer;
  answer.sentences = {verdictNamed(of, base)};
  // The one that the headline tells of is not told of again.
  for (std::size_t i = 0; i < of.count(); ++i)
    if (i != base) answer.say(i, Told(TOLD("Answer", "%1."), verdictText(of, i)));
  Table table = accountOf(of);
  if (!of.isAlone() && !of.view.only) {
    table.base = base;
    answer.notes.push_back(
        Told(TOLD("Answer",
                  "The figures of the others are told by how much they differ from those "
                  "of %1; \"=\" is the same."),
             of.named(base)));
  }
  answer.show(std::move(table));
  answer.pictures = {stagePicture(of)};
  return answer;
}

}  // namespace gui::telling
