// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/charts/chart_labels.hpp"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "gui/window/charts/rig_swatch.hpp"

namespace gui {
namespace {

using Label = ChartLayout::Label;

constexpr double kPoint = 4.0;  // pixels, half of what it is wide
constexpr double kPen = 1.5;

void drawReading(QPainter& painter, const Label& mark, const QColor& shade, const ChartLook& look) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing, true);
  painter.setPen(QPen(shade, kPen, Qt::SolidLine, Qt::FlatCap));
  const QPointF reach(0.0, mark.reach);
  const QPointF foot(0.75 * kPoint, 0.0);
  // Within the point it would only be a blot.
  if (mark.reach > kPoint) {
    painter.drawLine(mark.anchor - reach, mark.anchor + reach);
    for (const QPointF& end : {mark.anchor - reach, mark.anchor + reach})
      painter.drawLine(end - foot, end + foot);
  }
  painter.setBrush(look.paper);
  painter.drawEllipse(mark.anchor, kPoint - 0.5, kPoint - 0.5);
  painter.restore();
}

}  // namespace

void drawLabel(QPainter& painter, const Label& label, const QFont& font, const QColor& color,
               int flags) {
  if (label.box.isEmpty()) return;
  painter.setFont(font);
  painter.setPen(color);
  painter.drawText(label.box.adjusted(0, 0, 1, 0), flags, label.text);
}

void drawLeader(QPainter& painter, const Label& label, const QColor& color) {
  constexpr double kBeside = 13.0;  // pixels
  if (label.box.isEmpty()) return;
  const QPointF near(std::clamp(label.anchor.x(), label.box.left(), label.box.right()),
                     std::clamp(label.anchor.y(), label.box.top(), label.box.bottom()));
  if (std::hypot(near.x() - label.anchor.x(), near.y() - label.anchor.y()) < kBeside) return;
  painter.setPen(QPen(color, 1.0, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
  painter.drawLine(label.anchor, near);
}

void drawMarks(QPainter& painter, const telling::Picture& picture, const ChartLayout& layout,
               const ChartLook& look) {
  for (const Label& mark : layout.marks) drawLeader(painter, mark, look.quietInk);
  for (const Label& mark : layout.marks) {
    const ChartLook own = lookOfRig(mark.index, look);
    const int slot = telling::slotOfRig(picture, mark.index);
    if (mark.isRead)
      drawReading(painter, mark, shadeOfRig(slot, own), look);
    else
      drawRigPoint(painter, slot, mark.anchor, kPoint, own);
    if (mark.box.isEmpty()) continue;
    drawLabel(painter, mark, layout.smallFont, own.faded > 0.0 ? look.quietInk : look.ink);
  }
}

}  // namespace gui
