// SPDX-License-Identifier: GPL-3.0-or-later
// The one file that knows Boost's unit systems: the names of all quantities,
// ways in (constructors) and ways out (inWatts and the like).
#pragma once

#include <boost/units/absolute.hpp>
#include <boost/units/cmath.hpp>
#include <boost/units/quantity.hpp>
#include <boost/units/systems/si.hpp>
#include <boost/units/systems/si/plane_angle.hpp>
#include <cmath>

namespace physics {

namespace si = boost::units::si;

template <class Unit>
using Quantity = boost::units::quantity<Unit, double>;  // always double

namespace units_detail {
using boost::units::divide_typeof_helper;
using boost::units::multiply_typeof_helper;
using boost::units::power_typeof_helper;
using boost::units::static_rational;
template <class A, class B>
using Per = typename divide_typeof_helper<A, B>::type;
template <class A, class B>
using Times = typename multiply_typeof_helper<A, B>::type;
}  // namespace units_detail

using Time = Quantity<si::time>;
using Length = Quantity<si::length>;
using Area = Quantity<si::area>;
using Volume = Quantity<si::volume>;
using Mass = Quantity<si::mass>;
using Velocity = Quantity<si::velocity>;
using Acceleration = Quantity<si::acceleration>;
using Pressure = Quantity<si::pressure>;
using Energy = Quantity<si::energy>;
using Power = Quantity<si::power>;
using MassDensity = Quantity<si::mass_density>;
using Voltage = Quantity<si::electric_potential>;
using Current = Quantity<si::current>;
using Resistance = Quantity<si::resistance>;

// A temperature is a point on a scale, a temperature difference is a distance
// along it. Points do not add; the compiler says so.
using Temperature = Quantity<boost::units::absolute<si::temperature>>;
using TemperatureDifference = Quantity<si::temperature>;

using TemperatureRate = units_detail::Per<TemperatureDifference, Time>;  // K/s
using ThermalExpansion = units_detail::Per<Quantity<si::dimensionless>, TemperatureDifference>;
using SpecificEnergy = units_detail::Per<Energy, Mass>;                         // J/kg
using SpecificHeat = units_detail::Per<SpecificEnergy, TemperatureDifference>;  // J/(kg K)
using HeatCapacity = units_detail::Per<Energy, TemperatureDifference>;          // J/K
using ThermalConductance = units_detail::Per<Power, TemperatureDifference>;     // W/K
using ThermalConductivity = units_detail::Per<ThermalConductance, Length>;      // W/(m K)
using HeatTransferCoefficient = units_detail::Per<ThermalConductance, Area>;    // W/(m2 K)
using HeatFlux = units_detail::Per<Power, Area>;                                // W/m2
using ThermalInsulance = units_detail::Per<Area, ThermalConductance>;  // m2 K/W, an "R-value"
using DynamicViscosity = Quantity<si::dynamic_viscosity>;              // Pa s
using Diffusivity = units_detail::Per<Area, Time>;      // m2/s, also kinematic viscosity
using MassFlow = units_detail::Per<Mass, Time>;         // kg/s
using MassFlux = units_detail::Per<MassFlow, Area>;     // kg/(m2 s)
using VolumeFlow = units_detail::Per<Volume, Time>;     // m3/s
using VolumePerMass = units_detail::Per<Volume, Mass>;  // m3/kg
using ResistancePerLength = units_detail::Per<Resistance, Length>;  // ohm/m
using PressurePerTemperature = units_detail::Per<Pressure, TemperatureDifference>;

inline constexpr double kIcePointInKelvin = 273.15;

// Points on the temperature scale.
constexpr Temperature kelvin(double degrees) { return Temperature::from_value(degrees); }
constexpr Temperature celsius(double degrees) {
  return Temperature::from_value(degrees + kIcePointInKelvin);
}
constexpr double inKelvin(Temperature t) { return t.value(); }
constexpr double inCelsius(Temperature t) { return t.value() - kIcePointInKelvin; }

// Distances along it.
constexpr TemperatureDifference kelvins(double degrees) {
  return TemperatureDifference::from_value(degrees);
}
constexpr double inKelvins(TemperatureDifference d) { return d.value(); }

// What gas and radiation laws mean by T: the distance from absolute zero.
constexpr TemperatureDifference aboveAbsoluteZero(Temperature t) {
  return TemperatureDifference::from_value(t.value());
}
constexpr Temperature midpoint(Temperature a, Temperature b) {
  return Temperature::from_value(0.5 * (a.value() + b.value()));
}

constexpr Time seconds(double n) { return Time::from_value(n); }
constexpr Time minutes(double n) { return Time::from_value(60.0 * n); }
constexpr Time hours(double n) { return Time::from_value(3600.0 * n); }
constexpr double inSeconds(Time t) { return t.value(); }
constexpr double inMinutes(Time t) { return t.value() / 60.0; }
constexpr double inHours(Time t) { return t.value() / 3600.0; }

constexpr Length metres(double n) { return Length::from_value(n); }
constexpr Length millimetres(double n) { return Length::from_value(1e-3 * n); }
constexpr double inMetres(Length l) { return l.value(); }
constexpr double inMillimetres(Length l) { return 1e3 * l.value(); }
constexpr Area squareMetres(double n) { return Area::from_value(n); }
constexpr double inSquareMetres(Area a) { return a.value(); }
constexpr Volume litres(double n) { return Volume::from_value(1e-3 * n); }
constexpr double inLitres(Volume v) { return 1e3 * v.value(); }
constexpr double inCubicMetres(Volume v) { return v.value(); }
constexpr Velocity metresPerSecond(double n) { return Velocity::from_value(n); }
constexpr double inMetresPerSecond(Velocity v) { return v.value(); }

constexpr Mass kilograms(double n) { return Mass::from_value(n); }
constexpr double inKilograms(Mass m) { return m.value(); }
constexpr MassDensity kilogramsPerCubicMetre(double n) { return MassDensity::from_value(n); }
constexpr double inKilogramsPerCubicMetre(MassDensity d) { return d.value(); }
constexpr VolumePerMass litresPerKilogram(double n) { return VolumePerMass::from_value(1e-3 * n); }
constexpr double inLitresPerKilogram(VolumePerMass v) { return 1e3 * v.value(); }
constexpr MassFlow kilogramsPerSecond(double n) { return MassFlow::from_value(n); }
constexpr MassFlow kilogramsPerHour(double n) { return MassFlow::from_value(n / 3600.0); }
constexpr double inKilogramsPerSecond(MassFlow m) { return m.value(); }
constexpr double inKilogramsPerHour(MassFlow m) { return 3600.0 * m.value(); }
constexpr MassFlux kilogramsPerSquareMetreSecond(double n) { return MassFlux::from_value(n); }
constexpr double inKilogramsPerSquareMetreHour(MassFlux m) { return 3600.0 * m.value(); }
constexpr VolumeFlow litresPerHour(double n) { return VolumeFlow::from_value(n / 3.6e6); }
constexpr double inLitresPerHour(VolumeFlow v) { return 3.6e6 * v.value(); }

constexpr Pressure pascals(double n) { return Pressure::from_value(n); }
constexpr double inPascals(Pressure p) { return p.value(); }
constexpr DynamicViscosity pascalSeconds(double n) { return DynamicViscosity::from_value(n); }
constexpr double inPascalSeconds(DynamicViscosity v) { return v.value(); }
constexpr Diffusivity squareMetresPerSecond(double n) { return Diffusivity::from_value(n); }
constexpr double inSquareMetresPerSecond(Diffusivity d) { return d.value(); }

constexpr Energy joules(double n) { return Energy::from_value(n); }
constexpr Energy kilowattHours(double n) { return Energy::from_value(3.6e6 * n); }
constexpr double inJoules(Energy e) { return e.value(); }
constexpr double inKilowattHours(Energy e) { return e.value() / 3.6e6; }
constexpr Power watts(double n) { return Power::from_value(n); }
constexpr double inWatts(Power p) { return p.value(); }
constexpr SpecificEnergy joulesPerKilogram(double n) { return SpecificEnergy::from_value(n); }
constexpr double inJoulesPerKilogram(SpecificEnergy e) { return e.value(); }
constexpr SpecificHeat joulesPerKilogramKelvin(double n) { return SpecificHeat::from_value(n); }
constexpr double inJoulesPerKilogramKelvin(SpecificHeat c) { return c.value(); }
constexpr HeatCapacity joulesPerKelvin(double n) { return HeatCapacity::from_value(n); }
constexpr double inJoulesPerKelvin(HeatCapacity c) { return c.value(); }
constexpr ThermalConductance wattsPerKelvin(double n) { return ThermalConductance::from_value(n); }
constexpr double inWattsPerKelvin(ThermalConductance c) { return c.value(); }
constexpr ThermalConductivity wattsPerMetreKelvin(double n) {
  return ThermalConductivity::from_value(n);
}
constexpr double inWattsPerMetreKelvin(ThermalConductivity k) { return k.value(); }
constexpr HeatTransferCoefficient perSquareMetreKelvin(double watt) {
  return HeatTransferCoefficient::from_value(watt);
}
constexpr double inWattsPerSquareMetreKelvin(HeatTransferCoefficient h) { return h.value(); }
constexpr HeatFlux wattsPerSquareMetre(double n) { return HeatFlux::from_value(n); }
constexpr double inWattsPerSquareMetre(HeatFlux q) { return q.value(); }
constexpr ThermalInsulance squareMetreKelvinsPerWatt(double n) {
  return ThermalInsulance::from_value(n);
}
constexpr double inSquareMetreKelvinsPerWatt(ThermalInsulance r) { return r.value(); }
constexpr ThermalExpansion perKelvin(double n) { return ThermalExpansion::from_value(n); }
constexpr double inPerKelvin(ThermalExpansion b) { return b.value(); }

constexpr Voltage volts(double n) { return Voltage::from_value(n); }
constexpr double inVolts(Voltage v) { return v.value(); }
constexpr Current amperes(double n) { return Current::from_value(n); }
constexpr double inAmperes(Current i) { return i.value(); }
constexpr Resistance ohms(double n) { return Resistance::from_value(n); }
constexpr double inOhms(Resistance r) { return r.value(); }
constexpr ResistancePerLength ohmsPerMetre(double n) { return ResistancePerLength::from_value(n); }
constexpr double inOhmsPerMetre(ResistancePerLength r) { return r.value(); }

// Standard gravity and the Stefan-Boltzmann constant (CODATA 2018).
inline constexpr Acceleration kGravity = Acceleration::from_value(9.80665);
inline constexpr double kStefanBoltzmann = 5.670374419e-8;  // W/(m2 K4)

}  // namespace physics
