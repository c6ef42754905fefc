// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/circuit_rules.hpp"

#include <algorithm>
#include <functional>
#include <utility>

#include "rigs/results/circuit_words.hpp"

namespace gui::telling {
namespace {

using rigs::CircuitVerdict;
using rigs::Finding;
using rigs::Fit;
using rigs::Told;

// One circuit of a rig.
struct Whose {
  std::size_t rig, circuit;
  bool ofTwo;
  std::string letter;

  bool operator==(const Whose&) const = default;
};

// "(b)", or "(b) circuit 2" where a rig has two; "circuit 2" of a rig alone.
rigs::Argument letterOf(const Whose& whose) {
  const rigs::Verbatim rig{whose.letter};
  if (!whose.ofTwo) return rig;
  const rigs::Count circuit{static_cast<long long>(whose.circuit) + 1};
  if (whose.letter.empty()) return Told(TOLD("Circuit", "circuit %1"), circuit);
  return Told(TOLD("Circuit", "%1 circuit %2"), rig, circuit);
}

template <class T, class Is>
T& foundOrNew(std::vector<T>& all, const Is& is) {
  const auto at = std::find_if(all.begin(), all.end(), is);
  return at != all.end() ? *at : all.emplace_back();
}

// The same, told of everybody of whom it is true.
class ToldOf {
 public:
  void add(const Told& said, const Whose& whose) {
    Entry& entry = foundOrNew(entries_, [&](const Entry& e) { return e.said == said; });
    entry.said = said;
    if (std::find(entry.whose.begin(), entry.whose.end(), whose) == entry.whose.end())
      entry.whose.push_back(whose);
  }
  // What is said once, of a rig alone that no mark has to stand beside; nullptr where there is
  // more.
  const Told* ofOneAlone() const {
    if (entries_.size() != 1 || entries_.front().whose.size() != 1) return nullptr;
    const Whose& whose = entries_.front().whose.front();
    return whose.letter.empty() && !whose.ofTwo ? &entries_.front().said : nullptr;
  }
  void sayTo(Answer& answer) const {
    for (const Entry& entry : entries_) {
      if (entry.whose.size() == 1 && !entry.whose.front().ofTwo) {
        answer.say(entry.whose.front().rig, entry.said);
        continue;
      }
      rigs::List all{.items = {}, .joint = rigs::Joint::Comma};
      std::vector<std::size_t> about;
      for (const Whose& whose : entry.whose) {
        all.items.push_back(letterOf(whose));
        about.push_back(whose.rig);
      }
      answer.sayAbout(std::move(about),
                      Told(TOLD("Circuit", "%1: %2"), std::move(all), entry.said));
    }
  }
  std::vector<std::size_t> rigs() const {
    std::vector<std::size_t> all;
    for (const Entry& entry : entries_)
      for (const Whose& whose : entry.whose) all.push_back(whose.rig);
    return all;
  }

 private:
  struct Entry {
    Told said;
    std::vector<Whose> whose;
  };
  std::vector<Entry> entries_;
};

// Rules in the order met, and below each what it says of whom.
class ByRule {
 public:
  void add(const Told& name, const rigs::Cite& cite, const Told& said, const Whose& whose) {
    const Told where = rigs::citeText(cite);
    Rule& rule =
        foundOrNew(rules_, [&](const Rule& r) { return r.name == name && r.cite == where; });
    rule.name = name;
    rule.cite = where;
    rule.of.add(said, whose);
  }
  void sayTo(Answer& answer) const {
    for (const Rule& rule : rules_) {
      Told title = rule.cite.empty() ? Told(TOLD("Circuit", "· %1"), rule.name)
                                     : Told(TOLD("Circuit", "· %1 [%2]"), rule.name, rule.cite);
      if (const Told* said = rule.of.ofOneAlone()) {
        answer.say(Told(TOLD("Circuit", "%1: %2"), std::move(title), *said));
        continue;
      }
      answer.sayAbout(rule.of.rigs(), std::move(title));
      const std::size_t first = answer.blocks.size();
      rule.of.sayTo(answer);
      for (std::size_t i = first; i < answer.blocks.size(); ++i)
        if (auto* said = std::get_if<Sentence>(&answer.blocks[i])) said->ofTheOneBefore = true;
    }
  }

