// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/wort.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "physics/constants.hpp"
#include "physics/water.hpp"

namespace physics {
namespace {

// ASBC-table polynomial, S = specific gravity 20/20.
double asbcPolynomial(double s) { return ((135.997 * s - 630.272) * s + 1111.14) * s - 616.868; }
double asbcSlope(double s) { return (3.0 * 135.997 * s - 2.0 * 630.272) * s + 1111.14; }

// ln a_w = ln x_A + Q/(R T) x_B^2 (1 + a x_B + b x_B^2), split into what does and does not
// depend on temperature. A is water, B sucrose, in mole fractions.
struct LogActivity {
  double ideal;
  double excessKelvins;  // divide by T
};

LogActivity logActivity(double extract) {
  constexpr double molarWater = 18.01528e-3;    // kg/mol
  constexpr double molarSucrose = 342.2965e-3;  // kg/mol
  constexpr double q = -17638.0;                // J/mol
  const double water = (1.0 - extract) / molarWater;
  const double sucrose = extract / molarSucrose;
  const double x = sucrose / (water + sucrose);
  return {std::log1p(-x), q / kMolarGasConstant * x * x * (1.0 + x * (-1.0038 - 0.24653 * x))};
}

}  // namespace

MassDensity wortDensity(double extract, Temperature t) {
  const double c = inCelsius(t);
  const double w = extract;
  const double u = 0.01 * (c - 20.0);
  // Kell 1975 in the form restated for ITS-90.
  const double water =
      (999.83952 +
       c * (16.952577 +
            c * (-7.9905127e-3 + c * (-46.241757e-6 + c * (105.84601e-9 - c * 281.03006e-12))))) /
      (1.0 + 16.887236e-3 * c);
  const double at20 =
      385.1761 + w * (135.3705 + w * (40.9299 + w * (-3.9643 + w * (13.4853 - 17.2890 * w))));
  const double first = -46.2720 + w * (-7.1720 + w * (1.1597 + w * (5.1126 + w * 17.5254)));
  const double second = 59.7712 + w * (7.2491 + w * (12.3630 - w * 35.4791));
  const double third = -47.2207 + w * (-21.6977 + w * 27.6301);
  const double fourth = 18.3184 + w * 12.3081;
  return kilogramsPerCubicMetre(water +
                                w * (at20 + u * (first + u * (second + u * (third + u * fourth)))));
}

SpecificHeat extractSpecificHeat(Temperature t) {
  return joulesPerKilogramKelvin(1673.0 + 7.5 * inCelsius(t));
}

SpecificEnergy extractEnthalpy(Temperature t) {
  const double c = inCelsius(t);
  return joulesPerKilogram(c * (1673.0 + 3.75 * c));
}

SpecificHeat wortSpecificHeat(double extract, Temperature t) {
  return (1.0 - extract) * waterSpecificHeat(t) + extract * extractSpecificHeat(t);
}

TemperatureDifference boilingPointRise(double extract, Pressure p) {
  // A solution boils where pure water has the vapour pressure p/a_w. The activity hardly depends
  // on temperature: a pass divides the error by 200 at 0.7 and 2000 at 0.4, so that two leave
  // 2e-4 K there and 1e-6 K here.
  const Temperature pure = saturationTemperature(p);
  const auto [ideal, excessKelvins] = logActivity(extract);
  Temperature boiling = pure;
  for (int pass = 0; pass < 2; ++pass) {
    boiling = saturationTemperature(p * std::exp(-ideal - excessKelvins / inKelvin(boiling)));
  }
  return boiling - pure;
}

Temperature boilingPoint(double extract, Pressure p) {
  return saturationTemperature(p) + boilingPointRise(extract, p);
}

double platoFromGravity(double specificGravity) {
  assert(1.0 <= specificGravity && specificGravity <= 1.150);
  return std::max(0.0, asbcPolynomial(specificGravity));
}

double gravityFromPlato(double plato) {
  assert(0.0 <= plato && plato <= 34.0);
  double s = 260.4 / (260.4 - plato);  // within 4e-4; Newton squares that twice
  for (int step = 0; step < 3; ++step) s -= (asbcPolynomial(s) - plato) / asbcSlope(s);
  return s;
}

double gravityOf(double extract) {
  if (extract <= 0.34) return gravityFromPlato(100.0 * extract);
  constexpr Temperature kMeasuredAt = celsius(20.0);
  return wortDensity(extract, kMeasuredAt) / waterDensity(kMeasuredAt);
}

}  // namespace physics
