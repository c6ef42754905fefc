// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/water.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "physics/law_image.hpp"

namespace physics {
namespace {

// IAPWS SR6-08(2011): constants of its table 1 and the coefficients a, b, c of table 2, in the
// release's numbering. Every polynomial below is nested by hand: this is the innermost loop.
constexpr double kR = 461.51805;  // J/(kg K)
constexpr double kTr = 10.0;      // K
constexpr double kPo = 1e5;       // Pa

constexpr double kA1 = -1.661470539e5;
constexpr double kA2 = 2.708781640e6;
constexpr double kA3 = -1.557191544e8;
constexpr double kA5 = 1.93763157e-2;
constexpr double kA6 = 6.74458446e3;
constexpr double kA7 = -2.22521604e5;
constexpr double kA8 = 1.00231247e8;
constexpr double kA9 = -1.63552118e9;
constexpr double kA10 = 8.32299658e9;
constexpr double kB1 = -8.237426256e-1;
constexpr double kB2 = 1.908956353;
constexpr double kB3 = -2.017597384;
constexpr double kB4 = 8.546361348e-1;
constexpr double kB5 = 5.78545292e-3;
constexpr double kB6 = -1.53195665e-2;
constexpr double kB7 = 3.11337859e-2;
constexpr double kB8 = -4.23546241e-2;
constexpr double kB9 = 3.38713507e-2;
constexpr double kB10 = -1.19946761e-2;
constexpr double kC1 = -2.452093414e2;
constexpr double kC3 = -8.983025854;

// The release's reduced variables.
struct Reduced {
  double tau, alpha, beta;
};

// -20 to 110 C, where 110 + 273.15 may round to just above 383.15.
[[maybe_unused]] bool isWithinTheRelease(Temperature t) {
  return 253.15 - 1e-9 <= inKelvin(t) && inKelvin(t) <= 383.15 + 1e-9;
}

Reduced reduced(Temperature t) {
  assert(isWithinTheRelease(t));
  const double kelvin = inKelvin(t);
  return {kelvin / kTr, kTr / (593.0 - kelvin), kTr / (kelvin - 232.0)};
}

// Eq. 2, m3/kg.
double specificVolume(const Reduced& r) {
  const double a = r.alpha;
  const double b = r.beta;
  const double a2 = a * a;
  return kR * kTr / kPo *
         (kA5 + a2 * a2 * (kA6 + a * (kA7 + a2 * (kA8 + a * (kA9 + a * kA10)))) +
          b * (kB5 + b * (kB6 + b * (kB7 + b * (kB8 + b * (kB9 + b * kB10))))));
}

// Eq. 5, (dv/dT)_p in m3/(kg K).
double specificVolumeSlope(const Reduced& r) {
  const double a = r.alpha;
  const double b = r.beta;
  const double a2 = a * a;
  return kR / kPo *
         (a2 * a2 * a *
              (4.0 * kA6 +
               a * (5.0 * kA7 + a2 * (7.0 * kA8 + a * (8.0 * kA9 + a * (9.0 * kA10))))) -
          b * b *
              (kB5 + b * (2.0 * kB6 +
                          b * (3.0 * kB7 + b * (4.0 * kB8 + b * (5.0 * kB9 + b * (6.0 * kB10)))))));
}

// Eq. 4, J/(kg K).
double isobaricHeat(const Reduced& r) {
  const double a = r.alpha;
  const double b = r.beta;
  const double a2 = a * a;
  const double b2 = b * b;
  return -kR *
         (kC3 +
          r.tau * (a2 * a2 * a2 * (20.0 * kA1 + a * (30.0 * kA2 + a2 * (56.0 * kA3))) +
                   b2 * b2 * (6.0 * kB1 + b * (12.0 * kB2 + b * (20.0 * kB3 + b * (30.0 * kB4))))));
}

// Eqs 7 and 8 are sums of T/300 K to powers that are multiples of 1/20; one root serves all.
struct Roots {
  double y;    // 300 K / T
  double r20;  // its twentieth root
};

Roots roots(Temperature t) {
  const double y = 300.0 / inKelvin(t);
  return {y, std::pow(y, 0.05)};
}

double viscosityInPascalSeconds(const Roots& r) {
  const double r10 = r.r20 * r.r20;
  const double y2 = r.y * r.y;
  const double y4 = y2 * y2;
  const double y8 = y4 * y4;
  const double y20 = y8 * y8 * y4;
  const double perR10 = 1.0 / r10;
  const double perR10Cubed = perR10 * perR10 * perR10;
  return 1e-6 * (280.68 * y2 * perR10 + 511.45 * y8 * perR10Cubed +
                 61.131 * y20 * perR10Cubed * perR10 + 0.45903 * y20 * y20);
}

double conductivityInWattsPerMetreKelvin(const Roots& r) {
  const double r20Cubed = r.r20 * r.r20 * r.r20;          // y^0.15
  const double r5 = r20Cubed * r20Cubed * r.r20 * r.r20;  // y^0.4
  const double y3 = r.y * r.y * r.y;
  const double y6 = y3 * y3;
  return 1.6630 * r.y * r20Cubed - 1.7781 * y3 * r5 + 1.1567 * y6 - 0.432115 * y6 * r.y * r.y / r5;
}

// IAPWS SR1-86(1992): the critical point it refers to.
constexpr double kCriticalKelvin = 647.096;
constexpr double kCriticalPascals = 22.064e6;
constexpr double kLogCriticalPascals = 16.909457;
constexpr double kCriticalDensity = 322.0;  // kg/m3

double belowCritical(Temperature t) {
  const double kelvin = inKelvin(t);
  assert(250.0 <= kelvin && kelvin <= kCriticalKelvin);
  return 1.0 - kelvin / kCriticalKelvin;
}

// ln(p/p_c) and its derivative with respect to T, from one square root (eqs 1 and 2).
struct LogPressure {
  double value;
  double slope;  // 1/K
};

LogPressure logPressure(double kelvin, double theta) {
  constexpr double a1 = -7.85951783;
  constexpr double a2 = 1.84408259;
  constexpr double a3 = -11.7866497;
  constexpr double a4 = 22.6807411;
  constexpr double a5 = -15.9618719;
  constexpr double a6 = 1.80122502;
  const double root = std::sqrt(theta);
  const double theta2 = theta * theta;
  const double theta3 = theta2 * theta;
  const double sum = theta * (a1 + a2 * root +
                              theta2 * (a3 + a4 * root + theta * a5 + theta3 * theta * root * a6));
  const double sumSlope = a1 + 1.5 * a2 * root +
                          theta2 * (3.0 * a3 + 3.5 * a4 * root + theta * (4.0 * a5) +
                                    theta3 * theta * root * (7.5 * a6));
  const double value = kCriticalKelvin / kelvin * sum;
  return {value, -(value + sumSlope) / kelvin};
}

// Eqs 3 and 4, kg/m3; `third` is the cube root of theta.
double liquidDensity(double theta, double third) {
  const double third2 = third * third;
  const double theta2 = theta * theta;
  const double theta4 = theta2 * theta2;
  const double theta9 = theta4 * theta4 * theta;
  const double theta36 = (theta9 * theta9) * (theta9 * theta9);
  return kCriticalDensity *
         (1.0 + third * (1.99274064 + theta4 * theta * (-1.75493479 - 45.5170352 * theta9)) +
          third2 * (1.09965342 - 0.510839303 * theta - 6.74694450e5 * theta36));
}

double vapourDensity(double theta, double third) {
  const double sixth = std::sqrt(third);
  const double third2 = third * third;
  const double theta2 = theta * theta;
  const double theta3 = theta2 * theta;
  const double theta6 = theta3 * theta3;
  return kCriticalDensity *
         std::exp(-2.03150240 * third - 2.68302940 * third2 - 5.38626492 * theta * third -
                  17.2991605 * theta3 - 44.7586581 * theta6 * sixth -
                  63.9201063 * theta6 * theta3 * theta2 * third2 * sixth);
}

}  // namespace

MassDensity waterDensity(Temperature t) {
  return kilogramsPerCubicMetre(1.0 / specificVolume(reduced(t)));
}

SpecificHeat waterSpecificHeat(Temperature t) {
  return joulesPerKilogramKelvin(isobaricHeat(reduced(t)));
}

SpecificEnergy waterEnthalpy(Temperature t) {
  // h = g + T s of eqs 1 and 3; the logarithms and c2 cancel.
  const auto [tau, a, b] = reduced(t);
  const double a2 = a * a;
  const double ta = tau * a;
  const double tb = tau * b;
  const double alphaSum =
      a2 * a2 *
      (kA1 * (1.0 - 4.0 * ta) + a * (kA2 * (1.0 - 5.0 * ta) + a2 * kA3 * (1.0 - 7.0 * ta)));
  const double betaSum =
      b * b *
      (kB1 * (1.0 + 2.0 * tb) +
       b * (kB2 * (1.0 + 3.0 * tb) + b * (kB3 * (1.0 + 4.0 * tb) + b * kB4 * (1.0 + 5.0 * tb))));
  return joulesPerKilogram(kR * kTr * (kC1 - kC3 * tau + alphaSum + betaSum));
}

ThermalExpansion waterExpansion(Temperature t) {
  const Reduced r = reduced(t);
  return perKelvin(specificVolumeSlope(r) / specificVolume(r));
}

DynamicViscosity waterViscosity(Temperature t) {
  assert(isWithinTheRelease(t));
  return pascalSeconds(viscosityInPascalSeconds(roots(t)));
}

ThermalConductivity waterConductivity(Temperature t) {
  assert(isWithinTheRelease(t));
  return wattsPerMetreKelvin(conductivityInWattsPerMetreKelvin(roots(t)));
}

WaterProperties waterProperties(Temperature t) {
  const Reduced r = reduced(t);
  const Roots y = roots(t);
  const double volume = specificVolume(r);
  return {.density = kilogramsPerCubicMetre(1.0 / volume),
          .specificHeat = joulesPerKilogramKelvin(isobaricHeat(r)),
          .expansion = perKelvin(specificVolumeSlope(r) / volume),
          .viscosity = pascalSeconds(viscosityInPascalSeconds(y)),
          .conductivity = wattsPerMetreKelvin(conductivityInWattsPerMetreKelvin(y))};
}

Pressure saturationPressure(Temperature t) {
  return pascals(kCriticalPascals * std::exp(logPressure(inKelvin(t), belowCritical(t)).value));
}

SlopedPressure slopedSaturationPressure(Temperature t) {
  const LogPressure ln = logPressure(inKelvin(t), belowCritical(t));
  const Pressure p = pascals(kCriticalPascals * std::exp(ln.value));
  return {p, p * ln.slope / kelvins(1.0)};
}

PressurePerTemperature saturationPressureSlope(Temperature t) {
  return slopedSaturationPressure(t).slope;
}

MassDensity saturatedLiquidDensity(Temperature t) {
  const double theta = belowCritical(t);
  return kilogramsPerCubicMetre(liquidDensity(theta, std::cbrt(theta)));
}

MassDensity saturatedVapourDensity(Temperature t) {
  const double theta = belowCritical(t);
  return kilogramsPerCubicMetre(vapourDensity(theta, std::cbrt(theta)));
}

SpecificEnergy latentHeat(Temperature t) {
  const double kelvin = inKelvin(t);
  const double theta = belowCritical(t);
  const double third = std::cbrt(theta);
  const LogPressure ln = logPressure(kelvin, theta);
  const double slope = kCriticalPascals * std::exp(ln.value) * ln.slope;
  return joulesPerKilogram(
      kelvin * (1.0 / vapourDensity(theta, third) - 1.0 / liquidDensity(theta, third)) * slope);
}

namespace {

struct SaturationImages {
  LawImage<14> latent{[](double t) { return inJoulesPerKilogram(latentHeat(kelvin(t))); }, kCold,
                      kHot};
  LawImage<20> pressure{[](double t) { return inPascals(saturationPressure(kelvin(t))); }, kCold,
                        kHot};
  LawImage<14> slope{[](double t) {  // of its logarithm
                       const SlopedPressure p = slopedSaturationPressure(kelvin(t));
                       return static_cast<double>(p.slope * kelvins(1.0) / p.pressure);
                     },
                     kCold, kHot};
  LawImage<14> inverse{[](double logPascals) {
                         return 1e3 /
                                inKelvin(saturationTemperature(pascals(std::exp(logPascals))));
                       },
                       std::log(103.0), std::log(143e3)};
  static constexpr double kCold = 253.15;
  static constexpr double kHot = 383.15;
};
const SaturationImages& saturationImages() {
  static const SaturationImages all;
  return all;
}

}  // namespace

SpecificEnergy latentHeatByImage(Temperature t) {
  assert(isWithinTheRelease(t));
  return joulesPerKilogram(saturationImages().latent(inKelvin(t)));
}

SlopedPressure saturationPressureByImage(Temperature t) {
  assert(isWithinTheRelease(t));
  const Pressure p = pascals(saturationImages().pressure(inKelvin(t)));
  return {p, p * saturationImages().slope(inKelvin(t)) / kelvins(1.0)};
}

Temperature saturationTemperatureByImage(Pressure p) {
  return kelvin(1e3 / saturationImages().inverse(std::log(inPascals(p))));
}

Temperature saturationTemperature(Pressure p) {
  assert(103.0 <= inPascals(p) && inPascals(p) <= 1e6);
  const double target = std::log(inPascals(p) / kCriticalPascals);
  // 1000 K/T as a cubic in ln(p/Pa), fitted to the formula itself from 95 Pa to 1 MPa: within
  // 13 mK, from where two Newton steps reach the last digits.
  const double x = target + (kLogCriticalPascals - 10.0);
  double t = 1e3 / (2.98230770 + x * (-0.195097887 + x * (-1.84748850e-3 - 6.66555113e-5 * x)));
  for (int step = 0; step < 2; ++step) {
    const LogPressure ln = logPressure(t, 1.0 - t / kCriticalKelvin);
    t += (target - ln.value) / ln.slope;
  }
  return kelvin(t);
}

}  // namespace physics
