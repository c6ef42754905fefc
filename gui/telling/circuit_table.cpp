// SPDX-License-Identifier: GPL-3.0-or-later
// The figures of the circuit question.
#include <algorithm>
#include <utility>

#include "gui/telling/circuit.hpp"
#include "gui/telling/circuit_readings.hpp"
#include "gui/telling/circuit_rules.hpp"
#include "rigs/results/circuit_words.hpp"

namespace gui::telling {
namespace {

using rigs::CircuitLoad;
using rigs::CircuitVerdict;
using rigs::Finding;
using rigs::Fit;
using rigs::Told;

const rigs::CircuitAnswer& circuitOf(const Case& of, std::size_t i) { return of.rig(i).circuit; }

// Rows about one of the rigs' circuits.
class CircuitRows {
 public:
  CircuitRows(RigTable& table, const Case& of, std::size_t circuit)
      : table_(table), of_(of), circuit_(circuit) {}
  template <class Figure>
  void row(Told label, const Figure& figure, const std::string& key, int decimals) {
    table_.row(std::move(label),
               [&](std::size_t i) -> Cell {
                 const auto& circuits = circuitOf(of_, i).circuits;
                 return circuit_ < circuits.size() ? cellOf(figure(circuits[circuit_]))
                                                   : std::nullopt;
               },
               {.decimals = decimals,
                .result = "/circuit/circuits/" + std::to_string(circuit_) + '/' + key});
  }

 private:
  RigTable& table_;
  const Case& of_;
  std::size_t circuit_;
};

void addLoad(RigTable& table, const Case& of) {
  table.heading(Told(TOLD("Circuit", "Load")));
  CircuitRows first(table, of, 0);
  first.row(
      Told(TOLD("Circuit", "supply")), [](const CircuitLoad& c) { return c.supply.nominal; },
      "nominal_V", 0);
  first.row(
      Told(TOLD("Circuit", "circuit")), [](const CircuitLoad& c) { return c.supply.rating; },
      "rating_A", 1);
  first.row(
      Told(TOLD("Circuit", "current, as codes count")),
      [](const CircuitLoad& c) { return c.branch; }, "branch_current_A", 2);
  first.row(
      Told(TOLD("Circuit", "by name plates alone")),
      [](const CircuitLoad& c) { return rigs::Argument(rigs::fitWords(c.nameplate.fit)); },
      "nameplate/verdict", 0);
  first.row(
      Told(TOLD("Circuit", "current, cable included")),
      [](const CircuitLoad& c) { return c.load.current; }, "peak_current_A", 2);
  first.row(
      Told(TOLD("Circuit", "mean over the day")), [](const CircuitLoad& c) { return c.mean; },
      "mean_current_A", 2);
  first.row(
      Told(TOLD("Circuit", "element hot")), [](const CircuitLoad& c) { return c.hot; },
      "resistance_hot_ohm", 2);
  first.row(
      Told(TOLD("Circuit", "element cold")), [](const CircuitLoad& c) { return c.cold; },
      "resistance_cold_ohm", 2);
  first.row(
      Told(TOLD("Circuit", "reaches the vessel")),
      [](const CircuitLoad& c) { return c.load.delivered; }, "delivered_W", 0);
  first.row(
      Told(TOLD("Circuit", "lost in the cable")),
      [](const CircuitLoad& c) { return c.load.inCable; }, "in_cable_W", 0);
  first.row(
      Told(TOLD("Circuit", "voltage drop")),
      [](const CircuitLoad& c) { return static_cast<double>(c.load.inCable / c.load.fromWall); },
      "drop_share", 1);
  table.row(Told(TOLD("Circuit", "added to heating to the boil by the cable")),
            [&](std::size_t i) -> Cell {
              const auto& added = circuitOf(of, i).addedByCable;
              return added ? Cell(rigs::amountLike(*added, "1 min")) : std::nullopt;
            },
            {.decimals = 1, .result = "/circuit/added_by_cable_s"});
}

void addSecond(RigTable& table, const Case& of) {
  bool any = false;
  for (std::size_t i = 0; i < of.count(); ++i) any |= circuitOf(of, i).circuits.size() > 1;
  if (!any) return;
  CircuitRows second(table, of, 1);
  second.row(
      Told(TOLD("Circuit", "second circuit")), [](const CircuitLoad& c) { return c.supply.rating; },
      "rating_A", 1);
  second.row(
      Told(TOLD("Circuit", "current in it, as codes count")),
      [](const CircuitLoad& c) { return c.branch; }, "branch_current_A", 2);
  second.row(
      Told(TOLD("Circuit", "current in it, cable included")),
      [](const CircuitLoad& c) { return c.load.current; }, "peak_current_A", 2);
}

void addDuty(RigTable& table, const Case& of) {
  table.heading(Told(TOLD("Circuit", "Duty")));
  table.row(Told(TOLD("Circuit", "full current without a break")),
            [&](std::size_t i) { return hoursAndMinutes(circuitOf(of, i).duty.longestFull()); },
            {.result = "/circuit/duty/longest_full_current_s"});
  table.row(Told(TOLD("Circuit", "element enabled")),
            [&](std::size_t i) { return hoursAndMinutes(circuitOf(of, i).duty.longestEnabled()); },
            {.result = "/circuit/duty/longest_enabled_s"});
  table.row(Told(TOLD("Circuit", "share of the day with current")),
            [&](std::size_t i) { return circuitOf(of, i).duty.mean(); },
            {.decimals = 0, .result = "/circuit/duty/share_with_current"});
}

// What a rig's circuits hang on under one set of rules, or under all of them.
std::vector<Told> conditionsUnder(const rigs::CircuitAnswer& answer,
                                  const rigs::CircuitRules* rules) {
  std::vector<Told> all;
  for (const CircuitLoad& circuit : answer.circuits) {
    for (const CircuitVerdict& verdict : circuit.verdicts) {
      if (rules && verdict.rules != rules) continue;
      for (Told& one : rigs::conditionsOf(verdict))
        if (std::find(all.begin(), all.end(), one) == all.end()) all.push_back(std::move(one));
    }
  }
  return all;
}

// Every rule by name, the worst of a rig's circuits; advice is told with the rules only.
class CodeRows {
 public:
  CodeRows(RigTable& table, const Case& of, const rigs::CircuitRules* rules, Conditions& conditions)
      : table_(table), of_(of), rules_(rules), conditions_(conditions) {}

