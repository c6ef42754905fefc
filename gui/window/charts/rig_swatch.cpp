// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/charts/rig_swatch.hpp"

#include <QPainter>
#include <QPolygonF>
#include <cmath>

#include "gui/window/charts/curves.hpp"

namespace gui {
namespace {

constexpr int kShapes = 12;
constexpr double kRim = 1.5;   // px
constexpr double kOpen = 1.6;  // px, of open shapes' lines

QPolygonF outlineOf(PointShape shape, QPointF at, double r) {
  const auto corner = [&](double x, double y) { return at + QPointF(x * r, y * r); };
  switch (shape) {
    case PointShape::Triangle:
    case PointShape::OpenTriangle:
      return QPolygonF({corner(0.0, -1.2), corner(1.15, 0.9), corner(-1.15, 0.9)});
    case PointShape::TriangleDown:
    case PointShape::OpenTriangleDown:
      return QPolygonF({corner(0.0, 1.2), corner(1.15, -0.9), corner(-1.15, -0.9)});
    case PointShape::Square:
    case PointShape::OpenSquare:
      return QPolygonF(
          {corner(-0.9, -0.9), corner(0.9, -0.9), corner(0.9, 0.9), corner(-0.9, 0.9)});
    default:
      return QPolygonF(
          {corner(0.0, -1.25), corner(1.25, 0.0), corner(0.0, 1.25), corner(-1.25, 0.0)});
  }
}

void drawStrokes(QPainter& painter, PointShape shape, QPointF at, double r, const QColor& rim,
                 const QColor& shade) {
  const QPointF a = shape == PointShape::Plus ? QPointF(r * 1.2, 0.0) : QPointF(r, r);
  const QPointF b = shape == PointShape::Plus ? QPointF(0.0, r * 1.2) : QPointF(r, -r);
  for (const QPen& pen : {QPen(rim, kOpen + 2.0 * kRim), QPen(shade, kOpen + 0.4)}) {
    painter.setPen(pen);
    painter.drawLine(at - a, at + a);
    painter.drawLine(at - b, at + b);
  }
}

bool isOpen(PointShape shape) { return shape >= PointShape::Ring && shape < PointShape::Cross; }
bool isRound(PointShape shape) { return shape == PointShape::Disc || shape == PointShape::Ring; }

}  // namespace

PointShape pointOfRig(int slot) { return static_cast<PointShape>(slot % kShapes); }

void drawRigPoint(QPainter& painter, int slot, QPointF at, double radius, const ChartLook& look) {
  const PointShape shape = pointOfRig(slot);
  const QColor shade = shadeOfRig(slot, look);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing, true);
  if (shape == PointShape::Cross || shape == PointShape::Plus) {
    drawStrokes(painter, shape, at, radius, look.paper, shade);
  } else {
    const bool open = isOpen(shape);
    painter.setPen(open ? QPen(shade, kOpen) : QPen(look.paper, kRim));
    painter.setBrush(open ? look.paper : shade);
    if (isRound(shape))
      painter.drawEllipse(at, radius, radius);
    else
      painter.drawPolygon(outlineOf(shape, at, radius));
  }
  painter.restore();
}

void drawRigSwatch(QPainter& painter, int slot, const QRectF& box, const ChartLook& look,
                   double width, bool pointed) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing, true);
  QPen pen(shadeOfRig(slot, look), width);
  pen.setCapStyle(Qt::FlatCap);
  painter.setPen(pen);
  QVector<qreal> pattern = dashesOfRig(slot);
  for (qreal& piece : pattern) piece *= width;
  const double y = box.center().y();
  // Cut here: a dashed pen looks unlike in print and on the screen.
  const Points pieces = dashed({{box.left(), y}, {box.right(), y}}, pattern, {1.0, 1.0});
  for (qsizetype i = 1; i < pieces.size(); ++i) {
    if (std::isnan(pieces[i].x()) || std::isnan(pieces[i - 1].x())) continue;
    painter.drawLine(pieces[i - 1], pieces[i]);
  }
  painter.restore();
  if (pointed) drawRigPoint(painter, slot, box.center(), 4.0, look);
}

}  // namespace gui
