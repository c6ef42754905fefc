// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/circuit_readings.hpp"

#include <algorithm>

#include "gui/window/charts/chart_layout.hpp"
#include "gui/window/questions/circuit_notes.hpp"
#include "gui/window/words/reader.hpp"

namespace gui {
namespace {

using Cell = std::optional<QString>;

QString timeOrOutcome(physics::Outcome outcome, const std::optional<physics::Time>& time) {
  if (outcome != physics::Outcome::Done || !time) return outcomeLabel(outcome);
  return hoursAndMinutesText(physics::inMinutes(*time));
}

// One reading of one or several codes: what every rig has under it.
struct Reading {
  QStringList regions;
  QString name;
  QVector<Cell> largest, toBoil, day, dayOnTwo;  // a cell a rig

  QString label() const {
    const QString who = regions.size() == 2
                            ? translate("Circuit", "%1 and %2").arg(regions[0], regions[1])
                            : regions.join(QStringLiteral(", "));
    return QStringLiteral("%1, %2").arg(who, name);
  }
  bool saysTheSameAs(const Reading& other) const {
    return name == other.name && largest == other.largest && toBoil == other.toBoil &&
           day == other.day && dayOnTwo == other.dayOnTwo;
  }
};

Reading readingOf(const Telling& tell, const std::string& region, const rigs::Told& name) {
  Reading reading{.regions = {regionName(region)},
                  .name = told(name, tell.write.units()),
                  .largest = QVector<Cell>(tell.count()),
                  .toBoil = QVector<Cell>(tell.count()),
                  .day = QVector<Cell>(tell.count()),
                  .dayOnTwo = QVector<Cell>(tell.count())};
  for (int i = 0; i < tell.count(); ++i) {
    const rigs::CircuitAnswer& circuit = tell.rig(i).circuit;
    for (const rigs::ReadingDay& day : circuit.readings) {
      if (day.region != region || !(day.reading.name == name) || reading.largest[i]) continue;
      reading.largest[i] = tell.write.number(day.largest.rating, 0);
      reading.toBoil[i] = timeOrOutcome(day.outcome, day.toBoil);
      reading.day[i] = timeOrOutcome(day.outcome, day.day);
    }
    for (const rigs::ShortestDay& day : circuit.shortest) {
      if (day.region == region && day.reading == name && day.elements.size() == 2)
        reading.dayOnTwo[i] = timeOrOutcome(day.outcome, day.day);
    }
  }
  return reading;
}

QVector<Reading> readingsOf(const Telling& tell) {
  std::vector<std::pair<std::string, rigs::Told>> names;
  for (int i = 0; i < tell.count(); ++i) {
    for (const rigs::ReadingDay& day : tell.rig(i).circuit.readings) {
      const std::pair name{day.region, day.reading.name};
      if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
    }
  }
  QVector<Reading> all;
  for (const auto& [region, name] : names) {
    const Reading one = readingOf(tell, region, name);
    const auto same = std::find_if(all.begin(), all.end(),
                                   [&](const Reading& other) { return other.saysTheSameAs(one); });
    if (same == all.end()) {
      all.push_back(one);
    } else {
      same->regions += one.regions;
    }
  }
  return all;
}

void addSplit(TableOf& table, const Telling& tell) {
  const auto row = [&](const QString& label, const auto& of) {
    table.row(label, [&tell, of](int i) -> Cell {
      const auto& split = tell.rig(i).circuit.split;
      return split && split->parts.size() == 2 ? Cell(of(*split)) : std::nullopt;
    });
  };
  bool any = false;
  for (int i = 0; i < tell.count(); ++i) any |= tell.rig(i).circuit.split.has_value();
  if (!any) return;
  table.heading(translate("Circuit", "The rig's own power on two such circuits"));
  for (const std::size_t k : {0U, 1U}) {
    row(k == 0 ? translate("Circuit", "on the first, W") : translate("Circuit", "on the second, W"),
        [&tell, k](const rigs::Split& s) {
          return tell.write.number(s.parts[k].element.rating, 0);
        });
  }
  row(translate("Circuit", "all rules together"),
      [](const rigs::Split& s) { return fitLabel(s.overall()); });
}

}  // namespace

void addReadings(TableOf& table, const Telling& tell) {
  const QVector<Reading> all = readingsOf(tell);
  if (all.isEmpty()) return;
  const auto rows = [&](const QString& heading, QVector<Cell> Reading::*of) {
    table.heading(heading);
    for (const Reading& reading : all) {
      const QVector<Cell>& cells = reading.*of;
      if (std::none_of(cells.begin(), cells.end(), [](const Cell& c) { return c.has_value(); }))
        continue;
      table.row(reading.label(), [&cells](int i) { return cells[i]; });
    }
  };
  rows(translate("Circuit", "Largest element under each reading, W"), &Reading::largest);
  rows(translate("Circuit", "From mash to boil with it, h:min"), &Reading::toBoil);
  rows(translate("Circuit", "The whole day with it, h:min"), &Reading::day);
  rows(translate("Circuit", "The whole day with one on each of two such circuits, h:min"),
       &Reading::dayOnTwo);
  addSplit(table, tell);
}

}  // namespace gui
