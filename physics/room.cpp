// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/room.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "physics/water.hpp"

namespace physics {
namespace {

// Latent heat leaves as vapour; everything else warms the room.
Power sensibleOf(const CurvePoint& point) {
  return point.lost.total() - point.lost[Path::Evaporation];
}

}  // namespace

MassDensity vapourDensity(const MoistAir& air) { return air.humidityRatio * air.dryAirDensity; }

MassDensity saturatedVapour(Temperature t, Pressure p) { return vapourDensity(saturatedAir(t, p)); }

std::optional<MassFlow> dryAirToCarry(MassFlow vapour, const MoistAir& indoors,
                                      const MoistAir& outdoors) {
  const double drier = indoors.humidityRatio - outdoors.humidityRatio;
  if (drier <= 0.0) return std::nullopt;
  return vapour / drier;
}

std::optional<VolumeFlow> airflowToCarry(MassFlow vapour, const MoistAir& indoors,
                                         const MoistAir& outdoors) {
  const auto dry = dryAirToCarry(vapour, indoors, outdoors);
  if (!dry) return std::nullopt;
  return *dry / indoors.dryAirDensity;
}

double levelHumidityRatio(MassFlow vapour, VolumeFlow airflow, const MoistAir& indoors,
                          const MoistAir& outdoors) {
  assert(inLitresPerHour(airflow) > 0.0);
  return outdoors.humidityRatio + static_cast<double>(vapour / (airflow * indoors.dryAirDensity));
}

double relativeHumidityOf(double humidityRatio, Temperature t, Pressure p) {
  const Pressure vapour = p * (humidityRatio / (kMolarMassRatio + humidityRatio));
  return vapour / saturationPressure(t);
}

Time timeToSaturation(MassFlow vapour, Volume room, const MoistAir& start) {
  const MoistAir full = saturatedAir(start.temperature, start.pressure);
  return (vapourDensity(full) - vapourDensity(start)) * room / vapour;
}

Volume volumeSaturatedBy(Mass vapour, Temperature t, Pressure p) {
  return vapour / saturatedVapour(t, p);
}

Temperature innerFace(HeatTransferCoefficient u, Temperature indoors, Temperature outdoors) {
  const double share = u * squareMetreKelvinsPerWatt(kInnerFilm);
  return indoors - share * (indoors - outdoors);
}

Power exhaustHeat(VolumeFlow airflow, TemperatureDifference warmer) {
  return airflow * kilogramsPerCubicMetre(1.2) * joulesPerKilogramKelvin(1006.0) * warmer;
}

RoomDay roomOver(const BrewDay& day, const Room& room, std::optional<Temperature> windowFace) {
  assert(room.volume > litres(0.0) && 0.0 <= room.captured && room.captured <= 1.0);
  const Temperature t = room.start.temperature;
  const Pressure p = room.start.pressure;
  const double full = saturatedAir(t, p).humidityRatio;
  const double outside = room.outdoors.humidityRatio;
  // Mass of dry air stays as it was; vapour that joins it changes its pressure by under 1 %.
  const Mass dryAir = room.volume * room.start.dryAirDensity;
  const MassFlow exchanged = room.airflow * room.start.dryAirDensity;

  RoomDay result;
  double w = std::min(room.start.humidityRatio, full);
  const CurvePoint* before = nullptr;
  const auto note = [&](const CurvePoint& point) {
    const double humidity = std::min(relativeHumidityOf(w, t, p), 1.0);
    const Temperature dew = dewPoint(std::max(humidity * saturationPressure(t), pascals(150.0)));
    result.points.push_back({.time = point.time,
                             .humidityRatio = w,
                             .relativeHumidity = humidity,
                             .dewPoint = dew,
                             .vapour = point.vapour,
                             .sensible = sensibleOf(point)});
    result.peakVapour = std::max(result.peakVapour, point.vapour);
    result.peakSensible = std::max(result.peakSensible, sensibleOf(point));
    if (humidity > result.peakHumidity) {
      result.peakHumidity = humidity;
      result.peakAt = point.time;
    }
    if (windowFace && !result.windowWetAt && dew > *windowFace) result.windowWetAt = point.time;
    if (!result.saturatedAt && w >= full) result.saturatedAt = point.time;
  };
  for (const Stage& stage : day.stages) {
    for (const CurvePoint& point : stage.curve) {
      if (before) {
        const Time step = point.time - before->time;
        if (step > seconds(0.0)) {
          const MassFlow vapour = 0.5 * (before->vapour + point.vapour);
          const MassFlow into = (1.0 - room.captured) * vapour;
          result.released += vapour * step;
          result.intoRoom += into * step;
          result.sensible += 0.5 * (sensibleOf(*before) + sensibleOf(point)) * step;
          const double changes = static_cast<double>(exchanged * step / dryAir);
          const double supplied = static_cast<double>(into * step / dryAir);
          // dw/dt = supply - changes (w - outside), exactly; a closed room is its limit.
          const double faded = std::exp(-changes);
          const double share = changes > 1e-9 ? (1.0 - faded) / changes : 1.0;
          w = outside + (w - outside) * faded + supplied * share;
          if (w > full) {
            result.condensed += (w - full) * dryAir;
            w = full;
          }
        }
      }
      note(point);
      before = &point;
    }
  }
  return result;
}

}  // namespace physics
