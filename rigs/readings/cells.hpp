// SPDX-License-Identifier: GPL-3.0-or-later
// One cell of a table of readings: a moment, a number with or without its unit, an event.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "rigs/readings/reading.hpp"

namespace rigs::readings {

inline constexpr double kHour = 3600.0, kDay = 86400.0;  // s

// Without blanks at its ends.
std::string_view withoutBlanks(std::string_view text);
// The same, and without a pair of quotation marks around it.
std::string_view trimmed(std::string_view cell);

// "21:05", "9:05:30 pm", "2026-03-01T21:05", "1.3.2026 21:05", "2026-03-01 21:05:00+01:00", or a
// date alone. Offsets from universal time are taken off, so that a change of clock does not show.
struct Moment {
  std::optional<std::int64_t> day;     // from 1970-01-01
  std::optional<double> secondsOfDay;  // may lie beyond the day where an offset was taken off
  bool universal = false;              // an offset or "Z" stood there
};
std::optional<Moment> momentFrom(std::string_view cell);

enum class Kind { Temperature, Energy, Volume, Gravity };
struct UnitOf {
  Kind kind;
  double factor = 1.0;  // SI = number * factor + shift
  double shift = 0.0;
  bool hot = false;    // of a volume: "L hot"
  bool plato = false;  // not a factor: see gravityFromPlato()

  bool operator==(const UnitOf&) const = default;
};
// "°C", "degF", "kWh", "L hot", "SG"; nothing where it is none of these.
std::optional<UnitOf> unitFrom(std::string_view text);
// "°C", "°F" or "K" of a temperature's unit.
std::string_view degreesOf(const UnitOf& unit);

struct CellNumber {
  double value = 0.0;
  double lastDigit = 1.0;      // 0.1 of "67.2"
  bool comma = false;          // its decimal sign
  std::string_view rest = {};  // behind it
};
// A plain number at the cell's beginning, with point or comma; never one that is not finite.
std::optional<CellNumber> numberFrom(std::string_view cell);

// "lid on", "Deckel auf", "plugged in".
std::optional<Event> eventFrom(std::string_view cell);

}  // namespace rigs::readings
