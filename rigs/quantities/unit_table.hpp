// SPDX-License-Identifier: GPL-3.0-or-later
// Every unit that may be written, and the grammar that joins them: "W/(m2 K)", "m²·K/W",
// "ft2*h*degF/Btu". Serves rigs/quantity_text; nobody else needs it.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace rigs {

// Powers of the SI base units.
struct Dimension {
  int length = 0;
  int mass = 0;
  int time = 0;
  int temperature = 0;
  int current = 0;

  bool operator==(const Dimension&) const = default;
};

// Units that are written one after another in falling order: 1 h 30 min, 14 lb 5 oz, 5 ft 10 in.
enum class Ladder { None, Time, Mass, Length };

// SI number = written number * numerator / denominator. Two factors instead of one, because
// 27 L is then 27 / 1000 m3, rounded once.
struct Unit {
  double numerator = 1.0;
  double denominator = 1.0;
  Dimension dimension{};
  double pointShift = 0.0;  // added to a written temperature point first: 459.67 for °F
  Ladder ladder = Ladder::None;
};

struct UnitSpelling {
  std::string spelling;
  Unit unit;
  bool prefixed = false;  // the first letters are a metric prefix
};

// All single units with all their prefixes, sorted by spelling.
const std::vector<UnitSpelling>& unitSpellings();

struct UnitExpression {
  Unit unit{};
  bool single = false;     // one plain unit, no power, product or quotient
  std::size_t length = 0;  // characters used
  std::string problem{};   // "" when understood; otherwise the end of a sentence about the text
};

// Reads a unit from the start of text that went through plainCharacters(). It ends before a digit
// that begins another number. `ladderAllowed` settles "5ft2in": with it, the 2 begins a number.
UnitExpression readUnitExpression(std::string_view text, bool ladderAllowed);

// Degree and micro signs, raised digits, dots, dashes and odd spaces as ASCII ("°F" is "degF",
// "m²" is "m^2"). Empty where text holds anything else that is not ASCII, and for empty text.
std::string plainCharacters(std::string_view text);

// The other way, for showing: "m^2*degC" is "m²·°C".
std::string printedCharacters(std::string_view plain);

}  // namespace rigs
