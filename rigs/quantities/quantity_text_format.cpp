// SPDX-License-Identifier: GPL-3.0-or-later
// The printer.
#include <algorithm>
#include <array>
#include <cassert>
#include <charconv>
#include <cmath>
#include <string>
#include <vector>

#include "rigs/quantities/kind_facts.hpp"
#include "rigs/quantities/quantity_text.hpp"
#include "rigs/quantities/unit_expression.hpp"

namespace rigs {
namespace {

using K = QuantityKind;

// The units a quantity is shown in, from small to large: "W 1000 kW" means W below 1000 W. The
// column unit is the one for tables. Times are shown by hours and minutes, see duration().
struct Shown {
  K kind;
  std::string_view si;
  std::string_view siColumn;
  std::string_view us;
  std::string_view usColumn;
};

// Electricity is bought and sold in W and kWh everywhere, so power and energy do not change.
constexpr std::array kShown{
    Shown{K::Fraction, "%", "%", "%", "%"},
    Shown{K::FractionRate, "%/h", "%/h", "%/h", "%/h"},
    Shown{K::Power, "W 1e3 kW", "W", "W 1e3 kW", "W"},
    Shown{K::Energy, "Wh 100 kWh", "kWh", "Wh 100 kWh", "kWh"},
    Shown{K::Volume, "mL 1e3 L", "L", "US_fl_oz 32 US_gal", "US_gal"},
    Shown{K::Mass, "g 1e3 kg", "kg", "oz 16 lb", "lb"},
    Shown{K::Temperature, "°C", "°C", "°F", "°F"},
    Shown{K::TemperatureDifference, "K", "K", "°F", "°F"},
    Shown{K::TemperatureRate, "°C/min", "°C/min", "°F/min", "°F/min"},
    Shown{K::Time, "s", "min", "s", "min"},
    Shown{K::Length, "mm 100 cm 100 m", "m", "in 36 ft", "in"},
    Shown{K::Area, "mm² 100 cm² 1e3 m²", "m²", "in² 144 ft²", "ft²"},
    Shown{K::Velocity, "m/s", "m/s", "ft/s", "ft/s"},
    Shown{K::Voltage, "V", "V", "V", "V"},
    Shown{K::Current, "A", "A", "A", "A"},
    Shown{K::Resistance, "mΩ 1e3 Ω", "Ω", "mΩ 1e3 Ω", "Ω"},
    Shown{K::ResistancePerLength, "mΩ/m", "mΩ/m", "mΩ/ft", "mΩ/ft"},
    Shown{K::Pressure, "Pa 1e3 kPa", "kPa", "inHg", "inHg"},
    Shown{K::ThermalInsulance, "m²·K/W", "m²·K/W", "ft²·h·°F/Btu", "ft²·h·°F/Btu"},
    Shown{K::ThermalConductivity, "W/(m·K)", "W/(m·K)", "Btu/(h·ft·°F)", "Btu/(h·ft·°F)"},
    Shown{K::HeatTransferCoefficient, "W/(m²·K)", "W/(m²·K)", "Btu/(h·ft²·°F)", "Btu/(h·ft²·°F)"},
    Shown{K::ThermalConductance, "W/K", "W/K", "Btu/(h·°F)", "Btu/(h·°F)"},
    Shown{K::HeatCapacity, "J/K 1e3 kJ/K", "kJ/K", "Btu/°F", "Btu/°F"},
    Shown{K::SpecificHeat, "J/(kg·K) 1e3 kJ/(kg·K)", "J/(kg·K)", "Btu/(lb·°F)", "Btu/(lb·°F)"},
    Shown{K::SpecificEnergy, "J/kg 1e3 kJ/kg", "kJ/kg", "Btu/lb", "Btu/lb"},
    Shown{K::HeatFlux, "W/m² 1e4 W/cm²", "W/m²", "W/ft² 144 W/in²", "W/ft²"},
    Shown{K::MassDensity, "kg/m³", "kg/m³", "lb/ft³", "lb/ft³"},
    Shown{K::VolumePerMass, "L/kg", "L/kg", "US_qt/lb", "US_qt/lb"},
    Shown{K::MassFlow, "kg/h", "kg/h", "lb/h", "lb/h"},
    Shown{K::MassFlux, "kg/(m²·h)", "kg/(m²·h)", "lb/(ft²·h)", "lb/(ft²·h)"},
    Shown{K::VolumeFlow, "L/h", "L/h", "US_gal/h", "US_gal/h"},
};

// What may be read instead by choice, by its place in unitsOf() its group.
struct Other {
  K kind;
  std::size_t choice;
  std::string_view units, column;
};
constexpr std::array kOthers{
    Other{K::Volume, 2, "imp_fl_oz 32 imp_gal", "imp_gal"},
    Other{K::VolumeFlow, 2, "imp_gal/h", "imp_gal/h"},
    Other{K::VolumePerMass, 2, "imp_qt/lb", "imp_qt/lb"},
    Other{K::Power, 1, "Btu/h", "Btu/h"},
    Other{K::Energy, 1, "kJ 1e3 MJ", "MJ"},
    Other{K::Energy, 2, "Btu", "Btu"},
    Other{K::Pressure, 2, "hPa", "hPa"},
    Other{K::Pressure, 3, "psi", "psi"},
};

struct Step {
  std::string label;
  Unit unit;
  double upTo = 0.0;  // the largest number before the next unit takes over; 0 for the last
};
struct Style {
  std::vector<Step> steps;
  Step column;
};

std::string spaced(std::string_view label) {
  std::string result(label);
  std::replace(result.begin(), result.end(), '_', ' ');
  return result;
}

Style styleFrom(std::string_view units, std::string_view column) {
  Style style;
  while (!units.empty()) {
    const std::size_t end = std::min(units.find(' '), units.size());
    const std::string_view word = units.substr(0, end);
    if ('0' <= word.front() && word.front() <= '9') {
      std::from_chars(word.data(), word.data() + word.size(), style.steps.back().upTo);
    } else {
      style.steps.push_back({spaced(word), detail::unitOf(spaced(word))});
    }
    units.remove_prefix(std::min(end + 1, units.size()));
  }
  style.column = {spaced(column), detail::unitOf(spaced(column))};
  return style;
}

const Style& otherStyle(std::size_t index) {
  static const auto styles = [] {
    std::array<Style, kOthers.size()> all;
    for (std::size_t i = 0; i < kOthers.size(); ++i)
      all[i] = styleFrom(kOthers[i].units, kOthers[i].column);
    return all;
  }();
  return styles[index];
}

const Style& styleOf(QuantityKind kind, UnitSystem system) {
  if (const auto group = groupOf(kind); group && system.hasChoices()) {
    const auto other = std::find_if(kOthers.begin(), kOthers.end(), [&](const Other& one) {
      return one.kind == kind && one.choice == system.choiceOf(*group);
    });
    if (other != kOthers.end())
      return otherStyle(static_cast<std::size_t>(other - kOthers.begin()));
  }
  static const auto styles = [] {
    std::array<std::array<Style, 2>, kShown.size()> all;
    for (std::size_t i = 0; i < kShown.size(); ++i) {
      assert(kShown[i].kind == static_cast<K>(i) && detail::kKindFacts[i].kind == kShown[i].kind);
      all[i] = {styleFrom(kShown[i].si, kShown[i].siColumn),
                styleFrom(kShown[i].us, kShown[i].usColumn)};
    }
    return all;
  }();
  return styles[static_cast<std::size_t>(kind)][system.isMetric(kind) ? 0 : 1];
}

double inUnit(QuantityKind kind, double si, const Unit& unit) {
  return kind == K::Temperature ? detail::pointFromSi(si, unit) : detail::fromSi(si, unit);
}

double valueOf(std::string_view number) {
  double value = 0.0;
  std::from_chars(number.data(), number.data() + number.size(), value);
  return value;
}

std::string fixed(double number, int decimals) {
  std::array<char, 400> buffer;  // 309 digits, a point and 17 decimals
  const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), number,
                                 std::chars_format::fixed, decimals)
                       .ptr;
  std::string text(buffer.data(), end);
  if (text.starts_with('-') && text.find_first_not_of("-0.") == std::string::npos) text.erase(0, 1);
  return text;
}

