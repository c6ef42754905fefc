// SPDX-License-Identifier: GPL-3.0-or-later
// Everything side by side, opened by the three questions people ask first.
#include "gui/terminal/rig_rows.hpp"
#include "gui/terminal/terminal.hpp"
#include "rigs/results/cautions.hpp"

namespace gui {
namespace {

using rigs::RigAnswer;

}  // namespace

Page answerPage(const rigs::Plan& plan, const rigs::Answers& answers, UnitSystem units) {
  Page page = startPage(plan, units);
  page.cautions = rigs::cautionTexts(rigs::About::Answer, plan, answers, units);
  page.heading("Which element does the supply need?");
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const RigAnswer& rig = answers.rigs[i];
    const std::string element = elementText(plan.rigs[i], rig.day.electrical, units) + ' ' +
                                enoughText(plan, plan.rigs[i], rig, units);
    page.say(letter(i), besideCircuit(plan, plan.rigs[i], element));
  }

  page.heading("Does insulation shorten the heat-up?");
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const RigAnswer& rig = answers.rigs[i];
    if (!rig.jacket) {
      page.say(letter(i), "No jacket to compare.");
      continue;
    }
    page.say(letter(i), jacketSavingText(plan.rigs[i], *rig.jacket, units) + ' ' +
                            jacketVerdictText(plan.rigs[i], *rig.jacket, units));
  }

  page.heading("How much boils off, and what does a batch cost?");
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    const RigAnswer& rig = answers.rigs[i];
    page.say(letter(i),
             boilText(plan.rigs[i], rig.day, units) + ' ' + costText(rig, plan.tariff, units));
    for (const std::string& text : whatWouldBoilTexts(plan, plan.rigs[i], rig, units)) {
      page.say("   ", text);
    }
  }

  RigTable table("answer", plan, answers, units);
  addElementRows(table, units);
  addTimeRows(table, plan);
  addWortRows(table, units);
  addBoilRows(table, units);
  addCostRows(table, plan, units);
  addLedgerRows(table);
  page.heading("Side by side");
  page.show(table.take());
  return page;
}

}  // namespace gui
