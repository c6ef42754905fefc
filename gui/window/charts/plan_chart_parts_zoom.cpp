// SPDX-License-Identifier: GPL-3.0-or-later
// Which piece of a picture is seen. Along x as a person asks for it; upward as much as the lines
// take there, so that a mash that loses two kelvins fills the picture.
#include <algorithm>

#include "gui/window/charts/plan_chart_parts.hpp"

namespace gui {

namespace {

constexpr double kDeepestZoom = 200.0;

}  // namespace

ChartWindow PlanChart::Parts::visible() const {
  if (held) return *held;
  return window.value_or(fullWindow(picture));
}

// About a point of the picture, within all of it.
void PlanChart::Parts::zoom(double factor, double xCentre, double yCentre, bool upward) {
  if (!zoomable()) return;
  const ChartWindow all = fullWindow(picture);
  ChartWindow w = window.value_or(all);
  if (upward) {
    ownHeight = true;
    w.yFrom = yCentre + (w.yFrom - yCentre) / factor;
    w.yTo = yCentre + (w.yTo - yCentre) / factor;
  }
  w.xFrom = xCentre + (w.xFrom - xCentre) / factor;
  w.xTo = xCentre + (w.xTo - xCentre) / factor;
  if (w.width() < all.width() / kDeepestZoom) return;
  if (ownHeight && w.height() < all.height() / kDeepestZoom) return;
  settle(w, all);
}

void PlanChart::Parts::pan(double byX, double byY) {
  if (!window) return;
  ChartWindow w = *window;
  if (byY != 0.0) ownHeight = true;
  w.xFrom += byX;
  w.xTo += byX;
  w.yFrom += byY;
  w.yTo += byY;
  settle(w, fullWindow(picture));
}

void PlanChart::Parts::showOnly(double xFrom, double xTo) {
  const ChartWindow all = fullWindow(picture);
  if (!zoomable() || !(xTo > xFrom)) return;
  ownHeight = false;
  settle({xFrom, xTo, all.yFrom, all.yTo}, all);
}

void PlanChart::Parts::settle(ChartWindow w, const ChartWindow& all) {
  const auto within = [](double& from, double& to, double least, double most) {
    if (to - from >= (most - least) * (1.0 - 1e-9)) {
      from = least;
      to = most;
      return true;
    }
    const double shift = from < least ? least - from : to > most ? most - to : 0.0;
    from += shift;
    to += shift;
    return false;
  };
  const bool wholeX = within(w.xFrom, w.xTo, all.xFrom, all.xTo);
  const bool wholeY = !ownHeight || within(w.yFrom, w.yTo, all.yFrom, all.yTo);
  if (wholeX && wholeY) {
    window.reset();
    ownHeight = false;
  } else {
    window = ownHeight ? w : fittedUpward(picture, w);
  }
  stale = true;
}

std::vector<PictureStage> stagesOf(const telling::Picture& picture) {
  std::vector<PictureStage> stages;
  for (const telling::PictureLine& line : picture.lines) {
    if (line.points.empty()) continue;
    double from = line.points.front().x;
    for (const telling::PicturePhase& phase : line.phases) {
      const auto known = std::find_if(stages.begin(), stages.end(), [&](const PictureStage& one) {
        return one.name == phase.name;
      });
      if (known == stages.end()) {
        stages.push_back({phase.name, from, phase.until});
      } else {
        known->from = std::min(known->from, from);
        known->to = std::max(known->to, phase.until);
      }
      from = phase.until;
    }
  }
  return stages;
}

}  // namespace gui
