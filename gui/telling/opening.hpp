// SPDX-License-Identifier: GPL-3.0-or-later
// How a page about a plan begins: whose plan, what is brewed, and where.
#pragma once

#include <vector>

#include "rigs/plans/plan.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

// The title, then a sentence about the batch and one about the place.
std::vector<rigs::Told> openingOf(const rigs::Plan& plan);

}  // namespace gui::telling
