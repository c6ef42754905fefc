// SPDX-License-Identifier: GPL-3.0-or-later
// What a brew day does to the air of its room: vapour, humidity, condensation, airflow.
//
// Balances are over humidity ratios, kg of water per kg of dry air, which is exact for mass: dry
// air is what goes in and out unchanged. The older way over vapour densities gives airflows 5-10 %
// larger, since it forgets that cold air swells as it warms.
#pragma once

#include <optional>
#include <vector>

#include "physics/air.hpp"
#include "physics/brewday.hpp"
#include "physics/units.hpp"

namespace physics {

// A well-mixed room that keeps its temperature, exchanging air with outdoors.
struct Room {
  Volume volume;          // > 0
  MoistAir start;         // indoors, before
  MoistAir outdoors;      // same pressure
  VolumeFlow airflow;     // of indoor air that leaves; 0 for a closed room
  double captured = 0.0;  // share of the vapour a hood takes before it mixes, 0-1
};

// Vapour in a cubic metre.
MassDensity vapourDensity(const MoistAir& air);
// Of all vapour densities the one at which air of this temperature is full.
MassDensity saturatedVapour(Temperature t, Pressure p);

// Dry air that must pass to carry off `vapour` while indoors stays as it is; empty where outdoor
// air is no drier.
std::optional<MassFlow> dryAirToCarry(MassFlow vapour, const MoistAir& indoors,
                                      const MoistAir& outdoors);
// The same as a flow of indoor air.
std::optional<VolumeFlow> airflowToCarry(MassFlow vapour, const MoistAir& indoors,
                                         const MoistAir& outdoors);
// The humidity ratio at which a steady release and an airflow meet, unbounded by saturation.
double levelHumidityRatio(MassFlow vapour, VolumeFlow airflow, const MoistAir& indoors,
                          const MoistAir& outdoors);
// Above 1 where there is more vapour than the air can hold.
double relativeHumidityOf(double humidityRatio, Temperature t, Pressure p);

// How long a closed room takes to be full of vapour.
Time timeToSaturation(MassFlow vapour, Volume room, const MoistAir& start);
// Air of this state in which so much vapour fills it to saturation, from bone-dry.
Volume volumeSaturatedBy(Mass vapour, Temperature t, Pressure p);

// Inside face of a window or wall: U counts both films; the inner film is taken as 0.13 m2 K/W
// (ISO 6946, horizontal heat flow).
inline constexpr double kInnerFilm = 0.13;  // m2 K/W
Temperature innerFace(HeatTransferCoefficient u, Temperature indoors, Temperature outdoors);
// Heat that leaves with exhausted air at a temperature difference, 1.2 kg/m3 x 1006 J/(kg K).
Power exhaustHeat(VolumeFlow airflow, TemperatureDifference warmer);

struct RoomPoint {
  Time time;  // from the start of the day
  double humidityRatio;
  double relativeHumidity;  // at most 1
  Temperature dewPoint;
  MassFlow vapour;  // as released, before a hood
  Power sensible;   // heat that warms the room
};
struct RoomDay {
  std::vector<RoomPoint> points;
  Mass released;   // from the kettle
  Mass intoRoom;   // what the hood did not take
  Mass condensed;  // on whatever is coldest, once the air is full
  Energy sensible;
  MassFlow peakVapour;
  Power peakSensible;
  double peakHumidity = 0.0;
  Time peakAt;
  std::optional<Time> saturatedAt;  // since when the air is full
  std::optional<Time> windowWetAt;  // since when a face of `window` is below the dew point
};

// The room over a day simulated with curves. Between two points the release is taken as steady, at
// their mean, and the balance solved exactly. `windowFace`: see innerFace.
RoomDay roomOver(const BrewDay& day, const Room& room, std::optional<Temperature> windowFace);

}  // namespace physics
