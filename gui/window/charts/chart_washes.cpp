// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/charts/chart_washes.hpp"

#include <QPainter>
#include <QPolygonF>
#include <algorithm>
#include <iterator>
#include <vector>

#include "gui/telling/curve.hpp"

namespace gui {
namespace {

constexpr double kWash = 0.82;  // towards the paper

// A line within these ends along x, as pixels.
QPolygonF edgeOf(const std::vector<telling::PicturePoint>& line, double from, double to,
                 const ChartLayout& layout) {
  QPolygonF edge;
  const auto add = [&](double x, double y) {
    edge += layout.at({x, std::clamp(y, layout.window.yFrom, layout.window.yTo)});
  };
  if (const auto first = telling::valueAt(line, from)) add(from, *first);
  for (const telling::PicturePoint& p : line)
    if (p.x > from && p.x < to) add(p.x, p.y);
  if (const auto last = telling::valueAt(line, to)) add(to, *last);
  return edge;
}

}  // namespace

void drawWashes(QPainter& painter, const telling::Picture& picture, const ChartLayout& layout,
                const ChartLook& look) {
  for (const telling::PictureWash& wash : picture.washes) {
    const telling::PictureLine& first = picture.lines[wash.low];
    const auto& low = first.points;
    const auto& high = picture.lines[wash.high].points;
    if (low.empty() || high.empty()) continue;
    const double from = std::max({layout.window.xFrom, low.front().x, high.front().x});
    const double to = std::min({layout.window.xTo, low.back().x, high.back().x});
    if (!(to > from)) continue;
    QPolygonF around = edgeOf(low, from, to, layout);
    const QPolygonF above = edgeOf(high, from, to, layout);
    std::copy(above.rbegin(), above.rend(), std::back_inserter(around));
    ChartLook own = lookOfRig(first.rig, look);
    own.faded = std::max(own.faded, kWash);
    painter.setPen(Qt::NoPen);
    painter.setBrush(shadeOfRig(telling::slotOfRig(picture, first.rig), own));
    painter.drawPolygon(around);
  }
}

}  // namespace gui
