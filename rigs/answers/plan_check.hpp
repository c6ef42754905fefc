// SPDX-License-Identifier: GPL-3.0-or-later
// What is wrong with a plan beyond what its document says.
#pragma once

#include "rigs/documents/problems.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

// Contradictions that only show when the day is simulated: grain and water that do not fit, fill
// below the element, a boil that outlasts the water; and circuits against the tables of their
// region. Appends to problems. A kettle that does not boil is an answer, not a problem.
void checkPlan(const Plan& plan, Problems& problems);

}  // namespace rigs
