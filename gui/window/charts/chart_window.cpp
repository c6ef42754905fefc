// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/charts/chart_window.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

#include "gui/telling/curve.hpp"

namespace gui {
namespace {

using telling::Picture;
using telling::PictureLimit;
using telling::PictureLine;
using telling::PictureMark;
using telling::PicturePoint;
using telling::PictureStack;

struct Extent {
  double from = std::numeric_limits<double>::infinity();
  double to = -std::numeric_limits<double>::infinity();
  void add(double v) {
    if (!std::isfinite(v)) return;
    from = std::min(from, v);
    to = std::max(to, v);
  }
  bool empty() const { return from > to; }
};

Extent alongX(const Picture& picture) {
  Extent x;
  for (const PictureLine& line : picture.lines) {
    for (const PicturePoint& p : line.points) x.add(p.x);
  }
  for (const auto& area : picture.areas) {
    for (const PicturePoint& p : area) x.add(p.x);
  }
  for (const PictureStack& stack : picture.stacks)
    x.add(std::accumulate(stack.parts.begin(), stack.parts.end(), 0.0));
  for (const PictureMark& mark : picture.marks) x.add(mark.at.x);
  for (const PictureLimit& limit : picture.limits) x.add(limit.x);
  if (picture.kind == Picture::Kind::StackedBars) x.add(0.0);
  return x;
}

Extent alongY(const Picture& picture) {
  Extent y;
  for (const PictureLine& line : picture.lines) {
    for (const PicturePoint& p : line.points) y.add(p.y);
  }
  if (!picture.areas.empty()) {
    y.add(0.0);
    for (std::size_t i = 0; i < picture.areas[0].size(); ++i) {
      double total = 0.0;
      for (const auto& area : picture.areas) {
        if (i < area.size()) total += area[i].y;
      }
      y.add(total);
    }
  }
  for (const PictureMark& mark : picture.marks) y.add(mark.at.y);
  if (picture.draggable) y.add(*picture.draggable);
  return y;
}

// Outwards to a whole step, so that a small edit seldom moves the axis.
void roundOutwards(Extent& e, bool clock) {
  if (e.empty()) {
    e.from = 0.0;
    e.to = 1.0;
  }
  if (e.from > 0.0 && e.from < 0.45 * e.to) e.from = 0.0;
  if (!(e.to > e.from)) {
    const double half = std::max(0.5, 0.05 * std::abs(e.to));
    e.from -= e.from == 0.0 ? 0.0 : half;
    e.to += half;
  }
  const double step = niceStep(e.to - e.from, 8, clock);
  e.from = step * std::floor(e.from / step + 1e-6);
  e.to = step * std::ceil(e.to / step - 1e-6);
}

}  // namespace

ChartWindow fullWindow(const Picture& picture) {
  Extent x = alongX(picture);
  Extent y = alongY(picture);
  if (picture.kind == Picture::Kind::StackedBars) {
    roundOutwards(x, picture.xIsClock);
    y = {0.0, static_cast<double>(std::max<std::size_t>(1, picture.stacks.size()))};
  } else {
    if (x.empty()) x = {0.0, 1.0};
    if (!(x.to > x.from)) x.to = x.from + std::max(1.0, 0.1 * std::abs(x.from));
  }
  if (picture.yFrom) y.from = *picture.yFrom;
  if (picture.yTo) y.to = *picture.yTo;
  if (picture.xFrom) x.from = *picture.xFrom;
  if (picture.xTo) x.to = *picture.xTo;
  if (picture.kind != Picture::Kind::StackedBars && !picture.exactly) roundOutwards(y, false);
  if (!(x.to > x.from)) x.to = x.from + 1.0;
  return {x.from, x.to, y.from, y.to};
}

ChartWindow fittedUpward(const Picture& picture, const ChartWindow& window) {
  Extent y;
  const auto addLine = [&](const std::vector<PicturePoint>& line) {
    for (const double edge : {window.xFrom, window.xTo})
      if (const auto at = telling::valueAt(line, edge)) y.add(*at);
    for (const PicturePoint& p : line)
      if (window.xFrom <= p.x && p.x <= window.xTo) y.add(p.y);
  };
  for (const PictureLine& line : picture.lines) addLine(line.points);
  if (!picture.areas.empty()) {
    std::vector<PicturePoint> sum = picture.areas[0];
    for (std::size_t part = 1; part < picture.areas.size(); ++part)
      for (std::size_t i = 0; i < std::min(sum.size(), picture.areas[part].size()); ++i)
        sum[i].y += picture.areas[part][i].y;
    addLine(sum);
    y.add(0.0);
  }
  for (const PictureMark& mark : picture.marks)
    if (window.xFrom <= mark.at.x && mark.at.x <= window.xTo) y.add(mark.at.y);
  if (picture.draggable) y.add(*picture.draggable);
  if (y.empty()) return window;
  if (picture.yFrom) y.add(*picture.yFrom);
  // Room for the names beside what is highest and lowest; not less than a person can tell apart.
  constexpr double kAround = 0.08;
  constexpr double kFlattest = 0.5;
  const double around =
      std::max(kAround * (y.to - y.from), 0.5 * kFlattest - 0.5 * (y.to - y.from));
  if (!picture.yFrom && picture.areas.empty()) y.from -= around;
  y.to += around;
  const double step = niceStep(y.to - y.from, 16);
  return {window.xFrom, window.xTo, step * std::floor(y.from / step + 1e-6),
          step * std::ceil(y.to / step - 1e-6)};
}

QString readingText(double value, double range, bool clock, const QLocale& locale) {
  if (clock) return hoursAndMinutesText(value);
  return tickText(value, niceStep(std::max(range, 1e-12), 200), locale);
}

}  // namespace gui
