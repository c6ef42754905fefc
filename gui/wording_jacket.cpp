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

std::vector<std::string> reasons(const rigs::RigPlan& plan, const physics::JacketEffect& effect) {
  std::vector<std::string> all;
  const physics::JacketReasons& why = effect.reasons;
  if (why.strongElementHidesLosses) {
    all.push_back(fmt::format("the bare side loses only {} of the element's {}",
                              wattsText(effect.atBoil.bareSide),
                              wattsText(effect.bare.electrical.delivered)));
  }
  if (why.skinRadiatesMore) {
    std::string text =
        fmt::format("the jacket saves only {} of that", percent(effect.atBoil.sideShareSaved()));
    if (effect.atBoil.sideShareSaved() < 0.0) text = "the jacket loses more than the bare metal";
    text += plan.skin.empty() ? ", its outside radiating more than metal"
                              : fmt::format(", its outside ({}) radiating more than {} metal",
                                            plan.skin, plan.finish.empty() ? "bare" : plan.finish);
    all.push_back(text);
  }
  if (why.surfaceDominates) {
    all.push_back(fmt::format("most of the {} lost at the boil leaves by the open surface",
                              wattsText(effect.atBoil.bare)));
  }
  return all;
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
  return text +
         lessOrMore(effect.atBoil.saved() >= physics::watts(0.0),
                    wattsText(abs(effect.atBoil.saved())), "lost") +
         " at " + format(effect.atBoil.at, units) + "; " +
         lessOrMore(effect.savedFromWall >= physics::joules(0.0),
                    format(physics::Energy(abs(effect.savedFromWall)), units), "from the wall") +
         '.';
}

std::string jacketVerdictText(const rigs::RigPlan& plan, const physics::JacketEffect& effect,
                              UnitSystem units) {
  const std::vector<std::string> why = reasons(plan, effect);
  const std::string because = why.empty() ? "." : ": " + joined(why) + '.';
  switch (effect.verdict) {
    case physics::JacketVerdict::MakesItBoil:
      return "It makes the boil possible: bare, the wort levels off" +
             (effect.bare.levelsOff ? " at " + format(effect.bare.levelsOff->at, units)
                                    : std::string()) +
             '.';
    case physics::JacketVerdict::Worthwhile: {
      const auto share = rigs::shareOfHeatingSaved(effect);
      std::string text = share ? fmt::format("Worth it: {} of that time.", percent(*share))
                               : std::string("Worth it for the time to strike.");
      if (effect.jacketed.outcome == physics::Outcome::DoesNotBoil)
        text += " It still does not boil.";
      return text;
    }
    case physics::JacketVerdict::TimeNotWorthIt:
      return fmt::format("Not worth it for the time{} But {} instead of {} after {} unplugged.",
                         because, format(effect.jacketedAfter, units),
                         format(effect.bareAfter, units), roughTime(effect.alone));
    case physics::JacketVerdict::NotWorthIt:
      return "Not worth it" + because;
  }
  return {};
}

std::vector<std::string> whatWouldBoilTexts(const rigs::RigPlan& plan, const rigs::RigAnswer& rig,
                                            UnitSystem units) {
  std::vector<std::string> texts;
  if (!rig.whatWouldBoil) return texts;
  const physics::WhatWouldBoil& what = *rig.whatWouldBoil;
  if (what.power) {
    const physics::PowerAnswer wanted{.power = what.power};
    const std::string element = elementToBuyText(plan, wanted, units);
    texts.push_back(fmt::format("{} into the vessel would boil it{}.", wattsText(*what.power),
                                element.empty() ? "" : ": " + element));
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
  if (rig.jacket && !plan.hasJacket) {
    const physics::BrewDay& jacketed = rig.jacket->jacketed;
    if (jacketed.outcome == physics::Outcome::Done) {
      texts.push_back("A jacket would boil it" +
                      (plan.jacket.empty() ? std::string(".") : ": " + plan.jacket + '.'));
    } else if (jacketed.levelsOff) {
      texts.push_back(fmt::format("{} with a jacket{}: not enough.",
                                  format(jacketed.levelsOff->at, units),
                                  plan.jacket.empty() ? "" : " (" + plan.jacket + ")"));
    }
  }
  return texts;
}

}  // namespace gui
