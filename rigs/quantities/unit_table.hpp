// SPDX-License-Identifier: GPL-3.0-or-later
// Every unit that may be written. Serves the parser and the printer; nobody else needs it.
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

}  // namespace rigs
