// SPDX-License-Identifier: GPL-3.0-or-later
// Insulation and kettles that do not boil: the sentences with an "if" in them.
#include <fmt/format.h>

#include "gui/wording.hpp"

namespace gui {
namespace {

using rigs::format;

std::string percent(double share) {
  return format(share, UnitSystem::SI, {.significantDigits = 2, .decimals = {}});
}

std::string joined(const std::vector<std::string>& parts) {
  std::string text;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (i > 0) text += i + 1 < parts.size() ? ", " : parts.size() > 2 ? ", and " : " and ";
    text += parts[i];
  }
  return text;
}

// "4 min 5 s of 30 min saved from mash to boil", "5 s longer than 30 min from mash to boil"
std::string saving(physics::Time saved, const std::optional<physics::Time>& of,
                   std::string_view where) {
  const std::string bare = of ? roughTime(*of) : std::string();
  if (saved < physics::seconds(0.0)) {
    return fmt::format("{} longer{} {}", roughTime(-saved), of ? " than " + bare : bare, where);
  }
  return fmt::format("{}{} saved {}", roughTime(saved), of ? " of " + bare : bare, where);
}

std::string lessOrMore(bool less, const std::string& amount, std::string_view what) {
  return fmt::format("{} {} {}", amount, less ? "less" : "more", what);
}

// Where a day that levels off comes to its end.
std::string_view whereItStops(const physics::BrewDay& day) {
  switch (day.outcome) {
    case physics::Outcome::DoesNotReachStrike:
      return "on the way to strike";
    case physics::Outcome::DoesNotReachRest:
      return "on the way to the next rest";
    default:
      return day.startsBoiling() ? "in the boil" : "on the way to the boil";
  }
}

// What a jacket that is worth something does not change.
std::string stillStops(const physics::JacketEffect& effect, UnitSystem units) {
  if (!effect.jacketed.levelsOff) return {};
  const std::string at = format(effect.jacketed.levelsOff->at, units);
  if (effect.jacketed.startsBoiling())
    return fmt::format(" It still cannot hold the boil: it falls back to {}.", at);
  return fmt::format(" It still does not boil: it stops at {} {}.", at,
                     whereItStops(effect.jacketed));
}

// "brushed metal", "metal of emissivity 0.16", "bare metal"
std::string metalText(const std::string& finish) {
  if (finish.empty()) return "bare metal";
  return finish.starts_with("emissivity") ? "metal of " + finish : finish + " metal";
}

// One sentence's worth, without its full stop.
std::string reasons(const rigs::RigPlan& plan, const physics::JacketEffect& effect) {
  std::vector<std::string> all;
  const physics::JacketReasons& why = effect.reasons;
  if (why.strongElementHidesLosses) {
    all.push_back(fmt::format("the bare side loses only {} of the element's {}",
                              wattsText(effect.atBoil.bareSide),
                              wattsText(effect.bare.electrical.delivered)));
  }
  if (why.skinRadiatesMore) {
    const std::string outside =
        plan.skin.empty() ? "its outside" : "its outside (" + plan.skin + ")";
    const std::string metal = metalText(plan.finish);
    const double share = effect.atBoil.sideShareSaved();
    all.push_back(share < 0.0
                      ? fmt::format("with the jacket the side loses more than without, for {} "
                                    "radiates more than {}",
                                    outside, metal)
                      : fmt::format("the jacket saves only {} of what the side loses, for {} "
                                    "radiates more than {}",
                                    percent(share), outside, metal));
  }
  if (why.surfaceDominates) {
    all.push_back(fmt::format("of the {} lost at the boil most leaves by the open surface",
                              wattsText(effect.atBoil.bare)));
  }
  std::string text;
  for (std::size_t i = 0; i < all.size(); ++i)
    text += (i == 0 ? "" : i + 1 == all.size() ? "; and " : "; ") + all[i];
  return text;
}

}  // namespace

