// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/quantities/unit_table.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace rigs {
namespace {

constexpr Dimension kNumber{};
constexpr Dimension kLength{.length = 1};
constexpr Dimension kArea{.length = 2};
constexpr Dimension kVolume{.length = 3};
constexpr Dimension kMass{.mass = 1};
constexpr Dimension kTime{.time = 1};
constexpr Dimension kTemperature{.temperature = 1};
constexpr Dimension kVelocity{.length = 1, .time = -1};
constexpr Dimension kPressure{.length = -1, .mass = 1, .time = -2};
constexpr Dimension kEnergy{.length = 2, .mass = 1, .time = -2};
constexpr Dimension kPower{.length = 2, .mass = 1, .time = -3};
constexpr Dimension kVoltage{.length = 2, .mass = 1, .time = -3, .current = -1};
constexpr Dimension kCurrent{.current = 1};
constexpr Dimension kResistance{.length = 2, .mass = 1, .time = -3, .current = -2};

struct UnitRow {
  std::string_view symbols;   // separated by spaces; "_" stands for a space within
  std::string_view names;     // the same, written out
  std::string_view prefixes;  // letters of the metric prefixes in use with this unit
  Unit unit;
};

// Exact by definition unless said: yard and pound 1959, US gallon 231 in3, imperial gallon
// 4.54609 L (1985), International Table Btu (ISO 80000-5), mechanical horsepower 550 ft lbf/s.
constexpr std::array kRows{
    UnitRow{"%", "percent", "", {1.0, 100.0, kNumber}},

    UnitRow{"m", "metre metres meter meters", "kdcmu", {1.0, 1.0, kLength}},
    UnitRow{"in", "inch inches", "", {127.0, 5000.0, kLength, 0.0, Ladder::Length}},
    UnitRow{"ft", "foot feet", "", {3048.0, 1e4, kLength, 0.0, Ladder::Length}},
    UnitRow{"yd", "yard yards", "", {9144.0, 1e4, kLength}},

    UnitRow{
        "sq_m sqm", "square_metre square_metres square_meter square_meters", "", {1.0, 1.0, kArea}},
    UnitRow{"sq_in sqin", "square_inch square_inches", "", {64516.0, 1e8, kArea}},
    UnitRow{"sq_ft sqft", "square_foot square_feet", "", {9290304.0, 1e8, kArea}},

    UnitRow{"L l", "litre litres liter liters", "hdcmu", {1.0, 1e3, kVolume}},
    UnitRow{"cc", "", "", {1.0, 1e6, kVolume}},
    UnitRow{"cu_ft cuft", "cubic_foot cubic_feet", "", {28316846592.0, 1e12, kVolume}},
    UnitRow{"cu_in", "cubic_inch cubic_inches", "", {16387064.0, 1e12, kVolume}},
    UnitRow{"gal US_gal", "gallon gallons US_gallon US_gallons", "", {3785411784.0, 1e12, kVolume}},
    UnitRow{"qt US_qt", "quart quarts US_quart US_quarts", "", {946352946.0, 1e12, kVolume}},
    UnitRow{"pt US_pt", "pint pints US_pint US_pints", "", {473176473.0, 1e12, kVolume}},
    UnitRow{"cup US_cup", "cups US_cups", "", {2365882365.0, 1e13, kVolume}},
    UnitRow{"fl_oz floz US_fl_oz", "fluid_ounce fluid_ounces", "", {295735295625.0, 1e16, kVolume}},
    UnitRow{"imp_gal UK_gal",
            "imperial_gallon imperial_gallons imperial_gal imp_gallon imp_gallons",
            "",
            {454609.0, 1e8, kVolume}},
    UnitRow{"imp_qt UK_qt",
            "imperial_quart imperial_quarts imp_quart imp_quarts",
            "",
            {454609.0, 4e8, kVolume}},
    UnitRow{"imp_pt UK_pt",
            "imperial_pint imperial_pints imp_pint imp_pints",
            "",
            {454609.0, 8e8, kVolume}},
    UnitRow{"imp_fl_oz UK_fl_oz",
            "imperial_fluid_ounce imperial_fluid_ounces",
            "",
            {454609.0, 160e8, kVolume}},

    UnitRow{"g", "gram grams", "km", {1.0, 1e3, kMass}},
    UnitRow{"t", "tonne tonnes", "", {1e3, 1.0, kMass}},
    UnitRow{"lb lbs", "pound pounds", "", {45359237.0, 1e8, kMass, 0.0, Ladder::Mass}},
    UnitRow{"oz", "ounce ounces", "", {45359237.0, 16e8, kMass, 0.0, Ladder::Mass}},

    UnitRow{"s sec secs", "second seconds", "m", {1.0, 1.0, kTime, 0.0, Ladder::Time}},
    UnitRow{"min mins", "minute minutes", "", {60.0, 1.0, kTime, 0.0, Ladder::Time}},
    UnitRow{"h hr hrs", "hour hours", "", {3600.0, 1.0, kTime, 0.0, Ladder::Time}},
    UnitRow{"d", "day days", "", {86400.0, 1.0, kTime, 0.0, Ladder::Time}},

    UnitRow{"K", "kelvin kelvins", "", {1.0, 1.0, kTemperature}},
    UnitRow{"degC C", "celsius", "", {1.0, 1.0, kTemperature, 273.15}},
    UnitRow{"degF F", "fahrenheit", "", {5.0, 9.0, kTemperature, 459.67}},

    UnitRow{"mph", "", "", {44704.0, 1e5, kVelocity}},

    UnitRow{"Pa", "pascal pascals", "hkM", {1.0, 1.0, kPressure}},
    UnitRow{"bar", "", "m", {1e5, 1.0, kPressure}},
    UnitRow{"atm", "", "", {101325.0, 1.0, kPressure}},
    UnitRow{"psi", "", "", {8896443230521.0, 1290320000.0, kPressure}},
    // Columns of mercury at 0 °C and standard gravity, density 13595.1 kg/m3 by convention.
    UnitRow{"mmHg", "", "", {133.322387415, 1.0, kPressure}},
    UnitRow{"inHg", "", "", {3386.388640341, 1.0, kPressure}},

    UnitRow{"J", "joule joules", "kMG", {1.0, 1.0, kEnergy}},
    UnitRow{"Wh", "", "kM", {3600.0, 1.0, kEnergy}},
    UnitRow{"Btu", "", "", {105505585262.0, 1e8, kEnergy}},

    UnitRow{"W", "watt watts", "mkM", {1.0, 1.0, kPower}},
    UnitRow{"hp", "horsepower", "", {745.6998715822702, 1.0, kPower}},

    UnitRow{"V", "volt volts", "mk", {1.0, 1.0, kVoltage}},
    UnitRow{"A", "amp amps ampere amperes", "m", {1.0, 1.0, kCurrent}},
    UnitRow{"ohm ohms", "", "umkM", {1.0, 1.0, kResistance}},
};

struct Prefix {
  char letter;
  std::string_view name;
  double numerator;
  double denominator;
};
constexpr std::array kPrefixes{
    Prefix{'u', "micro", 1.0, 1e6}, Prefix{'m', "milli", 1.0, 1e3}, Prefix{'c', "centi", 1.0, 1e2},
    Prefix{'d', "deci", 1.0, 1e1},  Prefix{'h', "hecto", 1e2, 1.0}, Prefix{'k', "kilo", 1e3, 1.0},
    Prefix{'M', "mega", 1e6, 1.0},  Prefix{'G', "giga", 1e9, 1.0},
};

// 1000 / 1000 is 1: small whole factors keep the later product exact.
Unit scaled(Unit unit, const Prefix& prefix) {
  const double up = std::min(prefix.numerator, unit.denominator);
  unit.denominator /= up;
  unit.numerator *= prefix.numerator / up;
  unit.denominator *= prefix.denominator;
  unit.ladder = Ladder::None;
  return unit;
}

template <class Use>
void eachWord(std::string_view words, Use use) {
  while (!words.empty()) {
    const std::size_t end = std::min(words.find(' '), words.size());
    std::string word(words.substr(0, end));
    std::replace(word.begin(), word.end(), '_', ' ');
    use(std::move(word));
    words.remove_prefix(std::min(end + 1, words.size()));
  }
}

std::vector<UnitSpelling> buildSpellings() {
  std::vector<UnitSpelling> all;
  for (const UnitRow& row : kRows) {
    eachWord(row.symbols, [&](std::string symbol) {
      for (const Prefix& prefix : kPrefixes)
        if (row.prefixes.find(prefix.letter) != std::string_view::npos)
          all.push_back({prefix.letter + symbol, scaled(row.unit, prefix), true});
      all.push_back({std::move(symbol), row.unit, false});
    });
    eachWord(row.names, [&](std::string name) {
      for (const Prefix& prefix : kPrefixes)
        if (row.prefixes.find(prefix.letter) != std::string_view::npos)
          all.push_back({std::string(prefix.name) + name, scaled(row.unit, prefix), true});
      all.push_back({std::move(name), row.unit, false});
    });
  }
  std::sort(all.begin(), all.end(),
            [](const auto& a, const auto& b) { return a.spelling < b.spelling; });
  return all;
}

}  // namespace

const std::vector<UnitSpelling>& unitSpellings() {
  static const std::vector<UnitSpelling> all = buildSpellings();
  return all;
}

}  // namespace rigs
