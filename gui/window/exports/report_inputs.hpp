// SPDX-License-Identifier: GPL-3.0-or-later
// What a report says before and after the answers: what was put in, and what is taken for granted.
#pragma once

#include <QStringList>

#include "gui/window/questions/shown_answer.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace gui {

// Batch, place, tariff and goals: two columns.
ShownTable dayInputs(const rigs::Plan& plan, rigs::UnitSystem units);
// One column a rig.
ShownTable rigInputs(const rigs::Plan& plan, rigs::UnitSystem units);
// What the model leaves out, and how wrong it may be.
QStringList assumptions();

}  // namespace gui
