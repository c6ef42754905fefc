// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/charts/chart_layout.hpp"

namespace gui {

QPointF ChartLayout::scale() const {
  return {plot.width() / window.width(), plot.height() / window.height()};
}

QPointF ChartLayout::at(QPointF value) const {
  return {plot.left() + (value.x() - window.xFrom) * scale().x(),
          plot.bottom() - (value.y() - window.yFrom) * scale().y()};
}

}  // namespace gui
