// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/jacket.hpp"

#include <string>
#include <utility>

#include "gui/telling/words.hpp"
#include "rigs/answers/figures.hpp"
#include "rigs/answers/sweeps.hpp"

namespace gui::telling {
namespace {

using physics::JacketEffect;
using physics::JacketVerdict;
using physics::StageKind;
using rigs::amount;
using rigs::Argument;
using rigs::asChosen;
using rigs::inWholeWatts;
using rigs::Joint;
using rigs::List;
using rigs::roughly;
using rigs::Template;
using rigs::Told;
using rigs::Verbatim;

const JacketEffect& effectOf(const Case& of, std::size_t i) { return *of.rig(i).jacket; }

// --- What it saves.

Told savedToBoilText(physics::Time saved, physics::Time bare) {
  if (saved < physics::seconds(0.0))
    return Told(TOLD("Answer", "%1 longer than %2 from mash to boil"), roughly(-saved),
                roughly(bare));
  return Told(TOLD("Answer", "%1 of %2 saved from mash to boil"), roughly(saved), roughly(bare));
}

Told savedToStrikeText(physics::Time saved, physics::Time bare) {
  if (saved < physics::seconds(0.0))
    return Told(TOLD("Answer", "%1 longer than %2 to strike"), roughly(-saved), roughly(bare));
  return Told(TOLD("Answer", "%1 of %2 saved to strike"), roughly(saved), roughly(bare));
}

Told savedAtBoilText(const physics::LossPair& atBoil) {
  const bool less = atBoil.saved() >= physics::watts(0.0);
  return Told(less ? Template<2>(TOLD("Answer", "%1 less lost at %2"))
                   : Template<2>(TOLD("Answer", "%1 more lost at %2")),
              inWholeWatts(abs(atBoil.saved())), amount(atBoil.at));
}

Told savedFromWallText(physics::Energy saved) {
  const bool less = saved >= physics::joules(0.0);
  return Told(less ? Template<1>(TOLD("Answer", "%1 less from the wall"))
                   : Template<1>(TOLD("Answer", "%1 more from the wall")),
              amount(physics::Energy(abs(saved))));
}

// --- Where a day that levels off comes to its end.

enum class Stop { Strike, Rest, Boil, WayToBoil };
Stop stopOf(const physics::BrewDay& day) {
  switch (day.outcome) {
    case physics::Outcome::DoesNotReachStrike:
      return Stop::Strike;
    case physics::Outcome::DoesNotReachRest:
      return Stop::Rest;
    default:
      return day.startsBoiling() ? Stop::Boil : Stop::WayToBoil;
  }
}

Told bareStops(const physics::BrewDay& bare) {
  const auto at = amount(bare.levelsOff->at);
  switch (stopOf(bare)) {
    case Stop::Strike:
      return Told(TOLD("Answer", "bare, it stops at %1 on the way to strike"), at);
    case Stop::Rest:
      return Told(TOLD("Answer", "bare, it stops at %1 on the way to the next rest"), at);
    case Stop::Boil:
      return Told(TOLD("Answer", "bare, it levels off at %1 in the boil"), at);
    case Stop::WayToBoil:
      return Told(TOLD("Answer", "bare, it levels off at %1 on the way to the boil"), at);
  }
  return {};
}

Told jacketedStops(const physics::BrewDay& jacketed) {
  const auto at = amount(jacketed.levelsOff->at);
  switch (stopOf(jacketed)) {
    case Stop::Strike:
      return Told(TOLD("Answer", "with the jacket it stops at %1 on the way to strike"), at);
    case Stop::Rest:
      return Told(TOLD("Answer", "with the jacket it stops at %1 on the way to the next rest"), at);
    case Stop::Boil:
      return Told(TOLD("Answer", "with the jacket it levels off at %1 in the boil"), at);
    case Stop::WayToBoil:
      return Told(TOLD("Answer", "with the jacket it levels off at %1 on the way to the boil"), at);
  }
  return {};
}

// Where the jacket brings it to strike, which it does not reach bare.
Told jacketedStopsAfterStrike(const physics::BrewDay& jacketed, physics::Time strike) {
  const auto at = amount(jacketed.levelsOff->at);
  const auto in = roughly(strike);
  switch (stopOf(jacketed)) {
    case Stop::Strike:
      break;
    case Stop::Rest:
      return Told(TOLD("Answer",
                       "with the jacket it reaches strike in %2, and stops at %1 on the way to "
                       "the next rest"),
                  at, in);
    case Stop::Boil:
      return Told(TOLD("Answer",
                       "with the jacket it reaches strike in %2, and levels off at %1 in the boil"),
                  at, in);
    case Stop::WayToBoil:
      return Told(TOLD("Answer",
                       "with the jacket it reaches strike in %2, and levels off at %1 on the way "
                       "to the boil"),
                  at, in);
  }
  return jacketedStops(jacketed);
}

Told getsFurtherText(const JacketEffect& effect) {
  const auto bare = rigs::timeOf(effect.bare, StageKind::Strike);
  const auto strike = rigs::timeOf(effect.jacketed, StageKind::Strike);
  return Told(TOLD("Answer", "It gets further: %1; %2."), bareStops(effect.bare),
              strike && !bare ? jacketedStopsAfterStrike(effect.jacketed, *strike)
                              : jacketedStops(effect.jacketed));
}

// What a jacket that is worth something does not change.
Told stillStops(const JacketEffect& effect) {
  if (!effect.jacketed.levelsOff) return {};
  const auto at = amount(effect.jacketed.levelsOff->at);
  switch (stopOf(effect.jacketed)) {
    case Stop::Strike:
      return Told(TOLD("Answer", "It still does not boil: it stops at %1 on the way to strike."),
                  at);
    case Stop::Rest:
      return Told(
          TOLD("Answer", "It still does not boil: it stops at %1 on the way to the next rest."),
          at);
    case Stop::Boil:
      return Told(TOLD("Answer", "It still cannot hold the boil: it falls back to %1."), at);
    case Stop::WayToBoil:
      return Told(
          TOLD("Answer", "It still does not boil: it levels off at %1 on the way to the boil."),
          at);
  }
  return {};
}

// --- Why it saves little.

// A plan states a surface in a word of its own, or by its emissivity.
bool isEmissivity(const std::string& surface) { return surface.starts_with("emissivity"); }

// "brushed metal", "metal of emissivity 0.16", "bare metal"
Told metalText(const rigs::RigPlan& plan) {
  if (plan.finish.empty()) return Told(TOLD("Answer", "bare metal"));
  if (isEmissivity(plan.finish))
    return Told(TOLD("Answer", "metal of emissivity %1"),
                rigs::Number{plan.bare.vessel.side.emissivity});
  return Told(TOLD("Answer", "%1 metal"), rigs::Bundled{"Catalogue", plan.finish});
}

Told outsideText(const rigs::RigPlan& plan) {
  if (plan.skin.empty()) return Told(TOLD("Answer", "its outside"));
  if (isEmissivity(plan.skin))
    return Told(TOLD("Answer", "its outside (emissivity %1)"),
                rigs::Number{plan.jacketed.vessel.side.emissivity});
  return Told(TOLD("Answer", "its outside (%1)"), rigs::Bundled{"Catalogue", plan.skin});
}

// Clauses, without a full stop.
List reasons(const rigs::RigPlan& plan, const JacketEffect& effect) {
  List all{{}, Joint::Semicolon};
  const physics::JacketReasons& why = effect.reasons;
  if (why.strongElementHidesLosses) {
    all.items.emplace_back(Told(TOLD("Answer", "the bare side loses only %1 of the element's %2"),
                                inWholeWatts(effect.atBoil.bareSide),
                                inWholeWatts(effect.bare.electrical.delivered)));
  }
  if (why.skinRadiatesMore) {
    const double share = effect.atBoil.sideShareSaved();
    all.items.emplace_back(
        share < 0.0
            ? Told(TOLD("Answer",
                        "with the jacket the side loses more than without, for %1 radiates more "
                        "than %2"),
                   outsideText(plan), metalText(plan))
            : Told(TOLD("Answer",
                        "the jacket saves only %3 of what the side loses, for %1 radiates more "
                        "than %2"),
                   outsideText(plan), metalText(plan), percent(share)));
  }
  if (why.surfaceDominates) {
    all.items.emplace_back(
        Told(TOLD("Answer", "of the %1 lost at the boil most leaves by the open surface"),
             inWholeWatts(effect.atBoil.bare)));
  }
  return all;
}

rigs::Amount theRule() { return percent(physics::kWorthwhileShareOfTime); }

Told notWorthItText(const List& why) {
  if (why.items.empty())
    return Told(TOLD("Answer", "Not worth it: no more than %1 of the time."), theRule());
  return Told(TOLD("Answer", "Not worth it, no more than %1 of the time: %2."), theRule(), why);
}

Told timeNotWorthItText(const List& why) {
  if (why.items.empty())
    return Told(TOLD("Answer", "Not worth it for the time: no more than %1 of it."), theRule());
  return Told(TOLD("Answer", "Not worth it for the time, no more than %1 of it: %2."), theRule(),
              why);
}

// "Worth it: 12 % of the time from mash to boil", and where the rule stands beside it.
Told worthItText(const JacketEffect& effect, bool withRule) {
  const auto share = rigs::shareOfHeatingSaved(effect);
  const bool ofTheBoil = share && *share > physics::kWorthwhileShareOfTime;
  if (!withRule)
    return ofTheBoil ? Told(TOLD("Answer", "Worth it: %1 of the time from mash to boil."),
                            percent(*share))
                     : Told(TOLD("Answer", "Worth it for the time to strike."));
  return ofTheBoil
             ? Told(TOLD("Answer",
                         "Worth it: %1 of the time from mash to boil, where more than %2 counts "
                         "as worth it."),
                    percent(*share), theRule())
             : Told(TOLD("Answer", "Worth it for the time to strike: more than %1 of it."),
                    theRule());
}

// Neither yes nor no: the laws of loss leave it open.
Told onTheEdgeText(const JacketEffect& effect, bool withRule) {
  const double ofHeating = rigs::shareOfHeatingSaved(effect).value_or(0.0);
  const double ofStrike = rigs::shareOfStrikeSaved(effect).value_or(0.0);
  const bool ofTheBoil = ofHeating >= ofStrike;
  const rigs::Amount saved = percent(std::max(ofHeating, ofStrike));
  if (!withRule)
    return ofTheBoil
               ? Told(TOLD("Answer", "On the edge of worth it: %1 of the time from mash to boil."),
                      saved)
               : Told(TOLD("Answer", "On the edge of worth it: %1 of the time to strike."), saved);
  return ofTheBoil
             ? Told(TOLD("Answer",
                         "On the edge of worth it: %1 of the time from mash to boil, where more "
                         "than %2 counts as worth it, and losses are known to about a fifth."),
                    saved, theRule())
             : Told(TOLD("Answer",
                         "On the edge of worth it: %1 of the time to strike, where more than %2 "
                         "counts as worth it, and losses are known to about a fifth."),
                    saved, theRule());
}

Told heldText(const JacketEffect& effect) {
  return Told(TOLD("Answer", "But %1 instead of %2 after %3 unplugged."),
              amount(effect.jacketedAfter), amount(effect.bareAfter), asChosen(effect.alone));
}

// --- The answer in short.

Told savingText(const Case& of, std::size_t i) {
  const JacketEffect& effect = effectOf(of, i);
  const rigs::Argument named = of.named(i);
  if (effect.verdict == JacketVerdict::MakesItBoil)
    return of.planned(i).hasJacket
               ? Told(TOLD("Answer", "%1 only boils with the jacket it has."), named)
               : Told(TOLD("Answer", "%1 would only boil if it had %2."), named,
                      jacketInShort(of, i));
  // A day that stops where it levels off saves nothing that could be compared.
  if (!effect.savedFromWall || !effect.savedToBoil) {
    if (!effect.jacketed.levelsOff)
      return Told(TOLD("Answer", "Nothing can be compared for %1."), named);
    const auto at = amount(effect.jacketed.levelsOff->at);
    return of.planned(i).hasJacket
               ? Told(TOLD("Answer",
                           "%1 is as far as %2 gets with the jacket it has: it still does not "
                           "boil."),
                      at, named)
               : Told(TOLD("Answer",
                           "%1 is as far as %2 would get if it had %3: it still would not boil."),
                      at, named, jacketInShort(of, i));
  }
  // What loses more time and energy than it saves is told as what it costs.
  const bool costs = effect.verdict == JacketVerdict::NotWorthIt &&
                     *effect.savedToBoil < physics::seconds(0.0) &&
                     *effect.savedFromWall < physics::joules(0.0);
  const double sign = costs ? -1.0 : 1.0;
  const auto cost =
      rigs::moneySaved(effect.bare, effect.jacketed, of.plan.tariff, of.rig(i).begins);
  const Argument saved = cost ? Argument(rigs::Money{sign * *cost, of.plan.tariff.currency})
                              : Argument(amount(sign * *effect.savedFromWall));
  const auto tell = [&](const Template<5>& text) {
    return Told(text, roughly(sign * *effect.savedToBoil), saved, named, jacketNamed(of, i),
                theRule());
  };
  const bool edge = rigs::isOnTheEdge(effect);
  if (edge && effect.verdict == JacketVerdict::TimeNotWorthIt)
    return tell(TOLD("Answer",
                     "%1 from mash to boil and %2 a batch is what %4 saves with %3: on the edge of "
                     "worth it for the time, about %5 of a heat-up, and worth it for the heat it "
                     "holds."));
  if (edge)
    return tell(TOLD("Answer",
                     "%1 from mash to boil and %2 a batch is what %4 saves with %3: on the edge of "
                     "worth it, about %5 of a heat-up."));
  switch (effect.verdict) {
    case JacketVerdict::MakesItBoil:
    case JacketVerdict::GetsFurther:
    case JacketVerdict::Worthwhile:
      return tell(TOLD("Answer",
                       "%1 from mash to boil and %2 a batch is what %4 saves with %3: "
                       "worth it, more than %5 of a heat-up."));
    case JacketVerdict::TimeNotWorthIt:
      return tell(TOLD("Answer",
                       "%1 from mash to boil and %2 a batch is what %4 saves with %3: not worth "
                       "it for the time, no more than %5 of it, but for the heat it holds."));
    case JacketVerdict::NotWorthIt:
      if (costs)
        return Told(TOLD("Answer",
                         "%1 more from mash to boil and %2 more a batch is what %4 costs with "
                         "%3: not worth it."),
                    roughly(-*effect.savedToBoil), saved, named, jacketNamed(of, i));
      return tell(TOLD("Answer",
                       "%1 from mash to boil and %2 a batch is what %4 saves with %3: "
                       "not worth it, no more than %5 of a heat-up."));
  }
  return {};
}

std::vector<Told> jacketInShort(const Case& of) {
  const Extremes e = extremesOf(of, [&](std::size_t i) -> std::optional<double> {
    const auto& effect = of.rig(i).jacket;
    if (!effect) return std::nullopt;
    const bool compares = effect->savedFromWall && effect->savedToBoil;
    return compares ? physics::inSeconds(*effect->savedToBoil) : -1e9;
  });
  if (e.counted == 0)
    return {of.isAlone() ? Told(TOLD("Answer", "This plan has no jacket to compare."))
                         : Told(TOLD("Answer", "No rig of this plan has a jacket to compare."))};
  std::vector<Told> told{savingText(of, e.most)};
  if (e.least != e.most) told.push_back(savingText(of, e.least));
  return told;
}

void tellEachRig(Answer& answer, const Case& of, bool any) {
  for (std::size_t i = 0; i < of.count(); ++i) {
    if (of.rig(i).jacket) {
      answer.say(i, rigs::sentences({jacketSavingText(of, i), jacketVerdictText(of, i)}));
    } else if (any) {
      answer.say(i, Told(TOLD("Answer", "No jacket to compare: the plan gives it none.")));
    }
  }
  if (!any) {
    answer.say(Told(
        TOLD("Answer",
             "To compare one, give the plan a jacket, for example %1; \"%2\" shows what it may be "
             "made of."),
        Verbatim{R"("jacket_to_compare": {"side": [{"material": "cork", "thickness": "10 mm"}]})"},
        Verbatim{"heatledger list materials"}));
    return;
  }
  answer.heading(Told(TOLD("Answer", "What is compared")));
  for (std::size_t i = 0; i < of.count(); ++i) {
    if (!of.rig(i).jacket) continue;
    answer.say(
        i, Told(of.planned(i).hasJacket
                    ? Template<1>(TOLD("Answer",
                                       "As it is, with its jacket (%1), and as if it were "
                                       "bare."))
                    : Template<1>(TOLD("Answer", "As it is, bare, and as if it had a jacket: %1.")),
                jacketWords(of, i)));
  }
}

// Times to strike and from mash to boil that can be compared.
List heatUpSavings(const JacketEffect& effect) {
  List all{{}, Joint::Semicolon};
  const auto toBoil = rigs::timeToBoil(effect.bare);
  if (effect.savedToBoil && toBoil)
    all.items.emplace_back(savedToBoilText(*effect.savedToBoil, *toBoil));
  const auto toStrike = rigs::timeOf(effect.bare, StageKind::Strike);
  if (effect.savedToStrike && toStrike)
    all.items.emplace_back(savedToStrikeText(*effect.savedToStrike, *toStrike));
  return all;
}

// What is saved of heat-ups and from the wall; nothing where some of it is lost, or nothing can be
// compared.
List savedInBrief(const JacketEffect& effect) {
  const physics::Time none = physics::seconds(0.0);
  const auto toBoil = rigs::timeToBoil(effect.bare);
  const auto toStrike = rigs::timeOf(effect.bare, StageKind::Strike);
  const bool loses = (effect.savedToBoil && *effect.savedToBoil < none) ||
                     (effect.savedToStrike && *effect.savedToStrike < none) ||
                     (effect.savedFromWall && *effect.savedFromWall < physics::joules(0.0));
  List all{{}, Joint::Comma};
  if (loses) return all;
  if (effect.savedToBoil && toBoil)
    all.items.emplace_back(Told(TOLD("Answer", "%1 of %2 from mash to boil"),
                                roughly(*effect.savedToBoil), roughly(*toBoil)));
  if (effect.savedToStrike && toStrike)
    all.items.emplace_back(Told(TOLD("Answer", "%1 of %2 to strike"),
                                roughly(*effect.savedToStrike), roughly(*toStrike)));
  if (effect.savedFromWall)
    all.items.emplace_back(amount(*effect.savedFromWall, {.significantDigits = 2, .decimals = {}}));
  return all;
}

}  // namespace

Told jacketSavingText(const Case& of, std::size_t i) {
  const JacketEffect& effect = effectOf(of, i);
  List all = heatUpSavings(effect);
  all.items.emplace_back(savedAtBoilText(effect.atBoil));
  if (effect.savedFromWall) all.items.emplace_back(savedFromWallText(*effect.savedFromWall));
  const Told jacket = jacketInShort(of, i);
  return of.planned(i).hasJacket
             ? Told(TOLD("Answer", "Its jacket (%1): %2."), jacket, std::move(all))
             : Told(TOLD("Answer", "If it had %1: %2."), jacket, std::move(all));
}

Told comparedAndRule(const Told& jacket) {
  return Told(TOLD("Answer", "Compared: %1; over %2 is worth it."), jacket, theRule());
}

Told jacketInBrief(const Case& of, std::size_t i) {
  const JacketEffect& effect = effectOf(of, i);
  const List saved = savedInBrief(effect);
  const Told saving = saved.items.empty()       ? jacketSavingText(of, i)
                      : of.planned(i).hasJacket ? Told(TOLD("Answer", "It saves %1."), saved)
                                                : Told(TOLD("Answer", "It would save %1."), saved);
  if (rigs::isOnTheEdge(effect))
    return rigs::sentences({saving, onTheEdgeText(effect, false), stillStops(effect)});
  if (effect.verdict != JacketVerdict::Worthwhile)
    return rigs::sentences({saving, jacketVerdictText(of, i)});
  return rigs::sentences({saving, worthItText(effect, false), stillStops(effect)});
}

Told jacketVerdictText(const Case& of, std::size_t i) {
  const JacketEffect& effect = effectOf(of, i);
  if (rigs::isOnTheEdge(effect)) {
    const bool holds = effect.verdict == JacketVerdict::TimeNotWorthIt;
    return rigs::sentences(
        {onTheEdgeText(effect, true), holds ? heldText(effect) : Told(), stillStops(effect)});
  }
  switch (effect.verdict) {
    case JacketVerdict::MakesItBoil:
      if (!effect.bare.levelsOff)
        return Told(
            TOLD("Answer", "It makes the boil possible: bare, the day does not come to its end."));
      return Told(TOLD("Answer", "It makes the boil possible: bare, the wort levels off at %1."),
                  amount(effect.bare.levelsOff->at));
    case JacketVerdict::GetsFurther:
      return getsFurtherText(effect);
    case JacketVerdict::Worthwhile:
      return rigs::sentences({worthItText(effect, true), stillStops(effect)});
    case JacketVerdict::TimeNotWorthIt:
      return rigs::sentences({timeNotWorthItText(reasons(of.planned(i), effect)), heldText(effect),
                              stillStops(effect)});
    case JacketVerdict::NotWorthIt:
      return rigs::sentences({notWorthItText(reasons(of.planned(i), effect)), stillStops(effect)});
  }
  return {};
}

Answer worthJacket(const Case& of) {
  Answer answer;
  answer.sentences = jacketInShort(of);
  bool any = false;
  for (std::size_t i = 0; i < of.count(); ++i) any = any || of.rig(i).jacket.has_value();
  tellEachRig(answer, of, any);
  answer.show(jacketTable(of));
  answer.pictures = jacketPictures(of);
  return answer;
}

}  // namespace gui::telling
