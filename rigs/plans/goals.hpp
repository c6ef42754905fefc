// SPDX-License-Identifier: GPL-3.0-or-later
// What a person aims at.
#pragma once

#include "physics/units.hpp"

namespace rigs {

// What the sizing questions aim at when nothing else is asked.
struct Goals {
  physics::Time boilWithin;      // heating from mash to boil
  double boilOffPerHour = 0.08;  // share of pre-boil volume
  double headspace = 0.10;       // share of the vessel kept free
  physics::Time unplugged;       // how long the kettle is left alone for the cooling question

  bool operator==(const Goals&) const = default;
};

}  // namespace rigs
