// SPDX-License-Identifier: GPL-3.0-or-later
// What lies between two lines of a rig, in a light shade of its colour.
#pragma once

#include "gui/window/charts/chart_layout.hpp"
#include "gui/window/charts/chart_look.hpp"

class QPainter;

namespace gui {

// Below grid and lines, which stay readable on it. Only as far as both lines go.
void drawWashes(QPainter& painter, const telling::Picture& picture, const ChartLayout& layout,
                const ChartLook& look);

}  // namespace gui
