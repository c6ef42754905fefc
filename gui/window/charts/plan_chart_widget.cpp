// SPDX-License-Identifier: GPL-3.0-or-later
// The picture on the screen: drawn once and kept, so that a moving cross-hair costs nothing.
#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPixmap>
#include <QToolTip>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "gui/telling/curve.hpp"
#include "gui/window/charts/chart_window.hpp"
#include "gui/window/charts/plan_chart.hpp"

namespace gui {
namespace {

using telling::Picture;
using telling::PictureLine;
using telling::PictureMark;
using telling::PicturePhase;

constexpr double kGrip = 7.0;  // pixels around the draggable line
constexpr double kDeepestZoom = 200.0;

}  // namespace

struct PlanChart::Parts {
  Picture picture;
  ChartLook look;
  bool ownLook = false;
  ChartLayout layout;
  Plot plot;
  std::optional<ChartWindow> window;  // zoomed
  std::optional<ChartWindow> held;    // while the line is in the hand: axes that move would pull it
  std::optional<double> crosshair;
  QPixmap kept;
  bool stale = true;
  enum class Hand { Free, Panning, Dragging } hand = Hand::Free;
  QPointF grabbed;
  ChartWindow grabbedWindow;

  double xAt(double pixel) const {
    return layout.window.xFrom + (pixel - layout.plot.left()) / layout.scale().x();
  }
  double yAt(double pixel) const {
    return layout.window.yFrom + (layout.plot.bottom() - pixel) / layout.scale().y();
  }
  bool onGrip(QPointF at) const {
    if (!picture.draggable) return false;
    return std::abs(layout.at({0.0, *picture.draggable}).y() - at.y()) <= kGrip &&
           layout.plot.adjusted(-kGrip, -kGrip, kGrip, kGrip).contains(at);
  }
  // What happens to a rig there, as near as a hand can point.
  QString eventAt(int rig, double x, const ChartWindow& w) const {
    constexpr double kNear = 0.005;  // of the width
    std::string event;
    double nearest = kNear * w.width();
    for (const PictureMark& mark : picture.marks) {
      if (mark.rig != rig || mark.event.empty() || std::abs(mark.at.x - x) > nearest) continue;
      nearest = std::abs(mark.at.x - x);
      event = mark.event;
    }
    return QString::fromStdString(event);
  }
  // The mark under the pointer, if it tells of an event.
  const PictureMark* markAt(QPointF at) const {
    double nearest = 8.0;  // pixels
    const PictureMark* found = nullptr;
    for (const PictureMark& mark : picture.marks) {
      const QPointF off = layout.at(pointOf(mark.at)) - at;
      if (mark.event.empty() || std::hypot(off.x(), off.y()) > nearest) continue;
      nearest = std::hypot(off.x(), off.y());
      found = &mark;
    }
    return found;
  }
  // The next event along x.
  std::optional<double> eventAfter(double x, double sign) const {
    std::optional<double> next;
    for (const PictureMark& mark : picture.marks) {
      const double ahead = sign * (mark.at.x - x);
      if (mark.event.empty() || ahead <= 1e-9) continue;
      if (!next || ahead < sign * (*next - x)) next = mark.at.x;
    }
    return next;
  }
  ChartWindow visible() const {
    if (held) return *held;
    return window.value_or(fullWindow(picture));
  }
  QString withUnit(const QString& number, const std::string& unit) const {
    return unit.empty() ? number
                        : QStringLiteral("%1 %2").arg(number, QString::fromStdString(unit));
  }
  QStringList readOut() const;
  QString readOutOf(const PictureLine& line, double value, const ChartWindow& w) const;
  void drawReadOut(QPainter& painter) const;
  bool zoomable() const { return picture.kind != Picture::Kind::StackedBars; }
  // About a point of the picture, within all of it.
  void zoom(double factor, double xCentre, double yCentre, bool upward) {
    if (!zoomable()) return;
    const ChartWindow all = fullWindow(picture);
    ChartWindow w = window.value_or(all);
    w.xFrom = xCentre + (w.xFrom - xCentre) / factor;
    w.xTo = xCentre + (w.xTo - xCentre) / factor;
    if (upward) {
      w.yFrom = yCentre + (w.yFrom - yCentre) / factor;
      w.yTo = yCentre + (w.yTo - yCentre) / factor;
    }
    if (w.width() < all.width() / kDeepestZoom || w.height() < all.height() / kDeepestZoom) return;
    settle(w, all);
  }
  void pan(double byX, double byY) {
    if (!window) return;
    ChartWindow w = *window;
    w.xFrom += byX;
    w.xTo += byX;
    w.yFrom += byY;
    w.yTo += byY;
    settle(w, fullWindow(picture));
  }
  void settle(ChartWindow w, const ChartWindow& all) {
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
    const bool wholeY = within(w.yFrom, w.yTo, all.yFrom, all.yTo);
    window = w;
    if (wholeX && wholeY) window.reset();
    stale = true;
  }
};

// All rigs at the cross-hair, under what it stands at.
QStringList PlanChart::Parts::readOut() const {
  QStringList lines;
  if (!crosshair || !zoomable()) return lines;
  const ChartWindow w = window.value_or(fullWindow(picture));
  lines +=
      withUnit(readingText(*crosshair, w.width(), picture.xIsClock, look.locale), picture.xUnit);
  for (const PictureLine& line : picture.lines) {
    const auto value = telling::valueAt(line.points, *crosshair);
    if (value) lines += readOutOf(line, *value, w);
  }
  for (std::size_t i = picture.areas.size(); i-- > 0;) {
    const auto value = telling::valueAt(picture.areas[i], *crosshair);
    if (!value) continue;
    const std::string name = i < picture.partNames.size() ? picture.partNames[i] : std::string();
    lines += QStringLiteral("%1 %2  %3")
                 .arg(i + 1)
                 .arg(QString::fromStdString(name),
                      withUnit(readingText(*value, w.height(), false, look.locale), picture.yUnit));
  }
  return lines;
}

QString PlanChart::Parts::readOutOf(const PictureLine& line, double value,
                                    const ChartWindow& w) const {
  const QString own = QString::fromStdString(line.name);
  const QString name =
      line.rig < 0
          ? own
          : rigInPicture(picture, line.rig, line.faint || !picture.lettered ? own : QString());
  QString text = QStringLiteral("%1  %2").arg(
      name, withUnit(readingText(value, w.height(), false, look.locale), picture.yUnit));
  const auto phase = std::find_if(line.phases.begin(), line.phases.end(),
                                  [&](const PicturePhase& one) { return *crosshair <= one.until; });
  const QString event = eventAt(line.rig, *crosshair, w);
  if (!event.isEmpty()) {
    text += QStringLiteral("  ") + event;
  } else if (phase != line.phases.end()) {
    text += QStringLiteral("  ") + QString::fromStdString(phase->name);
  }
  return text;
}

void PlanChart::Parts::drawReadOut(QPainter& painter) const {
  const QStringList lines = readOut();
  if (lines.isEmpty()) return;
  const double x = layout.at({*crosshair, 0.0}).x();
  painter.setPen(QPen(look.accent, 1.0));
  painter.drawLine(QPointF(x, layout.plot.top()), QPointF(x, layout.plot.bottom()));
  painter.setBrush(look.accent);
  for (const PictureLine& line : picture.lines) {
    const auto value = telling::valueAt(line.points, *crosshair);
    if (!value) continue;
    const QPointF at = layout.at({*crosshair, *value});
    if (layout.plot.contains(at)) painter.drawEllipse(at, 3.0, 3.0);
  }
  const QFontMetricsF metrics(layout.font);
  double width = 0.0;
  for (const QString& line : lines) width = std::max(width, metrics.horizontalAdvance(line));
  const double height = static_cast<double>(lines.size()) * metrics.height();
  QRectF box(x + 12.0, layout.plot.top() + 6.0, width + 16.0, height + 10.0);
  if (box.right() > layout.plot.right()) box.moveRight(x - 12.0);
  if (box.left() < 0.0) box.moveLeft(0.0);
  painter.setPen(QPen(look.quietInk, 1.0));
  painter.setBrush(look.paper);
  painter.drawRoundedRect(box, 3.0, 3.0);
  painter.setPen(look.ink);
  for (qsizetype i = 0; i < lines.size(); ++i) {
    painter.setFont(i == 0 ? layout.titleFont : layout.font);
    painter.drawText(QPointF(box.left() + 8.0, box.top() + 5.0 + metrics.ascent() +
                                                   static_cast<double>(i) * metrics.height()),
                     lines[i]);
  }
}

PlanChart::PlanChart(QWidget* parent) : QWidget(parent), parts_(std::make_unique<Parts>()) {
  parts_->look = lookOf(palette(), font(), locale());
  setMouseTracking(true);
  setFocusPolicy(Qt::StrongFocus);
  setAttribute(Qt::WA_OpaquePaintEvent);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}
PlanChart::~PlanChart() = default;

void PlanChart::show(const Picture& picture) {
  Parts& p = *parts_;
  // Another picture starts unzoomed; the same one after an edit keeps its window.
  if (picture.kind != p.picture.kind || picture.xTitle != p.picture.xTitle ||
      picture.yTitle != p.picture.yTitle) {
    p.window.reset();
    p.crosshair.reset();
  }
  const auto held = p.picture.draggable;
  p.picture = picture;
  // An answer to an earlier moment of the drag must not pull the line out of the hand.
  if (p.hand == Parts::Hand::Dragging && picture.draggable) p.picture.draggable = held;
  p.stale = true;
  setAccessibleName(QString::fromStdString(picture.title));
  update();
}

const Picture& PlanChart::picture() const { return parts_->picture; }

void PlanChart::setDraggable(double y, const QString& label) {
  Parts& p = *parts_;
  if (!p.picture.draggable) return;
  if (p.hand != Parts::Hand::Dragging) p.picture.draggable = y;
  p.picture.draggableLabel = label.toStdString();
  p.stale = true;
  update();
}

ChartWindow PlanChart::visibleWindow() const { return parts_->visible(); }
bool PlanChart::isZoomed() const { return parts_->window.has_value(); }

void PlanChart::setLook(const ChartLook& look) {
  parts_->look = look;
  parts_->ownLook = true;
  parts_->stale = true;
  update();
}

void PlanChart::resetZoom() {
  parts_->window.reset();
  parts_->stale = true;
  update();
}

void PlanChart::setCrosshair(double x) {
  const ChartWindow w = parts_->window.value_or(fullWindow(parts_->picture));
  parts_->crosshair = std::clamp(x, w.xFrom, w.xTo);
  setAccessibleDescription(readOut().join(QStringLiteral("; ")));
  update();
}

void PlanChart::clearCrosshair() {
  if (!parts_->crosshair) return;
  parts_->crosshair.reset();
  update();
}

QStringList PlanChart::readOut() const { return parts_->readOut(); }

QSize PlanChart::sizeHint() const { return {720, 400}; }
QSize PlanChart::minimumSizeHint() const { return {320, 240}; }

bool PlanChart::event(QEvent* event) {
  // Arrow keys and zoom keys belong to the chart, not to the window's shortcuts.
  if (event->type() == QEvent::ShortcutOverride) {
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool held = (key->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) != 0;
    if (!held && (key->key() == Qt::Key_Plus || key->key() == Qt::Key_Equal ||
                  key->key() == Qt::Key_Minus || key->key() == Qt::Key_0)) {
      event->accept();
      return true;
    }
  }
  return QWidget::event(event);
}

void PlanChart::paintEvent(QPaintEvent*) {
  Parts& p = *parts_;
  const qreal sharpness = devicePixelRatioF();
  if (p.stale || p.kept.deviceIndependentSize() != QSizeF(size())) {
    p.layout = layOut(p.picture, size(), p.look, p.visible());
    p.plot.show(p.picture, p.layout, p.look);
    p.kept = QPixmap(size() * sharpness);
    p.kept.setDevicePixelRatio(sharpness);
    p.kept.fill(p.look.paper);
    QPainter onto(&p.kept);
    p.plot.draw(onto);
    p.stale = false;
  }
  QPainter painter(this);
  painter.drawPixmap(0, 0, p.kept);
  painter.setRenderHint(QPainter::Antialiasing);
  p.drawReadOut(painter);
  if (hasFocus()) {
    painter.setPen(QPen(p.look.quietInk, 1.0, Qt::DotLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5));
  }
  painter.end();
  Q_EMIT painted();
}

void PlanChart::resizeEvent(QResizeEvent*) { parts_->stale = true; }

void PlanChart::changeEvent(QEvent* event) {
  switch (event->type()) {
    case QEvent::PaletteChange:
    case QEvent::FontChange:
    case QEvent::LocaleChange:
    case QEvent::StyleChange:
      if (!parts_->ownLook) parts_->look = lookOf(palette(), font(), locale());
      parts_->stale = true;
      update();
      break;
    default:
      break;
  }
  QWidget::changeEvent(event);
}

void PlanChart::mouseMoveEvent(QMouseEvent* event) {
  Parts& p = *parts_;
  const QPointF at = event->position();
  if (p.hand == Parts::Hand::Dragging) {
    const double y = std::clamp(p.yAt(at.y()), p.layout.window.yFrom, p.layout.window.yTo);
    p.picture.draggable = y;
    p.stale = true;
    update();
    Q_EMIT dragged(y);
    return;
  }
  if (p.hand == Parts::Hand::Panning) {
    const QPointF moved = at - p.grabbed;
    p.window = p.grabbedWindow;
    p.pan(-moved.x() / p.layout.scale().x(), moved.y() / p.layout.scale().y());
    update();
    return;
  }
  setCursor(p.onGrip(at) ? Qt::SizeVerCursor : Qt::ArrowCursor);
  if (p.layout.plot.contains(at)) {
    const PictureMark* mark = p.markAt(at);
    setCrosshair(mark ? mark->at.x : p.xAt(at.x()));
  } else {
    clearCrosshair();
  }
}

void PlanChart::mousePressEvent(QMouseEvent* event) {
  Parts& p = *parts_;
  if (event->button() != Qt::LeftButton) return;
  if (p.onGrip(event->position())) {
    p.hand = Parts::Hand::Dragging;
    p.held = p.layout.window;
    clearCrosshair();
    Q_EMIT handChanged(true);
  } else if (p.window) {
    p.hand = Parts::Hand::Panning;
    p.grabbed = event->position();
    p.grabbedWindow = *p.window;
    setCursor(Qt::ClosedHandCursor);
  }
}

void PlanChart::mouseReleaseEvent(QMouseEvent*) {
  const bool dragging = parts_->hand == Parts::Hand::Dragging;
  parts_->hand = Parts::Hand::Free;
  unsetCursor();
  if (!dragging) return;
  parts_->held.reset();
  parts_->stale = true;
  update();
  Q_EMIT handChanged(false);
}

void PlanChart::mouseDoubleClickEvent(QMouseEvent*) { resetZoom(); }

void PlanChart::leaveEvent(QEvent*) { clearCrosshair(); }

// Only with focus or Ctrl: a wheel that scrolls the page must not zoom what passes under it.
void PlanChart::wheelEvent(QWheelEvent* event) {
  Parts& p = *parts_;
  const bool meant = hasFocus() || event->modifiers().testFlag(Qt::ControlModifier);
  if (!meant || !p.zoomable() || event->angleDelta().y() == 0) {
    event->ignore();
    return;
  }
  const QPointF at = event->position();
  p.zoom(std::pow(1.2, event->angleDelta().y() / 120.0), p.xAt(at.x()), p.yAt(at.y()),
         event->modifiers().testFlag(Qt::ShiftModifier));
  update();
  event->accept();
}

void PlanChart::keyPressEvent(QKeyEvent* event) {
  Parts& p = *parts_;
  if (!p.zoomable()) return QWidget::keyPressEvent(event);
  const ChartWindow w = p.window.value_or(fullWindow(p.picture));
  const bool shift = event->modifiers().testFlag(Qt::ShiftModifier);
  const double middle = p.crosshair.value_or(0.5 * (w.xFrom + w.xTo));
  const auto step = [&](double sign) {
    const auto next = event->modifiers().testFlag(Qt::ControlModifier)
                          ? p.eventAfter(p.crosshair.value_or(w.xFrom - 1.0), sign)
                          : std::nullopt;
    if (shift) {
      p.pan(sign * 0.1 * w.width(), 0.0);
    } else if (next) {
      setCrosshair(*next);
    } else {
      setCrosshair(middle + sign * w.width() / 100.0);
    }
  };
  const auto lift = [&](double sign) {
    if (p.picture.draggable && !shift) {
      const double to =
          std::clamp(*p.picture.draggable + sign * niceStep(w.height(), 100), w.yFrom, w.yTo);
      p.picture.draggable = to;
      p.stale = true;
      Q_EMIT dragged(to);
    } else {
      p.pan(0.0, sign * 0.1 * w.height());
    }
  };
  switch (event->key()) {
    case Qt::Key_Left:
      step(-1.0);
      break;
    case Qt::Key_Right:
      step(1.0);
      break;
    case Qt::Key_Up:
      lift(1.0);
      break;
    case Qt::Key_Down:
      lift(-1.0);
      break;
    case Qt::Key_Home:
      setCrosshair(w.xFrom);
      break;
    case Qt::Key_End:
      setCrosshair(w.xTo);
      break;
    // Some keyboards have + above =, others need Shift for it: all of these mean nearer.
    case Qt::Key_Plus:
    case Qt::Key_Equal:
      p.zoom(1.5, middle, 0.5 * (w.yFrom + w.yTo), false);
      break;
    case Qt::Key_Minus:
      p.zoom(1.0 / 1.5, middle, 0.5 * (w.yFrom + w.yTo), true);
      break;
    case Qt::Key_0:
      resetZoom();
      break;
    case Qt::Key_Escape:
      if (!p.crosshair && !p.window) return QWidget::keyPressEvent(event);
      clearCrosshair();
      resetZoom();
      break;
    default:
      return QWidget::keyPressEvent(event);
  }
  update();
}

}  // namespace gui
