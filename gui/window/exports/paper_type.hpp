// SPDX-License-Identifier: GPL-3.0-or-later
// The letters a report is set in, and what it measures in: tenths of points, since fonts have whole
// pixels.
#pragma once

#include <QFont>

#include "gui/window/charts/chart_look.hpp"

namespace gui {

inline constexpr qreal kPoint = 10.0;
// Of tables, notes and cautions, in points: nobody reads less than this in poor light.
inline constexpr qreal kSmallestType = 7.5;

struct PaperType {
  explicit PaperType(const ChartLook& look);

  ChartLook look;  // of pictures, whose font is in points
  QFont body, strong, heading, title, small, smallStrong;
};

}  // namespace gui
