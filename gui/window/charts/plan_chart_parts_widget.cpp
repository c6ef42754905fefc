// SPDX-License-Identifier: GPL-3.0-or-later
// The picture on the screen: drawn once and kept, so that a moving cross-hair costs nothing.
#include <QAccessibleWidget>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "gui/window/charts/plan_chart_parts.hpp"

namespace gui {

using telling::Picture;
using telling::PictureMark;

namespace {

// Asked for each class of an object, the most particular first.
QAccessibleInterface* accessToPicture(const QString& ofClass, QObject* object) {
  auto* widget = qobject_cast<QWidget*>(object);
  return widget && ofClass == QLatin1String("gui::PlanChart")
             ? new QAccessibleWidget(widget, QAccessible::Chart)
             : nullptr;
}

}  // namespace

PlanChart::PlanChart(QWidget* parent) : QWidget(parent), parts_(std::make_unique<Parts>()) {
  parts_->look = lookOf(palette(), font(), locale());
  QAccessible::installFactory(accessToPicture);  // the same one is not installed twice
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
    p.ownHeight = false;
    p.crosshair.reset();
    p.piece.reset();
  }
  const auto held = p.picture.draggable;
  p.picture = picture;
  if (p.window && !p.ownHeight) p.window = fittedUpward(picture, *p.window);
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
  parts_->ownHeight = false;
  parts_->stale = true;
  update();
}

void PlanChart::zoomAtCrosshair(double factor, bool upward) {
  const ChartWindow w = visibleWindow();
  parts_->zoom(factor, parts_->crosshair.value_or(0.5 * (w.xFrom + w.xTo)), 0.5 * (w.yFrom + w.yTo),
               upward);
  update();
}

void PlanChart::showOnly(double xFrom, double xTo) {
  parts_->showOnly(xFrom, xTo);
  update();
}

void PlanChart::lift(std::optional<int> rig) {
  Parts& p = *parts_;
  if (p.look.lifted == rig) return;
  p.look.lifted = rig;
  p.repaints = true;
  update();
}
std::optional<int> PlanChart::lifted() const { return parts_->look.lifted; }

// The pointer is on this rig's name, line or bar, and every picture beside this one may tell.
void PlanChart::point(std::optional<int> rig) {
  if (parts_->look.lifted == rig) return;
  lift(rig);
  Q_EMIT rigPointed(rig.value_or(-1));
}

void PlanChart::setPiece(std::size_t stack, std::size_t part) {
  Parts& p = *parts_;
  if (p.piece == BarPiece{stack, part}) return;
  p.piece = BarPiece{stack, part};
  setAccessibleDescription(readOut().join(QStringLiteral("; ")));
  update();
}

void PlanChart::setCrosshair(double x) {
  const ChartWindow w = parts_->window.value_or(fullWindow(parts_->picture));
  parts_->crosshair = std::clamp(x, w.xFrom, w.xTo);
  setAccessibleDescription(readOut().join(QStringLiteral("; ")));
  update();
}

void PlanChart::clearCrosshair() {
  if (!parts_->crosshair && !parts_->piece) return;
  parts_->crosshair.reset();
  parts_->piece.reset();
  update();
}

QStringList PlanChart::readOut() const { return parts_->readOut(); }

QSize PlanChart::sizeHint() const { return {720, 400}; }
// Narrower than the narrowest page, of which it would else be cut.
QSize PlanChart::minimumSizeHint() const { return {220, 180}; }

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
    p.repaints = true;
  }
  if (p.repaints) {
    p.plot.show(p.picture, p.layout, p.look);
    p.kept = QPixmap(size() * sharpness);
    p.kept.setDevicePixelRatio(sharpness);
    p.kept.fill(p.look.paper);
    QPainter onto(&p.kept);
    p.plot.draw(onto);
    p.stale = false;
    p.repaints = false;
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
      if (!parts_->ownLook) {
        const auto lifted = parts_->look.lifted;
        parts_->look = lookOf(palette(), font(), locale());
        parts_->look.lifted = lifted;
      }
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
  if (p.hand == Parts::Hand::Choosing) return;
  setCursor(p.onGrip(at)    ? Qt::SizeVerCursor
            : p.namedAt(at) ? Qt::PointingHandCursor
                            : Qt::ArrowCursor);
  point(p.rigAt(at));
  Q_EMIT pointedAt();
  if (const auto piece = p.pieceAt(at)) {
    setPiece(piece->first, piece->second);
  } else if (p.zoomable() && p.layout.plot.contains(at)) {
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
  } else if (const auto named = p.namedAt(event->position())) {
    p.hand = Parts::Hand::Choosing;
    p.chosen = named;
  } else if (p.window) {
    p.hand = Parts::Hand::Panning;
    p.grabbed = event->position();
    p.grabbedWindow = *p.window;
    setCursor(Qt::ClosedHandCursor);
  }
}

void PlanChart::mouseReleaseEvent(QMouseEvent* event) {
  const bool dragging = parts_->hand == Parts::Hand::Dragging;
  const bool choosing = parts_->hand == Parts::Hand::Choosing;
  parts_->hand = Parts::Hand::Free;
  unsetCursor();
  if (choosing) {
    const auto named = parts_->namedAt(event->position());
    if (named && named == parts_->chosen) Q_EMIT rigToggled(*named);
    return;
  }
  if (!dragging) return;
  parts_->held.reset();
  parts_->stale = true;
  update();
  Q_EMIT handChanged(false);
}

// On a name it is two clicks.
void PlanChart::mouseDoubleClickEvent(QMouseEvent* event) {
  if (parts_->namedAt(event->position())) return mousePressEvent(event);
  resetZoom();
}

void PlanChart::leaveEvent(QEvent*) {
  clearCrosshair();
  point(std::nullopt);
}

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

// From piece to piece of a bar, and from bar to bar.
void PlanChart::pieceByKey(QKeyEvent* event) {
  const int key = event->key();
  const int right = key == Qt::Key_Right ? 1 : key == Qt::Key_Left ? -1 : 0;
  const int down = key == Qt::Key_Down ? 1 : key == Qt::Key_Up ? -1 : 0;
  if (key == Qt::Key_Escape && parts_->piece) return clearCrosshair();
  if (right == 0 && down == 0) return QWidget::keyPressEvent(event);
  if (const auto next = parts_->pieceBeside(right, down)) setPiece(next->first, next->second);
}

void PlanChart::keyPressEvent(QKeyEvent* event) {
  Parts& p = *parts_;
  if (!p.zoomable()) return pieceByKey(event);
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
      zoomAtCrosshair(kZoomStep, false);
      break;
    case Qt::Key_Minus:
      zoomAtCrosshair(1.0 / kZoomStep, p.ownHeight);
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
