// SPDX-License-Identifier: GPL-3.0-or-later
// Can the circuit carry it?
#include <algorithm>

#include "gui/window/charts/chart_layout.hpp"
#include "gui/window/questions/answer_text.hpp"
#include "gui/window/questions/circuit_notes.hpp"
#include "gui/window/questions/circuit_readings.hpp"
#include "gui/window/words/reader.hpp"
#include "rigs/results/circuit_words.hpp"

namespace gui {
namespace {

using rigs::CircuitLoad;
using rigs::CircuitVerdict;
using rigs::Finding;
using rigs::Fit;

const rigs::CircuitAnswer& circuitOf(const Telling& tell, int i) { return tell.rig(i).circuit; }

// The worst of a rig's circuits under one set of rules; empty where it does not judge them.
std::optional<Fit> fitUnder(const rigs::CircuitAnswer& answer, const rigs::CircuitRules* rules) {
  std::optional<Fit> worst;
  for (const CircuitLoad& circuit : answer.circuits) {
    for (const CircuitVerdict& verdict : circuit.verdicts) {
      if (verdict.rules != rules) continue;
      worst = worst ? std::max(*worst, verdict.overall) : verdict.overall;
    }
  }
  return worst;
}

// The worst of all the rules that judge one circuit.
Fit worstOf(const CircuitLoad& circuit) {
  if (circuit.verdicts.empty()) return Fit::CannotSay;
  Fit worst = Fit::Fits;
  for (const CircuitVerdict& verdict : circuit.verdicts) worst = std::max(worst, verdict.overall);
  return worst;
}

QString verdictsText(const CircuitLoad& circuit) {
  QStringList told;
  for (const Fit fit : {Fit::DoesNotFit, Fit::CannotSay, Fit::OnlyIf, Fit::Fits}) {
    QStringList regions;
    for (const CircuitVerdict& verdict : circuit.verdicts) {
      if (verdict.overall == fit) regions += regionName(verdict.rules->region);
    }
    if (regions.isEmpty()) continue;
    told += QStringLiteral("%1 (%2)").arg(fitLabel(fit), regions.join(QStringLiteral(", ")));
  }
  return told.isEmpty() ? fitLabel(Fit::CannotSay) : told.join(QStringLiteral(", "));
}

// By the current that codes count; a rig's two circuits are told one by one, each with its own
// verdicts.
QString circuitSentence(const Telling& tell, int rig, std::size_t k) {
  const auto& circuits = circuitOf(tell, rig).circuits;
  const CircuitLoad& circuit = circuits[k];
  const QString load =
      translate("Circuit", "%1 of %2")
          .arg(ampereText(tell, circuit.branch), ampereText(tell, circuit.supply.rating));
  if (circuits.size() < 2) {
    return translate("Circuit", "%1 with %2: %3.")
        .arg(load, tell.named(rig), verdictsText(circuit));
  }
  return translate("Circuit", "%1 on circuit %2 of %3: %4.")
      .arg(load, QString::number(k + 1), tell.named(rig), verdictsText(circuit));
}

// What does not fit comes first: it must be seen even where the rest is folded away.
QString sentence(const Telling& tell) {
  std::vector<std::pair<int, std::size_t>> order;
  for (int i = 0; i < tell.count(); ++i) {
    for (std::size_t k = 0; k < circuitOf(tell, i).circuits.size(); ++k) order.push_back({i, k});
  }
  const auto worst = [&](const auto& at) {
    return worstOf(circuitOf(tell, at.first).circuits[at.second]);
  };
  std::stable_sort(order.begin(), order.end(),
                   [&](const auto& a, const auto& b) { return worst(a) > worst(b); });
  QStringList told;
  for (const auto& [rig, circuit] : order) told += circuitSentence(tell, rig, circuit);
  QStringList rules;
  for (const rigs::CircuitRules* one : rulesInUse(tell)) rules += rulesLabel(*one);
  told += rules.isEmpty()
              ? translate("Circuit",
                          "No rules apply: the plan names neither a region nor a circuit of the "
                          "catalogue.")
              : translate("Circuit", "Judged by %1, for planning only.")
                    .arg(rules.join(QStringLiteral("; ")));
  return told.join(QLatin1Char(' '));
}

// Steps: a controller switches the element, and what is drawn is the mean over each part of the
// day.
QVector<QPointF> currentOver(const physics::Duty& duty, const CircuitLoad& circuit) {
  QVector<QPointF> points;
  const double whole = 100.0 * static_cast<double>(circuit.load.current / circuit.supply.rating);
  for (const physics::DutySpan& span : duty.spans) {
    const double y = span.share * whole;
    points.push_back({physics::inMinutes(span.begin), y});
    points.push_back({physics::inMinutes(span.end), y});
  }
  return points;
}

// The strictest share that any rule leaves a load that lasts, and whose rule that is.
struct LongUse {
  double share = 1.0;
  QStringList names;
};
LongUse longUseOf(const Telling& tell) {
  LongUse strictest;
  for (const rigs::CircuitRules* rules : rulesInUse(tell)) {
    for (const rigs::LongUse& rule : rules->longUse) {
      if (rule.share > strictest.share) continue;
      if (rule.share < strictest.share) strictest.names.clear();
      strictest.share = rule.share;
      strictest.names +=
          QStringLiteral("%1, %2").arg(regionName(rules->region), regionName(rule.name));
    }
  }
  return strictest;
}

Picture currentPicture(const Telling& tell) {
  Picture picture;
  picture.title = translate("Circuit", "Current over the day");
  picture.xTitle = translate("Circuit", "Time since the start, h:min");
  picture.yTitle = translate("Circuit",
                             "% of the circuit's rating; the mean, where the element switches on "
                             "and off");
  picture.yUnit = QStringLiteral("%");
  picture.xIsClock = true;
  double most = 110.0;
  for (int i = 0; i < tell.count(); ++i) {
    const rigs::CircuitAnswer& answer = circuitOf(tell, i);
    for (std::size_t k = 0; k < answer.circuits.size(); ++k) {
      picture.lines.push_back(
          {.rig = i,
           .name = k == 0 ? tell.name(i) : translate("Circuit", "its second circuit"),
           .points = currentOver(answer.duty, answer.circuits[k]),
           .faint = k > 0});
      for (const QPointF& p : picture.lines.back().points) most = std::max(most, 1.08 * p.y());
    }
  }
  const LongUse longUse = longUseOf(tell);
  if (longUse.share < 1.0) {
    picture.bands.push_back({.from = 100.0 * longUse.share,
                             .to = 100.0,
                             .label = translate("Circuit", "not for long use, from %1 on")
                                          .arg(tell.write.text(longUse.share)),
                             .source = longUse.names.join(QStringLiteral("; "))});
  }
  picture.lines.push_back(
      {.rig = -1, .name = translate("Circuit", "what the circuit is rated for"), .points = {}});
  for (const PictureLine& line : picture.lines) {
    if (line.points.isEmpty()) continue;
    QVector<QPointF>& rated = picture.lines.back().points;
    const double end = std::max(line.points.back().x(), rated.isEmpty() ? 0.0 : rated.back().x());
    rated = {{0.0, 100.0}, {end, 100.0}};
  }
  picture.yFrom = 0.0;
  picture.yTo = most;
  return picture;
}

// How the element works: what decides whether a load counts as a long one.
Picture dutyPicture(const Telling& tell) {
  Picture picture;
  picture.kind = Picture::Kind::StackedBars;
  picture.title = translate("Circuit", "Hours of current");
  picture.xTitle = translate("Circuit", "Time, h:min");
  picture.xIsClock = true;
  picture.partNames = {translate("Circuit", "full current without a break"),
                       translate("Circuit", "switching: current flows"),
                       translate("Circuit", "switching: no current"),
                       translate("Circuit", "element off")};
  for (int i = 0; i < tell.count(); ++i) {
    PictureStack stack{.rig = i, .name = tell.name(i), .parts = QVector<double>(4, 0.0)};
    for (const physics::DutySpan& span : circuitOf(tell, i).duty.spans) {
      const double minutes = physics::inMinutes(span.end - span.begin);
      if (span.share >= physics::kUnbroken) {
        stack.parts[0] += minutes;
      } else {
        stack.parts[1] += span.share * minutes;
        stack.parts[span.enabled ? 2 : 3] += (1.0 - span.share) * minutes;
      }
    }
    picture.stacks.push_back(stack);
  }
  return picture;
}

void addLoad(TableOf& table, const Telling& tell) {
  const auto row = [&](const QString& label, std::size_t circuit, const auto& of) {
    table.row(label, [&tell, circuit, of](int i) -> std::optional<QString> {
      const auto& circuits = circuitOf(tell, i).circuits;
      return circuit < circuits.size() ? std::optional<QString>(of(circuits[circuit]))
                                       : std::nullopt;
    });
  };
  const auto number = [&tell](const auto& quantity, int decimals) {
    return tell.write.number(quantity, decimals);
  };
  table.heading(translate("Circuit", "Load"));
  row(translate("Circuit", "supply, V"), 0,
      [=](const CircuitLoad& c) { return number(c.supply.nominal, 0); });
  row(translate("Circuit", "circuit, A"), 0,
      [=](const CircuitLoad& c) { return number(c.supply.rating, 1); });
  row(translate("Circuit", "current, as codes count, A"), 0,
      [=](const CircuitLoad& c) { return number(c.branch, 2); });
  row(translate("Circuit", "current, cable included, A"), 0,
      [=](const CircuitLoad& c) { return number(c.load.current, 2); });
  row(translate("Circuit", "mean over the day, A"), 0,
      [=](const CircuitLoad& c) { return number(c.mean, 2); });
  row(translate("Circuit", "element hot, Ω"), 0,
      [=](const CircuitLoad& c) { return number(c.hot, 2); });
  row(translate("Circuit", "element cold, Ω"), 0,
      [=](const CircuitLoad& c) { return number(c.cold, 2); });
  row(translate("Circuit", "reaches the vessel, W"), 0,
      [=](const CircuitLoad& c) { return number(c.load.delivered, 0); });
  row(translate("Circuit", "lost in the cable, W"), 0,
      [=](const CircuitLoad& c) { return number(c.load.inCable, 0); });
  row(translate("Circuit", "voltage drop, %"), 0, [&tell](const CircuitLoad& c) {
    return tell.write.plain(100.0 * static_cast<double>(c.load.inCable / c.load.fromWall), 1);
  });
  table.row(translate("Circuit", "added to heating to the boil by the cable, min"),
            [&](int i) -> std::optional<QString> {
              const auto& added = circuitOf(tell, i).addedByCable;
              return added ? std::optional(tell.write.plain(physics::inMinutes(*added), 1))
                           : std::nullopt;
            });
  bool second = false;
  for (int i = 0; i < tell.count(); ++i) second |= circuitOf(tell, i).circuits.size() > 1;
  if (!second) return;
  row(translate("Circuit", "second circuit, A"), 1,
      [=](const CircuitLoad& c) { return number(c.supply.rating, 1); });
  row(translate("Circuit", "current in it, as codes count, A"), 1,
      [=](const CircuitLoad& c) { return number(c.branch, 2); });
  row(translate("Circuit", "current in it, cable included, A"), 1,
      [=](const CircuitLoad& c) { return number(c.load.current, 2); });
}

void addDuty(TableOf& table, const Telling& tell) {
  const auto time = [&](const QString& label, physics::Time (physics::Duty::*of)() const) {
    table.row(label, [&tell, of](int i) -> std::optional<QString> {
      return hoursAndMinutesText(physics::inMinutes((circuitOf(tell, i).duty.*of)()));
    });
  };
  table.heading(translate("Circuit", "Duty"));
  time(translate("Circuit", "full current without a break, h:min"), &physics::Duty::longestFull);
  time(translate("Circuit", "element enabled, h:min"), &physics::Duty::longestEnabled);
  table.row(translate("Circuit", "share of the day with current, %"),
            [&](int i) -> std::optional<QString> {
              return tell.write.plain(100.0 * circuitOf(tell, i).duty.mean(), 0);
            });
}

// Every rule by name, the worst of a rig's circuits; advice is told below the table only.
void addVerdicts(TableOf& table, const Telling& tell) {
  for (const rigs::CircuitRules* rules : rulesInUse(tell)) {
    table.heading(rulesLabel(*rules));
    std::vector<rigs::Told> names;
    const auto eachFinding = [&](int i, const auto& with) {
      for (const CircuitLoad& circuit : circuitOf(tell, i).circuits) {
        for (const CircuitVerdict& verdict : circuit.verdicts) {
          if (verdict.rules != rules) continue;
          for (const Finding& finding : verdict.findings) {
            if (finding.binding) with(finding);
          }
        }
      }
    };
    for (int i = 0; i < tell.count(); ++i) {
      eachFinding(i, [&](const Finding& f) {
        if (std::find(names.begin(), names.end(), f.name) == names.end()) names.push_back(f.name);
      });
    }
    for (const rigs::Told& name : names) {
      table.row(told(name, tell.write.units()), [&](int i) -> std::optional<QString> {
        std::optional<Fit> worst;
        eachFinding(i, [&](const Finding& f) {
          if (f.name == name) worst = worst ? std::max(*worst, f.fit) : f.fit;
        });
        return worst ? std::optional(fitLabel(*worst)) : std::nullopt;
      });
    }
    table.row(translate("Circuit", "all rules together"), [&](int i) -> std::optional<QString> {
      const auto fit = fitUnder(circuitOf(tell, i), rules);
      return fit ? std::optional(fitLabel(*fit)) : std::nullopt;
    });
    const auto breaker = [&](const QString& label,
                             std::optional<physics::Current> CircuitVerdict::*size,
                             std::string CircuitVerdict::*wire) {
      table.row(label, [&tell, rules, size, wire](int i) -> std::optional<QString> {
        for (const CircuitVerdict& verdict : circuitOf(tell, i).circuits.front().verdicts) {
          if (verdict.rules != rules || !(verdict.*size)) continue;
          const QString amperes = ampereText(tell, *(verdict.*size));
          const QString conductor = QString::fromStdString(verdict.*wire);
          return conductor.isEmpty() ? amperes : QStringLiteral("%1, %2").arg(amperes, conductor);
        }
        return std::nullopt;
      });
    };
    breaker(translate("Circuit", "next standard breaker, for information"),
            &CircuitVerdict::nextBreaker, &CircuitVerdict::conductorForNext);
    if (std::any_of(rules->longUse.begin(), rules->longUse.end(),
                    [](const rigs::LongUse& rule) { return rule.share < 1.0; })) {
      breaker(translate("Circuit", "the same, counted as long use"),
              &CircuitVerdict::nextBreakerContinuous, &CircuitVerdict::conductorForContinuous);
    }
  }
}

}  // namespace

Answer circuitCarries(const Telling& tell) {
  Answer answer;
  answer.sentence = sentence(tell);
  answer.pictures = {currentPicture(tell), dutyPicture(tell)};
  TableOf table(tell);
  addLoad(table, tell);
  addDuty(table, tell);
  addVerdicts(table, tell);
  addReadings(table, tell);
  answer.table = table.take();
  answer.notes = circuitNotes(tell);
  return answer;
}

}  // namespace gui
