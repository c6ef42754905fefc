// SPDX-License-Identifier: GPL-3.0-or-later
// What each reading of the rules leaves a rig's circuits, and the day with it, as rows of a table.
#pragma once

#include "gui/window/questions/answer_text.hpp"

namespace gui {

// The largest element under each reading and its day, the same with two of them on two circuits,
// and the rig's own power over two. Codes that leave every rig the same are named together.
void addReadings(TableOf& table, const Telling& tell);

}  // namespace gui