std::string jacketSavingText(const rigs::RigPlan&, const physics::JacketEffect& effect,
                             UnitSystem units) {
  const auto bare = [&](physics::StageKind kind) { return rigs::timeOf(effect.bare, kind); };
  std::vector<std::string> parts;
  if (effect.savedToBoil) {
    parts.push_back(
        saving(*effect.savedToBoil, bare(physics::StageKind::HeatingToBoil), "from mash to boil"));
  }
  if (effect.savedToStrike) {
    parts.push_back(saving(*effect.savedToStrike, bare(physics::StageKind::Strike), "to strike"));
  }
  std::string text = parts.empty() ? "" : joined(parts) + "; ";
  text += lessOrMore(effect.atBoil.saved() >= physics::watts(0.0),
                     wattsText(abs(effect.atBoil.saved())), "lost") +
          " at " + format(effect.atBoil.at, units);
  if (effect.savedFromWall) {
    text += "; " + lessOrMore(*effect.savedFromWall >= physics::joules(0.0),
                              format(physics::Energy(abs(*effect.savedFromWall)), units),
                              "from the wall");
  }
  return text + '.';
}

std::string jacketVerdictText(const rigs::RigPlan& plan, const physics::JacketEffect& effect,
                              UnitSystem units) {
  const std::string why = reasons(plan, effect);
  const std::string because = why.empty() ? "." : ": " + why + '.';
  switch (effect.verdict) {
    case physics::JacketVerdict::MakesItBoil:
      return "It makes the boil possible: bare, the wort levels off" +
             (effect.bare.levelsOff ? " at " + format(effect.bare.levelsOff->at, units)
                                    : std::string()) +
             '.';
    case physics::JacketVerdict::GetsFurther: {
      const auto strike = rigs::timeOf(effect.bare, physics::StageKind::Strike)
                              ? std::nullopt
                              : rigs::timeOf(effect.jacketed, physics::StageKind::Strike);
      return fmt::format(
          "It gets further: bare, it stops at {} {}; with the jacket {}it stops at {} {}.",
          format(effect.bare.levelsOff->at, units), whereItStops(effect.bare),
          strike ? fmt::format("it reaches strike in {}, and ", roughTime(*strike)) : std::string(),
          format(effect.jacketed.levelsOff->at, units), whereItStops(effect.jacketed));
    }
    case physics::JacketVerdict::Worthwhile: {
      const auto share = rigs::shareOfHeatingSaved(effect);
      std::string text = share ? fmt::format("Worth it: {} of that time.", percent(*share))
                               : std::string("Worth it for the time to strike.");
      return text + stillStops(effect, units);
    }
    case physics::JacketVerdict::TimeNotWorthIt:
      return fmt::format("Not worth it for the time{} But {} instead of {} after {} unplugged.{}",
                         because, format(effect.jacketedAfter, units),
                         format(effect.bareAfter, units), roughTime(effect.alone),
                         stillStops(effect, units));
    case physics::JacketVerdict::NotWorthIt:
      return "Not worth it" + because + stillStops(effect, units);
  }
  return {};
}

std::vector<std::string> whatWouldBoilTexts(const rigs::Plan& whole, const rigs::RigPlan& plan,
                                            const rigs::RigAnswer& rig, UnitSystem units) {
  std::vector<std::string> texts;
  if (!rig.whatWouldBoil) return texts;
  const physics::WhatWouldBoil& what = *rig.whatWouldBoil;
  if (what.power) {
    const physics::PowerAnswer wanted{.power = what.power};
    const std::string element = elementToBuyText(plan, wanted, units);
    texts.push_back(fmt::format("{} into the vessel is the least that boils it{}. {}",
                                wattsText(*what.power), element.empty() ? "" : ": " + element,
                                carriesText(whole, plan, wanted)));
  } else {
    texts.emplace_back("No element would boil it.");
  }
  if (what.openFraction) {
    texts.push_back(fmt::format(
        "{} of the mouth open at most would boil it: a lid that far over the kettle, but never "
        "shut.",
        percent(*what.openFraction)));
  } else if (what.levelWithLid) {
    texts.push_back(fmt::format("{} is the most a lid gives it, even over the whole mouth.",
                                format(*what.levelWithLid, units)));
  }
  const std::string jacket = plan.jacket.in(units);
  if (what.jacketBoils) {
    texts.push_back("A jacket would boil it: " + jacket + '.');
  } else if (what.levelWithJacket) {
    texts.push_back(fmt::format("{} with a jacket ({}): not enough.",
                                format(*what.levelWithJacket, units), jacket));
  }
  return texts;
}

}  // namespace gui
