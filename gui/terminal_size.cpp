// SPDX-License-Identifier: GPL-3.0-or-later
// What element, what circuit, how large a batch?
#include <fmt/format.h>

#include "gui/rig_table.hpp"
#include "gui/terminal.hpp"

namespace gui {
namespace {

using rigs::format;
using rigs::RigAnswer;
using rigs::RigPlan;

std::string largestText(const physics::BatchAnswer& largest, UnitSystem units) {
  if (!largest.wort) {
    return fmt::format("No batch works: {} stops it.", limitText(largest.stoppedBy));
  }
  return fmt::format("{} is the largest batch; {} stops it there.", format(*largest.wort, units),
                     limitText(largest.stoppedBy));
}

void addWish(RigTable& table, const std::string& label, UnitSystem units,
             physics::PowerAnswer rigs::SizingAnswer::*wish) {
  table.heading(label);
  table.quantity("heat into the vessel", [wish](const RigPlan&, const RigAnswer& rig) {
    return ((*rig.sizing).*wish).power;
  });
  table.quantity("element, rated at the supply", [wish](const RigPlan& plan, const RigAnswer& rig) {
    const auto element = rigs::elementFor(plan.rig, (*rig.sizing).*wish);
    return element ? std::optional(element->rating) : std::nullopt;
  });
  table.words("the circuit carries it", [wish](const RigPlan&, const RigAnswer& rig) {
    const physics::PowerAnswer& answer = (*rig.sizing).*wish;
    if (answer.power) return std::string(answer.onThisSupply ? "yes" : "no");
    if (answer.stoppedBy == physics::Limit::None) return std::string();  // nothing was asked
    return std::string("no power does");
  });
  (void)units;
}

}  // namespace

Page sizePage(const rigs::Plan& plan, const rigs::Answers& answers, UnitSystem units) {
  Page page = startPage(plan, units);
  page.heading("What does the element really deliver?");
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const physics::ElectricalLoad& load = answers.rigs[i].sizing->asIs;
    std::string text = elementText(plan.rigs[i], load, units);
    text += fmt::format(" {} flow through {}", format(load.current, units),
                        format(physics::resistance(plan.rigs[i].rig.element), units));
    text += load.inCable > physics::watts(0.0)
                ? fmt::format("; {} stay in the cable.", format(load.inCable, units))
                : ".";
    const std::string circuit = circuitText(plan.rigs[i], load, units);
    page.say(letter(i), circuit.empty() ? text : text + ' ' + circuit);
  }

  page.heading("What would it take?");
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const rigs::SizingAnswer& sizing = *answers.rigs[i].sizing;
    std::string text;
    const std::string element = elementToBuyText(plan.rigs[i], sizing.toBoilWithin, units);
    if (!element.empty()) {
      text = fmt::format("{} brings it to the boil within {}; the circuit {}.", sentence(element),
                         roughTime(plan.goals.boilWithin),
                         sizing.toBoilWithin.onThisSupply ? "carries that" : "does not carry that");
    } else if (!sizing.toBoilWithin.power) {
      text =
          fmt::format("No element up to {} brings it to the boil within {}.",
                      format(physics::kStrongestElement, units), roughTime(plan.goals.boilWithin));
    } else {
      text =
          fmt::format("{} would bring it to the boil within {}, more than its cable can carry.",
                      format(*sizing.toBoilWithin.power, units), roughTime(plan.goals.boilWithin));
    }
    page.say(letter(i), text + ' ' + largestText(sizing.largest, units));
    const std::string unfinished = unfinishedText(plan.rigs[i], answers.rigs[i].day, units);
    if (!unfinished.empty()) page.say("   ", unfinished);
    for (const std::string& one : whatWouldBoilTexts(plan.rigs[i], answers.rigs[i], units)) {
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
  t.quantity("at the element's terminals",
             [](const RigPlan&, const RigAnswer& rig) { return rig.sizing->asIs.atTerminals; });
  t.quantity("reaches the vessel",
             [](const RigPlan&, const RigAnswer& rig) { return rig.sizing->asIs.delivered; });
  t.quantity("lost in the cable",
             [](const RigPlan&, const RigAnswer& rig) { return rig.sizing->asIs.inCable; });
  t.quantity("most this circuit can heat with",
             [](const RigPlan&, const RigAnswer& rig) { return rig.sizing->mostOnCircuit; });
  addWish(t, "To boil at all", units, &rigs::SizingAnswer::toBoilAtAll);
  addWish(t, "To strike within " + roughTime(plan.goals.boilWithin), units,
          &rigs::SizingAnswer::toStrikeWithin);
  addWish(t, "From mash to boil within " + roughTime(plan.goals.boilWithin), units,
          &rigs::SizingAnswer::toBoilWithin);
  addWish(t, "To boil off " + format(rigs::perHour(plan.goals.boilOffPerHour), units), units,
          &rigs::SizingAnswer::forBoilOff);
  t.heading(fmt::format("Largest batch, {} and {} of the vessel free",
                        format(rigs::perHour(plan.goals.boilOffPerHour), units),
                        format(plan.goals.headspace, units)));
  t.quantity("with this element",
             [](const RigPlan&, const RigAnswer& rig) { return rig.sizing->largest.wort; });
  t.words("stopped by", [](const RigPlan&, const RigAnswer& rig) {
    return limitText(rig.sizing->largest.stoppedBy);
  });
  t.quantity("with the circuit's strongest", [](const RigPlan&, const RigAnswer& rig) {
    return rig.sizing->largestOnCircuit.wort;
  });
  t.words("stopped by", [](const RigPlan&, const RigAnswer& rig) {
    return limitText(rig.sizing->largestOnCircuit.stoppedBy);
  });
  page.show(t.take());
  return page;
}

}  // namespace gui
