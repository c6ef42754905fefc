// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/curve.hpp"

#include <algorithm>

namespace gui::telling {
namespace {

std::vector<PicturePoint>::const_iterator firstFrom(const std::vector<PicturePoint>& line,
                                                    double x) {
  return std::lower_bound(line.begin(), line.end(), x,
                          [](const PicturePoint& p, double to) { return p.x < to; });
}

}  // namespace

void addPoint(PictureLine& line, PicturePoint own) {
  if (line.points.empty()) return;
  line.points.insert(firstFrom(line.points, own.x), own);
}

std::optional<double> valueAt(const std::vector<PicturePoint>& line, double x) {
  if (line.empty() || !(line.front().x <= x && x <= line.back().x)) return std::nullopt;
  const auto after = firstFrom(line, x);
  if (after == line.begin()) return after->y;
  const PicturePoint b = *after;
  const PicturePoint a = *(after - 1);
  if (b.x <= a.x) return b.y;
  return a.y + (x - a.x) / (b.x - a.x) * (b.y - a.y);
}

}  // namespace gui::telling
