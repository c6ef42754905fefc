// SPDX-License-Identifier: GPL-3.0-or-later
// How hot an element's skin gets, for rigs whose element's size is stated: scorching.
#pragma once

#include "gui/telling/answer.hpp"
#include "gui/telling/case.hpp"

namespace gui::telling {

// One sentence or more of each such rig, under a heading of their own; nothing without one.
void saySkins(Answer& answer, const Case& of);
// Their rows of the table, under a heading of their own; none without one.
void addSkins(RigTable& table, const Case& of);

}  // namespace gui::telling
