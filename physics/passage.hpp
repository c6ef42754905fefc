// SPDX-License-Identifier: GPL-3.0-or-later
// Following a phase of the day over temperature instead of in steps of time.
//
// While the element gives one power, or none, nothing tells one moment from another but how hot the
// wort is and how much water is left. So how long it takes from one temperature to the next is an
// integral over temperature, dt = C dT/(P - L), and what each path takes on the way is another with
// the same denominator. A few Gauss nodes give both to ten digits, where steps in time ask the laws
// of loss three or four times as often.
#pragma once

#include <optional>

#include "physics/phase.hpp"
#include "physics/phase_laws.hpp"

namespace physics {

// The phase from `start`, as integratePhase() has it; nothing where it is no function of
// temperature: where the wort comes to rest or turns round on the way. See docs/physics.md.
std::optional<PhaseResult> passOverTemperature(const PhaseState& start, DayPhase& laws);

// That, or in steps of time.
PhaseResult passPhase(const PhaseState& start, DayPhase& laws);

}  // namespace physics
