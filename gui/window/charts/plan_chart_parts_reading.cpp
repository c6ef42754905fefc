// SPDX-License-Identifier: GPL-3.0-or-later
// What a person points at in the picture on the screen, and what is read there: beside the lines,
// with as many digits as the tables.
#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "gui/telling/curve.hpp"
#include "gui/window/charts/plan_chart_parts.hpp"

namespace gui {

using telling::Picture;
using telling::PictureLine;
using telling::PictureMark;
using telling::PicturePhase;

namespace {

constexpr double kGrip = 7.0;  // pixels around the draggable line
constexpr double kNearLine = 6.0;

// A figure of a line at the cross-hair, and where it stands.
struct Reading {
  QString text;
  QPointF at;
  QColor shade;
  double top = 0.0;
};

// One below the other, each as near to its line as the others allow.
void spread(std::vector<Reading>& readings, double height, const QRectF& plot) {
  std::stable_sort(readings.begin(), readings.end(),
                   [](const Reading& a, const Reading& b) { return a.at.y() < b.at.y(); });
  double from = plot.top() + height;  // below the time
  for (Reading& one : readings) {
    one.top = std::max(from, one.at.y() - 0.5 * height);
    from = one.top + height;
  }
  double to = plot.bottom();
  for (auto one = readings.rbegin(); one != readings.rend(); ++one) {
    one->top = std::min(one->top, to - height);
    to = one->top;
  }
}

}  // namespace

bool PlanChart::Parts::onGrip(QPointF at) const {
  if (!picture.draggable) return false;
  return std::abs(layout.at({0.0, *picture.draggable}).y() - at.y()) <= kGrip &&
         layout.plot.adjusted(-kGrip, -kGrip, kGrip, kGrip).contains(at);
}

// What happens to a rig there, as near as a hand can point.
QString PlanChart::Parts::eventAt(int rig, double x, const ChartWindow& w) const {
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

const PictureMark* PlanChart::Parts::markAt(QPointF at) const {
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
std::optional<double> PlanChart::Parts::eventAfter(double x, double sign) const {
  std::optional<double> next;
  for (const PictureMark& mark : picture.marks) {
    const double ahead = sign * (mark.at.x - x);
    if (mark.event.empty() || ahead <= 1e-9) continue;
    if (!next || ahead < sign * (*next - x)) next = mark.at.x;
  }
  return next;
}

std::optional<int> PlanChart::Parts::namedAt(QPointF at) const {
  for (const ChartLayout::Label& label : layout.legend) {
    const bool ofRig = label.kind == LegendSample::Line;
    if (ofRig && label.box.united(label.sample).adjusted(-3, -1, 3, 1).contains(at))
      return label.index;
  }
  for (const ChartLayout::Label& label : layout.barNames)
    if (label.index >= 0 && label.box.contains(at)) return label.index;
  return std::nullopt;
}

std::optional<int> PlanChart::Parts::rigAt(QPointF at) const {
  if (const auto named = namedAt(at)) return named;
  if (const auto pointed = pieceAt(at)) return picture.stacks[pointed->first].rig;
  if (!layout.plot.contains(at)) return std::nullopt;
  double nearest = kNearLine;
  std::optional<int> found;
  for (const PictureLine& line : picture.lines) {
    if (line.rig < 0 || line.faint) continue;
    // Steep lines are beside the pointer, flat ones above or below.
    for (const double off : {0.0, -2.0, 2.0, -4.0, 4.0}) {
      const auto y = telling::valueAt(line.points, xAt(at.x() + off));
      if (!y) continue;
      const double distance = std::hypot(off, layout.at({0.0, *y}).y() - at.y());
      if (distance >= nearest) continue;
      nearest = distance;
      found = line.rig;
    }
  }
  return found;
}

std::optional<BarPiece> PlanChart::Parts::pieceAt(QPointF at) const {
  if (zoomable() || at.x() < layout.plot.left()) return std::nullopt;
  const double x = xAt(at.x());
  for (std::size_t i = 0; i < picture.stacks.size(); ++i) {
    const ChartLayout::Bar& bar = layout.bars[static_cast<qsizetype>(i)];
    if (at.y() < bar.from || at.y() > bar.to) continue;
    double end = 0.0;
    for (std::size_t part = 0; part < picture.stacks[i].parts.size(); ++part) {
      end += std::max(0.0, picture.stacks[i].parts[part]);
      if (x < end) return BarPiece{i, part};
    }
  }
  return std::nullopt;
}

// The next piece with a figure, from the first on.
std::optional<BarPiece> PlanChart::Parts::pieceBeside(int right, int down) const {
  if (picture.stacks.empty()) return std::nullopt;
  if (!piece) return BarPiece{0, 0};
  const auto within = [](std::size_t from, int by, std::size_t count) {
    const auto last = static_cast<long>(count) - 1;
    return static_cast<std::size_t>(std::clamp(static_cast<long>(from) + by, 0L, last));
  };
  BarPiece next = *piece;
  next.first = within(next.first, down, picture.stacks.size());
  const auto& parts = picture.stacks[next.first].parts;
  if (parts.empty()) return std::nullopt;
  BarPiece found = next;
  for (std::size_t at = next.second; right != 0;) {
    const std::size_t beside = within(at, right, parts.size());
    if (beside == at) break;
    at = beside;
    if (parts[at] <= 0.0) continue;
    found.second = at;
    break;
  }
  return found;
}

QString PlanChart::Parts::withUnit(const QString& number, const std::string& unit) const {
  return unit.empty() ? number : QStringLiteral("%1 %2").arg(number, QString::fromStdString(unit));
}

// The bar's name, and the piece in its unit or in the words that come with it.
QStringList PlanChart::Parts::pieceReadOut() const {
  if (!piece || piece->first >= picture.stacks.size()) return {};
  const telling::PictureStack& stack = picture.stacks[piece->first];
  const std::size_t part = piece->second;
  if (part >= stack.parts.size()) return {};
  const QString name = QString::fromStdString(stack.name);
  QStringList lines{stack.rig < 0 ? name : rigInPicture(picture, stack.rig, name)};
  if (part < stack.notes.size()) return lines << QString::fromStdString(stack.notes[part]);
  const ChartWindow w = fullWindow(picture);
  const QString figure = withUnit(
      readingText(stack.parts[part], w.width(), picture.xIsClock, look.locale), picture.xUnit);
  const std::string own = part < picture.partNames.size() ? picture.partNames[part] : std::string();
  return lines << QStringLiteral("%1  %2").arg(QString::fromStdString(own), figure).trimmed();
}

// All rigs at the cross-hair, under what it stands at.
QStringList PlanChart::Parts::readOut() const {
  QStringList lines;
  if (!zoomable()) return pieceReadOut();
  if (!crosshair) return lines;
  const ChartWindow w = window.value_or(fullWindow(picture));
  lines +=
      withUnit(readingText(*crosshair, w.width(), picture.xIsClock, look.locale), picture.xUnit);
  for (const PictureLine& line : picture.lines) {
    const auto value = telling::valueAt(line.points, *crosshair);
    if (value && !line.limit) lines += readOutOf(line, *value, w);
  }
  for (std::size_t i = picture.areas.size(); i-- > 0;) {
    const auto value = telling::valueAt(picture.areas[i], *crosshair);
    if (!value) continue;
    const std::string name = i < picture.partNames.size() ? picture.partNames[i] : std::string();
    lines += QStringLiteral("%1 %2  %3")
                 .arg(i + 1)
                 .arg(QString::fromStdString(name), readAlongY(*value));
  }
  return lines;
}

QString PlanChart::Parts::readAlongY(double value) const {
  const QString number = picture.yDecimals
                             ? look.locale.toString(value, 'f', *picture.yDecimals)
                             : readingText(value, fullWindow(picture).height(), false, look.locale);
  return withUnit(number, picture.yUnit);
}

QString PlanChart::Parts::readOutOf(const PictureLine& line, double value,
                                    const ChartWindow& w) const {
  const QString own = QString::fromStdString(line.name);
  const QString name =
      line.rig < 0
          ? own
          : rigInPicture(picture, line.rig, line.faint || !picture.lettered ? own : QString());
  QString text = QStringLiteral("%1  %2").arg(name, readAlongY(value));
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
  if (!zoomable()) {
    const telling::PictureStack& stack = picture.stacks[piece->first];
    const ChartLayout::Bar& bar = layout.bars[static_cast<qsizetype>(piece->first)];
    double from = 0.0;
    for (std::size_t i = 0; i < piece->second; ++i) from += std::max(0.0, stack.parts[i]);
    const QPointF left = layout.at({from, 0.0});
    const QPointF right = layout.at({from + std::max(0.0, stack.parts[piece->second]), 0.0});
    painter.setPen(QPen(look.accent, 2.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(QPointF(left.x(), bar.from), QPointF(right.x(), bar.to)));
    drawBox(painter, lines, {0.5 * (left.x() + right.x()), bar.to});
    return;
  }
  const double x = layout.at({*crosshair, 0.0}).x();
  painter.setPen(QPen(look.accent, 1.0));
  painter.drawLine(QPointF(x, layout.plot.top()), QPointF(x, layout.plot.bottom()));
  if (picture.areas.empty()) {
    drawBeside(painter, x);
  } else {
    drawBox(painter, lines, {x, layout.plot.top()});
  }
}

// Each figure beside its line, so that the eye stays there.
void PlanChart::Parts::drawBeside(QPainter& painter, double x) const {
  const ChartWindow w = window.value_or(fullWindow(picture));
  const QFontMetricsF metrics(layout.font);
  std::vector<Reading> readings;
  double width = 0.0;
  for (const PictureLine& line : picture.lines) {
    const auto value = telling::valueAt(line.points, *crosshair);
    if (!value || line.limit) continue;
    const QPointF at = layout.at({*crosshair, *value});
    if (!layout.plot.adjusted(-1, -1, 1, 1).contains(at)) continue;
    const QColor shade = line.rig < 0 ? (line.faint ? look.quietInk : look.ink)
                                      : shadeOfRig(telling::slotOfRig(picture, line.rig), look);
    readings.push_back({readOutOf(line, *value, w), at, shade});
    width = std::max(width, metrics.horizontalAdvance(readings.back().text));
  }
  spread(readings, metrics.height(), layout.plot);
  const bool toTheLeft = x + width + 16.0 > layout.plot.right();
  const double left = std::max(0.0, toTheLeft ? x - width - 12.0 : x + 8.0);
  QColor behind = look.paper;
  behind.setAlphaF(0.9F);
  for (const Reading& one : readings) {
    painter.fillRect(QRectF(left - 3.0, one.top, width + 6.0, metrics.height()), behind);
  }
  for (const Reading& one : readings) {
    painter.setPen(QPen(one.shade, 1.0));
    painter.setBrush(one.shade);
    painter.drawEllipse(one.at, 3.0, 3.0);
    painter.setFont(layout.font);
    painter.drawText(QPointF(left, one.top + metrics.ascent()), one.text);
  }
  const QString time = readOut().constFirst();
  painter.setFont(layout.titleFont);
  const QFontMetricsF bold(layout.titleFont);
  const double wide = bold.horizontalAdvance(time);
  const double start = toTheLeft ? x - wide - 8.0 : x + 8.0;
  painter.fillRect(QRectF(start - 3.0, layout.plot.top(), wide + 6.0, bold.height()), behind);
  painter.setPen(look.accent);
  painter.drawText(QPointF(start, layout.plot.top() + bold.ascent()), time);
}

void PlanChart::Parts::drawBox(QPainter& painter, const QStringList& lines, QPointF at) const {
  const QFontMetricsF metrics(layout.font);
  double width = QFontMetricsF(layout.titleFont).horizontalAdvance(lines[0]);
  for (const QString& line : lines) width = std::max(width, metrics.horizontalAdvance(line));
  const double height = static_cast<double>(lines.size()) * metrics.height();
  QRectF box(at.x() + 12.0, at.y() + 6.0, width + 16.0, height + 10.0);
  if (box.right() > layout.plot.right()) box.moveRight(at.x() - 12.0);
  if (box.left() < 0.0) box.moveLeft(0.0);
  painter.setPen(QPen(look.quietInk, 1.0));
  painter.setBrush(look.paper);
  painter.drawRect(box);
  painter.setPen(look.ink);
  for (qsizetype i = 0; i < lines.size(); ++i) {
    painter.setFont(i == 0 ? layout.titleFont : layout.font);
    painter.drawText(QPointF(box.left() + 8.0, box.top() + 5.0 + metrics.ascent() +
                                                   static_cast<double>(i) * metrics.height()),
                     lines[i]);
  }
}

}  // namespace gui
