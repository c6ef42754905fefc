// SPDX-License-Identifier: GPL-3.0-or-later
// What can be written down, and which C++ type stands for it.
#pragma once

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

}  // namespace rigs
