// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/circuit_notes.hpp"

#include <algorithm>

#include "gui/window/charts/chart_layout.hpp"
#include "gui/window/words/reader.hpp"
#include "rigs/results/circuit_words.hpp"

namespace gui {
namespace {

using rigs::CircuitLoad;
using rigs::CircuitVerdict;
using rigs::Finding;
using rigs::Fit;

// Nothing in them is measured in other units elsewhere.
QString inWords(const rigs::Told& words) { return told(words, rigs::UnitSystem::SI); }

QString inBrackets(const rigs::Cite& cite) {
  if (cite.clause.empty()) return {};
  return QStringLiteral(" [%1; %2; %3]")
      .arg(QString::fromStdString(cite.clause), QString::fromStdString(cite.source),
           inWords(rigs::statusWords(cite.status)));
}

// Rules in the order met, and below each what it says of whom.
class ByRule {
 public:
  void add(const QString& name, const QString& cite, const QString& who, const QString& said) {
    Rule& rule = found(rules_, [&](const Rule& r) { return r.name == name && r.cite == cite; });
    rule.name = name;
    rule.cite = cite;
    Entry& entry = found(rule.entries, [&](const Entry& e) { return e.said == said; });
    entry.said = said;
    if (!entry.who.contains(who)) entry.who += who;
  }

  // Each rule in one line, its source last.
  QStringList inBrief() const {
    QStringList notes;
    for (const Rule& rule : rules_) {
      QStringList said;
      for (const Entry& entry : rule.entries) {
        said += QStringLiteral("%1 %2").arg(entry.who.join(QStringLiteral(", ")), entry.said);
      }
      notes +=
          QStringLiteral("· %1: %2.%3").arg(rule.name, said.join(QStringLiteral("; ")), rule.cite);
    }
    return notes;
  }

  QStringList inFull() const {
    QStringList notes;
    for (const Rule& rule : rules_) {
      notes += QStringLiteral("· %1%2").arg(rule.name, rule.cite);
      for (const Entry& entry : rule.entries) {
        notes += QChar(kEntry) +
                 QStringLiteral("%1: %2").arg(entry.who.join(QStringLiteral(", ")), entry.said);
      }
    }
    return notes;
  }

 private:
  struct Entry {
    QString said;
    QStringList who;
  };
  struct Rule {
    QString name, cite;
    QVector<Entry> entries;
  };

  template <class T, class Is>
  static T& found(QVector<T>& all, const Is& is) {
    const auto at = std::find_if(all.begin(), all.end(), is);
    if (at != all.end()) return *at;
    all.push_back({});
    return all.back();
  }

  QVector<Rule> rules_;
};

// "(b)", or "(b), circuit 2," where a rig has two.
QString whose(const Telling& tell, int rig, std::size_t circuit) {
  const QString letter = letterOfRig(rig);
  if (tell.rig(rig).circuit.circuits.size() < 2) return letter;
  return translate("Circuit", "%1 circuit %2").arg(letter, QString::number(circuit + 1));
}

// "fits with (a), (d); does not fit with (b), (c)".
QString overallText(const QVector<std::pair<Fit, QString>>& verdicts) {
  QStringList all;
  for (const Fit fit : {Fit::DoesNotFit, Fit::CannotSay, Fit::OnlyIf, Fit::Fits}) {
    QStringList who;
    for (const auto& [of, name] : verdicts) {
      if (of == fit) who += name;
    }
    if (who.isEmpty()) continue;
    all += translate("Circuit", "%1 with %2").arg(fitLabel(fit), who.join(QStringLiteral(", ")));
  }
  return all.join(QStringLiteral("; "));
}

void addSpread(ByRule& notes, const Telling& tell, const QString& who,
               const rigs::SpreadInRange& spread) {
  notes.add(translate("Circuit", "%1 to %2 of supply (%3), the element's tolerance included")
                .arg(tell.write.text(spread.range->lowest), tell.write.text(spread.range->highest),
                     QString::fromStdString(spread.range->name)),
            inBrackets(spread.range->cite), who,
            translate("Circuit", "%1 to %2, %3 to %4")
                .arg(ampereText(tell, spread.spread.least.current),
                     ampereText(tell, spread.spread.most.current),
                     tell.write.watts(spread.spread.least.delivered),
                     tell.write.watts(spread.spread.most.delivered)));
}

}  // namespace

QString fitLabel(Fit fit) {
  return fit == Fit::OnlyIf ? translate("Circuit", "fits only if …") : inWords(rigs::fitWords(fit));
}

QString rulesLabel(const rigs::CircuitRules& rules) { return inWords(rigs::rulesText(rules)); }

QVector<const rigs::CircuitRules*> rulesInUse(const Telling& tell) {
  QVector<const rigs::CircuitRules*> all;
  for (int i = 0; i < tell.count(); ++i) {
    for (const CircuitLoad& circuit : tell.rig(i).circuit.circuits) {
      for (const CircuitVerdict& verdict : circuit.verdicts) {
        if (!all.contains(verdict.rules)) all.push_back(verdict.rules);
      }
    }
  }
  return all;
}

QString ampereText(const Telling& tell, physics::Current current) {
  return tell.write.text(current, {.significantDigits = 3, .decimals = {}});
}

QStringList circuitNotes(const Telling& tell) {
  QStringList notes;
  const auto all = rulesInUse(tell);
  for (const rigs::CircuitRules* rules : all) {
    QVector<std::pair<Fit, QString>> verdicts;
    ByRule findings, spreads;
    for (int i = 0; i < tell.count(); ++i) {
      const auto& circuits = tell.rig(i).circuit.circuits;
      for (std::size_t k = 0; k < circuits.size(); ++k) {
        for (const CircuitVerdict& verdict : circuits[k].verdicts) {
          if (verdict.rules != rules) continue;
          const QString who = whose(tell, i, k);
          verdicts.push_back({verdict.overall, who});
          for (const Finding& f : verdict.findings) {
            findings.add(told(f.name, tell.write.units()), inBrackets(f.cite), who,
                         told(rigs::outcomeText(f), tell.write.units()));
          }
          for (const rigs::SpreadInRange& spread : verdict.spreads) {
            addSpread(spreads, tell, who, spread);
          }
        }
      }
    }
    notes += QStringLiteral("%1: %2.").arg(rulesLabel(*rules), overallText(verdicts));
    notes += findings.inFull() + spreads.inBrief();
  }
  if (!all.isEmpty()) {
    notes += translate("Circuit",
                       "The next standard breakers and their conductors are information, not to be "
                       "installed by this.");
  }
  return notes;
}

}  // namespace gui
