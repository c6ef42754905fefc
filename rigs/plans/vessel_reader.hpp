// SPDX-License-Identifier: GPL-3.0-or-later
// The kettle itself, its lid, and what it stands on.
#pragma once

#include <optional>
#include <string>

#include "physics/vessel.hpp"
#include "rigs/plans/layers.hpp"

namespace rigs {

struct VesselRead {
  physics::Vessel bare;
  bool hasLid = false;
  std::string finish;
};
// Reports all problems of its part and returns nullopt if any of them is an error. `rig` holds
// "vessel", "lid" and "stands_on".
std::optional<VesselRead> readVessel(const Layers& rig);

}  // namespace rigs
