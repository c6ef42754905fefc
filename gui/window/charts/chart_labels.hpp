// SPDX-License-Identifier: GPL-3.0-or-later
// Names and points of a picture, where the layout put them.
#pragma once

#include <QColor>
#include <QFont>

#include "gui/window/charts/chart_layout.hpp"
#include "gui/window/charts/chart_look.hpp"

class QPainter;

namespace gui {

void drawLabel(QPainter& painter, const ChartLayout::Label& label, const QFont& font,
               const QColor& color, int flags = Qt::AlignLeft | Qt::AlignVCenter);
// From what a label names to the label, where that is not right beside it.
void drawLeader(QPainter& painter, const ChartLayout::Label& label, const QColor& color);
// Events as their rig's point; what a person read as an open one, with a bar as long as its last
// digit leaves open.
void drawMarks(QPainter& painter, const telling::Picture& picture, const ChartLayout& layout,
               const ChartLook& look);

}  // namespace gui
