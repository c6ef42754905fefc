// SPDX-License-Identifier: GPL-3.0-or-later
// Heat over a time is a power; heat alone is not.
#include "physics/units.hpp"

using namespace physics;

Power wrong(Energy e) { return e; }
