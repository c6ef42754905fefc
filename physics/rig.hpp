// SPDX-License-Identifier: GPL-3.0-or-later
// What people brew with: a vessel, its heating and what feeds it.
#pragma once

#include <optional>
#include <string>

#include "physics/element.hpp"
#include "physics/element_group.hpp"
#include "physics/heat_loss.hpp"
#include "physics/vessel.hpp"

namespace physics {

struct Rig {
  std::string name;
  Vessel vessel;
  Element element;
  Supply supply;
  Hose hose;                       // wort is pumped through it during the mash only
  double boilPower = 1.0;          // share of the elements' power used in the boil
  double evaporationFactor = 1.0;  // on the open surface's law; 1 until calibrated
  double lossFactor = 1.0;         // on what walls, lid, base and hose lose; 1 until calibrated
  // How far below its goal the controller lets a rest fall before it heats again: the mean of the
  // rest is half of that below the goal. 0: it holds the goal.
  TemperatureDifference deadBand = kelvins(0.0);
  std::optional<Feed> second = {};  // an element on another circuit, no higher than the first

  bool operator==(const Rig&) const = default;
};

// Both circuits' heat together, where there are two; see together().
ElectricalLoad electricalLoad(const Rig& rig);

}  // namespace physics
