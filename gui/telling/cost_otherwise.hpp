// SPDX-License-Identifier: GPL-3.0-or-later
// What the same heat would take otherwise: rows and notes of what a batch costs.
#pragma once

#include <vector>

#include "gui/telling/case.hpp"

namespace gui::telling {

void addHeatedOtherwise(RigTable& table, const Case& of);
std::vector<rigs::Told> heatedOtherwiseNotes();

}  // namespace gui::telling
