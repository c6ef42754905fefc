// SPDX-License-Identifier: GPL-3.0-or-later
// The grammar that joins units: "W/(m2 K)", "m²·K/W", "ft2*h*degF/Btu".
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "rigs/quantities/quantity_fault.hpp"
#include "rigs/quantities/unit_table.hpp"

namespace rigs {

struct UnitExpression {
  Unit unit{};
  bool single = false;                   // one plain unit, no power, product or quotient
  std::size_t length = 0;                // characters used
  std::optional<QuantityFault> fault{};  // why it was not understood
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
