// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/air.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "physics/constants.hpp"
#include "physics/water.hpp"

namespace physics {
namespace {

// ASHRAE Handbook - Fundamentals 2017, ch. 1.

// Enthalpies of ASHRAE ch. 1 in kJ/kg; t in degrees Celsius.
constexpr double kDryAirHeat = 1.006;
constexpr double kVapourHeat = 1.86;
constexpr double kVapourAtZero = 2501.0;

MoistAir withVapour(Temperature t, Pressure wanted, Pressure p) {
  const Pressure vapour = std::min(wanted, p);
  const double airPascals = inPascals(p - vapour);
  const double gas = kDryAirGasConstant * inKelvin(t);  // J/kg
  const double c = inCelsius(t);
  const double ratio = kMolarMassRatio * inPascals(vapour) / airPascals;
  return {
      .temperature = t,
      .pressure = p,
      .vapourPressure = vapour,
      .humidityRatio = ratio,
      .dryAirDensity = kilogramsPerCubicMetre(airPascals / gas),
      // Not dryAirDensity (1 + W), which is zero times infinity in pure vapour.
      .density = kilogramsPerCubicMetre((airPascals + kMolarMassRatio * inPascals(vapour)) / gas),
      .enthalpy =
          joulesPerKilogram(1e3 * (kDryAirHeat * c + ratio * (kVapourAtZero + kVapourHeat * c)))};
}

}  // namespace

AirProperties dryAir(Temperature film, Pressure p) {
  const double t = inKelvin(film);
  const double t15 = t * std::sqrt(t);
  const double viscosity = 1.458e-6 * t15 / (t + 110.4);  // Pa s
  // 10^(-12/T) by its series: the next term is below 3e-7 of the sum from 220 K upwards.
  const double x = -27.6310211159 / t;
  const double power = 1.0 + x * (1.0 + x * (0.5 + x * (1.0 / 6.0 + x * (1.0 / 24.0))));
  const double conductivity = 2.64638e-3 * t15 / (t + 245.4 * power);  // W/(m K)
  // Through the 20, 60 and 100 C values at 1 atm of the equation of state of Lemmon et al.
  const double d = t - 293.15;
  const double specificHeat = 1006.14 + d * (0.030375 + d * 4.15625e-4);  // J/(kg K)
  const double perDensity = kDryAirGasConstant * t / inPascals(p);        // m3/kg
  return {.expansionScale = aboveAbsoluteZero(film),
          .momentum = squareMetresPerSecond(viscosity * perDensity),
          .heat = squareMetresPerSecond(conductivity * perDensity / specificHeat),
          .conductivity = wattsPerMetreKelvin(conductivity)};
}

MoistAir moistAir(Temperature t, double relativeHumidity, Pressure p) {
  assert(0.0 <= relativeHumidity && relativeHumidity <= 1.0);
  return withVapour(t, relativeHumidity * saturationPressure(t), p);
}

MoistAir saturatedAir(Temperature t, Pressure p) { return withVapour(t, saturationPressure(t), p); }

Temperature dewPoint(Pressure vapourPressure) { return saturationTemperature(vapourPressure); }

StandardAtmosphere standardAtmosphere(Length altitude) {
  const double metre = inMetres(altitude);
  assert(-5000.0 <= metre && metre <= 11000.0);
  return {.pressure = pascals(101325.0 * std::pow(1.0 - 2.25577e-5 * metre, 5.2559)),
          .temperature = celsius(15.0 - 0.0065 * metre)};
}

}  // namespace physics
