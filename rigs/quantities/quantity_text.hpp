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

namespace rigs {

// A share of a whole per time, such as boil-off in percent of the volume per hour.
using FractionPerTime = physics::Quantity<physics::si::frequency>;

enum class QuantityKind {
  Fraction,
  FractionRate,
  Power,
  Energy,
  Volume,
  Mass,
  Temperature,
  TemperatureDifference,
  TemperatureRate,
  Time,
  Length,
  Area,
  Velocity,
  Voltage,
  Current,
  Resistance,
  ResistancePerLength,
  Pressure,
  ThermalInsulance,
  ThermalConductivity,
  HeatTransferCoefficient,
  ThermalConductance,
  HeatCapacity,
  SpecificHeat,
  SpecificEnergy,
  HeatFlux,
  MassDensity,
  VolumePerMass,
  MassFlow,
  MassFlux,
  VolumeFlow,
};

// Which text belongs to which C++ type; a bare double is a fraction (of 1).
template <class Q>
struct KindOf;
template <QuantityKind K>
struct IsKind {
  static constexpr QuantityKind kind = K;
};
// clang-format off
template <> struct KindOf<double> : IsKind<QuantityKind::Fraction> {};
template <> struct KindOf<FractionPerTime> : IsKind<QuantityKind::FractionRate> {};
template <> struct KindOf<physics::Power> : IsKind<QuantityKind::Power> {};
template <> struct KindOf<physics::Energy> : IsKind<QuantityKind::Energy> {};
template <> struct KindOf<physics::Volume> : IsKind<QuantityKind::Volume> {};
template <> struct KindOf<physics::Mass> : IsKind<QuantityKind::Mass> {};
template <> struct KindOf<physics::Temperature> : IsKind<QuantityKind::Temperature> {};
template <> struct KindOf<physics::TemperatureDifference> : IsKind<QuantityKind::TemperatureDifference> {};
template <> struct KindOf<physics::TemperatureRate> : IsKind<QuantityKind::TemperatureRate> {};
template <> struct KindOf<physics::Time> : IsKind<QuantityKind::Time> {};
template <> struct KindOf<physics::Length> : IsKind<QuantityKind::Length> {};
template <> struct KindOf<physics::Area> : IsKind<QuantityKind::Area> {};
template <> struct KindOf<physics::Velocity> : IsKind<QuantityKind::Velocity> {};
template <> struct KindOf<physics::Voltage> : IsKind<QuantityKind::Voltage> {};
template <> struct KindOf<physics::Current> : IsKind<QuantityKind::Current> {};
template <> struct KindOf<physics::Resistance> : IsKind<QuantityKind::Resistance> {};
template <> struct KindOf<physics::ResistancePerLength> : IsKind<QuantityKind::ResistancePerLength> {};
template <> struct KindOf<physics::Pressure> : IsKind<QuantityKind::Pressure> {};
template <> struct KindOf<physics::ThermalInsulance> : IsKind<QuantityKind::ThermalInsulance> {};
template <> struct KindOf<physics::ThermalConductivity> : IsKind<QuantityKind::ThermalConductivity> {};
template <> struct KindOf<physics::HeatTransferCoefficient> : IsKind<QuantityKind::HeatTransferCoefficient> {};
template <> struct KindOf<physics::ThermalConductance> : IsKind<QuantityKind::ThermalConductance> {};
template <> struct KindOf<physics::HeatCapacity> : IsKind<QuantityKind::HeatCapacity> {};
template <> struct KindOf<physics::SpecificHeat> : IsKind<QuantityKind::SpecificHeat> {};
template <> struct KindOf<physics::SpecificEnergy> : IsKind<QuantityKind::SpecificEnergy> {};
template <> struct KindOf<physics::HeatFlux> : IsKind<QuantityKind::HeatFlux> {};
template <> struct KindOf<physics::MassDensity> : IsKind<QuantityKind::MassDensity> {};
template <> struct KindOf<physics::VolumePerMass> : IsKind<QuantityKind::VolumePerMass> {};
template <> struct KindOf<physics::MassFlow> : IsKind<QuantityKind::MassFlow> {};
template <> struct KindOf<physics::MassFlux> : IsKind<QuantityKind::MassFlux> {};
template <> struct KindOf<physics::VolumeFlow> : IsKind<QuantityKind::VolumeFlow> {};
// clang-format on

template <class Q>
inline constexpr QuantityKind kKindOf = KindOf<Q>::kind;
template <class Q>
concept Writable = requires {
  KindOf<Q>::kind;
};

// Either the quantity, or one sentence without a full stop that says what was found, what is
// accepted, and an example.
template <Writable Q>
struct ParseResult {
  std::optional<Q> quantity;
  std::string problem;  // "" exactly when there is a quantity

  explicit operator bool() const { return quantity.has_value(); }
  const Q& operator*() const { return *quantity; }
};

enum class UnitSystem { SI, UsCustomary };

struct FormatOptions {
  int significantDigits = 3;    // never rounds left of the point; trailing zeros are dropped
  std::optional<int> decimals;  // a fixed number of decimals instead, zeros kept: for tables

  bool operator==(const FormatOptions&) const = default;
};

namespace detail {
struct Reading {
  std::optional<double> si;
  std::string problem;
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
  if (!reading.si) return {std::nullopt, std::move(reading.problem)};
  return {detail::fromSiNumber<Q>(*reading.si), {}};
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

// "power"; "a power"; "3000 W"; the units named in messages; all single units of the kind.
std::string_view kindName(QuantityKind kind);
std::string_view kindExample(QuantityKind kind);
std::string_view usualUnits(QuantityKind kind);
std::vector<std::string> knownUnits(QuantityKind kind);

// Foreign text for a message: in quotes, shortened, control characters and broken UTF-8 as "?".
std::string quotedText(std::string_view text);

}  // namespace rigs
