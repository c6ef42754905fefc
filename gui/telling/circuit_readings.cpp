// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/circuit_readings.hpp"

#include <algorithm>
#include <utility>

#include "gui/telling/circuit_rules.hpp"
#include "gui/telling/words.hpp"
#include "rigs/results/circuit_words.hpp"

namespace gui::telling {
namespace {

using physics::Outcome;
using rigs::amount;
using rigs::inWholeWatts;
using rigs::ReadingDay;
using rigs::roughly;
using rigs::ShortestDay;
using rigs::Told;

// --- Sentences.

Told dayText(Outcome outcome, const std::optional<physics::Time>& toBoil, physics::Time day) {
  if (outcome != Outcome::Done) return outcomeWord(outcome);
  if (!toBoil) return Told(TOLD("Circuit", "does not boil; the day takes %1"), roughly(day));
  return Told(TOLD("Circuit", "mash to boil in %1; the day takes %2"), roughly(*toBoil),
              roughly(day));
}

// Two codes that say the same of the same current are named together.
class Merged {
 public:
  void add(const std::string& region, Told text) {
    const auto same = std::find_if(lines_.begin(), lines_.end(),
                                   [&](const Line& line) { return line.text == text; });
    if (same != lines_.end()) {
      same->regions.items.emplace_back(rigs::fromRules(region));
    } else {
      lines_.push_back({{{rigs::fromRules(region)}, rigs::Joint::And}, std::move(text)});
    }
  }
  void sayTo(Answer& answer, std::size_t rig, bool goesOn) const {
    for (const Line& line : lines_) {
      Told told(TOLD("Circuit", "%1, %2"), line.regions, line.text);
      if (goesOn) {
        answer.goOn(rig, std::move(told));
      } else {
        answer.say(rig, std::move(told));
      }
      goesOn = true;
    }
  }

 private:
  struct Line {
    rigs::List regions;
    Told text;
  };
  std::vector<Line> lines_;
};

Told readingText(const ReadingDay& day) {
  const Told all(
      TOLD("Circuit", "%1: %2 at most, an element of %3 at %4; %5 reach the vessel, %6."),
      day.reading.name, amount(day.reading.limit), inWholeWatts(day.largest.rating),
      amount(day.largest.ratedAt), inWholeWatts(day.delivered),
      dayText(day.outcome, day.toBoil, day.day));
  if (!day.fits) return all;
  return rigs::sentences({all, Told(TOLD("Circuit", "What the rig has stays within."))});
}

void sayLimits(Answer& answer, std::size_t rig, const rigs::CircuitAnswer& circuit) {
  Merged merged;
  for (const ReadingDay& day : circuit.readings) merged.add(day.region, readingText(day));
  const bool second = circuit.circuits.size() > 1;
  if (second && !circuit.readings.empty())
    answer.say(rig, Told(TOLD("Circuit", "On the first circuit, the second as planned:")));
  merged.sayTo(answer, rig, second);
}

Told elementsText(const ShortestDay& day) {
  const physics::Element& first = day.elements.front();
  const auto power = [&](std::size_t i) { return inWholeWatts(day.elements[i].rating); };
  const auto voltage = [&](std::size_t i) { return amount(day.elements[i].ratedAt); };
  if (day.elements.size() == 1)
    return Told(TOLD("Circuit", "one element of %1 at %2"), power(0), voltage(0));
  if (first.rating == day.elements[1].rating && first.ratedAt == day.elements[1].ratedAt) {
    using Alike = rigs::Template<2>;
    return Told(day.imagined
                    ? Alike(TOLD("Circuit", "two elements of %1 at %2 on two such circuits"))
                    : Alike(TOLD("Circuit", "two elements of %1 at %2 on its two circuits")),
                power(0), voltage(0));
  }
  using Apart = rigs::Template<4>;
  return Told(
      day.imagined
          ? Apart(TOLD("Circuit", "two elements, %1 at %2 and %3 at %4, on two such circuits"))
          : Apart(TOLD("Circuit", "two elements, %1 at %2 and %3 at %4, on its two circuits")),
      power(0), voltage(0), power(1), voltage(1));
}

// One element on the only circuit is what the reading itself leaves, told there.
bool isToldWithReadings(const rigs::CircuitAnswer& circuit, const ShortestDay& day) {
  return circuit.circuits.size() == 1 && day.elements.size() == 1 &&
         std::any_of(circuit.readings.begin(), circuit.readings.end(), [&](const ReadingDay& one) {
           return one.region == day.region && one.reading.name == day.reading;
         });
}

Told shortestText(const ShortestDay& day) {
  rigs::List limits{.items = {}, .joint = rigs::Joint::And};
  for (const physics::Current& limit : day.limits) limits.items.emplace_back(amount(limit));
  return Told(TOLD("Circuit", "%1 (%2): %3; %4."), day.reading, std::move(limits),
              elementsText(day), dayText(day.outcome, day.toBoil, day.day));
}

void saySplit(Answer& answer, std::size_t rig, const rigs::Split& split) {
  rigs::List parts{.items = {}, .joint = rigs::Joint::And};
  for (const rigs::SplitPart& part : split.parts)
    parts.items.emplace_back(Told(TOLD("Circuit", "%1 at %2 (%3)"),
                                  inWholeWatts(part.element.rating), amount(part.element.ratedAt),
                                  amount(part.current)));
  using Over = rigs::Template<1>;
  answer.goOn(
      rig,
      Told(split.imagined ? Over(TOLD("Circuit", "The rig's own power over two such circuits: %1."))
                          : Over(TOLD("Circuit", "The rig's own power over its two circuits: %1.")),
           std::move(parts)));
  std::vector<Told> told;
  for (const rigs::SplitPart& part : split.parts) {
    for (const rigs::CircuitVerdict& verdict : part.verdicts) {
      Told text = rigs::verdictText(verdict);
      if (std::find(told.begin(), told.end(), text) != told.end()) continue;
      answer.goOn(rig, Told(TOLD("Circuit", "· %1"), text));
      told.push_back(std::move(text));
    }
  }
}

// --- Rows.

Cell timeOrOutcome(Outcome outcome, const std::optional<physics::Time>& time) {
  if (outcome != Outcome::Done || !time) return rigs::Argument(outcomeWord(outcome));
  return hoursAndMinutes(time);
}

// A figure of every rig, and where the result has it if that is the same place for all.
struct Figures {
  std::vector<Cell> cells;
  std::optional<std::size_t> index = {};
  bool apart = false;