std::string withoutTrailingZeros(std::string text) {
  if (text.find('.') == std::string::npos) return text;
  text.erase(text.find_last_not_of('0') + 1);
  if (text.ends_with('.')) text.pop_back();
  return text;
}

// "45 s", "12 min 30 s", "1 h 05 min": nobody reads 65 minutes as 1.08 h.
std::string duration(double si, const FormatOptions& options) {
  const double size = std::abs(si);
  if (size < 59.5 || size > 1e12) return formatNumber(si, options) + " s";
  const std::string sign = si < 0.0 ? "-" : "";
  const double whole = std::round(size);
  if (whole < 3600.0) {
    const double minutes = std::floor(whole / 60.0);
    const double seconds = whole - 60.0 * minutes;
    return sign + fixed(minutes, 0) + " min" +
           (seconds > 0.0 ? ' ' + fixed(seconds, 0) + " s" : std::string());
  }
  const double all = std::round(size / 60.0);
  const double hours = std::floor(all / 60.0);
  const double minutes = all - 60.0 * hours;
  if (minutes == 0.0) return sign + fixed(hours, 0) + " h";
  return sign + fixed(hours, 0) + " h " + (minutes < 10.0 ? "0" : "") + fixed(minutes, 0) + " min";
}

}  // namespace

