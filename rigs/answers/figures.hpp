// SPDX-License-Identifier: GPL-3.0-or-later
// Figures that follow from a result by one step of arithmetic, so that table, sentence and JSON
// take the same step. Those of a day alone are in day_figures.hpp.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

#include "physics/brewday.hpp"
#include "rigs/answers/answers.hpp"
#include "rigs/answers/day_figures.hpp"
#include "rigs/answers/long_use.hpp"
#include "rigs/plans/plan.hpp"

namespace rigs {

// Whether the rig's supply can deliver a power found by a search: within the circuit's rating, and
// within the share of it that rules grant to use of three hours and longer.
enum class Carries { Yes, ForShortUseOnly, No };
Carries carries(const Plan& plan, const RigPlan& rig, const physics::PowerAnswer& wanted);
// "yes", "for short use only", "no".
std::string_view carriesWord(Carries carries);

// The heat that fulfils all of the plan's goals, time to strike, time to the boil and boil-off, and
// boils at all; empty if one of them cannot be had.
physics::PowerAnswer neededPower(const SizingAnswer& sizing);

// Money for all stages of this kind; empty without a price or such a stage.
std::optional<double> costOf(const RigAnswer& rig, physics::StageKind kind);
// Money for this much finished wort; empty without a price and for a day that stops early.
std::optional<double> costPer(const RigAnswer& rig, physics::Volume wort);

}  // namespace rigs
