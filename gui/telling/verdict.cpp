// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/verdict.hpp"

#include <optional>
#include <utility>
#include <vector>

#include "rigs/answers/figures.hpp"
#include "rigs/answers/long_use.hpp"
#include "rigs/answers/nameplate.hpp"
#include "rigs/results/circuit_words.hpp"

namespace gui::telling {
namespace {

using physics::Outcome;
using physics::StageKind;
using rigs::amount;
using rigs::Fit;
using rigs::Joint;
using rigs::List;
using rigs::Template;
using rigs::Told;
using rigs::Vigour;

// To a hundredth of a kilowatt, so that what it gets and what it needs can be compared.
rigs::Amount inKilowatts(physics::Power power) {
  return rigs::amountLike(power, "1 kW", {.significantDigits = 2, .decimals = 2});
}

// The least that would roll: searched for where somebody asked, else as the day itself found it.
// Empty where no power would do.
std::optional<physics::Power> leastToRoll(const rigs::RigAnswer& rig) {
  if (rig.sizing) return rig.sizing->toBoilAtAll.power;
  return rig.day.leastToBoil;
}

// Complete clauses for each word: other languages inflect them.
Told rollsFromText(const physics::BoilFigures& boil, const rigs::Clock& from) {
  const auto tell = [&](const Template<1>& text) { return Told(text, from); };
  switch (rigs::vigourOf(boil)) {
    case Vigour::Simmer:
      return tell(TOLD("Answer", "no more than simmers from %1"));
    case Vigour::Gentle:
      return tell(TOLD("Answer", "rolls gently from %1"));
    case Vigour::Steady:
      return tell(TOLD("Answer", "rolls steadily from %1"));
    case Vigour::Strong:
      return tell(TOLD("Answer", "rolls strongly from %1"));
    case Vigour::Fierce:
      return tell(TOLD("Answer", "rolls fiercely from %1"));
  }
  return {};
}

Told edgeInShort(const rigs::RigAnswer& rig) {
  return Told(TOLD("Answer", "on the edge of rolling with %1, as %2 to %3 may be needed"),
              inKilowatts(rig.day.electrical.delivered), inKilowatts(rig.edge->ifLessEvaporates),
              inKilowatts(rig.edge->ifMoreEvaporates));
}

Told getsOfText(const rigs::RigAnswer& rig, const Template<2>& text) {
  const auto least = leastToRoll(rig);
  if (!least) return Told(TOLD("Answer", "never rolls, with no element at all"));
  return Told(text, inKilowatts(rig.day.electrical.delivered), inKilowatts(*least));
}

Told stopsAtText(const physics::BrewDay& day, const Template<1>& text) {
  if (!day.levelsOff) return Told(TOLD("Answer", "does not finish its day"));
  return Told(text, amount(day.levelsOff->at));
}

// What the boil comes to, or where the day stops.
Told outcomeInShort(const Case& of, std::size_t i) {
  const rigs::RigAnswer& rig = of.rig(i);
  const physics::BrewDay& day = rig.day;
  if (rig.edge) return edgeInShort(rig);
  switch (day.outcome) {
    case Outcome::Done: {
      const physics::Stage* boil = day.find(StageKind::Boil);
      return boil && day.boil ? rollsFromText(*day.boil, of.clockAt(i, boil->begin)) : Told();
    }
    case Outcome::Steams:
      return getsOfText(rig,
                        TOLD("Answer", "steams without rolling: %1 of the %2 that rolling takes"));
    case Outcome::StaysFarBelow:
      return getsOfText(rig, TOLD("Answer", "never rolls: %1 of the %2 it needs"));
    case Outcome::DoesNotReachStrike:
      return stopsAtText(day,
                         TOLD("Answer", "never gets warm enough to strike: it levels off at %1"));
    case Outcome::DoesNotReachRest:
      return stopsAtText(day, TOLD("Answer", "never reaches its next rest: it levels off at %1"));
    case Outcome::UncoversElement:
      return Told(TOLD("Answer", "uncovers its element, which would burn out: %1 is left"),
                  amount(day.lowest));
    case Outcome::StrikeTooHot:
      return Told(TOLD("Answer", "cannot strike: the water would have to be %1"),
                  amount(day.strike));
  }
  return {};
}

// First of all where the batch itself is left alone.
Told morningText(const Case& of, std::size_t i) {
  const auto& night = of.rig(i).night;
  if (!night || !night->own) return {};
  return Told(TOLD("Answer", "%1 after %2 unplugged"), amount(night->asItIs.morning),
              rigs::asChosen(night->asItIs.alone));
}

// Where something is to be ready that decides.
Told beginText(const Case& of, std::size_t i) {
  if (!of.plan.ready || !of.rig(i).begins) return {};
  return Told(TOLD("Answer", "begin at %1"), of.clockAt(i, physics::seconds(0.0)));
}

Told spentText(const Case& of, std::size_t i) {
  const rigs::RigAnswer& rig = of.rig(i);
  if (rig.cost) return Told::just(rigs::Money{*rig.cost, of.plan.tariff.currency});
  return Told::just(amount(rig.day.total.fromWall(), {.significantDigits = 2, .decimals = {}}));
}

Told dayInShort(const Case& of, std::size_t i) {
  const physics::BrewDay& day = of.rig(i).day;
  List all{{}, Joint::Comma};
  for (Told& one : std::vector{beginText(of, i), morningText(of, i), outcomeInShort(of, i)})
    if (!one.empty()) all.items.emplace_back(std::move(one));
  if (day.finished() && day.outcome == Outcome::Done) {
    all.items.emplace_back(Told(TOLD("Answer", "over at %1"), of.clockAt(i, day.duration())));
    all.items.emplace_back(spentText(of, i));
  }
  return Told::just(std::move(all));
}

// --- The circuit: name plates first, what rules grant to long use, then what rules say besides.

Told withinRules(const rigs::CircuitLoad& circuit, const Template<2>& fits,
                 const rigs::Amount& load, const rigs::Amount& rated) {
  switch (rigs::worstOf(circuit)) {
    case Fit::Fits:
      return Told(fits, load, rated);
    case Fit::OnlyIf:
      return Told(TOLD("Answer", "%1 fits its %2 circuit on conditions: see \"circuit\""), load,
                  rated);
    case Fit::DoesNotFit:
      return Told(
          TOLD("Answer", "%1 is within its %2 circuit, but not within its rules: see \"circuit\""),
          load, rated);
    case Fit::OnTheEdge:
    case Fit::CannotSay:
      break;
  }
  return Told(TOLD("Answer", "%1 is within its %2 circuit, by name plates alone"), load, rated);
}

}  // namespace

Told circuitVerdict(const Case& of, std::size_t i, std::size_t k) {
  const rigs::CircuitLoad& circuit = of.rig(i).circuit.circuits[k];
  const physics::Current load = *circuit.nameplate.load;
  const physics::Current rated = circuit.supply.rating;
  const rigs::Amount limit = rigs::closely(rated);
  if (circuit.nameplate.fit == Fit::DoesNotFit)
    return Told(TOLD("Answer", "%1 is too much for its %2 circuit"), amount(load), limit);
  if (circuit.nameplate.fit == Fit::OnTheEdge)
    return Told(TOLD("Answer", "%1 is on the edge of its %2 circuit"), rigs::closely(load), limit);
  if (rigs::overloadsForLong(of.plan, of.planned(i), k))
    return Told(TOLD("Answer", "%1 is too much for long use of its %2 circuit"), amount(load),
                limit);
  return withinRules(circuit, TOLD("Answer", "%1 fits its %2 circuit"), amount(load), limit);
}

Told verdictText(const Case& of, std::size_t i) {
  List all{{}, Joint::Semicolon};
  all.items.emplace_back(dayInShort(of, i));
  for (std::size_t k = 0; k < of.rig(i).circuit.circuits.size(); ++k)
    all.items.emplace_back(circuitVerdict(of, i, k));
  return Told::just(std::move(all));
}

}  // namespace gui::telling
