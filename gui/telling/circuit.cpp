// SPDX-License-Identifier: GPL-3.0-or-later
// Can the circuit carry it?
#include "gui/telling/circuit.hpp"

#include <algorithm>
#include <utility>

#include "gui/telling/circuit_readings.hpp"
#include "gui/telling/circuit_rules.hpp"
#include "gui/telling/words.hpp"
#include "rigs/results/circuit_words.hpp"

namespace gui::telling {
namespace {

using rigs::CircuitLoad;
using rigs::CircuitVerdict;
using rigs::closely;
using rigs::Count;
using rigs::Fit;
using rigs::Told;
using rigs::Verbatim;

const std::vector<CircuitLoad>& circuitsOf(const Case& of, std::size_t i) {
  return of.rig(i).circuit.circuits;
}

// The worst of all the rules that judge one circuit.
Fit worstOf(const CircuitLoad& circuit) {
  if (circuit.verdicts.empty()) return Fit::CannotSay;
  Fit worst = Fit::Fits;
  for (const CircuitVerdict& verdict : circuit.verdicts) worst = std::max(worst, verdict.overall);
  return worst;
}

// --- The headline.

// "fits (Canada), fits only if … (United States)"
Told verdictsText(const CircuitLoad& circuit) {
  rigs::List told{.items = {}, .joint = rigs::Joint::Comma};
  for (const Fit fit : {Fit::DoesNotFit, Fit::CannotSay, Fit::OnlyIf, Fit::Fits}) {
    rigs::List regions{.items = {}, .joint = rigs::Joint::Comma};
    for (const CircuitVerdict& verdict : circuit.verdicts)
      if (verdict.overall == fit)
        regions.items.emplace_back(rigs::fromRules(verdict.rules->region));
    if (regions.items.empty()) continue;
    told.items.emplace_back(Told(TOLD("Circuit", "%1 (%2)"), fitLabel(fit), std::move(regions)));
  }
  return told.items.empty() ? fitLabel(Fit::CannotSay) : Told::just(std::move(told));
}

// By the current that codes count; a rig's two circuits are told one by one, each with its own
// verdicts.
Told circuitInShort(const Case& of, std::size_t rig, std::size_t k) {
  const CircuitLoad& circuit = circuitsOf(of, rig)[k];
  const Told load(TOLD("Circuit", "%1 of %2"), closely(circuit.branch),
                  closely(circuit.supply.rating));
  if (circuitsOf(of, rig).size() < 2)
    return Told(TOLD("Circuit", "%1 with %2: %3."), load, of.named(rig), verdictsText(circuit));
  return Told(TOLD("Circuit", "%1 on circuit %2 of %3: %4."), load,
              Count{static_cast<long long>(k) + 1}, of.named(rig), verdictsText(circuit));
}

// What does not fit comes first: it must be seen even where the rest is folded away.
std::vector<Told> circuitsInShort(const Case& of) {
  std::vector<std::pair<std::size_t, std::size_t>> order;
  for (std::size_t i = 0; i < of.count(); ++i)
    for (std::size_t k = 0; k < circuitsOf(of, i).size(); ++k) order.push_back({i, k});
  const auto worst = [&](const auto& at) { return worstOf(circuitsOf(of, at.first)[at.second]); };
  std::stable_sort(order.begin(), order.end(),
                   [&](const auto& a, const auto& b) { return worst(a) > worst(b); });
  std::vector<Told> told;
  for (const auto& [rig, circuit] : order) told.push_back(circuitInShort(of, rig, circuit));
  rigs::List rules{.items = {}, .joint = rigs::Joint::Semicolon};
  for (const rigs::CircuitRules* one : rulesInUse(of))
    rules.items.emplace_back(rigs::rulesText(*one));
  told.push_back(
      rules.items.empty()
          ? Told(TOLD("Circuit",
                      "No rules apply: the plan names neither a region nor a circuit of the "
                      "catalogue."))
          : Told(TOLD("Circuit", "Judged by %1, for planning only."), std::move(rules)));
  return told;
}

// --- Rig by rig.

Told loadText(const CircuitLoad& circuit) {
  const rigs::Amount nominal = rigs::amount(circuit.supply.nominal);
  const rigs::Amount mean = rigs::amount(circuit.mean);
  if (circuit.supply.cableLoop > physics::ohms(0.0)) {
    return Told(TOLD("Circuit",
                     "%1 at %2 as codes count, %3 through the cable, %4 on average over the day."),
                closely(circuit.branch), nominal, closely(circuit.load.current), mean);
  }
  return Told(TOLD("Circuit", "%1 at %2, %3 on average over the day."), closely(circuit.branch),
              nominal, mean);
}

void sayVerdicts(Answer& answer, std::size_t rig, const CircuitLoad& circuit, bool everyRule) {
  if (circuit.verdicts.empty()) {
    answer.goOn(rig, Told(TOLD("Circuit",
                               "Cannot say: the plan names no region and no catalogue circuit, so "
                               "no rules apply. Write \"region\" into the plan's \"place\".")));
  }
  for (const CircuitVerdict& verdict : circuit.verdicts)
    answer.goOn(rig, everyRule ? rigs::verdictText(verdict) : rigs::verdictInBrief(verdict));
}

void sayLoads(Answer& answer, const Case& of, std::size_t i) {
  const auto& circuits = circuitsOf(of, i);
  const bool everyRule = of.view.everyRule;
  if (circuits.size() < 2) {
    answer.say(i, loadText(circuits.front()));
    sayVerdicts(answer, i, circuits.front(), everyRule);
  } else {
    answer.say(i, Told(TOLD("Circuit", "Two circuits: first: %1; second: %2."),
                       fitLabel(worstOf(circuits[0])), fitLabel(worstOf(circuits[1]))));
    answer.goOn(i, Told(TOLD("Circuit", "First circuit: %1"), loadText(circuits[0])));
    sayVerdicts(answer, i, circuits[0], everyRule);
    answer.goOn(i, Told(TOLD("Circuit", "Second circuit: %1"), loadText(circuits[1])));
    sayVerdicts(answer, i, circuits[1], everyRule);
  }
  const auto& added = of.rig(i).circuit.addedByCable;
  if (added && *added > physics::seconds(1.0))
    answer.goOn(i, Told(TOLD("Circuit", "The cable adds %1 to heating to the boil."),
                        rigs::roughly(*added)));
}

}  // namespace

Answer circuitCarries(const Case& of) {
  Answer answer;
  answer.sentences = circuitsInShort(of);
  for (std::size_t i = 0; i < of.count(); ++i) sayLoads(answer, of, i);
  sayRules(answer, of, of.view.everyRule);
  sayReadings(answer, of);
  answer.show(circuitTable(of));
  answer.pictures = {currentPicture(of), dutyPicture(of)};
  if (!rulesInUse(of).empty()) {
    answer.notes.push_back(Told(TOLD("Circuit",
                                     "The next standard breakers and their conductors are "
                                     "information, not to be installed by this.")));
  }
  return answer;
}

}  // namespace gui::telling