std::string formatNumber(double number, const FormatOptions& options) {
  if (!std::isfinite(number)) return "unknown";
  if (options.decimals) return fixed(number, std::clamp(*options.decimals, 0, 17));
  const int digits = std::clamp(options.significantDigits, 1, 17);
  std::array<char, 40> buffer;
  const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), number,
                                 std::chars_format::scientific, digits - 1)
                       .ptr;
  const std::string_view scientific(buffer.data(), static_cast<std::size_t>(end - buffer.data()));
  const std::size_t e = scientific.find('e');
  int exponent = 0;  // after rounding: 9.996 has exponent 1 at three digits
  const char* first = scientific.data() + e + (scientific[e + 1] == '+' ? 2 : 1);
  std::from_chars(first, end, exponent);
  if (number != 0.0 && (exponent < -6 || exponent > 15))
    return withoutTrailingZeros(std::string(scientific.substr(0, e))) +
           std::string(scientific.substr(e));
  return withoutTrailingZeros(fixed(number, std::max(0, digits - 1 - exponent)));
}

std::string_view unitLabel(QuantityKind kind, UnitSystem system) {
  return styleOf(kind, system).column.label;
}

namespace detail {

std::string print(QuantityKind kind, double si, UnitSystem system, const FormatOptions& options) {
  if (!std::isfinite(si)) return "unknown";
  if (kind == K::Time) return duration(si, options);
  FormatOptions digits = options;
  // Near the ice point a temperature has no more digits than elsewhere.
  if (kind == K::Temperature && !digits.decimals) {
    digits.decimals = std::max(0, options.significantDigits - 2);
  }
  const bool trim = !options.decimals;
  // The height of the sea is 0 m, and so is no cable.
  const bool none = kind == K::Length && si == 0.0;
  const Style& style = styleOf(kind, system);
  for (const Step& step : style.steps) {
    std::string number = formatNumber(inUnit(kind, si, step.unit), digits);
    // Compared after rounding, so that 999.7 W is "1 kW" and not "1000 W".
    if (&step != &style.steps.back() && (none || std::abs(valueOf(number)) >= step.upTo)) continue;
    if (kind == K::Temperature && trim) number = withoutTrailingZeros(std::move(number));
    return number + ' ' + step.label;
  }
  return "unknown";
}

double toColumn(QuantityKind kind, double si, UnitSystem system) {
  return inUnit(kind, si, styleOf(kind, system).column.unit);
}

double fromColumn(QuantityKind kind, double number, UnitSystem system) {
  const Unit& unit = styleOf(kind, system).column.unit;
  return kind == K::Temperature ? pointToSi(number, unit) : toSi(number, unit);
}

std::string printExactly(QuantityKind kind, double si) {
  if (!std::isfinite(si)) return "unknown";
  const bool bare = kind == K::Fraction && 0.0 <= si && si <= 1.0;
  const double number = kind == K::Fraction && !bare ? 100.0 * si : si;
  // 5e6 W is "5000000 W": people read this, too.
  const double size = std::abs(number);
  const auto style = size == 0.0 || (1e-5 <= size && size < 1e15) ? std::chars_format::fixed
                                                                  : std::chars_format::scientific;
  std::array<char, 64> buffer;
  const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(),
                                 number == 0.0 ? 0.0 : number, style)
                       .ptr;
  const std::string text(buffer.data(), end);
  if (bare) return text;
  return text + ' ' + printedCharacters(factsOf(kind).coherent);
}

}  // namespace detail
}  // namespace rigs
