// SPDX-License-Identifier: GPL-3.0-or-later
// Everything side by side, opened by the three questions people ask first.
#pragma once

#include "gui/telling/case.hpp"

namespace gui::telling {

// Needs everything but sweeps: days, jackets, sizing and what would boil.
Answer summary(const Case& of);

}  // namespace gui::telling
