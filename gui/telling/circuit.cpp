// SPDX-License-Identifier: GPL-3.0-or-later
// Can the circuit carry it?
#include "gui/telling/circuit.hpp"

#include <algorithm>
#include <utility>

#include "gui/telling/circuit_readings.hpp"
#include "gui/telling/circuit_rules.hpp"
#include "gui/telling/rinse.hpp"
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
using rigs::worstOf;

const std::vector<CircuitLoad>& circuitsOf(const Case& of, std::size_t i) {
  return of.rig(i).circuit.circuits;
}

// --- The headline.

// What name plates alone tell, where no rules apply.
Told withoutRules(const CircuitLoad& circuit) {
  switch (circuit.nameplate.fit) {
    case Fit::DoesNotFit:
      return Told(TOLD("Circuit", "does not fit, more than it is rated for"));
    case Fit::OnTheEdge:
      return Told(TOLD("Circuit", "on the edge of its rating, and no rules to say more"));
    default:
      return Told(TOLD("Circuit", "within its rating, and no rules to say more"));
  }
}

// "fits (Canada), fits only if the circuit feeds one outlet alone (United States)": a condition is
// told in full wherever a verdict is.
Told verdictsText(const CircuitLoad& circuit) {
  if (circuit.verdicts.empty()) return withoutRules(circuit);
  struct Same {
    Told outcome;
    rigs::List regions{.items = {}, .joint = rigs::Joint::Comma};
  };
  rigs::List told{.items = {}, .joint = rigs::Joint::Comma};
  for (const Fit fit : {Fit::DoesNotFit, Fit::CannotSay, Fit::OnTheEdge, Fit::OnlyIf, Fit::Fits}) {
    std::vector<Same> all;
    for (const CircuitVerdict& verdict : circuit.verdicts) {
      if (verdict.overall != fit) continue;
      Told outcome = rigs::outcomeText(verdict);
      auto same = std::find_if(all.begin(), all.end(),
                               [&](const Same& one) { return one.outcome == outcome; });
      if (same == all.end()) same = all.insert(all.end(), Same{std::move(outcome)});
      same->regions.items.emplace_back(rigs::fromRules(verdict.rules->region));
    }
    for (Same& one : all)
      told.items.emplace_back(
          Told(TOLD("Circuit", "%1 (%2)"), std::move(one.outcome), std::move(one.regions)));
  }
  return Told::just(std::move(told));
}

// By the current that codes count, with what else runs there; a rig's two circuits are told one by
// one, each with its own verdicts.
Told circuitInShort(const Case& of, std::size_t rig, std::size_t k) {
  const CircuitLoad& circuit = circuitsOf(of, rig)[k];
  const physics::Current beside =
      rigs::detailsOf(of.planned(rig), k).beside(circuit.supply.nominal);
  const Told load(TOLD("Circuit", "%1 of %2"), closely(*circuit.nameplate.load),
                  closely(circuit.supply.rating));
  const bool two = circuitsOf(of, rig).size() > 1;
  const Count which{static_cast<long long>(k) + 1};
  if (beside > physics::amperes(0.0))
    return two ? Told(TOLD("Circuit",
                           "%1 on circuit %2 of %3, %4 of that for what else runs on it: %5."),
                      load, which, of.named(rig), closely(beside), verdictsText(circuit))
               : Told(TOLD("Circuit", "%1 with %2, %3 of that for what else runs on it: %4."), load,
                      of.named(rig), closely(beside), verdictsText(circuit));
  return two ? Told(TOLD("Circuit", "%1 on circuit %2 of %3: %4."), load, which, of.named(rig),
                    verdictsText(circuit))
             : Told(TOLD("Circuit", "%1 with %2: %3."), load, of.named(rig), verdictsText(circuit));
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
                      "Judged by name plates alone, for planning only: the plan names neither a "
                      "region nor a circuit of the catalogue, so no rules apply."))
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
  const bool noRules = circuit.verdicts.empty();
  if (noRules)
    answer.goOn(rig, Told(TOLD("Circuit", "By name plates alone, no clause claimed: %1"),
                          rigs::outcomeText(circuit.nameplate)));
  for (const CircuitVerdict& verdict : circuit.verdicts)
    answer.goOn(rig, everyRule ? rigs::verdictText(verdict) : rigs::verdictInBrief(verdict));
  if (circuit.granted && !rigs::within(*circuit.nameplate.load, *circuit.granted))
    answer.goOn(rig, Told(TOLD("Circuit", "More than the %1 that the plan grants to long use."),
                          rigs::amount(*circuit.granted)));
  if (noRules)
    answer.goOn(rig, Told(TOLD("Circuit",
                               "More cannot be said: the plan names no region and no catalogue "
                               "circuit, so no rules apply. Write \"region\" into the plan's "
                               "\"place\".")));
}

void sayLoads(Answer& answer, const Case& of, std::size_t i) {
  const auto& circuits = circuitsOf(of, i);
  const bool everyRule = of.view.everyRule;
  if (circuits.size() < 2) {
    answer.say(i, loadText(circuits.front()));
    sayVerdicts(answer, i, circuits.front(), everyRule);
  } else {
    answer.say(i, Told(TOLD("Circuit", "Two circuits: first: %1; second: %2."),
                       verdictsText(circuits[0]), verdictsText(circuits[1])));
    answer.goOn(i, Told(TOLD("Circuit", "First circuit: %1"), loadText(circuits[0])));
    sayVerdicts(answer, i, circuits[0], everyRule);
    answer.goOn(i, Told(TOLD("Circuit", "Second circuit: %1"), loadText(circuits[1])));
    sayVerdicts(answer, i, circuits[1], everyRule);
  }
  if (Told rinse = rinseOnCircuit(of, i); !rinse.empty()) answer.goOn(i, std::move(rinse));
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
