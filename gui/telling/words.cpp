// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/words.hpp"

#include <algorithm>
#include <utility>

namespace gui::telling {
namespace {

using physics::Outcome;
using physics::StageKind;
using rigs::amount;
using rigs::inWholeWatts;
using rigs::Told;

Told stageName(StageKind kind) {
  switch (kind) {
    case StageKind::Strike:
      return Told(TOLD("Answer", "Strike"));
    case StageKind::MashingIn:
      return Told(TOLD("Answer", "Mash in"));
    case StageKind::Ramp:
      return Told(TOLD("Answer", "Ramp"));
    case StageKind::Rest:
      return Told(TOLD("Answer", "Rest"));
    case StageKind::UnpluggedRest:
      return Told(TOLD("Answer", "Unplugged"));
    case StageKind::Draining:
      return Told(TOLD("Answer", "Drain"));
    case StageKind::HeatingToBoil:
      return Told(TOLD("Answer", "To boil"));
    case StageKind::Boil:
      return Told(TOLD("Answer", "Boil"));
  }
  return {};
}

// Where it levels off, for a rig whose letter or name leads the sentence.
Told levelsOff(const physics::BrewDay& day, const rigs::Template<4>& text) {
  const physics::LevelsOff& level = *day.levelsOff;
  return Told(text, amount(level.at), amount(level.wanted), inWholeWatts(level.atWanted),
              inWholeWatts(day.electrical.delivered));
}

Told levelsOffNamed(const Case& of, std::size_t rig, const rigs::Template<5>& text) {
  const physics::BrewDay& day = of.rig(rig).day;
  const physics::LevelsOff& level = *day.levelsOff;
  return Told(text, amount(level.at), of.named(rig), amount(level.wanted),
              inWholeWatts(level.atWanted), inWholeWatts(day.electrical.delivered));
}

// How much colder than boiling it levels off: "0.3 K", "less than 0.1 K".
Told belowBoiling(const physics::LevelsOff& level) {
  const physics::TemperatureDifference short_of = level.wanted - level.at;
  const physics::TemperatureDifference least = physics::kelvins(0.1);
  if (short_of < least) return Told(TOLD("Answer", "less than %1"), amount(least));
  return Told::just(amount(short_of, {.significantDigits = 2, .decimals = {}}));
}

// A boil without enough heat: two sentences, what it does and why, then what it comes to later.
Told steamsText(const physics::BrewDay& day) {
  const physics::LevelsOff& level = *day.levelsOff;
  const auto at = amount(level.at);
  const auto wanted = amount(level.wanted);
  const auto lost = inWholeWatts(level.atWanted);
  const auto gets = inWholeWatts(day.electrical.delivered);
  if (day.startsBoiling()) {
    return Told(TOLD("Answer",
                     "It comes to %2 with the lid as it is for heating, but in the boil it would "
                     "lose %3 there and gets %4: it falls back towards %1."),
                at, wanted, lost, gets);
  }
  if (day.outcome == Outcome::StaysFarBelow) {
    return Told(TOLD("Answer",
                     "%1 is where it levels off, %5 below boiling: at %2 it would lose %3 and gets "
                     "%4."),
                at, wanted, lost, gets, belowBoiling(level));
  }
  return Told(TOLD("Answer",
                   "%1 is where it levels off, %5 below boiling: at %2 it would lose %3 and gets "
                   "%4. Its surface evaporates almost as much as if it rolled."),
              at, wanted, lost, gets, belowBoiling(level));
}

// What falls below its element's need may come back to it as the level sinks.
Told rollsLaterText(const physics::BrewDay& day) {
  if (!day.boil || day.boil->rolled <= physics::seconds(0.0)) return {};
  return Told(TOLD("Answer", "As its level falls it comes to roll, for the last %1."),
              rigs::roughly(day.boil->rolled));
}

}  // namespace

std::vector<Told> stageNames(const physics::BrewDay& day) {
  std::vector<Told> names;
  for (std::size_t i = 0; i < day.stages.size(); ++i) {
    const StageKind kind = day.stages[i].kind;
    const auto same = [&](const physics::Stage& s) { return s.kind == kind; };
    const auto begin = day.stages.begin();
    const auto all = std::count_if(begin, day.stages.end(), same);
    const auto before = std::count_if(begin, begin + static_cast<std::ptrdiff_t>(i), same);
    names.push_back(all > 1 ? Told(TOLD("Answer", "%1 %2"), stageName(kind),
                                   rigs::Count{static_cast<long long>(before) + 1})
                            : stageName(kind));
  }
  return names;
}

Told pathName(physics::Path path) {
  switch (path) {
    case physics::Path::Side:
      return Told(TOLD("Answer", "side"));
    case physics::Path::DryWall:
      return Told(TOLD("Answer", "dry wall above the wort"));
    case physics::Path::Base:
      return Told(TOLD("Answer", "base"));
    case physics::Path::Lid:
      return Told(TOLD("Answer", "lid"));
    case physics::Path::SurfaceConvection:
      return Told(TOLD("Answer", "surface, to the air"));
    case physics::Path::SurfaceRadiation:
      return Told(TOLD("Answer", "surface, radiated"));
    case physics::Path::Evaporation:
      return Told(TOLD("Answer", "evaporation"));
    case physics::Path::Hose:
      return Told(TOLD("Answer", "hose"));
  }
  return {};
}

Told outcomeWord(Outcome outcome) {
  switch (outcome) {
    case Outcome::Done:
      return Told(TOLD("Answer", "rolls"));
    case Outcome::Steams:
      return Told(TOLD("Answer", "steams"));
    case Outcome::StaysFarBelow:
      return Told(TOLD("Answer", "no boil"));
    case Outcome::DoesNotReachStrike:
      return Told(TOLD("Answer", "no strike"));
    case Outcome::DoesNotReachRest:
      return Told(TOLD("Answer", "no rest"));
    case Outcome::UncoversElement:
      return Told(TOLD("Answer", "runs dry"));
    case Outcome::StrikeTooHot:
      return Told(TOLD("Answer", "too hot"));
  }
  return {};
}

Told vigourWord(rigs::Vigour vigour) {
  switch (vigour) {
    case rigs::Vigour::Simmer:
      return Told(TOLD("Answer", "simmer"));
    case rigs::Vigour::Gentle:
      return Told(TOLD("Answer", "gentle"));
    case rigs::Vigour::Steady:
      return Told(TOLD("Answer", "steady"));
    case rigs::Vigour::Strong:
      return Told(TOLD("Answer", "strong"));
    case rigs::Vigour::Fierce:
      return Told(TOLD("Answer", "fierce"));
  }
  return {};
}

Told boilWord(rigs::Vigour vigour) {
  switch (vigour) {
    case rigs::Vigour::Simmer:
      return Told(TOLD("Answer", "a simmer"));
    case rigs::Vigour::Gentle:
      return Told(TOLD("Answer", "a gentle boil"));
    case rigs::Vigour::Steady:
      return Told(TOLD("Answer", "a steady boil"));
    case rigs::Vigour::Strong:
      return Told(TOLD("Answer", "a strong boil"));
    case rigs::Vigour::Fierce:
      return Told(TOLD("Answer", "a fierce boil"));
  }
  return {};
}

Told limitWord(physics::Limit limit) {
  switch (limit) {
    case physics::Limit::None:
      return Told(TOLD("Answer", "nothing"));
    case physics::Limit::Circuit:
      return Told(TOLD("Answer", "circuit"));
    case physics::Limit::Vessel:
      return Told(TOLD("Answer", "vessel"));
    case physics::Limit::BoilVigour:
      return Told(TOLD("Answer", "boil-off"));
    case physics::Limit::Boiling:
      return Told(TOLD("Answer", "no boil"));
    case physics::Limit::SmallestBatch:
      return Told(TOLD("Answer", "too small"));
    case physics::Limit::TimeAllowed:
      return Told(TOLD("Answer", "time"));
  }
  return {};
}

Told unfinishedText(const Case& of, std::size_t rig) {
  const physics::BrewDay& day = of.rig(rig).day;
  switch (day.outcome) {
    case Outcome::Done:
      return {};
    case Outcome::Steams:
      if (!day.levelsOff) break;
      return rigs::sentences({Told(TOLD("Answer", "It steams without rolling.")), steamsText(day),
                              rollsLaterText(day)});
    case Outcome::StaysFarBelow:
      if (!day.levelsOff) break;
      return rigs::sentences({day.startsBoiling()
                                  ? Told(TOLD("Answer", "It cannot hold the boil."))
                                  : Told(TOLD("Answer", "It stays far below boiling.")),
                              steamsText(day), rollsLaterText(day)});
    case Outcome::DoesNotReachStrike:
      if (!day.levelsOff) break;
      return levelsOff(day, TOLD("Answer",
                                 "Does not reach the strike temperature. %1 is where it levels "
                                 "off, short of %2: at %2 it would lose %3 and gets %4."));
    case Outcome::DoesNotReachRest:
      if (!day.levelsOff) break;
      return levelsOff(day, TOLD("Answer",
                                 "Does not reach the next rest. %1 is where it levels off, short "
                                 "of %2: at %2 it would lose %3 and gets %4."));
    case Outcome::UncoversElement:
      return Told(TOLD("Answer", "Uncovers its element: %1 is left when the day stops here."),
                  amount(day.lowest));
    case Outcome::StrikeTooHot:
      return Told(TOLD("Answer",
                       "%1 would be needed to strike: the water would have to boil. Use more "
                       "water, less grain, or warmer grain."),
                  amount(day.strike));
  }
  return Told(TOLD("Answer", "Does not finish its day."));
}

Told unfinishedNamed(const Case& of, std::size_t rig) {
  const physics::BrewDay& day = of.rig(rig).day;
  switch (day.outcome) {
    case Outcome::Done:
      return {};
    case Outcome::Steams:
      if (!day.levelsOff) break;
      if (day.startsBoiling())
        return levelsOffNamed(of, rig,
                              TOLD("Answer",
                                   "%3 is what %2 comes to with the lid as it is for heating, but "
                                   "it steams without rolling: in the boil it would lose %4 there "
                                   "and gets %5, and falls back towards %1."));
      return levelsOffNamed(of, rig,
                            TOLD("Answer",
                                 "%1 is where %2 levels off: it steams without rolling, since at "
                                 "%3 it would lose %4 and gets %5."));
    case Outcome::StaysFarBelow:
      if (!day.levelsOff) break;
      return levelsOffNamed(
          of, rig,
          day.startsBoiling()
              ? rigs::Template<5>(TOLD("Answer",
                                       "%3 is what %2 comes to with the lid as it is for heating, "
                                       "but in the boil it would lose %4 there and gets %5, and "
                                       "falls far below, towards %1."))
              : rigs::Template<5>(TOLD("Answer",
                                       "%1 is where %2 levels off, far below boiling: at %3 "
                                       "it would lose %4 and gets %5.")));
    case Outcome::DoesNotReachStrike:
      if (!day.levelsOff) break;
      return levelsOffNamed(of, rig,
                            TOLD("Answer",
                                 "%1 is where %2 levels off, short of the strike temperature: at "
                                 "%3 it would lose %4 and gets %5."));
    case Outcome::DoesNotReachRest:
      if (!day.levelsOff) break;
      return levelsOffNamed(of, rig,
                            TOLD("Answer",
                                 "%1 is where %2 levels off, short of the next rest: at %3 it "
                                 "would lose %4 and gets %5."));
    case Outcome::UncoversElement:
      return Told(TOLD("Answer", "%1 is left in %2 when its element is uncovered: the day stops."),
                  amount(day.lowest), of.named(rig));
    case Outcome::StrikeTooHot:
      return Told(TOLD("Answer",
                       "%1 would be needed to strike with %2: the water would have to boil. Use "
                       "more water, less grain, or warmer grain."),
                  amount(day.strike), of.named(rig));
  }
  return Told(TOLD("Answer", "%1 does not finish its day."), of.named(rig));
}

std::vector<Told> unfinishedOfAll(const Case& of) {
  std::vector<Told> all;
  for (std::size_t i = 0; i < of.count(); ++i) {
    Told text = unfinishedNamed(of, i);
    if (!text.empty()) all.push_back(std::move(text));
  }
  return all;
}

Told edgeText(const Case& of, std::size_t rig) {
  const auto& edge = of.rig(rig).edge;
  if (!edge) return {};
  return Told(TOLD("Answer",
                   "That is on the edge: it gets %1, and since the law of the open surface is good "
                   "to about %4 only, %2 may be enough to roll, and %3 may be needed."),
              inWholeWatts(of.rig(rig).day.electrical.delivered),
              inWholeWatts(edge->ifLessEvaporates), inWholeWatts(edge->ifMoreEvaporates),
              amount(physics::kEvaporationScatter));
}

Told costText(const Case& of, std::size_t rig) {
  const rigs::RigAnswer& answer = of.rig(rig);
  const std::string& currency = of.plan.tariff.currency;
  const rigs::Amount energy =
      amount(answer.day.total.fromWall(), {.significantDigits = 3, .decimals = {}});
  const auto money = [&](double sum) { return rigs::Money{sum, currency}; };
  if (!answer.day.finished()) {
    if (!answer.cost) return Told(TOLD("Answer", "%1 are spent by then."), energy);
    return Told(TOLD("Answer", "%1 and %2 are spent by then."), energy, money(*answer.cost));
  }
  if (!answer.cost && of.plan.ready && of.plan.tariff.isStated())
    return Told(TOLD("Answer",
                     "%1 from the wall; its price hangs on the hour, and it has no "
                     "beginning."),
                energy);
  if (!answer.cost) return Told(TOLD("Answer", "%1 from the wall; no price was given."), energy);
  const auto one = rigs::fromNumberIn<physics::Volume>(1.0, of.reader.units);
  const auto each = rigs::costPer(answer, one);
  if (!each) return Told(TOLD("Answer", "%1 for %2 from the wall."), money(*answer.cost), energy);
  return Told(TOLD("Answer", "%1 for %2 from the wall, %3/%4."), money(*answer.cost), energy,
              money(*each), rigs::Verbatim{of.unit<physics::Volume>()});
}

Told costInBrief(const Case& of, std::size_t rig) {
  const rigs::RigAnswer& answer = of.rig(rig);
  if (!answer.cost || !answer.day.finished()) return costText(of, rig);
  return Told(TOLD("Answer", "%1 for %2."), rigs::Money{*answer.cost, of.plan.tariff.currency},
              amount(answer.day.total.fromWall(), {.significantDigits = 3, .decimals = {}}));
}

rigs::Amount percent(double share) {
  return rigs::amount(share, {.significantDigits = 2, .decimals = {}});
}

double brewsPerYear(const rigs::Plan& plan) { return rigs::brewsPerYear(plan.tariff); }

}  // namespace gui::telling
