// SPDX-License-Identifier: GPL-3.0-or-later
// Quantities as text: the one parser and the one printer for documents, terminal options and
// window fields. Neither looks at the locale, neither throws on bad text.
//
// Written numbers: "3000", "5.5", "5,5", "1e3", "1/2", "1 1/2". Refused: grouped digits
// ("1 250", "1,250.5"), and "1,250", which half the readers take for 1.25.
// Units: metric with prefixes, US customary ("gal", "qt", "fl oz" are US), imperial volumes as
// "imp gal"; products and quotients as "W/(m2 K)". "R 1.8" alone is a US R-value in h·ft²·°F/Btu
// and "RSI 0.3" one in m²·K/W; "14 AWG" is the copper area of a wire (ASTM B258).
#pragma once

#include <concepts>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "physics/units.hpp"
#include "rigs/quantities/quantity_fault.hpp"
#include "rigs/quantities/quantity_kinds.hpp"
#include "rigs/quantities/unit_system.hpp"

namespace rigs {

// Either the quantity, or why there is none.
template <Writable Q>
struct ParseResult {
  std::optional<Q> quantity;
  std::optional<QuantityFault> fault;  // exactly when there is no quantity

  explicit operator bool() const { return quantity.has_value(); }
  const Q& operator*() const { return *quantity; }
};

struct FormatOptions {
  int significantDigits = 3;    // never rounds left of the point; trailing zeros are dropped
  std::optional<int> decimals;  // a fixed number of decimals instead, zeros kept: for tables

  bool operator==(const FormatOptions&) const = default;
};

namespace detail {
struct Reading {
  std::optional<double> si;
  std::optional<QuantityFault> fault;
};
Reading read(QuantityKind kind, std::string_view text);
std::string print(QuantityKind kind, double si, UnitSystem system, const FormatOptions& options);
std::string printLike(QuantityKind kind, double si, std::string_view sample,
                      const FormatOptions& options);
// The number alone, in that text's unit.
double numberLike(QuantityKind kind, double si, std::string_view sample);
double toColumn(QuantityKind kind, double si, UnitSystem system);
double fromColumn(QuantityKind kind, double number, UnitSystem system);
std::string printExactly(QuantityKind kind, double si);

// The number in coherent SI units (kelvin for temperature points), and back. Both are exact.
template <Writable Q>
double siNumber(const Q& q) {
  if constexpr (std::same_as<Q, double>)
    return q;
  else if constexpr (std::same_as<Q, physics::Temperature>)
    return physics::inKelvin(q);
  else
    return q / (1.0 * typename Q::unit_type());
}
template <Writable Q>
Q fromSiNumber(double n) {
  if constexpr (std::same_as<Q, double>)
    return n;
  else if constexpr (std::same_as<Q, physics::Temperature>)
    return physics::kelvin(n);
  else
    return n * typename Q::unit_type();
}
}  // namespace detail

// A bare number between 0 and 1 is a fraction; every other quantity needs its unit.
template <Writable Q>
ParseResult<Q> parseQuantity(std::string_view text) {
  detail::Reading reading = detail::read(kKindOf<Q>, text);
  if (!reading.si) return {std::nullopt, std::move(reading.fault)};
  return {detail::fromSiNumber<Q>(*reading.si), {}};
}

// Whether the text is a quantity of that kind.
inline bool isQuantity(QuantityKind kind, std::string_view text) {
  return detail::read(kind, text).si.has_value();
}

// Number and unit as a reader of that system writes them: "850 W", "3.5 kW", "1 h 05 min".
// Numbers that are not finite print as "unknown".
template <Writable Q>
std::string format(const Q& q, UnitSystem system, const FormatOptions& options = {}) {
  return detail::print(kKindOf<Q>, detail::siNumber(q), system, options);
}

// In the unit of a text that parses, so that an answer follows its question: "5 kW" for "90 kW".
// Falls back to SI.
template <Writable Q>
std::string formatLike(const Q& q, std::string_view sample, const FormatOptions& options = {}) {
  return detail::printLike(kKindOf<Q>, detail::siNumber(q), sample, options);
}

// All digits, in coherent SI units: parsing the text gives the same bits.
template <Writable Q>
std::string formatExactly(const Q& q) {
  return detail::printExactly(kKindOf<Q>, detail::siNumber(q));
}

// Columns, axes and fields have one fixed unit for each kind and system.
std::string_view unitLabel(QuantityKind kind, UnitSystem system);
template <Writable Q>
std::string_view unitLabel(UnitSystem system) {
  return unitLabel(kKindOf<Q>, system);
}
template <Writable Q>
double numberIn(const Q& q, UnitSystem system) {
  return detail::toColumn(kKindOf<Q>, detail::siNumber(q), system);
}
template <Writable Q>
Q fromNumberIn(double number, UnitSystem system) {
  return detail::fromSiNumber<Q>(detail::fromColumn(kKindOf<Q>, number, system));
}

// A plain number with a decimal point; never "-0", never a thousands separator.
std::string formatNumber(double number, const FormatOptions& options = {});

// The number alone, in the unit that unitLabel() names.
template <Writable Q>
std::string formatValue(const Q& q, UnitSystem system, const FormatOptions& options = {}) {
  return formatNumber(numberIn(q, system), options);
}

// "3000 W"; the units named in messages, the first of which is offered for a bare number; all
// single units of the kind.
std::string_view kindExample(QuantityKind kind);
std::string_view usualUnits(QuantityKind kind);
std::vector<std::string> knownUnits(QuantityKind kind);

// Foreign text for a message: in quotes, shortened, control characters and broken UTF-8 as "?".
std::string quotedText(std::string_view text);

}  // namespace rigs
