// SPDX-License-Identifier: GPL-3.0-or-later
// A rig's hue, dash and point, drawn the same wherever it shows: in pictures and their legends,
// above its fields and its columns.
#pragma once

#include <QPointF>
#include <QRectF>

#include "gui/window/charts/chart_look.hpp"

class QPainter;

namespace gui {

// What a rig's events are drawn as: twelve, by slot; filled ones first.
enum class PointShape {
  Disc,
  Triangle,
  Square,
  Diamond,
  TriangleDown,
  Ring,
  OpenTriangle,
  OpenSquare,
  OpenDiamond,
  OpenTriangleDown,
  Cross,
  Plus
};
PointShape pointOfRig(int slot);

// With a rim of paper, so that it stands out from the lines that it stands on.
void drawRigPoint(QPainter& painter, int slot, QPointF at, double radius, const ChartLook& look);
// A piece of its line across the middle of `box`; with its point in the middle where `pointed`.
void drawRigSwatch(QPainter& painter, int slot, const QRectF& box, const ChartLook& look,
                   double width = kLineWidth, bool pointed = true);

}  // namespace gui
