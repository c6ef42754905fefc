// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/forms/value_slider.hpp"

#include <QGuiApplication>
#include <QHBoxLayout>
#include <QIconEngine>
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

class SliderIcon : public QIconEngine {
 public:
  void paint(QPainter* painter, const QRect& rect, QIcon::Mode, QIcon::State) override {
    constexpr qreal kKnobAt = 0.62, kKnobSize = 0.22, kLine = 0.1;  // of the icon's width
    const QColor ink = QGuiApplication::palette().color(QPalette::Text);
    const qreal size = rect.width();
    const qreal middle = rect.center().y() + 0.5;
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen(ink, kLine * size));
    painter->drawLine(QPointF(rect.left() + 1, middle), QPointF(rect.right(), middle));
    painter->setPen(Qt::NoPen);
    painter->setBrush(ink);
    painter->drawEllipse(QPointF(rect.left() + kKnobAt * size, middle), kKnobSize * size,
                         kKnobSize * size);
  }
  QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
    QPixmap made(size);
    made.fill(Qt::transparent);
    QPainter painter(&made);
    paint(&painter, QRect(QPoint(0, 0), size), mode, state);
    return made;
  }
  QIconEngine* clone() const override { return new SliderIcon; }
};

}  // namespace

ValueSlider::ValueSlider(rigs::Slide slide, const QString& name, QWidget& field)
    : QFrame(&field, Qt::Popup), slide_(std::move(slide)), name_(name) {
  setObjectName(QStringLiteral("value slider"));
  setAttribute(Qt::WA_DeleteOnClose);
  setFrameStyle(QFrame::Box | QFrame::Plain);
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

QIcon sliderIcon() { return QIcon(new SliderIcon); }

}  // namespace gui