  void add() {
    table_.heading(rigs::rulesText(*rules_));
    for (const Told& name : names()) {
      table_.row(name, [&](std::size_t i) {
        std::optional<Fit> worst;
        std::vector<Told> hangsOn;
        eachFinding(i, [&](const Finding& f) {
          if (f.name != name) return;
          worst = worst ? std::max(*worst, f.fit) : f.fit;
          if (f.fit == Fit::OnlyIf) hangsOn.push_back(f.condition);
        });
        return worst ? Cell(conditions_.label(*worst, hangsOn)) : std::nullopt;
      });
    }
    table_.row(Told(TOLD("Circuit", "all rules together")), [&](std::size_t i) -> Cell {
      const auto fit = fitUnder(circuitOf(of_, i), rules_);
      if (!fit) return std::nullopt;
      return conditions_.label(*fit, conditionsUnder(circuitOf(of_, i), rules_));
    });
    breaker(Told(TOLD("Circuit", "next standard breaker, for information")),
            &CircuitVerdict::nextBreaker, &CircuitVerdict::conductorForNext);
    if (std::any_of(rules_->longUse.begin(), rules_->longUse.end(),
                    [](const rigs::LongUse& rule) { return rule.share < 1.0; })) {
      breaker(Told(TOLD("Circuit", "the same, counted as long use")),
              &CircuitVerdict::nextBreakerContinuous, &CircuitVerdict::conductorForContinuous);
    }
  }

 private:
  template <class With>
  void eachFinding(std::size_t i, const With& with) const {
    for (const CircuitLoad& circuit : circuitOf(of_, i).circuits)
      for (const CircuitVerdict& verdict : circuit.verdicts)
        if (verdict.rules == rules_)
          for (const Finding& finding : verdict.findings)
            if (finding.binding) with(finding);
  }
  std::vector<Told> names() const {
    std::vector<Told> all;
    for (std::size_t i = 0; i < of_.count(); ++i)
      eachFinding(i, [&](const Finding& f) {
        if (std::find(all.begin(), all.end(), f.name) == all.end()) all.push_back(f.name);
      });
    return all;
  }
  // "15 A, 14 AWG": words, for the conductor belongs to it.
  void breaker(Told label, std::optional<physics::Current> CircuitVerdict::*size,
               std::string CircuitVerdict::*wire) {
    table_.row(std::move(label), [&](std::size_t i) -> Cell {
      for (const CircuitVerdict& verdict : circuitOf(of_, i).circuits.front().verdicts) {
        if (verdict.rules != rules_ || !(verdict.*size)) continue;
        const rigs::Amount amperes = rigs::closely(*(verdict.*size));
        const std::string& conductor = verdict.*wire;
        return conductor.empty()
                   ? Cell(Told::just(amperes))
                   : Cell(Told(TOLD("Circuit", "%1, %2"), amperes, rigs::Verbatim{conductor}));
      }
      return std::nullopt;
    });
  }

  RigTable& table_;
  const Case& of_;
  const rigs::CircuitRules* rules_;
  Conditions& conditions_;
};

}  // namespace

Table circuitTable(const Case& of) {
  RigTable table("circuit", of);
  Conditions conditions;
  addLoad(table, of);
  addSecond(table, of);
  addDuty(table, of);
  table.heading(Told(TOLD("Circuit", "Verdict")));
  table.row(Told(TOLD("Circuit", "all codes together")),
            [&](std::size_t i) {
              return Cell(conditions.label(circuitOf(of, i).overall(),
                                           conditionsUnder(circuitOf(of, i), nullptr)));
            },
            {.result = "/circuit/verdict"});
  for (const rigs::CircuitRules* rules : rulesInUse(of))
    CodeRows(table, of, rules, conditions).add();
  addReadings(table, of, conditions);
  Table whole = table.take();
  whole.legend = conditions.take();
  return whole;
}

}  // namespace gui::telling
