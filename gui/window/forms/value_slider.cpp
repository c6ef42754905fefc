// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/forms/value_slider.hpp"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QScreen>
#include <QSlider>
#include <algorithm>

#include "gui/window/forms/quantity_field.hpp"

namespace gui {
namespace {

constexpr int kEms = 22;  // wide

}  // namespace

ValueSlider::ValueSlider(rigs::Slide slide, const QString& name, QWidget& field)
    : QFrame(&field, Qt::Popup), slide_(std::move(slide)), name_(name) {
  setObjectName(QStringLiteral("value slider"));
  setAttribute(Qt::WA_DeleteOnClose);
  setFrameShape(QFrame::StyledPanel);
  setFont(field.font());
  slider_ = new QSlider(Qt::Horizontal);
  slider_->setRange(0, static_cast<int>(slide_.values.size()) - 1);
  slider_->setPageStep(PlanLineEdit::kManySteps);
  slider_->setValue(static_cast<int>(slide_.at));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(6, 4, 6, 4);
  row->addWidget(new QLabel(QString::fromStdString(slide_.values.front())));
  row->addWidget(slider_, 1);
  row->addWidget(new QLabel(QString::fromStdString(slide_.values.back())));
  connect(slider_, &QSlider::valueChanged, this, [this](int at) {
    tellValue();
    Q_EMIT moved(QString::fromStdString(slide_.values[static_cast<std::size_t>(at)]));
  });
  setFocusProxy(slider_);
  tellValue();
  const int width = std::max(field.width(), kEms * fontMetrics().averageCharWidth() * 2);
  resize(std::min(width, field.screen()->availableGeometry().width()), sizeHint().height());
  // Where there is no room below it opens above.
  const QRect room = field.screen()->availableGeometry();
  QPoint at = field.mapToGlobal(QPoint(0, field.height()));
  if (at.y() + height() > room.bottom()) at = field.mapToGlobal(QPoint(0, -height()));
  at.setX(std::clamp(at.x(), room.left(), std::max(room.left(), room.right() - this->width())));
  move(at);
}

// A screen reader would read out the number of the step.
void ValueSlider::tellValue() {
  const QString value =
      QString::fromStdString(slide_.values[static_cast<std::size_t>(slider_->value())]);
  slider_->setAccessibleName(tr("%1: %2").arg(name_, value));
}

void ValueSlider::keyPressEvent(QKeyEvent* event) {
  const int key = event->key();
  if (key == Qt::Key_Escape || key == Qt::Key_Return || key == Qt::Key_Enter) {
    close();
    return;
  }
  QFrame::keyPressEvent(event);
}

QIcon sliderIcon(const QWidget& of) {
  constexpr int kSize = 16;
  const qreal scale = of.devicePixelRatioF();
  QPixmap pixmap(QSize(kSize, kSize) * scale);
  pixmap.setDevicePixelRatio(scale);
  pixmap.fill(Qt::transparent);
  QPainter painter(&pixmap);
  painter.setRenderHint(QPainter::Antialiasing);
  const QColor ink = of.palette().color(QPalette::Text);
  painter.setPen(QPen(ink, 1.5));
  painter.drawLine(QPointF(1, kSize / 2.0), QPointF(kSize - 1, kSize / 2.0));
  painter.setPen(Qt::NoPen);
  painter.setBrush(ink);
  painter.drawEllipse(QPointF(kSize * 0.62, kSize / 2.0), 3.5, 3.5);
  return QIcon(pixmap);
}

}  // namespace gui
