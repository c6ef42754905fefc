// SPDX-License-Identifier: GPL-3.0-or-later
// What readings of a day are held against: the plan as that day began, and its place.
#pragma once

#include <cstddef>
#include <string>

#include "rigs/documents/problems.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/readings/readings_reader.hpp"

namespace rigs {

// Readings are kept from when the day began: of a plan whose days are solved backwards, with the
// beginning of this rig's, on the day it was. A rig that never comes to what is to be ready has
// none: an error.
Plan begunToBeRead(const Plan& plan, std::size_t rig, Problems& problems);

// The plan's clock, and where wort boils in its place, by the plan's own day.
readings::Setting settingOf(const Plan& plan, std::size_t rig, std::string name);

}  // namespace rigs
