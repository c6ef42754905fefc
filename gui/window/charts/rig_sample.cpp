// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/charts/rig_sample.hpp"

#include <QPainter>

#include "gui/window/charts/rig_swatch.hpp"

namespace gui {

RigSample::RigSample(int slot, QWidget* parent) : QWidget(parent), slot_(slot) {
  setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void RigSample::setSlot(int slot) {
  slot_ = slot;
  update();
}

void RigSample::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  drawRigSwatch(painter, slot_, QRectF(rect()).adjusted(2.0, 0.0, -2.0, 0.0),
                lookOf(palette(), font()));
}

}  // namespace gui