  void put(std::size_t rig, Cell cell, std::size_t at) {
    cells[rig] = std::move(cell);
    apart = apart || (index && *index != at);
    index = at;
  }
  bool none() const {
    return std::none_of(cells.begin(), cells.end(), [](const Cell& c) { return c.has_value(); });
  }
  std::string result(const std::string& list, const std::string& key) const {
    return index && !apart ? list + '/' + std::to_string(*index) + '/' + key : std::string();
  }
};

// One reading of one or several codes: what every rig has under it.
struct ReadingRow {
  rigs::List regions;
  Told name;
  Figures largest, toBoil, day, dayOnTwo;

  Told label() const { return Told(TOLD("Circuit", "%1, %2"), regions, name); }
  bool saysTheSameAs(const ReadingRow& other) const {
    return name == other.name && largest.cells == other.largest.cells &&
           toBoil.cells == other.toBoil.cells && day.cells == other.day.cells &&
           dayOnTwo.cells == other.dayOnTwo.cells;
  }
};

ReadingRow rowOf(const Case& of, const std::string& region, const Told& name) {
  const Figures none{.cells = std::vector<Cell>(of.count())};
  ReadingRow row{{{rigs::fromRules(region)}, rigs::Joint::And}, name, none, none, none, none};
  for (std::size_t i = 0; i < of.count(); ++i) {
    const rigs::CircuitAnswer& circuit = of.rig(i).circuit;
    for (std::size_t k = 0; k < circuit.readings.size(); ++k) {
      const ReadingDay& day = circuit.readings[k];
      if (day.region != region || !(day.reading.name == name) || row.largest.cells[i]) continue;
      row.largest.put(i, cellOf(day.largest.rating), k);
      row.toBoil.put(i, timeOrOutcome(day.outcome, day.toBoil), k);
      row.day.put(i, timeOrOutcome(day.outcome, day.day), k);
    }
    for (std::size_t k = 0; k < circuit.shortest.size(); ++k) {
      const ShortestDay& day = circuit.shortest[k];
      if (day.region == region && day.reading == name && day.elements.size() == 2)
        row.dayOnTwo.put(i, timeOrOutcome(day.outcome, day.day), k);
    }
  }
  return row;
}

std::vector<ReadingRow> rowsOf(const Case& of) {
  std::vector<std::pair<std::string, Told>> names;
  for (std::size_t i = 0; i < of.count(); ++i) {
    for (const ReadingDay& day : of.rig(i).circuit.readings) {
      std::pair name{day.region, day.reading.name};
      if (std::find(names.begin(), names.end(), name) == names.end())
        names.push_back(std::move(name));
    }
  }
  std::vector<ReadingRow> all;
  for (const auto& [region, name] : names) {
    ReadingRow one = rowOf(of, region, name);
    const auto same = std::find_if(
        all.begin(), all.end(), [&](const ReadingRow& other) { return other.saysTheSameAs(one); });
    if (same == all.end()) {
      all.push_back(std::move(one));
    } else {
      same->regions.items.push_back(one.regions.items.front());
    }
  }
  return all;
}

std::vector<Told> conditionsOf(const rigs::Split& split) {
  std::vector<Told> all;
  for (const rigs::SplitPart& part : split.parts)
    for (const rigs::CircuitVerdict& verdict : part.verdicts)
      for (Told& one : rigs::conditionsOf(verdict))
        if (std::find(all.begin(), all.end(), one) == all.end()) all.push_back(std::move(one));
  return all;
}

void addSplitRows(RigTable& table, const Case& of, Conditions& conditions) {
  const auto row = [&](Told label, const auto& cell, const RigTable::Options& options) {
    table.row(
        std::move(label),
        [&](std::size_t i) -> Cell {
          const auto& split = of.rig(i).circuit.split;
          return split && split->parts.size() == 2 ? cell(*split) : std::nullopt;
        },
        options);
  };
  table.heading(Told(TOLD("Circuit", "The rig's own power on two such circuits")));
  row(Told(TOLD("Circuit", "on the first")),
      [](const rigs::Split& s) { return cellOf(s.parts[0].element.rating); },
      {.result = "/circuit/split/parts/0/element/rating_W"});
  row(Told(TOLD("Circuit", "on the second")),
      [](const rigs::Split& s) { return cellOf(s.parts[1].element.rating); },
      {.result = "/circuit/split/parts/1/element/rating_W"});
  row(Told(TOLD("Circuit", "all rules together")),
      [&](const rigs::Split& s) -> Cell {
        return rigs::Argument(conditions.label(s.overall(), conditionsOf(s)));
      },
      {.result = "/circuit/split/verdict"});
}

}  // namespace

void sayReadings(Answer& answer, const Case& of) {
  bool any = false;
  for (std::size_t i = 0; i < of.count(); ++i) any |= !of.rig(i).circuit.readings.empty();
  if (!any) return;
  answer.heading(Told(
      TOLD("Circuit", "What would each way of counting allow, and how long is the day then?")));
  for (std::size_t i = 0; i < of.count(); ++i) sayLimits(answer, i, of.rig(i).circuit);
  answer.heading(Told(TOLD("Circuit", "What is the shortest day within the current?")));
  for (std::size_t i = 0; i < of.count(); ++i) {
    const rigs::CircuitAnswer& circuit = of.rig(i).circuit;
    Merged merged;
    for (const ShortestDay& day : circuit.shortest)
      if (!isToldWithReadings(circuit, day)) merged.add(day.region, shortestText(day));
    merged.sayTo(answer, i, false);
    if (circuit.split) saySplit(answer, i, *circuit.split);
  }
}

void addReadings(RigTable& table, const Case& of, Conditions& conditions) {
  const std::vector<ReadingRow> all = rowsOf(of);
  if (all.empty()) return;
  const auto rows = [&](Told heading, Figures ReadingRow::*figures, const std::string& list,
                        const std::string& key) {
    table.heading(std::move(heading));
    for (const ReadingRow& row : all) {
      const Figures& found = row.*figures;
      if (found.none()) continue;
      table.row(row.label(), [&](std::size_t i) { return found.cells[i]; },
                {.result = found.result("/circuit/" + list, key)});
    }
  };
  rows(Told(TOLD("Circuit", "Largest element by each way of counting")), &ReadingRow::largest,
       "readings", "largest_element_W");
  rows(Told(TOLD("Circuit", "From mash to boil with it")), &ReadingRow::toBoil, "readings",
       "mash_to_boil_s");
  rows(Told(TOLD("Circuit", "The whole day with it")), &ReadingRow::day, "readings", "day_s");
  rows(Told(TOLD("Circuit", "The whole day with one on each of two such circuits")),
       &ReadingRow::dayOnTwo, "shortest_days", "day_s");
  addSplitRows(table, of, conditions);
}

}  // namespace gui::telling
