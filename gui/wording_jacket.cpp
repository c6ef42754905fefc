// SPDX-License-Identifier: GPL-3.0-or-later
// Insulation and kettles that do not boil: the sentences with an "if" in them.
#include <fmt/format.h>

#include "gui/wording.hpp"

namespace gui {
namespace {

using rigs::format;

std::string watts(const physics::Power& p) {
  return format(p, UnitSystem::SI, {.significantDigits = 4, .decimals = {}});
}

std::string percent(double share) {
  return format(share, UnitSystem::SI, {.significantDigits = 2, .decimals = {}});
}

std::string joined(const std::vector<std::string>& parts) {
  std::string text;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (i > 0) text += i + 1 == parts.size() ? ", and " : ", ";
    text += parts[i];
  }
  return text;
}

std::string difference(physics::Time saved, std::string_view sooner, std::string_view later) {
  if (saved < physics::seconds(0.0)) return roughTime(-saved) + ' ' + std::string(later);
  return roughTime(saved) + ' ' + std::string(sooner);
}

std::vector<std::string> reasons(const rigs::RigPlan& plan, const physics::JacketEffect& effect) {
  std::vector<std::string> all;
  const physics::JacketReasons& why = effect.reasons;
  if (why.strongElementHidesLosses) {
    all.push_back(fmt::format("the bare side loses only {} of the element's {}",
                              watts(effect.atBoil.bareSide),
                              watts(effect.bare.electrical.delivered)));
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
                              watts(effect.atBoil.bare)));
  }
  return all;
}

}  // namespace

std::string jacketSavingText(const rigs::RigPlan&, const physics::JacketEffect& effect,
                             UnitSystem units) {
  std::string text;
  if (effect.savedToBoil) {
    const auto bare = rigs::timeOf(effect.bare, physics::StageKind::HeatingToBoil);
    text = difference(*effect.savedToBoil, "sooner at the boil", "later at the boil");
    if (bare) text += fmt::format(" (bare: {})", roughTime(*bare));
    if (effect.savedToStrike) {
      text += ", " + difference(*effect.savedToStrike, "sooner at strike", "later at strike");
    }
    text += "; ";
  } else if (effect.savedToStrike) {
    text = difference(*effect.savedToStrike, "sooner at strike", "later at strike") + "; ";
  }
  return text + fmt::format("{} less lost at {}.", watts(effect.atBoil.saved()),
                            format(effect.atBoil.at, units));
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
      return share ? fmt::format("Worth it: {} of the time to the boil.", percent(*share))
                   : std::string("Worth it.");
    }
    case physics::JacketVerdict::TimeNotWorthIt:
      return fmt::format(
          "Not worth it for the time{} What it does: {} less from the wall, and {} instead of {} "
          "after {} unplugged.",
          because, format(effect.savedFromWall, units), format(effect.jacketedAfter, units),
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
    texts.push_back(fmt::format("{} into the vessel would boil it{}.", watts(*what.power),
                                element.empty() ? "" : ": " + element));
  } else {
    texts.emplace_back("No element would boil it.");
  }
  if (what.openFraction) {
    texts.push_back(fmt::format(
        "{} of the mouth open, and no more, would boil it: a lid partly over the kettle, never "
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
