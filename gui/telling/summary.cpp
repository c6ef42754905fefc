// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/summary.hpp"

#include <utility>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/boil.hpp"
#include "gui/telling/cooling.hpp"
#include "gui/telling/element.hpp"
#include "gui/telling/jacket.hpp"
#include "gui/telling/opening.hpp"
#include "gui/telling/overload.hpp"
#include "gui/telling/rig_rows.hpp"
#include "gui/telling/words.hpp"

namespace gui::telling {
namespace {

using rigs::Told;

Told jacketText(const Case& of, std::size_t i) {
  if (!of.rig(i).jacket) return Told(TOLD("Answer", "No jacket to compare."));
  return rigs::sentences({jacketSavingText(of, i), jacketVerdictText(of, i)});
}

// Of a plan that is itself left alone, first of all: whoever comes back to it in the morning asks
// that before anything else.
void addNight(Answer& answer, const Case& of) {
  if (!rigs::hasOwnNight(of.plan)) return;
  answer.heading(titleOf(Question::HowFarCools));
  for (std::size_t i = 0; i < of.count(); ++i)
    if (Told text = nightText(of, i); !text.empty()) answer.say(i, std::move(text));
  answer.show(nightTable(of));
}

Table sideBySide(const Case& of) {
  RigTable table("answer", of);
  addElementRows(table, of);
  addTimeRows(table, of);
  addWortRows(table, of);
  addBoilRows(table, of);
  addCostRows(table, of);
  addLedgerRows(table, of);
  return table.take();
}

}  // namespace

Answer summary(const Case& of) {
  Answer answer;
  answer.title = openingOf(of.plan).front();
  if (of.isAlone()) answer.dropLetters();
  addOverloads(answer, of);
  addNight(answer, of);
  answer.heading(Told(TOLD("Answer", "Which element does the supply need?")));
  for (std::size_t i = 0; i < of.count(); ++i) {
    answer.say(i, besideCircuit(of, i, rigs::sentences({elementText(of, i), enoughText(of, i)})));
  }
  answer.heading(Told(TOLD("Answer", "Does insulation shorten the heat-up?")));
  for (std::size_t i = 0; i < of.count(); ++i) answer.say(i, jacketText(of, i));
  answer.heading(Told(TOLD("Answer", "How much boils off, and what does a batch cost?")));
  for (std::size_t i = 0; i < of.count(); ++i) {
    answer.say(i, rigs::sentences({boilText(of, i), costText(of, i)}));
    for (Told& text : whatWouldBoilTexts(of, i)) answer.goOn(i, std::move(text));
  }
  answer.heading(of.isAlone() ? Told(TOLD("Answer", "All figures"))
                              : Told(TOLD("Answer", "Side by side")));
  answer.show(sideBySide(of));
  addCautions(answer, rigs::About::Answer, of.solution);
  return answer;
}

}  // namespace gui::telling