 private:
  struct Rule {
    Told name, cite;
    ToldOf of;
  };
  std::vector<Rule> rules_;
};

using OfVerdict = std::function<void(const CircuitVerdict&, const Whose&)>;
void eachVerdict(const Case& of, const rigs::CircuitRules* rules, const OfVerdict& with) {
  for (std::size_t i = 0; i < of.count(); ++i) {
    const auto& circuits = of.rig(i).circuit.circuits;
    for (std::size_t k = 0; k < circuits.size(); ++k)
      for (const CircuitVerdict& verdict : circuits[k].verdicts)
        if (verdict.rules == rules) with(verdict, {i, k, circuits.size() > 1, of.lettered(i)});
  }
}

// What a short answer leaves out: kept rules, never what hangs on something.
bool isQuiet(const Finding& finding) { return finding.fit == Fit::Fits; }

// The rules that everybody keeps, by name.
Told keptText(const Case& of, const rigs::CircuitRules* rules) {
  std::vector<std::pair<Told, bool>> names;
  eachVerdict(of, rules, [&](const CircuitVerdict& verdict, const Whose&) {
    for (const Finding& finding : verdict.findings) {
      const bool fits = finding.fit == Fit::Fits;
      const auto known = std::find_if(names.begin(), names.end(),
                                      [&](const auto& one) { return one.first == finding.name; });
      if (known == names.end()) {
        names.emplace_back(finding.name, fits);
      } else {
        known->second = known->second && fits;
      }
    }
  });
  rigs::List kept{.items = {}, .joint = rigs::Joint::Semicolon};
  for (const auto& [name, fits] : names)
    if (fits) kept.items.emplace_back(name);
  const std::size_t count = kept.items.size();
  if (count == 0) return {};
  if (count == 1) return Told(TOLD("Circuit", "And 1 rule that fits: %1."), std::move(kept));
  return Told(TOLD("Circuit", "And %1 rules that fit: %2."),
              rigs::Count{static_cast<long long>(count)}, std::move(kept));
}

void addSpread(ByRule& spreads, const rigs::SpreadInRange& spread, const Whose& whose) {
  const rigs::VoltageRange& range = *spread.range;
  spreads.add(
      Told(TOLD("Circuit", "%1 to %2 of supply (%3), the element's tolerance included"),
           rigs::amount(range.lowest), rigs::amount(range.highest), rigs::fromRules(range.name)),
      range.cite,
      Told(TOLD("Circuit", "%1 to %2, %3 to %4."), rigs::amount(spread.spread.least.current),
           rigs::amount(spread.spread.most.current),
           rigs::inWholeWatts(spread.spread.least.delivered),
           rigs::inWholeWatts(spread.spread.most.delivered)),
      whose);
}

// The range that goes furthest down and up.
const rigs::SpreadInRange* widestOf(const CircuitVerdict& verdict) {
  const auto width = [](const rigs::SpreadInRange& s) {
    return s.range->highest - s.range->lowest;
  };
  const auto widest =
      std::max_element(verdict.spreads.begin(), verdict.spreads.end(),
                       [&](const auto& a, const auto& b) { return width(a) < width(b); });
  return widest == verdict.spreads.end() ? nullptr : &*widest;
}

void sayCode(Answer& answer, const Case& of, const rigs::CircuitRules* rules, bool everyRule,
             bool first) {
  answer.heading(rigs::rulesText(*rules));
  ByRule findings, spreads;
  ToldOf information;
  eachVerdict(of, rules, [&](const CircuitVerdict& verdict, const Whose& whose) {
    for (const Finding& finding : verdict.findings) {
      if (!everyRule && isQuiet(finding)) continue;
      findings.add(finding.name, finding.cite, rigs::outcomeText(finding), whose);
    }
    if (everyRule) {
      for (const rigs::SpreadInRange& spread : verdict.spreads) addSpread(spreads, spread, whose);
    } else if (const auto* widest = widestOf(verdict); widest && first) {
      addSpread(spreads, *widest, whose);
    }
    const Told next = rigs::informationText(verdict);
    if (!next.empty() && (everyRule || verdict.overall == Fit::DoesNotFit))
      information.add(next, whose);
  });
  findings.sayTo(answer);
  if (!everyRule) {
    if (Told kept = keptText(of, rules); !kept.empty()) answer.say(std::move(kept));
  }
  spreads.sayTo(answer);
  information.sayTo(answer);
}

}  // namespace

Told Conditions::label(Fit fit, const std::vector<Told>& conditions) {
  if (fit == Fit::DoesNotFit || conditions.empty()) return rigs::fitWords(fit);
  rigs::List numbers{.items = {}, .joint = rigs::Joint::And};
  for (const Told& one : conditions) {
    const auto at = std::find(all_.begin(), all_.end(), one);
    numbers.items.emplace_back(
        rigs::Verbatim{numbered(static_cast<std::size_t>(at - all_.begin()))});
    if (at == all_.end()) all_.push_back(one);
  }
  if (fit == Fit::OnlyIf) return Told(TOLD("Circuit", "fits only if %1"), std::move(numbers));
  return Told(TOLD("Circuit", "%1, and only if %2"), rigs::fitWords(fit), std::move(numbers));
}

std::vector<const rigs::CircuitRules*> rulesInUse(const Case& of) {
  std::vector<const rigs::CircuitRules*> all;
  for (std::size_t i = 0; i < of.count(); ++i)
    for (const rigs::CircuitLoad& circuit : of.rig(i).circuit.circuits)
      for (const CircuitVerdict& verdict : circuit.verdicts)
        if (std::find(all.begin(), all.end(), verdict.rules) == all.end())
          all.push_back(verdict.rules);
  return all;
}

std::optional<Fit> fitUnder(const rigs::CircuitAnswer& answer, const rigs::CircuitRules* rules) {
  std::optional<Fit> worst;
  for (const rigs::CircuitLoad& circuit : answer.circuits) {
    for (const CircuitVerdict& verdict : circuit.verdicts) {
      if (verdict.rules != rules) continue;
      worst = worst ? std::max(*worst, verdict.overall) : verdict.overall;
    }
  }
  return worst;
}

void sayRules(Answer& answer, const Case& of, bool everyRule) {
  const auto all = rulesInUse(of);
  for (const rigs::CircuitRules* rules : all)
    sayCode(answer, of, rules, everyRule, rules == all.front());
  if (!all.empty() && !everyRule) {
    answer.say(Told(TOLD("Circuit",
                         "Rules that are kept are named only; \"heatledger circuit --every-rule\" "
                         "shows them with their arithmetic, clauses and all voltage ranges.")));
  }
}

}  // namespace gui::telling
