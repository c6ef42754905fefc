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
      return day.find(StageKind::Boil) ? Stop::Boil : Stop::WayToBoil;
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
      return Told(TOLD("Answer", "bare, it stops at %1 in the boil"), at);
    case Stop::WayToBoil:
      return Told(TOLD("Answer", "bare, it stops at %1 on the way to the boil"), at);
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
      return Told(TOLD("Answer", "with the jacket it stops at %1 in the boil"), at);
    case Stop::WayToBoil:
      return Told(TOLD("Answer", "with the jacket it stops at %1 on the way to the boil"), at);
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
      return Told(
          TOLD("Answer", "with the jacket it reaches strike in %2, and stops at %1 in the boil"),
          at, in);
    case Stop::WayToBoil:
      return Told(TOLD("Answer",
                       "with the jacket it reaches strike in %2, and stops at %1 on the way to "
                       "the boil"),
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
      return Told(TOLD("Answer", "It still does not boil: it stops at %1 on the way to the boil."),
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

Told notWorthItText(const List& why) {
  return why.items.empty() ? Told(TOLD("Answer", "Not worth it."))
                           : Told(TOLD("Answer", "Not worth it: %1."), why);
}

Told timeNotWorthItText(const List& why) {
  return why.items.empty() ? Told(TOLD("Answer", "Not worth it for the time."))
                           : Told(TOLD("Answer", "Not worth it for the time: %1."), why);
}

// --- The answer in short.

Told savingText(const Case& of, std::size_t i) {
  const JacketEffect& effect = effectOf(of, i);
  const Verbatim named = of.named(i);
  if (effect.verdict == JacketVerdict::MakesItBoil)
    return Told(TOLD("Answer", "%1 only boils with its jacket."), named);
  // A day that stops where it levels off saves nothing that could be compared.
  if (!effect.savedFromWall || !effect.savedToBoil) {
    if (!effect.jacketed.levelsOff)
      return Told(TOLD("Answer", "Nothing can be compared for %1."), named);
    return Told(TOLD("Answer", "%1 is as far as %2 gets with a jacket: it still does not boil."),
                amount(effect.jacketed.levelsOff->at), named);
  }
  // What loses more time and energy than it saves is told as what it costs.
  const bool costs = effect.verdict == JacketVerdict::NotWorthIt &&
                     *effect.savedToBoil < physics::seconds(0.0) &&
                     *effect.savedFromWall < physics::joules(0.0);
  const double sign = costs ? -1.0 : 1.0;
  const auto cost = rigs::moneySaved(effect.bare, effect.jacketed, of.plan);
  const Argument saved = cost ? Argument(rigs::Money{sign * *cost, of.plan.tariff.currency})
                              : Argument(amount(sign * *effect.savedFromWall));
  const auto tell = [&](const Template<3>& text) {
    return Told(text, roughly(sign * *effect.savedToBoil), saved, named);
  };
  switch (effect.verdict) {
    case JacketVerdict::MakesItBoil:
    case JacketVerdict::GetsFurther:
    case JacketVerdict::Worthwhile:
      return tell(TOLD("Answer",
                       "%1 from mash to boil and %2 a batch is what a jacket saves with %3: "
                       "worth it."));
    case JacketVerdict::TimeNotWorthIt:
      return tell(TOLD("Answer",
                       "%1 from mash to boil and %2 a batch is what a jacket saves with %3: "
                       "not worth it for the time, but for the heat it holds."));
    case JacketVerdict::NotWorthIt:
      if (costs)
        return tell(TOLD("Answer",
                         "%1 more from mash to boil and %2 more a batch is what a jacket costs "
                         "with %3: not worth it."));
      return tell(TOLD("Answer",
                       "%1 from mash to boil and %2 a batch is what a jacket saves with %3: "
                       "not worth it."));
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
  if (e.counted == 0) return {Told(TOLD("Answer", "No rig of this plan has a jacket to compare."))};
  std::vector<Told> told{savingText(of, e.most)};
  if (e.least != e.most) told.push_back(savingText(of, e.least));
  return told;
}

// --- The table.

// A figure of the comparison, for rigs that have one.
template <class Figure>
auto ofJacket(const Case& of, const Figure& figure) {
  return [&of, figure](std::size_t i) -> Cell {
    return of.rig(i).jacket ? cellOf(figure(*of.rig(i).jacket)) : std::nullopt;
  };
}

Told without() { return Told(TOLD("Answer", "without jacket")); }
Told with() { return Told(TOLD("Answer", "with jacket")); }
Told saved() { return Told(TOLD("Answer", "saved")); }

void addTimes(RigTable& t, const Case& of, StageKind kind,
              std::optional<physics::Time> JacketEffect::*difference, const std::string& result) {
  t.row(without(), ofJacket(of, [=](const JacketEffect& e) {
          return hoursAndMinutes(rigs::timeOf(e.bare, kind));
        }));
  t.row(with(), ofJacket(of, [=](const JacketEffect& e) {
          return hoursAndMinutes(rigs::timeOf(e.jacketed, kind));
        }));
  t.row(saved(), ofJacket(of, [=](const JacketEffect& e) { return e.*difference; }),
        {.result = result});
}

void addLosses(RigTable& t, const Case& of, physics::LossPair JacketEffect::*pair,
               const std::string& result) {
  t.row(Told(TOLD("Answer", "wort")),
        ofJacket(of, [=](const JacketEffect& e) { return (e.*pair).at; }),
        {.result = result + "/at_C"});
  t.row(without(), ofJacket(of, [=](const JacketEffect& e) { return (e.*pair).bare; }),
        {.result = result + "/bare_W"});
  t.row(with(), ofJacket(of, [=](const JacketEffect& e) { return (e.*pair).jacketed; }),
        {.result = result + "/jacketed_W"});
  t.row(saved(), ofJacket(of, [=](const JacketEffect& e) { return (e.*pair).saved(); }),
        {.result = result + "/saved_W"});
  t.row(Told(TOLD("Answer", "saved of the side's own loss")),
        ofJacket(of,
                 [=](const JacketEffect& e) -> std::optional<double> {
                   const physics::LossPair& losses = e.*pair;
                   if (!(losses.bareSide > physics::watts(0.0))) return std::nullopt;
                   return losses.sideShareSaved();
                 }),
        {.decimals = 0, .result = result + "/share_of_side_saved"});
}

void addBoilOff(RigTable& t, const Case& of) {
  const auto rate = [](physics::BrewDay JacketEffect::*which) {
    return [which](const JacketEffect& e) {
      const auto& boil = (e.*which).boil;
      return boil ? std::optional(rigs::boilOffRate(*boil)) : std::nullopt;
    };
  };
  t.heading(Told(TOLD("Answer", "Boil-off")));
  t.row(without(), ofJacket(of, rate(&JacketEffect::bare)),
        {.result = "/jacket/bare/boil/share_of_pre_boil_per_h"});
  t.row(with(), ofJacket(of, rate(&JacketEffect::jacketed)),
        {.result = "/jacket/jacketed/boil/share_of_pre_boil_per_h"});
}

void addEnergy(RigTable& t, const Case& of) {
  t.heading(Told(TOLD("Answer", "From the wall, whole day")));
  t.row(without(), ofJacket(of, [](const JacketEffect& e) { return e.bare.total.fromWall(); }),
        {.result = "/jacket/bare/total/from_wall_kWh"});
  t.row(with(), ofJacket(of, [](const JacketEffect& e) { return e.jacketed.total.fromWall(); }),
        {.result = "/jacket/jacketed/total/from_wall_kWh"});
  t.row(saved(), ofJacket(of, [](const JacketEffect& e) { return e.savedFromWall; }),
        {.decimals = 3, .result = "/jacket/saved_from_wall_kWh"});
}

void addCosts(RigTable& t, const Case& of) {
  const std::string& currency = of.plan.tariff.currency;
  if (currency.empty()) return;
  const auto cost = [&](physics::BrewDay JacketEffect::*which) {
    return ofJacket(of, [&of, which](const JacketEffect& e) {
      const rigs::JacketDay day = rigs::jacketDay(e.*which, of.plan);
      return numberCell(day.done ? day.cost : std::nullopt, 2);
    });
  };
  t.heading(Told(TOLD("Answer", "Cost of a batch")));
  t.row(without(), cost(&JacketEffect::bare), {.unit = currency});
  t.row(with(), cost(&JacketEffect::jacketed), {.unit = currency});
  t.row(saved(),
        ofJacket(of,
                 [&](const JacketEffect& e) {
                   return numberCell(rigs::moneySaved(e.bare, e.jacketed, of.plan), 3);
                 }),
        {.unit = currency, .result = "/jacket/saved_cost"});
}

Table jacketTable(const Case& of) {
  RigTable t("insulate", of);
  t.heading(Told(TOLD("Answer", "To strike")));
  addTimes(t, of, StageKind::Strike, &JacketEffect::savedToStrike, "/jacket/saved_to_strike_s");
  t.heading(Told(TOLD("Answer", "From mash to boil")));
  addTimes(t, of, StageKind::HeatingToBoil, &JacketEffect::savedToBoil, "/jacket/saved_to_boil_s");
  addEnergy(t, of);
  addCosts(t, of);
  t.heading(Told(TOLD("Answer", "Losses at the mash temperature")));
  addLosses(t, of, &JacketEffect::atMash, "/jacket/at_mash");
  t.heading(Told(TOLD("Answer", "Losses at the boil")));
  addLosses(t, of, &JacketEffect::atBoil, "/jacket/at_boil");
  addBoilOff(t, of);
  return t.take();
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
    answer.say(i, Told(of.planned(i).hasJacket
                           ? Template<1>(TOLD("Answer", "Bare, and with the jacket it has: %1."))
                           : Template<1>(TOLD("Answer", "As it is, and with a jacket: %1.")),
                       jacketWords(of, i)));
  }
}

}  // namespace

Told jacketWords(const Case& of, std::size_t i) {
  return jacketWords(of.planned(i).jacket, of.reader);
}

Told jacketWords(const rigs::JacketText& jacket, const rigs::Reader& reader) {
  List faces{{}, Joint::Semicolon};
  for (const rigs::FaceText& face : jacket.faces) {
    List layers{{}, Joint::Plus};
    for (const rigs::LayerText& layer : face.layers) {
      // An author's own words may stand here, so that this is told for the reader.
      const Verbatim thick{
          rigs::withDecimalSign(rigs::amountIn(layer, reader.units), *reader.language)};
      layers.items.emplace_back(List{{thick, rigs::Bundled{"Catalogue", layer.material}}});
    }
    faces.items.emplace_back(List{{rigs::Bundled{"Catalogue", face.where}, std::move(layers)}});
  }
  return Told::just(std::move(faces));
}

Told jacketSavingText(const Case& of, std::size_t i) {
  const JacketEffect& effect = effectOf(of, i);
  const auto bare = [&](StageKind kind) { return rigs::timeOf(effect.bare, kind); };
  List all{{}, Joint::Semicolon};
  const auto toBoil = bare(StageKind::HeatingToBoil);
  if (effect.savedToBoil && toBoil)
    all.items.emplace_back(savedToBoilText(*effect.savedToBoil, *toBoil));
  const auto toStrike = bare(StageKind::Strike);
  if (effect.savedToStrike && toStrike)
    all.items.emplace_back(savedToStrikeText(*effect.savedToStrike, *toStrike));
  all.items.emplace_back(savedAtBoilText(effect.atBoil));
  if (effect.savedFromWall) all.items.emplace_back(savedFromWallText(*effect.savedFromWall));
  return Told(TOLD("Answer", "%1."), std::move(all));
}

Told jacketVerdictText(const Case& of, std::size_t i) {
  const JacketEffect& effect = effectOf(of, i);
  switch (effect.verdict) {
    case JacketVerdict::MakesItBoil:
      if (!effect.bare.levelsOff)
        return Told(
            TOLD("Answer", "It makes the boil possible: bare, the day does not come to its end."));
      return Told(TOLD("Answer", "It makes the boil possible: bare, the wort levels off at %1."),
                  amount(effect.bare.levelsOff->at));
    case JacketVerdict::GetsFurther:
      return getsFurtherText(effect);
    case JacketVerdict::Worthwhile: {
      const auto share = rigs::shareOfHeatingSaved(effect);
      return rigs::sentences(
          {share ? Told(TOLD("Answer", "Worth it: %1 of the time from mash to boil."),
                        percent(*share))
                 : Told(TOLD("Answer", "Worth it for the time to strike.")),
           stillStops(effect)});
    }
    case JacketVerdict::TimeNotWorthIt:
      return rigs::sentences(
          {timeNotWorthItText(reasons(of.planned(i), effect)),
           Told(TOLD("Answer", "But %1 instead of %2 after %3 unplugged."),
                amount(effect.jacketedAfter), amount(effect.bareAfter), roughly(effect.alone)),
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
