// SPDX-License-Identifier: GPL-3.0-or-later
// What a phase of the brew day is told: where the day stands, how the element is driven, what ends
// it.
#pragma once

#include <algorithm>
#include <optional>

#include "physics/contents.hpp"
#include "physics/day.hpp"
#include "physics/heat_loss.hpp"
#include "physics/heating_nodes.hpp"
#include "physics/units.hpp"

namespace physics {

// Between which wort is followed: a mash forgotten in a freezing shed, and some kelvins above any
// boil, where only trial states come.
inline constexpr Temperature kColdestWort = celsius(-20.0);
inline constexpr Temperature kHottestWort = celsius(109.0);

// What does not change all day.
struct DayConditions {
  const Rig& rig;
  const SimulationOptions& options;
  Pressure pressure;
  ElectricalLoad full;  // the elements at full power
  Area crossSection;    // of the vessel

  // How high the vessel is filled; what would overflow does not widen the walls.
  Length fill(Volume stands) const { return std::min(stands / crossSection, rig.vessel.height); }
};

// Where the day stands.
struct Moment {
  Contents contents;
  Temperature wort;
  Time clock;  // from the start of the day
};

enum class Control {
  Off,
  Full,    // all the elements give, or PhaseOrder::share of it
  Hold,    // what is lost and no more, as a controller does on the mean
  Boiling  // as Full, but the wort stays as hot as it is
};

struct PhaseOrder {
  Control control;
  HeatLossModel& losses;  // with lid and hose as in this stage
  Time longest;
  // Ends earlier where the wort is that hot or, with the element off, that cold.
  std::optional<Temperature> until = {};
  double share = 1.0;  // of the elements' full power, where driven in full
  // What sets the spacing of a curve's points, where driven until a temperature that is not far
  // off or may never come; as if nothing were lost on the way there if 0.
  Time spacedFor = seconds(0.0);
  // Is given the nodes of the phase, where it is followed by nodes.
  HeatingNodes* nodes = nullptr;
};

}  // namespace physics
