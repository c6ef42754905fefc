// SPDX-License-Identifier: GPL-3.0-or-later
// 5 K warmer is not 5 K.
#include "physics/units.hpp"

using namespace physics;

Temperature wrong(Temperature a, Temperature b) { return a - b; }
