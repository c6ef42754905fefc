// SPDX-License-Identifier: GPL-3.0-or-later
// Lines of readings, typed by hand or written by any logger: what they say, and what is wrong with
// which line.
//
// A line has a moment and what was read, with or without its unit: "21:10 66,3 °C", "22:00 2.86
// kWh", "20:45 lid on". A first line without numbers heads the columns. Lines that begin with # are
// notes. Clocks may pass midnight; seconds, minutes or hours since the day began do as well.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "rigs/documents/problems.hpp"
#include "rigs/readings/layout.hpp"
#include "rigs/readings/reading.hpp"

namespace rigs::readings {

// What is known where they were read.
struct Setting {
  std::string name = "readings";  // of the file, for problems: "night.csv:12"
  physics::Time startOfDay;       // from midnight, within a day
  physics::Temperature boiling;   // of wort there
};

struct ReadLines {
  Layout layout;
  std::vector<Reading> readings;  // in the order of time
  std::size_t rows = 0;           // that should have said something
  std::size_t leftOut = 0;        // of which these did not, and that was allowed
  // Where dates stand there: the midnight before the plan's day, in seconds since 1970 by the clock
  // of that place, or by universal time where offsets stand there, too.
  std::optional<double> midnight = {};
  bool isUniversal = false;
};

// Every row that is wrong is a problem with its line; a warning where such rows may be left out,
// and what is left is then read. No more than kMostNamed of them, and then how many more. Nothing
// to read is an error; what tells little, one reading alone or all alike, is a warning.
ReadLines readLines(std::string_view text, const Setting& setting, const Corrections& corrections,
                    Problems& problems);

inline constexpr std::size_t kMostNamed = 100;
// More than any day's: what follows is not looked at.
inline constexpr std::size_t kLargestLog = std::size_t{128} * 1024 * 1024;

}  // namespace rigs::readings
