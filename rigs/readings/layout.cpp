// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/readings/layout.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <utility>

#include "rigs/quantities/digits.hpp"

namespace rigs::readings {
namespace {

// No thermometer in a kettle reads more in °C.
constexpr double kOnlyFahrenheit = 108.0;

std::string lower(std::string_view text) {
  std::string low;
  for (const char c : text) low += 'A' <= c && c <= 'Z' ? static_cast<char>(c + 32) : c;
  return low;
}

bool isMoment(std::string_view cell) { return momentFrom(cell).has_value(); }
bool isValue(std::string_view cell) { return isMoment(cell) || numberFrom(cell).has_value(); }

bool hasComma(std::string_view cell) { return cell.find(',') != std::string_view::npos; }

// Whether blanks part it: then no comma stands in its moment or behind a cell.
bool isParted(const std::string_view line) {
  std::vector<std::string_view> cells;
  cellsOf(line, ' ', cells);
  if (cells.size() < 2 || hasComma(cells[0])) return false;
  const bool listed = std::any_of(cells.begin(), cells.end(), [](std::string_view cell) {
    return cell.find(", ") != std::string_view::npos || cell.ends_with(',');
  });
  if (listed) return false;
  const auto first = momentFrom(cells[0]);
  const bool dateAlone = first && !first->secondsOfDay;
  return !dateAlone || !hasComma(cells[1]);
}

char separatorOf(const std::vector<std::string_view>& lines) {
  for (const char sign : {'\t', ';'}) {
    const bool all = std::all_of(lines.begin(), lines.end(), [&](std::string_view line) {
      return line.find(sign) != std::string_view::npos;
    });
    if (all && !lines.empty()) return sign;
  }
  const bool commas = std::any_of(lines.begin(), lines.end(), hasComma);
  const bool parted = std::all_of(lines.begin(), lines.end(), isParted);
  return commas && !parted ? ',' : ' ';
}

struct HeadWord {
  std::string_view word;
  ColumnOf of;
};
// The first that stands in a head counts.
constexpr std::array kHeadWords{
    HeadWord{"temp", ColumnOf::Temperature},  HeadWord{"wort", ColumnOf::Temperature},
    HeadWord{"würze", ColumnOf::Temperature}, HeadWord{"energ", ColumnOf::Energy},
    HeadWord{"kwh", ColumnOf::Energy},        HeadWord{"meter", ColumnOf::Energy},
    HeadWord{"zähler", ColumnOf::Energy},     HeadWord{"volum", ColumnOf::Volume},
    HeadWord{"gravity", ColumnOf::Gravity},   HeadWord{"stammwürze", ColumnOf::Gravity},
    HeadWord{"event", ColumnOf::Event},       HeadWord{"note", ColumnOf::Event},
    HeadWord{"ereignis", ColumnOf::Event},    HeadWord{"time", ColumnOf::Time},
    HeadWord{"zeit", ColumnOf::Time},         HeadWord{"clock", ColumnOf::Time},
    HeadWord{"uhr", ColumnOf::Time},          HeadWord{"elapsed", ColumnOf::Time},
    HeadWord{"date", ColumnOf::Date},         HeadWord{"datum", ColumnOf::Date},
    HeadWord{"°c", ColumnOf::Temperature},    HeadWord{"°f", ColumnOf::Temperature}};
// Thermometers beside the wort's.
constexpr std::array<std::string_view, 5> kElsewhere{"room", "ambient", "raum", "umgebung",
                                                     "outside"};

// "°C" of "Temp (°C)", "Temp [°C]" and "Temp, °C".
std::string_view unitWithin(std::string_view head) {
  const auto open = head.find_last_of("([,");
  if (open == std::string_view::npos) return {};
  std::string_view unit = head.substr(open + 1);
  while (!unit.empty() && (unit.back() == ')' || unit.back() == ']')) unit.remove_suffix(1);
  return trimmed(unit);
}

std::optional<Count> countFrom(std::string_view unit) {
  const std::string low = lower(unit);
  if (low == "s" || low == "sec" || low == "seconds" || low == "sekunden") return Count::Seconds;
  if (low == "min" || low == "minutes" || low == "minuten") return Count::Minutes;
  if (low == "h" || low == "hours" || low == "stunden") return Count::Hours;
  return std::nullopt;
}

ColumnOf fromUnit(const UnitOf& unit) {
  switch (unit.kind) {
    case Kind::Temperature:
      return ColumnOf::Temperature;
    case Kind::Energy:
      return ColumnOf::Energy;
    case Kind::Volume:
      return ColumnOf::Volume;
    case Kind::Gravity:
      break;
  }
  return ColumnOf::Gravity;
}

Column columnFrom(std::string_view head, Layout& layout) {
  Column column{std::string(trimmed(head))};
  const std::string low = lower(head);
  const auto contains = [&](std::string_view word) { return low.find(word) != std::string::npos; };
  const std::string_view unit = unitWithin(head);
  column.unit = unitFrom(unit);
  const auto count = countFrom(unit);
  if (std::any_of(kElsewhere.begin(), kElsewhere.end(), contains)) return column;
  for (const HeadWord& one : kHeadWords) {
    if (!contains(one.word)) continue;
    column.of = one.of;
    break;
  }
  if (column.of == ColumnOf::Unused && column.unit) column.of = fromUnit(*column.unit);
  if (column.of == ColumnOf::Unused && (count || countFrom(low))) column.of = ColumnOf::Time;
  if (column.of == ColumnOf::Time && (count || countFrom(low)))
    layout.count = count ? *count : *countFrom(low);
  return column;
}

bool hasOne(const Layout& layout, ColumnOf of) {
  return std::any_of(layout.columns.begin(), layout.columns.end(),
                     [&](const Column& column) { return column.of == of; });
}

// A row of cells to guess from: of each column the first that is a number, since a day may begin
// with an event.
std::vector<std::string_view> tellingCells(const std::vector<std::vector<std::string_view>>& rows,
                                           std::size_t first) {
  std::vector<std::string_view> cells = rows[first];
  for (std::size_t row = first + 1; row < rows.size(); ++row)
    for (std::size_t i = 0; i < std::min(cells.size(), rows[row].size()); ++i)
      if (!isValue(cells[i]) && numberFrom(rows[row][i])) cells[i] = rows[row][i];
  return cells;
}

// What heads do not say, from the cells of the first row below them: the first moment is when, the
// first number beside it the wort's temperature.
void guessFromCells(Layout& layout, const std::vector<std::string_view>& cells) {
  if (layout.columns.size() < cells.size()) layout.columns.resize(cells.size());
  const bool timeTold = hasOne(layout, ColumnOf::Time);
  for (std::size_t i = 0; i < cells.size() && !timeTold; ++i) {
    const auto moment = momentFrom(cells[i]);
    if (!moment || layout.columns[i].of != ColumnOf::Unused) continue;
    layout.columns[i].of = moment->secondsOfDay ? ColumnOf::Time : ColumnOf::Date;
    if (moment->secondsOfDay) break;
  }
  if (!hasOne(layout, ColumnOf::Time) && !layout.columns.empty()) {
    for (std::size_t i = 0; i < cells.size(); ++i) {
      if (layout.columns[i].of != ColumnOf::Unused || !numberFrom(cells[i])) continue;
      layout.columns[i].of = ColumnOf::Time;
      layout.count = Count::Minutes;
      layout.countIsGuessed = true;
      break;
    }
  }
  if (layout.hasHeads && hasOne(layout, ColumnOf::Temperature)) return;
  bool temperature = hasOne(layout, ColumnOf::Temperature);
  for (std::size_t i = 0; i < cells.size(); ++i) {
    Column& column = layout.columns[i];
    if (column.of != ColumnOf::Unused) continue;
    const auto number = numberFrom(cells[i]);
    if (!number) {
      if (!layout.hasHeads) column.of = ColumnOf::Event;
    } else if (const auto unit = unitFrom(number->rest)) {
      column.of = fromUnit(*unit);
      temperature = temperature || unit->kind == Kind::Temperature;
    } else if (!temperature) {
      column.of = ColumnOf::Temperature;
      temperature = true;
    }
  }
}

// A clock in a column that says seconds is a clock all the same, and numbers are none.
void settleCount(Layout& layout, const std::vector<std::vector<std::string_view>>& rows) {
  double most = 0.0;
  for (std::size_t i = 0; i < layout.columns.size(); ++i) {
    if (layout.columns[i].of != ColumnOf::Time) continue;
    for (const auto& row : rows) {
      if (i >= row.size() || row[i].empty()) continue;
      if (isMoment(row[i])) {
        layout.count = Count::Clock;
        layout.countIsGuessed = false;
        return;
      }
      if (const auto number = numberFrom(row[i])) most = std::max(most, number->value);
    }
  }
  if (layout.count == Count::Clock) {
    layout.count = Count::Minutes;
    layout.countIsGuessed = true;
  }
  // Three days of minutes are no brew.
  if (layout.countIsGuessed && most > 4320.0) layout.count = Count::Seconds;
}

void settleUnit(Layout& layout, const std::vector<std::vector<std::string_view>>& rows) {
  for (std::size_t i = 0; i < layout.columns.size(); ++i) {
    Column& column = layout.columns[i];
    if (column.of != ColumnOf::Temperature || (column.unit && !column.unitIsGuessed)) continue;
    std::size_t above = 0;
    std::size_t bare = 0;
    for (const auto& row : rows) {
      const auto number = i < row.size() ? numberFrom(row[i]) : std::nullopt;
      if (!number || !number->rest.empty()) continue;
      ++bare;
      above += number->value > kOnlyFahrenheit ? 1 : 0;
    }
    // One slip does not turn a night into another unit.
    column.unit = unitFrom(above > 0 && 3 * above >= bare ? "°F" : "°C");
    column.unitIsGuessed = bare > 0;
  }
}

std::optional<std::size_t> columnCalled(const Layout& layout, const std::string& called) {
  for (std::size_t i = 0; i < layout.columns.size(); ++i)
    if (lower(layout.columns[i].head) == lower(called) && !called.empty()) return i;
  std::size_t number = 0;
  const char* end = called.data() + called.size();
  const auto read = std::from_chars(called.data(), end, number);
  if (read.ec == std::errc() && read.ptr == end && number >= 1 && number <= layout.columns.size())
    return number - 1;
  return std::nullopt;
}

void correct(Layout& layout, const std::optional<std::string>& called, ColumnOf of,
             const std::string& name, Problems& problems) {
  if (!called) return;
  const auto which = columnCalled(layout, *called);
  if (!which) {
    problems.push_back(
        {Severity::Error, name,
         Told(
             TOLD("Readings", "there is no column %1; a head or a number from 1 to %2 is accepted"),
             Quoted{*called}, rigs::Count{static_cast<long long>(layout.columns.size())})});
    return;
  }
  for (Column& column : layout.columns)
    if (column.of == of) column.of = ColumnOf::Unused;
  layout.columns[*which].of = of;
}

// Where a line of words ends that began with no number.
bool beginsWord(char c) {
  return ('a' <= c && c <= 'z') || ('A' <= c && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80;
}

void blankCells(std::string_view line, std::vector<std::string_view>& cells) {
  bool sawNumber = false;
  while (!(line = trimmed(line)).empty()) {
    const std::size_t end = std::min(line.find_first_of(" \t"), line.size());
    const std::string_view word = line.substr(0, end);
    const bool letters = beginsWord(word.front());
    if (letters && sawNumber && !cells.empty()) {
      // "67 °C", "9:30 pm", "28 L hot"; or else words that go on to the end.
      const char* begin = cells.back().data();
      const auto longer = [&](std::size_t to) {
        return std::string_view(begin, static_cast<std::size_t>(line.data() - begin) + to);
      };
      const std::string hot = lower(line.substr(0, line.find(' ', end + 1)));
      if (unitFrom(hot) && hot.size() > end) {
        cells.back() = longer(hot.size());
        line.remove_prefix(hot.size());
        continue;
      }
      if (unitFrom(word) || lower(word) == "am" || lower(word) == "pm") {
        cells.back() = longer(end);
        line.remove_prefix(end);
        continue;
      }
      cells.push_back(line);
      return;
    }
    sawNumber = sawNumber || isDigit(word.front()) || word.front() == '-';
    cells.push_back(word);
    line.remove_prefix(end);
  }
}

Told unitTold(const Column& column) {
  if (!column.unit || column.of != ColumnOf::Temperature) return {};
  const Verbatim unit{std::string(degreesOf(*column.unit))};
  return column.unitIsGuessed ? Told(TOLD("Readings", "in %1, by their size"), unit)
                              : Told(TOLD("Readings", "in %1"), unit);
}

}  // namespace

void cellsOf(std::string_view line, char separator, std::vector<std::string_view>& cells) {
  cells.clear();
  if (separator == ' ') return blankCells(line, cells);
  bool quoted = false;
  std::size_t begin = 0;
  for (std::size_t i = 0; i <= line.size(); ++i) {
    if (i < line.size() && line[i] == '"') quoted = !quoted;
    if (i < line.size() && (quoted || line[i] != separator)) continue;
    cells.push_back(trimmed(line.substr(begin, i - begin)));
    begin = i + 1;
  }
}

Layout layoutOf(const std::vector<std::string_view>& lines, const Corrections& corrections,
                const std::string& name, Problems& problems) {
  Layout layout;
  if (lines.empty()) return layout;
  layout.separator = corrections.separator.value_or(separatorOf(lines));
  std::vector<std::vector<std::string_view>> rows(lines.size());
  for (std::size_t i = 0; i < lines.size(); ++i) cellsOf(lines[i], layout.separator, rows[i]);
  layout.hasHeads = std::none_of(rows.front().begin(), rows.front().end(), isValue);
  if (layout.hasHeads)
    for (const std::string_view head : rows.front())
      layout.columns.push_back(columnFrom(head, layout));
  const std::size_t first = layout.hasHeads ? 1 : 0;
  if (rows.size() > first) guessFromCells(layout, tellingCells(rows, first));
  correct(layout, corrections.time, ColumnOf::Time, name, problems);
  correct(layout, corrections.temperature, ColumnOf::Temperature, name, problems);
  if (first == 1) rows.erase(rows.begin());
  settleCount(layout, rows);
  if (corrections.count) {
    layout.count = *corrections.count;
    layout.countIsGuessed = false;
  }
  for (Column& column : layout.columns)
    if (column.of == ColumnOf::Temperature && corrections.temperatureUnit) {
      column.unit = corrections.temperatureUnit;
      column.unitIsGuessed = false;
    }
  settleUnit(layout, rows);
  return layout;
}

Told columnTold(const Column& column, std::size_t number) {
  const rigs::Count which{static_cast<long long>(number)};
  return column.head.empty() ? Told(TOLD("Readings", "column %1"), which)
                             : Told(TOLD("Readings", "column %1, %2"), which, Quoted{column.head});
}

Told countTold(Count count) {
  switch (count) {
    case Count::Clock:
      return Told(TOLD("Readings", "by the clock"));
    case Count::Seconds:
      return Told(TOLD("Readings", "in seconds since the day began"));
    case Count::Minutes:
      return Told(TOLD("Readings", "in minutes since the day began"));
    case Count::Hours:
      break;
  }
  return Told(TOLD("Readings", "in hours since the day began"));
}

Told layoutTold(const Layout& layout) {
  List parts{{}, Joint::Semicolon};
  for (std::size_t i = 0; i < layout.columns.size(); ++i) {
    const Column& column = layout.columns[i];
    const Told which = columnTold(column, i + 1);
    switch (column.of) {
      case ColumnOf::Time:
        parts.items.emplace_back(
            Told(TOLD("Readings", "time: %1, %2"), which, countTold(layout.count)));
        break;
      case ColumnOf::Temperature:
        parts.items.emplace_back(
            Told(TOLD("Readings", "temperature of the wort: %1, %2"), which, unitTold(column)));
        break;
      case ColumnOf::Date:
        parts.items.emplace_back(Told(TOLD("Readings", "date: %1"), which));
        break;
      case ColumnOf::Energy:
        parts.items.emplace_back(Told(TOLD("Readings", "energy meter: %1"), which));
        break;
      case ColumnOf::Volume:
        parts.items.emplace_back(Told(TOLD("Readings", "volume: %1"), which));
        break;
      case ColumnOf::Gravity:
        parts.items.emplace_back(Told(TOLD("Readings", "gravity: %1"), which));
        break;
      case ColumnOf::Event:
        parts.items.emplace_back(Told(TOLD("Readings", "events: %1"), which));
        break;
      case ColumnOf::Unused:
        parts.items.emplace_back(Told(TOLD("Readings", "not used: %1"), which));
        break;
    }
  }
  return Told::just(std::move(parts));
}

}  // namespace rigs::readings
