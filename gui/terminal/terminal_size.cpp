// SPDX-License-Identifier: GPL-3.0-or-later
// What element, what circuit, how large a batch?
#include <fmt/format.h>

#include "gui/terminal/rig_rows.hpp"
#include "gui/terminal/rig_table.hpp"
#include "gui/terminal/terminal.hpp"
#include "rigs/results/cautions.hpp"

namespace gui {
namespace {

using rigs::format;
using rigs::RigAnswer;
using rigs::RigPlan;

void addWish(RigTable& table, const rigs::Plan& whole, const std::string& label,
             physics::PowerAnswer rigs::SizingAnswer::*wish) {
  table.heading(label);
  table.quantity("heat into the vessel", [wish](const RigPlan&, const RigAnswer& rig) {
    return ((*rig.sizing).*wish).power;
  });
  table.quantity("element rated at the supply", [wish](const RigPlan& plan, const RigAnswer& rig) {
    const auto element = rigs::elementFor(plan.rig, (*rig.sizing).*wish);
    return element ? std::optional(element->rating) : std::nullopt;
  });
  table.words("the circuit carries it", [&whole, wish](const RigPlan& plan, const RigAnswer& rig) {
    const physics::PowerAnswer& answer = (*rig.sizing).*wish;
    if (answer.power) {
      const rigs::Carries carried = rigs::carries(whole, plan, answer);
      return carried == rigs::Carries::ForShortUseOnly ? std::string("short use")
                                                       : std::string(rigs::carriesWord(carried));
    }
    if (answer.stoppedBy == physics::Limit::None) return std::string();  // nothing was asked
    return std::string("no power does");
  });
}

}  // namespace

Page sizePage(const rigs::Plan& plan, const rigs::Answers& answers, UnitSystem units) {
  Page page = startPage(plan, units);
  page.cautions = rigs::cautionTexts(rigs::About::Sizing, plan, answers, units);
  page.heading("What does the element really deliver?");
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const physics::ElectricalLoad& load = answers.rigs[i].sizing->asIs;
    std::string text = elementText(plan.rigs[i], load, units);
    text += ' ';
    const auto feeds = rigs::feedsOf(plan.rigs[i].rig);
    for (std::size_t k = 0; k < feeds.size(); ++k) {
      text += fmt::format(
          "{}{} flow through {}", k == 0 ? "" : " and ",
          format(physics::electricalLoad(feeds[k].element, feeds[k].supply).current, units),
          format(physics::resistance(feeds[k].element), units));
    }
    text += load.inCable > physics::watts(0.0)
                ? fmt::format("; {} stay in the cable.", wattsText(load.inCable))
                : ".";
    page.say(letter(i), besideCircuit(plan, plan.rigs[i], text));
  }

  page.heading("What would it take?");
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    page.say(letter(i), enoughText(plan, plan.rigs[i], answers.rigs[i], units) + ' ' +
                            largestText(answers.rigs[i].sizing->largest, plan.goals, units));
    const std::string unfinished = unfinishedText(plan.rigs[i], answers.rigs[i].day, units);
    if (!unfinished.empty()) page.say("   ", unfinished);
    for (const std::string& one : whatWouldBoilTexts(plan, plan.rigs[i], answers.rigs[i], units)) {
      page.say("   ", one);
    }
  }

  RigTable t("size", plan, answers, units);
  t.heading("Now");
  t.quantity("element rated",
             [](const RigPlan& rig, const RigAnswer&) { return rig.rig.element.rating; });
  t.quantity(
      "rated at", [](const RigPlan& rig, const RigAnswer&) { return rig.rig.element.ratedAt; }, 0);
  t.quantity("resistance", [](const RigPlan& rig, const RigAnswer&) {
    return physics::resistance(rig.rig.element);
  });
  t.quantity(
      "supply", [](const RigPlan& rig, const RigAnswer&) { return rig.rig.supply.nominal; }, 0);
  t.quantity("circuit", [](const RigPlan& rig, const RigAnswer&) { return rig.rig.supply.rating; });
  t.quantity("current",
             [](const RigPlan&, const RigAnswer& rig) { return rig.sizing->asIs.current; });
  addSecondCircuit(t);
  t.quantity("at the element's terminals",
             [](const RigPlan&, const RigAnswer& rig) { return rig.sizing->asIs.atTerminals; });
  t.quantity("reaches the vessel",
             [](const RigPlan&, const RigAnswer& rig) { return rig.sizing->asIs.delivered; });
  t.quantity("lost in the cable",
             [](const RigPlan&, const RigAnswer& rig) { return rig.sizing->asIs.inCable; });
  t.quantity("most on this circuit",
             [](const RigPlan&, const RigAnswer& rig) { return rig.sizing->mostOnCircuit; });
  addWish(t, plan, "To boil at all", &rigs::SizingAnswer::toBoilAtAll);
  addWish(t, plan, "To strike within " + roughTime(plan.goals.boilWithin),
          &rigs::SizingAnswer::toStrikeWithin);
  addWish(t, plan, "From mash to boil within " + roughTime(plan.goals.boilWithin),
          &rigs::SizingAnswer::toBoilWithin);
  addWish(t, plan, "To boil off " + format(rigs::perHour(plan.goals.boilOffPerHour), units),
          &rigs::SizingAnswer::forBoilOff);
  t.heading(fmt::format("Largest batch, {} and {} of the vessel free",
                        format(rigs::perHour(plan.goals.boilOffPerHour), units),
                        format(plan.goals.headspace, units)));
  t.quantity("this element",
             [](const RigPlan&, const RigAnswer& rig) { return rig.sizing->largest.wort; });
  t.words("stopped by", [](const RigPlan&, const RigAnswer& rig) {
    return limitWord(rig.sizing->largest.stoppedBy);
  });
  t.quantity("circuit's strongest element", [](const RigPlan&, const RigAnswer& rig) {
    return rig.sizing->largestOnCircuit.wort;
  });
  t.words("stopped by", [](const RigPlan&, const RigAnswer& rig) {
    return limitWord(rig.sizing->largestOnCircuit.stoppedBy);
  });
  page.show(t.take());
  return page;
}

}  // namespace gui
