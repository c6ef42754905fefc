// SPDX-License-Identifier: GPL-3.0-or-later
// What parser and printer both know about each kind of quantity.
#pragma once

#include <array>
#include <string_view>

#include "rigs/quantities/quantity_kinds.hpp"
#include "rigs/quantities/unit_table.hpp"

namespace rigs::detail {

struct KindFacts {
  QuantityKind kind;
  std::string_view example;   // "3000 W"
  std::string_view units;     // the usual ones, for messages; the first is offered for bare numbers
  std::string_view coherent;  // SI, as a unit that parses
};

// In the order of the enumeration.
inline constexpr std::array kKindFacts{
    KindFacts{QuantityKind::Fraction, "4.5 %", "%", "%"},
    KindFacts{QuantityKind::FractionRate, "8 %/h", "%/h, %/min", "s^-1"},
    KindFacts{QuantityKind::Power, "3000 W", "W, kW, hp, Btu/h", "W"},
    KindFacts{QuantityKind::Energy, "2.4 kWh", "kWh, Wh, kJ, MJ, Btu", "J"},
    KindFacts{QuantityKind::Volume, "27 L", "L, mL, US gal, US qt, imp gal", "m^3"},
    KindFacts{QuantityKind::Mass, "6.5 kg", "kg, g, lb, oz", "kg"},
    KindFacts{QuantityKind::Temperature, "66.7 °C", "°C, °F, K", "K"},
    KindFacts{QuantityKind::TemperatureDifference, "2 K", "K, °C, °F", "K"},
    KindFacts{QuantityKind::TemperatureRate, "1 °C/min", "°C/min, K/min, °F/min", "K/s"},
    KindFacts{QuantityKind::Time, "1 h 30 min", "min, h, s", "s"},
    KindFacts{QuantityKind::Length, "355 mm", "mm, cm, m, in, ft", "m"},
    KindFacts{QuantityKind::Area, "0.1 m2", "m2, cm2, mm2, in2, ft2, AWG", "m^2"},
    KindFacts{QuantityKind::Velocity, "0.5 m/s", "m/s, km/h, ft/min, mph", "m/s"},
    KindFacts{QuantityKind::Voltage, "230 V", "V, kV", "V"},
    KindFacts{QuantityKind::Current, "15 A", "A, mA", "A"},
    KindFacts{QuantityKind::Resistance, "17.6 ohm", "ohm, mohm", "ohm"},
    KindFacts{QuantityKind::ResistancePerLength, "8.3 mohm/m", "mohm/m, ohm/km, mohm/ft", "ohm/m"},
    KindFacts{QuantityKind::Pressure, "101.3 kPa", "kPa, hPa, mbar, inHg, psi", "Pa"},
    KindFacts{QuantityKind::ThermalInsulance, "0.3 m2*K/W",
              R"(m2*K/W, ft2*h*degF/Btu, or as "R 1.8")", "m^2*K/W"},
    KindFacts{QuantityKind::ThermalConductivity, "0.035 W/(m K)", "W/(m K), Btu/(h ft °F)",
              "W/(m*K)"},
    KindFacts{QuantityKind::HeatTransferCoefficient, "10 W/(m2 K)", "W/(m2 K), Btu/(h ft2 °F)",
              "W/(m^2*K)"},
    KindFacts{QuantityKind::ThermalConductance, "5 W/K", "W/K, Btu/(h °F)", "W/K"},
    KindFacts{QuantityKind::HeatCapacity, "2.5 kJ/K", "J/K, kJ/K, Wh/K, Btu/°F", "J/K"},
    KindFacts{QuantityKind::SpecificHeat, "500 J/(kg K)", "J/(kg K), kJ/(kg K), Btu/(lb °F)",
              "J/(kg*K)"},
    KindFacts{QuantityKind::SpecificEnergy, "2257 kJ/kg", "J/kg, kJ/kg, Btu/lb", "J/kg"},
    KindFacts{QuantityKind::HeatFlux, "10 W/cm2", "W/m2, W/cm2, W/in2", "W/m^2"},
    KindFacts{QuantityKind::MassDensity, "7900 kg/m3", "kg/m3, kg/L, lb/ft3", "kg/m^3"},
    KindFacts{QuantityKind::VolumePerMass, "0.8 L/kg", "L/kg, US qt/lb, US gal/lb", "m^3/kg"},
    KindFacts{QuantityKind::MassFlow, "2 kg/h", "kg/h, g/s, lb/h", "kg/s"},
    KindFacts{QuantityKind::MassFlux, "3 kg/(m2 h)", "kg/(m2 h), lb/(ft2 h)", "kg/(m^2*s)"},
    KindFacts{QuantityKind::VolumeFlow, "3.5 L/h", "L/h, L/min, US gal/h", "m^3/s"},
};

inline const KindFacts& factsOf(QuantityKind kind) {
  return kKindFacts[static_cast<std::size_t>(kind)];
}

// The unit of a label of ours. Labels that do not parse are a mistake of ours, too.
Unit unitOf(std::string_view label);

inline double toSi(double number, const Unit& unit) {
  return number * unit.numerator / unit.denominator;
}
inline double fromSi(double si, const Unit& unit) { return si * unit.denominator / unit.numerator; }
// Temperature points have a zero of their own.
inline double pointToSi(double number, const Unit& unit) {
  return (number + unit.pointShift) * unit.numerator / unit.denominator;
}
inline double pointFromSi(double si, const Unit& unit) {
  return si * unit.denominator / unit.numerator - unit.pointShift;
}

}  // namespace rigs::detail
