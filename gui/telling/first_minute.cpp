// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/first_minute.hpp"

#include <utility>

#include "gui/telling/case.hpp"
#include "gui/telling/jacket.hpp"
#include "gui/telling/opening.hpp"
#include "gui/telling/overload.hpp"
#include "gui/telling/verdict.hpp"
#include "gui/telling/words.hpp"
#include "rigs/answers/figures.hpp"
#include "rigs/results/cautions.hpp"

namespace gui::telling {
namespace {

using physics::StageKind;
using rigs::amount;
using rigs::roughly;
using rigs::Told;

constexpr std::size_t kRig = 0;

Told headlineOf(const Case& of) {
  const rigs::RigAnswer& rig = of.rig(kRig);
  const physics::Stage* boil = rig.day.find(StageKind::Boil);
  if (rig.day.outcome != physics::Outcome::Done || !boil || !rig.day.boil)
    return unfinishedText(of, kRig);
  const Told after(TOLD("Answer", "It rolls after %1: %2."), roughly(boil->begin),
                   boilWord(rigs::vigourOf(*rig.day.boil)));
  if (!rig.edge) return after;
  return Told(TOLD("Answer", "Nobody can say whether it rolls: perhaps after %1."),
              roughly(boil->begin));
}

// Of stages that came to their end.
std::vector<Told> dayOf(const Case& of) {
  const physics::BrewDay& day = of.rig(kRig).day;
  std::vector<Told> told{edgeText(of, kRig)};  // tells nothing of most kettles
  if (const auto strike = rigs::timeOf(day, StageKind::Strike))
    told.push_back(
        Told(TOLD("Answer", "The water is ready for the grain after %1."), roughly(*strike)));
  if (const auto toBoil = rigs::timeToBoil(day))
    told.push_back(Told(TOLD("Answer", "From mash to boil it takes %1."), roughly(*toBoil)));
  if (day.finished()) told.push_back(costInBrief(of, kRig));
  return told;
}

Told circuitOf(const Case& of, const std::vector<Overload>& overloaded) {
  if (!overloaded.empty()) return overloaded.front().text;
  return Told(TOLD("Answer", "%1."), circuitVerdict(of, kRig, 0));
}

Told jacketOf(const Case& of) {
  if (!of.rig(kRig).jacket) return {};
  const Told brings = jacketInBrief(of, kRig);
  const Told jacket = jacketInShort(of, kRig);
  return of.planned(kRig).hasJacket ? Told(TOLD("Answer", "Its jacket (%1): %2"), jacket, brings)
                                    : Told(TOLD("Answer", "A jacket (%1)? %2"), jacket, brings);
}

// The title is the reader's own.
Told assumedOf(const rigs::Plan& plan) {
  std::vector<Told> opening = openingOf(plan);
  opening.erase(opening.begin());
  return rigs::sentences(std::move(opening));
}

}  // namespace

FirstMinute firstMinute(const rigs::Solution& solution, const rigs::Reader& reader) {
  const Case of{solution, solution.plan, reader, {}};
  const std::vector<Overload> overloaded = overloads(of);
  FirstMinute minute{.headline = headlineOf(of),
                     .day = dayOf(of),
                     .circuit = circuitOf(of, overloaded),
                     .overloaded = !overloaded.empty(),
                     .jacket = jacketOf(of),
                     .assumed = assumedOf(solution.plan),
                     .cautions = {}};
  for (rigs::Caution& one : rigs::cautions(solution.plan, false))
    minute.cautions.push_back(std::move(one.text));
  return minute;
}

}  // namespace gui::telling
