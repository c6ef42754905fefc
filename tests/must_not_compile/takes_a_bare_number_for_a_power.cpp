// SPDX-License-Identifier: GPL-3.0-or-later
// A number without a unit is no power.
#include "physics/units.hpp"

using namespace physics;

Power wrong() { return 3000.0; }
