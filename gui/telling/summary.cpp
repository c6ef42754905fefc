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
#include "rigs/answers/nameplate.hpp"

namespace gui::telling {
namespace {

using rigs::Told;

// Of a plan that is itself left alone, first of all: whoever comes back to it in the morning asks
// that before anything else.
void addNight(Answer& answer, const Case& of) {
  if (!rigs::hasOwnNight(of.plan)) return;
  answer.heading(titleOf(Question::HowFarCools));
  for (std::size_t i = 0; i < of.count(); ++i)
    if (Told text = nightText(of, i); !text.empty()) answer.say(i, std::move(text));
  answer.show(nightTable(of));
}

void addElements(Answer& answer, const Case& of) {
  answer.heading(Told(TOLD("Answer", "Which element does the supply need?")));
  for (std::size_t i = 0; i < of.count(); ++i) {
    Told text = rigs::sentences({elementText(of, i), enoughInShort(of, i)});
    // What the verdict above has no room for: when its fuse acts, and what to do.
    const bool fits = rigs::worstNameplate(of.plan, of.planned(i)) == rigs::Fit::Fits;
    answer.say(i, fits ? std::move(text) : besideCircuit(of, i, std::move(text)));
  }
}

// What is the same of all rigs is said once: the jacket, and what counts as worth it.
void addJackets(Answer& answer, const Case& of) {
  answer.heading(Told(TOLD("Answer", "Does insulation shorten the heat-up?")));
  const Told common = comparedJacket(of, false);
  if (!common.empty()) answer.say(comparedAndRule(common));
  for (std::size_t i = 0; i < of.count(); ++i) {
    if (!of.rig(i).jacket) {
      answer.say(i, Told(TOLD("Answer", "No jacket to compare.")));
    } else {
      answer.say(i, common.empty()
                        ? rigs::sentences({jacketSavingText(of, i), jacketVerdictText(of, i)})
                        : jacketInBrief(of, i));
    }
  }
}

void addBoils(Answer& answer, const Case& of) {
  answer.heading(Told(TOLD("Answer", "How much boils off, and what does a batch cost?")));
  for (std::size_t i = 0; i < of.count(); ++i)
    answer.say(
        i, rigs::sentences({boilInBrief(of, i), whatWouldBoilInShort(of, i), costInBrief(of, i)}));
}

Table sideBySide(const Case& of) {
  RigTable table("answer", of);
  const Rows rows = of.view.allFigures ? Rows::All : Rows::Deciding;
  addElementRows(table, of, rows);
  addTimeRows(table, of, rows);
  addWortRows(table, of, rows);
  addBoilRows(table, of, rows);
  addCostRows(table, of, rows);
  if (rows == Rows::All) addLedgerRows(table, of);
  return table.take();
}

}  // namespace

Answer summary(const Case& of) {
  Answer answer;
  answer.title = openingOf(of.plan).front();
  if (of.isAlone()) answer.dropLetters();
  answer.setSlots(of.slots());
  addOverloads(answer, of);
  addNight(answer, of);
  addElements(answer, of);
  addJackets(answer, of);
  addBoils(answer, of);
  answer.heading(of.isAlone() ? Told(TOLD("Answer", "The figures that decide"))
                              : Told(TOLD("Answer", "Side by side")));
  answer.show(sideBySide(of));
  addCautions(answer, rigs::About::Answer, of.solution);
  return answer;
}

}  // namespace gui::telling
