// SPDX-License-Identifier: GPL-3.0-or-later
// The air of the brewing room, as a plan states it.
#pragma once

#include <optional>

#include "physics/room.hpp"
#include "physics/units.hpp"

namespace rigs {

// An ordinary kitchen in a cool season, for plans that do not say.
struct RoomPlan {
  bool isStated = false;
  physics::Volume volume = physics::litres(40e3);
  physics::VolumeFlow airflow = physics::litresPerHour(20e3);  // half an air change an hour
  physics::Temperature outdoors = physics::celsius(5.0);
  double outdoorHumidity = 0.8;
  double captured = 0.0;                                        // by a hood that leads outdoors
  double holdHumidity = 0.6;                                    // what the airflow is asked for
  std::optional<physics::HeatTransferCoefficient> window = {};  // its U value

  bool operator==(const RoomPlan&) const = default;
};

}  // namespace rigs
