// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/walls.hpp"

#include <cassert>
#include <cmath>

namespace physics {
namespace {

constexpr auto kSigma =
    HeatTransferCoefficient::from_value(kStefanBoltzmann) / boost::units::pow<3>(kelvins(1.0));

[[maybe_unused]] bool isEmissivity(double e) { return 0.0 <= e && e <= 1.0; }

// (Ta^4 - Tb^4)/(Ta - Tb), which stays exact when the two are nearly equal.
auto meanCube(Temperature a, Temperature b) {
  const TemperatureDifference ta = aboveAbsoluteZero(a);
  const TemperatureDifference tb = aboveAbsoluteZero(b);
  return (ta * ta + tb * tb) * (ta + tb);
}

}  // namespace

Layer layerOf(Length thickness, ThermalConductivity k) {
  assert(thickness >= metres(0.0) && k > wattsPerMetreKelvin(0.0));
  return {.thickness = thickness, .flatInsulance = thickness / k};
}

ThermalInsulance flatInsulance(std::span<const Layer> layers) {
  ThermalInsulance sum = squareMetreKelvinsPerWatt(0.0);
  for (const Layer& layer : layers) sum += layer.flatInsulance;
  return sum;
}

ThermalInsulance cylindricalInsulance(Length innerRadius, std::span<const Layer> layers) {
  assert(innerRadius > metres(0.0));
  ThermalInsulance sum = squareMetreKelvinsPerWatt(0.0);
  Length radius = innerRadius;
  for (const Layer& layer : layers) {
    const double x = layer.thickness / radius;
    // r1 ln(1 + x) / k with k = thickness / flatInsulance; the curvature tends to 1 as x to 0.
    const double curvature = x > 0.0 ? std::log1p(x) / x : 1.0;
    sum += layer.flatInsulance * (innerRadius / radius) * curvature;
    radius += layer.thickness;
  }
  return sum;
}

Length outerRadius(Length innerRadius, std::span<const Layer> layers) {
  Length radius = innerRadius;
  for (const Layer& layer : layers) radius += layer.thickness;
  return radius;
}

Length criticalRadius(ThermalConductivity k, HeatTransferCoefficient h) { return k / h; }

HeatFlux radiationToRoom(double emissivity, Temperature surface, Temperature room) {
  return radiationFilm(emissivity, surface, room) * (surface - room);
}

HeatTransferCoefficient radiationFilm(double emissivity, Temperature surface, Temperature room) {
  assert(isEmissivity(emissivity));
  return emissivity * kSigma * meanCube(surface, room);
}

HeatFlux radiationBetween(double innerEmissivity, double outerEmissivity, double areaRatio,
                          Temperature inner, Temperature outer) {
  assert(isEmissivity(innerEmissivity) && isEmissivity(outerEmissivity) && areaRatio >= 0.0);
  // 1 / [1/e1 + ratio (1/e2 - 1)], multiplied out so that a perfect mirror gives 0.
  const double product = innerEmissivity * outerEmissivity;
  const double exchange =
      product > 0.0
          ? product / (outerEmissivity + areaRatio * innerEmissivity * (1.0 - outerEmissivity))
          : 0.0;
  return exchange * kSigma * meanCube(inner, outer) * (inner - outer);
}

FinFlows flowsThrough(const WarmedFin& fin) { return responseOf(fin).flows(fin.foot, fin.warmth); }

FinResponse responseOf(const WarmedFin& fin) {
  const HeatTransferCoefficient both = fin.warm + fin.cool;
  assert(fin.width >= metres(0.0) && fin.length >= metres(0.0));
  assert(fin.along > wattsPerKelvin(0.0) && both > perSquareMetreKelvin(0.0));
  const Length decay = sqrt(fin.along / both);
  return {.width = fin.width,
          .length = fin.length,
          .warm = fin.warm,
          .cool = fin.cool,
          .reach = std::tanh(static_cast<double>(fin.length / decay)) * decay};
}

FinFlows FinResponse::flows(TemperatureDifference foot, TemperatureDifference warmth) const {
  const TemperatureDifference far = warm / (warm + cool) * warmth;
  const auto overLength = far * length + (foot - far) * reach;
  return {.warmed = width * warm * (warmth * length - overLength),
          .cooled = width * cool * overLength};
}

}  // namespace physics
