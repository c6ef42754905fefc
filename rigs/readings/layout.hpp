// SPDX-License-Identifier: GPL-3.0-or-later
// What stands where in lines of readings: guessed from their beginning, and corrected by whoever
// knows better.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "rigs/documents/problems.hpp"
#include "rigs/readings/cells.hpp"

namespace rigs::readings {

enum class ColumnOf { Unused, Date, Time, Temperature, Energy, Volume, Gravity, Event };

struct Column {
  std::string head;  // as it stands there; "" without one
  ColumnOf of = ColumnOf::Unused;
  std::optional<UnitOf> unit = {};  // where the head has one, or it was guessed
  bool unitIsGuessed = false;
};

enum class Count { Clock, Seconds, Minutes, Hours };  // the last three since the day began

struct Layout {
  char separator = ' ';  // ' ' is any number of blanks
  bool hasHeads = false;
  Count count = Count::Clock;
  bool countIsGuessed = false;
  std::vector<Column> columns;
};

struct Corrections {
  std::optional<char> separator = {};
  std::optional<std::string> time = {}, temperature = {};  // a column's head or its number
  std::optional<UnitOf> temperatureUnit = {};
  std::optional<Count> count = {};
  bool leaveOutBadRows = false;

  bool operator==(const Corrections&) const = default;
};

// The cells of a line. Between blanks, a unit stays with its number and words stay together.
void cellsOf(std::string_view line, char separator, std::vector<std::string_view>& cells);

// From the first lines that say anything. What cannot be corrected so is told, with `name` as its
// place.
Layout layoutOf(const std::vector<std::string_view>& lines, const Corrections& corrections,
                const std::string& name, Problems& problems);

// "column 3, "T wort""; `number` counts from 1.
Told columnTold(const Column& column, std::size_t number);
Told countTold(Count count);  // "in minutes since the day began"
// "separator: semicolon; time: column 1, "Uhrzeit"; temperature: column 3 in °C": for a person to
// check.
Told layoutTold(const Layout& layout);

}  // namespace rigs::readings
