// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/shortest.hpp"

#include <algorithm>
#include <array>
#include <utility>
#include <vector>

#include "gui/telling/chill.hpp"
#include "gui/telling/helps.hpp"
#include "gui/telling/overview.hpp"
#include "gui/telling/rig_rows.hpp"
#include "gui/telling/sure.hpp"
#include "gui/telling/words.hpp"
#include "gui/telling/wort.hpp"
#include "rigs/answers/figures.hpp"

namespace gui::telling {
namespace {

using physics::BrewDay;
using physics::Path;
using rigs::amount;
using rigs::List;
using rigs::Told;

bool getsToRoll(const BrewDay& day) { return day.outcome == physics::Outcome::Done; }

rigs::Amount twoDigits(const auto& quantity) {
  return amount(quantity, {.significantDigits = 2, .decimals = {}});
}

Told joinedShortly(std::vector<Told> parts) {
  List all{{}, rigs::Joint::Comma};
  for (Told& one : parts)
    if (!one.empty()) all.items.emplace_back(std::move(one));
  return all.items.empty() ? Told() : Told::just(std::move(all));
}

// "rolls at 21:52", or what becomes of the day.
Told rollsShortly(const Case& of, std::size_t i) {
  const BrewDay& day = of.rig(i).day;
  if (of.rig(i).edge) return Told(TOLD("Answer", "may not roll"));
  if (!getsToRoll(day)) return outcomeWord(day.outcome);
  const Cell at = rollsAt(of, i);
  return at ? Told(TOLD("Answer", "rolls at %1"), *at) : Told();
}

// Who reads only the list must not think that every circuit fits: of the rig that stands worst.
Told circuitShortly(const Case& of, std::size_t i) {
  const std::size_t worst = worstOnItsCircuit(of, i);
  Told state = circuitState(of, worst);
  if (worst == i) return state;
  return Told(TOLD("Answer", "%1 %2"), rigs::Verbatim{of.lettered(worst)}, std::move(state));
}

Told spentShortly(const Case& of, std::size_t i) {
  const rigs::RigAnswer& rig = of.rig(i);
  if (!rig.day.finished()) return {};
  if (rig.cost) return Told::just(rigs::Money{*rig.cost, of.plan.tariff.currency});
  return Told::just(twoDigits(rig.day.total.fromWall()));
}

Told timeShortly(const Case& of, std::size_t i) {
  const auto whole = wholeDay(of.rig(i).day);
  const Cell begins = of.plan.ready ? beginsCell(of)(i) : std::nullopt;
  return joinedShortly({begins ? Told(TOLD("Answer", "begin at %1"), *begins) : Told(),
                        whole ? rigs::roughly(*whole) : Told(), rollsShortly(of, i)});
}

// Steam, and the greatest of what else is lost.
Told heatShortly(const Case& of, std::size_t i) {
  const physics::Ledger& total = of.rig(i).day.total;
  const physics::Energy wall = total.fromWall();
  if (wall <= physics::joules(0.0)) return {};
  constexpr std::array kOthers{Path::Side, Path::DryWall,           Path::Base,
                               Path::Lid,  Path::SurfaceConvection, Path::SurfaceRadiation,
                               Path::Hose};
  const Path most = *std::max_element(kOthers.begin(), kOthers.end(), [&](Path a, Path b) {
    return total.lost[a] < total.lost[b];
  });
  const auto share = [&](physics::Energy part) {
    return percent(static_cast<double>(part / wall));
  };
  return Told(TOLD("Answer", "%1 into steam, %2 %3"),
              share(total.lost[Path::Evaporation] + total.steam), share(total.lost[most]),
              pathName(most));
}

Told boilShortly(const Case& of, std::size_t i) {
  const auto& day = of.rig(i).day;
  const Cell vigour = vigourCell(of, i);
  if (!vigour) return {};
  const Told word = std::get<Told>(vigour->value);
  if (!getsToRoll(day) || !day.boil) return word;
  return joinedShortly({word, Told::just(amount(rigs::boilOffRate(*day.boil)))});
}

// Time from mash to boil and energy; less than nothing where a jacket makes it worse.
Told jacketShortly(const Case& of, std::size_t i) {
  const auto& jacket = of.rig(i).jacket;
  if (!jacket) return Told(TOLD("Answer", "no jacket to compare"));
  if (rigs::isOnTheEdge(*jacket))
    return Told(TOLD("Answer", "on the edge, %1 sooner"),
                rigs::roughly(jacket->savedToBoil.value_or(physics::seconds(0.0))));
  switch (jacket->verdict) {
    case physics::JacketVerdict::MakesItBoil:
      return Told(TOLD("Answer", "makes it boil"));
    case physics::JacketVerdict::GetsFurther:
      return Told(TOLD("Answer", "gets further, no boil"));
    case physics::JacketVerdict::Worthwhile:
      return jacket->savedToBoil
                 ? Told(TOLD("Answer", "yes, %1 sooner"), rigs::roughly(*jacket->savedToBoil))
                 : Told(TOLD("Answer", "yes"));
    case physics::JacketVerdict::TimeNotWorthIt:
      return jacket->savedFromWall
                 ? Told(TOLD("Answer", "little time, %1"), twoDigits(*jacket->savedFromWall))
                 : Told(TOLD("Answer", "little time"));
    case physics::JacketVerdict::NotWorthIt:
      return Told(TOLD("Answer", "hardly"));
  }
  return {};
}

Told elementShortly(const Case& of, std::size_t i) {
  const auto& sizing = of.rig(i).sizing;
  if (!sizing) return {};
  const physics::PowerAnswer needed = rigs::neededPower(*sizing);
  if (!needed.power) return Told(TOLD("Answer", "none fulfils all goals"));
  return Told(TOLD("Answer", "%1 wanted, has %2"), twoDigits(*needed.power),
              twoDigits(of.rig(i).day.electrical.delivered));
}

Told costShortly(const Case& of, std::size_t i) {
  const auto& rig = of.rig(i);
  if (!rig.day.finished() || !rig.cost) return spentShortly(of, i);
  return joinedShortly({spentShortly(of, i), Told::just(twoDigits(rig.day.total.fromWall()))});
}

Told coolingShortly(const Case& of, std::size_t i) {
  const auto& night = of.rig(i).night;
  if (!night) return Told(TOLD("Answer", "no mash to leave alone"));
  return Told(TOLD("Answer", "%1 after %2"), amount(night->asItIs.morning),
              rigs::asChosen(night->asItIs.alone));
}

Told roomShortly(const Case& of, std::size_t i) {
  const auto& room = of.rig(i).room;
  if (!room) return {};
  return Told(TOLD("Answer", "%1 of vapour"), twoDigits(room->day.released));
}

// What the best single change brings; of what was not searched for nothing is said.
Told helpsShortly(const Case& of, std::size_t i) {
  const auto& helps = of.rig(i).helps;
  if (!helps) return {};
  const rigs::Wish wish = wishToldOf(of, *helps);
  const auto& best = helps->of(wish).best;
  if (best.empty() || !best.front()) return Told(TOLD("Answer", "no single change"));
  return gainText(of, wish, best.front()->effect, helps->today);
}

// Of what was not computed nothing is said.
Told chillShortly(const Case& of, std::size_t i) {
  const rigs::ChillAnswer* chill = chillOf(of, i);
  const auto span = chill ? chillSpan(*chill) : std::nullopt;
  if (!span) return {};
  return Told(TOLD("Answer", "%1 to %2"), chillSpanText(*span), chilledToText(*chill));
}

Told wortShortly(const Case& of, std::size_t i) {
  const rigs::WortAnswer* wort = wortOf(of, i);
  if (!wort) return {};
  if (wort->boiled)
    return Told(wort->boiled->rolled ? rigs::Template<1>(TOLD("Answer", "boil worth %1 at 100 °C"))
                                     : rigs::Template<1>(TOLD("Answer", "worth %1 at 100 °C")),
                rigs::roughly(wort->boiled->boil.worth.iso));
  return mashLimitShortly(wort->mashed->conversion);
}

Told sureShortly(const Case& of, std::size_t i) {
  const auto& bands = of.rig(i).bands;
  return bands ? rollsOnText(bands->rolls) : Told();
}

Told shortTextOf(Question question, const Case& of, std::size_t i) {
  switch (question) {
    case Question::Overview:
      return joinedShortly({rollsShortly(of, i), spentShortly(of, i)});
    case Question::HowLong:
      return timeShortly(of, i);
    case Question::WhereHeat:
      return heatShortly(of, i);
    case Question::BoilsEnough:
      return boilShortly(of, i);
    case Question::WorthJacket:
      return jacketShortly(of, i);
    case Question::WhichElement:
      return elementShortly(of, i);
    case Question::Circuit:
      return circuitShortly(of, i);
    case Question::WhatCost:
      return costShortly(of, i);
    case Question::HowFarCools:
      return coolingShortly(of, i);
    case Question::Room:
      return roomShortly(of, i);
    case Question::HelpsMost:
      return helpsShortly(of, i);
    case Question::HowChills:
      return chillShortly(of, i);
    case Question::WortChanges:
      return wortShortly(of, i);
    case Question::HowSure:
      return sureShortly(of, i);
  }
  return {};
}

}  // namespace

Told shortestOf(Question question, const Case& of, std::size_t rig) {
  return rig < of.count() ? shortTextOf(question, of, rig) : Told();
}

}  // namespace gui::telling
