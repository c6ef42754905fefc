// SPDX-License-Identifier: GPL-3.0-or-later
// Kitchen ventilation that standards ask for, beside what a brew needs.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "physics/units.hpp"

namespace rigs {

struct PublishedAirflow {
  std::string_view name;    // "vented hood over the hob, on demand"
  std::string_view source;  // the standard, and where its figure was read
  std::string_view status;  // "read" on a page that quotes the standard; "from memory"
  physics::VolumeFlow airflow;
  bool isHood;  // over the kettle: takes vapour before it mixes with the room's air
};

// Those counted in air changes are for a room of this volume.
std::vector<PublishedAirflow> publishedAirflows(physics::Volume room);

// International Residential Code: air to make up for what a hood takes is needed above this.
inline constexpr physics::VolumeFlow kMakeUpAirAbove =
    physics::litresPerHour(400.0 * 60.0 * 28.316846592);

struct JudgedAirflow {
  PublishedAirflow published;
  bool suffices;  // for what must be diluted
};
// Nothing suffices where outdoor air is no drier.
std::vector<JudgedAirflow> judgedAirflows(physics::Volume room,
                                          const std::optional<physics::VolumeFlow>& needed);

}  // namespace rigs
