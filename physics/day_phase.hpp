// SPDX-License-Identifier: GPL-3.0-or-later
// A phase of the brew day: a stretch of time with one way of driving the element.
#pragma once

#include "physics/day.hpp"
#include "physics/phase.hpp"
#include "physics/phase_order.hpp"

namespace physics {

// The change of the heat stored, as the ledger has it.
void bookStored(Ledger& ledger, const StoredHeat& before, const StoredHeat& after);

// Follows the phase from `now`, which moves on to its end, and books into the stage what it took:
// ledger, water evaporated and, if options ask for curves, its points. Ends on PhaseEnd::Event at
// order.until, and on PhaseEnd::Guard before a driven element is uncovered or the wort thicker than
// kThickestWort.
PhaseEnd runPhase(const DayConditions& day, const PhaseOrder& order, Moment& now, Stage& stage);

}  // namespace physics
