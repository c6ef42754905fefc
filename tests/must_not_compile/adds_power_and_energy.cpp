// SPDX-License-Identifier: GPL-3.0-or-later
// A power is not an energy.
#include "physics/units.hpp"

using namespace physics;

Power sum(Power p, Energy e) { return p + e; }
